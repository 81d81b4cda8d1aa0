// Small helpers to write a sheet down row by row.
import type { Cell } from '../core/kinds';
import type { PlanCell, Role } from '../sheet/plan';

const letter = (column: number): string => String.fromCharCode(65 + column);
export const at = (column: number, row: number): string => `${letter(column)}${row}`;

const isFormula = (content: Cell): content is string => typeof content === 'string' && content.startsWith('=');

export function cell(address: string, role: Role, content: Cell, format?: string): PlanCell {
  return { at: address, role, ...(isFormula(content) ? { formula: content } : { value: content }), ...(format === undefined ? {} : { format }) };
}

/** One row of cells from column A; undefined leaves a cell empty. */
export function row(rowNumber: number, roles: readonly Role[], contents: readonly (Cell | undefined)[], format?: string): PlanCell[] {
  return contents.flatMap((content, i) => {
    const role = roles[i] ?? 'text';
    return content === undefined ? [] : [cell(at(i, rowNumber), role, content, role === 'result' ? format : undefined)];
  });
}

/** A table that one formula fills: the formula, and the header cells beside it. */
export function table(column: number, rowNumber: number, columns: number, formula: string, format?: string): PlanCell[] {
  return [cell(at(column, rowNumber), 'result', formula, format), ...Array.from({ length: columns - 1 }, (_, i): PlanCell => ({ at: at(column + 1 + i, rowNumber), role: 'header' }))];
}

export type Input = readonly [name: string, value: Cell, unit: string, note: string];
export type Step = readonly [label: string, formula: string, unit: string, note: string];
export type Block = readonly [heading: string, steps: readonly Step[]];

const FIRST_INPUT = 5;
const HEADER: readonly Role[] = ['header', 'header', 'header', 'header', 'header', 'header'];
const INPUT: readonly Role[] = ['label', 'input', 'unit', 'text', 'text', 'note'];
const STEP: readonly Role[] = ['label', 'result', 'unit', 'text', 'text', 'note'];

const filled = (text: string): string | undefined => (text === '' ? undefined : text);

export interface StepSheet {
  readonly list: PlanCell[];
  /** Cells with a state word. */
  readonly states: string[];
  /** Cell of an input or of a step by its name. */
  place(name: string): string;
  /** Names in brackets become cells: `[wall]`. */
  refer(formula: string): string;
  /** The first row that is free. */
  readonly next: number;
}

/** Inputs, then blocks of results with one formula a line. */
export function stepSheet(title: string, note: string, inputs: readonly Input[], blocks: readonly Block[], format: (unit: string) => string = () => '0.00'): StepSheet {
  const places = new Map<string, string>(inputs.map(([name], i) => [name, `B${FIRST_INPUT + i}`]));
  let next = FIRST_INPUT + inputs.length + 1;
  for (const [, steps] of blocks) {
    next++;
    for (const [label] of steps) places.set(label, `B${next++}`);
    next++;
  }
  const place = (name: string): string => {
    const found = places.get(name);
    if (found === undefined) throw new TypeError(`there is no line "${name}"`);
    return found;
  };
  const refer = (formula: string): string => formula.replace(/\[([^\]]+)\]/g, (_, name: string) => place(name));
  const list = [
    cell('A1', 'title', title),
    cell('A2', 'note', note),
    ...row(FIRST_INPUT - 1, HEADER, ['Inputs', 'value', 'unit', '', '', 'note']),
    ...inputs.flatMap(([name, value, unit, words], i) => row(FIRST_INPUT + i, INPUT, [name, value, filled(unit), undefined, undefined, words])),
  ];
  const states: string[] = [];
  let r = FIRST_INPUT + inputs.length + 1;
  for (const [heading, steps] of blocks) {
    list.push(...row(r++, HEADER, [heading, 'value', 'unit', '', '', 'note']));
    for (const [label, formula, unit, words] of steps) {
      list.push(...row(r, STEP, [label, refer(formula), filled(unit), undefined, undefined, filled(words)], format(unit)));
      if (formula.includes('CHECK.')) states.push(`B${r}`);
      r++;
    }
    r++;
  }
  return { list, states, place, refer, next };
}
