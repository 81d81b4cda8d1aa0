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
