// What is said of a file that came back.

export const LIST_TITLES = [
  'changed inputs',
  'what they do',
  'changed formulas',
  'answers',
  'results',
  'comments',
  'colours',
  'rows, columns and sheets',
  'missing',
] as const;
export type ListTitle = (typeof LIST_TITLES)[number];

export const COMPARE = {
  titles: Object.fromEntries(LIST_TITLES.map(title => [title, title])) as Readonly<Record<ListTitle, string>>,
  none: 'none',
  blank: 'blank',
  typedAs: (text: string): string => `typed as the text "${text}"`,
  measured: (results: string, nominal: string): string => `${results} for ${nominal}`,
  limits: (lower: string, upper: string): string => `${lower} to ${upper}`,
  coloured: 'coloured',
  what: { row: 'row', column: 'column', cells: 'cells', sheet: 'sheet' },
  how: { inserted: 'inserted', deleted: 'deleted', moved: 'moved', renamed: 'renamed', added: 'added', missing: 'missing' },
  to: (from: string, there: string): string => `${from} to ${there}`,
  over: (formula: string, range: string): string => `${formula} over ${range}`,
  wholeSheet: 'the whole sheet',
  nowCalled: (name: string): string => `now called ${name}`,
  notSent: 'was not sent',
  takenOver: 'taken over',
  notTakenOver: 'not taken over',
  nowIs: (value: string): string => `now it is ${value}`,
  thereIs: (place: string): string => `there it is ${place}`,
  becameDate: 'it became a date; type in what was meant',
  formulaThere: 'there stands a formula',
  noSheet: 'there is no such sheet',
  noLine: 'its row or column is not there any more',
  noName: 'nothing names it',
  doubtful: 'more than one cell there could be meant',
  notNamed: (at: string): string => `what stands in its place, ${at}, is not named`,
  calledOther: (at: string, name: string): string => `what stands in its place, ${at}, is called ${name}`,
};
