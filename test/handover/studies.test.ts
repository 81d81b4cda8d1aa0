// Studies go along as values of their date, and show only while every cell that they were worked out from is as it was sent.
import { describe, expect, it } from 'vitest';
import type { Cell } from '../../src/core/kinds';
import { address } from '../../src/sheet/addresses';
import { DEMO } from '../kit/study';
import { value } from '../kit/ask';
import { workedOut } from '../kit/worked-out';
import { cellAt, followed, handed, type Typed, told, workbookOf } from './kit';

const NAMES = Object.entries(DEMO);
/** Names and values of the joint in A and B. */
const JOINT: Record<string, Typed> = Object.fromEntries(
  NAMES.flatMap(([name, given], row) => [
    [address(row, 0), name],
    [address(row, 1), given],
  ]),
);
const INPUTS = `A1:B${NAMES.length}`;
const WALLS = Array.from({ length: 40 }, (_, i) => 1.5 + i / 20);
const ODS = Array.from({ length: 40 }, (_, i) => 5 + i / 20);

const CALLS: readonly (readonly [id: string, formula: string, args: readonly unknown[]])[] = [
  ['JOINT.WINDOW', `=ENCL.JOINT.WINDOW(${INPUTS},"seat")`, [NAMES, 'seat']],
  ['JOINT.SENSITIVITY', `=ENCL.JOINT.SENSITIVITY(${INPUTS},"engagement min")`, [NAMES, 'engagement min']],
  ['JOINT.SIMULATE', `=ENCL.JOINT.SIMULATE(${INPUTS},1000)`, [NAMES, 1000]],
  ['JOINT.SOLVE', `=ENCL.JOINT.SOLVE(${INPUTS},"seat","engagement min",7)`, [NAMES, 'seat', 'engagement min', 7]],
];

describe.each(CALLS)('%s', (id, formula, args) => {
  const copy = handed(workbookOf({ ...JOINT, D1: formula }));
  const answer = value(id, ...args);
  const rows = (Array.isArray(answer) ? answer : [[answer]]) as Cell[][];
  const hasHeader = Array.isArray(answer);

  it('its values go along, and it is told that they stand as of the date of the copy', () => {
    let compared = 0;
    rows.slice(hasHeader ? 1 : 0).forEach((row, r) =>
      row.forEach((one, c) => {
        const cell = cellAt(copy, 'S', address(r + (hasHeader ? 1 : 0), 3 + c));
        expect(cell.value).toEqual(one);
        expect(cell.isFixed, cell.at).toBe(true);
        expect(cell.formula ?? '', cell.at).toMatch(/^=IF\(/);
        compared++;
      }),
    );
    expect(compared).toBeGreaterThanOrEqual(1);
    expect(told(copy.findings)).toContain(`value, not live S!D1: ${id}: a study of many joints; it stands as of the date of the copy`);
  });

  it('every cell of the joint is watched', () => {
    const shown = followed(copy, 'S', hasHeader ? 'D2' : 'D1');
    for (let row = 1; row <= NAMES.length; row++) expect(shown).toContain(`S!$B$${row}`);
    expect(shown).toContain('inputs changed');
  });
});

describe('JOINT.MAP of 40 × 40', () => {
  const cells = {
    ...JOINT,
    ...Object.fromEntries(WALLS.flatMap((wall, i) => [[`C${i + 1}`, wall] as const])),
    ...Object.fromEntries(ODS.flatMap((od, i) => [[`D${i + 1}`, od] as const])),
    F1: `=ENCL.JOINT.MAP(${INPUTS},"boss OD",D1:D40,"wall",C1:C40)`,
  };
  const copy = handed(workbookOf(cells));

  it('a state shows while all 110 cells are as they were sent, else not checked', () => {
    const map = value('JOINT.MAP', NAMES, 'boss OD', [ODS], 'wall', [WALLS]) as Cell[][];
    expect(cellAt(copy, 'S', 'P20').value).toBe(map[19]?.[10]);
    const shown = followed(copy, 'S', 'P20');
    for (const at of ['S!$A$1', 'S!$B$15', 'S!$C$40', 'S!$D$1', 'S!$D$40']) expect(shown).toContain(at);
    expect(shown).toContain('"not checked"');
  });

  it.each(['B4', 'C40', 'D1'])('changed in %s, no state is shown any more', at => {
    const changed = copy.plan.sheets.map(sheet =>
      sheet.name === 'S' ? { ...sheet, cells: sheet.cells.map(cell => (cell.at === at ? { ...cell, value: 2.75 } : cell)) } : sheet,
    );
    const statesOf = (sheets: typeof changed): Set<unknown> => {
      const { values } = workedOut(sheets, 'S');
      return new Set(WALLS.map((_, i) => values.get(`S!P${i + 2}`)));
    };
    expect(statesOf([...copy.plan.sheets])).not.toContain('not checked');
    expect(statesOf(changed)).toEqual(new Set(['not checked']));
  });
});
