// What the pane needs of the page that shows it.
import type { SheetPort } from '../sheet/port';
import type { WorkbookFiles } from '../sheet/workbook-files';
import type { Words } from '../words/english';
import type { Speech } from '../words/speech';
import type { ListedFunction } from './function-list';

/** Keeps how the pane was left; what matters for a result lives in cells. */
export interface KeptView {
  get(key: string): string | null;
  set(key: string, value: string): void;
}

export interface PaneServices extends Omit<Speech, 'language'> {
  /** The workbook; left out where the pane stands alone. */
  readonly port?: SheetPort;
  /** Where the workbook is. */
  readonly host: keyof Words['frame']['hosts'];
  /** The page itself says what the selected cell holds. */
  readonly saysCell?: true;
  /** The entries of functions.json. */
  readonly functions: readonly ListedFunction[];
  /** The workbook as a file; left out where there is none. */
  readonly files?: WorkbookFiles;
  /** Asked for when the pane is drawn; undefined where the page may keep nothing. */
  readonly kept?: () => Promise<KeptView | undefined>;
  /** The page with a workbook of its own, from a page that has none or another. */
  readonly benchUrl?: string;
}
