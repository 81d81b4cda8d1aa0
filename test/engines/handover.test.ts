// The whole hand-over of the demo in two spreadsheet programs: every formula gives what the core gives, also after an input was changed.
import { describe, expect, it, test } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import type { Cell } from '../../src/core/kinds';
import { looksOf, sourceOf } from '../../src/handover/from-plan';
import { handover, type Handover } from '../../src/handover/handover';
import type { TitleBlock } from '../../src/handover/title-block';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { INPUTS } from '../../src/joint/inputs';
import type { PlanCell, SheetPlan, WorkbookPlan } from '../../src/sheet/plan';
import { address } from '../../src/handover/formula';
import { recalculate, type Recalculated, type Values } from './harness';

const POISON = -999;
const RELATIVE = 1e-9;
const ABSOLUTE = 1e-12;
const TITLE: TitleBlock = { part: 'Logger', number: 'L-1', revision: 'A', date: '2026-11-25', status: 'for tooling', madeBy: 'M', checkedBy: 'C' };

type Changes = Readonly<Record<string, Cell | null>>;

const key = (sheet: SheetPlan, { at }: PlanCell): string => `${sheet.name}!${at}`;

/** Other values in cells that hold values. */
function changed(plan: WorkbookPlan, changes: Changes): WorkbookPlan {
  const untouched = new Set(Object.keys(changes));
  const sheets = plan.sheets.map(sheet => ({ ...sheet, cells: sheet.cells.map(cell => {
    const place = key(sheet, cell);
    untouched.delete(place);
    return place in changes ? { ...cell, value: changes[place] ?? '' } : cell;
  }) }));
  expect([...untouched]).toEqual([]);
  return { ...plan, sheets };
}

const poisoned = (plan: WorkbookPlan): WorkbookPlan => ({ ...plan, sheets: plan.sheets.map(sheet => ({ ...sheet, cells: sheet.cells.map(cell => (cell.formula === undefined ? cell : { ...cell, value: POISON })) })) });
const handed = (plan: WorkbookPlan): Handover => handover(sourceOf(plan), looksOf(plan), TITLE);
const near = (a: unknown, b: unknown): boolean => (typeof a === 'number' && typeof b === 'number' ? Math.abs(a - b) <= Math.max(ABSOLUTE, RELATIVE * Math.abs(b)) : (a ?? '') === (b ?? ''));

const copy = handed(demoWorkbook);
const valueBeside = (sheetName: string, label: string): string => {
  const at = demoWorkbook.sheets.find(({ name }) => name === sheetName)?.cells.find(({ value, at: place }) => value === label && place.startsWith('A'))?.at;
  return `${sheetName}!B${at?.slice(1) ?? '?'}`;
};

/** Values that do not follow say so once an input is another one. */
const givesUp = ({ formula = '' }: PlanCell, actual: unknown): boolean => (actual === 'inputs changed' && formula.endsWith(',"inputs changed")')) || (actual === 'not checked' && formula.endsWith(',"not checked")'));

interface Compared {
  readonly formulas: number;
  readonly givenUp: readonly string[];
  readonly otherwise: readonly string[];
}

/** What the program gives against what a hand-over of the changed workbook would hold. */
function compared(wanted: Handover, values: Values): Compared {
  let formulas = 0;
  const givenUp: string[] = [];
  const otherwise: string[] = [];
  const sent = new Map(copy.plan.sheets.flatMap(sheet => sheet.cells.map(cell => [key(sheet, cell), cell] as const)));
  for (const sheet of wanted.plan.sheets) {
    const labels = new Map(sheet.cells.filter(({ at }) => at.startsWith('A')).map(({ at, value }) => [at.slice(1), value]));
    for (const cell of sheet.cells) {
      const place = key(sheet, cell);
      // a block of steps moves where one before it is left out
      const isMoved = sheet.name === 'Steps' && sent.get(place)?.formula !== cell.formula;
      if (cell.formula === undefined || isMoved || labels.get(cell.at.slice(1)) === 'inputs as sent') continue;
      formulas++;
      const actual = values.get(place);
      if (near(actual, cell.value)) continue;
      if (givesUp(sent.get(place) ?? cell, actual)) givenUp.push(place);
      else otherwise.push(`${place}: ${String(actual)}, not ${String(cell.value)}: ${cell.formula.slice(0, 120)}`);
    }
  }
  return { formulas, givenUp, otherwise };
}

async function after(changes: Changes, language?: string): Promise<{ readonly wanted: Handover; readonly found: Recalculated }> {
  const bytes = await writeWorkbook(poisoned(changed(copy.plan, changes)));
  return { wanted: handed(changed(demoWorkbook, changes)), found: await recalculate(bytes, language) };
}

const CHANGES: readonly (readonly [string, Changes])[] = [
  ['nothing', {}],
  ['outside draft 0.5° to 2°', { [valueBeside('Joint', 'outside draft')]: 2 }],
  ['recess draft 1° to 2°', { [valueBeside('Joint', 'recess draft')]: 2 }],
  ['wall 2.5 to 3.1 mm', { [valueBeside('Joint', 'wall')]: 3.1 }],
  ['screw of the joint ST2.9 to ST3.5', { [valueBeside('Joint', 'screw')]: 'ST3.5' }],
  ['screw of the first variant ST2.9 to ST3.5', { 'Variants!B6': 'ST3.5' }],
  ['wall and length of variants', { 'Variants!F6': 3.4, 'Variants!E7': 16, 'Variants!D9': 'flat' }],
];

describe.each(CHANGES)('after a change: %s', (what, changes) => {
  it.each(['en-US', 'de-DE'])('every formula is worth what the core gives, in %s', async language => {
    const { wanted, found } = await after(changes, language);
    for (const values of [found.libreoffice, found.gnumeric]) {
      const { formulas, givenUp, otherwise } = compared(wanted, values);
      expect(otherwise).toEqual([]);
      expect(formulas).toBeGreaterThan(1200);
      // what follows is counted on the cover; the rest may give up, and only after a change
      expect(givenUp.length).toBeLessThanOrEqual(what === 'nothing' ? 0 : copy.asValues);
    }
  });
});

it('moves what depends on the draft', async () => {
  const { found } = await after({ [valueBeside('Joint', 'outside draft')]: 2 });
  // 6.4 + 2·14·tan 2°
  const root = 6.4 + 28 * Math.tan((2 * Math.PI) / 180);
  for (const values of [found.libreoffice, found.gnumeric]) expect(values.get(valueBeside('Joint', 'outside diameter at the root'))).toBeCloseTo(root, 9);
});

// ---- every input of the joint, one row a change -----------------------------------------------------------------------

const NAMES = [...INPUTS.keys()];
const BASES: Readonly<Record<string, Changes>> = {
  'a seat and a board': { screw: 'ST2.9', head: 'ISO 7049', end: 'cone', length: 16, wall: 2.5, 'boss OD': 6.4, pilot: 2.4, hole: 3.4, seat: 2.5, relief: 0.8, material: 'ABS', 'board plane': 5.5, board: 1.6, allowance: 0.6, 'pilot held at': 'mouth', 'boss height': 14, 'hole depth': 14.75, 'bottom gap': 1 },
  'defaults where there are any': { screw: 'M3', head: 'pan', material: 'PC', wall: 2.5, 'board plane': 5.5, 'boss height': 14 },
  'a sleeve through the board': { screw: 'ST2.9', head: 'ISO 7049', material: 'ABS', length: 19, wall: 2.5, hole: 3.4, sleeve: 3, 'board hole': 6.6, board: 1.6, 'board plane': 5.5, 'boss height': 16, 'hole tolerance': 0.05, 'seat tolerance': '+0.1/-0.2', 'boss OD': 8 },
  'a countersunk head': { screw: 'M3', head: 'countersunk', material: 'ABS', wall: 2.5, 'board plane': 5.5, 'boss height': 14, seat: '3 mm', length: 12 },
  'no seat': { screw: 'ST2.9', head: 'ISO 7049', material: 'ABS', wall: 2.5, seat: '0 mm', board: 1.6, hole: 3.4, 'boss height': 14, length: '1/2 in' },
};
const TYPED: readonly (Cell | null)[] = [null, 0, 0.01, 0.3, 0.6, 1, 2, 2.5, 3.3, 7, 13, 16, 80, -1, 'default', 'no such thing', 'flat', 'mouth', 'mid', 'show', 'hidden', 'ST3.5', 'ST2.2', 'M3', 'M4', 'pan', 'countersunk', 'ISO 7049', 'DIN 7981', 'ABS', 'PP', '0.1 in'];
const OUTPUTS = ['state', 'reason', 'all computed', 'recess mouth', 'recess diameter', 'subflush', 'post OD', 'engagement', 'engagement min', 'engagement ratio', 'hole depth needed', 'bottom clearance', 'pilot hole', 'pilot at tip', 'boss OD root', 'boss wall root', 'sink ratio', 'slenderness', 'landing ring', 'board play', 'board hold', 'boss stack', 'pull-out', 'boss tear', 'seat shear', 'weakest', 'boss mass'].filter(name => name !== 'all computed');

/** All rows alike, so that each change meets the same formulas. */
function jointSheet(base: Changes, rows: number, change: (row: number) => Changes): WorkbookPlan {
  const cells: PlanCell[] = [
    ...NAMES.map((name, c): PlanCell => ({ at: address(0, c), role: 'header', value: name })),
    ...Array.from({ length: rows }, (_, r) => NAMES.map((name, c): PlanCell => ({ at: address(r + 1, c), role: 'input', value: { ...base, ...change(r) }[name] ?? '' }))).flat(),
    ...OUTPUTS.map((name, c): PlanCell => ({ at: address(0, 60 + c), role: 'input', value: name })),
    { at: address(0, 100), role: 'result', formula: `=ENCL.JOINT.TABLE(${address(0, 0)}:${address(rows, NAMES.length - 1)},${address(0, 60)}:${address(0, 60 + OUTPUTS.length - 1)})` },
  ];
  return { name: 'Joints', sheets: [{ name: 'Joints', widths: [], cells }] };
}

describe.each(Object.entries(BASES))('a joint with %s', (_, base) => {
  test('follows each input, or says that it does not', async () => {
    const edits = NAMES.flatMap(name => TYPED.map((value): Changes => ({ [name]: value })));
    const sent = handed(jointSheet(base, edits.length, () => ({})));
    const wanted = handed(jointSheet(base, edits.length, row => edits[row] ?? {}));
    const typed = new Map(edits.flatMap((edit, r) => Object.entries(edit).map(([name, value]) => [address(r + 1, NAMES.indexOf(name)), value] as const)));
    const sheets = sent.plan.sheets.filter(({ name }) => /^(Joints|Variants_1|Data)$/.test(name)).map(({ name, cells }): SheetPlan => ({
      name, widths: [], cells: cells.map(({ at, role, formula, value }): PlanCell => ({ at, role, ...(formula === undefined ? { value: (name === 'Joints' && typed.has(at) ? typed.get(at) : value) ?? '' } : { formula, value: POISON }) })),
    }));
    const found = await recalculate(await writeWorkbook({ name: 'Joints', sheets }));
    const first = wanted.plan.sheets.find(({ name }) => name === 'Joints')?.cells ?? [];
    const wantedAt = new Map(first.map(cell => [cell.at, cell.value]));
    let followed = 0;
    for (const values of [found.libreoffice, found.gnumeric]) {
      const wrong: string[] = [];
      edits.forEach((edit, r) => OUTPUTS.forEach((output, c) => {
        const at = address(r + 1, 100 + c);
        const [actual, expected] = [values.get(`Joints!${at}`), wantedAt.get(at)];
        if (near(actual, expected)) return void (followed += 1);
        const saysSo = output === 'state' ? actual === 'not checked' : output === 'reason' ? typeof actual === 'string' : typeof actual === 'string' && !['pull-out', 'boss tear', 'seat shear'].includes(actual);
        const isReason = output === 'reason' && values.get(`Joints!${address(r + 1, 100)}`) === wantedAt.get(address(r + 1, 100)) && values.get(`Joints!${address(r + 1, 100)}`) !== 'not checked';
        if (!saysSo || isReason) wrong.push(`${JSON.stringify(edit)} ${output}: ${String(actual)}, not ${String(expected)}`);
      }));
      expect(wrong).toEqual([]);
    }
    expect(followed).toBeGreaterThan(edits.length * OUTPUTS.length);
  });
});
