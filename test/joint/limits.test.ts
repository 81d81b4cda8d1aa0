// The rules of the joint as a designer would check them, typed by hand, and a joint solved to each of their limits.
import { describe, expect, test } from 'vitest';
import { section } from '../../src/figure/section';
import { Variant } from '../../src/joint/variant';
import type { Bound, Rule } from '../../src/joint/graph';
import { remedy } from '../../src/joint/remedy';
import { RULES } from '../../src/joint/rules';
import { ofClass, elements } from '../figure/read-svg';
import { value } from '../kit/ask';
import { type Inputs, SOUND } from '../kit/sound-joint';

/** Typed by hand, not made from the rules: where it differs from them one of the two is wrong. A dash: there is none. */
const TABLE = `
rule                           | judged              | fails               | to be looked at     | applies where             | look for fail where | of the boss | may be moved             | source
head fits the recess           | recess diameter     | below head diameter | –                   | has recess                | –                   | –           | allowance                | plane geometry
head hidden                    | subflush            | below 0             | below 0.2           | has recess                | –                   | –           | board plane, seat        | common practice
seat under the cone            | seat under the cone | below 1             | at least 1          | is countersunk            | –                   | –           | seat                     | common practice
screw passes the hole          | hole                | at most major max   | –                   | –                         | –                   | –           | hole                     | plane geometry
a standard length exists       | standard length     | below 1             | –                   | –                         | –                   | –           | length                   | ISO 888, ISO 7049, ASME B18.6.3
thread holds at the mouth      | pilot mouth         | at least major min  | –                   | –                         | –                   | boss        | pilot, hole draft        | plane geometry
pilot not too tight at the tip | tightness           | below 0.97          | below 1             | –                         | –                   | boss        | pilot, hole draft        | common practice
engagement                     | engagement ratio    | below ratio         | –                   | –                         | –                   | –           | length, seat, relief     | common practice
screw does not bottom          | hole depth needed   | above hole depth    | –                   | –                         | –                   | –           | length, hole depth       | plane geometry
board free on the sleeve       | board play          | below 0             | –                   | has sleeve, has board hole | –                   | –           | board hole               | plane geometry
board held by the boss         | board hold          | below 0.5           | –                   | has board hole            | –                   | boss        | boss OD, board hole      | common practice
landing ring                   | landing ring        | below 0.5           | below 0.8           | –                         | –                   | boss        | boss OD, relief diameter | common practice
sink                           | sink ratio          | above sink limit    | –                   | –                         | is hidden           | boss        | wall, boss OD            | common practice
slenderness                    | slenderness         | above 5             | above slender limit | –                         | –                   | boss        | boss height, boss OD     | common practice
core pin                       | pin ratio           | –                   | above pin limit     | –                         | –                   | boss        | hole depth, pilot        | common practice
planned gap                    | gap                 | –                   | above 0             | –                         | –                   | –           | gap                      | common practice
`;

const cellsOf = (line: string): string[] => line.split('|').map(cell => cell.trim());
const [HEADER = [], ...TYPED] = TABLE.trim().split('\n').map(cellsOf);

const bound = (one: Bound | undefined): string => (one === undefined ? '–' : `${one.side} ${one.limit}`);
const asTyped = ({ name, value: judged, fail, look, when, softWhen, boss, moves, source }: Rule): string[] => [
  name,
  judged,
  bound(fail),
  bound(look),
  when?.join(', ') ?? '–',
  softWhen ?? '–',
  boss ? 'boss' : '–',
  moves.join(', '),
  source,
];

const LEVELS = ['fail', 'look'] as const;
type Level = (typeof LEVELS)[number];

/** What the named limits are worth in the joints below: ISO 7049 and ISO 1478 for ST2.9, the defaults, and the hole depth that is given. */
const NAMED: Readonly<Record<string, number>> = {
  'head diameter': 5.6,
  'major max': 2.9,
  'major min': 2.76,
  ratio: 2,
  'hole depth': 14.7,
  'sink limit': 0.6,
  'slender limit': 3,
  'pin limit': 6,
};

const typedRow = (rule: string): readonly string[] => TYPED.find(([name]) => name === rule) ?? [];
const typed = (rule: string, title: string): string => typedRow(rule)[HEADER.indexOf(title)] ?? '';

function limitOf(rule: string, level: Level): number {
  const limit = typed(rule, level === 'fail' ? 'fails' : 'to be reviewed').replace(/^(below|above|at most|at least) /, '');
  return NAMED[limit] ?? Number(limit);
}

const CONE: Inputs = {
  screw: 'M3',
  head: 'countersunk',
  length: 16,
  material: 'ABS',
  wall: 3,
  'board plane': 5.5,
  seat: 2.5,
  board: 1.6,
  relief: 0.8,
  pilot: 2.6,
  'boss OD': 6,
  'boss height': 14,
  'hole depth': 14.7,
  'bottom gap': 1,
};
const SHOW: Inputs = { ...SOUND, face: 'show' };
const SLEEVE: Inputs = { ...SOUND, sleeve: 2, 'board hole': 7.5 };
const HELD: Inputs = { ...SOUND, 'board hole': 3.5 };

/** Each limit is reached by one input of a joint; then the states just below it, on it and just above it. */
const REACHED: readonly (readonly [rule: string, level: Level, joint: Inputs, input: string, from: number, to: number, states: string])[] =
  [
    ['head hidden', 'fail', SOUND, 'board plane', 4.5, 5.5, 'fail, look, look'],
    ['head hidden', 'look', SOUND, 'board plane', 4.5, 5.5, 'look, pass, pass'],
    ['seat under the cone', 'fail', CONE, 'seat', 1, 4, 'fail, look, look'],
    ['seat under the cone', 'look', CONE, 'seat', 1, 4, 'fail, look, look'],
    ['screw passes the hole', 'fail', SOUND, 'hole', 2.5, 3.4, 'fail, fail, pass'],
    ['thread holds at the mouth', 'fail', SOUND, 'pilot', 2.4, 2.9, 'pass, fail, fail'],
    ['pilot not too tight at the tip', 'fail', SOUND, 'pilot', 2, 2.46, 'fail, look, look'],
    ['pilot not too tight at the tip', 'look', SOUND, 'pilot', 2, 2.46, 'look, pass, pass'],
    ['engagement', 'fail', SOUND, 'relief', 0.8, 4, 'fail, pass, pass'],
    ['screw does not bottom', 'fail', SOUND, 'bottom gap', 1, 3, 'pass, pass, fail'],
    ['board free on the sleeve', 'fail', SLEEVE, 'board hole', 6, 7.5, 'fail, pass, pass'],
    ['board held by the boss', 'fail', HELD, 'board hole', 3.5, 5, 'fail, pass, pass'],
    ['landing ring', 'fail', SOUND, 'boss OD', 4, 5.6, 'fail, look, look'],
    ['landing ring', 'look', SOUND, 'boss OD', 4, 5.6, 'look, pass, pass'],
    ['sink', 'fail', SHOW, 'boss OD', 5.6, 7, 'pass, pass, fail'],
    ['sink', 'fail', SOUND, 'boss OD', 5.6, 7, 'pass, pass, look'],
    ['slenderness', 'fail', SOUND, 'boss height', 14, 30, 'look, look, fail'],
    ['slenderness', 'look', SOUND, 'boss height', 14, 30, 'pass, pass, look'],
    ['core pin', 'look', SOUND, 'hole depth', 14.7, 16, 'pass, pass, look'],
  ];

/** Limits that no input passes from one side to the other, with what is typed in place of it. */
const NOT_REACHED: readonly (readonly [
  rule: string,
  level: Level,
  joint: Inputs,
  input: string,
  given: readonly unknown[],
  states: string,
])[] = [
  // the recess is head and allowance, and an allowance below 0 is refused: this rule never fails
  ['head fits the recess', 'fail', SOUND, 'allowance', [-1e-6, '0 mm', 1e-6], 'not checked, pass, pass'],
  // a length is on the list or not, 1 or 0
  ['a standard length exists', 'fail', SOUND, 'length', [16 - 2e-6, 16, 16 + 2e-6], 'fail, pass, fail'],
  // a gap below 0 is refused
  ['planned gap', 'look', SOUND, 'gap', [-1e-6, 0, 1e-6], 'not checked, pass, look'],
];

const variantOf = (inputs: Inputs): Variant => new Variant(new Map(Object.entries(inputs)));
const rowOf = (inputs: Inputs, rule: string): unknown[] | undefined =>
  (value('CHECK.JOINT', Object.entries(inputs)) as unknown[][]).find(([name]) => name === rule);
const stateOf = (inputs: Inputs, rule: string): unknown => rowOf(inputs, rule)?.[4] ?? 'left out';

const OFFSETS = [-1e-6, 0, 1e-6] as const;

/** The joint in which the judged value stands so far above the limit: one input by bisection. */
function solved([rule, level, joint, input, from, to]: (typeof REACHED)[number], offset: number): Inputs {
  const target = limitOf(rule, level) + offset;
  const above = (x: number): number => (variantOf({ ...joint, [input]: x }).value(typed(rule, 'judged')) as number) - target;
  let [low, high] = above(from) < above(to) ? [from, to] : [to, from];
  expect([above(low) < 0, above(high) > 0]).toEqual([true, true]);
  for (let halved = 0; halved < 60; halved++) {
    const middle = (low + high) / 2;
    if (above(middle) < 0) low = middle;
    else high = middle;
  }
  expect(Math.abs(above(high))).toBeLessThan(1e-10);
  return { ...joint, [input]: high };
}

const POINTS = [
  ...REACHED.map(one => ({
    rule: one[0],
    level: one[1],
    input: one[3],
    states: one[6],
    joints: OFFSETS.map(offset => solved(one, offset)),
  })),
  ...NOT_REACHED.map(([rule, level, joint, input, given, states]) => ({
    rule,
    level,
    input,
    states,
    joints: given.map((raw): Inputs => ({ ...joint, [input]: raw })),
  })),
];

const statesBy = (rule: Rule, joints: readonly Inputs[]): string =>
  joints.map(joint => variantOf(joint).finding(rule)?.state ?? 'left out').join(', ');

describe('the rules', () => {
  test('are those of the table, in its order, none missing and none besides', () => {
    expect(TYPED.length).toBeGreaterThanOrEqual(16);
    expect(RULES.map(asTyped)).toEqual(TYPED);
  });

  test('each limit of each rule has its joint', () => {
    const bounds = RULES.flatMap(rule => LEVELS.filter(level => rule[level] !== undefined).map(level => `${rule.name}: ${level}`));
    expect([...new Set(POINTS.map(({ rule, level }) => `${rule}: ${level}`))].sort()).toEqual(bounds.sort());
  });
});

describe('the state turns at the limit: 0.000001 below, on it, 0.000001 above', () => {
  test.each(POINTS)('$rule, $level, by $input: $states', ({ rule, joints, states }) => {
    expect(joints.map(joint => stateOf(joint, rule)).join(', ')).toBe(states);
  });
});

describe('a rule applies where the table says', () => {
  const joints: readonly Inputs[] = [SOUND, CONE, SLEEVE, HELD, { ...SOUND, seat: '0 mm' }, { ...SLEEVE, 'board hole': null }];
  const shown = joints.map(joint => (value('CHECK.JOINT', Object.entries(joint)) as unknown[][]).slice(1).map(([name]) => name));

  test.each(TYPED.map(([rule = '']) => [rule, typed(rule, 'applies where')] as const))('%s: %s', (rule, when) => {
    const applies = joints.map(joint => when === '–' || when.split(', ').every(name => variantOf(joint).value(name) === true));
    expect(shown.map(names => names.includes(rule))).toEqual(applies);
    if (when !== '–') expect(new Set(applies).size).toBe(2);
  });
});

const brokenJoints = (rule: string): Inputs[] =>
  POINTS.filter(point => point.rule === rule).flatMap(({ states, joints }) =>
    joints.filter((_, i) => /fail|look/.test(states.split(', ')[i] ?? '')),
  );

describe('an input that may be moved mends the rule', () => {
  /** Broken farther from the limit, or by another input, where the joints above leave an input no way. */
  const ALSO: Readonly<Record<string, Inputs>> = {
    engagement: { ...SOUND, length: 13 },
    'screw does not bottom': { ...SOUND, length: 19 },
    'landing ring': { ...SOUND, 'relief diameter': 5 },
  };
  const NEVER: Readonly<Record<string, string>> = {
    'head fits the recess': 'it never fails',
    'seat under the cone': 'a countersunk head is always to be looked at',
  };

  test.each(
    TYPED.flatMap(([rule = '']) =>
      typed(rule, 'may be moved')
        .split(', ')
        .map(input => [rule, input] as const),
    ),
  )('%s: %s', (rule, input) => {
    const mended = [...brokenJoints(rule), ...(ALSO[rule] === undefined ? [] : [ALSO[rule]])].filter(joint => {
      const variant = variantOf(joint);
      const all = variant.findings();
      const finding = all.find(one => one.rule.name === rule) ?? expect.fail();
      const said = remedy(variant, { ...finding, rule: { ...finding.rule, moves: [input] } }, all);
      if (!said.startsWith(`${input} `)) return false;
      expect(stateOf({ ...joint, [input]: said.slice(input.length + 1) }, rule), said).toBe('pass');
      return true;
    });
    if (NEVER[rule] === undefined) expect(mended.length).toBeGreaterThan(0);
    else expect(mended).toEqual([]);
  });
});

describe('a broken rule is shown', () => {
  test.each(TYPED.filter(([rule]) => rule !== 'head fits the recess'))('%s', rule => {
    let shown = 0;
    for (const joint of brokenJoints(rule)) {
      const found = variantOf(joint)
        .findings()
        .filter(({ state }) => state !== 'pass');
      const numbers = ofClass(elements(section(variantOf(joint)).svg), 'bw-number').map(({ content }) => content);
      // a number in the list, and the same at its place on the part
      for (let i = 1; i <= found.length; i++)
        expect(
          numbers.filter(number => number === String(i)),
          `mark ${i}`,
        ).toHaveLength(2);
      const card = value('JOINT.CARD', Object.entries(joint)) as unknown[][];
      expect(card.map(row => row[4]).filter(state => state === 'fail' || state === 'look')).toHaveLength(found.length);
      shown++;
    }
    expect(shown).toBeGreaterThan(0);
  });
});

describe('a changed rule is noticed', () => {
  const SIDES = ['below', 'above', 'at most', 'at least'] as const;
  const moved = (limit: number): number[] => (limit === 0 ? [-0.01, 0.01] : [0.99 * limit, 1.01 * limit]);
  const others = ({ side, limit }: Bound): Bound[] => [
    ...SIDES.filter(other => other !== side).map(other => ({ side: other, limit })),
    ...(typeof limit === 'number' ? moved(limit).map(other => ({ side, limit: other })) : []),
  ];
  const changed = RULES.flatMap(rule =>
    LEVELS.flatMap(level =>
      rule[level] === undefined
        ? []
        : others(rule[level]).map(other => ({ what: `${rule.name}, ${level} ${bound(other)}`, rule: { ...rule, [level]: other } })),
    ),
  );
  const shortened = RULES.flatMap(rule =>
    [[], ...rule.moves.map(input => rule.moves.filter(one => one !== input))].map(moves => ({
      what: `${rule.name}, moves ${moves.join(', ')}`,
      rule: { ...rule, moves },
    })),
  );

  test('by the table: each side, each limit by 1 % (0.01 where it is 0), each input that may be moved left out, and all of them', () => {
    expect(changed.length).toBeGreaterThanOrEqual(21 * 3 + 13 * 2);
    expect(shortened.length).toBeGreaterThanOrEqual(27 + 16);
    expect([...changed, ...shortened].filter(({ rule }) => asTyped(rule).join() === typedRow(rule.name).join())).toEqual([]);
  });

  test('by a state: each side and each limit, but two that change nothing', () => {
    const unnoticed = changed.filter(({ rule }) =>
      POINTS.every(point => point.rule !== rule.name || statesBy(rule, point.joints) === point.states),
    );
    // what lies below a fail limit of 1 has failed before it is to be looked at; the length is standard or not, 1 or 0
    expect(unnoticed.map(({ what }) => what)).toEqual([
      'seat under the cone, look at least 0.99',
      'a standard length exists, fail below 0.99',
    ]);
  });
});
