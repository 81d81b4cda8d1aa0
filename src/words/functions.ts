// What the view of functions says, and the form of one function.
import type { Card, Topic } from '../core/card';
import { NOT_COVERED_SENTENCES } from './not-covered';
import { count } from './count';

/** Each is called by its own name. */
const TOPICS = {
  Units: 'Units',
  'Screws and standard data': 'Screws and standard data',
  'Holes and core pins': 'Holes and core pins',
  Draft: 'Draft',
  'Boss and wall': 'Boss and wall',
  'Head recess': 'Head recess',
  'Grip, engagement, screw length': 'Grip, engagement, screw length',
  'Strength (estimates)': 'Strength (estimates)',
  'Board and supports': 'Board and supports',
  'Inserts and nuts': 'Inserts and nuts',
  'Snap hooks (estimates)': 'Snap hooks (estimates)',
  'Pattern of holes': 'Pattern of holes',
  'Ribs, lip, mould': 'Ribs, lip, mould',
  Tolerances: 'Tolerances',
  'Checks, variants, trace': 'Checks, variants, trace',
  'The joint as one table': 'The joint as one table',
} satisfies Readonly<Record<Topic, string>>;

export const FUNCTIONS = {
  heading: 'Functions',
  find: 'Find by name or trade word',
  such: 'standoff, core pin, draft …',
  all: (functions: number) => `${functions} functions`,
  found: (found: number, of: number) => `${found} of ${of} functions`,
  nothing: 'Nothing has this word. Try the part (boss, recess, rib), or what you want to know (length, torque, sink).',
  topics: TOPICS,
  notCovered: NOT_COVERED_SENTENCES,
  byDefault: (defaults: string) => `. Not asked, so taken by default: ${defaults}`,
  take: (id: string) => `Take ${id} to the sheet`,
  goesInto: 'Goes into',
  useInstead: (place: string) => `Use ${place} instead`,
  about: 'Formula, limits and sources',
  items: {
    formula: 'Formula',
    symbols: 'Symbols',
    limits: 'Limits',
    source: 'Source',
    held: 'How it is known',
    caution: 'Caution',
    example: 'Example',
  },
  kinds: {
    geometry: 'geometry',
    'standard table': 'standard table',
    'handbook formula': 'handbook formula',
    'common practice': 'common practice',
  } satisfies Readonly<Record<Card['kind'], string>>,
  helpPage: 'Help page (new window)',
  helpFile: (id: string) => `help/${id}.html`,
  optional: 'optional',
  takeCell: 'Take cell',
  takeCellFor: (argument: string) => `Take cell for ${argument}`,
  /** Of an argument that takes several cells. */
  range: '. For a range take its first and then its last cell, or type values with ; between them',
  blank: {
    zero: 'blank counts as 0',
    absent: 'may be left out',
    explicit: (zero: string) => `for none write ${zero}`,
    by: (value: string) => `blank counts as ${value}`,
    as: (argument: string) => `blank: as ${argument}`,
    from: (argument: string) => `blank: from ${argument}`,
  },
  result: 'Result',
  answer: 'Answer',
  rowsMore: (rows: number) => `and ${rows} rows more`,
  noResult: 'No result.',
  seeAbove: (argument: string) => `See ${argument} above.`,
  bySheet: (argument: string) => `${argument} is worked out by the sheet: the result shows once the formula is inserted.`,
  noSheet: 'There is no sheet here: copy the formula, or open the pane in a workbook.',
  insert: 'Insert',
  insertInto: 'Insert into the sheet',
  insertFirst: 'Insert its first value',
  insertAnyway: 'Insert all the same',
  inserted: (place: string) => `Inserted in ${place}`,
  writeBack: 'Write back',
  writtenBack: (place: string) => `Written back into ${place}`,
  stillToGive: (names: string) => `Still to give: ${names}`,
  allFunctions: 'All functions',
  /** What spills has no room in a table. */
  inTable: (at: string, table: string) => `${at} is in the table ${table}, where a function that fills several cells shows #SPILL!. `,
  valueInTable: 'JOINT.VALUE gives one result of a row there. ',
  indexInTable: 'INDEX gives one of its values: the first, or another one when you change its last two numbers.',
  replaced: (at: string, held: string) => `${at} holds ${held}. It will be replaced.`,
  noRoom: (rows: number, columns: number, from: string, used: string) =>
    `The table takes ${count(rows, 'row')} and ${count(columns, 'column')} from ${from} on, and ${used} is not empty. ` +
    'Until it is, the sheet shows #SPILL!.',
};
