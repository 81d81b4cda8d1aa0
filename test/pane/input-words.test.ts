// A remedy leads to its own input or to none, tried on tables that lack its column.
import { describe, expect, it } from 'vitest';
import { INPUTS, JOINT_INPUT_NAMES } from '../../src/joint/inputs';
import { RULES } from '../../src/joint/rules';
import { Joints, type LocatedJoint } from '../../src/pane/find-joint';
import { ENGLISH } from '../../src/words/english';
import { inputMeant, inputsMeant, missingWords } from '../../src/pane/input-words';
import { readWorkbook } from '../../src/pane/workbook';
import { call } from '../../src/registry';
import { fakePort } from './fake-port';

type Given = Readonly<Record<string, string | number>>;

const BASE: Given = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  length: 13,
  material: 'ABS',
  wall: 2.5,
  'board plane': 5.5,
  'boss height': 14,
  board: 1.6,
  hole: 3.4,
  pilot: 2.4,
  'boss OD': 6.4,
};

/** A table with a column for each input given, from A1. */
async function jointOf(given: Given): Promise<LocatedJoint> {
  const column = (c: number): string => (c < 26 ? '' : String.fromCharCode(64 + Math.floor(c / 26))) + String.fromCharCode(65 + (c % 26));
  const cells = Object.entries(given).flatMap(([name, value], c) => [
    { at: `${column(c)}1`, role: 'header' as const, value: name },
    { at: `${column(c)}2`, role: 'input' as const, value },
  ]);
  const port = fakePort({ name: '', sheets: [{ name: 'S', widths: [], cells }] });
  const found = new Joints(await readWorkbook(port)).first();
  if (found?.is !== 'joint') throw new Error(JSON.stringify(found));
  return found.joint;
}

const without = (given: Given, name: string): Given => Object.fromEntries(Object.entries(given).filter(([each]) => each !== name));

/** Every input that a rule may say to move. */
const MOVED = [...new Set(RULES.flatMap(({ moves }) => moves.flat()))];

describe('the input of a remedy', () => {
  const all: Given = { ...Object.fromEntries(JOINT_INPUT_NAMES.map(name => [name, 'default'])), ...BASE };

  it.each(MOVED)('%s: its own cell, or none where the table lacks it', async name => {
    const words = `${name} 14 ${INPUTS.get(name)?.unit ?? ''}`.trim();
    const whole = await jointOf(all);
    expect(inputMeant(words, whole)).toEqual({ name, cell: whole.cells.get(name) });
    expect(whole.cells.get(name)).toBeDefined();
    // An input without which there is no joint has its column always.
    if (['screw', 'head', 'wall', 'board plane', 'boss height'].includes(name)) return;
    const lacking = await jointOf(without(all, name));
    expect(lacking.cells.size).toBe(JOINT_INPUT_NAMES.length - 1);
    expect(inputMeant(words, lacking)).toEqual({ name, cell: undefined });
    expect(missingWords(name, lacking, ENGLISH.frame)).toBe(`${name} has no column yet: add one in the range that is read`);
    expect(missingWords(name, whole, ENGLISH.frame)).toBe('');
  });

  it('is found in what CHECK.JOINT says of joints that fail, whatever columns they have', async () => {
    const variations: readonly Given[] = [
      {},
      { length: 16 },
      { length: 19 },
      { length: 16, 'boss height': 10 },
      { wall: 1.2 },
      { 'boss OD': 4.5 },
      { 'boss OD': 9 },
      { pilot: 2.8 },
      { pilot: 2.05 },
      { hole: 2.9 },
      { hole: 5.2 },
      { 'board hole': 3 },
      { 'board hole': 7 },
      { sleeve: 1 },
      { sleeve: 2.5, 'board hole': 3.5 },
      { gap: 0.5 },
      { relief: 4 },
      { 'hole draft': 2 },
      { 'board plane': 4 },
      { 'board plane': 9 },
      { 'recess draft': 8 },
      { length: 6.5 },
      { face: 'show', 'hole depth': 14.75 },
      { face: 'show', 'hole depth': 14.75, 'boss OD': 6.8 },
      { face: 'show', 'hole depth': 14.75, 'boss OD': 7 },
      { face: 'show', 'hole depth': 14.75, length: 16 },
    ];
    const told = new Map<string, number>();
    const pairs: string[] = [];
    const several: string[] = [];
    for (const variation of variations) {
      const joint = await jointOf({ ...BASE, ...variation });
      const table = call('CHECK.JOINT', [joint.rows]);
      if (!table.ok || !Array.isArray(table.value)) throw new Error('no checks');
      for (const remedy of table.value.map(row => String(row[6])).filter(words => /\d/.test(words))) {
        const names = [...new Set(remedy.split(/; or | with /).map(change => /^(.*?) (ST)?[\d.]+( .*)?$/.exec(change)?.[1] ?? ''))];
        expect(inputsMeant(remedy, joint), remedy).toEqual(names.map(name => ({ name, cell: joint.cells.get(name) })));
        for (const name of names) told.set(name, (told.get(name) ?? 0) + 1);
        if (remedy.includes(' with ')) pairs.push(remedy);
        if (remedy.includes('; or ')) several.push(remedy);
      }
    }
    expect([...told.keys()]).toEqual(expect.arrayContaining(['length', 'hole depth', 'boss OD']));
    expect(told.size).toBeGreaterThanOrEqual(8);
    expect(several.length).toBeGreaterThan(3);
    expect(pairs.length).toBeGreaterThan(0);
  });

  it('is each of a pair and of several, once, whatever is said behind it', async () => {
    const joint = await jointOf(BASE);
    const named = (words: string): string[] => inputsMeant(words, joint).map(({ name }) => name);
    expect(named('length 19 mm with hole depth 17 mm; or hole depth 14 mm; or boss OD 6.5 mm (steel-safe)')).toEqual([
      'length',
      'hole depth',
      'boss OD',
    ]);
    expect(named('ring depth 0.5 mm')).toEqual(['ring depth']);
    expect(named('no change of hole depth, length with hole depth passes')).toEqual([]);
  });

  it('is none in words that begin with no input', async () => {
    const joint = await jointOf(BASE);
    for (const words of ['–', 'no change of length, length with hole depth passes', 'correct the input that is named', 'holes 3 mm']) {
      expect(inputMeant(words, joint)).toBeUndefined();
      expect(inputsMeant(words, joint)).toEqual([]);
    }
    expect(inputMeant('seat: 0 or blank? write "0 mm" for zero, or default', joint)).toEqual({ name: 'seat', cell: undefined });
  });
});
