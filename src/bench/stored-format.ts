// The form in which a browser keeps the workbook, today's and those before.
import { type Damage, snapshotFault, type Snapshot } from '../hosts/univer/snapshot';

export const format = 2;

export interface Kept {
  readonly format: typeof format;
  /** Mark of the demo that the workbook started from. */
  readonly demo: string;
  /** When it was kept, as ISO 8601; blank where the form did not tell. */
  readonly keptAt: string;
  readonly workbook: Snapshot;
}

/** By the number of a form that was: makes the next one of it. */
const next: Readonly<Record<number, (kept: object) => object>> = {
  1: kept => ({ ...kept, format: 2, keptAt: '' }),
};

export type StoredWorkbook =
  | { readonly is: 'workbook'; readonly kept: Kept }
  /** Kept by a page that knows more than this one. */
  | { readonly is: 'newer' }
  | { readonly is: 'damaged'; readonly why: Damage };

export function readStored(text: string): StoredWorkbook {
  try {
    let data = JSON.parse(text) as Partial<Kept> | null;
    if (typeof data?.format !== 'number') return { is: 'damaged', why: W => W.noForm };
    if (data.format > format) return { is: 'newer' };
    for (let step = next[data.format]; step !== undefined; step = next[data.format as number]) data = step(data);
    const { demo, keptAt, workbook } = data;
    if (data.format !== format || typeof demo !== 'string' || typeof keptAt !== 'string') return { is: 'damaged', why: W => W.otherForm };
    const why = snapshotFault(workbook);
    return why === undefined ? { is: 'workbook', kept: data as Kept } : { is: 'damaged', why };
  } catch {
    return { is: 'damaged', why: W => W.cut };
  }
}
