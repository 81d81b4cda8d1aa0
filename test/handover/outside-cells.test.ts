// Calls of ours in names, conditions and validations: worked out on a sheet of ours and read there, or gone and told.
import { beforeAll, describe, expect, it } from 'vitest';
import { sourceOfFile } from '../../src/handover/read/from-file';
import { copyOf, type WrittenCopy } from '../../src/handover/write/copy';
import { CHOSEN_BY_ITSELF } from '../../src/handover/pages/choice';
import { workbookIn } from '../../src/hosts/xlsx/read';
import { writeOwnSheets } from '../../src/hosts/xlsx/write';
import { readPackage } from '../../src/package/read';
import { WorkbookValues } from '../../src/sheet/workbook-values';
import { call } from '../../src/registry';
import { BOOK, links, made, MAIN, OFFICE, SHEET, textOf } from '../package/made';
import { TITLE } from './kit';

const rule = (sqref: string, ...formulas: readonly string[]): string =>
  `<conditionalFormatting sqref="${sqref}">${formulas
    .map((formula, i) => `<cfRule type="expression" priority="${i + 1}"><formula>${formula.replaceAll('>', '&gt;')}</formula></cfRule>`)
    .join('')}</conditionalFormatting>`;
const scale = (formula: string): string =>
  `<conditionalFormatting sqref="A2:A4"><cfRule type="colorScale" priority="9"><colorScale><cfvo type="formula" val="${formula}"/><cfvo type="max"/><color rgb="FF00FF00"/><color rgb="FFFF0000"/></colorScale></cfRule></conditionalFormatting>`;
const names = (all: Readonly<Record<string, string>>): string =>
  `<definedNames>${Object.entries(all)
    .map(([name, meaning]) => `<definedName name="${name}">${meaning}</definedName>`)
    .join('')}</definedNames>`;

/** Holes and walls in rows 2 to 5, the last without a hole; a wall in D1. */
const ROWS =
  '<row r="1"><c r="D1"><v>2.5</v></c></row>' +
  [
    [2.4, 1.2],
    [2.5, 1.3],
    [3, 1.1],
  ]
    .map(([hole, wall], i) => `<row r="${i + 2}"><c r="A${i + 2}"><v>${hole}</v></c><c r="B${i + 2}"><v>${wall}</v></c></row>`)
    .join('') +
  '<row r="5"><c r="B5"><v>1.2</v></c></row>';

const copied = (book: string, afterData: string): Promise<WrittenCopy> => copyOfFile(made({ rows: ROWS, book, afterData }));

async function copyOfFile(bytes: Uint8Array, sheets?: readonly string[]): Promise<WrittenCopy> {
  const file = readPackage(bytes);
  const choice = { ...CHOSEN_BY_ITSELF, ...(sheets && { sheets }) };
  return copyOf(file, sourceOfFile('Mine', workbookIn(file)), TITLE, { write: writeOwnSheets, choice });
}

const toldOf = ({ findings }: WrittenCopy): string[] =>
  findings.filter(({ sheet, what }) => sheet === '' && what !== 'live').map(({ words }) => words);
const formulasIn = (xml: string): string[] => [...xml.matchAll(/<formula1?>([^<]*)</g)].map(([, formula = '']) => formula);
const meaningOf = (copy: WrittenCopy, name: string): string | undefined =>
  new RegExp(`<definedName name="${name}"[^>]*>([^<]*)<`).exec(textOf(copy.bytes, BOOK))?.[1];
/** What the copy gives when its formulas are worked out anew. */
const valuesOf = ({ bytes }: WrittenCopy): WorkbookValues => new WorkbookValues(sourceOfFile('Copy', workbookIn(readPackage(bytes))), call);

describe('what reads cells', () => {
  let copy: WrittenCopy;
  beforeAll(async () => {
    copy = await copied(
      names({ least: '_xldudf_ENCL_WALL_FEATURE(S!$D$1)', double: 'least*2', Outside_cells_1: 'S!$D$1' }),
      rule('C2:C5', '_xldudf_ENCL_BOSS_OD($A2,$B2)>5', '$D2>least') +
        '<dataValidations count="1"><dataValidation type="decimal" operator="between" sqref="B2:B5"><formula1>ENCL.WALL.FEATURE($D$1)</formula1><formula2>9</formula2></dataValidation></dataValidations>',
    );
  });

  it('is read on a sheet of ours; what reads the name goes on', () => {
    expect(meaningOf(copy, 'least')).toBe('Outside_cells!$C$4');
    expect(meaningOf(copy, 'double')).toBe('least*2');
    const itsPlace = 'INDEX(Outside_cells_2,ROW()-ROW($C$2)+1,COLUMN()-COLUMN($C$2)+1)';
    expect(formulasIn(textOf(copy.bytes, SHEET))).toEqual([
      `IF(ROWS($C$2:$C$5)*COLUMNS($C$2:$C$5)=4,${itsPlace},NA())`,
      '$D2&gt;least',
      'Outside_cells_3',
    ]);
    expect([meaningOf(copy, 'Outside_cells_2'), meaningOf(copy, 'Outside_cells_3')]).toEqual([
      'Outside_cells!$C$5:$C$8',
      'Outside_cells!$C$9',
    ]);
    expect(toldOf(copy)).toHaveLength(3);
    expect(toldOf(copy).every(words => words.includes('on the sheet Outside_cells'))).toBe(true);
  });

  it('has the values of the calls: hole + 2 walls above 5 mm, 0.6 of the wall; an error where they gave one', () => {
    const values = valuesOf(copy);
    const inColumn = [5, 6, 7, 9, 4].map(row => values.value('Outside_cells', `C${row}`));
    expect(inColumn).toEqual([2.4 + 2 * 1.2 > 5, 2.5 + 2 * 1.3 > 5, 3 + 2 * 1.1 > 5, 0.6 * 2.5, 0.6 * 2.5]);
    expect(values.value('Outside_cells', 'C8')).toEqual({ cellError: '#N/A' });
  });

  it('is no characteristic and no error to correct', () => {
    const { sheets } = copy.plan;
    const texts = sheets
      .filter(({ name }) => name === 'Characteristics' || name === 'Calculated')
      .flatMap(({ cells }) => cells.map(({ formula }) => formula ?? ''));
    expect(texts.filter(formula => formula.includes('Outside_cells'))).toEqual([]);
    expect(copy.findings.filter(({ sheet, what }) => sheet === 'Outside_cells' && what !== 'live')).toEqual([]);
  });
});

it('goes on over rows that are blank yet, where it gives nothing', async () => {
  const copy = await copied('', rule('C2:C5', 'IF($A2="","",_xldudf_ENCL_BOSS_OD($A2,$B2))'));
  expect(toldOf(copy).filter(words => words.includes('taken out'))).toEqual([]);
  const values = valuesOf(copy);
  expect([4, 5, 6, 7].map(row => values.value('Outside_cells', `C${row}`))).toEqual([2.4 + 2 * 1.2, 2.5 + 2 * 1.3, 3 + 2 * 1.1, '']);
});

it.each([
  ['a name that moves with its cell', names({ od: '_xldudf_ENCL_BOSS_OD(S!A1,1)' }), ''],
  ['a table of values', names({ all: '_xldudf_ENCL_SCREW_LENGTH_TABLE(&quot;ST2.9&quot;)' }), ''],
  ['another name', names({ w: 'S!$D$1', od: '_xldudf_ENCL_WALL_FEATURE(w)' }), ''],
  ['a function that not every program has', names({ od: '_xldudf_ENCL_WALL_FEATURE(_xlfn.SINGLE(S!$D$1))+RAND()' }), ''],
  ['a sheet that is not there', names({ od: '_xldudf_ENCL_WALL_FEATURE(T!$D$1)' }), ''],
  ['cells in two places', '', rule('C2:C3 E2:E3', '_xldudf_ENCL_BOSS_OD($A2,$B2)>5')],
  ['more cells than anybody looks at', '', rule('C2:C9000', '_xldudf_ENCL_BOSS_OD($A2,$B2)>5')],
  ['ranges that a cell would not work out', names({ od: 'MAX(S!$A$2:$A$4*S!$B$2:$B$4)*_xldudf_ENCL_WALL_FEATURE(S!$D$1)' }), ''],
  ['a scale of colours that moves with its cells', '', scale('_xldudf_ENCL_WALL_FEATURE($D1)')],
  ['no cell that has a value', '', rule('C7:C9', '_xldudf_ENCL_BOSS_OD($A7,$B7)>5')],
])('with %s it goes, and is told', async (_, book, afterData) => {
  const copy = await copied(book, afterData);
  expect(toldOf(copy).filter(words => words.includes('taken out'))).toHaveLength(1);
  expect(copy.plan.sheets.map(({ name }) => name)).not.toContain('Outside_cells');
  expect(textOf(copy.bytes, BOOK)).not.toMatch(/ENCL/);
  expect(textOf(copy.bytes, SHEET)).not.toMatch(/ENCL/);
});

const decimal = (first: string, second: string): string =>
  `<dataValidations count="1"><dataValidation type="decimal" operator="between" sqref="B2:B5"><formula1>${first}</formula1><formula2>${second}</formula2></dataValidation></dataValidations>`;

it('what reads a name that is taken out goes with it, however far, and nothing else', async () => {
  const copy = await copied(
    names({ od: '_xldudf_ENCL_BOSS_OD(S!A1,1)', twice: 'od*2', least: '_xldudf_ENCL_WALL_FEATURE(S!$D$1)', odd: '3' }),
    rule('C2:C5', '$D2>least', '$D2>od', '$D2>S!Twice', '$D2>odd', 'A2="od"') + decimal('_xldudf_ENCL_WALL_FEATURE($D$1)', 'twice'),
  );
  expect(toldOf(copy).map(words => words.replace(/ is worked out.*/, ''))).toEqual([
    'name od: taken out, since it calls BOSS.OD(S!A1,1)',
    'name least: WALL.FEATURE(S!$D$1)',
    'validation B2:B5 on S: taken out, since it calls WALL.FEATURE($D$1)',
    'name twice: taken out, since it reads the name od, which is taken out',
    'condition C2:C5 on S: taken out, since it reads the name od, which is taken out',
    'condition C2:C5 on S: taken out, since it reads the name twice, which is taken out',
    'validation B2:B5 on S: taken out, since it reads the name twice, which is taken out',
  ]);
  expect(formulasIn(textOf(copy.bytes, SHEET))).toEqual(['$D2&gt;least', '$D2&gt;odd', 'A2="od"']);
  expect([meaningOf(copy, 'twice'), meaningOf(copy, 'odd'), meaningOf(copy, 'Outside_cells_1')]).toEqual([undefined, '3', undefined]);
});

it('a name of a sheet stands before the one of the workbook', async () => {
  const both =
    '<definedNames><definedName name="od">3</definedName><definedName name="od" localSheetId="0">ENCL.BOSS.OD(S!A1,1)</definedName></definedNames>';
  const copy = await copied(both, rule('C2:C5', '$D2>od'));
  expect(toldOf(copy)).toEqual([
    'name od on S: taken out, since it calls BOSS.OD(S!A1,1)',
    'condition C2:C5 on S: taken out, since it reads the name od, which is taken out',
  ]);
});

it('of a rule with two formulas neither is worked out where the other goes', async () => {
  const copy = await copied('', decimal('_xldudf_ENCL_WALL_FEATURE($D$1)', '_xldudf_ENCL_WALL_FEATURE(RAND())'));
  expect(toldOf(copy).filter(words => words.includes('taken out'))).toHaveLength(2);
  expect(copy.plan.sheets.map(({ name }) => name)).not.toContain('Outside_cells');
});

it('a scale of colours reads its limit there', async () => {
  const copy = await copied('', scale('_xldudf_ENCL_WALL_FEATURE($D$1)'));
  expect(textOf(copy.bytes, SHEET)).toContain('<cfvo type="formula" val="Outside_cells_1"/>');
  expect(valuesOf(copy).value('Outside_cells', 'C4')).toBe(0.6 * 2.5);
});

it('of a sheet that stays behind nothing is worked out or told', async () => {
  const hidden = 'xl/worksheets/sheet2.xml';
  const bytes = made({
    rows: ROWS,
    bookLinks: [['r2', 'worksheet', 'worksheets/sheet2.xml']],
    types:
      '<Override PartName="/xl/worksheets/sheet2.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>',
    more: {
      [BOOK]: `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets><sheet name="S" sheetId="1" r:id="r1"/><sheet name="Secret" sheetId="2" r:id="r2"/></sheets><definedNames><definedName name="least" localSheetId="1">ENCL.WALL.FEATURE(S!$D$1)</definedName></definedNames></workbook>`,
      [hidden]: `<worksheet xmlns="${MAIN}"><sheetData/>${rule('A1:A3', 'ENCL.WALL.FEATURE(S!$D$1)>1', 'A1>least', 'A1>ENCL.WALL.FEATURE(RAND())')}</worksheet>`,
    },
  });
  const copy = await copyOfFile(bytes, ['S']);
  expect(toldOf(copy)).toEqual([]);
  expect(copy.plan.sheets.flatMap(({ name, cells }) => [name, ...cells.map(({ value }) => String(value))]).join()).not.toMatch(
    /Secret|Outside_cells/,
  );
  const whole = await copyOfFile(bytes);
  expect(toldOf(whole)).toHaveLength(3);
});

it('a name of ours is none that a table has', async () => {
  const copy = await copyOfFile(
    made({
      rows: ROWS.replace('<c r="D1">', '<c r="A1" t="str"><v>hole</v></c><c r="D1">'),
      afterData: `${rule('C2:C5', '_xldudf_ENCL_BOSS_OD($A2,$B2)>5')}<tableParts count="1"><tablePart r:id="t"/></tableParts>`,
      types:
        '<Override PartName="/xl/tables/table1.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"/>',
      more: {
        'xl/worksheets/_rels/sheet1.xml.rels': links(['t', 'table', '../tables/table1.xml']),
        'xl/tables/table1.xml': `<table xmlns="${MAIN}" id="1" name="outside_cells_1" displayName="outside_cells_1" ref="A1:A4"><tableColumns count="1"><tableColumn id="1" name="hole"/></tableColumns></table>`,
      },
    }),
  );
  expect(meaningOf(copy, 'Outside_cells_1')).toBeUndefined();
  expect(meaningOf(copy, 'Outside_cells_2')).toBe('Outside_cells!$C$4:$C$7');
});
