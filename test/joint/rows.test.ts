// Rows of one table do not know of each other: each gives what the same joint gives alone, whatever stands above it and whatever is asked beside it.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isVerdict, type Output, OUTPUTS } from '../../src/joint/outputs';
import { outputCell } from '../../src/joint/rows';
import { Variant } from '../../src/joint/variant';
import { verdict } from '../../src/joint/verdict';
import { JOINT_INPUT_NAMES } from '../../src/joint/inputs';
import { value } from '../kit/ask';
import { BASES, type Changes, EDITS } from '../kit/joint-edits';
import { SEED } from '../kit/seed';
import { type Inputs, SOUND } from '../kit/sound-joint';

type Rows = unknown[][];

const table = (names: readonly string[], rows: readonly (readonly unknown[])[], outputs: readonly string[]): Rows =>
  (value('JOINT.TABLE', [names, ...rows], [outputs]) as Rows).slice(1);
const rowOf = (inputs: Inputs, names: readonly string[] = JOINT_INPUT_NAMES): unknown[] =>
  names.map(name => (name in inputs ? inputs[name] : 'default'));
/** What is asked beside it counts: an output without a value leaves the state unchecked. */
const cellsOf = (variant: Variant, outputs: readonly Output[] = OUTPUTS): unknown[] =>
  outputs.map(output => (isVerdict(output) ? verdict(variant, output, outputs) : outputCell(variant, output)));
const alone = (inputs: Inputs, outputs: readonly Output[] = OUTPUTS): unknown[] =>
  cellsOf(new Variant(new Map(Object.entries(inputs))), outputs);

/** Joints of which each has one input typed anew, the next one another. */
const JOINTS: readonly Changes[] = [SOUND as Changes, ...Object.values(BASES).map(({ inputs }) => inputs)].flatMap((inputs, base) =>
  EDITS.filter((_, i) => i % 13 === base).map(edit => ({ ...inputs, ...edit })),
);
const ALONE = JOINTS.map(joint => alone(joint));
/** Places of a list in another order, always the same. */
const shuffled = (seed: number): number[] =>
  fc.sample(fc.shuffledSubarray([...JOINTS.keys()], { minLength: JOINTS.length }), { seed, numRuns: 1 })[0] as number[];

describe('a table of many joints', () => {
  test('they differ: in numbers, in refusals, in states', () => {
    expect(JOINTS.length).toBeGreaterThan(180);
    const cells = ALONE.flat();
    expect(cells.filter(cell => typeof cell === 'number').length).toBeGreaterThan(3000);
    expect(new Set(cells.filter(cell => String(cell).startsWith('no value: '))).size).toBeGreaterThan(60);
    expect(new Set(ALONE.map(row => row[OUTPUTS.indexOf('state')]))).toEqual(new Set(['fail', 'not checked', 'review', 'pass']));
    expect(new Set(ALONE.map(row => row[OUTPUTS.indexOf('reason')])).size).toBeGreaterThan(30);
    expect(new Set(ALONE.map(row => row[OUTPUTS.indexOf('all computed')]))).toEqual(new Set([true, false]));
  });

  test.each([
    ['as they are', [...JOINTS.keys()]],
    ['the other way round', [...JOINTS.keys()].reverse()],
    ['shuffled', shuffled(SEED)],
    ['shuffled again', shuffled(SEED + 1)],
    ['each twice', [...JOINTS.keys()].flatMap(i => [i, i])],
    ['each between two of the first', [...JOINTS.keys()].flatMap(i => [i, 0])],
  ])('%s', (_, order) => {
    for (let from = 0; from < order.length; from += 300) {
      const some = order.slice(from, from + 300);
      const rows = table(
        JOINT_INPUT_NAMES,
        some.map(i => rowOf(JOINTS[i] as Changes)),
        OUTPUTS,
      );
      expect(rows).toEqual(some.map(i => ALONE[i]));
    }
  });

  test.each(OUTPUTS)('%s asked alone', output => {
    const rows = table(
      JOINT_INPUT_NAMES,
      JOINTS.map(joint => rowOf(joint)),
      [output],
    );
    expect(rows.flat()).toEqual(JOINTS.flatMap(joint => alone(joint, [output])));
  });

  test('outputs in any order, and one of them twice', () => {
    const asked = ['reason', ...[...OUTPUTS].reverse(), 'grip'] as const;
    const rows = table(
      JOINT_INPUT_NAMES,
      JOINTS.slice(0, 160).map(joint => rowOf(joint)),
      asked,
    );
    expect(rows).toEqual(JOINTS.slice(0, 160).map(joint => alone(joint, asked)));
  });
});

describe('a table whose columns are some of the inputs', () => {
  const [first = {}] = JOINTS;
  test.each(JOINT_INPUT_NAMES)('%s changes, the others are columns that do not', name => {
    const edits = EDITS.filter(edit => name in edit);
    expect(edits.length).toBeGreaterThan(3);
    const joints = [first, ...edits.map(edit => ({ ...first, ...edit })), first];
    const names = [...new Set([...Object.keys(first), name])];
    expect(
      table(
        names,
        joints.map(joint => rowOf(joint, names)),
        OUTPUTS,
      ),
    ).toEqual(joints.map(joint => alone(joint)));
  });

  test('one column: what is not named is as if it were left out, in the last row too', () => {
    const lengths = [16, 13, 'default', 0, { cellError: '#N/A' }, '16 mm', 16];
    expect(
      table(
        ['length'],
        lengths.map(length => [length]),
        OUTPUTS,
      ),
    ).toEqual(lengths.map(length => alone({ length })));
  });
});

describe('by hand: what is looked up for one row is not taken for another', () => {
  test('major diameters of the screw (ISO 1478: ST2.9 2.90/2.76, ST3.5 3.53/3.35), back and forth', () => {
    const ring = (majorMaxMm: number): number => (9 - Math.max(3.5, majorMaxMm + 0.2)) / 2;
    const rows = table(
      ['screw', 'boss OD', 'hole', 'wall'],
      ['ST3.5', 'ST2.9', 'ST3.5', 'ST2.9', 'no screw', 'ST3.5'].map(screw => [screw, 9, 3.4, 2.5]),
      ['landing ring'],
    ).flat();
    for (const i of [0, 2, 5]) expect(rows[i]).toBeCloseTo(ring(3.53), 9);
    for (const i of [1, 3]) expect(rows[i]).toBeCloseTo(ring(2.9), 9);
    expect(rows[4]).toMatch(/^no value: screw is "no screw": /);
  });

  // ISO 7049: ST2.9 5.6, ST3.5 7; ISO 7045: M3 5.6
  test('the same words for a head are another head with another screw', () => {
    const rows = table(
      ['screw', 'head', 'seat', 'board plane', 'wall', 'allowance'],
      [
        ['ST2.9', 'pan'],
        ['ST3.5', 'pan'],
        ['ST2.9', 'pan'],
        ['ST2.9', 'ISO 7045'],
        ['M3', 'ISO 7045'],
        ['ST2.9', 'ISO 7049'],
        ['M3', 'ISO 7049'],
      ].map(names => [...names, 2, 5, 2.5, '0 mm']),
      ['recess diameter'],
    ).flat();
    expect([...rows.slice(0, 3), rows[4], rows[5]]).toEqual([5.6, 7, 5.6, 5.6, 5.6]);
    for (const i of [3, 6]) expect(rows[i]).toMatch(/^no value: head is "ISO 704/);
  });

  test('a given head diameter wins in its row alone', () => {
    const rows = table(
      ['screw', 'head', 'head diameter', 'seat', 'board plane', 'wall', 'allowance'],
      ['default', 7, 0, 'M4 pan', null].map(diameter => ['ST2.9', 'pan', diameter, 2, 5, 2.5, '0 mm']),
      ['recess diameter'],
    ).flat();
    // ISO 7045: M4 8
    expect(rows).toEqual([5.6, 7, 5.6, 8, 5.6]);
  });

  test('a length out of the list, and one that is picked, each in its row', () => {
    const { length: _, ...rest } = SOUND;
    const names = [...Object.keys(rest), 'length'];
    const rows = table(
      names,
      [16, 15, 'default', 16, 19].map(length => [...Object.values(rest), length]),
      ['screw length', 'state', 'reason'],
    );
    expect(rows[0]).toEqual([16, 'pass', '–']);
    expect(rows[1]).toEqual([15, 'pass', '–']);
    expect(rows[2]?.slice(0, 2)).toEqual([16, 'pass']);
    expect(rows[3]).toEqual(rows[0]);
    // 19 + 0.8 − (4.1 − 0.26) + 1 + 0.1
    expect(rows[4]).toEqual([19, 'fail', 'screw bottoms: needs a hole 17.06 mm deep, has 14.7 mm']);
  });
});

describe('the same joint with one input typed anew is that joint', () => {
  const typedAnew = (joint: Inputs, name: string, raw: unknown): { readonly is: unknown[]; readonly must: unknown[] } => {
    const before = new Variant(new Map(Object.entries(joint)));
    cellsOf(before);
    const own = alone(joint);
    const after = before.with(name, raw);
    const is = cellsOf(after);
    expect(cellsOf(before)).toEqual(own);
    return { is, must: alone({ ...joint, [name]: raw }) };
  };

  test('and the one before stays as it was', () => {
    for (const edit of EDITS) {
      const [name = ''] = Object.keys(edit);
      const { is, must } = typedAnew(SOUND, name, edit[name]);
      expect(is, JSON.stringify(edit)).toEqual(must);
    }
    expect(EDITS.length).toBeGreaterThan(400);
  });
});

describe('of several refusals the first one is said', () => {
  const ERROR = { cellError: '#REF!' };
  const of = (change: Inputs, output: Output): unknown => alone({ ...SOUND, 'pilot held at': 'mouth', ...change }, [output])[0];

  test('of what a formula takes, in its order', () => {
    expect(of({ 'boss height': ERROR, 'boss OD': 'wide' }, 'slenderness')).toBe('no value: boss height is #REF!');
    expect(of({ 'boss height': 14, 'boss OD': 'wide' }, 'slenderness')).toMatch(/^no value: boss OD is "wide": not a length/);
    expect(of({ 'hole depth': ERROR, pilot: 'wide' }, 'pin ratio')).toBe('no value: hole depth is #REF!');
  });

  test('what does not apply says so before anything that is wrong with it', () => {
    expect(of({ seat: '0 mm', 'head diameter': ERROR, allowance: 'wide' }, 'recess diameter')).toBe(
      'no value: does not apply: the head lies on the board (seat "0 mm")',
    );
    expect(of({ seat: ERROR, 'head diameter': 'wide' }, 'recess diameter')).toBe('no value: seat is #REF!');
    expect(of({ sleeve: 0, hole: ERROR }, 'sleeve OD')).toBe('no value: does not apply: there is no sleeve');
  });

  test('a blank board plane is asked for where there is a seat, does not apply where there is none, and waits for a seat that is wrong', () => {
    expect(of({ 'board plane': null }, 'recess depth')).toMatch(/^no value: board plane is blank; give /);
    expect(of({ 'board plane': null, seat: ERROR }, 'boss stack')).toBe('no value: seat is #REF!');
    expect(of({ 'board plane': null, seat: '0 mm' }, 'boss stack')).toBe(
      'no value: does not apply: the board plane is blank and the head lies on the board',
    );
    expect(of({ seat: '0 mm' }, 'boss stack')).toBeCloseTo(5.5 + 1.6 + 14, 9);
  });

  test('a head that cannot be read is said, though its diameter is given', () => {
    const unread = { head: ERROR, 'head diameter': 5.6, 'head height': 2.4 };
    for (const output of ['seat shear', 'weakest'] as const) expect(of(unread, output)).toBe('no value: head is #REF!');
    expect(of({ 'head diameter': 5.6 }, 'seat shear')).toBeGreaterThan(0);
  });

  test('no number is no result', () => {
    expect(of({ 'boss OD': 1e200 }, 'boss mass')).toBe('no value: no finite result for these inputs');
    expect(of({ 'boss OD': 1e200 }, 'all computed')).toBe(false);
  });

  test('a rule: first its conditions, then its size, then its limits', () => {
    const ruleOf = (change: Inputs, rule: string): unknown[] =>
      (value('CHECK.JOINT', Object.entries({ ...SOUND, ...change })) as Rows).find(([name]) => name === rule) ?? [];
    const said = (change: Inputs, rule: string): unknown[] => [ruleOf(change, rule)[1], ruleOf(change, rule)[4]];
    expect(said({ seat: ERROR, 'head diameter': 'wide' }, 'head fits the recess')).toEqual(['no value: seat is #REF!', 'not checked']);
    expect(said({ hole: ERROR, screw: 'no screw' }, 'screw passes the hole')).toEqual(['no value: hole is #REF!', 'not checked']);
    expect(said({ screw: 'no screw' }, 'screw passes the hole')[0]).toMatch(/^no value: screw is "no screw": /);
    expect(said({ relief: ERROR, ratio: ERROR }, 'engagement')).toEqual(['no value: relief is #REF!', 'not checked']);
    expect(said({ ratio: ERROR }, 'engagement')).toEqual(['no value: ratio is #REF!', 'not checked']);
    expect(said({ 'slender limit': ERROR }, 'slenderness')).toEqual(['no value: slender limit is #REF!', 'not checked']);
    expect(said({ face: ERROR }, 'sink, thread half')).toEqual(['no value: face is #REF!', 'not checked']);
  });

  test('the first of the rules with the worst state', () => {
    expect(of({ hole: 2.8, length: 13, face: 'show', wall: 2 }, 'reason')).toMatch(
      /^screw does not pass its hole: needs hole min more than 2\.9 mm, has 2\.7 mm$/,
    );
    expect(of({ 'board plane': 5.2, 'pin limit': 5 }, 'reason')).toMatch(
      /^head stands out: needs subflush min at least 0\.2 mm, has 0\.1 mm$/,
    );
  });
});
