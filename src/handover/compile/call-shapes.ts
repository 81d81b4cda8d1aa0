// Formulas that are the same but for their place: a column filled down is one shape.
import { cellPosition, columnNumber } from '../../sheet/addresses';
import type { SourceWorkbook } from '../../sheet/workbook-values';

const CELL = /(\$?)\b([A-Z]{1,3})(\$?)(\d{1,7})\b(?!\()/g;

/** A formula with its cells as steps from where it stands. Two of the same text do the same thing at their places. */
export function shapeOf(formula: string, at: string): string {
  const { row, column } = cellPosition(at);
  return formula.replace(CELL, (_, fixedColumn: string, letters: string, fixedRow: string, digits: string) => {
    const across = fixedColumn === '' ? `[${columnNumber(letters) - column}]` : letters;
    return `C${across}R${fixedRow === '' ? `[${Number(digits) - 1 - row}]` : digits}`;
  });
}

/** Cells of one shape on one sheet. */
export interface CallShape {
  readonly key: string;
  readonly count: number;
}

export class CallShapes {
  private readonly shapes = new Map<string, string>();
  private readonly counts = new Map<string, number>();

  constructor({ sheets }: Pick<SourceWorkbook, 'sheets'>) {
    for (const { name, cells } of sheets)
      for (const [at, { formula }] of cells) {
        if (formula === undefined || !/ENCL\./i.test(formula)) continue;
        const key = `${name}!${shapeOf(formula, at)}`;
        this.shapes.set(`${name}!${at}`, key);
        this.counts.set(key, (this.counts.get(key) ?? 0) + 1);
      }
  }

  of(sheet: string, at: string): CallShape {
    const key = this.shapes.get(`${sheet}!${at}`) ?? '';
    return { key, count: this.counts.get(key) ?? 0 };
  }
}
