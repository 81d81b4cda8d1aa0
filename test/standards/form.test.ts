// The form of every table: complete rows, rising sizes, maximum not below minimum, exceptions that point at a value.
import { describe, expect, test } from 'vitest';
import { column, rowsOf, TABLES } from './tables';

const HELD =
  /^(read in 1 secondary copy|read in [2-9] secondary copies|read under (ISO|DIN|GB|GB\/T|product standards) ?|computed from |from memory|by designation$)/;

const INCH_SIZES = ['#0', '#1', '#2', '#3', '#4', '#5', '#6', '#8', '#10', '1/4'];

/** The size a row stands for, as far as rows must rise. */
function sizeOf(row: string): number {
  const gauge = row.replace(/-\d+$/, '');
  if (INCH_SIZES.includes(gauge)) return INCH_SIZES.indexOf(gauge) + (row === gauge ? 0 : Number(row.split('-')[1]) / 1000);
  return Number(/^(?:M|ST)([\d.]+)$/.exec(row)?.[1]);
}

/** Pairs of columns whose first must not be below the second. */
const ORDERED = [
  ['dkSharp', 'dkMax'],
  ['dkSharp', 'dkMin'],
  ['dkMax', 'dkMin'],
  ['dkMax', 'dkPlainMax'],
  ['dkPlainMax', 'dkMin'],
  ['kMax', 'kMin'],
  ['kMax', 'coneMax'],
  ['sideMax', 'sideMin'],
  ['flatsMax', 'flatsMin'],
  ['cornersMin', 'flatsMax'],
  ['heightMax', 'heightMin'],
  ['nominal', 'majorMax'],
  ['majorMax', 'majorMin'],
  ['majorMin', 'pitchDiaMax'],
  ['pitchDiaMax', 'pitchDiaMin'],
  ['pitchDiaMin', 'rootMax'],
  ['majorMin', 'rootMax'],
  ['rootMax', 'rootMin'],
  ['rootMin', 'pointDiaMax'],
  ['pointDiaMax', 'pointDiaMin'],
  ['pointTaperMax', 'pointTaperMin'],
  ['pointCone', 'pointFlat'],
  ['medium', 'fine'],
  ['coarse', 'medium'],
  ['fineMax', 'fine'],
  ['mediumMax', 'medium'],
  ['coarseMax', 'coarse'],
  ['closeMax', 'closeMin'],
  ['normalMax', 'normalMin'],
  ['looseMax', 'looseMin'],
  ['normalMin', 'closeMin'],
  ['looseMin', 'normalMin'],
  ['normal', 'close'],
  ['loose', 'normal'],
  ['countersinkDia', 'hole'],
  ['upper', 'lower'],
  ['upperLarge', 'lowerLarge'],
  ['coneUpper', 'coneLower'],
  ['flatUpper', 'flatLower'],
  ['angleMax', 'angle'],
  ['angle', 'angleMin'],
  ['upTo', 'over'],
  ['across', 'same'],
  ['m', 'f'],
  ['c', 'm'],
  ['v', 'c'],
  ['IT6', 'IT5'],
  ['IT7', 'IT6'],
  ['IT8', 'IT7'],
  ['IT9', 'IT8'],
  ['IT10', 'IT9'],
  ['IT11', 'IT10'],
  ['IT12', 'IT11'],
  ['IT13', 'IT12'],
  ['IT14', 'IT13'],
  ['IT15', 'IT14'],
  ['IT16', 'IT15'],
] as const;

describe.each(Object.entries(TABLES))('%s', (_, table) => {
  const keys = table.columns.map(entry => entry.key);

  test('names its standard, edition and table', () => {
    for (const text of [table.standard, table.edition, table.subject, table.table]) expect(text.length).toBeGreaterThan(2);
  });

  test('every row fills every column, keys are unique', () => {
    for (const row of table.rows) expect(row, row[0]).toHaveLength(keys.length + 1);
    expect(new Set(keys).size).toBe(keys.length);
    expect(new Set(rowsOf(table)).size).toBe(table.rows.length);
  });

  test('every value says how it is held', () => {
    for (const entry of table.columns) expect(entry.held, entry.key).toMatch(HELD);
    for (const single of table.exceptions ?? []) expect(single.held, `${single.row} ${single.key}`).toMatch(HELD);
  });

  test('an exception points at a value and says something else than its column', () => {
    const seen = new Set<string>();
    for (const { row, key, held, note } of table.exceptions ?? []) {
      const entry = table.columns.find(candidate => candidate.key === key);
      expect(entry, `${row} ${key}`).toBeDefined();
      expect(rowsOf(table), `${row} ${key}`).toContain(row);
      expect(held !== entry?.held || note !== undefined, `${row} ${key}`).toBe(true);
      expect(seen.has(`${row} ${key}`), `${row} ${key}`).toBe(false);
      seen.add(`${row} ${key}`);
    }
  });

  test('sizes rise', () => {
    const measure = ['upTo', 'length'].find(key => keys.includes(key));
    const sizes = measure === undefined ? rowsOf(table).map(sizeOf) : column(table, measure);
    if (rowsOf(table).join() === 'all') return;
    const lengths = table.standard === 'ISO 4759-1' ? rowsOf(table).map(Number) : sizes;
    lengths.forEach((size, i) => {
      if (i === 0) return;
      if (size === null) expect(i).toBe(lengths.length - 1);
      else expect(size, rowsOf(table)[i]).toBeGreaterThan(lengths[i - 1] as number);
    });
  });

  test.each(ORDERED.filter(pair => pair.every(key => keys.includes(key))))('%s is not below %s', (upper, lower) => {
    const above = column(table, upper);
    const below = column(table, lower);
    above.forEach((value, i) => {
      const other = below[i];
      if (value !== null && other !== null && other !== undefined) expect(value, rowsOf(table)[i]).toBeGreaterThanOrEqual(other);
    });
  });
});

/** Columns that do not rise with the size, with the reason; each must fall somewhere. */
const FALLS: Readonly<Record<string, string>> = {
  'ASME_B18_6_3_TYPE_AB_THREADS tpi': 'a larger screw has fewer threads per inch',
  'ASME_B18_6_3_TYPE_B_THREADS tpi': 'a larger screw has fewer threads per inch',
  'ASME_B1_1_UNIFIED_THREADS_2A tpi': 'coarse and fine threads of a size follow one another',
  'ISO_4759_1_LENGTH_LIMITS lower': 'a lower deviation grows downwards',
  'ISO_7049_LENGTH_TOLERANCES coneLower': 'a lower deviation grows downwards',
  'ISO_7049_LENGTH_TOLERANCES flatLower': 'a lower deviation grows downwards',
  'ASME_B18_6_3_LENGTH_TOLERANCES lower': 'a lower deviation grows downwards',
  'ASME_B18_6_3_LENGTH_TOLERANCES lowerLarge': 'a lower deviation grows downwards',
  'ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES lower': 'a lower deviation grows downwards',
};

describe('no value falls as the size rises', () => {
  const columns = Object.entries(TABLES).flatMap(([name, table]) =>
    table.columns.map(({ key }) => [`${name} ${key}`, column(table, key).filter(value => value !== null)] as const),
  );
  const steps = (values: readonly number[]): number[] => values.slice(1).map((value, i) => value - (values[i] as number));

  test.each(columns.filter(([name]) => !(name in FALLS)))('%s', (_, values) => {
    expect(steps(values).filter(step => step < 0)).toEqual([]);
  });
  test.each(Object.entries(FALLS))('but %s: %s', name => {
    const down = steps(columns.find(([known]) => known === name)?.[1] ?? []);
    expect(down.some(step => step < 0)).toBe(true);
    if (name !== 'ASME_B1_1_UNIFIED_THREADS_2A tpi') expect(down.filter(step => step > 0)).toEqual([]);
  });
  test('which holds for most columns', () => expect(columns.length - Object.keys(FALLS).length).toBeGreaterThan(200));
});

test('bands follow one another without a gap', () => {
  const banded = Object.values(TABLES).filter(table => table.columns.some(entry => entry.key === 'over'));
  expect(banded).toHaveLength(6);
  for (const table of banded) expect(column(table, 'over').slice(1), table.standard).toEqual(column(table, 'upTo').slice(0, -1));
});

test('no address in any text of any table', () => {
  expect(JSON.stringify(TABLES)).not.toMatch(/https?:|www\.|\.(com|net|org|de|no|tools|fr)\b/);
});
