import { card, type Calculation, type Card } from '../core/card';
import { callCard } from '../core/call';
import type { CellError } from '../core/kinds';
import { isCellError, rowsOf } from '../core/read/cells';
import { AS_IT_CAME, choice, named, param } from '../core/read/params';
import { cut, errorWords, wrongInput } from '../core/refuse';
import { about, ITEMS, type Item } from './about';
import { working } from './working';

const T = 'Checks, variants, trace';
const ARGS = ['arg1', 'arg2', 'arg3', 'arg4', 'arg5', 'arg6', 'arg7', 'arg8', 'arg9'].map(name =>
  param(name, AS_IT_CAME, { blank: 'absent' }),
);

/** The first error handed in to a call that answers all the same, with `not checked` say. */
function errorAmong({ params }: Card, args: readonly unknown[]): string | undefined {
  for (const [i, { name }] of params.entries()) {
    const rows = rowsOf([args[i]].flat());
    const isBlock = rows.length > 1 && rows.some(row => row.length > 1);
    for (const [r, row] of rows.entries()) {
      const c = row.findIndex(isCellError);
      if (c < 0) continue;
      const place = isBlock ? ` row ${r + 1}, column ${c + 1},` : rows.length * row.length > 1 ? ` row ${r + c + 1}` : '';
      return `${name}${place} ${errorWords(row[c] as CellError)}`;
    }
  }
  return undefined;
}

/** The functions that speak about other functions. */
export function aboutCards(find: (id: string) => Card | undefined): readonly Calculation[] {
  const FUNCTION = named('function name', 'BOSS.OD', text => {
    const id = text
      .trim()
      .toUpperCase()
      .replace(/^=?(ENCL\.)?/, '')
      .replace(/\(.*$/, '');
    const found = find(id);
    if (found === undefined) throw wrongInput(`there is no function ENCL.${cut(id)}`);
    return found;
  });
  const name = param('name', FUNCTION);
  const reason = (asked: Card, ...args: unknown[]): string => {
    const outcome = callCard(asked, args);
    return outcome.ok ? (errorAmong(asked, args) ?? 'ok') : outcome.message;
  };
  return [
    card<[Card, ...unknown[]]>('REASON', T, [name, ...ARGS], reason, { result: { shape: 'text', name: 'reason' } }),
    card('ABOUT', T, [name, param('item', choice<Item>('item', ITEMS), { blank: 'absent' })], about, {
      result: { shape: 'text', name: 'description' },
    }),
    card<[Card, ...unknown[]]>('WORKING', T, [name, ...ARGS], (asked, ...args) => working(asked, args), {
      result: { shape: 'text', name: 'working' },
    }),
  ];
}
