// What the views say, in English.
import { ABOUT } from './about';
import { CELL } from './cell';
import { CHECK } from './check';
import { FIGURE } from './figure';
import { COMPARE, HAND_OVER } from './files';
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
  handOver: HAND_OVER,
  compare: COMPARE,
  about: ABOUT,
};

export type ViewWords = typeof VIEWS;
