// A formula that many cells share reads in each of them as the library's own translation gives it, cell by cell.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromPlace, inPlace, movable } from '../../src/package/shared-formula';
import { cellPosition } from '../../src/sheet/addresses';
import { SEED } from '../kit/seed';

const row = fc.oneof(fc.integer({ min: 1, max: 12 }), fc.constantFrom(1_048_570, 1_048_576));
const column = fc.constantFrom('A', 'B', 'C', 'Z', 'AA', 'XFA', 'XFD');
const dollar = fc.constantFrom('', '$');
const cell = fc.tuple(dollar, column, dollar, row).map(parts => parts.join(''));
const sheet = fc.constantFrom('', '', 'Other!', "'Dave''s part'!", "'[1]S'!", '[1]S!', 'Größe!', 'S1:S3!');
const reference = fc.oneof(
  cell,
  fc.tuple(sheet, cell).map(parts => parts.join('')),
  fc.tuple(sheet, cell, fc.constantFrom(':', ':', ':', '.:.', '.:', ':.'), cell).map(parts => parts.join('')),
  fc.tuple(sheet, dollar, column, dollar, column).map(([s, a, b, c, d]) => `${s}${a}${b}:${c}${d}`),
  fc.tuple(sheet, dollar, row, dollar, row).map(([s, a, b, c, d]) => `${s}${a}${b}:${c}${d}`),
  fc.tuple(cell, column).map(([a, b]) => `${a}:${b}`),
  fc.tuple(cell, sheet, cell).map(([a, s, b]) => `(${a}):${s}${b}`),
);
const other = fc.constantFrom(
  '1.5',
  '"A1 ""B2"""',
  'TRUE',
  '#N/A',
  'wall_mm',
  'Bosses[[#This Row],[A1]]',
  '_xlfn.ANCHORARRAY(A8)',
  'LOG10(A1)',
  '_xlfn.LET(_xlpm.x,A1,_xlpm.x)',
  '{1,2;3,4}',
  'SUM( A1 ,\n$B2)',
  'RC',
  'R1C1',
);
const formula = fc.array(fc.oneof(reference, reference, other), { minLength: 1, maxLength: 6 }).map(parts => parts.join('+'));
const place = fc.tuple(column, row).map(parts => parts.join(''));

describe('a shared formula', () => {
  it('reads in any cell as the library translates it there', () => {
    let [compared, lost, moved] = [0, 0, 0];
    fc.assert(
      fc.property(formula, place, fc.array(place, { minLength: 1, maxLength: 4 }), (text, from, cells) => {
        const to = movable(text, from);
        const counted = fromPlace(text, from);
        for (const at of cells) {
          const expected = inPlace(counted, at);
          expect(to(cellPosition(at)), `${text} from ${from} to ${at}`).toBe(expected);
          compared++;
          if (expected.includes('#REF!')) lost++;
          if (expected !== text) moved++;
        }
      }),
      { seed: SEED, numRuns: 3_000 },
    );
    expect(compared).toBeGreaterThan(3_000);
    expect(Math.min(lost, moved)).toBeGreaterThan(500);
  });

  it('reads as its references move: those without $, and no further than the sheet goes', () => {
    const to = movable('$B1+C$1*Other!D2:$E$5&"A1"', 'A2');
    expect(to({ row: 3, column: 1 })).toBe('$B3+D$1*Other!E4:$E$5&"A1"');
    expect(to({ row: 0, column: 0 })).toBe('#REF!+C$1*Other!D1:$E$5&"A1"');
  });
});
