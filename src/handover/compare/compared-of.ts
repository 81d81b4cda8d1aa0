// The cells of a file, with remarks and colours, for a comparison.
import { type FileContents, sourceOfFile } from '../read/from-file';
import type { ComparedWorkbook, Remarks } from './seen';

export interface RemarkedContents extends FileContents {
  readonly sheets: readonly (FileContents['sheets'][number] & Partial<Remarks>)[];
}

export function comparedOf(name: string, contents: RemarkedContents): ComparedWorkbook {
  const source = sourceOfFile(name, contents);
  return {
    ...source,
    sheets: source.sheets.map((sheet, i) => {
      const { comments, fills, beneath } = contents.sheets[i] ?? {};
      return { ...sheet, ...(comments && { comments }), ...(fills && { fills }), ...(beneath && { beneath }) };
    }),
  };
}
