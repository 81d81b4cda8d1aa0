// What a row says of itself: state, reasons, counts, margin and remedy; and how a table is asked, with base, labels and units.
import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { INPUTS } from '../../src/joint/inputs';
import { OUTPUTS } from '../../src/joint/outputs';
import { Variant } from '../../src/joint/variant';
import { refusal, value } from '../kit/ask';
import { SEED } from '../kit/seed';
import { type Inputs, SOUND } from '../kit/sound-joint';

type Rows = unknown[][];
const table = (inputs: Inputs, outputs: readonly string[], ...base: unknown[]): unknown[] =>
  (value('JOINT.TABLE', [Object.keys(inputs), Object.values(inputs)], [outputs], ...base) as Rows)[1] ?? [];
const of = (inputs: Inputs, output: string): unknown => table(inputs, [output])[0];
const checked = (inputs: Inputs): Rows => (value('CHECK.JOINT', Object.entries(inputs)) as Rows).slice(1);
const RANK = ['fail', 'not checked', 'review', 'pass'];

describe('reasons, counts and state', () => {
  const POOR = { ...SOUND, ratio: 3, hole: 2.95, 'slender limit': 2, 'pin limit': 5, 'bottom gap': 2 };
  test('every broken rule, worst first, with what is needed and what there is', () => {
    expect(table(POOR, ['state', 'fails', 'reviews', 'reason', 'reasons'])).toEqual([
      'fail',
      2,
      3,
      'screw does not pass its hole: needs hole min more than 2.9 mm, has 2.85 mm',
      [
        'screw does not pass its hole: needs hole min more than 2.9 mm, has 2.85 mm',
        'too little full thread: needs engagement ratio at least 3, has 2.531',
        // 12.96 + 2 + 0.1
        'little room under the tip: needs a hole 15.06 mm deep, has 14.7 mm',
        'boss is slender: needs slenderness at most 2, has 2.333',
        'core pin is slender: needs pin ratio at most 5, has 5.976',
      ].join('; '),
    ]);
  });

  test('at most five; none is a dash', () => {
    const worse = { ...POOR, 'hidden sink limit': 0.1, 'sink limit': 0.1, 'ring limit': 2, 'seat limit': 3 };
    expect(String(of(worse, 'reasons')).split('; ')).toHaveLength(5);
    expect(Number(of(worse, 'fails')) + Number(of(worse, 'reviews'))).toBeGreaterThan(5);
    expect(table(SOUND, ['state', 'reasons', 'fails', 'reviews', 'remedy'])).toEqual(['pass', '–', 0, 0, '–']);
  });

  test('a limit and a value are never printed alike', () => {
    expect(of({ ...SOUND, ratio: 2.5310345 }, 'reason')).toBe(
      'too little full thread: needs engagement ratio at least 2.531035, has 2.531034',
    );
    expect(of({ ...SOUND, pilot: 2.165, 'hole draft': '0°' }, 'reason')).toMatch(/needs tightness at least \S+, has \S+$/);
    const [, needs, has] = /at least (\S+), has (\S+)$/.exec(String(of({ ...SOUND, pilot: 2.2299, 'hole draft': '0°' }, 'reason'))) ?? [];
    expect([Number(needs), has === needs]).toEqual([1, false]);
  });
});

describe('what a reason says is so', () => {
  test('on the wall that it names the sink passes, and a hundredth thinner it does not', () => {
    // hole to the root, above it, into the wall, with a groove; faces that show and that are hidden
    const depths = [10, 12, 13, 13.7, 14, 14.4, 15];
    const joints = depths.flatMap(depth =>
      [0, 0.6].flatMap(ring =>
        ['show', 'hidden'].map((face): Inputs => ({
          ...SOUND,
          'head wall': 2.5,
          'boss OD': 8.5,
          wall: 2,
          face,
          'hole depth': depth,
          'ring depth': ring,
        })),
      ),
    );
    const sink = (inputs: Inputs): unknown => checked(inputs).find(([rule]) => rule === 'sink, thread half')?.[4];
    let named = 0;
    for (const joint of joints) {
      const wall = /passes on a wall of (\S+) mm/.exec(String(of({ ...joint, ratio: 1, length: 9.5 }, 'reasons')))?.[1];
      if (wall === undefined) continue;
      named++;
      const at = (wallMm: number): unknown => sink({ ...joint, ratio: 1, length: 9.5, wall: wallMm });
      expect([at(Number(wall)), at(Number(wall) - 0.011) === 'pass'], JSON.stringify(joint)).toEqual(['pass', false]);
    }
    expect(named).toBeGreaterThanOrEqual(20);
  });

  test('a rule that applies never says that it does not', () => {
    const [state, reasons] = table({ ...SOUND, 'post OD': 5 }, ['state', 'reasons']);
    expect([state, reasons]).toEqual(['not checked', 'sink, head half: not checked: the post is no wider than its recess']);
  });

  test('a smallest head above the largest is refused', () => {
    expect(table({ ...SOUND, 'head diameter min': 5.61 }, ['state', 'reason'])).toEqual([
      'not checked',
      'head bears on its seat: not checked: head diameter min is 5.61: must be at most the head diameter',
    ]);
    expect(of({ ...SOUND, 'head diameter min': 5.6 }, 'state')).toBe('pass');
    expect(of({ ...SOUND, 'head diameter': 5.2, 'head diameter min': 5.3 }, 'state')).toBe('not checked');
  });

  test('a countersunk head on the bare board fails: it has nothing to lie in', () => {
    const { hole: _, ...rest } = SOUND;
    const onBoard = { ...rest, head: 'countersunk', seat: '0 mm', 'board hole': 3.4 };
    expect(checked(onBoard).find(([rule]) => rule === 'seat under the cone')?.[4]).toBe('fail');
    expect(of(onBoard, 'state')).toBe('fail');
  });
});

describe('not checked', () => {
  const NO_DENSITY: Inputs = { ...SOUND, material: 'strength 40 MPa; thread share 0.8; od ratio 2.2' };
  test('where an output that was asked for applies and has no value; not where it was not asked for', () => {
    expect(table(NO_DENSITY, ['state', 'reason'])).toEqual(['pass', '–']);
    const [mass, state, reason] = table(NO_DENSITY, ['boss mass', 'state', 'reason']);
    expect(mass).toMatch(/^no value: /);
    expect(state).toBe('not checked');
    expect(reason).toMatch(/^boss mass: not checked: /);
    // a fail is a fail
    expect(table({ ...NO_DENSITY, ratio: 4 }, ['boss mass', 'state'])[1]).toBe('fail');
  });

  test('what does not apply leaves the state as it is', () =>
    expect(table(SOUND, ['sleeve OD', 'load margin', 'state']).slice(1)).toEqual([expect.stringMatching(/does not apply/), 'pass']));
});

describe('margin', () => {
  test('the least distance to a fail limit, as a share of it, and its rule', () => {
    // relief 0.8 → engagement ratio 7.34 / 2.9 against 2; of the sound joint the tip is nearest: tightness against 0.97
    const tight = (2.46 + 2 * 5.05 * Math.tan(Math.PI / 720) - 2 * 10.36 * Math.tan(Math.PI / 720) - 0.05) / 2.18;
    expect(table(SOUND, ['margin', 'margin rule'])).toEqual([expect.closeTo((tight - 0.97) / 0.97, 9), 'pilot not too tight']);
    expect(table({ ...SOUND, ratio: 2.5 }, ['margin', 'margin rule'])).toEqual([expect.closeTo((7.34 / 2.9 - 2.5) / 2.5, 9), 'engagement']);
    expect(table({ ...SOUND, ratio: 3 }, ['margin', 'margin rule'])).toEqual([expect.closeTo((7.34 / 2.9 - 3) / 3, 9), 'engagement']);
  });

  test('of d where the limit is 0', () =>
    // 12.96 of reach in a hole of 12.99 − 0.1
    expect(table({ ...SOUND, 'hole depth': 12.99 }, ['margin', 'margin rule'])).toEqual([
      expect.closeTo((12.89 - 12.96) / 2.9, 9),
      'screw clears the bottom',
    ]));

  test('a rule without a number counts as −1 where it fails', () =>
    expect(table({ ...SOUND, length: 'default', 'hole depth': 8, 'pilot held at': 'mouth' }, ['margin', 'margin rule'])).toEqual([
      -1,
      'a standard length exists',
    ]));

  /** Inputs that may move without another rule coming or going. */
  const MOVED: readonly (readonly [name: string, from: number, to: number])[] = [
    ['pilot', 2, 2.75],
    ['board plane', 4.2, 6],
    ['seat', 0.5, 3],
    ['relief', 0.1, 4],
    ['hole', 2.7, 5.2],
    ['hole depth', 11, 16.5],
    ['boss OD', 4, 14],
    ['boss height', 10, 28],
    ['wall', 1, 4],
    ['allowance', -0.4, 1.4],
    ['length', 11, 19],
    ['hole draft', 0.1, 1.2],
    ['post OD', 8, 20],
  ];

  test('below 0 exactly where a rule fails, and no jump across a limit', () => {
    let [below, above, crossed] = [0, 0, 0];
    fc.assert(
      fc.property(fc.constantFrom(...MOVED), fc.double({ min: 0, max: 1, noNaN: true }), ([name, from, to], share) => {
        const at = (x: number): unknown[] => table({ ...SOUND, 'head face': 'hidden', [name]: x }, ['margin', 'fails']);
        const x = from + share * (to - from);
        const [margin, fails] = at(x) as [number, number];
        expect(margin < -1e-9, `${name} ${x}`).toBe(fails > 0);
        if (fails > 0) below++;
        else above++;
        // so small a step moves it by no more than a steep rule can
        const [next] = at(x + 1e-7) as [number];
        expect(Math.abs(next - margin), `${name} ${x}`).toBeLessThan(1e-4);
      }),
      { seed: SEED, numRuns: 400 },
    );
    for (const [name, from, to] of MOVED) {
      const margin = (x: number): number => of({ ...SOUND, 'head face': 'hidden', [name]: x }, 'margin') as number;
      const steps = Array.from({ length: 33 }, (_, i) => from + (i / 32) * (to - from));
      for (let i = 1; i < steps.length; i++) {
        let [low, high] = [steps[i - 1] ?? 0, steps[i] ?? 0];
        if (margin(low) < 0 === margin(high) < 0) continue;
        crossed++;
        for (let halved = 0; halved < 40; halved++) {
          const middle = (low + high) / 2;
          if (margin(low) < 0 === margin(middle) < 0) low = middle;
          else high = middle;
        }
        expect([margin(low), margin(high)], `${name} at ${low}`).toEqual([expect.closeTo(0, 6), expect.closeTo(0, 6)]);
      }
    }
    expect([below > 60, above > 60, crossed > 10]).toEqual([true, true, true]);
  });
});

describe('remedies', () => {
  const BROKEN: readonly Inputs[] = [
    { ...SOUND, length: 13 },
    { ...SOUND, length: 19 },
    { ...SOUND, length: 22, 'hole depth': 14 },
    { ...SOUND, face: 'show', 'boss OD': 9 },
    { ...SOUND, face: 'show', 'boss OD': 8, wall: 2 },
    { ...SOUND, 'boss OD': 5, 'hole depth': 16 },
    { ...SOUND, pilot: 2.1 },
    { ...SOUND, pilot: 2.66 },
    { ...SOUND, 'post OD': 12 },
    { ...SOUND, 'board plane': 4.8, seat: 1 },
    { ...SOUND, 'boss height': 22 },
    { ...SOUND, 'board hole': 4.2 },
    { ...SOUND, load: 300 },
    { ...SOUND, gap: 0.2 },
    { ...SOUND, hole: 4.4 },
    { ...SOUND, 'boss height': 17.5, length: 13 },
    { ...SOUND, 'relief diameter': 4.8 },
    { ...SOUND, 'ring depth': 1.5 },
    { ...SOUND, sleeve: 2, 'board hole': 5.5, 'boss OD': 8 },
    { ...SOUND, allowance: 0.5 },
    { ...SOUND, wall: 2.4, face: 'show', 'hole depth': 13.5, 'boss OD': 6.2 },
    // only two inputs together
    { ...SOUND, ratio: 1.4, 'boss height': 12.3, 'hole depth': 14.1 },
    { ...SOUND, 'boss height': 17.5, load: 250 },
    { ...SOUND, 'boss height': 17.5, friction: 0.2, 'drive torque': 0.115 },
  ];
  const changesIn = (said: string): readonly (readonly [name: string, value: string])[] =>
    said
      .replace(' (steel-safe)', '')
      .split(' with ')
      .map(change => {
        const name = [...INPUTS.keys()].filter(one => change.startsWith(`${one} `)).sort((a, b) => b.length - a.length)[0] ?? '';
        return [name, change.slice(name.length + 1)];
      });
  const size = (inputs: Inputs, name: string): number => new Variant(new Map(Object.entries(inputs))).value(name) as number;

  test('each mends its rule and worsens no other; wall by a fifth at most, pilot by 0.1; more plastic says steel-safe', () => {
    let [tried, pairs, steel] = [0, 0, 0];
    for (const joint of BROKEN) {
      const before = checked(joint);
      for (const row of before.filter(([, , , , state]) => state !== 'pass' && state !== 'not checked')) {
        if (/^no change/.test(String(row[6]))) continue;
        const all = String(row[6]).split('; or ');
        expect(all.length).toBeLessThanOrEqual(3);
        for (const said of all) {
          const changes = changesIn(said);
          const after = checked({ ...joint, ...Object.fromEntries(changes) });
          const what = `${String(row[0])}: ${said}`;
          const stateOf = (name: unknown): string => String(after.find(other => other[0] === name)?.[4] ?? 'pass');
          expect(stateOf(row[0]), what).toBe('pass');
          for (const other of before)
            expect(RANK.indexOf(stateOf(other[0])), `${what}, ${String(other[0])}`).toBeGreaterThanOrEqual(RANK.indexOf(String(other[4])));
          for (const [name, to] of changes) {
            const [was, is] = [size(joint, name), size({ ...joint, [name]: to }, name)];
            if (name === 'wall' || name === 'head wall') expect(is / was, what).toBeLessThanOrEqual(1.2 + 1e-9);
            if (name === 'pilot') expect(Math.abs(is - was), what).toBeLessThanOrEqual(0.1 + 1e-9);
            if (name === 'boss OD') expect(said.includes(' (steel-safe)'), what).toBe(is > was);
            if (name === 'boss OD' && is > was) steel++;
          }
          tried++;
          if (changes.length === 2) pairs++;
        }
      }
    }
    expect([tried > 20, pairs > 1, steel > 1], `${tried} ${pairs} ${steel}`).toEqual([true, true, true]);
  });

  test('none is offered where no size is what is wrong', () => {
    const cone = { ...SOUND, head: 'countersunk', seat: 3.5, 'board plane': 8, length: 16, load: 50 };
    const said = checked(cone).filter(([rule]) => rule === 'seat under the cone' || rule === 'load carried');
    expect(said.map(row => [row[4], row[6]])).toEqual([
      ['review', 'no change of size makes it pass'],
      ['review', 'no change of size makes it pass'],
    ]);
  });

  test('a relief far too wide is narrowed, never below the room that its screw needs', () => {
    const remedyOf = (ring: number): unknown =>
      checked({ ...SOUND, 'relief diameter': 8, 'ring limit': ring }).find(([rule]) => rule === 'landing ring')?.[6];
    // 6 − 2·0.8
    expect(remedyOf(0.8)).toMatch(/^relief diameter 4\.4 mm/);
    // 6 − 2·1.5 = 3.0, below 2.9 + 0.2: a larger boss, or nothing
    expect(remedyOf(1.5)).not.toMatch(/relief diameter \d/);
  });

  test('at most 200 trials a row', () => {
    for (const joint of BROKEN) {
      const looked = vi.spyOn(Variant.prototype, 'finding');
      of(joint, 'remedy');
      const rules = looked.mock.calls.map(([rule]) => rule.name);
      looked.mockRestore();
      const most = Math.max(0, ...[...new Set(rules)].map(name => rules.filter(rule => rule === name).length));
      expect(most, JSON.stringify(joint)).toBeLessThanOrEqual(200);
    }
  });

  test('the remedy of a row is the first of its reason', () => {
    for (const joint of BROKEN) {
      const rows = checked(joint);
      const worst = rows.find(row => row[4] === 'fail') ?? rows.find(row => row[4] === 'review');
      expect(of(joint, 'remedy')).toBe(String(worst?.[6]).split('; or ')[0]);
    }
  });
});

describe('base', () => {
  const base = Object.entries({ screw: 'ST2.9', head: 'pan', wall: 3, ratio: 2.6, 'slender limit': 2 });
  const { screw: _, head: __, wall: ___, ...rest } = SOUND;
  const reasons = (inputs: Inputs, block: Rows = base): unknown => table(inputs, ['reasons'], block)[0];

  test('gives required inputs and a company’s limits; the row wins, and a blank or default takes base', () => {
    const both =
      'too little full thread: needs engagement ratio at least 2.6, has 2.531; boss is slender: needs slenderness at most 2, has 2.333';
    expect(reasons(rest)).toBe(both);
    for (const ratio of [null, 0, '', 'default']) expect(reasons({ ...rest, ratio })).toBe(both);
    expect(reasons({ ...rest, ratio: 2 })).toBe('boss is slender: needs slenderness at most 2, has 2.333');
  });

  test('a header and one row is the same base; two rows are too many', () => {
    const block = [base.map(([name]) => name), base.map(([, raw]) => raw)];
    expect(reasons(rest, block)).toBe(reasons(rest));
    expect(refusal('JOINT.TABLE', [Object.keys(rest), Object.values(rest)], null, [...block, block[1]])).toMatch(/^#VALUE! base /);
  });

  test('a name that must be told from a blank stays refused when it is blank', () =>
    expect(
      table(
        { ...SOUND, seat: 0 },
        ['grip'],
        [
          ['seat', 2],
          ['ratio', 2],
        ],
      )[0],
    ).toBe('no value: seat: 0 or blank? write "0 mm" for zero, or default'));

  test('all that take inputs take it', () => {
    const inputs = Object.entries(rest);
    for (const id of ['CHECK.JOINT', 'CHECK.BOSS'])
      expect((value(id, inputs, base) as Rows).find(([name]) => name === 'slenderness')?.[4]).toBe('review');
    expect((value('JOINT.CARD', inputs, 1, base) as Rows).find(([name]) => name === 'state')?.[1]).toBe('fail');
    expect(value('JOINT.VALUE', [Object.keys(rest)], [Object.values(rest)], 'state', base)).toBe('fail');
  });
});

describe('labels and units above the columns', () => {
  const LABELLED = { variant: 'A', '(source)': 'drawing 7', Note: 3, ...SOUND };
  const rows = (inputs: Inputs, ...more: unknown[]): Rows =>
    value('JOINT.TABLE', [Object.keys(inputs), Object.values(inputs)], ...more) as Rows;

  test('labels are not read, come first, and can be asked for by their heading', () => {
    const [header = [], row = []] = rows(LABELLED);
    expect([header.slice(0, 4), row.slice(0, 3)]).toEqual([
      ['variant', '(source)', 'Note', 'feature wall (mm)'],
      ['A', 'drawing 7', 3],
    ]);
    expect(header).toHaveLength(3 + OUTPUTS.length - 1);
    expect(rows(LABELLED, [['state', 'note', 'grip']])).toEqual([
      ['state', 'Note', 'grip (mm)'],
      ['pass', 3, expect.closeTo(4.1, 9)],
    ]);
  });

  test('bare numbers stand in the unit of the heading; text keeps its own', () => {
    const { wall: _, seat: __, board: ___, ...rest } = SOUND as Record<string, unknown>;
    const [, row] = rows({ ...rest, 'wall (in)': 0.125, 'Outside_Draft (°)': 1, 'seat (µm)': 2500, 'board (in)': '1.6 mm' }, [
      ['floor under hole', 'boss OD root', 'grip'],
    ]) as [unknown[], number[]];
    expect(row[0]).toBeCloseTo(0.125 * 25.4 + 14 - 14.8, 9);
    expect(row[1]).toBeCloseTo(6 + 28 * Math.tan(Math.PI / 180), 9);
    expect(row[2]).toBeCloseTo(4.1, 9);
  });

  test('so does text without a unit: a fraction, a tolerance, a number typed as text', () => {
    const { wall: _, ...rest } = SOUND;
    const [, row] = rows({ ...rest, 'wall (in)': '1/8', 'pilot tolerance (in)': '+0.002/-0.001', 'board hole (in)': ' 0.134 ' }, [
      ['floor under hole', 'thread share min', 'board hold'],
    ]) as [unknown[], number[]];
    const [, same] = rows({ ...rest, wall: 3.175, 'pilot tolerance': '+0.0508/-0.0254', 'board hole': 3.4036 }, [
      ['floor under hole', 'thread share min', 'board hold'],
    ]) as [unknown[], number[]];
    expect(row[0]).toBeCloseTo(3.175 + 14 - 14.8, 9);
    expect(row.slice(1)).toEqual(same.slice(1).map(number => expect.closeTo(number, 9) as unknown));
  });

  test('a unit that does not fit is refused in its cell', () => {
    const { wall: _, ...rest } = SOUND;
    expect(rows({ ...rest, 'wall (kg)': 3 }, [['floor under hole']])[1]?.[0]).toMatch(/^no value: wall /);
  });
});
