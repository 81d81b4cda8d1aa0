// The margin in the row of a variant: the distance of each rule to its fail limit, the least of them and its rule.
import type { Rule } from '../../../joint/graph';
import type { Output } from '../../../joint/outputs';
import type { AskedVariant } from './asked-variant';
import { verdict } from '../../../joint/verdict';
import { columnName } from '../../../sheet/addresses';
import { ROW } from '../../../sheet/row-forms';
import type { JointRow } from './joint-row';
import { marginFormula, type RuleState } from './joint-verdict';
import type { WriteCell } from './row-print';
import { HEAD } from './written-variants';

export interface JudgedRow {
  readonly row: JointRow;
  readonly variant: AskedVariant;
  readonly outputs: readonly Output[];
  readonly states: readonly RuleState[];
  /** The rules that apply in some row of the sheet. */
  readonly judged: readonly Rule[];
}

const MARGIN = 'margin: ';
const WORDS = 'distance to its fail limit, as a share of it';

export function putMargin(
  { row, states, judged }: JudgedRow,
  whileWhole: (formula: string) => string,
  put: WriteCell,
  column: (title: string, words: string) => number,
): void {
  const nominal = row.nominal();
  const columns = judged.map(({ name }) => columnName(column(`${MARGIN}${name}`, WORDS)));
  for (const entry of states) {
    const formula = marginFormula(entry, nominal);
    if (formula === undefined) continue;
    put(`${MARGIN}${entry.rule.name}`, WORDS, formula, ({ variant }) => variant.margin(entry.rule) ?? '');
  }
  const [from = 'A', to = from] = [columns[0], columns[columns.length - 1]];
  const [all, heads] = [`$${from}${ROW}:$${to}${ROW}`, `$${from}$${HEAD + 1}:$${to}$${HEAD + 1}`];
  const some = (formula: string): string => whileWhole(`IF(IFERROR(MATCH(MIN(${all}),${all},0),0)=0,"–",${formula})`);
  const least = put('margin', 'least of these distances', some(`MIN(${all})`), ({ variant }) => verdict(variant, 'margin'), 'result');
  const name = `MID(INDEX(${heads},1,MATCH(${least},${all},0)),${MARGIN.length + 1},99)`;
  put('margin rule', 'the rule of that distance', some(name), ({ variant }) => verdict(variant, 'margin rule'), 'result');
}
