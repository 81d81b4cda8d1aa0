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

/** Why a file is not read, with what stands in the sentence. */
export const FILE_FAULTS = {
  noWorkbook: (): string => 'this is not a workbook file (.xlsx), or it is broken',
  over4GB: (): string => 'the file is in the form for files over 4 GB (zip64), which is not read: save it in Excel as .xlsx',
  partOver4GB: (part: string): string =>
    `the part "${part}" is kept in the form for files over 4 GB (zip64), which is not read: save it in Excel as .xlsx`,
  password: (): string => 'the file is protected by a password, or of the old kind .xls: save it as .xlsx without a password',
  encrypted: (part: string): string => `the part "${part}" is encrypted: save the file without a password`,
  signed: (): string => 'the file is signed, and an edit would break the signature: save a copy of it without one',
  runs: (part: string): string => `the file can run something by itself ("${part}"): save it as .xlsx without macros`,
  leadsOut: (file: string, targets: string): string => `${file} leads out of the file: ${targets}`,
  tooLarge: (size: string): string => `the file is larger than ${size}`,
  tooLargeUnpacked: (size: string): string => `unpacked the file would be larger than ${size}`,
  tooManyParts: (most: number): string => `the file has more than ${most} parts`,
  tooTight: (part: string, times: number): string =>
    `the part "${part}" is packed more than ${times} times: files like this are made to fill a memory`,
  tooManyCells: (most: number): string => `the sheets have more than ${most} cells`,
  tooWide: (most: number): string => `the sheets reach over more than ${most} cells`,
  formulasTooWide: (most: number): string => `the formulas of a sheet fill more than ${most} cells`,
  sharedTooLong: (most: number): string => `the shared formulas come to more than ${most} characters`,
  noSheet: (): string => 'the workbook has no sheet with cells',
  sheetTwice: (sheet: string): string => `the workbook has the sheet "${sheet}" twice`,
  sheetMissing: (sheet: string): string => `the sheet "${sheet}" is missing in the file`,
  damaged: (part: string): string => `the part "${part}" is damaged`,
  checksum: (part: string): string => `the part "${part}" is damaged: its checksum is another`,
  notLoaded: (): string => 'the part of the page that works on files could not be loaded',
  broken: (part: string, why: string): string => `the part "${part}" is broken: ${why}`,
  /** Of what is seldom, and of no use to whoever opens the file. */
  inside: (words: string): string => words,
};

export type FileFaultWords = typeof FILE_FAULTS;
type FaultKey = keyof FileFaultWords;

/** As data: a worker hands it to the page, which says it in its language. */
export interface FileFault {
  readonly key: FaultKey;
  readonly parts: readonly (string | number)[];
  /** Of several files the one it is about. */
  readonly file?: string;
}

/** What was thrown, where it may be about a file. */
export interface Trouble {
  readonly message: string;
  readonly fault?: FileFault | undefined;
}

/** A file that is no workbook, is broken, or is refused. */
export class UnreadableFile<Key extends FaultKey = FaultKey> extends Error {
  override readonly name = 'UnreadableFile';
  readonly fault: FileFault;

  constructor(key: Key, ...parts: Parameters<FileFaultWords[Key]>) {
    super((FILE_FAULTS[key] as (...inside: FileFault['parts']) => string)(...parts));
    this.fault = { key, parts };
  }
}

/** What was thrown, of several files. */
export const troubleWith = (file: string, { message, fault }: Trouble): Error & Trouble =>
  Object.assign(new Error(`${file}: ${message}`), { fault: fault && { ...fault, file } });
