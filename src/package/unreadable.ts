// What a file that anybody may have made must keep to, and how it is refused.

export const MOST_PACKED_BYTES = 20 * 1024 * 1024;
export const MOST_UNPACKED_BYTES = 200 * 1024 * 1024;
export const MOST_PARTS = 2_000;
/** A sheet of equal rows packs well; what packs better than this and is not small was made to harm. */
export const MOST_RATIO = 200;
export const SMALL_BYTES = 1024 * 1024;
/** Of parts that are held as a whole: the workbook, its links, tables. Others are read as they come. */
export const MOST_ELEMENTS = 100_000;
export const MOST_DEPTH = 128;

/** A file that is no workbook, is broken, or is refused. */
export class UnreadableFile extends Error {
  override readonly name = 'UnreadableFile';
}

export const NO_WORKBOOK = 'this is not a workbook file (.xlsx), or it is broken';
