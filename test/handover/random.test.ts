// Random small sheets: nothing throws, and what comes out is plain and can be written.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { exampleInNumbers, HOSTILE } from '../kit/arguments';
import { SEED } from '../kit/seed';
import { CARDS } from '../../src/registry';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { handed, sheetOf, type Typed } from './kit';

const IDS = [...CARDS.keys(), 'NOPE'];
const VALUES: readonly Typed[] = [
  2.4,
  0,
  -1,
  1e9,
  'ST2.9',
  'ISO 7049',
  'ABS',
  '0.167 in',
  '±0.1',
  'pass',
  'wall',
  'screw',
  true,
  '',
  null,
  '\u202e=1+1',
  'x'.repeat(40_000),
  '#N/A',
  '_x000D_',
  ...HOSTILE.flatMap((value): Typed[] =>
    typeof value === 'string' || typeof value === 'boolean' || (typeof value === 'number' && Number.isFinite(value)) ? [value] : [],
  ),
];

const place = fc.tuple(fc.constantFrom(...'ABCDE'), fc.integer({ min: 1, max: 12 })).map(([column, row]) => `${column}${row}`);
const sheet = fc.constantFrom('', 'S!', "'A b''c'!", 'Nowhere!', '[Book]S!');
const reference = fc
  .tuple(sheet, place, fc.option(place, { nil: undefined }))
  .map(([name, from, to]) => `${name}${from}${to === undefined ? '' : `:${to}`}`);
const argument = fc.oneof(
  { weight: 6, arbitrary: reference },
  {
    weight: 2,
    arbitrary: fc.constantFrom(
      '2.4',
      '-1',
      '"M3 pan"',
      '"ABS"',
      '',
      '{1,2;3,4}',
      'A1#',
      'name',
      'A:A',
      '1/0',
      'A1&" "&A2',
      '#REF!',
      'TRUE',
      '_xlfn.ANCHORARRAY(A1)',
      '_xlfn.SINGLE(A1:A9)',
      'T1[[#This Row],[a]]',
      'T1[b]',
      '_xll.OTHER.FN(A1)',
    ),
  },
);
const own = fc.constantFrom(...IDS).chain(id => {
  const count = CARDS.get(id)?.params.length ?? 1;
  return fc.array(argument, { maxLength: count + 1 }).map(args => `ENCL.${id}(${args.join(',')})`);
});
/** The example of a function, typed into the formula. */
const example = fc.constantFrom(...CARDS.values()).map(
  card =>
    `ENCL.${card.id}(${exampleInNumbers(card)
      .map(arg => (Array.isArray(arg) ? `{${(arg as unknown[][]).map(row => row.map(literal).join(',')).join(';')}}` : literal(arg)))
      .join(',')})`,
);
const literal = (value: unknown): string =>
  typeof value === 'string' ? `"${value.replace(/"/g, '""')}"` : value === null || value === undefined ? '' : String(value);
const around = fc.constantFrom<(call: string) => string>(
  call => call,
  call => `ROUND(${call}*2,2)`,
  call => `INDEX(${call},1,2)`,
  call => `MAX(${call})`,
  call => `IF(${call}="pass",1,2)`,
  call => `IFERROR(${call},0)`,
  call => `ENCL.BOSS.OD(${call},1)`,
  call => `-${call}%`,
  call => `LET(x,${call},x+1)`,
  call => `XLOOKUP(1,${call},A1:A2)`,
  call => `_xlfn.LET(_xlpm.x,${call},_xlpm.x+_xlpm.x)`,
  call => `_xlfn.SINGLE(${call})`,
  call => `@${call}`,
  call => `SUM((${call},A1))`,
  call => `${call}&"x"`,
);
const formula = fc.oneof(
  { weight: 5, arbitrary: fc.tuple(fc.oneof(own, example), around).map(([call, wrap]) => `=${wrap(call)}`) },
  { weight: 1, arbitrary: fc.constantFrom('=A1+B2', '=SUM(A1:E12)', '=1/0', '=(', '=B1#', `=1${'+1'.repeat(5000)}`) },
);
const typed: fc.Arbitrary<Typed> = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...VALUES) },
  { weight: 2, arbitrary: formula },
  { weight: 1, arbitrary: fc.tuple(formula, fc.constantFrom(1, 'x', '#NAME?')) },
);
const TABLE = {
  name: 'T1',
  area: { sheet: 'S', top: 0, left: 0, bottom: 11, right: 1 },
  headerRows: 1,
  totalsRows: 1,
  columns: ['a', 'b'],
};
const cells = fc.dictionary(place, typed, { maxKeys: 30 });

it('any sheet is handed over', async () => {
  const counts = { copies: 0, written: 0, live: 0, asValues: 0 };
  await fc.assert(
    fc.asyncProperty(cells, cells, async (first, second) => {
      const copy = handed({ name: 'Any', sheets: [sheetOf('S', first), sheetOf("A b'c", second)], tables: [TABLE] });
      for (const { name, cells: list } of copy.plan.sheets)
        expect([name, new Set(list.map(({ at }) => at)).size]).toEqual([name, list.length]);
      counts.live += copy.live;
      counts.asValues += copy.asValues;
      // to write a copy takes four times as long as to make it
      if (counts.copies++ % 3 > 0) return;
      const bytes = await writeWorkbook(copy.plan);
      expect(bytes.length).toBeGreaterThan(0);
      counts.written++;
    }),
    { seed: SEED, numRuns: 150 },
  );
  expect(counts.written).toBe(50);
  expect(counts.live, 'values that follow their inputs').toBeGreaterThan(150);
  expect(counts.asValues, 'values that do not').toBeGreaterThan(400);
});

it('every function is handed over from its example, alone and inside another formula', () => {
  for (const card of CARDS.values()) {
    const call = `ENCL.${card.id}(${exampleInNumbers(card)
      .map(arg => (Array.isArray(arg) ? `{${(arg as unknown[][]).map(row => row.map(literal).join(',')).join(';')}}` : literal(arg)))
      .join(',')})`;
    const { findings } = handed({ name: 'One', sheets: [sheetOf('S', { A1: `=${call}`, A40: `=IF(1=1,${call},0)` })] });
    expect([card.id, findings.map(({ at }) => at).filter(at => at === 'A1').length]).toEqual([card.id, expect.any(Number)]);
    expect([card.id, findings.filter(({ what, at }) => what === 'error' && at === 'A1')]).toEqual([card.id, []]);
  }
});
