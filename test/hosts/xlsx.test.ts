// What is written can be read again, and what anybody sends is read or refused, never believed.
import fc from 'fast-check';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { readXlsx } from 'hucre/xlsx';
import { describe, expect, it, vi } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import { demoWorkbook } from '../../src/demo/demo';
import { readWorkbook, UnreadableFile, type ReadWorkbook } from '../../src/hosts/xlsx/read';
import { UnwritablePlan, writeWorkbook } from '../../src/hosts/xlsx/write';
import type { PlanCell, SheetPlan, WorkbookPlan } from '../../src/sheet/plan';
import { SEED } from '../kit/seed';

const sheet = (cells: readonly PlanCell[], more: Partial<SheetPlan> = {}): SheetPlan => ({
  name: 'My sheet',
  widths: [30, 20],
  cells,
  ...more,
});
const workbook = (...sheets: SheetPlan[]): WorkbookPlan => ({ name: 'Test', sheets });
const written = (...sheets: SheetPlan[]): Promise<Uint8Array> => writeWorkbook(workbook(...sheets));
const parts = (bytes: Uint8Array): Record<string, Uint8Array> => unzipSync(bytes);
const part = (bytes: Uint8Array, path: string): string => strFromU8(parts(bytes)[path] ?? new Uint8Array());

/** The value of a single cell on its way through a file. */
async function throughFile(value: Cell): Promise<Cell | null | undefined> {
  const { sheets } = await readWorkbook(await written(sheet([{ at: 'B3', role: 'text', value }])));
  return sheets[0]?.cells.find(({ at }) => at === 'B3')?.value;
}

describe('written and read again', () => {
  it('keeps every value and formula of the demo, the cached values too', async () => {
    const cached: readonly Cell[] = [6.4, 'pass', true, 0.1 + 0.2, -1e-7, '#N/A', 'ST2.9 & <head>'];
    const plan: WorkbookPlan = {
      ...demoWorkbook,
      sheets: demoWorkbook.sheets.map(one => ({
        ...one,
        cells: one.cells.map((cell, i) => (cell.formula === undefined ? cell : { ...cell, value: cached[i % cached.length] ?? 0 })),
      })),
    };
    const read = await readWorkbook(await writeWorkbook(plan));
    expect(read.outside).toEqual([]);
    expect(read.sheets.map(({ name }) => name)).toEqual(plan.sheets.map(({ name }) => name));
    for (const [i, { cells }] of plan.sheets.entries()) {
      const filled = cells
        .filter(({ value = '', formula }) => formula !== undefined || value !== '')
        .map(({ at, value, formula }) => ({ at, value, ...(formula !== undefined && { formula }) }));
      const byAt = (a: { at: string }, b: { at: string }): number => a.at.localeCompare(b.at);
      expect([...(read.sheets[i]?.cells ?? [])].sort(byAt)).toEqual(filled.sort(byAt));
    }
  });

  it.each([
    '_x0041_',
    'a_x000D_b',
    '__x0041__',
    '_x005F_x0041_',
    '_X0041_',
    '"quoted"',
    "'led",
    'A & B',
    '<b>&lt;</b>',
    ']]>',
    '🔩 Ø2.9 ± 0.1 µm',
    '=1+1',
    '+1',
    '-1',
    '@SUM(A1)',
    "=cmd|'/C calc'!A0",
    '007',
    '1E5',
    'TRUE',
    '#N/A',
    '#VALUE!',
    '#1',
    ' led and followed ',
    'two\nlines',
    'tab\there',
    '\u00a0',
  ])('keeps the text %j as text', async text => {
    expect(await throughFile(text)).toBe(text);
  });

  it('writes line ends as a cell has them and leaves out what XML cannot hold', async () => {
    expect(await throughFile('a\r\nb\rc\u0000\u0007d\ud800e\uffff')).toBe('a\nb\ncde');
  });

  it('keeps any text', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc
          .array(fc.oneof(fc.string(), fc.constantFrom('_x', '0041_', '_', '&', '<', '"', '\n', ' ')))
          .map(pieces => pieces.join(''))
          .filter(text => text !== ''),
        async text => {
          expect(await throughFile(text)).toBe(text);
        },
      ),
      { numRuns: 200, seed: SEED },
    );
  });

  it('keeps any number to the last bit', async () => {
    await fc.assert(
      fc.asyncProperty(fc.double({ noNaN: true, noDefaultInfinity: true }), async number => {
        expect(await throughFile(number)).toBe(number === 0 ? 0 : number);
      }),
      { numRuns: 200, seed: SEED },
    );
  });

  it('gives the same bytes for the same plan, at any time', async () => {
    const today = await writeWorkbook(demoWorkbook);
    vi.useFakeTimers({ toFake: ['Date'], now: new Date(2031, 5, 17, 12) });
    const later = await writeWorkbook(demoWorkbook).finally(() => vi.useRealTimers());
    expect(later).toEqual(today);
  });
});

describe('the file', () => {
  it('is worked out anew when it is opened, says who wrote it, and holds nothing that runs or fetches', async () => {
    const bytes = await writeWorkbook(demoWorkbook);
    expect(part(bytes, 'xl/workbook.xml')).toContain('fullCalcOnLoad="1"');
    expect(part(bytes, 'docProps/app.xml')).toContain('<Application>Bosswright</Application>');
    expect(Object.keys(parts(bytes)).filter(path => /vba|externalLink|connections|embeddings/i.test(path))).toEqual([]);
    expect(Object.entries(parts(bytes)).filter(([, data]) => strFromU8(data).includes('TargetMode="External"'))).toEqual([]);
  });

  it('names the calls of our functions as a workbook file does, but not in texts', async () => {
    const bytes = await written(
      sheet([
        {
          at: 'A1',
          role: 'result',
          formula: '=IF(encl.CHECK.MAX(B4,5)="ENCL.CHECK.MAX(",ENCL.BOSS.OD(\'My sheet\'!$B$4),LN(2))',
          value: 1,
        },
      ]),
    );
    expect(part(bytes, 'xl/worksheets/sheet1.xml')).toContain(
      '<f t="array" ref="A1">IF(_xldudf_encl_CHECK_MAX(B4,5)="ENCL.CHECK.MAX(",_xldudf_ENCL_BOSS_OD(\'My sheet\'!$B$4),LN(2))</f>',
    );
  });

  it('tells an error from a text that reads like one, and an empty text from nothing', async () => {
    const bytes = await written(
      sheet([
        { at: 'A1', role: 'result', formula: '=NA()', value: '#N/A' },
        { at: 'A2', role: 'text', value: '#N/A' },
        { at: 'A3', role: 'result', formula: '=""', value: '' },
        { at: 'A4', role: 'input', value: '' },
      ]),
    );
    const xml = part(bytes, 'xl/worksheets/sheet1.xml');
    expect(xml).toMatch(/<c r="A1"[^>]* t="e"><f>NA\(\)<\/f><v>#N\/A<\/v>/);
    expect(xml).toMatch(/<c r="A2" t="inlineStr"[^>]*><is><r><t>#N\/A</);
    expect(xml).toMatch(/<c r="A3"[^>]* t="str"><f>""<\/f><v\/>/);
    expect(xml).toMatch(/<c r="A4" s="\d+"\/>/);
  });

  it('places words to the left, numbers to the right, states in the middle, and wraps what has no room', async () => {
    const bytes = await written(
      sheet(
        [
          { at: 'A1', role: 'text', value: 'words' },
          { at: 'B1', role: 'text', value: 'last column' },
          { at: 'A2', role: 'note', value: 'words with room' },
          { at: 'A3', role: 'result', value: 2 },
          { at: 'B3', role: 'result', value: 'words' },
          { at: 'B4', role: 'result', value: 'pass' },
          { at: 'A5', role: 'title', value: 'title' },
          { at: 'B5', role: 'input', value: 'ST2.9' },
        ],
        { stateRanges: ['B4'] },
      ),
    );
    const cells = (await readXlsx(bytes, { readStyles: true })).sheets[0]?.cells;
    const placed = [...(cells ?? [])].map(([key, { style }]) => [key, style?.alignment?.horizontal, style?.alignment?.wrapText === true]);
    expect(placed).toEqual([
      ['0,0', 'left', true],
      ['0,1', 'left', true],
      ['1,0', 'left', false],
      ['2,0', 'right', false],
      ['2,1', 'left', true],
      ['3,1', 'center', true],
      ['4,0', 'left', false],
      ['4,1', 'right', true],
    ]);
  });

  it('has plain formulas as plain formulas', async () => {
    const bytes = await written(sheet([{ at: 'A1', role: 'result', formula: '=MAX(B1,2*B2)', value: -999 }]));
    expect(part(bytes, 'xl/worksheets/sheet1.xml')).toContain('<f>MAX(B1,2*B2)</f><v>-999</v>');
  });

  it('repeats rows of a sheet whose name has spaces', async () => {
    const bytes = await written(sheet([{ at: 'A1', role: 'title', value: 'x' }], { print: { paper: 'Letter', repeatRows: 3 } }));
    expect(part(bytes, 'xl/workbook.xml')).toContain(
      `<definedName name="_xlnm.Print_Titles" localSheetId="0">'My sheet'!$1:$3</definedName>`,
    );
    expect(part(bytes, 'xl/worksheets/sheet1.xml')).toContain(
      '<pageSetup paperSize="1" orientation="portrait" fitToWidth="1" fitToHeight="0"/>',
    );
  });

  it('prints a sheet on one page in width, unless nobody could read it', async () => {
    const columns = (count: number): Promise<Uint8Array> =>
      written(sheet([{ at: 'A1', role: 'title', value: 'x' }], { widths: Array.from({ length: count }, () => 20), frozenRows: 2 }));
    expect(part(await columns(18), 'xl/worksheets/sheet1.xml')).toContain('fitToWidth="1"');
    const wide = await columns(60);
    expect(part(wide, 'xl/worksheets/sheet1.xml')).toContain('fitToWidth="3"');
    expect(part(wide, 'xl/workbook.xml')).toContain(`>'My sheet'!$A:$A,'My sheet'!$1:$2<`);
  });

  it('ends pages where it is told, small enough for what stands between two ends', async () => {
    const bytes = await written(
      sheet(
        [
          { at: 'A1', role: 'title', value: 'x' },
          { at: 'A60', role: 'text', value: 'y' },
        ],
        { widths: [20], print: { breakAfter: [50] } },
      ),
    );
    const xml = part(bytes, 'xl/worksheets/sheet1.xml');
    expect(xml).toContain('<rowBreaks count="1" manualBreakCount="1"><brk id="50"');
    expect(xml).not.toContain('fitToPage');
    // 50 rows of 15 points and a title of 32 on 748 points, of which 96 in 100 are used
    expect(xml).toMatch(/<pageSetup paperSize="9" orientation="portrait" scale="93"/);
  });

  it('gives a picture rows of its height', async () => {
    const bytes = await written(
      sheet([{ at: 'A13', role: 'text', value: 'below' }], {
        pictures: [{ at: 'A3', png: new Uint8Array([137, 80, 78, 71]), widthPx: 320, heightPx: 200, rows: 10, words: 'x' }],
      }),
    );
    const heights = [...part(bytes, 'xl/worksheets/sheet1.xml').matchAll(/<row r="(\d+)" ht="([\d.]+)"/g)].map(([, row, height]) => [
      Number(row),
      Number(height),
    ]);
    expect(heights.slice(0, 10)).toEqual(Array.from({ length: 10 }, (_, i) => [i + 3, 15]));
  });

  it('locks what it is told, without a password', async () => {
    const cells: PlanCell[] = [
      { at: 'A1', role: 'text', value: 'x' },
      { at: 'B1', role: 'input', value: 1 },
      { at: 'C1', role: 'result', formula: '=B1', value: 1 },
    ];
    const locked = async (plan: Partial<SheetPlan>): Promise<readonly unknown[]> => {
      const {
        sheets: [read],
      } = await readXlsx(await written(sheet(cells, plan)), { readStyles: true });
      return [
        read?.protection?.sheet,
        read?.protection?.password,
        ...[0, 1, 2].map(col => read?.cells?.get(`0,${col}`)?.style?.protection?.locked),
      ];
    };
    expect(await locked({ isLocked: true })).toEqual([true, undefined, true, false, true]);
    expect((await locked({})).slice(0, 2)).toEqual([undefined, undefined]);
  });

  it('leaves no few rows alone on a last page', async () => {
    const rows = async (count: number): Promise<string | undefined> => {
      const cells = Array.from({ length: count }, (_, i): PlanCell => ({ at: `A${i + 1}`, role: 'text', value: i }));
      return /fitToHeight="(\d+)"/.exec(part(await written(sheet(cells)), 'xl/worksheets/sheet1.xml'))?.[1];
    };
    // A page of this set-up holds 29 rows of one line.
    expect([await rows(28), await rows(31), await rows(40), await rows(62)]).toEqual(['0', '1', '0', '2']);
  });

  it('colours states, validates inputs, freezes and merges', async () => {
    const bytes = await written(
      sheet([{ at: 'A1', role: 'caution', value: 'x' }], {
        merged: ['A1:B1'],
        frozenRows: 1,
        stateRanges: ['B4:B9'],
        validations: [
          { range: 'B4:B9', words: 'mm, above 0', above: 0, atMost: 30 },
          { range: 'A4', words: 'a screw', list: "'My sheet'!$A$5:$A$9" },
          { range: 'A5', words: 'w'.repeat(300) },
        ],
      }),
    );
    const [read] = (await readXlsx(bytes)).sheets;
    expect(read?.merges).toEqual([{ startRow: 0, startCol: 0, endRow: 0, endCol: 1 }]);
    expect(read?.freezePane).toEqual({ rows: 1 });
    expect(read?.conditionalRules?.map(({ type, formula, range }) => [type, formula, range])).toEqual(
      ['pass', 'review', 'fail', 'not checked'].map(word => ['expression', `B4="${word}"`, 'B4:B9']),
    );
    expect(
      read?.dataValidations?.map(({ type, formula1, inputMessage, errorMessage }) => [type, formula1, inputMessage, errorMessage]),
    ).toEqual([
      ['custom', 'AND(ISNUMBER(B4),B4>0,B4<=30)', 'mm, above 0', 'mm, above 0'],
      ['list', "'My sheet'!$A$5:$A$9", 'a screw', 'a screw'],
      ['custom', 'TRUE', `${'w'.repeat(253)} …`, `${'w'.repeat(253)} …`],
    ]);
  });

  it('gives a picture its own size and its words', async () => {
    const bytes = await written(
      sheet([], {
        pictures: [{ at: 'C5', png: new Uint8Array([137, 80, 78, 71]), widthPx: 320.4, heightPx: 200, words: 'Section "A" & B' }],
      }),
    );
    const drawing = part(bytes, 'xl/drawings/drawing1.xml');
    expect(drawing).toContain(
      '<xdr:col>2</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>4</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext cx="3048000" cy="1905000"/>',
    );
    expect(drawing).toContain('descr="Section &quot;A&quot; &amp; B"');
    expect(drawing).not.toContain('twoCellAnchor');
  });

  it('gives a note the size of its text', async () => {
    const boxOf = async (note: string): Promise<number[]> => {
      const [, anchor = ''] =
        /<x:Anchor>([^<]*)</.exec(
          part(await written(sheet([{ at: 'A1', role: 'text', value: 1, note }])), 'xl/drawings/vmlDrawing1.vml'),
        ) ?? [];
      return anchor.split(',').map(Number);
    };
    const [short, long] = [await boxOf('x'), await boxOf('many words '.repeat(60))];
    expect(short.slice(0, 7)).toEqual(long.slice(0, 7).map((number, i) => (i === 6 ? short[6] : number)));
    expect(long[6]).toBeGreaterThan((short[6] ?? 0) + 10);
  });

  it('makes a row as tall as the words in it', async () => {
    const heights = async (...sheets: SheetPlan[]): Promise<(number | undefined)[]> =>
      [...((await readXlsx(await written(...sheets))).sheets[0]?.rowDefs?.values() ?? [])].map(({ height }) => height);
    const words = 'one two three four five six seven eight nine ten eleven twelve';
    const [one = 0] = await heights(sheet([{ at: 'A1', role: 'text', value: 'one' }]));
    const [merged = 0] = await heights(sheet([{ at: 'A1', role: 'text', value: words }], { merged: ['A1:B1'] }));
    const [blocked = 0] = await heights(
      sheet([
        { at: 'A1', role: 'text', value: words },
        { at: 'B1', role: 'text', value: 1 },
      ]),
    );
    const [free = 0] = await heights(sheet([{ at: 'A1', role: 'text', value: words }]));
    expect([merged, blocked, free].map(height => Math.round((height - one) / 12.75))).toEqual([1, 2, 0]);
  });
});

describe('a plan that no file can hold is refused', () => {
  it.each<[string, SheetPlan, RegExp]>([
    ['a text that is too long', sheet([{ at: 'B2', role: 'text', value: 'x'.repeat(32_768) }]), /My sheet!B2.*32768.*32767/],
    ['a note that is too long', sheet([{ at: 'B2', role: 'text', value: 1, note: 'x'.repeat(32_768) }]), /My sheet!B2.*32767/],
    ['a formula that is too long', sheet([{ at: 'B2', role: 'text', formula: `=1${'+1'.repeat(4096)}` }]), /My sheet!B2.*8192/],
    ['a formula without its sign', sheet([{ at: 'B2', role: 'text', formula: '1+1' }]), /My sheet!B2.*equals/],
    ['no number', sheet([{ at: 'B2', role: 'text', value: Number.NaN }]), /My sheet!B2: NaN/],
    ['infinity', sheet([{ at: 'B2', role: 'text', value: Number.POSITIVE_INFINITY }]), /My sheet!B2: Infinity/],
    ['a name with a sign that no program takes', sheet([], { name: 'a/b' }), /a\/b/],
    ['a name that ends with a quote', sheet([], { name: "a'" }), /"a'"/],
    ['a name that is too long', sheet([], { name: 'a'.repeat(32) }), /31/],
  ])('%s', async (_, plan, words) => {
    const fault = await written(plan).catch((error: unknown) => error);
    expect(fault).toBeInstanceOf(UnwritablePlan);
    expect(String(fault)).toMatch(words);
  });

  it('while any other name of a sheet is held', async () => {
    const names = ["O'Brien's (2) Ü", '部品', 'a '];
    const { sheets } = await readWorkbook(await written(...names.map(name => sheet([{ at: 'A1', role: 'text', value: 1 }], { name }))));
    expect(sheets.map(({ name }) => name)).toEqual(names);
  });

  it('while the longest are held', async () => {
    expect(await throughFile('x'.repeat(32_767))).toBe('x'.repeat(32_767));
  });
});

const REL = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const LINKS = 'http://schemas.openxmlformats.org/package/2006/relationships';

/** A small workbook as another program writes it, with the rows of its only sheet; parts are replaced or added. */
function foreign(rows: string, more: Readonly<Record<string, string | Uint8Array>> = {}): Uint8Array {
  const texts: Record<string, string | Uint8Array> = {
    '[Content_Types].xml':
      '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="xml" ContentType="application/xml"/></Types>',
    '_rels/.rels': `<Relationships xmlns="${LINKS}"><Relationship Id="r1" Type="${REL}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${REL}"><sheets><sheet name="One" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${LINKS}"><Relationship Id="rId1" Type="${REL}/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}"><sheetData>${rows}</sheetData></worksheet>`,
    ...more,
  };
  return zipSync(Object.fromEntries(Object.entries(texts).map(([path, text]) => [path, typeof text === 'string' ? strToU8(text) : text])));
}

const cellsOf = async (bytes: Uint8Array): Promise<ReadWorkbook['sheets'][number]['cells']> =>
  (await readWorkbook(bytes)).sheets[0]?.cells ?? [];

describe('a file of another program', () => {
  it('is read: numbers, texts, states, errors, cells without an address', async () => {
    expect(
      await cellsOf(
        foreign(
          '<row r="2"><c r="B2"><v>1.5</v></c><c t="inlineStr"><is><t>a_x0041_</t></is></c><c t="b"><v>1</v></c></row><row><c t="e"><v>#DIV/0!</v></c><c r="B3" t="str"><f>"a"</f><v>a</v></c></row>',
        ),
      ),
    ).toEqual([
      { at: 'B2', value: 1.5 },
      { at: 'C2', value: 'aA' },
      { at: 'D2', value: true },
      { at: 'A3', value: '#DIV/0!' },
      { at: 'B3', value: 'a', formula: '="a"' },
    ]);
  });

  it('has its shared formulas as one formula a cell', async () => {
    const rows =
      '<row r="1"><c r="A1"><v>2</v></c><c r="B1"><f t="shared" ref="B1:B3" si="0">A1*$D$1+_xldudf_ENCL_BOSS_OD(A1)</f><v>1</v></c></row><row r="3"><c r="B3"><f t="shared" si="0"/><v>3</v></c></row>';
    expect((await cellsOf(foreign(rows))).filter(({ formula }) => formula !== undefined)).toEqual([
      { at: 'B1', value: 1, formula: '=A1*$D$1+ENCL.BOSS.OD(A1)' },
      { at: 'B3', value: 3, formula: '=A3*$D$1+ENCL.BOSS.OD(A3)' },
    ]);
  });

  it('has its calls of our functions by their names, but no text changed', async () => {
    expect(
      await cellsOf(
        foreign(
          '<row r="1"><c r="A1"><f>IF(_xldudf_ENCL_CHECK_MAX(B1)="_xldudf_ENCL_X(",_xldudf_OTHER_F(1),_xldudf_ENCL_JOINT_TABLE(\'a b\'!A1:B2))</f><v>1</v></c></row>',
        ),
      ),
    ).toEqual([
      { at: 'A1', value: 1, formula: '=IF(ENCL.CHECK.MAX(B1)="_xldudf_ENCL_X(",_xldudf_OTHER_F(1),ENCL.JOINT.TABLE(\'a b\'!A1:B2))' },
    ]);
  });

  it('tells which cells a formula filled', async () => {
    expect(
      await cellsOf(
        foreign(
          '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:B2">_xldudf_ENCL_SCREW_CARD(1)</f><v>1</v></c><c r="B1"><v>2</v></c><c r="C1"><v>9</v></c></row><row r="2"><c r="A2"><v>3</v></c></row>',
        ),
      ),
    ).toEqual([
      { at: 'A1', value: 1, formula: '=ENCL.SCREW.CARD(1)', array: { range: 'A1:B2' } },
      { at: 'B1', value: 2, spilledFrom: 'A1' },
      { at: 'C1', value: 9 },
      { at: 'A2', value: 3, spilledFrom: 'A1' },
    ]);
  });

  it('has cells far away, and one whose address a quote would hide', async () => {
    const cell = { at: 'XFD1048576', value: 1 };
    expect(await cellsOf(foreign('<row r="1048576"><c x=" r=\'A1\'" y=">" r="XFD1048576"><v>1</v></c></row>'))).toEqual([cell]);
  });

  it('has its dates as the numbers they are', async () => {
    const styles = `<styleSheet xmlns="${MAIN}"><cellXfs><xf numFmtId="14"/></cellXfs></styleSheet>`;
    expect(await cellsOf(foreign('<row r="1"><c r="A1" s="0"><v>45000</v></c></row>', { 'xl/styles.xml': styles }))).toEqual([
      { at: 'A1', value: 45000 },
    ]);
  });

  it('may have a sheet that is one chart, and a hidden one', async () => {
    const bytes = foreign('<row r="1"><c r="A1"><v>1</v></c></row>', {
      'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${REL}"><sheets><sheet name="Chart" sheetId="1" r:id="rId2"/><sheet name="One" sheetId="2" state="hidden" r:id="rId1"/></sheets></workbook>`,
      'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${LINKS}"><Relationship Id="rId1" Type="${REL}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${REL}/chartsheet" Target="chartsheets/sheet1.xml"/></Relationships>`,
      'xl/chartsheets/sheet1.xml': `<chartsheet xmlns="${MAIN}"/>`,
    });
    expect((await readWorkbook(bytes)).sheets).toEqual([{ name: 'One', hidden: true, cells: [{ at: 'A1', value: 1 }] }]);
  });

  it('tells what it would fetch or carries', async () => {
    const bytes = foreign('<row r="1"><c r="A1"><f>[1]Sheet1!A1</f><v>1</v></c></row>', {
      'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${LINKS}"><Relationship Id="rId1" Type="${REL}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId9" Type="${REL}/externalLink" Target="externalLinks/externalLink1.xml"/></Relationships>`,
      'xl/externalLinks/externalLink1.xml': `<externalLink xmlns="${MAIN}" xmlns:r="${REL}"><externalBook r:id="rId1"><sheetNames><sheetName val="Sheet1"/></sheetNames></externalBook></externalLink>`,
      'xl/externalLinks/_rels/externalLink1.xml.rels': `<Relationships xmlns="${LINKS}"><Relationship Id="rId1" Type="${REL}/externalLinkPath" Target="other.xlsx" TargetMode="External"/></Relationships>`,
      'xl/connections.xml': '<connections/>',
      'xl/embeddings/oleObject1.bin': new Uint8Array([1]),
    });
    const { outside, sheets } = await readWorkbook(bytes);
    expect(outside).toEqual(['other.xlsx', 'xl/connections.xml', 'xl/embeddings/oleObject1.bin']);
    expect(sheets[0]?.cells).toEqual([{ at: 'A1', value: 1, formula: '=[1]Sheet1!A1' }]);
  });
});

describe('a hostile file is refused', () => {
  const simple = foreign('<row r="1"><c r="A1"><v>1</v></c></row>');

  /** The size that the table of contents says of parts, changed; what stands before each part is not. */
  function lying(bytes: Uint8Array, paths: RegExp, size: number): Uint8Array {
    const changed = bytes.slice();
    const view = new DataView(changed.buffer);
    for (let at = 0; at < changed.length - 46; at++) {
      if (view.getUint32(at, true) !== 0x02014b50) continue;
      const name = strFromU8(changed.subarray(at + 46, at + 46 + view.getUint16(at + 28, true)));
      if (paths.test(name)) view.setUint32(at + 24, size, true);
    }
    return changed;
  }

  /** Another name of the same length wherever the zip has it. */
  const renamed = (bytes: Uint8Array, from: string, to: string): Uint8Array =>
    Uint8Array.from(Buffer.from(Buffer.from(bytes).toString('latin1').replaceAll(from, to), 'latin1'));

  const SHEET = 'xl/worksheets/sheet1.xml';
  const zeros = (megabytes: number): Uint8Array => new Uint8Array(megabytes * 1024 * 1024);

  it.each<[string, () => Uint8Array, RegExp]>([
    ['nothing', () => new Uint8Array(), /not a workbook/],
    ['no zip', () => strToU8('Hello, this is text. '.repeat(20)), /not a workbook/],
    ['a zip of something else', () => zipSync({ 'readme.txt': strToU8('hello') }), /not a workbook/],
    ['truncated', () => simple.slice(0, simple.length - 60), /not a workbook/],
    ['truncated in the middle', () => simple.slice(0, simple.length / 2), /not a workbook/],
    ['a bomb', () => foreign('', { [SHEET]: zeros(30) }), /packed more than 200 times/],
    ['a bomb in a part that is not read', () => foreign('', { 'xl/media/image1.png': zeros(30) }), /packed more than 200 times/],
    ['a bomb that hides its size', () => lying(foreign('', { [SHEET]: zeros(30) }), /sheet1/, 1000), /has not the size/],
    ['a part that is smaller than said', () => lying(simple, /sheet1/, 5000), /has not the size/],
    [
      'much in many parts',
      () => lying(foreign('', Object.fromEntries(Array.from({ length: 300 }, (_, i) => [`xl/media/${i}.png`, 'x']))), /png$/, 900 * 1024),
      /larger than 200 MB/,
    ],
    [
      '3,000 parts',
      () => foreign('', Object.fromEntries(Array.from({ length: 3_000 }, (_, i) => [`xl/media/${i}.png`, 'x']))),
      /more than 2000 parts/,
    ],
    ['too large', () => new Uint8Array(21 * 1024 * 1024), /larger than 20 MB/],
    ['a path that leads out', () => foreign('', { '../evil.xml': 'x' }), /out of place/],
    ['a part twice', () => renamed(foreign('', { 'xl/worksheets/sheet2.xml': '<worksheet/>' }), 'sheet2.xml', 'sheet1.xml'), /twice/],
    ['macros', () => foreign('', { 'xl/vbaProject.bin': new Uint8Array([1, 2, 3]) }), /run something/],
    ['macros under another name', () => foreign('', { 'xl/macrosheets/sheet1.xml': '<x/>' }), /run something/],
    ['a password', () => new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Uint8Array(600)]), /password/],
    [
      'entities',
      () =>
        foreign('', {
          [SHEET]: '<!DOCTYPE a [<!ENTITY b "bb">]><worksheet><sheetData><row r="1"><c r="A1"><v>&b;</v></c></row></sheetData></worksheet>',
        }),
      /document type/,
    ],
    ['an address that is none', () => foreign('<row r="1"><c r="1A"><v>1</v></c></row>'), /a cell with the address "1A"/],
    [
      'an address beyond every sheet',
      () => foreign('<row r="1"><c r="A9999999"><v>1</v></c></row>'),
      /a cell with the address|beyond the last|not in their order/,
    ],
    ['a tag without an end', () => foreign('<row r="1"><c r="A1"'), /sheet1.xml" is broken/],
    ['broken XML', () => foreign('', { 'xl/workbook.xml': '<workbook><sheets>' }), /workbook.xml" is broken/],
    [
      'no sheets where it says',
      () =>
        foreign('', {
          'xl/_rels/workbook.xml.rels': `<Relationships><Relationship Id="rId1" Type="${REL}/worksheet" Target="../../etc/passwd"/></Relationships>`,
        }),
      /the sheet "One" is missing in the file/,
    ],
  ])('%s', async (_, make, words) => {
    const fault = await readWorkbook(make()).catch((error: unknown) => error);
    expect(fault).toBeInstanceOf(UnreadableFile);
    expect(String(fault)).toMatch(words);
  });

  it('wherever a byte is changed or the rest is missing', async () => {
    const bytes = await writeWorkbook(demoWorkbook);
    await fc.assert(
      fc.asyncProperty(fc.nat(bytes.length - 1), fc.integer({ min: 0, max: 255 }), fc.boolean(), async (at, byte, cut) => {
        const changed = cut ? bytes.slice(0, at) : bytes.slice();
        if (!cut) changed[at] = byte;
        const outcome = await readWorkbook(changed).catch((error: unknown) => error);
        expect(outcome instanceof UnreadableFile || (typeof outcome === 'object' && outcome !== null && 'sheets' in outcome)).toBe(true);
      }),
      { numRuns: 150, seed: SEED },
    );
  });
});
