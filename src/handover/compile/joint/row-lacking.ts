// Outputs without a value: as it was sent, and as a cell that names the first one.
import { Refused } from '../../../core/refuse';
import { NotApplicable } from '../../../joint/graph';
import { INPUTS } from '../../../joint/inputs';
import { NODES } from '../../../joint/nodes';
import { isVerdict, type Output } from '../../../joint/outputs';
import { missing, ONLY_IN_PLASTIC } from '../../../joint/verdict';
import type { JointRow } from './joint-row';
import type { WriteCell } from './row-print';
import { NONE } from './row-refs';

/** The cell that names it, or has a dash. Undefined where each of them does not apply. */
export function lackingCell(row: JointRow, title: string, outputs: readonly Output[], put: WriteCell): string | undefined {
  const { variant } = row;
  const tests = outputs.flatMap((output): (readonly [string, string])[] => {
    if (isVerdict(output)) return [];
    const outcome = variant.outcome(output);
    if (outcome instanceof NotApplicable) stayAway(row, output);
    if (outcome instanceof Refused) return outcome instanceof NotApplicable ? [] : [[output, 'FALSE']];
    const cell = row.cellOf(output) ?? NONE;
    return [[output, typeof outcome === 'number' ? `ISNUMBER(${cell})` : `IFERROR(LEN(${cell})>0,FALSE)`]];
  });
  if (variant.outcome('has insert') === true) {
    const isRefused = (input: string): boolean => !(variant.outcome(input) instanceof NotApplicable);
    tests.push(...ONLY_IN_PLASTIC.filter(isRefused).map(input => [input, 'FALSE'] as const));
    ONLY_IN_PLASTIC.forEach(input => row.guards.addInputOfVerdict(input));
  }
  if (tests.length === 0) return undefined;
  const formula = tests.reduceRight((otherwise, [output, isThere]) => `IF(${isThere},${otherwise},"${output}")`, '"–"');
  return put(title, 'first of these outputs that has none', formula, of => missing(of.variant, outputs) ?? '–');
}

/** What an output that does not apply reads all the same must not come to be what cannot be read. */
function stayAway(row: JointRow, output: Output): void {
  const { variant, guards } = row;
  for (const input of guards.inputsOf(output))
    if (INPUTS.has(input) && variant.outcome(input) instanceof NotApplicable) guards.addInputOfVerdict(input);
  for (const needed of NODES.get(output)?.where ?? [])
    if (typeof variant.outcome(needed) === 'number') guards.addOfVerdict(`ISNUMBER(${row.cellOf(needed) ?? NONE})`);
}
