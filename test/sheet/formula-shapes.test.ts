// A formula worked out by its shape gives what it gives by itself, whatever stands in the first formula of that shape.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Evaluator } from '../../src/sheet/evaluator';
import { parseFormula } from '../../src/sheet/formula';
import { shaped } from '../../src/sheet/formula-shapes';
import { type Known, type One } from '../../src/sheet/known';
import { inRow, ROW, RowForms } from '../../src/sheet/row-forms';
import { SEED } from '../kit/seed';

const SHEETS = ['S', 'ST2', "A b'c", 'Maße', 'T.1'];

/** Every cell has a value of its own; some are texts, truths, blank or errors. */
class Numbered extends Evaluator {
  constructor() {
    super(() => ({ ok: false, code: '#N/A' }));
  }

  protected override valueAt(sheet: string, row: number, column: number): One {
    const s = SHEETS.indexOf(sheet);
    const kind = (row * 7 + column * 3 + s) % 11;
    if (s < 0 || kind === 10) return undefined;
    if (kind === 9) return { cellError: '#N/A' };
    return kind === 8 ? null : kind === 7 ? kind % 2 === 0 : kind === 6 ? `text ${row} ${column}` : s * 1e6 + row * 1000 + column + 0.5;
  }

  protected override spilledAt = (): Known => undefined;
  protected override lastOf = (): { row: number; column: number } => ({ row: 30, column: 8 });
}

const one = <T extends string>(...of: readonly T[]): fc.Arbitrary<T> => fc.constantFrom(...of);
const place = fc
  .tuple(
    one('', '$'),
    one('A', 'B', 'H', 'AA', 'LOG', 'XFD', 'XFE', 'a'),
    one('', '$'),
    one('1', '2', '10', '19', '1048576', '1048577', '0'),
  )
  .map(parts => parts.join(''));
const prefix = one('', '', '', 'S!', 'ST2!', "'A b''c'!", 'Maße!', 'T.1!', 'No!', '[1]S!', "'[B]S'!", 'S:ST2!');
const range = fc.tuple(prefix, place, one('', ':'), place).map(([on, from, to, last]) => `${on}${from}${to === '' ? '' : `:${last}`}`);
const whole = one('A:A', 'B:C', '1:2', 'S!A:A', 'a1', 'A1#', '@A1', 'rate', 'R1C1', 'Table1[a]', 'TRUE', 'false()', '#N/A', '{1,-2;3,4}');
const number = one('0', '1', '2.5', '.5', '3.', '1E-9', '2e3', '-4', '-.25', '1E+2', '12345678901234567');
const text = one('""', '"a"', '"A1"', '"a ""b"" c"', '"1:2[x]"', '"\'S\'!A1"', '"\u0001"', '"ä"');
const leaf = fc.oneof({ weight: 5, arbitrary: range }, { weight: 1, arbitrary: whole }, number, number, text);

/** A formula with gaps, and what stands in them. */
const CALLS = ['SUM', 'IF', 'IFERROR', 'LOG10', 'AND', 'ISNUMBER', 'MAX', 'INDEX', 'SUMPRODUCT', 'CHOOSE', '_xlfn.IFS', 'LOG10 '];
const skeleton = fc.letrec<{ part: string }>(tie => ({
  part: fc.oneof(
    { maxDepth: 3, withCrossShrink: true },
    { weight: 3, arbitrary: fc.constant('§') },
    fc
      .tuple(tie('part'), one('+', '-', '*', '/', '&', '=', '<>', '<=', ' ', ' - ', '^', '--'), tie('part'))
      .map(([a, operator, b]) => `${a}${operator}${b}`),
    fc.tuple(one('-', '+', '(', ' '), tie('part')).map(([sign, a]) => (sign === '(' ? `(${a})` : `${sign}${a}`)),
    tie('part').map(a => `${a}%`),
    fc.tuple(one(...CALLS), fc.array(tie('part'), { minLength: 1, maxLength: 3 })).map(([name, args]) => `${name}(${args.join(',')})`),
  ),
})).part;

const filled = (gaps: string, leaves: readonly string[]): string => {
  let i = 0;
  return `=${gaps.replace(/§/g, () => leaves[i++ % leaves.length] ?? '1')}`;
};

describe('the shape of a formula', () => {
  it('gives what the formula gives', () => {
    const values = new Numbered();
    let [byShape, again, known] = [0, 0, 0];
    const met = new Set<unknown>();
    fc.assert(
      fc.property(skeleton, fc.array(fc.array(leaf, { minLength: 4, maxLength: 4 }), { minLength: 3, maxLength: 3 }), (gaps, rows) => {
        for (const leaves of rows) {
          const formula = filled(gaps, leaves);
          const { shape, leaves: own } = shaped(formula);
          if (own.length > 0) byShape += 1;
          if (own.length > 0 && met.has(shape)) again += 1;
          met.add(shape);
          const alone = values.evaluate(parseFormula(formula), 'S');
          if (alone !== undefined) known += 1;
          expect({ formula, value: values.valueOfFormula(formula, 'S') }).toEqual({ formula, value: alone });
        }
      }),
      { seed: SEED, numRuns: 3000 },
    );
    expect(byShape).toBeGreaterThan(3000);
    expect(again).toBeGreaterThan(1000);
    expect(known).toBeGreaterThan(2000);
  });

  it('gives a form in every row what its formula gives there', () => {
    const values = new Numbered();
    let [compared, known] = [0, 0];
    const cell = fc
      .tuple(one('', '', "'A b''c'!", 'ST2!'), one('$A', '$H', 'B'), one(ROW, ROW, `$${ROW}`, '$2', '7'))
      .map(parts => parts.join(''));
    const ends = fc.tuple(one('$A', 'B'), one(ROW, '$3', '9'), one('$C', '$H'), one(ROW, '$3', '9'));
    const inForm = fc.oneof(
      { weight: 4, arbitrary: cell },
      ends.map(([a, r, b, s]) => `${a}${r}:${b}${s}`),
      leaf,
      one(`"row ${ROW}"`, `${ROW}.5`),
    );
    fc.assert(
      fc.property(
        skeleton,
        fc.array(inForm, { minLength: 4, maxLength: 4 }),
        fc.array(fc.nat(25), { minLength: 3, maxLength: 3 }),
        (gaps, leaves, rows) => {
          const form = filled(gaps, leaves);
          for (const row of rows) {
            const alone = values.evaluate(parseFormula(inRow(form, row)), 'S');
            compared += Number(form.includes(ROW));
            if (alone !== undefined) known += 1;
            expect({ form, row, value: values.valueInRow(form, row, 'S') }).toEqual({ form, row, value: alone });
          }
        },
      ),
      { seed: SEED, numRuns: 3000 },
    );
    expect(compared).toBeGreaterThan(4000);
    expect(known).toBeGreaterThan(2000);
  });

  it('is no form before a second row has it', () => {
    const forms = new RowForms();
    const form = `=$A${ROW}*2`;
    expect([4, 5, 6].map(row => forms.cell(form, row))).toEqual([
      { formula: '=$A5*2' },
      { formula: '=$A6*2', rowForm: form },
      { formula: '=$A7*2', rowForm: form },
    ]);
    expect([4, 5].map(row => forms.cell('=$A$1*2', row))).toEqual([{ formula: '=$A$1*2' }, { formula: '=$A$1*2' }]);
  });

  it('is one for a column that was filled down', () => {
    const column = Array.from({ length: 50 }, (_, r) => `=IF($B${r + 2}>${r}.5,"row ${r}",SUM('A b''c'!$A$${r + 1}:$C$${r + 9})-${r})`);
    expect(new Set(column.map(formula => shaped(formula).shape)).size).toBe(1);
    expect(shaped(column[7] ?? '').leaves).toEqual([
      { sheet: '', top: 8, left: 1, bottom: 8, right: 1 },
      7.5,
      'row 7',
      { sheet: "A b'c", top: 7, left: 0, bottom: 15, right: 2 },
      7,
    ]);
  });

  it('is that of the formula alone where its cells are written in another way', () => {
    for (const formula of ['=SUM(A:A)', '=SUM(S:ST2!A1)', '=Table1[a]+A1', "='[B]S'!A1+1", '=A1:INDEX(B1:B9,2)', '=SUM(B2:A1)'])
      expect([formula, shaped(formula).leaves]).toEqual([formula, []]);
  });
});
