// Small helpers to write a sheet down row by row.
import type { Cell } from '../core/kinds';
import type { PlanCell, Role } from '../sheet/plan';

const letter = (column: number): string => String.fromCharCode(65 + column);
export const at = (column: number, row: number): string => `${letter(column)}${row}`;

const isFormula = (content: Cell): content is string => typeof content === 'string' && content.startsWith('=');

export function cell(address: string, role: Role, content: Cell, format?: string): PlanCell {
  return {
    at: address,
    role,
    ...(isFormula(content) ? { formula: content } : { value: content }),
    ...(format === undefined ? {} : { format }),
  };
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
  return [
    cell(at(column, rowNumber), 'result', formula, format),
    ...Array.from({ length: columns - 1 }, (_, i): PlanCell => ({ at: at(column + 1 + i, rowNumber), role: 'header' })),
  ];
}

/** A long text has the line for itself: no unit and no note. */
export type SheetInput = readonly [name: string, value: Cell, unit: string, note: string];
/** A line with its note, or a line whose answer is a sentence. */
export type SheetStep = readonly [label: string, formula: string, unit: string, note: string] | readonly [label: string, formula: string];
/** The words stand above the lines. */
export type GuideStep = readonly [heading: string, steps: readonly SheetStep[], words?: readonly string[]];

const COLUMN_HEADS: readonly Role[] = ['header', 'header', 'header', 'header', 'header', 'header'];
const INPUT: readonly Role[] = ['label', 'input', 'unit', 'text', 'text', 'note'];
const STEP: readonly Role[] = ['label', 'result', 'unit', 'text', 'text', 'note'];

const filled = (text: string): string | undefined => (text === '' ? undefined : text);
const isStateFormula = (formula: string): boolean => formula.includes('CHECK.') || /"(fail|review)"/.test(formula);

export interface StepSheet {
  readonly list: PlanCell[];
  /** Cells with a state word. */
  readonly states: string[];
  /** Words and sentences over several columns. */
  readonly merged: string[];
  /** Cell of an input or of a step by its name. */
  place(name: string): string;
  /** Names in brackets become cells: `[wall]`. */
  refer(formula: string): string;
  /** The first row that is free. */
  readonly next: number;
}

/** Words over the whole width, one row each. */
export function paragraphs(
  rowNumber: number,
  lines: readonly string[],
  role: Role = 'text',
): { readonly list: PlanCell[]; readonly merged: string[] } {
  return {
    list: lines.map((line, i) => cell(at(0, rowNumber + i), role, line)),
    merged: lines.map((_, i) => `A${rowNumber + i}:F${rowNumber + i}`),
  };
}

/** What the sheet is about, inputs, then blocks of results with one formula a line. */
export function stepSheet(
  title: string,
  note: string,
  inputs: readonly SheetInput[],
  blocks: readonly GuideStep[],
  format: (unit: string) => string = () => '0.00',
  lead: readonly string[] = [],
): StepSheet {
  const inputHeader = 4 + (lead.length === 0 ? 0 : lead.length + 1);
  const firstInput = inputHeader + 1;
  const afterInputs = firstInput + inputs.length + 1;
  const headRows = (words: readonly string[] | undefined): number => (words === undefined ? 1 : words.length + 2);
  const places = new Map<string, string>(inputs.map(([name], i) => [name, `B${firstInput + i}`]));
  let next = afterInputs;
  for (const [, steps, words] of blocks) {
    next += headRows(words);
    for (const [label] of steps) places.set(label, `B${next++}`);
    next++;
  }
  const place = (name: string): string => {
    const found = places.get(name);
    if (found === undefined) throw new TypeError(`there is no line "${name}"`);
    return found;
  };
  const refer = (formula: string): string => formula.replace(/\[([^\]]+)\]/g, (_, name: string) => place(name));
  const about = paragraphs(4, lead);
  const list = [
    cell('A1', 'title', title),
    cell('A2', 'note', note),
    ...about.list,
    ...row(inputHeader, COLUMN_HEADS, ['Inputs', 'value', 'unit', '', '', 'note']),
    ...inputs.flatMap(([name, value, unit, words], i) =>
      row(firstInput + i, INPUT, [name, value, filled(unit), undefined, undefined, filled(words)]),
    ),
  ];
  const states: string[] = [];
  const merged = about.merged;
  inputs.forEach(([, , unit, words], i) => {
    if (unit === '' && words === '') merged.push(`B${firstInput + i}:F${firstInput + i}`);
  });
  let r = afterInputs;
  for (const [heading, steps, words] of blocks) {
    if (words !== undefined) {
      const told = paragraphs(r + 1, words);
      list.push(cell(at(0, r), 'heading', heading), ...told.list);
      merged.push(...told.merged);
      r += words.length + 1;
    }
    list.push(...row(r++, COLUMN_HEADS, [words === undefined ? heading : 'step', 'value', 'unit', '', '', 'note']));
    for (const [label, formula, unit, remark] of steps) {
      list.push(
        ...row(r, STEP, [label, refer(formula), filled(unit ?? ''), undefined, undefined, filled(remark ?? '')], format(unit ?? '')),
      );
      if (unit === undefined) merged.push(`B${r}:F${r}`);
      if (isStateFormula(formula)) states.push(`B${r}`);
      r++;
    }
    r++;
  }
  return { list, states, merged, place, refer, next };
}
