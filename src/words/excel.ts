// What is said where Excel refuses: a sentence behind what was being done.
import { whole } from './count';

export const EXCEL = {
  /** By the code that Excel answers with. */
  codes: {
    AccessDenied: 'the sheet or the workbook is protected',
    InsertDeleteConflict: 'Excel cannot insert or delete here',
    InvalidArgument: 'Excel does not take this: a formula that it cannot read, or an address that it does not know',
    ItemNotFound: 'the sheet is not there any more',
    Timeout: 'Excel did not answer in time',
  },
  tooOld: (needed: string) =>
    `This Excel lacks what the pane works with (ExcelApi ${needed}). The functions work; for the pane take Excel 2021, Microsoft 365 or ` +
    'Excel on the web.',
  noSheet: (name: string) => `there is no sheet "${name}"`,
  manyCells: (cells: number, most: number) =>
    `the ranges hold ${whole(cells)} cells, and the pane reads ${whole(most)}: name smaller ones, or insert the formula without its ` +
    'preview',
  longChoices: (range: string) => `the words to choose from in ${range} are too long for Excel`,
  localInTable: 'into a table the pane writes formulas with English names of functions only: type this one into the cell itself',
  noFile:
    'Excel does not give the workbook as a file. Leave the cell that is being typed into, press Enable Editing where the workbook is in ' +
    'Protected View, save it once, and try again',
  fileStopped: (part: number, of: number) => `Excel stopped giving the workbook at part ${part} of ${of}: try again`,
  fileGrew: 'The workbook grew while Excel gave it: try again.',
  fileShort: (bytes: number, of: number) => `Excel gave ${bytes} of the ${of} bytes of the workbook: try again.`,
};
