// CHECK.MAX, CHECK.MIN, CHECK.CLEAR and CHECK.WORST as steps.
import type { Card, Param } from '../../../core/card';
import type { Cell } from '../../../core/kinds';
import { ANYTHING, param as anyParam } from '../../../core/read/params';
import { call } from '../../../registry';
import { fixedArea } from '../../../sheet/addresses';
import { areaOf } from '../../../sheet/formula';
import { isFault, isRows, type Known } from '../../../sheet/workbook-values';
import type { Argument } from '../arguments/argument';
import { bind } from '../arguments/bind';
import { checkFormula, clearFormula, worstFormula } from '../checks';
import type { ConversionContext } from '../context';
import type { Placed } from '../step-block';
import type { CallBlock } from './call-site';

const NONE = 'NA()';

const VALUE = (name: string): Param => ({ ...anyParam(name, ANYTHING), blank: 'zero' });

/** A check of numbers: its formula out of the cells of its arguments, undefined where one is left out. */
interface NumberCheck {
  readonly words: string;
  formula(value: string, ...others: readonly (string | undefined)[]): string;
}

const limited = (side: 'max' | 'min', words: string): NumberCheck => ({
  words,
  formula: (value, limit, review) => checkFormula(side, value, limit ?? NONE, review),
});

export const NUMBER_CHECKS: Readonly<Record<string, NumberCheck>> = {
  'CHECK.MAX': limited('max', 'pass up to review, review up to the limit, fail above'),
  'CHECK.MIN': limited('min', 'pass down to review, review down to the limit, fail below'),
  'CHECK.CLEAR': { words: 'pass above review, review above 0, fail from 0 down', formula: clearFormula },
};

/** A value beside its limits; an error among them goes along as it is. */
export function numberCheck(
  context: ConversionContext,
  card: Card,
  { words, formula }: NumberCheck,
  args: readonly Argument[],
  raws: readonly Known[],
  place: () => Placed | undefined,
): CallBlock | undefined {
  const answer = call(card.id, raws);
  if (!answer.ok || raws.some(raw => typeof raw === 'string' || typeof raw === 'boolean' || isRows(raw))) return undefined;
  const cells = card.params.map(({ name, blank }, i): string | undefined => {
    const raw = raws[i];
    if (args[i]?.node === null && blank === 'absent') return undefined;
    const bound = bind(context, VALUE(name), args[i] as Argument, typeof raw === 'number' ? raw : 0, new Set());
    return bound !== undefined && 'text' in bound.ref ? bound.ref.text : undefined;
  });
  const [value, ...others] = cells;
  const isLost = card.params.some(({ blank }, i) => blank !== 'absent' && cells[i] === undefined);
  if (value === undefined || isLost || raws.some(isFault)) return undefined;
  const result = context.steps.row({ label: 'state', formula: formula(value, ...others), value: answer.value as Cell, words }, 'result');
  const placed = place();
  return placed && { cells: [placed(result)], live: true };
}

export function worstCheck(
  context: ConversionContext,
  card: Card,
  args: readonly Argument[],
  raws: readonly Known[],
  place: () => Placed | undefined,
): CallBlock | undefined {
  const [first] = args;
  const area = first === undefined || first.node === null ? undefined : areaOf(first.node, first.sheet);
  const answer = call(card.id, raws);
  const states = isRows(raws[0]) ? raws[0].flat() : [raws[0]];
  // a comparison with an error is an error, and spaces around a word are not seen by a formula
  if (area === undefined || !answer.ok || states.some(state => isFault(state) || (typeof state === 'string' && state !== state.trim())))
    return undefined;
  const cell = context.steps.row(
    {
      label: 'worst state',
      formula: worstFormula(fixedArea(area), (area.bottom - area.top + 1) * (area.right - area.left + 1)),
      value: answer.value as Cell,
      words: 'fail, then not checked, then review, then pass',
    },
    'result',
  );
  const placed = place();
  return placed && { cells: [placed(cell)], live: true };
}
