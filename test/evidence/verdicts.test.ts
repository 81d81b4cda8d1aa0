// Whether the verdict on a joint is one that can be signed: against joints reckoned by hand, against an oracle of plane geometry,
// at every bound, and over populations. The product is asked through its calls alone.
import { beforeAll, describe, expect, test } from 'vitest';
import { BOUNDS, type Bound } from './verdicts/bounds';
import { BORDERLINE, BY_THE_BOOK, CORPUS, IMPOSSIBLE_OR_BAD, INSERTED, SOUND, type State, type Verdict } from './verdicts/corpus';
import { ARGUED, populationFigures, RULES, type Figures } from './verdicts/figures';
import { impossible, IMPOSSIBLE, type Impossible, type Inputs } from './verdicts/oracle';
import { ordinary, SPOILED_BY, unspoiled, unspoiledInserts, wild, wildInserts } from './verdicts/population';
import { rulesOf, statesOf, table, type RuleRow } from './verdicts/product';

const SLOW_MS = 60_000;
const inOrder = (rules: readonly RuleRow[], state: State): string | undefined => rules.find(row => row.state === state)?.rule;

describe('the corpus itself', () => {
  test('is as large as it must be, and no name stands twice', () => {
    expect(IMPOSSIBLE_OR_BAD.filter(({ state }) => state === 'fail').length).toBeGreaterThanOrEqual(25);
    expect(BY_THE_BOOK.length).toBeGreaterThanOrEqual(20);
    expect(BORDERLINE.length / 2).toBeGreaterThanOrEqual(15);
    expect(new Set(CORPUS.map(({ name }) => name)).size).toBe(CORPUS.length);
  });

  test('has each rule that can fail at least once, and every other at review', () => {
    const NEVER_FAILS: readonly string[] = ['machine thread in plastic', 'planned gap (boss hangs in tension)'];
    const has = (rule: string, state: State): boolean => CORPUS.some(verdict => verdict.rule === rule && verdict.state === state);
    expect(RULES.filter(rule => !has(rule, NEVER_FAILS.includes(rule) ? 'review' : 'fail'))).toEqual([]);
    expect(CORPUS.map(({ rule }) => rule).filter(rule => rule !== undefined && !(RULES as readonly string[]).includes(rule))).toEqual([]);
  });

  test('reckons with numbers: each reason has some', () => {
    expect(CORPUS.filter(({ why, state }) => state !== 'not checked' && !/\d/.test(why) && !/touch/.test(why))).toEqual([]);
  });

  test('calls nothing possible that plane geometry forbids', () => {
    expect(CORPUS.filter(({ inputs, state }) => state !== 'fail' && impossible(inputs).length > 0)).toEqual([]);
    expect(CORPUS.filter(({ inputs }) => impossible(inputs).length > 0).length).toBeGreaterThanOrEqual(25);
  });
});

/** Joints reckoned by hand, one a sentence of the oracle. */
const FORBIDDEN: Readonly<Record<Impossible, readonly [cannot: Inputs, can: Inputs]>> = {
  'hole out of the outer face': [{ 'hole depth': 16.61 }, { 'hole depth': 16.59 }],
  'screw wider than the hole': [{ hole: 2.99 }, { hole: 3.01 }],
  'screw wider than the board hole': [{ 'board hole': 2.99 }, { 'board hole': 3.01 }],
  'head falls through': [
    { hole: 5.21, 'boss OD': 8 },
    { hole: 5.19, 'boss OD': 8 },
  ],
  'head wider than the recess': [{ allowance: -0.01 }, { allowance: 0.01 }],
  'head stands out': [{ 'board plane': 4.59 }, { 'board plane': 4.61 }],
  'no seat': [
    { seat: 0.09, 'hole depth': 16 },
    { seat: 0.11, 'hole depth': 16 },
  ],
  'cone through the seat': [
    { head: 'countersunk', seat: 1.1, 'head diameter': 5.31 },
    { head: 'countersunk', seat: 1.1, 'head diameter': 5.29 },
  ],
  // at the head wall, 2.5 from the outside, the recess is 6.54 + 3·tan 1° = 6.592 and the post 6.531 + 7·tan 0.5° = 6.592
  'recess breaks out': [{ 'post OD': 6.52 }, { 'post OD': 6.55 }],
  // the least reach is 11.34: 8.74 deep the hole is 2·8.74·tan 0.25° = 0.076 narrower than at its mouth, and 0.05 wider by its tolerance
  'thread touches nothing': [
    { pilot: 2.79, 'pilot held at': 'mouth' },
    { pilot: 2.78, 'pilot held at': 'mouth' },
  ],
  'screw does not reach': [
    { length: 7.8, 'length tolerance': 0.8 },
    { length: 7.9, 'length tolerance': 0.8 },
  ],
  // 2.4/(2·14.2) = tan 4.83°
  'pin hole closed': [
    { pilot: 2.4, 'pilot held at': 'mouth', 'hole draft': 4.84 },
    { pilot: 2.4, 'pilot held at': 'mouth', 'hole draft': 4.82 },
  ],
  'hole wider than the boss': [{ 'relief diameter': 6.39 }, { 'relief diameter': 6.37 }],
  'boss falls into the clearance hole': [{ 'boss OD': 3.49 }, { 'boss OD': 3.51 }],
  'tip beyond the bottom': [{ 'boss height': 13.55 }, { 'boss height': 13.57 }],
  // 5.4 + 0.1 + 2·2.0·tan 0.5° = 5.535
  'sleeve wider than the board hole': [
    { sleeve: 1.9, 'board hole': 5.63 },
    { sleeve: 1.9, 'board hole': 5.64 },
  ],
  'sleeve below the board': [
    { sleeve: 1.33, 'board hole': 6 },
    { sleeve: 1.35, 'board hole': 6 },
  ],
  'board slips over the boss': [
    { 'boss OD': 6, 'board hole': 5.91 },
    { 'boss OD': 6, 'board hole': 5.89 },
  ],
  'insert held by nothing': [
    { ...INSERTED, 'insert hole': 4.56 },
    { ...INSERTED, 'insert hole': 4.54 },
  ],
  'insert drawn out': [
    { ...INSERTED, hole: 4.51 },
    { ...INSERTED, hole: 4.49 },
  ],
  'insert longer than its hole': [
    { ...INSERTED, 'hole depth': 5.79 },
    { ...INSERTED, 'hole depth': 5.81 },
  ],
  'insert wider than the boss': [
    { ...INSERTED, 'boss OD': 4.59 },
    { ...INSERTED, 'boss OD': 4.61 },
  ],
  'groove through the wall': [{ 'ring depth': 2.51 }, { 'ring depth': 2.49 }],
};

describe('the oracle itself', () => {
  test.for(Object.keys(IMPOSSIBLE) as Impossible[])('knows on which side the limit lies: %s', what => {
    const [cannot, can] = FORBIDDEN[what];
    expect(impossible({ ...SOUND, ...cannot })).toContain(what);
    expect(impossible({ ...SOUND, ...can })).not.toContain(what);
  });

  test('has nothing against joints that can be', () => {
    expect(impossible(SOUND)).toEqual([]);
    expect(BY_THE_BOOK.filter(({ inputs }) => impossible(inputs).length > 0)).toEqual([]);
    expect([...unspoiled(500), ...unspoiledInserts(200)].filter(inputs => impossible(inputs).length > 0)).toEqual([]);
  });
});

describe('the corpus, joint by joint', () => {
  test.for(CORPUS.map((verdict): readonly [string, Verdict] => [verdict.name, verdict]))('%s', ([, { inputs, state, rule, why }]) => {
    expect(statesOf([inputs]), why).toEqual([state]);
    if (rule === undefined) return;
    const rules = rulesOf(inputs);
    expect(rules.find(row => row.rule === rule)?.state, `${rule}: ${why}`).toBe(state);
    expect(inOrder(rules, state), why).toBe(rule);
  });
});

describe('joints that cannot be', () => {
  const JOINTS = 30_000;
  const WITH_INSERT = 6_000;
  const judged = [...wild(JOINTS), ...wildInserts(WITH_INSERT)].map(inputs => ({ inputs, why: impossible(inputs) }));
  const cannot = judged.filter(({ why }) => why.length > 0);
  const can = judged.filter(({ why }) => why.length === 0).slice(0, 1_000);
  /** They come with another: no seat lets the tip through the bottom, and a hole as wide as the boss lets the head through. */
  const NEVER_ALONE: readonly Impossible[] = ['no seat', 'boss falls into the clearance hole'];

  test('are drawn for every reason, and alone', () => {
    expect(SPOILED_BY.length).toBeGreaterThanOrEqual(30);
    expect(cannot.length).toBeGreaterThanOrEqual(JOINTS / 3);
    expect(JOINTS - cannot.length).toBeGreaterThanOrEqual(JOINTS / 4);
    const alone = (what: Impossible): number => cannot.filter(({ why }) => why.length === 1 && why[0] === what).length;
    const reasons = Object.keys(IMPOSSIBLE) as Impossible[];
    expect(reasons.filter(what => !NEVER_ALONE.includes(what) && alone(what) < 50)).toEqual([]);
    expect(NEVER_ALONE.filter(what => !cannot.some(({ why }) => why.includes(what)))).toEqual([]);
  });

  test(
    'never pass, nor are they left to people',
    () => {
      const states = statesOf(cannot.map(({ inputs }) => inputs));
      const letThrough = cannot.filter((_, i) => states[i] !== 'fail' && states[i] !== 'not checked');
      expect(letThrough.length, JSON.stringify(letThrough.slice(0, 5))).toBe(0);
      // refusing everything is no verdict either
      expect(states.filter(state => state === 'fail').length / states.length).toBeGreaterThanOrEqual(0.9);
    },
    SLOW_MS,
  );

  test('and the same joints pass while nothing is spoiled', () => {
    expect(new Set(statesOf(unspoiled(300)))).toEqual(new Set(['pass']));
    expect(new Set(statesOf(unspoiledInserts(100)))).toEqual(new Set(['pass']));
    expect(statesOf(can.map(({ inputs }) => inputs)).filter(state => state === 'pass').length).toBeGreaterThanOrEqual(200);
  });
});

/** Where the state turns, by halves: the last value on the better side and the first on the worse. */
function turn({ inputs, input, better, worse }: Bound): readonly [number, number] {
  let [last, first] = [better.value, worse.value];
  for (let i = 0; i < 60 && Math.abs(first - last) > 1e-11; i += 1) {
    const middle = (last + first) / 2;
    const [state] = statesOf([{ ...inputs, [input]: middle }]);
    if (state === better.state) last = middle;
    else first = middle;
  }
  return [last, first];
}

describe('every numeric bound', () => {
  test('is among those tried', () => {
    const NO_NUMBER: readonly string[] = ['a standard length exists', 'machine thread in plastic', 'planned gap (boss hangs in tension)'];
    expect(RULES.filter(rule => !NO_NUMBER.includes(rule) && !BOUNDS.some(bound => bound.rule === rule))).toEqual([]);
  });

  test.for(
    BOUNDS.map((bound): readonly [string, Bound] => [
      `${bound.rule}, ${bound.better.state} to ${bound.worse.state} over ${bound.input}`,
      bound,
    ]),
  )('%s', { timeout: SLOW_MS }, ([, bound]) => {
    const { rule, inputs, input, better, worse } = bound;
    const [last, first] = turn(bound);
    const at = (value: number): RuleRow | undefined => rulesOf({ ...inputs, [input]: value }).find(row => row.rule === rule);
    const [above, below] = [at(last), at(first)];
    expect([above?.state, below?.state]).toEqual([better.state, worse.state]);
    expect(Math.abs(Number(below?.value) - Number(below?.limit)), `${below?.value} against ${below?.limit}`).toBeLessThanOrEqual(1e-6);
  });
});

describe('the verdict tells joints apart', () => {
  const EVERY = 10;
  let figures: Figures;
  beforeAll(() => {
    figures = populationFigures();
  }, SLOW_MS);

  test('all states that it has are met, and none is the only word', () => {
    const { shares } = figures;
    expect(shares.pass).toBeGreaterThanOrEqual(0.05);
    expect(shares.review).toBeGreaterThanOrEqual(0.1);
    expect(shares.fail).toBeGreaterThanOrEqual(0.1);
    expect(shares['not checked']).toBe(0);
    expect(Math.max(...Object.values(shares))).toBeLessThanOrEqual(0.7);
  });

  test('a rule that speaks in more than half or in none is argued, and only such a rule', () => {
    const odd = figures.rules.filter(({ review, fail }) => review + fail > 0.5 || review + fail === 0).map(({ rule }) => rule);
    expect(odd.filter(rule => !(rule in ARGUED))).toEqual([]);
    expect(Object.keys(ARGUED).filter(rule => !odd.includes(rule))).toEqual([]);
  });

  test('no rule speaks that the contract does not name', () => {
    expect(figures.rules.map(({ rule }) => rule)).toEqual([...RULES]);
  });

  test('an ordinary joint passes, or is told what a moulder would tell', () => {
    const joints = ordinary(1_000);
    const rows = table(joints, ['state', 'fails', 'reviews']);
    const speaking = joints.filter((_, i) => rows[i]?.[0] !== 'pass');
    // one rule at most, and of those the sink of the thread half
    expect(rows.filter(([, fails, reviews]) => Number(fails) + Number(reviews) > 1)).toEqual([]);
    const told = speaking
      .filter((_, i) => i % EVERY === 0)
      .map(joint =>
        rulesOf(joint)
          .filter(({ state }) => state !== 'pass')
          .map(({ rule }) => rule),
      );
    expect(told.length).toBeGreaterThanOrEqual(20);
    expect(new Set(told.flat())).toEqual(new Set(['sink, thread half']));
    const passing = 1 - speaking.length / joints.length;
    expect(passing).toBeGreaterThanOrEqual(0.45);
    expect(rows.filter(([state]) => state === 'fail').length / joints.length).toBeLessThanOrEqual(0.02);
  });
});
