// What people do to a workbook that was sent to them, and the lines that a comparison has to give: these and no others.
import type { Edit } from './answers-kit';

export interface Kind extends Edit {
  /** Without what follows from it. */
  readonly lines: readonly string[];
  /** Lines among what follows from it; without them nothing does. */
  readonly effects?: readonly string[];
}

const EMPTY_ROW = (sheet: string, row: number): string => `Sheet("${sheet}").Rows.insertByIndex(${row - 1}, 1)`;

const toSheet = (from: string, range: string, to: string, at: string): string =>
  `Sheet("${from}").moveRange(Cell("${to}", "${at}").CellAddress, Cell("${from}", "${range}").RangeAddress)`;

/** What a wall of 2.8 mm does on the sheet of one joint. */
const WALL_OF_JOINT = [
  'wall of an internal feature, Joint B43: 1.5 -> 1.68',
  'post around the recess, Joint B44: 9.2 -> 9.56',
  'largest circle in the root, Joint B55: 2.78188 -> 3.01535',
  'plastic under the hole, Joint B58: 1.75 -> 2.05',
];

/** Of a variant of the demo behind its length, as far as it is shown. */
const REST_OF_VARIANT = '2.5 | 6.4 | 2.4 | 3.2 | 2.5 | 0.8 | ABS | 5.5 | 1.6 | 0.6 | mouth | 14';

const BESIDE = 'Sheet("Joint").moveRange(Cell("Joint", "H5").CellAddress, Cell("Joint", "A21:F23").RangeAddress)';

const CUT_BY_XLS = [
  'rows, columns and sheets: Variants_1, column deleted: IW: hole depth, upper limit (mm) | size and its tolerance | =$AQ11+($AE11)',
  'rows, columns and sheets: Variants_1, column deleted: IX: relief, lower limit (mm) | size and its tolerance | =$W11+(-$X11)',
  'rows, columns and sheets: Variants_1, column deleted: IY: relief, upper limit (mm) | size and its tolerance | =$W11+($X11)',
  'rows, columns and sheets: Variants_2, column deleted: IW–LK: digits: core pin | so many that they differ | ' +
    '=IFERROR(IF(INT($FH6*10^3+0.5000001)<>INT(10*10^3+0.5000001),3,IF(INT($FH6',
];

export const DEMO: readonly Kind[] = [
  { what: 'nothing', libreoffice: ['REM nothing'], lines: [] },
  {
    what: 'a row inserted',
    libreoffice: [EMPTY_ROW('Joint', 12)],
    lines: ['rows, columns and sheets: Joint, row inserted: 12, blank'],
  },
  {
    what: 'a row inserted and filled',
    libreoffice: [EMPTY_ROW('Joint', 12), 'Cell("Joint", "A12").String = "rib"', 'Cell("Joint", "B12").Value = 1.3'],
    lines: ['rows, columns and sheets: Joint, row inserted: 12: rib | 1.3'],
  },
  {
    what: 'a row deleted',
    libreoffice: ['Sheet("Variants").Rows.removeByIndex(1, 1)'],
    lines: [
      'rows, columns and sheets: Variants, row deleted: 2: One call computes every variant: =ENCL.JOINT.TABLE(inputs, outputs). Change a ' +
        'cell, or type another variant in the rows',
    ],
  },
  {
    what: 'a row moved',
    libreoffice: [
      EMPTY_ROW('Strength', 20),
      'Sheet("Strength").moveRange(Cell("Strength", "A20").CellAddress, Cell("Strength", "A13:F13").RangeAddress)',
      'Sheet("Strength").Rows.removeByIndex(12, 1)',
    ],
    lines: ['rows, columns and sheets: Strength, row moved: 13 to 19: load | 800 | N | short-term, that tries to pull the lid off'],
  },
  {
    what: 'a column inserted',
    libreoffice: ['Sheet("Variants").Columns.insertByIndex(4, 1)'],
    lines: ['rows, columns and sheets: Variants, column inserted: E, blank'],
  },
  {
    what: 'a sheet renamed',
    libreoffice: ['Sheet("Joint").Name = "Our joint"'],
    lines: ['rows, columns and sheets: Joint, sheet renamed: now called Our joint'],
  },
  {
    what: 'a value written over',
    libreoffice: ['Cell("Joint", "B10").Value = 2.8'],
    lines: ['changed inputs: wall, Joint B10: 2.5 -> 2.8'],
    effects: WALL_OF_JOINT,
  },
  {
    what: 'an input taken out',
    libreoffice: ['Cell("Joint", "F10").String = ""'],
    lines: ['missing: wall, Joint F10: housing wall'],
  },
  {
    what: 'a column put into the plan, and a sample behind it',
    libreoffice: ['Sheet("Characteristics").Columns.insertByIndex(6, 1)', 'Cell("Characteristics", "I11").Value = 2.44'],
    lines: [
      'results: pilot mouth: 2.44 for 2.46 (2.41 to 2.51), OK, pin gauge',
      'rows, columns and sheets: Characteristics, column inserted: G, blank',
    ],
  },
  {
    what: 'answers and results',
    libreoffice: [
      'Cell("Hand-over", "F17").String = "0.6 along, 0.7 across"',
      'Cell("Hand-over", "H17").String = "agreed"',
      'Cell("Characteristics", "H11").Value = 2.44',
      'Cell("Characteristics", "I11").Value = 2.51',
      'Cell("Characteristics", "N11").String = "cavity 2"',
    ],
    lines: [
      'answers: Shrinkage of the grade along and across the flow, and its range?, Hand-over F17: 0.6 along, 0.7 across',
      'answers: Shrinkage of the grade along and across the flow, and its range?, Hand-over H17: agreed',
      'answers: pilot mouth, Characteristics N11: cavity 2',
      'results: pilot mouth: 2.44, 2.51 for 2.46 (2.41 to 2.51), OK, pin gauge; cavity 2',
    ],
  },
  {
    what: 'a comment',
    openpyxl: [`book['Joint']['B10'].comment = Comment('too thin for us', 'moulder')`],
    lines: ['comments: wall, Joint B10: too thin for us'],
  },
  {
    what: 'a colour',
    openpyxl: [`book['Joint']['B12'].fill = PatternFill('solid', fgColor='FF9900')`],
    lines: ['colours: seat, Joint B12: #FF9900'],
  },
  {
    what: 'padded to the last row',
    openpyxl: [`book['Joint'].cell(1048576, 1).font = Font(bold=True)`, `book['Characteristics'].cell(1048576, 14).font = Font(bold=True)`],
    lines: [],
  },
  {
    what: 'a value by openpyxl',
    openpyxl: [`book['Variants']['E6'] = 16`],
    lines: ['changed inputs: length of A  first choice, Variants E6: 13 -> 16'],
    effects: ['state of A  first choice, Variants B22: fail -> review', 'engagement min of A  first choice, Variants C22: 4.34 -> 7.34'],
  },
  {
    what: 'rows sorted',
    libreoffice: ['SortBy("Variants", "A6:T13", 4)'],
    lines: [
      `rows, columns and sheets: Variants, row moved: 6 to 7: A  first choice | ST2.9 | ISO 7049 | cone | 13 | ${REST_OF_VARIANT}`,
      `rows, columns and sheets: Variants, row moved: 10 to 13: E  longer still | ST2.9 | ISO 7049 | cone | 19 | ${REST_OF_VARIANT}`,
      'rows, columns and sheets: Variants, row moved: 13 to 9: H  thinner screw | ST2.2 | ISO 7049 | cone | 13 | 2.5 | 4.5 | 1.8 | 2.6 | 2.5 ' +
        '| 0.8 | ABS | 5.5 | 1.6 | 0.6 | mouth | 14',
    ],
  },
  {
    what: 'rows cut out and put down below',
    libreoffice: ['Sheet("Variants").moveRange(Cell("Variants", "A15").CellAddress, Cell("Variants", "A12:T13").RangeAddress)'],
    lines: [
      'rows, columns and sheets: Variants, row moved: 12 to 15: G  thicker screw | ST3.5 | ISO 7049 | cone | 16 | 2.5 | 7.7 | 2.9 | 3.8 | 2.5 ' +
        '| 0.8 | ABS | 5.5 | 1.6 | 0.6 | mouth | 14',
      'rows, columns and sheets: Variants, row moved: 13 to 16: H  thinner screw | ST2.2 | ISO 7049 | cone | 13 | 2.5 | 4.5 | 1.8 | 2.6 | 2.5 ' +
        '| 0.8 | ABS | 5.5 | 1.6 | 0.6 | mouth | 14',
    ],
  },
  {
    what: 'a block cut out and put down beside',
    libreoffice: [BESIDE],
    lines: ['rows, columns and sheets: Joint, cells moved: A21:F23 to H5:M7'],
  },
  {
    what: 'a block cut out and put down on another sheet',
    libreoffice: [toSheet('Joint', 'A21:F23', 'Tolerance', 'H5')],
    lines: ['rows, columns and sheets: Joint, cells moved: A21:F23 to Tolerance H5:M7'],
  },
  {
    what: 'a block put down below on another sheet, and a value in it changed',
    libreoffice: [toSheet('Joint', 'A21:F23', 'Tolerance', 'A60'), 'Cell("Tolerance", "B60").Value = 2.3'],
    lines: ['changed inputs: pilot, Joint B21: 2.4 -> 2.3', 'rows, columns and sheets: Joint, cells moved: A21:F23 to Tolerance A60:F62'],
    effects: ['thread share of the drawing value, Joint B50: 0.694444 -> 0.833333'],
  },
  {
    what: 'formulas cut out and put down on another sheet',
    libreoffice: [toSheet('Joint', 'A43:F50', 'Tolerance', 'H5')],
    lines: ['rows, columns and sheets: Joint, cells moved: A43:F50 to Tolerance H5:M12'],
  },
  {
    what: 'a block cut out and put down on a new sheet',
    libreoffice: ['doc.Sheets.insertNewByName("Extra", 2)', toSheet('Joint', 'A21:F23', 'Extra', 'A1')],
    lines: [
      'rows, columns and sheets: Extra, sheet added: was not sent',
      'rows, columns and sheets: Joint, cells moved: A21:F23 to Extra A1:F3',
    ],
  },
  {
    what: 'a row filled in that was blank',
    libreoffice: [
      'Cell("Variants", "A14").String = "I  own"',
      'Cell("Variants", "B14").String = "ST2.9"',
      'Cell("Variants", "E14").Value = 12',
    ],
    lines: [
      'changed inputs: variant, Variants A14: blank -> I  own',
      'changed inputs: screw of I  own, Variants B14: blank -> ST2.9',
      'changed inputs: length of I  own, Variants E14: blank -> 12',
    ],
  },
  {
    what: 'a sample as text with a decimal comma',
    libreoffice: ['Cell("Characteristics", "H11").String = "2,44"', 'Cell("Characteristics", "I11").Value = 2.5'],
    lines: ['results: pilot mouth: 2.44 (typed as the text "2,44"), 2.5 for 2.46 (2.41 to 2.51), OK, pin gauge'],
  },
  {
    what: 'two blocks put down beside, and a value in one of them changed',
    libreoffice: [
      BESIDE,
      'Sheet("Joint").moveRange(Cell("Joint", "H15").CellAddress, Cell("Joint", "A26:F28").RangeAddress)',
      'Cell("Joint", "I5").Value = 2.3',
    ],
    lines: [
      'changed inputs: pilot, Joint B21: 2.4 -> 2.3',
      'rows, columns and sheets: Joint, cells moved: A21:F23 to H5:M7',
      'rows, columns and sheets: Joint, cells moved: A26:F28 to H15:M17',
    ],
    effects: ['thread share of the drawing value, Joint B50: 0.694444 -> 0.833333'],
  },
  {
    what: 'a row inserted, a value changed below it, and a comment on that',
    libreoffice: [
      EMPTY_ROW('Variants', 8),
      'Cell("Variants", "E9").Value = 14',
      'Sheet("Variants").Annotations.insertNew(Cell("Variants", "E9").CellAddress, "14 is in stock")',
    ],
    lines: [
      'changed inputs: length of C  flat end, thin seat, low relief, Variants E8: 13 -> 14',
      'comments: length of C  flat end, thin seat, low relief, Variants E8: 14 is in stock',
      'rows, columns and sheets: Variants, row inserted: 8, blank',
    ],
    effects: ['state of C  flat end, thin seat, low relief, Variants B24: fail -> review'],
  },
  {
    what: 'two rows swapped',
    openpyxl: [
      `s = book['Variants']\nfor c in range(1, 21): s.cell(6, c).value, s.cell(9, c).value = s.cell(9, c).value, s.cell(6, c).value`,
    ],
    lines: [
      `rows, columns and sheets: Variants, row moved: 6 to 9: A  first choice | ST2.9 | ISO 7049 | cone | 13 | ${REST_OF_VARIANT}`,
      'rows, columns and sheets: Variants, row moved: 9 to 6: D  longer | ST2.9 | ISO 7049 | cone | 16 ' + `| ${REST_OF_VARIANT} | 14.7`,
    ],
  },
  {
    what: 'a limit written over, and a sample',
    libreoffice: ['Cell("Characteristics", "D11").Value = 2.38', 'Cell("Characteristics", "H11").Value = 2.39'],
    lines: [
      'changed formulas: min of pilot mouth, Characteristics D11: =Variants_1!$IT$11 -> 2.38',
      'results: pilot mouth: 2.39 for 2.46 (2.38 to 2.51), OK, pin gauge',
    ],
  },
  {
    what: 'a sheet deleted, another renamed, and a number as text',
    libreoffice: [
      'doc.Sheets.removeByName("Tolerance")',
      'Cell("Joint", "B10").String = "2,8"',
      'doc.Sheets.getByName("Checks").Name = "Proof"',
    ],
    lines: [
      'changed inputs: wall, Joint B10: 2.5 -> 2,8',
      'rows, columns and sheets: Tolerance, sheet missing: the whole sheet',
      'rows, columns and sheets: Checks, sheet renamed: now called Proof',
    ],
    effects: WALL_OF_JOINT,
  },
  {
    what: 'a sheet copied',
    libreoffice: ['doc.Sheets.copyByName("Joint", "Joint_2", 1)', 'Cell("Joint_2", "B10").Value = 2.8'],
    lines: ['rows, columns and sheets: Joint_2, sheet added: was not sent'],
  },
  {
    what: 'a sheet deleted',
    libreoffice: ['doc.Sheets.removeByName("Tolerance")'],
    lines: ['rows, columns and sheets: Tolerance, sheet missing: the whole sheet'],
  },
  {
    what: 'a number as text with a decimal comma',
    libreoffice: ['Cell("Joint", "B10").String = "2,8"'],
    lines: ['changed inputs: wall, Joint B10: 2.5 -> 2,8'],
    effects: WALL_OF_JOINT,
  },
  {
    what: 'a number as text with its unit',
    libreoffice: ['Cell("Joint", "B10").String = "2,8 mm"'],
    lines: ['changed inputs: wall, Joint B10: 2.5 -> 2,8 mm'],
    effects: WALL_OF_JOINT,
  },
  {
    what: 'the same number as text',
    libreoffice: ['Cell("Joint", "B10").String = "2,5"', 'Cell("Variants", "K6").String = "0.80"'],
    lines: [],
  },
  {
    what: 'a table coloured',
    libreoffice: ['Cell("Variants", "A5:T13").CellBackColor = RGB(255,153,0)'],
    lines: ['colours: Variants A5:T13: #FF9900'],
  },
  {
    what: 'a row coloured as a whole',
    libreoffice: ['Sheet("Variants").Rows.getByIndex(10).CellBackColor = RGB(255,153,0)'],
    lines: ['colours: Variants A11:T11: #FF9900'],
  },
  {
    what: 'a sheet coloured',
    libreoffice: ['Sheet("Strength").CellBackColor = RGB(255,153,0)'],
    lines: ['colours: Strength A1:F52: #FF9900'],
  },
  {
    what: 'rows and columns hidden',
    libreoffice: ['Sheet("Variants").Rows.getByIndex(6).IsVisible = False', 'Sheet("Variants").Columns.getByIndex(9).IsVisible = False'],
    lines: [],
  },
  {
    what: 'blank cells merged',
    libreoffice: ['Cell("Joint", "C5:E5").merge(True)', 'Cell("Characteristics", "N5:N8").merge(True)'],
    lines: [],
  },
  {
    what: 'filled cells merged',
    openpyxl: [`book['Joint'].merge_cells('F10:F12')`],
    lines: [
      'missing: board plane, Joint F11: outer face of the lid to the underside of the board',
      'missing: seat, Joint F12: plastic under the head',
    ],
  },
  // the older format ends at column IV
  {
    what: 'through .xls',
    libreoffice: ['REM nothing'],
    through: 'xls',
    lines: CUT_BY_XLS,
    effects: ['state of head fits the recess, Checks E27: pass -> no value'],
  },
  {
    what: 'a value through .xls',
    libreoffice: ['Cell("Joint", "B10").Value = 2.8'],
    through: 'xls',
    lines: ['changed inputs: wall, Joint B10: 2.5 -> 2.8', ...CUT_BY_XLS],
    effects: WALL_OF_JOINT,
  },
  { what: 'through .ods', libreoffice: ['REM nothing'], through: 'ods', lines: [] },
  {
    what: 'a thread of comments',
    parts: [`threaded(parts, 'Joint', 'B10', 'too thin for us', '2.8 please')`],
    lines: ['comments: wall, Joint B10: too thin for us / 2.8 please'],
  },
  {
    what: 'formats of numbers changed',
    openpyxl: [`for row in book['Joint']['B5:B30']: row[0].number_format = '0.0" mm"'`],
    lines: [],
  },
  {
    what: 'a sample by a formula that was not worked out',
    openpyxl: [`book['Characteristics']['H11'] = '=I11+0.5'`, `book['Characteristics']['I11'] = 1.94`],
    lines: ['results: pilot mouth: 2.44 (=I11+0.5), 1.94 for 2.46 (2.41 to 2.51), not OK, pin gauge'],
  },
  {
    what: 'a date typed as a remark',
    openpyxl: [
      'import datetime',
      `book['Characteristics']['N11'] = datetime.date(2026, 3, 5)`,
      `book['Hand-over']['F17'] = datetime.datetime(2026, 3, 6, 14, 30)`,
    ],
    lines: [
      'answers: pilot mouth, Characteristics N11: 2026-03-05',
      'answers: Shrinkage of the grade along and across the flow, and its range?, Hand-over F17: 2026-03-06 14:30',
    ],
  },
  {
    what: 'an input struck through, a row hidden behind a filter',
    openpyxl: [
      `book['Joint']['B10'].font = Font(strike=True)`,
      `book['Variants'].row_dimensions[8].hidden = True`,
      `book['Variants'].auto_filter.ref = 'A5:T13'`,
    ],
    lines: [],
  },
  {
    what: 'samples measured',
    openpyxl: [
      `for column, value in enumerate([2.44, 2.46, 2.47], 8): book['Characteristics'].cell(11, column).value = value`,
      `book['Characteristics']['H6'] = 2.7`,
      `book['Characteristics']['H8'] = 6.2`,
      `book['Characteristics']['I9'] = 'n/a'`,
      `book['Characteristics']['H3'] = 'cavity 1'`,
    ],
    lines: [
      'answers: cavity, sample, Characteristics H3: cavity 1',
      'results: seat: 2.7 for 2.5 (2.4 to 2.6), not OK, depth gauge',
      'results: recess diameter: 6.2 for 6.2, no limits, pin gauge',
      'results: recess depth: n/a for 3, not a number, depth gauge',
      'results: pilot mouth: 2.44, 2.46, 2.47 for 2.46 (2.41 to 2.51), OK, pin gauge',
    ],
  },
  {
    what: 'a matrix over several inputs',
    libreoffice: ['Cell("Variants", "E6:F7").setArrayFormula("=I6:J7*2")'],
    lines: [
      'changed formulas: length of A  first choice, Variants E6: 13 -> =I6:J7*2 over E6:F7',
      'changed formulas: wall of A  first choice, Variants F6: 2.5 -> =I6:J7*2 over E6:F7',
      'changed formulas: length of B  shorter, Variants E7: 9.5 -> =I6:J7*2 over E6:F7',
      'changed formulas: wall of B  shorter, Variants F7: 2.5 -> =I6:J7*2 over E6:F7',
    ],
    effects: ['engagement min of A  first choice, Variants C22: 4.34 -> -2.26'],
  },
  {
    what: 'all at once',
    libreoffice: [
      EMPTY_ROW('Joint', 12),
      'Cell("Joint", "B10").Value = 2.8',
      'Cell("Joint", "B22").Value = 2.3',
      'Sheet("Joint").Name = "Our joint"',
      'Cell("Characteristics", "H11").Value = 2.44',
    ],
    lines: [
      'changed inputs: wall, Joint B10: 2.5 -> 2.8',
      'changed inputs: pilot, Joint B21: 2.4 -> 2.3',
      'results: pilot mouth: 2.44 for 2.46 (2.41 to 2.51), OK, pin gauge',
      'rows, columns and sheets: Joint, sheet renamed: now called Our joint',
      'rows, columns and sheets: Joint, row inserted: 12, blank',
    ],
    // the pilot moves the circle in the root too
    effects: [...WALL_OF_JOINT.filter(line => !line.includes('B55')), 'thread share of the drawing value, Joint B50: 0.694444 -> 0.833333'],
  },
];

export const FOREIGN: readonly Kind[] = [
  { what: 'nothing', libreoffice: ['REM nothing'], lines: [] },
  { what: 'a row inserted', libreoffice: [EMPTY_ROW('Parts', 4)], lines: ['rows, columns and sheets: Parts, row inserted: 4, blank'] },
  {
    what: 'a row deleted',
    libreoffice: ['Sheet("Parts").Rows.removeByIndex(4, 1)'],
    lines: ['rows, columns and sheets: Parts, row deleted: 5: D | 3.4 | 1.45 | 13.5'],
  },
  {
    what: 'a column inserted',
    libreoffice: ['Sheet("Parts").Columns.insertByIndex(3, 1)'],
    lines: ['rows, columns and sheets: Parts, column inserted: D, blank'],
    // the look-up names its column by a number
    effects: ['round of key C, Joints E2: 10.5 -> no value'],
  },
  {
    what: 'a sheet renamed',
    libreoffice: ['Sheet("Parts").Name = "Screws"'],
    lines: ['rows, columns and sheets: Parts, sheet renamed: now called Screws'],
  },
  {
    what: 'a value written over',
    libreoffice: ['Cell("Parts", "B4").Value = 3.1'],
    lines: ['changed inputs: hole of key C, Parts B4: 3.05 -> 3.1'],
    effects: ['vlookup of key C, Characteristics C5: 6.05 -> 6.1'],
  },
  {
    what: 'a comment and a colour',
    openpyxl: [
      `book['Parts']['C3'].comment = Comment('1.5 please', 'moulder')`,
      `book['Parts']['B3'].fill = PatternFill('solid', fgColor='FF9900')`,
    ],
    lines: ['comments: wall of key B, Parts C3: 1.5 please', 'colours: hole of key B, Parts B3: #FF9900'],
  },
  { what: 'padded to the last row', openpyxl: [`book['Parts'].cell(1048576, 1).font = Font(bold=True)`], lines: [] },
  {
    what: 'rows sorted',
    libreoffice: ['SortBy("Parts", "A2:D6", 1)'],
    lines: ['rows, columns and sheets: Parts, row moved: 6 to 2: E | 2.25 | 1.15 | 14.5'],
    // what reads a cell by its place has another one there
    effects: [
      'choose of key C, Characteristics C8: 4.7 -> 4.55',
      'choose of key A, Characteristics C12: 4.7 -> 4.55',
      'choose of key E, Characteristics C16: 4.7 -> 4.55',
      'choose of key B, Characteristics C20: 4.9 -> 4.7',
    ],
  },
  {
    what: 'a row cut out and put down below',
    libreoffice: ['Sheet("Parts").moveRange(Cell("Parts", "A8").CellAddress, Cell("Parts", "A3:D3").RangeAddress)'],
    lines: ['rows, columns and sheets: Parts, row moved: 3 to 8: B | 2.6 | 1.35 | 11.5'],
    effects: ['vlookup of key B, Characteristics C17: 5.3 -> no value', 'guarded of key B, Joints F5: 5.3 -> none'],
  },
  {
    what: 'all of it put down beside',
    libreoffice: ['Sheet("Parts").moveRange(Cell("Parts", "G1").CellAddress, Cell("Parts", "A1:D6").RangeAddress)'],
    lines: ['rows, columns and sheets: Parts, column inserted: A–F, blank'],
  },
  {
    what: 'all of it put down on a new sheet',
    libreoffice: ['doc.Sheets.insertNewByName("Extra", 2)', toSheet('Parts', 'A1:D6', 'Extra', 'B2')],
    lines: [
      'rows, columns and sheets: Extra, sheet added: was not sent',
      'rows, columns and sheets: Parts, cells moved: A1:D6 to Extra B2:E7',
    ],
  },
  {
    what: 'a row filled in below',
    libreoffice: ['Cell("Parts", "A7").String = "F"', 'Cell("Parts", "B7").Value = 3'],
    lines: ['changed inputs: key, Parts A7: blank -> F', 'changed inputs: hole of key F, Parts B7: blank -> 3'],
  },
  {
    what: 'a sheet copied',
    libreoffice: ['doc.Sheets.copyByName("Parts", "Parts_2", 0)'],
    lines: ['rows, columns and sheets: Parts_2, sheet added: was not sent'],
  },
  {
    what: 'a sheet deleted',
    libreoffice: ['doc.Sheets.removeByName("Parts")'],
    lines: ['rows, columns and sheets: Parts, sheet missing: the whole sheet'],
    effects: ['vlookup of key C, Characteristics C5: 6.05 -> no value'],
  },
  {
    what: 'numbers as text',
    libreoffice: ['Cell("Parts", "B4").String = "3,1"', 'Cell("Parts", "C4").String = "1,6 mm"'],
    lines: ['changed inputs: hole of key C, Parts B4: 3.05 -> 3,1', 'changed inputs: wall of key C, Parts C4: 1.5 -> 1,6 mm'],
    effects: ['vlookup of key C, Characteristics C5: 6.05 -> 6.3'],
  },
  {
    what: 'a table coloured',
    libreoffice: ['Cell("Parts", "A1:D6").CellBackColor = RGB(255,153,0)'],
    lines: ['colours: Parts A1:D6: #FF9900'],
  },
  {
    what: 'rows and columns hidden',
    libreoffice: ['Sheet("Parts").Rows.getByIndex(3).IsVisible = False', 'Sheet("Parts").Columns.getByIndex(2).IsVisible = False'],
    lines: [],
  },
  { what: 'blank cells merged', libreoffice: ['Cell("Parts", "F2:G3").merge(True)'], lines: [] },
  { what: 'through .xls', libreoffice: ['REM nothing'], through: 'xls', lines: [] },
  { what: 'through .ods', libreoffice: ['REM nothing'], through: 'ods', lines: [] },
  {
    what: 'a thread of comments',
    parts: [`threaded(parts, 'Parts', 'C3', '1.5 please')`],
    lines: ['comments: wall of key B, Parts C3: 1.5 please'],
  },
  {
    what: 'formats of numbers changed',
    openpyxl: [`for row in book['Parts']['B2:D6']:\n    for cell in row: cell.number_format = '0.000'`],
    lines: [],
  },
  {
    what: 'limits and a sample',
    openpyxl: [`for at, value in [('D5', 6), ('E5', 6.03), ('H5', 6.04)]: book['Characteristics'][at] = value`],
    lines: [
      'answers: min of vlookup of key C, Characteristics D5: 6',
      'answers: max of vlookup of key C, Characteristics E5: 6.03',
      'results: vlookup of key C: 6.04 for 6.05 (6 to 6.03), not OK, calliper',
    ],
  },
  {
    what: 'a matrix over several inputs',
    libreoffice: ['Cell("Parts", "B3:B5").setArrayFormula("=D3:D5/5")'],
    lines: [
      'changed formulas: hole of key B, Parts B3: 2.6 -> =D3:D5/5 over B3:B5',
      'changed formulas: hole of key C, Parts B4: 3.05 -> =D3:D5/5 over B3:B5',
      'changed formulas: hole of key D, Parts B5: 3.4 -> =D3:D5/5 over B3:B5',
    ],
    effects: ['vlookup of key C, Characteristics C5: 6.05 -> 5.5'],
  },
];
