// Formulas of ours outside cells are found in every place that the format has for a formula, and go or change as asked.
import { tokenize } from '@borgar/fx/xlsx';
import { describe, expect, it } from 'vitest';
import { callsLeft } from '../../src/package/calls-left';
import { edited } from '../../src/package/edit';
import { elsewhereOf, type Elsewhere, type ElsewhereChange, spotInWords } from '../../src/package/elsewhere';
import { readPackage } from '../../src/package/read';
import { FOREIGN, FOREIGN_NAMES } from './foreign';
import { BOOK, CONTENT_TYPES, links, made, MAIN, rawEntries, SHEET, textOf } from './made';

const isOurs = (formula: string): boolean =>
  /ENCL/i.test(formula) && tokenize(formula).some(({ type, value }) => type === 'func' && /^(_xldudf_ENCL_|ENCL\.)/i.test(value));

const X14 = 'http://schemas.microsoft.com/office/spreadsheetml/2009/9/main';
const XM = 'http://schemas.microsoft.com/office/excel/2006/main';
const CHART = 'http://schemas.openxmlformats.org/drawingml/2006/chart';
const OURS = '_xldudf_ENCL_BOSS_OD(A1,1)';
const native = '<formula>A1&gt;2</formula>';

const AFTER =
  `<conditionalFormatting sqref="A1:A9"><cfRule type="expression" priority="1"><formula>${OURS}&gt;4</formula></cfRule></conditionalFormatting>` +
  `<conditionalFormatting sqref="B1"><cfRule type="expression" priority="2">${native}</cfRule><cfRule type="cellIs" priority="3" operator="between"><formula>1</formula><formula>ENCL.BOSS.OD(1,1)</formula></cfRule></conditionalFormatting>` +
  `<conditionalFormatting sqref="C1"><cfRule type="dataBar" priority="4"><dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF638EC6"/></dataBar><extLst><ext xmlns:x14="${X14}" uri="{B025F937-C7B1-47D3-B67F-A62EFF666E3E}"><x14:id>{1}</x14:id></ext></extLst></cfRule></conditionalFormatting>` +
  `<conditionalFormatting sqref="D1"><cfRule type="colorScale" priority="5"><colorScale><cfvo type="formula" val="${OURS}"/><cfvo type="max"/><color rgb="FF638EC6"/><color rgb="FF63BE7B"/></colorScale></cfRule></conditionalFormatting>` +
  `<dataValidations count="2"><dataValidation type="custom" sqref="E1"><formula1>"ENCL.BOSS.OD(1)"&amp;'ENCL.x'!A1&amp;MYENCL.F(1)</formula1></dataValidation><dataValidation type="decimal" sqref="E2:E5"><formula1>1</formula1><formula2>${OURS}</formula2></dataValidation></dataValidations>` +
  '<drawing r:id="d"/><tableParts count="1"><tablePart r:id="t"/></tableParts>' +
  `<extLst><ext xmlns:x14="${X14}" uri="{78C0D931-6437-407d-A8EE-F0AAD7539E65}"><x14:conditionalFormattings><x14:conditionalFormatting xmlns:xm="${XM}"><x14:cfRule type="dataBar" id="{1}"><x14:dataBar><x14:cfvo type="formula"><xm:f>${OURS}</xm:f></x14:cfvo><x14:cfvo type="autoMax"/></x14:dataBar></x14:cfRule><xm:sqref>C1</xm:sqref></x14:conditionalFormatting></x14:conditionalFormattings></ext>` +
  `<ext xmlns:x14="${X14}" uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}"><x14:dataValidations xmlns:xm="${XM}" count="1"><x14:dataValidation type="custom"><x14:formula1><xm:f>${OURS}&gt;1</xm:f></x14:formula1><xm:sqref>F1</xm:sqref></x14:dataValidation></x14:dataValidations></ext>` +
  `<ext xmlns:x14="${X14}" uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}"><x14:sparklineGroups xmlns:xm="${XM}"><x14:sparklineGroup><x14:sparklines><x14:sparkline><xm:f>${OURS}</xm:f><xm:sqref>G1</xm:sqref></x14:sparkline><x14:sparkline><xm:f>S!A1:A2</xm:f><xm:sqref>G2</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext></extLst>`;

const table =
  `<table xmlns="${MAIN}" id="1" name="Bosses" displayName="Bosses" ref="A1:B3" totalsRowCount="1"><tableColumns count="2">` +
  `<tableColumn id="1" name="ENCL.BOSS.OD(2,1)" totalsRowFunction="custom"><calculatedColumnFormula>${OURS}</calculatedColumnFormula><totalsRowFormula>${OURS}+1</totalsRowFormula></tableColumn>` +
  '<tableColumn id="2" name="OD"><calculatedColumnFormula>A1*2</calculatedColumnFormula></tableColumn></tableColumns></table>';
const chart = `<c:chartSpace xmlns:c="${CHART}"><c:chart><c:plotArea><c:ser><c:val><c:numRef><c:f>${OURS}</c:f><c:numCache><c:ptCount val="1"/></c:numCache></c:numRef></c:val></c:ser></c:plotArea></c:chart></c:chartSpace>`;
const names =
  `<definedNames><definedName name="_xldudf_ENCL_BOSS_OD" hidden="1">#NAME?</definedName><definedName name="_xldudf_OTHER" hidden="1">#NAME?</definedName>` +
  `<definedName name="least">${OURS}</definedName><definedName name="plain">S!$A$1</definedName></definedNames>`;

const file = made({
  rows: '<row r="1"><c r="A1"><v>2</v></c><c r="B1" t="inlineStr"><is><t>ENCL.BOSS.OD(2,1)</t></is></c></row>',
  afterData: AFTER,
  book: names,
  bookLinks: [['p', 'pivotCacheDefinition', 'pivotCache/pivotCacheDefinition1.xml']],
  more: {
    'xl/worksheets/_rels/sheet1.xml.rels': links(['t', 'table', '../tables/table1.xml'], ['d', 'drawing', '../drawings/drawing1.xml']),
    'xl/tables/table1.xml': table,
    'xl/drawings/drawing1.xml': '<wsDr xmlns="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"/>',
    'xl/drawings/_rels/drawing1.xml.rels': links(['c', 'chart', '../charts/chart1.xml']),
    'xl/charts/chart1.xml': chart,
    'xl/pivotCache/pivotCacheDefinition1.xml': `<pivotCacheDefinition xmlns="${MAIN}"><cacheFields count="1"><cacheField name="Field1" formula="${OURS}" databaseField="0"/></cacheFields></pivotCacheDefinition>`,
  },
});
const pkg = readPackage(file);
const found = elsewhereOf(pkg, isOurs);
const at = (kind: string, words: string): Elsewhere => {
  const one = found.find(elsewhere => elsewhere.kind === kind && spotInWords(elsewhere.spot) === words);
  if (one === undefined) throw new Error(`no ${kind} ${words}`);
  return one;
};
const change = (...changes: readonly (readonly [Elsewhere, ElsewhereChange])[]) =>
  edited(pkg, { cells: new Map(), elsewhere: new Map(changes) });

it('finds each with its place and whether it can go', () => {
  expect(found.map(({ kind, spot, canGo }) => `${kind} | ${spotInWords(spot)} | ${canGo ? 'can go' : 'stays'}`).sort()).toEqual([
    'chart | xl/charts/chart1.xml on S | stays',
    'column | ENCL.BOSS.OD(2,1) of Bosses on S | can go',
    'condition | A1:A9 on S | can go',
    'condition | B1 on S | can go',
    'condition | C1 on S | can go',
    'condition | D1 on S | can go',
    'name | least | can go',
    'pivot | Field1 | stays',
    'placeholder | _xldudf_ENCL_BOSS_OD | can go',
    'sparkline | G1 on S | can go',
    'totals | ENCL.BOSS.OD(2,1) of Bosses on S | can go',
    'validation | E2:E5 on S | can go',
    'validation | F1 on S | can go',
  ]);
});

it('the last look finds every one of them, and no text', () => {
  expect(callsLeft(file, isOurs, /ENCL/i)).toHaveLength(found.length);
  expect(callsLeft(file, isOurs, /ENCL/i).map(({ part, element }) => `${part} ${element}`)).toContain(`${SHEET} cfvo val`);
  const cell = made({
    rows: `<row r="1"><c r="A1"><f>${OURS}</f></c></row>`,
    afterData: '<unknown:x xmlns:unknown="urn:x">ENCL.X(1)</unknown:x>',
  });
  expect(callsLeft(cell, isOurs, /ENCL/i)).toEqual([
    { part: SHEET, element: 'f', text: OURS },
    { part: SHEET, element: 'x', text: 'ENCL.X(1)' },
  ]);
});

/** Text of a part with what is named taken out, one after another. */
const less = (text: string, ...pieces: readonly string[]): string =>
  pieces.reduce((left, piece) => {
    expect(left.split(piece), piece).toHaveLength(2);
    return left.replace(piece, () => '');
  }, text);
const piece = (text: string, from: string, to: string): string => {
  const start = text.indexOf(from);
  return text.slice(start, text.indexOf(to, start) + to.length);
};

describe('taken out', () => {
  const out = change(...found.filter(({ canGo }) => canGo).map(one => [one, 'out'] as const));

  it('goes with the rule, the validation, the name, and with what holds nothing else', () => {
    const validations = AFTER.slice(AFTER.indexOf('<dataValidation '), AFTER.indexOf('</dataValidations>'));
    const second = validations.slice(validations.indexOf('<dataValidation type="decimal"'));
    const expected = less(
      textOf(file, SHEET),
      piece(AFTER, '<conditionalFormatting sqref="A1:A9">', '</conditionalFormatting>'),
      piece(AFTER, '<cfRule type="cellIs"', '</cfRule>'),
      piece(AFTER, '<conditionalFormatting sqref="C1">', '</conditionalFormatting>'),
      piece(AFTER, '<conditionalFormatting sqref="D1">', '</conditionalFormatting>'),
      second,
      piece(AFTER, `<ext xmlns:x14="${X14}" uri="{78C0`, '</ext>'),
      piece(AFTER, `<ext xmlns:x14="${X14}" uri="{CCE6`, '</ext>'),
      `<x14:sparkline><xm:f>${OURS}</xm:f><xm:sqref>G1</xm:sqref></x14:sparkline>`,
    ).replace('<dataValidations count="2">', '<dataValidations count="1">');
    expect(textOf(out.bytes, SHEET)).toBe(expected);
  });

  it('of names only ours', () =>
    expect(textOf(out.bytes, BOOK)).toContain(
      '<definedNames><definedName name="_xldudf_OTHER" hidden="1">#NAME?</definedName><definedName name="plain">S!$A$1</definedName></definedNames><calcPr fullCalcOnLoad="1"/>',
    ));

  it('of a column the formulas, and the word that its total has one', () =>
    expect(textOf(out.bytes, 'xl/tables/table1.xml')).toBe(
      less(
        table,
        `<calculatedColumnFormula>${OURS}</calculatedColumnFormula>`,
        `<totalsRowFormula>${OURS}+1</totalsRowFormula>`,
        ' totalsRowFunction="custom"',
      ),
    ));

  it('leaves what cannot go, and nothing else', () => {
    expect(callsLeft(out.bytes, isOurs, /ENCL/i).map(({ part }) => part)).toEqual([
      'xl/charts/chart1.xml',
      'xl/pivotCache/pivotCacheDefinition1.xml',
    ]);
    expect([...out.touched].sort()).toEqual([SHEET, BOOK, 'xl/tables/table1.xml'].sort());
    const after = rawEntries(out.bytes);
    for (const [part, entry] of rawEntries(file)) if (!out.touched.includes(part)) expect(after.get(part), part).toEqual(entry);
  });

  it('the whole list of names or conditions when none is left', () => {
    const book = '<definedNames><definedName name="a">ENCL.X(1)</definedName></definedNames>';
    const rules = `<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>ENCL.X(1)</formula></cfRule></conditionalFormatting>`;
    const extension = `<extLst>${piece(AFTER, `<ext xmlns:x14="${X14}" uri="{78C0`, '</ext>')}</extLst>`;
    const few = readPackage(made({ book, afterData: rules + extension }));
    const all = elsewhereOf(few, isOurs);
    const bytes = edited(few, { cells: new Map(), elsewhere: new Map(all.map(one => [one, 'out'] as const)) }).bytes;
    expect(all).toHaveLength(3);
    expect(textOf(bytes, SHEET)).toMatch(/<sheetData><\/sheetData><\/worksheet>$/);
    expect(textOf(bytes, BOOK)).toContain('</sheets><calcPr');
  });

  it('is refused where the format needs the formula', () => {
    for (const one of found.filter(({ canGo }) => !canGo)) expect(() => change([one, 'out'])).toThrow(/cannot be taken out/);
  });
});

describe('replaced', () => {
  it('every one is another formula in the same place', () => {
    const bytes = change(...found.map(one => [one, { formula: 'A1<"x"' }] as const)).bytes;
    const escaped = 'A1&lt;"x"';
    const of = (part: string, text: string): string =>
      text
        .replaceAll(`val="${OURS}"`, 'val="A1&lt;&quot;x&quot;"')
        .replaceAll(`formula="${OURS}"`, 'formula="A1&lt;&quot;x&quot;"')
        .replaceAll(`${OURS}&gt;4`, escaped)
        .replaceAll(`${OURS}&gt;1`, escaped)
        .replaceAll(`${OURS}+1`, escaped)
        .replaceAll(OURS, escaped)
        .replace(/<formula>ENCL[^<]*/, `<formula>${escaped}`)
        .replace(
          'hidden="1">#NAME?</definedName><definedName name="_xldudf_OTHER"',
          `hidden="1">${escaped}</definedName><definedName name="_xldudf_OTHER"`,
        )
        .replace(part === BOOK ? '</definedNames>' : /$/, part === BOOK ? '</definedNames><calcPr fullCalcOnLoad="1"/>' : '');
    for (const part of new Set(found.map(one => one.part))) expect(textOf(bytes, part), part).toBe(of(part, textOf(file, part)));
    expect(callsLeft(bytes, isOurs, /ENCL/i).map(({ element }) => element)).toEqual(['definedName']); // the name itself
  });

  it('one alone changes nothing else, and a cell of the same sheet may change with it', () => {
    const both = edited(pkg, {
      cells: new Map([['S', new Map([['A1', { value: 3, formula: 'none' }]])]]),
      elsewhere: new Map([[at('validation', 'E2:E5 on S'), { formula: '7' }]]),
    });
    expect(textOf(both.bytes, SHEET)).toBe(textOf(file, SHEET).replace('<v>2</v>', '<v>3</v>').replace(`<formula2>${OURS}`, '<formula2>7'));
  });
});

describe('of foreign workbooks', () => {
  it.each(FOREIGN_NAMES)('%s: the last look and the list agree', async name => {
    const foreign = (await FOREIGN[name]?.()) ?? new Uint8Array();
    const places = elsewhereOf(readPackage(foreign), isOurs);
    expect(callsLeft(foreign, isOurs, /ENCL/i).map(({ part }) => part)).toEqual(places.map(({ part }) => part));
    expect(places.length).toBe(name === 'comments, chart, table, printer' ? 1 : 0);
    expect(rawEntries(foreign).has(CONTENT_TYPES)).toBe(true);
  });
});
