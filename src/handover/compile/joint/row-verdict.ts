// The verdict in the row of a variant: how many rules are broken, the worst state with its rule, how near the nearest limit is.
import type { State } from '../../../core/check/check';
import type { Cell } from '../../../core/kinds';
import type { Finding } from '../../../joint/graph';
import { OUTPUTS, type VerdictName } from '../../../joint/outputs';
import { missing, stateOf, verdict } from '../../../joint/verdict';
import { allOf, CHANGED } from '../inputs';
import { countFormula, verdictFormulas } from './joint-verdict';
import { lackingCell } from './row-lacking';
import type { OfRow, OneRow, WriteCell } from './row-print';
import { type JudgedRow, putMargin } from './row-margin';
import { putReasons } from './row-reasons';
import { NO_VALUE } from './written-variants';

/** Verdicts that no formula follows. */
const NOT_LIVE: readonly VerdictName[] = ['remedy'];

const COUNTS: readonly (readonly [VerdictName, State])[] = [
  ['fails', 'fail'],
  ['reviews', 'review'],
];

export function putVerdict(of: JudgedRow, put: WriteCell, column: (title: string, words: string) => number, withReasons = false): void {
  const { row, outputs, states } = of;
  const asked = (...names: readonly VerdictName[]): boolean => names.some(name => outputs.includes(name));
  // what has no formula is kept as it was sent, and shown while nothing has changed
  for (const name of NOT_LIVE.filter(one => asked(one))) {
    const value: OfRow<Cell> = ({ variant }) => verdict(variant, name, outputs);
    const kept = put(`${name}, as of sending`, 'searched for when this copy was made', undefined, value);
    put(name, 'while no input has changed', `IF(${row.guards.unchanged()},${kept},${CHANGED})`, value);
  }
  const lacking = lackingCell(row, 'wanted, without a value', outputs, put);
  const anyLacking = asked('all computed') ? lackingCell(row, 'outputs without a value', OUTPUTS, put) : undefined;
  const holds = row.guards.cellOfVerdict();
  if (asked('all computed')) putAllComputed(of, anyLacking, holds, put);
  const whole = asked('fails', 'reviews', 'margin', 'margin rule')
    ? put('all rules judged', 'counts and margin hold for all rules', allOf(wholeConditions(of, holds)), () => true)
    : '';
  const whileWhole = (formula: string): string => `IF(${whole},${formula},${NO_VALUE})`;
  for (const [name, word] of COUNTS)
    if (asked(name))
      put(name, `rules with the state ${word}`, whileWhole(countFormula(states, word)), ({ variant }) => verdict(variant, name));
  const formulas = verdictFormulas(states, lacking, holds);
  const stateCell = put('state', 'worst of all rules', formulas.state, ({ variant }) => stateOf(variant, outputs), 'result');
  const first = ({ variant }: OneRow): Finding | undefined => {
    const state = stateOf(variant, outputs);
    return state === 'pass' ? undefined : variant.findings().find(finding => finding.state === state);
  };
  const what: OfRow<Cell> = row => {
    const finding = first(row);
    return finding === undefined ? (missing(row.variant, outputs) ?? '–') : wordsOf(finding);
  };
  put('rule', 'what is wrong with the first rule of that state', formulas.rule(stateCell), what, 'result');
  put('its value', 'what that rule judges', formulas.value(stateCell), row => first(row)?.value ?? '–', 'result');
  put('its limit', 'what that rule asks', formulas.limit(stateCell), row => first(row)?.limit ?? '–', 'result');
  if (withReasons || asked('reasons')) putReasons(of, holds, put, column);
  if (asked('margin', 'margin rule')) putMargin(of, whileWhole, put, column);
}

/** Where a value is missing that was there, it may be one that does not apply any more. */
function putAllComputed({ row, variant }: JudgedRow, lacking: string | undefined, holds: string | undefined, put: WriteCell): void {
  const isSo = variant.questions.ask('all computed', of => verdict(of.variant, 'all computed') === true);
  const conditions = [...(holds === undefined ? [] : [holds]), ...(lacking === undefined ? [] : [`${lacking}="–"`])];
  const formula = isSo ? `IF(${allOf(conditions)},TRUE,${NO_VALUE})` : `IF(${row.guards.unchanged()},FALSE,${NO_VALUE})`;
  put('all computed', 'each output that applies has a value', formula, () => isSo);
}

/** When counts and margin are those of all rules. */
function wholeConditions({ row, variant, states }: JudgedRow, holds: string | undefined): readonly string[] {
  return [
    ...(holds === undefined ? [] : [holds]),
    ...states.flatMap(({ rule, state: cell }) => {
      if (cell === undefined) return [];
      // a rule that this row cannot judge may fail or be the nearest where something of it has changed
      return variant.judging(rule) === 'not checked' ? [row.guards.unchanged(rule.value)] : [`${cell}<>"not checked"`];
    }),
  ];
}

function wordsOf({ state, rule }: Finding): string {
  if (state === 'not checked') return rule.name;
  return (state === 'review' ? rule.doubtful : undefined) ?? rule.broken;
}
