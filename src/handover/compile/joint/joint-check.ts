// CHECK.JOINT and CHECK.BOSS: the rules of one variant on a sheet of variants, each with its value, limit and state. The remedy is
// searched for at home: it stands as it was when the copy was made, and only while no input has changed.
import type { Cell } from '../../../core/kinds';
import { Refused } from '../../../core/refuse';
import { checkBoss, checkJoint } from '../../../joint/checks';
import { atom, MATHS, type Ref, type Scalar } from '../../../plain/spreadsheet';
import { isRows } from '../../../sheet/workbook-values';
import type { CallBlock, CallSite } from '../calls/call-site';
import { printedRef } from '../calls/tables/table-site';
import { CHANGED, quoted } from '../inputs';
import type { Conversion } from '../conversion';
import type { JointRow } from './joint-row';
import type { RuleState } from './joint-verdict';
import type { WriteCell } from './row-print';
import type { JudgedRow } from './row-margin';
import { FIRST, fixedIn } from './written-variants';

const NONE = quoted('no value');
const NOT_CHECKED = quoted('not checked');

export const CHECKS: Readonly<Record<string, (...args: Parameters<typeof checkJoint>) => Cell[][]>> = {
  'CHECK.JOINT': checkJoint,
  'CHECK.BOSS': checkBoss,
};

type CheckLine = readonly Cell[];

export function checkBlock(conversion: Conversion, { card, node, sheet, at }: CallSite): CallBlock | undefined {
  const result = conversion.source.evaluate(node, sheet);
  if (!isRows(result)) return undefined;
  const lines = result.slice(1) as readonly CheckLine[];
  let cells: readonly (readonly string[])[] | undefined;
  const written = conversion.joints.check({ sheet, at, node }, (row, put) => {
    cells = checkLines(row, lines, put);
  });
  if (written === undefined || cells === undefined) return undefined;
  const there = (cell: string): string => (cell.startsWith('"') ? cell : fixedIn(written.sheet, cell, FIRST));
  return { cells: cells.flat().map(there), live: card.id in CHECKS };
}

function checkLines({ row, states }: JudgedRow, lines: readonly CheckLine[], put: WriteCell): readonly (readonly string[])[] {
  const asSent = row.guards.unchanged();
  const holds = row.guards.cellOfVerdict();
  const whileWhole = (formula: string, otherwise: string): string =>
    holds === undefined ? formula : `IF(${holds},${formula},${otherwise})`;
  return lines.map(([name = '', value = '', limit = '', basis = '', state = '', source = '', remedy = '']) => {
    const entry = states.find(({ rule }) => rule.name === name);
    const put7 = (of: string, words: string, formula: string, worth: Cell): string =>
      put(`${of}: ${String(name)}`, words, formula, () => worth);
    const made = entry === undefined ? conflict(row, String(name)) : ofRule(entry, value, limit);
    const judged = put7('state', 'as long as all rules are those that were sent', whileWhole(made.state, NOT_CHECKED), state);
    const isChecked = (formula: string, otherwise: string): string =>
      `IF(OR(${judged}="not checked",${judged}="left out"),${otherwise},${formula})`;
    const texts = [value, limit].map(worth =>
      typeof worth === 'string' && worth !== '–' ? `IF(${asSent},${quoted(worth)},${NONE})` : undefined,
    );
    return [
      quoted(String(name)),
      put7('value', 'what the rule judges', texts[0] ?? isChecked(made.value, NONE), value),
      put7('limit', 'what it asks', made.limit === undefined ? '"–"' : isChecked(made.limit, '"–"'), limit),
      quoted(String(basis)),
      judged,
      quoted(String(source)),
      put7('remedy, as of sending', 'tried when this copy was made', `IF(${asSent},${quoted(String(remedy))},${CHANGED})`, remedy),
    ];
  });
}

interface ShownCheck {
  readonly value: string;
  readonly limit: string | undefined;
  readonly state: string;
}

function ofRule({ state = NOT_CHECKED, shown, value }: RuleState, sent: Cell, limit: Cell): ShownCheck {
  return {
    value: shown?.('size') ?? value ?? (typeof sent === 'number' ? 'NA()' : NONE),
    limit: shown?.('limit') ?? (limit === '–' ? undefined : 'NA()'),
    state,
  };
}

/** Two rules of the trade side by side: what the one asks, and what the other allows. */
const CONFLICTS: Readonly<Record<string, (cell: (name: string) => Ref, nominal: Ref) => readonly [asked: Scalar, allowed: Scalar]>> = {
  'outside diameter and sink agree': cell => [
    cell('boss OD by ratio') as Scalar,
    printedRef('odAllowedByWallMm', cell('pin diameter'), cell('sink limit'), cell('wall')),
  ],
  'engagement and core pin agree': (cell, nominal) => [
    printedRef('depthAskedByRatioMm', cell('hole depth needed'), cell('engagement min'), cell('ratio'), nominal),
    printedRef('depthAllowedByPinMm', cell('pin limit'), cell('pin diameter')),
  ],
};

function conflict(row: JointRow, name: string): ShownCheck {
  const cellOf = (of: string): Ref => atom(row.cellOf(of) ?? 'NA()');
  const [asked, allowed] = CONFLICTS[name]?.(cellOf, atom(row.nominal())) ?? [];
  if (asked === undefined || allowed === undefined) throw new Refused('#VALUE!', `${name} is no rule`);
  const agree = (MATHS['atMost']?.(asked, allowed) as Scalar).text;
  return {
    value: `IFERROR(${asked.text},${NONE})`,
    limit: `IFERROR(${allowed.text},"–")`,
    state: `IFERROR(IF(${agree},"pass","review"),${NOT_CHECKED})`,
  };
}
