// The cells of a file, with remarks, colours and what formats make of numbers, for a comparison.
import { type FileContents, sourceOfFile } from '../read/from-file';
import type { ComparedWorkbook, Remarks, SeenCell } from './seen';

export interface RemarkedContents extends FileContents {
  readonly sheets: readonly (FileContents['sheets'][number] &
    Partial<Remarks> & { readonly shown?: ReadonlyMap<string, { readonly as: string; readonly said: string }> })[];
}

export function comparedOf(name: string, contents: RemarkedContents): ComparedWorkbook {
  const source = sourceOfFile(name, contents);
  return {
    ...source,
    sheets: source.sheets.map((sheet, i) => {
      const { comments, fills, beneath, shown } = contents.sheets[i] ?? {};
      const cells = new Map<string, SeenCell>(sheet.cells);
      for (const [at, { as, said }] of shown ?? []) {
        const cell = cells.get(at);
        if (cell !== undefined) cells.set(at, { ...cell, said, isDate: as !== 'share' });
      }
      return { ...sheet, cells, ...(comments && { comments }), ...(fills && { fills }), ...(beneath && { beneath }) };
    }),
  };
}
