// What the view About says.
import { CAUTIONS } from './cautions';

export const ABOUT = {
  heading: 'About',
  what:
    'Cell functions for the screw joints of two-part moulded housings: from screw, wall and board to boss, core pin, head recess, draft ' +
    'and screw length, with tolerances, checks and the source of every value.',
  noWorkbook: 'There is no workbook here.',
  seeAll: 'Type =ENCL. in a cell to see every function.',
  before: 'Before you rely on a number',
  cautions: CAUTIONS,
  bench: 'Try the functions on the bench, outside a spreadsheet program (new window)',
};
