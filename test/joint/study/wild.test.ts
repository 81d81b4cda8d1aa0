// Joints that nobody should send, and drawn joints whose studies are asked for once more through JOINT.TABLE and JOINT.VALUE.
import { describe, expect } from 'vitest';
import { JOINT_INPUT_NAMES } from '../../../src/joint/inputs';
import { isVerdict, OUTPUTS } from '../../../src/joint/outputs';
import { draws } from '../../../src/core/tolerance/draws';
import { call } from '../../../src/registry';
import { refereed } from '../../kit/refereed';
import { SEED } from '../../kit/seed';
import { DEMO, inputsOf, type JointInputs, rowOf, table, valueOf } from '../../kit/study';

const test = refereed('joint/study/wild.test.ts');

const { length: _length, ...PICKED } = DEMO;
const { relief: _relief, pilot: _pilot, 'pilot held at': _held, ...WITHOUT_THREAD } = DEMO;
const INSERT = { ...WITHOUT_THREAD, screw: 'M3', head: 'ISO 7045', 'insert diameter': 4.2, 'insert length': 5, 'boss OD': 8.4, length: 12 };
const JOINTS: readonly JointInputs[] = [
  DEMO,
  PICKED,
  { ...INSERT, 'hole depth': 12 },
  { ...DEMO, head: 'ISO 7050', seat: 4, 'board plane': 6 },
  { ...DEMO, sleeve: 1.7, 'board hole': 6, gap: 0.2 },
  { ...DEMO, material: 'PC', friction: 0.2, 'drive torque': 0.2, 'set torque': 0.5, load: 50 },
  Object.fromEntries(Object.entries(DEMO).map(([name, given]) => [name, typeof given === 'number' ? `${given / 25.4} in` : given])),
];

const random = (seed: number): (() => number) => {
  const draw = draws(seed, 'uniform');
  return () => (1 + draw()) / 2;
};
const pickerOf =
  (next: () => number) =>
  <T>(list: readonly T[]): T =>
    list[Math.floor(next() * list.length)] as T;

describe('every answer is an answer or a sentence', () => {
  const WILD: readonly unknown[] = [
    ...[1e-300, 1e-6, 1e6, 1e15, 1e30, 1e308, -1, 0, 0.5, 3, 20, 89.999, 90, true, null, ''],
    ...['0 mm', '1e-6 in', '0.1 in', 'abc', 'default', '+0.1/-0', '+0/-0.8', '+2/-1', '±0.05', '10 %', '150 %', '30°', '1 N', 'M3', 'show'],
  ];
  const next = random(SEED);
  const pick = pickerOf(next);
  const pairs = (count: number): unknown[][] => Array.from({ length: count }, () => [pick(JOINT_INPUT_NAMES), pick(WILD)]);
  const joint = (): unknown[][] => {
    const rows = [...Object.entries(pick(JOINTS)), ...pairs(Math.floor(3 * next()))];
    // mostly each name once
    return next() < 0.1 ? rows : [...new Map(rows as [unknown, unknown][])];
  };
  const base = (): unknown => pick<() => unknown>([() => null, () => null, () => [[null, null]], () => [['']], () => pairs(2)])();
  const axis = (): unknown[] => [Array.from({ length: 1 + Math.floor(3 * next()) }, () => (next() < 0.5 ? 8 * next() : pick(WILD)))];
  const ASKED: Readonly<Record<string, () => unknown[]>> = {
    'JOINT.MAP': () => [joint(), pick(JOINT_INPUT_NAMES), axis(), pick(JOINT_INPUT_NAMES), axis(), pick(OUTPUTS), base()],
    'JOINT.WINDOW': () => [joint(), [[pick(JOINT_INPUT_NAMES), pick(Object.keys(DEMO))]], base()],
    'JOINT.SENSITIVITY': () => [joint(), pick(OUTPUTS), base()],
    'JOINT.SIMULATE': () => [joint(), 1000, 1 + Math.floor(100 * next()), base()],
    'JOINT.SOLVE': () => [joint(), pick(Object.keys(DEMO)), pick(OUTPUTS), next() < 0.5 ? 20 * next() : pick(WILD), base()],
  };
  const BROKEN = /NaN|Infinity|undefined|\[object|Error:|\.ts:/;

  test.each(Object.keys(ASKED))('%s', id => {
    let answered = 0;
    for (let i = 0; i < (id === 'JOINT.SOLVE' ? 300 : 60); i++) {
      const args = ASKED[id]?.() ?? [];
      const answer = call(id, args);
      if (answer.ok) answered++;
      const cells: readonly unknown[] = answer.ok ? [answer.value].flat(2) : [answer.message];
      const wrong = cells.filter(cell => (typeof cell === 'number' ? !Number.isFinite(cell) : BROKEN.test(String(cell))));
      expect(wrong, JSON.stringify(args)).toEqual([]);
    }
    expect(answered).toBeGreaterThanOrEqual(4);
  });

  test('a wall of thirty digits, of which the last are not told apart', () => {
    expect(valueOf({ ...DEMO, wall: 1e30 }, 'state')).toBe('not checked');
    const rows = table('JOINT.SIMULATE', inputsOf({ ...DEMO, wall: 1e30 }), 1000);
    expect(rowOf(rows, 'sink, thread half')[1]).toBe('not checked');
  });
});

const NUMBERS = OUTPUTS.filter(output => output !== 'sink ratio' && output !== 'weakest' && (output === 'margin' || !isVerdict(output)));

/** A joint whose sizes are within a tenth of what they were. */
function nearby(next: () => number): JointInputs {
  const joint = pickerOf(next)(JOINTS.slice(0, -1));
  return Object.fromEntries(
    Object.entries(joint).map(([name, given]) => [
      name,
      typeof given === 'number' ? Number((given * (0.9 + 0.2 * next())).toFixed(3)) : given,
    ]),
  );
}
const sizesIn = (joint: JointInputs): string[] => Object.keys(joint).filter(name => typeof joint[name] === 'number');

describe('drawn joints', () => {
  test('a map over numbers, words and tolerances is what JOINT.TABLE gives, with a base and without', () => {
    const next = random(SEED + 1);
    const pick = pickerOf(next);
    const WORDS: Readonly<Record<string, readonly unknown[]>> = {
      screw: ['ST2.9', 'ST3.5', 'M3', 'M99'],
      head: ['pan', 'countersunk'],
      face: ['show', 'hidden'],
      'seat tolerance': ['+0.1/-0.2', 0.3, '0 mm'],
    };
    let cells = 0;
    for (let i = 0; i < 60; i++) {
      const joint = nearby(next);
      const x = pick([...Object.keys(WORDS), ...sizesIn(joint)]);
      const y = pick(sizesIn(joint).filter(name => name !== x));
      const now = joint[x] as number;
      const xs = WORDS[x] ?? [0.8 * now, 1.3 * now, `${now / 25.4} in`, '0 mm', 'default', -1];
      const ys = Array.from({ length: 4 }, () => (joint[y] as number) * (0.5 + next()));
      const output = pick([...NUMBERS, 'state', 'reason']);
      const base = pick([
        null,
        [
          ['material', 'ABS'],
          ['hole tolerance', 0.2],
        ],
      ]);
      const map = table('JOINT.MAP', inputsOf(joint), x, [xs], y, [ys], output, base);
      const others = Object.keys(joint).filter(name => name !== x && name !== y);
      const rows = ys.flatMap(down => xs.map(across => [...others.map(name => joint[name]), across, down]));
      const same = table('JOINT.TABLE', [[...others, x, y], ...rows], [[output]], base);
      expect(map.slice(1).flatMap(row => row.slice(1))).toEqual(same.slice(1).flat());
      cells += rows.length;
    }
    expect(cells).toBeGreaterThan(800);
  });

  test('what is solved has the target, and no reached value is nearer', () => {
    const next = random(SEED + 2);
    const pick = pickerOf(next);
    let solved = 0;
    for (let i = 0; solved < 60 && i < 2000; i++) {
      const joint = nearby(next);
      const [name, output] = [pick(sizesIn(joint)), pick(NUMBERS)];
      const now = joint[name] as number;
      const there = now * (0.4 + 1.4 * next());
      const [here, target] = [now, there].map(at => call('JOINT.VALUE', [...valueArgs({ ...joint, [name]: at }), output]));
      if (here?.ok !== true || target?.ok !== true || typeof target.value !== 'number' || here.value === target.value) continue;
      const answer = call('JOINT.SOLVE', [inputsOf(joint), name, output, target.value]);
      if (!answer.ok) expect.fail(`${name} for ${output} of ${target.value}: ${answer.message}`);
      const found = answer.value as number;
      const near = 1e-8 * Math.max(1, Math.abs(target.value));
      expect(Math.abs((valueOf({ ...joint, [name]: found }, output) as number) - target.value), `${name} ${output}`).toBeLessThan(near);
      // a margin may pass its target twice between two looks, where a rule has no room left
      if (output !== 'margin') expect(Math.abs(found - now), `${name} ${output}`).toBeLessThan(Math.abs(there - now) * (1 + 1e-7) + 1e-9);
      solved++;
    }
    expect(solved).toBe(60);
  });

  test('slopes are differences of JOINT.VALUE, at a corner one of the two', () => {
    const next = random(SEED + 3);
    const pick = pickerOf(next);
    let compared = 0;
    for (let i = 0; i < 40; i++) {
      const [joint, output] = [nearby(next), pick(NUMBERS)];
      const answer = call('JOINT.SENSITIVITY', [inputsOf(joint), output]);
      if (!answer.ok) continue;
      for (const name of sizesIn(joint)) {
        const now = joint[name] as number;
        const step = 1e-5 * now;
        const values = [-2, -1, 0, 1, 2].map(n => call('JOINT.VALUE', [...valueArgs({ ...joint, [name]: now + n * step }), output]));
        const numbers = values.flatMap(one => (one.ok && typeof one.value === 'number' ? [one.value] : []));
        if (numbers.length < 5) continue;
        const [farBack, back, here, ahead, farAhead] = numbers as [number, number, number, number, number];
        const [left, right] = [(here - back) / step, (ahead - here) / step];
        const both = (8 * (ahead - back) - (farAhead - farBack)) / (12 * step);
        const slope = (rowOf(answer.value as unknown[][], name)[4] ?? 0) as number;
        const isSmooth = Math.abs(right - left) < 1e-2 * Math.max(Math.abs(right), Math.abs(left)) + 1e-6;
        const off = isSmooth ? Math.abs(slope - both) : Math.min(Math.abs(slope - left), Math.abs(slope - right));
        expect(off, `${output} by ${name}`).toBeLessThan((isSmooth ? 1e-5 : 1e-2) * Math.max(1, Math.abs(left), Math.abs(right)));
        compared++;
      }
    }
    expect(compared).toBeGreaterThan(250);
  });
});

const valueArgs = (joint: JointInputs): unknown[] => [[Object.keys(joint)], [Object.values(joint)]];
