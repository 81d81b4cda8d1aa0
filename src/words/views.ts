// What the views say from the start, in English.
import { ENGLISH_WORDS as DRAWN } from '../figure/words';
import { CELL } from './cell';
import { CHECK } from './check';
import { EXCEL } from './excel';
import { FIGURE } from './figure';
import { FRAME } from './frame';
import { FUNCTIONS } from './functions';
import { SHEETS } from './sheets';
import { TABLE } from './table';

export const VIEWS = {
  frame: FRAME,
  figure: FIGURE,
  functions: FUNCTIONS,
  cell: CELL,
  table: TABLE,
  sheets: SHEETS,
  check: CHECK,
  drawn: DRAWN,
  excel: EXCEL,
};

export type ViewWords = typeof VIEWS;
