// An argument of a call as it was typed, and as it is bound: a reference on the hand-over with what must hold for it.
import type { Param } from '../../../core/card';
import type { Ref } from '../../../plain/spreadsheet';
import { address, type Area, fixedCell, isOneCell } from '../../../sheet/addresses';
import { areaOf, type FormulaNode } from '../../../sheet/formula';

export interface BoundArgument {
  readonly ref: Ref;
  /** Conditions that hold while the inputs are within limits, and while what is not followed is as it was sent. */
  readonly conditions: readonly string[];
  /** False where the supplier cannot change this input on a sheet. */
  readonly live: boolean;
}

export interface Argument {
  readonly node: FormulaNode | null;
  readonly formula: string;
  readonly sheet: string;
  /** The arguments before it, by name. */
  readonly preceding: ReadonlyMap<string, Ref>;
}

export const labelOf = ({ name }: Param): string => name.replace(/_/g, ' ');

export const scalarText = (ref: Ref | undefined): string | undefined => (ref !== undefined && 'text' in ref ? ref.text : undefined);

export const isLiteral = (node: FormulaNode | null): boolean => node === null || node.type === 'Literal';

export const isSignedLiteral = (node: FormulaNode | null): boolean =>
  isLiteral(node) || (node?.type === 'UnaryExpression' && isLiteral(node.arguments?.[0] ?? null));

export const cellOf = (area: Area): string => fixedCell(area.sheet, area.top, area.left);

export const addressOf = (area: Area): string => address(area.top, area.left);

/** The one cell that an argument is. */
export function oneCell({ node, sheet }: Argument): Area | undefined {
  const area = node === null ? undefined : areaOf(node, sheet);
  return area !== undefined && isOneCell(area) ? area : undefined;
}

/** The cell with which a joined text begins: `B5` of `B5&" "&B6`. */
export function firstCell({ node, sheet }: Argument): { readonly node: FormulaNode; readonly area: Area } | undefined {
  let first = node;
  while (first?.type === 'BinaryExpression' && first.operator === '&') first = first.arguments?.[0] ?? null;
  const area = first === null || first === node ? undefined : areaOf(first, sheet);
  return first !== null && area !== undefined && isOneCell(area) ? { node: first, area } : undefined;
}

/** The cells of a row or column. */
export function rowsOf(area: Area | undefined): readonly Area[] | undefined {
  if (area === undefined) return undefined;
  const isColumn = area.bottom > area.top;
  return Array.from({ length: isColumn ? area.bottom - area.top + 1 : area.right - area.left + 1 }, (_, i): Area => {
    const [top, left] = isColumn ? [area.top + i, area.left] : [area.top, area.left + i];
    return { sheet: area.sheet, top, left, bottom: top, right: left };
  });
}

/** Rows behind the last one are left out while they are blank. */
export const spareRows = (areas: readonly Area[]): string[] => areas.map(area => `OR(${cellOf(area)}="",${cellOf(area)}=0)`);
