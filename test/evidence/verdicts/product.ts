// How the verdicts are asked for: the product is met through its calls alone.
import { call } from '../../../src/registry';
import type { State } from './corpus';
import type { Inputs } from './oracle';

/** What a joint does not name is left to its default, also where others in the same table name it. */
const LEFT_OUT = 'default';
/** Rows of one call: the inputs of a block stay below the most cells that a table may have. */
const MOST_CELLS = 20_000;

type Cell = string | number | boolean;

function rowsOf(id: string, args: readonly unknown[]): readonly (readonly Cell[])[] {
  const answer = call(id, args);
  if (!answer.ok) throw new Error(`${id}: ${answer.code} ${answer.message}`);
  return answer.value as readonly (readonly Cell[])[];
}

/** A row a joint, in the order of the outputs. */
export function table(joints: readonly Inputs[], outputs: readonly string[]): readonly (readonly Cell[])[] {
  const names = [...new Set(joints.flatMap(joint => Object.keys(joint)))];
  const blockRows = Math.floor(MOST_CELLS / Math.max(names.length, outputs.length)) - 1;
  return Array.from({ length: Math.ceil(joints.length / blockRows) }).flatMap((_, i) => {
    const block = joints.slice(i * blockRows, (i + 1) * blockRows);
    const given = block.map(joint => names.map(name => joint[name] ?? LEFT_OUT));
    const rows = rowsOf('JOINT.TABLE', [[names, ...given], [outputs]]).slice(1);
    if (rows.length !== block.length) throw new Error(`${block.length} joints, ${rows.length} rows`);
    return rows;
  });
}

export const statesOf = (joints: readonly Inputs[]): readonly State[] => table(joints, ['state']).map(([state]) => state as State);

export interface RuleRow {
  readonly rule: string;
  readonly value: Cell;
  readonly limit: Cell;
  readonly state: State;
}

export function rulesOf(joint: Inputs): readonly RuleRow[] {
  const [header = [], ...rows] = rowsOf('CHECK.JOINT', [Object.entries(joint)]);
  const at = (row: readonly Cell[], name: string): Cell => row[header.indexOf(name)] ?? '';
  return rows.map(row => ({
    rule: String(at(row, 'rule')),
    value: at(row, 'value'),
    limit: at(row, 'limit'),
    state: at(row, 'state') as State,
  }));
}
