// Workbooks as Excel stores them, written by hand to the letter; the tables that Excel had kept are what the functions give.
import type { Cell } from '../../../src/core/kinds';
import { call } from '../../../src/registry';
import { address, cellPosition } from '../../../src/sheet/addresses';
import { excelFile, type StoredCell, type StoredFormula, type StoredWorkbook } from '../../kit/excel-file';
import { links, made, MAIN } from '../../package/made';

type Rows = readonly (readonly Cell[])[];
type Cells = Record<string, StoredCell>;

const f = (formula: string, v: string | number): StoredFormula => ({ f: formula, v });
const stored = (id: string): string => `_xldudf_ENCL_${id.replaceAll('.', '_')}`;

function given(id: string, args: readonly unknown[]): Rows {
  const answer = call(id, args);
  if (!answer.ok) throw new Error(`${id} is refused: ${JSON.stringify(answer)}`);
  return Array.isArray(answer.value) ? (answer.value as Rows) : [[answer.value as Cell]];
}

const kept = (value: Cell | undefined): StoredCell => (typeof value === 'boolean' ? String(value) : (value ?? ''));

/** Rows of a table that stands in a sheet. */
function put(cells: Cells, at: string, rows: Rows): void {
  const { row, column } = cellPosition(at);
  rows.forEach((line, r) =>
    line.forEach((value, c) => {
      if (value !== '') cells[address(row + r, column + c)] = kept(value);
    }),
  );
}

/** A call whose table spills from a cell, with all that Excel keeps of it. */
function spill(cells: Cells, at: string, formula: string, rows: Rows): void {
  const { row, column } = cellPosition(at);
  put(cells, at, rows);
  const area = `${at}:${address(row + rows.length - 1, column + (rows[0]?.length ?? 1) - 1)}`;
  const first = kept(rows[0]?.[0]);
  cells[at] = { f: formula, v: typeof first === 'object' ? 0 : first, array: area, isDynamic: true };
}

const HEADER = ['screw', 'head', 'length', 'material', 'wall', 'board plane', 'seat', 'board', 'boss height'];
const VARIANTS: Rows = [
  ['ST2.9', 'pan', 13, 'ABS', 2.5, 5.5, 2, 1.6, 14],
  ['ST3.5', 'pan', 16, 'PC', 2.75, 6.5, 2.25, 1.6, 17.5],
  ['ST2.9', 'flat', 16, 'ABS', 3.1, 5.5, 2, 1.6, 16.5],
];
const OUTPUTS = ['engagement min', 'engagement ratio', 'sink ratio', 'boss OD root', 'state'];

/** JOINT.TABLE and JOINT.VALUE on one sheet, a chart's worth of outputs behind them, and cells that read what spilled. */
function joints(): StoredWorkbook {
  const joint: Cells = {};
  put(joint, 'A1', [HEADER, ...VARIANTS]);
  const table = given('JOINT.TABLE', [[HEADER, ...VARIANTS], [OUTPUTS]]);
  spill(joint, 'A7', `${stored('JOINT.TABLE')}(A1:I4,{${OUTPUTS.map(name => `"${name}"`).join(',')}})`, table);
  VARIANTS.forEach((row, r) =>
    ['engagement', 'boss OD root', 'state'].forEach((name, c) => {
      const value = given('JOINT.VALUE', [[HEADER], [row], name])[0]?.[0];
      joint[address(r + 1, 10 + c)] = f(
        `${stored('JOINT.VALUE')}($A$1:$I$1,$A${r + 2}:$I${r + 2},"${name}")`,
        typeof value === 'boolean' ? 0 : (value ?? 0),
      );
    }),
  );
  const least = Math.min(...table.slice(1).map(row => row[1] as number));
  return {
    sheets: {
      Result: {
        A1: 'least',
        B1: f('MIN(Joint!B8:B10)', Math.min(...table.slice(1).map(row => row[0] as number))),
        B2: f(`${stored('CHECK.MIN')}(Joint!C8,1)`, 'pass'),
        B3: f('COUNTIF(Joint!E8:E10,"pass")', table.slice(1).filter(row => row[4] === 'pass').length),
        B4: f('MAX(_xlfn.ANCHORARRAY(Joint!A7))', least),
      },
      Joint: joint,
    },
  };
}

/** Every combination, spilled into a table of joints that reads `A1#`. */
function grid(): StoredWorkbook {
  const cells: Cells = { A1: 'wall', A2: 2.5, A3: 3.1, B1: 'boss height', B2: 14, B3: 16.5 };
  put(cells, 'D1', [HEADER.filter(name => name !== 'wall' && name !== 'boss height'), ['ST2.9', 'pan', 13, 'ABS', 5.5, 2, 1.6]]);
  const rows = given('VARIANT.GRID', [
    [['wall'], [2.5], [3.1]],
    [['boss height'], [14], [16.5]],
  ]);
  spill(cells, 'A7', `${stored('VARIANT.GRID')}(A1:A3,B1:B3)`, rows);
  const base = [
    ['screw', 'head', 'length', 'material', 'board plane', 'seat', 'board'],
    ['ST2.9', 'pan', 13, 'ABS', 5.5, 2, 1.6],
  ];
  const table = given('JOINT.TABLE', [rows, [['sink ratio', 'engagement min']], base]);
  spill(cells, 'D7', `${stored('JOINT.TABLE')}(_xlfn.ANCHORARRAY(A7),{"sink ratio","engagement min"},D1:J2)`, table);
  return { sheets: { Grid: cells } };
}

/** Stacks with their tables, called before the rows that they read. */
function stacks(): StoredWorkbook {
  const labels = ['lid', 'board', 'spacer', 'tub'].map(label => [label]);
  const values = [[12.25], [-1.6], [-6.35], [-3.15]];
  const tolerances = [[0.15], [0.12], [0.08], [0.2]];
  const stack: Cells = {};
  put(stack, 'A1', labels);
  put(stack, 'B1', values);
  put(stack, 'C1', tolerances);
  const table = given('STACK.TABLE', [labels, values, tolerances]);
  spill(stack, 'E1', `${stored('STACK.TABLE')}(A1:A4,B1:B4,C1:C4)`, table);
  const shares = given('STACK.SHARE', [tolerances]);
  spill(stack, 'T1', `${stored('STACK.SHARE')}(C1:C4)`, shares);
  const share = shares[0]?.[0] as number;
  return {
    sheets: {
      Front: {
        A1: f('SUM(Stack!T1:T4)', 1),
        A2: f(`INDEX(${stored('STACK.SHARE')}(Stack!C1:C4),2)`, shares[1]?.[0] as number),
        A3: f('SUM(_xlfn.ANCHORARRAY(Stack!T1))', 1),
        A4: f(`${stored('BOSS.OD')}(Stack!T1,1)`, share + 2),
      },
      Stack: stack,
    },
  };
}

/** Tables of checks, materials and screws. */
function checks(): StoredWorkbook {
  const cells: Cells = {};
  put(cells, 'A1', [
    ['ST2.9', 'ABS', 2.5, 13.5],
    ['ST3.5', 'PC', 2.75, 15.5],
  ]);
  spill(cells, 'A5', `${stored('MATERIAL.TABLE')}("ABS")`, given('MATERIAL.TABLE', ['ABS']));
  spill(cells, 'F5', `${stored('SCREW.LENGTHS')}(A1)`, given('SCREW.LENGTHS', ['ST2.9']));
  const pilot = given('HOLE.PILOT', ['ST2.9', 'ABS'])[0]?.[0] as number;
  cells.H1 = f(`${stored('HOLE.PILOT')}(A1,B1)`, pilot);
  cells.H2 = f(`${stored('SCREW.MAJOR')}(A2)`, given('SCREW.MAJOR', ['ST3.5'])[0]?.[0] as number);
  cells.H3 = f(`${stored('BOSS.OD')}(${stored('HOLE.PILOT')}(A1,B1),C1/2)`, pilot + 2.5);
  cells.H4 = f(`${stored('CHECK.MAX')}(H3,D1/2)`, 'pass');
  return { sheets: { Checks: cells } };
}

const X14 = 'http://schemas.microsoft.com/office/spreadsheetml/2009/9/main';
const PERSONAL = 'http://schemas.microsoft.com/office/2017/10/relationships';
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** A workbook of many parts: shared formulas of ours, a what-if table, another workbook, remarks in threads, an order of calculation. */
function parts(): Uint8Array {
  const number = (at: string, v: number): string => `<c r="${at}"><v>${v}</v></c>`;
  const shared = (at: string, v: number, master = ''): string =>
    `<c r="${at}"><f t="shared"${master === '' ? '' : ' ref="C1:C4"'} si="0">${master}</f><v>${v}</v></c>`;
  const sizes = [
    [2.45, 1.15],
    [2.65, 1.25],
    [3.05, 1.45],
    [2.25, 1.05],
  ] as const;
  const rows = sizes.map(([hole, wall], r) => {
    const od = shared(`C${r + 1}`, hole + 2 * wall, r === 0 ? `${stored('BOSS.OD')}($A1,B1)` : '');
    const last = [
      `<c r="E1"><f>C1*2</f><v>${2 * (sizes[0][0] + 2 * sizes[0][1])}</v></c><c r="F1"><f>[1]Prices!$B$2*C1</f><v>9.5</v></c>`,
      // what E1 were for these in A1
      `${number('D2', 2.55)}<c r="E2"><f t="dataTable" ref="E2:E3" dt2D="0" dtr="0" r1="A1"/><v>9.7</v></c>`,
      number('D3', 2.85) + number('E3', 10.3),
      `<c r="E4" t="str"><f>${stored('CHECK.MAX')}(C4,5)</f><v>pass</v></c>`,
    ][r];
    return `<row r="${r + 1}">${number(`A${r + 1}`, hole)}${number(`B${r + 1}`, wall)}${od}${last ?? ''}</row>`;
  });
  const condition = `<x14:conditionalFormatting xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main"><x14:cfRule type="expression" priority="1" id="{11111111-2222-3333-4444-555555555555}"><xm:f>${stored('BOSS.OD')}(A1,B1)&gt;4</xm:f><x14:dxf><fill><patternFill><bgColor rgb="FFFFC7CE"/></patternFill></fill></x14:dxf></x14:cfRule><xm:sqref>C1:C4</xm:sqref></x14:conditionalFormatting>`;
  const types = [
    ['xl/calcChain.xml', 'calcChain'],
    ['xl/externalLinks/externalLink1.xml', 'externalLink'],
    ['xl/comments1.xml', 'comments'],
  ].map(([part, kind]) => `<Override PartName="/${part}" ContentType="${SPREADSHEET}.${kind}+xml"/>`);
  return made({
    rows: rows.join(''),
    beforeData: '<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" state="frozen"/></sheetView></sheetViews>',
    afterData: `<legacyDrawing r:id="v"/><extLst><ext xmlns:x14="${X14}" uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}"><x14:conditionalFormattings>${condition}</x14:conditionalFormattings></ext></extLst>`,
    book: `<externalReferences><externalReference r:id="x"/></externalReferences><definedNames><definedName name="price">[1]Prices!$B$2</definedName></definedNames><calcPr calcId="191029" iterate="1"/>`,
    bookLinks: [
      ['c', 'calcChain', 'calcChain.xml'],
      ['x', 'externalLink', 'externalLinks/externalLink1.xml'],
      ['p', `${PERSONAL}/person`, 'persons/person.xml'],
    ],
    types: `${types.join('')}<Override PartName="/xl/persons/person.xml" ContentType="application/vnd.ms-excel.person+xml"/><Override PartName="/xl/threadedComments/threadedComment1.xml" ContentType="application/vnd.ms-excel.threadedcomments+xml"/><Default Extension="vml" ContentType="application/vnd.openxmlformats-officedocument.vmlDrawing"/>`,
    more: {
      'xl/calcChain.xml': `<calcChain xmlns="${MAIN}"><c r="C1" i="7"/><c r="C2" i="7"/><c r="E1" i="7"/></calcChain>`,
      'xl/externalLinks/externalLink1.xml': `<externalLink xmlns="${MAIN}" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><externalBook r:id="r1"><sheetNames><sheetName val="Prices"/></sheetNames><sheetDataSet><sheetData sheetId="0"><row r="2"><cell r="B2"><v>2</v></cell></row></sheetData></sheetDataSet></externalBook></externalLink>`,
      'xl/externalLinks/_rels/externalLink1.xml.rels': links(['r1', 'externalLinkPath', '!prices.xlsx']),
      'xl/worksheets/_rels/sheet1.xml.rels': links(
        ['v', 'vmlDrawing', '../drawings/vmlDrawing1.vml'],
        ['c', 'comments', '../comments1.xml'],
        ['t', `${PERSONAL}/threadedComment`, '../threadedComments/threadedComment1.xml'],
      ),
      'xl/drawings/vmlDrawing1.vml': REMARK_SHAPE,
      'xl/comments1.xml': `<comments xmlns="${MAIN}"><authors><author>tc={1}</author></authors><commentList><comment ref="A1" authorId="0"><text><t>one</t></text></comment></commentList></comments>`,
      'xl/persons/person.xml':
        '<personList xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><person displayName="A. Designer" id="{2}"/></personList>',
      'xl/threadedComments/threadedComment1.xml':
        '<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="A1" personId="{2}" id="{1}"><text>one</text></threadedComment></ThreadedComments>',
    },
  });
}

const REMARK_SHAPE =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shape id="s1" type="#t" style="visibility:hidden"><x:ClientData ObjectType="Note"><x:Row>0</x:Row><x:Column>0</x:Column></x:ClientData></v:shape></xml>';

export const BY_HAND: Readonly<Record<string, () => Uint8Array>> = {
  'e-joints': () => excelFile(joints()),
  'e-grid': () => excelFile(grid()),
  'e-stacks': () => excelFile(stacks()),
  'e-checks': () => excelFile(checks()),
  'e-parts': () => parts(),
};
