// What the views say from the start, in German.
import type { ViewWords } from '../views';
import { CELL } from './cell';
import { CHECK } from './check';
import { DRAWN } from './drawn';
import { EXCEL } from './excel';
import { FIGURE } from './figure';
import { FRAME } from './frame';
import { FUNCTIONS } from './functions';
import { SHEETS } from './sheets';
import { TABLE } from './table';

export const VIEWS: ViewWords = {
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
