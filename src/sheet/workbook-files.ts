// The workbook of a host as a file.
import type { DefinedName } from './plan';

export interface NamedFile {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export interface WorkbookFiles {
  /** The workbook as it is now, in the form of a file. */
  read(): Promise<NamedFile>;
  /** Opens a file as a new workbook that is not saved yet; left out where the host cannot. */
  open?(bytes: Uint8Array): Promise<void>;
  /** Keeps a hidden name with the workbook; answers how to take it back, or nothing where it was there. */
  keepName(name: DefinedName): Promise<(() => Promise<void>) | undefined>;
}
