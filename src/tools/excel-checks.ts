// The list for someone who has Excel: what to type, and what must be seen.
import type { Cell } from '../core/kinds';

/** One thing to type in real Excel, and what must be seen. */
export interface ExcelCheck {
  readonly about: string;
  readonly formula?: string;
  /** A value; or an error with the beginning of its message. */
  readonly shows: Cell | { readonly code: string; readonly message: string };
  /** What to do, where there is no formula; what else may be seen and what it would mean. */
  readonly note?: string;
}

export const EXCEL_CHECKS: readonly ExcelCheck[] = [
  { about: 'a single value to a range argument', formula: '=ENCL.GRIP(2.5)', shows: 2.5 },
  {
    about: 'a blank in a range of one cell, on the web above all',
    formula: '=ENCL.GRIP(Z99)',
    shows: { code: '#VALUE!', message: 'layers is blank' },
  },
  {
    about: 'a range to a scalar argument, A1 = 3, A2 = 4',
    formula: '=ENCL.BOSS.OD(A1:A2,1.2)',
    shows: { code: '#VALUE!', message: 'hole is a range of 2 × 1 cells' },
    note: 'two results spilled downwards mean that Excel called once for each cell: right, and to be noted',
  },
  {
    about: 'something without a value inside a table: a text, never an error value',
    formula: '=INDEX(ENCL.JOINT.TABLE({"screw","head","wall";"ST2.9","pan",2.5;"ST2.9","pan","x"},{"feature wall","state"}),3,1)',
    shows: 'no value: wall is "x": not a length; give 4.2, "4.2 mm" or "0.167 in"; units: mm, cm, m, µm, in, mil',
    note: 'the table by itself, without INDEX, must spill over 3 × 2 cells',
  },
  { about: 'a range argument left out', formula: '=ENCL.STACK.WORST({0.1;0.2})', shows: 0.3 },
  {
    about: 'a result of one cell, typed in a column of an Excel Table',
    formula: '=ENCL.STACK.SHARE(0.1)',
    shows: 1,
    note: '#SPILL! means that a Table needs INDEX(…,1,1) around it',
  },
  { about: 'blank cells for optional arguments', formula: '=ENCL.BOSS.OD(3,1.2,Z99,Z98)', shows: 5.4 },
  { about: 'an error handed in', formula: '=ENCL.BOSS.OD(1/0,1.2)', shows: { code: '#DIV/0!', message: 'hole is #DIV/0!' } },
  {
    about: 'the message of a refusal: at the cell, or not shown',
    formula: '=ENCL.BOSS.OD("three",1.2)',
    shows: { code: '#VALUE!', message: 'hole is "three": not a length' },
  },
  {
    about: 'the same message as text',
    formula: '=ENCL.REASON("BOSS.OD","three",1.2)',
    shows: 'hole is "three": not a length; give 4.2, "4.2 mm" or "0.167 in"; units: mm, cm, m, µm, in, mil',
  },
  {
    about: 'where the comma is the decimal sign: `=ENCL.BOSS.OD("4,5 mm";1,2)`; then add every sheet and every guide from the pane',
    shows: '6,9; each is added, none says that Excel does not take it',
  },
  {
    about: 'the same, *Functions*, BOSS.OD, wall `=SUMME(B4;0,5)` (or as your language calls it), *Insert*',
    shows: 'the cell holds what was typed, with a value; formulas are shown with semicolons',
  },
  {
    about: 'the demo: add it from the pane, change the length on the sheet Joint',
    shows:
      'the pane says that the sheet is being worked out, if it takes long; settled in about a second, no #BUSY! left, the figure follows',
  },
  {
    about: 'calculation set to manual, an input changed',
    shows: 'the pane says that it is newer than the cells; after F9 it says nothing more',
  },
  {
    about: 'a workbook with a function, opened anew, the pane never opened',
    shows: 'the cells have values; the moves of the selection are as quick as without the add-in',
  },
  {
    about: 'the pane closed and opened again',
    shows: 'the last view, and the joint of the selected row; nothing asks to sign in',
  },
  {
    about: 'in a column of a Table: insert BOSS.OD from the pane into one cell, then GRIP.LIMITS into another',
    shows:
      'the other cells of the column are as before; GRIP.LIMITS is offered with INDEX, and none shows #SPILL!; *Take back*, or Ctrl+Z, ' +
      'brings the old content',
  },
  {
    about: 'a sheet of 50,000 cells and more: hold an arrow key; then *Check*',
    shows: 'no stutter; the pane follows when the key is let go; *Check* asks before it reads',
  },
  {
    about: 'four cells with functions of ours, each reading the one before; *Check*',
    shows: 'it names the chain, and what one table would save',
  },
  {
    about: 'the pane as narrow as it goes, in the dark theme, and at 200 %: *Enlarge* under the figure, Escape',
    shows: 'every word can be read, nothing is cut off; Escape leads back to the button',
  },
  {
    about: 'Excel 2021 (LTSC) or a Windows without WebView2, where there is one',
    shows: 'functions and pane work, or the pane says in a sentence that WebView2 is missing; to be noted either way',
  },
  { about: 'save, close, open', shows: 'the same values; formulas begin with =ENCL.' },
];
