// What the supplier changed, taken over into the sender's own workbook: inputs alone, each asked for.
import type { CellChange } from '../../package/cell-splices';
import { edited } from '../../package/edit';
import type { UserPackage } from '../../package/read';
import { changeLine } from '../compare/change-lists';
import type { ChangedInput } from '../compare/returned-changes';

export type Ask = (question: string) => Promise<boolean>;

export interface Accepted {
  readonly bytes: Uint8Array;
  /** What was not asked for, and why. */
  readonly lines: readonly string[];
}

export async function accepted(file: UserPackage, inputs: readonly ChangedInput[], ask: Ask): Promise<Accepted> {
  const lines: string[] = [];
  const cells = new Map<string, Map<string, CellChange>>();
  for (const input of inputs) {
    const sheet = file.sheets.find(({ name }) => name === input.sheet);
    const here = sheet?.cells.find(({ at }) => at === input.at);
    if (sheet === undefined || here?.formula !== undefined) {
      lines.push(`not taken over: ${changeLine(input)}: ${sheet === undefined ? 'there is no such sheet' : 'there stands a formula'}`);
      continue;
    }
    const other =
      String(here?.value ?? '') === input.sent || typeof here?.value === 'string' ? '' : `; now it is ${String(here?.value ?? 'blank')}`;
    if (!(await ask(`${changeLine(input)}${other}?`))) continue;
    const changes = cells.get(input.sheet) ?? new Map<string, CellChange>();
    changes.set(input.at, { value: input.value ?? undefined, formula: 'none' });
    cells.set(input.sheet, changes);
    lines.push(`taken over: ${changeLine(input)}`);
  }
  return { bytes: edited(file, { cells }).bytes, lines };
}
