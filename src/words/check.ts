// What the view of checks says: of the selected joint, and of the formulas of the workbook.
import { whole } from './count';

export const CHECK = {
  passed: (rules: number) => `${rules} rules pass`,
  moves: 'What moves the worst engagement most',
  movesWords: 'Change of the full thread at worst case, mm: over the tolerance of an input, and for one unit more of it.',
  movesColumns: { input: 'input', now: 'now', over: 'over its tolerance', one: 'for one more' },
  yield: 'Yield beside worst case',
  yieldWords: (joints: number) =>
    `${joints} joints drawn within their tolerances. It counts on sizes about the middle of their limits; the worst case does not.`,
  noYield: 'The yield has no value',
  worst: 'worst case',
  notChecked: 'not checked',
  outside: (ppm: string) => `${ppm} ppm outside`,
  workbook: 'The workbook',
  problems: {
    broken: {
      heading: 'Cells that do not work',
      words: 'Entered again they mostly do: a workbook opened before the functions were there keeps such cells.',
    },
    refused: { heading: 'Answers that are refused', words: '' },
    state: { heading: 'Checks to review', words: '' },
    chain: {
      heading: 'Cells that wait for each other',
      words: 'Excel asks for answers at most twice a second: one table has all of them at once.',
    },
    blank: { heading: 'Blanks that count as zero', words: 'Type the zero, or the value that was forgotten.' },
    units: { heading: 'Lengths in several units in one list', words: 'Each is read in its own unit; a number alone is mm.' },
    constant: { heading: 'Numbers typed into a formula', words: 'In a cell of its own a number is seen, and changed in one place.' },
  },
  joints: 'Joints',
  pass: (passed: number, of: number) => `${passed} of ${of} pass`,
  readingSheets: 'Reading the sheets',
  again: 'Check again',
  readAnyway: 'Read it all the same',
  isLarge: (cells: number, most: number) =>
    `It fills ${whole(cells)} cells. The pane reads more than ${whole(most)} only when asked: that takes a while, and cells wait ` +
    `meanwhile.`,
  noProblem: 'No formula calls for attention.',
  isPartial: 'Stopped: not all sheets were read.',
  repair: (cells: number) => `Repair ${cells} ${cells === 1 ? 'cell' : 'cells'}`,
  repairAsked: (formulas: number) => `Enter ${formulas} formulas again? Only their own cells are written.`,
  repairFirst: (formulas: number) =>
    `${formulas} of them ${formulas === 1 ? 'stands' : 'stand'} in a table of the sheet, where a function that fills several cells ` +
    'shows #SPILL!: there INDEX takes the first of its values.',
  repairYes: 'Repair',
  repairing: 'Entering formulas again',
  repaired: (cells: number) => `${cells} cells were entered again`,
  repairStopped: (done: number, of: number) => `Stopped after ${done} of ${of} cells`,
  ofCell: {
    inFile: 'the function stands here under the name it has in a file',
    noFunction: (name: string) => `there is no function ${name}`,
    unknownName: 'the formula has a name that this workbook does not know',
    noAnswer: 'the cell waits for an answer that does not come',
    notThere: 'the function was not there when this was worked out',
    readsFault: (fault: string) => `${fault} in a cell that the formula reads`,
    typed: (text: string, argument: string) => `${text} for ${argument}`,
    zero: (cell: string, argument: string) => `${cell} is blank and counts as 0 for ${argument}`,
    units: (range: string, units: readonly string[]) => `${range} has lengths in ${units.join(' and ')}`,
    chain: (cells: number, from: string, seconds: number, asTable: number) =>
      `${cells} cells wait for each other, from ${from} on: about ${seconds} s in Excel; as one JOINT.TABLE about ${asTable} s`,
  },
  /** Of an error beside a formula of ours: what it says, and what helps. The rest have a message of their own. */
  errors: {
    '#SPILL!':
      'no room for the results: empty the cells below and to the right; in a table of the sheet take one with INDEX, or JOINT.VALUE',
    '#GETTING_DATA': 'the cell waits for its answer: calculate again, or open the pane once, when it stays so',
    '#BUSY!': 'the cell waits for its answer: calculate again, or open the pane once, when it stays so',
    '#PLACEHOLDER!': 'the cell waits for its answer: calculate again, or open the pane once, when it stays so',
    '#CONNECT!': 'Excel did not reach the add-in: see that its server can be reached, then calculate again',
    '#BLOCKED!': 'Excel does not let the add-in run: trust it when Excel asks, or ask whoever looks after Excel',
    '#TIMEOUT!': 'the answer took too long: calculate again, or ask for fewer variants or draws at once',
    '#UNKNOWN!': 'the cell holds a kind of value that this Excel does not know: a newer one made it',
    '#EXTERNAL!': 'a cell that the formula reads takes its value from outside, and that failed',
    '#FIELD!': 'a cell that the formula reads holds a data type without the field that is asked for: give a number or a text',
    '#CALC!': 'a list that the formula reads is empty, or holds lists itself',
  },
};
