// Calls of JOINT.VALUE inside a table of the sheet: one sheet of variants for one list of names, one row for each list of values.
import { describe, expect, it } from 'vitest';
import { value } from '../kit/ask';
import { SOUND } from '../kit/sound-joint';
import { workedOut } from '../kit/worked-out';
import { address } from '../../src/sheet/addresses';
import type { Cell } from '../../src/core/kinds';
import { cellAt, handed, sheetNamed, type Typed, workbookOf } from './kit';

const NAMES = Object.keys(SOUND);
const WALLS = [2, 2.2, 2.4, 2.6, 2.8, 3];
const OUTPUTS = ['state', 'boss OD', 'sink ratio', 'reason'];
const WIDTH = NAMES.length;
const joint = (wallMm: Cell): Cell[] => Object.entries(SOUND).map(([name, own]) => (name === 'wall' ? wallMm : (own as Cell)));
const rangeOf = (row: number): string => `$A${row}:$${address(0, WIDTH - 1).replace('1', '')}${row}`;
const callOf = (row: number, output: string): string =>
  `=ENCL.JOINT.VALUE(${rangeOf(1).replace(/(\d)/g, '$$$1')},${rangeOf(row)},"${output}")`;

const sheetWith = (calls: (row: number) => readonly string[]): Record<string, Typed> =>
  Object.fromEntries([
    ...NAMES.map((name, c) => [address(0, c), name] as const),
    ...WALLS.flatMap((wallMm, v) => [
      ...joint(wallMm).map((typed, c) => [address(v + 1, c), typed] as const),
      ...calls(v + 2).map((call, c) => [address(v + 1, WIDTH + c), call] as const),
    ]),
  ]);
const copy = handed(workbookOf(sheetWith(row => OUTPUTS.map(output => callOf(row, output)))));
const alone = (wallMm: Cell, output: string): unknown => value('JOINT.VALUE', [NAMES], [joint(wallMm)], output);

describe('six variants of four outputs', () => {
  it('stand on one sheet, one row each', () => {
    expect(copy.plan.sheets.map(({ name }) => name).filter(name => name.startsWith('Variants'))).toEqual(['Variants_1']);
    const labels = sheetNamed(copy, 'Variants_1').cells.filter(({ at, role }) => /^A\d+$/.test(at) && role === 'label');
    expect(labels).toHaveLength(WALLS.length);
    expect(copy).toMatchObject({ live: WALLS.length * OUTPUTS.length, asValues: 0 });
  });

  it('have the values that the function gives alone', () => {
    let compared = 0;
    WALLS.forEach((wallMm, v) =>
      OUTPUTS.forEach((output, c) => {
        if (output === 'reason') return;
        expect(cellAt(copy, 'S', address(v + 1, WIDTH + c)).value).toBe(alone(wallMm, output));
        compared++;
      }),
    );
    expect(compared).toBe(18);
  });

  it('follow their walls, each its own', () => {
    const c = NAMES.indexOf('wall');
    const sheets = copy.plan.sheets.map(sheet =>
      sheet.name === 'S'
        ? { ...sheet, cells: sheet.cells.map(cell => (cell.at === address(3, c) ? { ...cell, value: 1.9 } : cell)) }
        : sheet,
    );
    const { values } = workedOut(sheets, 'S');
    const of = (v: number, output: string): unknown => values.get(`S!${address(v + 1, WIDTH + OUTPUTS.indexOf(output))}`);
    for (const output of ['state', 'sink ratio']) {
      const wanted = alone(1.9, output);
      expect(of(2, output)).toEqual(typeof wanted === 'number' ? expect.closeTo(wanted, 9) : wanted);
      expect(of(3, output)).toEqual(cellAt(copy, 'S', address(4, WIDTH + OUTPUTS.indexOf(output))).value);
    }
    expect(alone(1.9, 'sink ratio')).not.toBe(alone(2.4, 'sink ratio'));
  });
});
