// What is said of cells on the way to a copy.

/** Formulas outside cells that call a function of ours, by what they stand in. */
const ELSEWHERE = {
  condition: 'condition',
  validation: 'validation',
  name: 'name',
  column: 'column',
  totals: 'totals',
  sparkline: 'sparkline',
  chart: 'chart',
  pivot: 'pivot',
  other: 'other',
};

export const FINDINGS = {
  // cells
  changedHere: (shown: string): string => `on this copy its formula would give ${shown}: it reads something that had to change`,
  valueKept: 'the value is the one that the workbook had',
  formulas: (count: number, named: string): string => `${count} formulas, ${named}`,
  gave: (id: string, shown: string): string => `${id} gave ${shown}`,
  inputsNotKnown: 'its inputs are not known here',
  valueNotKnown: 'its value is not known here',
  inputsAreTexts: 'its inputs are texts that no formula follows',
  inputsNotFollowed: 'its inputs cannot be followed',
  onlyPlainRanges: 'inputs that are no plain range, a base and units in headings are not followed',
  longList: (cells: number, most: number): string => `a list of ${cells} cells is not followed, of ${most} at most`,
  notFollowed: (name: string): string => `${name === '#' ? 'the sign #' : name} is not followed`,
  noPlainFormula: 'no plain formula',
  seeSheet: (sheet: string): string => `see sheet ${sheet}`,
  withoutValue: 'outputs without a value for these inputs',
  row: (row: number): string => `row ${row}`,
  moreRows: (count: number): string => `and ${count} more rows`,
  allAsSent: 'all as sent',
  unread: 'the formula cannot be read',
  formulaStays: 'the formula stays as it is',
  circular: 'it leads back to itself',
  textCut: (characters: number): string => `the text has ${characters} characters and was cut`,
  charactersTaken: 'characters that deceive or control were taken out of the text',
  spacesBlanked: 'spaces alone became a blank cell',
  became: (typed: string, number: string): string => `"${typed}" became ${number}`,
  staysAsTyped: (name: string): string => `${name} stays as typed`,
  staysOfAddIn: 'stays as it is; without that add-in the cell shows #NAME? once it is worked out anew',
  notTakenApart: 'a formula around a call of ours that cannot be taken apart',
  inside: (names: string): string => `${names} inside another formula`,
  insideTooLong: (names: string): string => `${names} inside a formula that grows too long`,
  // why a formula cannot be followed
  tooLong: (characters: number, most: number): string => `the formula has ${characters} characters; ${most} is the most`,
  tooDeep: (most: number): string => `the formula is nested more than ${most} times`,
  namesTooDeep: (most: number): string => `it is nested more than ${most} times`,
  tooLongWithoutNames: (most: number): string => `it grows to more than ${most} characters without its names`,
  startsProgram: 'it starts another program',
  callsAddIn: 'it calls another add-in',
  fetches: (name: string): string => `${name} fetches or runs something`,
  leadsOutside: 'HYPERLINK leads to an address outside',
  otherWorkbook: 'it points at another workbook',
  noSuchSheet: 'it points at a sheet that is not here',
  severalSheets: 'it points at the same cells of several sheets',
  spilled: (from: string): string => `it points at what spills from ${from}`,
  noneInLine: 'it takes by @ one cell of a range of which none stands in its row or column',
  noSuchTable: 'it points at a table that is not here',
  noSuchColumn: 'it points at a column that the table has not',
  noSuchRows: 'it points at rows that the table has not',
  nameCircular: (name: string): string => `it uses the name ${name}, which leads back to itself`,
  nameUnknown: (name: string): string => `it uses the name ${name}, which stands for nothing here`,
  nameNotFixed: (name: string): string => `it uses the name ${name}, which stands for no fixed cells here`,
  noRoom: (filled: string): string => `its table has no room: ${filled} is filled`,
  // calls outside cells
  elsewhere: ELSEWHERE,
  ofTable: (column: string, table: string): string => `${column} of ${table}`,
  onSheet: (place: string, sheet: string): string => `${place} on ${sheet}`,
  readsSheet: (call: string, sheet: string): string =>
    `${call} is worked out on the sheet ${sheet}, and read there; where it gave an error or nothing, it goes on so`,
  takenOut: (call: string): string => `taken out, since it calls ${call}`,
  leftAsIs: (call: string): string => `left as it is, without a value, since it calls ${call}`,
  takenOutWith: (name: string): string => `taken out, since it reads the name ${name}, which is taken out`,
  leftWithout: (name: string): string => `left as it is, without a value, since it reads the name ${name}, which is taken out`,
  // notes of cells
  wasFormula: (formula: string): string => `value, not live: was ${formula}`,
  nowNumber: (typed: string, unit: string): string => `typed as "${typed}"; now a number${unit === '' ? '' : ` in ${unit}`}`,
  // of a function
  notLive: (reason: string): string => reason,
  sentFor: (cells: string): string => `sent for ${cells}`,
};

export type FindingWords = typeof FINDINGS;
/** A sentence whose language is not chosen yet. */
export type FindingSentence = (said: FindingWords) => string;
