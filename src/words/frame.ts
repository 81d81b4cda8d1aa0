// What stands round the views of the pane, and what they share.
import type { Trouble } from '../package/unreadable';
import { whole } from './count';

export const FRAME = {
  views: 'Views',
  names: {
    Figure: 'Figure',
    Functions: 'Functions',
    Cell: 'Cell',
    Table: 'Table',
    Sheets: 'Sheets',
    Check: 'Check',
    'Hand-over': 'Hand-over',
    Compare: 'Compare',
    About: 'About',
  },
  hosts: { excel: 'your workbook', bench: 'the bench', page: 'this page' },
  opening: 'Opening …',
  viewFailed: (message: string) => `This view failed: ${message}`,
  tryAgain: 'Try again',
  calculation: {
    settled: '',
    pending: 'The sheet is being worked out: values may still change.',
    manual: 'Calculation is manual: what the pane works out is newer than the cells until you press F9.',
  },
  foot: 'An aid to sizing, for trained people: make and test a prototype.',
  allCautions: 'All cautions',
  takeBack: 'Take back',
  takenBack: 'Taken back: the cells hold what they held before',
  stop: 'Stop',
  cancel: 'Cancel',
  failed: (what: string, { message }: Trouble) => `${what}: ${message}`,
  notDrawn: 'the figure could not be drawn',
  noPicture: 'the browser made no picture',
  noWorkbook: (what: string) => `There is no workbook here. Open the pane in a workbook to see ${what}.`,
  inSection: 'its joint in section',
  everyRule: 'every rule of its joint',
  reading: 'Reading the workbook …',
  noJointHere: 'No joint round the selected cell',
  largeSheet: (cells: number, what: string) =>
    `This sheet fills ${whole(cells)} cells, and only those round the selected one are read. Select a row of a joint to see ${what}, ` +
    'or read the whole workbook in the view Check.',
  noJointYet: 'No joint in this workbook yet',
  howToBegin: (what: string) =>
    'Insert the sheet Joint or Variants from the view Sheets, or write input names such as screw, wall and boss OD with their values ' +
    `beside or below them. Then select a row to see ${what}.`,
  unreadable: 'This joint cannot be read',
  goTo: (place: string) => `Go to ${place}`,
  variant: (number: number) => `Variant ${number}`,
  joint: 'Joint',
  jointOn: (sheet: string) => `Joint on ${sheet}`,
  numberOf: (number: number, of: number) => `${number} of ${of}`,
  variantBefore: 'Variant before',
  nextVariant: 'Next variant',
  met: (value: string, is: string, limit: string) => `${value} is ${is} ${limit}`,
  /** On which side of its limit a value stands that meets it. */
  metSide: { below: 'at least', above: 'at most', 'at most': 'above', 'at least': 'below' },
  inCell: (name: string, at: string) => `${name} in ${at}`,
  passesWith: (remedy: string) => `passes with ${remedy}`,
  /** What stands between the changes of a remedy, and behind one. */
  remedyWords: { ' with ': ' with ', '; or ': '; or ', '(steel-safe)': '(steel-safe)' },
  noPlace: {
    below: (name: string) => `${name} has no column yet: add one in the range that is read`,
    beside: (name: string) => `${name} has no row yet: add one in the range that is read`,
    apart: (name: string) => `${name} has no place yet: add one in the range that is read`,
  },
};
