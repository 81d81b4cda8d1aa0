// What came back is laid beside what was sent: each kind of answer gives its own lines and no other.
import { describe, expect, it } from 'vitest';
import { changeLists } from '../../src/handover/compare/change-lists';
import { compare } from '../../src/handover/compare/compare';
import { comparedOf } from '../../src/handover/compare/compared-of';
import type { ReturnedChanges } from '../../src/handover/compare/returned-changes';
import type { ComparedSheet, ComparedWorkbook } from '../../src/handover/compare/seen';
import { demoWorkbook } from '../../src/demo/demo';
import { sourceOf } from '../kit/source-of-plan';
import type { SourceCell } from '../../src/sheet/workbook-values';
import type { Cell } from '../../src/core/kinds';
import { address, cellPosition } from '../../src/sheet/addresses';
import { handed, sheetNamed, workbookOf } from './kit';

const INPUTS = ['variant', 'screw', 'head', 'length', 'wall', 'board plane', 'boss height', 'hole', 'material', 'boss OD'];
const ROWS: readonly (readonly Cell[])[] = [
  ['A', 'ST2.9', 'pan', 16, 3, 5.5, 14, 3.4, 'ABS', 5.6],
  ['B', 'ST2.9', 'pan', 9.5, 2.5, 5.5, 14, 3.4, 'ABS', 6.4],
  ['C', 'ST3.5', 'pan', 16, 3, 5.5, 14, 4, 'ABS', 7.7],
];
const table = Object.fromEntries([INPUTS, ...ROWS].flatMap((row, r) => row.map((value, c) => [address(r, c), value] as const)));
const copy = handed(
  workbookOf({
    ...table,
    A7: '=ENCL.JOINT.TABLE(A1:J4,{"variant","state","engagement min"})',
    A14: 'pilot',
    B14: 2.4,
    A15: 'wall beside it',
    B15: 1.2,
    A16: 'outside diameter',
    B16: '=ENCL.BOSS.OD(B14,B15)',
    A17: 'note',
    B17: 'as drawn',
  }),
);
const sent: ComparedWorkbook = sourceOf(copy.plan);

type Given = Cell | { readonly formula: string } | undefined;

/** The sent workbook with some cells changed; undefined takes one away. */
function returned(changes: Readonly<Record<string, Given>>, from: ComparedWorkbook = sent): ComparedWorkbook {
  return {
    ...from,
    sheets: from.sheets.map(sheet => {
      const cells = new Map(sheet.cells);
      for (const [place, change] of Object.entries(changes)) {
        const [name, at = ''] = place.split('!');
        if (name !== sheet.name) continue;
        if (change === undefined) cells.delete(at);
        else
          cells.set(at, typeof change === 'object' ? ({ value: null, formula: change.formula } satisfies SourceCell) : { value: change });
      }
      return { ...sheet, cells };
    }),
  };
}

/** As a file would be read that shows these cells as days. */
const withShown = ({ name, cells }: ComparedSheet, shown: ReadonlyMap<string, { as: string; said: string }>) => ({
  name,
  cells: [...cells].map(([at, cell]) => ({ at, ...cell })),
  shown,
});

type Moving = (line: number) => number | undefined;

/** Every cell of a sheet elsewhere, and every formula that reads it, as a program does that. */
function rearranged(sheet: string, row: Moving, column: Moving = line => line): ComparedWorkbook {
  const placed = (at: string): string | undefined => {
    const { row: r, column: c } = cellPosition(at);
    const [to, there] = [row(r), column(c)];
    return to === undefined || there === undefined ? undefined : address(to, there);
  };
  const formulaOf = (formula: string, home: string): string =>
    formula.replace(
      /("[^"]*")|(?:(\w+)!)?(\$?)\b([A-Z]{1,3})(\$?)(\d+)\b/g,
      (all, text: string, of: string, d: string, c: string, e: string, r: string) => {
        if (text !== undefined || (of ?? home) !== sheet) return all;
        const [, letters, digits = ''] = /([A-Z]+)(\d+)/.exec(placed(`${c}${r}`) ?? '') ?? [];
        if (letters === undefined) return `${of === undefined ? '' : `${of}!`}#REF!`;
        return `${of === undefined ? '' : `${of}!`}${d}${letters}${e}${digits}`;
      },
    );
  return {
    ...sent,
    sheets: sent.sheets.map(one => ({
      ...one,
      cells: new Map(
        [...one.cells].flatMap(([at, cell]): [string, SourceCell][] => {
          const place = one.name === sheet ? placed(at) : at;
          if (place === undefined) return [];
          return [[place, cell.formula === undefined ? cell : { ...cell, formula: formulaOf(cell.formula, one.name) }]];
        }),
      ),
    })),
  };
}

const NOTHING: ReturnedChanges = {
  changedInputs: [],
  changedFormulas: [],
  answers: [],
  results: [],
  comments: [],
  colours: [],
  rearranged: [],
  missing: [],
  effects: [],
};
const without = (changes: ReturnedChanges, ...keys: readonly (keyof ReturnedChanges)[]): ReturnedChanges => ({
  ...changes,
  ...Object.fromEntries(keys.map(key => [key, []])),
});

it('finds nothing where nothing was changed', () => {
  expect(compare(sent, returned({}))).toEqual(NOTHING);
});

describe('a changed input', () => {
  it('is named by its headings, and shows what it does to states and sizes', () => {
    const found = compare(sent, returned({ 'S!E2': 1.5 }));
    expect(found.changedInputs).toEqual([{ sheet: 'S', at: 'E2', label: 'wall of variant A', sent: '3', returned: '1.5', value: 1.5 }]);
    expect(found.effects).toContainEqual({ sheet: 'Characteristics', at: expect.any(String), label: 'wall', before: '3', after: '1.5' });
    expect(without(found, 'changedInputs', 'effects')).toEqual(NOTHING);
  });

  it('changes a state', () => {
    const demo: ComparedWorkbook = sourceOf(handed(sourceOf(demoWorkbook)).plan);
    const { effects } = compare(demo, returned({ 'Variants!E6': 16 }, demo));
    // 16 mm holds, and the boss still shows
    expect(effects[0]).toEqual({ sheet: 'Variants', at: 'B22', label: 'state of A  first choice', before: 'fail', after: 'review' });
    expect(effects).toContainEqual({
      sheet: 'Variants',
      at: 'C22',
      label: 'engagement min of A  first choice',
      before: '4.34',
      after: '7.34',
    });
    // each cell once
    expect(new Set(effects.map(({ sheet, at }) => `${sheet}!${at}`)).size).toBe(effects.length);
  });

  it('changes what a sheet of single calls works out, though it is not among the characteristics', () => {
    const demo: ComparedWorkbook = sourceOf(handed(sourceOf(demoWorkbook)).plan);
    const { effects } = compare(demo, returned({ 'Joint!B10': 2.8 }, demo));
    expect(effects.map(({ at, before, after }) => `${at} ${before} ${after}`)).toEqual([
      'B43 1.5 1.68',
      'B44 9.2 9.56',
      'B55 2.78188 3.01535',
      'B58 1.75 2.05',
    ]);
  });

  it('may be new or gone', () => {
    const { changedInputs, missing } = compare(sent, returned({ 'S!B20': 7, 'S!B17': undefined }));
    expect(changedInputs.map(({ at, sent: was, returned: is }) => [at, was, is])).toEqual([['B20', '', '7']]);
    expect(missing).toEqual([{ sheet: 'S', at: 'B17', label: 'note', sent: 'as drawn' }]);
  });
});

describe('a formula', () => {
  it('is compared as text', () => {
    const { changedFormulas } = compare(sent, returned({ 'S!B16': { formula: '=Steps!$B$10+0.2' } }));
    expect(changedFormulas.map(({ at, label }) => [at, label])).toEqual([['B16', 'outside diameter']]);
  });

  it('that became a value, and a value that became a formula, are changed formulas', () => {
    expect(
      compare(sent, returned({ 'S!B16': 4.8, 'S!B14': { formula: '=WEBSERVICE("x")' } })).changedFormulas.map(({ at, returned: now }) => [
        at,
        now,
      ]),
    ).toEqual([
      ['B14', '=WEBSERVICE("x")'],
      ['B16', '4.8'],
    ]);
  });

  it('is the same with other blanks and capitals, but not with other texts', () => {
    const formula = sheetNamed(copy, 'S').cells.find(({ at }) => at === 'B16')?.formula ?? '';
    expect(compare(sent, returned({ 'S!B16': { formula: `= ${formula.slice(1).toLowerCase()}` } }))).toEqual(NOTHING);
    const texts = (text: string): ComparedWorkbook => ({
      name: 'T',
      sheets: [{ name: 'S', cells: new Map([['A1', { value: null, formula: text }]]) }],
    });
    expect(compare(texts('=IF(A2="a b",1,2)'), texts('=IF( A2 = "A b",1,2)')).changedFormulas).toHaveLength(1);
  });
});

describe('rows, columns and sheets', () => {
  const after =
    (from: number, by: number): Moving =>
    line =>
      line < from ? line : line + by;

  it('a row that was inserted is one line', () => {
    const found = compare(sent, rearranged('S', after(14, 1)));
    expect(found.rearranged).toEqual([{ sheet: 'S', what: 'row', how: 'inserted', words: '15, blank' }]);
    expect(without(found, 'rearranged')).toEqual(NOTHING);
  });

  it('with something in it too', () => {
    const found = compare(sent, returned({ 'S!A15': 'rib', 'S!B15': 1.5 }, rearranged('S', after(14, 1))));
    expect(found.rearranged).toEqual([{ sheet: 'S', what: 'row', how: 'inserted', words: '15: rib | 1.5' }]);
    expect(without(found, 'rearranged')).toEqual(NOTHING);
  });

  it('on a sheet of ours too', () => {
    const found = compare(sent, rearranged('Characteristics', after(6, 1)));
    expect(found.rearranged.map(({ what, how }) => `${what} ${how}`)).toEqual(['row inserted']);
    expect(without(found, 'rearranged')).toEqual(NOTHING);
  });

  it('a row that was deleted is one line', () => {
    const found = compare(
      sent,
      rearranged('S', line => (line === 16 ? undefined : line < 16 ? line : line - 1)),
    );
    expect(found.rearranged).toEqual([{ sheet: 'S', what: 'row', how: 'deleted', words: '17: note | as drawn' }]);
    expect(without(found, 'rearranged')).toEqual(NOTHING);
  });

  it('a row that formulas read, too: what they lost is no change of theirs', () => {
    const found = compare(
      sent,
      rearranged('S', line => (line === 13 ? undefined : line < 13 ? line : line - 1)),
    );
    expect(found.rearranged).toEqual([{ sheet: 'S', what: 'row', how: 'deleted', words: '14: pilot | 2.4' }]);
    expect(without(found, 'rearranged')).toEqual(NOTHING);
  });

  it('a row that was moved is one line, and none is a change of an input', () => {
    const found = compare(
      sent,
      rearranged('S', line => (line === 13 ? 14 : line === 14 ? 13 : line)),
    );
    expect(found.rearranged.map(({ what, how }) => `${what} ${how}`)).toEqual(['row moved']);
    expect(without(found, 'rearranged')).toEqual(NOTHING);
  });

  it('a column that was inserted is one line', () => {
    const found = compare(
      sent,
      rearranged('S', line => line, after(3, 1)),
    );
    expect(found.rearranged).toEqual([{ sheet: 'S', what: 'column', how: 'inserted', words: 'D, blank' }]);
    expect(without(found, 'rearranged')).toEqual(NOTHING);
  });

  it('a change is found beside an inserted row', () => {
    const found = compare(sent, returned({ 'S!B15': 1.4 }, rearranged('S', after(13, 1))));
    expect(found.rearranged).toEqual([{ sheet: 'S', what: 'row', how: 'inserted', words: '14, blank' }]);
    expect(found.changedInputs).toMatchObject([{ at: 'B14', label: 'pilot', sent: '2.4', returned: '1.4' }]);
  });

  it('a sheet with another name is one line', () => {
    const renamed: ComparedWorkbook = {
      ...sent,
      sheets: sent.sheets.map(sheet => ({
        ...sheet,
        name: sheet.name === 'S' ? 'My part' : sheet.name,
        cells: new Map(
          [...sheet.cells].map(([at, cell]) => [
            at,
            cell.formula === undefined ? cell : { ...cell, formula: cell.formula.replace(/\bS!/g, "'My part'!") },
          ]),
        ),
      })),
    };
    const found = compare(sent, renamed);
    expect(found.rearranged).toEqual([{ sheet: 'S', what: 'sheet', how: 'renamed', words: 'now called My part' }]);
    expect(without(found, 'rearranged')).toEqual(NOTHING);
  });

  it('sheets that are gone and that came along are told, and texts cleaned', () => {
    const back = returned({ 'S!B17': '\u202eas drawn' });
    const sheets: readonly ComparedSheet[] = [
      ...back.sheets.filter(({ name }) => name !== 'Sources'),
      { name: 'Extra\u0007', cells: new Map() },
    ];
    const found = compare(sent, { ...back, sheets });
    expect(found.rearranged).toEqual([
      { sheet: 'Sources', what: 'sheet', how: 'missing', words: 'the whole sheet' },
      { sheet: 'Extra', what: 'sheet', how: 'added', words: 'was not sent' },
    ]);
    expect(found.changedInputs).toMatchObject([{ at: 'B17', label: 'note', sent: 'as drawn', returned: 'as drawn' }]);
  });
});

describe('what was filled in', () => {
  const cells = sheetNamed(copy, 'Hand-over').cells;
  const question = cells.find(({ value }) => String(value).startsWith('Shrinkage of the grade'))?.at.slice(1) ?? '';
  const row =
    sheetNamed(copy, 'Characteristics')
      .cells.find(({ value }) => value === 'boss height')
      ?.at.slice(1) ?? '';

  it('on the cover are answers', () => {
    const found = compare(sent, returned({ [`Hand-over!F${question}`]: '0.6 along, 0.7 across', [`Hand-over!H${question}`]: 'agreed' }));
    expect(found.answers.map(({ at, returned: is }) => [at, is])).toEqual([
      [`F${question}`, '0.6 along, 0.7 across'],
      [`H${question}`, 'agreed'],
    ]);
    for (const { label } of found.answers) expect(label).toContain('Shrinkage');
    expect(without(found, 'answers')).toEqual(NOTHING);
  });

  it('as results stand beside size and limits', () => {
    const place = (column: string): string => `Characteristics!${column}${row}`;
    const found = compare(sent, returned({ [place('H')]: 14.02, [place('I')]: 13.97, [place('D')]: 13.9, [place('N')]: 'cavity 1' }));
    expect(found.results).toEqual([
      {
        sheet: 'Characteristics',
        at: `H${row}`,
        characteristic: 'boss height',
        nominal: '14',
        lower: '13.9',
        upper: '',
        method: 'coordinates',
        results: [{ said: '14.02' }, { said: '13.97' }],
        judged: 'OK',
        remark: 'cavity 1',
      },
    ]);
    expect(found.answers.map(({ at }) => at[0])).toEqual(['D', 'N']);
    expect(without(found, 'results', 'answers')).toEqual(NOTHING);
  });

  it('as a formula is one result, with its number worked out', () => {
    const found = compare(
      sent,
      returned({ [`Characteristics!H${row}`]: { formula: '=14+0.02' }, [`Characteristics!I${row}`]: { formula: `=H${row}-0.05` } }),
    );
    expect(found.results.map(({ results }) => results)).toEqual([
      [
        { said: '14.02', formula: '=14+0.02' },
        { said: '13.97', formula: `=H${row}-0.05` },
      ],
    ]);
    expect(changeLists(found).find(({ title }) => title === 'results')?.lines).toEqual([
      expect.stringContaining(`boss height: 14.02 (=14+0.02), 13.97 (=H${row}-0.05) for 14`),
    ]);
    expect(without(found, 'results')).toEqual(NOTHING);
  });

  it('as a formula is told as it was typed, by programs too that write out every digit of a number', () => {
    const [long, other] = ['=2.40000000000000000009+0.0399999999999999999', '=1.25&" 2.40000000000000000009"'];
    const found = compare(sent, returned({ [`Characteristics!H${row}`]: { formula: long }, 'S!B14': { formula: other } }));
    expect(found.results.flatMap(({ results }) => results).map(({ formula }) => formula)).toEqual(['=2.4+0.04']);
    expect(found.changedFormulas.map(({ returned: now }) => now)).toEqual([other]);
  });

  it('as a formula that gives no number is one result too', () => {
    const found = compare(sent, returned({ [`Characteristics!H${row}`]: { formula: '=1/0' } }));
    expect(found.results).toMatchObject([{ results: [{ said: '=1/0' }] }]);
    expect(without(found, 'results')).toEqual(NOTHING);
  });

  it('on the cover goes by the name beside its field, where two share a row', () => {
    const rowOf = (name: string): string => cells.find(({ value }) => value === name)?.at.slice(1) ?? '';
    const fields = [
      ['shrinkage along, %', 'C', 0.006],
      ['shrinkage across, %', 'G', 0.007],
      ['supplier', 'G', 'us'],
      ['date', 'G', 'today'],
    ] as const;
    const places = fields.map(
      ([name, column, value]) => [`Hand-over!${column}${name === 'date' ? rowOf('name') : rowOf(name)}`, value] as const,
    );
    const found = compare(sent, returned(Object.fromEntries(places)));
    expect(found.answers.map(({ label }) => label).sort()).toEqual(fields.map(([name]) => name).sort());
    expect(without(found, 'answers')).toEqual(NOTHING);
  });

  it('as a day is told as one, in remarks, samples and cells', () => {
    const places = {
      [`Characteristics!N${row}`]: 46086,
      [`Characteristics!H${row}`]: 16103,
      [`Characteristics!I${row}`]: 0.006,
      'S!B17': 46086.5,
      [`Hand-over!F${question}`]: 46087,
    };
    const shown = new Map([
      [`N${row}`, { as: 'date', said: '2026-03-05' }],
      [`H${row}`, { as: 'month', said: '1944-02' }],
      [`I${row}`, { as: 'share', said: '0.6 %' }],
      ['B17', { as: 'date', said: '2026-03-05 12:00' }],
      [`F${question}`, { as: 'date', said: '2026-03-06' }],
    ]);
    const found = compare(sent, comparedOf('back', { sheets: returned(places).sheets.map(one => withShown(one, shown)) }));
    expect(found.answers.map(({ returned: is }) => is)).toEqual(['2026-03-06', '2026-03-05']);
    expect(found.results).toMatchObject([{ results: [{ said: '1944-02' }, { said: '0.6 %' }], remark: '2026-03-05' }]);
    expect(found.changedInputs).toMatchObject([
      { at: 'B17', sent: 'as drawn', returned: '2026-03-05 12:00', value: 46086.5, becameDate: true },
    ]);
    expect(without(found, 'answers', 'results', 'changedInputs')).toEqual(NOTHING);
  });

  it('as another day than the one that was sent is an answer like any other', () => {
    const dated = (said: string, value: number): ComparedWorkbook =>
      comparedOf('dated', {
        sheets: returned({ 'S!B17': value }).sheets.map(one => withShown(one, new Map([['B17', { as: 'date', said }]]))),
      });
    const { changedInputs } = compare(dated('2026-03-05', 46086), dated('2026-03-06', 46087));
    expect(changedInputs).toMatchObject([{ at: 'B17', sent: '2026-03-05', returned: '2026-03-06', value: 46087 }]);
    expect(changedInputs[0]).not.toHaveProperty('becameDate');
    const share = comparedOf('share', {
      sheets: returned({ 'S!B17': 0.06 }).sheets.map(one => withShown(one, new Map([['B17', { as: 'share', said: '6 %' }]]))),
    });
    const [answer] = compare(sent, share).changedInputs;
    expect(answer).toMatchObject({ at: 'B17', returned: '6 %', value: 0.06 });
    expect(answer).not.toHaveProperty('becameDate');
  });
});

describe('a result that was typed as text', () => {
  const row =
    sheetNamed(copy, 'Characteristics')
      .cells.find(({ value }) => value === 'wall')
      ?.at.slice(1) ?? '';
  const judged = (typed: Given, lower: Given = 2.9): string => {
    const { results } = compare(sent, returned({ [`Characteristics!H${row}`]: typed, [`Characteristics!D${row}`]: lower }));
    return results.map(({ results: all, judged: said }) => `${all.map(one => `${one.said} ${one.typed ?? ''}`).join()}: ${said}`).join();
  };

  it('is the number that it means, in either language of numbers, and is judged as that', () => {
    expect(judged('2,94')).toBe('2.94 2,94: OK');
    expect(judged('2.94')).toBe('2.94 2.94: OK');
    expect(judged('2,84')).toBe('2.84 2,84: not OK');
    expect(judged('2,94 mm')).toBe('2.94 2,94 mm: OK');
    expect(judged('2.94', '2,95')).toBe('2.94 2.94: not OK');
  });

  it('and what means no number is none', () => {
    expect(judged('n/a')).toBe('n/a : not a number');
    expect(judged('1,000')).toBe('1,000 : not a number');
  });
});

describe('remarks', () => {
  const withRemarks = (comments: Readonly<Record<string, string>>, fills: Readonly<Record<string, string>>): ComparedWorkbook => ({
    ...sent,
    sheets: sent.sheets.map(sheet =>
      sheet.name === 'S' ? { ...sheet, comments: new Map(Object.entries(comments)), fills: new Map(Object.entries(fills)) } : sheet,
    ),
  });

  it('a comment and a colour are told with what their cell is called', () => {
    const found = compare(
      withRemarks({ A1: 'ours' }, { A1: 'DFEBE9' }),
      withRemarks({ A1: 'ours', D2: 'too long' }, { A1: 'DFEBEA', E3: 'FF9900' }),
    );
    expect(found.comments).toEqual([{ sheet: 'S', at: 'D2', label: 'length of variant A', sent: '', returned: 'too long' }]);
    expect(found.colours).toEqual([{ sheet: 'S', at: 'E3', label: 'wall of variant B', sent: '', returned: 'FF9900' }]);
    expect(without(found, 'comments', 'colours')).toEqual(NOTHING);
  });
});

describe('a formula that fills several cells', () => {
  const filled = (cells: Readonly<Record<string, SourceCell>>): ComparedWorkbook => ({
    name: 'matrix',
    sheets: [
      {
        name: 'Parts',
        cells: new Map(
          Object.entries({
            A1: { value: 'part' },
            B1: { value: 'OD' },
            C1: { value: 'twice' },
            A2: { value: 'P1' },
            A3: { value: 'P2' },
            A4: { value: 'P3' },
            B2: { value: 4.8 },
            B3: { value: 5.2 },
            B4: { value: 6 },
            C2: { value: 9.6, formula: '=B2:B4*2', array: { range: 'C2:C4' } },
            C3: { value: 10.4 },
            C4: { value: 12 },
            ...cells,
          }),
        ),
      },
    ],
  });
  const without = { C2: { value: 9.6, formula: '=B2*2' }, C3: { value: 10.4, formula: '=B3*2' } };

  it('follows its inputs without a line of its own', () => {
    const found = compare(filled({}), filled({ B3: { value: 5.3 }, C3: { value: 10.6 } }));
    expect(found.changedInputs.map(({ at }) => at)).toEqual(['B3']);
    expect(found.changedFormulas).toEqual([]);
  });

  it('is one line where some of its cells were written over', () => {
    const { changedFormulas, ...rest } = compare(filled({}), filled({ ...without, C4: { value: 9 } }));
    expect(changedFormulas).toEqual([
      { sheet: 'Parts', at: 'C2:C4', label: 'twice of part P1', sent: '=B2:B4*2', returned: 'C2 =B2*2, C3 =B3*2, C4 9' },
    ]);
    expect(Object.values(rest).flat()).toEqual([]);
  });
});
