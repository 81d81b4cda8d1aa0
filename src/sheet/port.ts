// What a task needs of a host that holds sheets. Excel, the bench and a file each implement it.
import type { Cell } from '../core/kinds';
import type { Area, Rectangle } from './addresses';
import type { Dress } from './dress';
import type { Picture, SheetPlan } from './plan';
import type { Signs } from './signs';

/** One cell as the host holds it. */
export interface SheetCell {
  readonly value: Cell | null;
  readonly formula?: string;
  /** The text that goes with an error value. */
  readonly message?: string;
  /** The cell whose formula spilled into this one, `F3`, where the host tells. */
  readonly spilledFrom?: string;
}

/** A rectangle of a sheet as it was read. */
export interface SheetPart {
  /** What is known by it: what holds no cell of `cells` is blank. */
  readonly covers: Area;
  /** The first of the cells. */
  readonly top: number;
  readonly left: number;
  readonly cells: readonly (readonly SheetCell[])[];
}

/** How far the host is with its values: `manual` where they wait for the user. */
export type CalculationState = 'settled' | 'pending' | 'manual';

export interface Around {
  readonly parts: readonly SheetPart[];
  /** All that the sheet fills; null where it is blank. */
  readonly used: Rectangle | null;
  readonly calculation: CalculationState;
}

export interface SheetListener {
  /** The user moved. */
  selected(selection: Selection): void;
  /** Cells have another content; without an area, any of the sheet. */
  changed(sheetName: string, area?: Rectangle): void;
  /** Values of the sheet were worked out anew. */
  calculated(sheetName: string): void;
  /** The sheet was removed, has another name, or its workbook was closed. */
  gone(sheetName: string): void;
}

/** A cell and what goes into it as if typed; text that begins with `=` is a formula. */
export interface CellEntry extends Selection {
  readonly content: Cell;
  /** The formula is in the language and the signs of the user, as typed there. */
  readonly isLocal?: true;
  /** A text, whatever it looks like: no formula, number or date is read into it. */
  readonly isText?: true;
}

/** What is being typed into a cell. */
export interface Typed {
  readonly text: string;
  /** So many characters stand before it. */
  readonly caret: number;
}

export interface SheetPort {
  sheetNames(): Promise<readonly string[]>;
  /** Cells of the used rectangle of each sheet. */
  sizes(): Promise<readonly { readonly sheetName: string; readonly cells: number }[]>;
  /** Adds a sheet; a name that is taken gets a number behind it. Answers the name used. */
  add(plan: SheetPlan): Promise<string>;
  /** The used rectangle of a sheet, from A1, spilled cells included: however large. */
  read(sheetName: string): Promise<readonly (readonly SheetCell[])[]>;
  /** What stands round a cell and at the top of its region, in one exchange and of a bounded size. */
  around(place: Selection): Promise<Around>;
  /** Areas as far as they are filled; those of sheets that are not there are left out. */
  readAreas(areas: readonly Area[]): Promise<readonly SheetPart[]>;
  /** Address of the active cell and its sheet. */
  selection(): Promise<Selection | null>;
  /** Tells what happens in the workbook; answers how to stop. */
  watch(listener: SheetListener): () => void;
  /** Writes these cells and no others; answers what stood in them. */
  write(entries: readonly CellEntry[]): Promise<readonly CellEntry[]>;
  /** The signs in which the user types formulas; those of a file where the host does not tell. */
  signs?(): Promise<Signs>;
  /** The name of the table, as the host has tables, that a cell is in: nothing spills there. */
  tableAt?(place: Selection): Promise<string | undefined>;
  /** Puts looks on cells and writes into none; answers how to take them off again. Left out where the host cannot. */
  dress?(dress: Dress): Promise<() => Promise<void>>;
  /** What other hosts have of their own: looks leave out the words to choose from, and rows are sorted from outside. */
  readonly lacks?: readonly ('drop-downs' | 'sort')[];
  /** Tells of what is being typed into a cell, null when it is taken in or given up; answers how to stop. */
  watchTyping?(listener: (typed: Typed | null) => void): () => void;
  goTo(sheetName: string, at: string): Promise<void>;
  remove(sheetName: string): Promise<void>;
  /** Puts a picture over the cells, where the host can. */
  placePicture?(sheetName: string, picture: Picture): Promise<void>;
}

export interface Selection {
  readonly sheetName: string;
  readonly at: string;
}
