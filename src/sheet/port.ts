// What a task needs of a host that holds sheets. Excel, the bench and a file each implement it.
import type { Cell } from '../core/kinds';
import type { Picture, SheetPlan } from './plan';

/** One cell as the host holds it. */
export interface SheetCell {
  readonly value: Cell | null;
  readonly formula?: string;
  /** The text that goes with an error value. */
  readonly message?: string;
}

export interface SheetPort {
  sheetNames(): Promise<readonly string[]>;
  /** Adds a sheet; a name that is taken gets a number behind it. Answers the name used. */
  add(plan: SheetPlan): Promise<string>;
  /** The used rectangle of a sheet, from A1, spilled cells included. */
  read(sheetName: string): Promise<readonly (readonly SheetCell[])[]>;
  /** Address of the active cell and its sheet. */
  selection(): Promise<Selection | null>;
  /** Calls the listener at each new selection and each change of the selected cell; answers how to stop. */
  onSelection(listener: (selection: Selection) => void): () => void;
  /** Writes one cell as if typed; text that begins with `=` is a formula. */
  write(sheetName: string, at: string, content: Cell): Promise<void>;
  goTo(sheetName: string, at: string): Promise<void>;
  remove(sheetName: string): Promise<void>;
  /** Puts a picture over the cells, where the host can. */
  placePicture?(sheetName: string, picture: Picture): Promise<void>;
}

export interface Selection {
  readonly sheetName: string;
  readonly at: string;
}
