// How much the verdict tells apart: shares of states, and how often each rule speaks.
import type { State } from './corpus';
import type { Inputs } from './oracle';
import { designed } from './population';
import { rulesOf, statesOf } from './product';

export const STATES: readonly State[] = ['pass', 'review', 'fail', 'not checked'];
/** The contract's rules, in its order. */
export const RULES = [
  'head fits the recess',
  'driver goes in',
  'head bears on its seat',
  'head hidden',
  'seat holds',
  'seat under the cone',
  'screw passes the hole',
  'screw passes the board',
  'sleeve passes the board',
  'sleeve carries the clamp',
  'a standard length exists',
  'machine thread in plastic',
  'thread bites at the mouth',
  'pilot not too tight',
  'engagement',
  'screw clears the bottom',
  'floor under the hole',
  'wall under the groove',
  'boss wall carries the thread',
  'insert held',
  'insert not drawn out',
  'board held by the boss',
  'landing ring',
  'sink, thread half',
  'sink, head half',
  'slenderness',
  'core pin',
  'planned gap (boss hangs in tension)',
  'load carried',
  'strip before drive',
  'set torque in its window',
  'head does not sink in',
  'steel beside the boss',
] as const;

export interface RuleFigure {
  readonly rule: string;
  /** Joints of the sample to which it applies. */
  readonly applies: number;
  /** Share of the whole sample in which it is at review, and in which it fails. */
  readonly review: number;
  readonly fail: number;
}

export interface Figures {
  readonly joints: number;
  readonly sampled: number;
  readonly shares: Readonly<Record<State, number>>;
  readonly rules: readonly RuleFigure[];
}

/** States of all joints; rules of every tenth or so, for a call that lists them tries remedies too and takes its time. */
export function figuresOf(joints: readonly Inputs[], every: number): Figures {
  const states = statesOf(joints);
  const sample = joints.filter((_, i) => i % every === 0).map(rulesOf);
  const count = (rule: string, state?: State): number =>
    sample.filter(rows => rows.some(row => row.rule === rule && (state === undefined || row.state === state))).length;
  return {
    joints: joints.length,
    sampled: sample.length,
    shares: Object.fromEntries(STATES.map(state => [state, states.filter(given => given === state).length / joints.length])) as Record<
      State,
      number
    >,
    rules: [...new Set([...RULES, ...sample.flatMap(rows => rows.map(({ rule }) => rule))])].map(rule => ({
      rule,
      applies: count(rule),
      review: count(rule, 'review') / sample.length,
      fail: count(rule, 'fail') / sample.length,
    })),
  };
}

/** Of 3,000 designed joints, and of the rules of every tenth. */
export const populationFigures = (): Figures => figuresOf(designed(3_000), 10);

export interface Argument {
  readonly why: string;
  readonly source: string;
}

const POPULATION = 'how the population is drawn';
const BY_START: Argument = {
  why: 'a joint built from its own start values never comes up because of them, and this population leaves them as they are',
  source: 'rule of the joint',
};
const NOT_ASKED: Argument = {
  why: 'it applies to an input that this population does not give; the corpus has both of its sides',
  source: POPULATION,
};
const BY_LENGTH: Argument = {
  why: 'the default length meets it, or there is no standard length, which is said in its place',
  source: 'rule of the joint; ISO 888, ISO 7049, ASME B18.6.3',
};

/** A rule that speaks in more than half of the designed joints or in none, and why its limit is right all the same. */
export const ARGUED: Readonly<Record<string, Argument>> = {
  'sink, thread half': {
    why: 'outside diameters of 2 to 2.5 d and a boss wall of 0.6 wall contradict each other below a wall of about 1.0 to 1.4 d (2 d with a pilot of 0.8 d is a boss wall of 0.6 d), and half of these joints have a wall of less, half of them behind a show face',
    source: 'efunda, boss design, against 2.0 to 2.4 d of resin guides',
  },
  'head fits the recess': BY_START,
  'seat holds': BY_START,
  'screw passes the hole': { why: 'every hole is d + 0.5 or ISO 273 medium, as a designer takes it', source: POPULATION },
  'screw passes the board': { why: 'every board hole is d + 0.5', source: POPULATION },
  'thread bites at the mouth': BY_START,
  'pilot not too tight': BY_START,
  engagement: BY_LENGTH,
  'screw clears the bottom': BY_LENGTH,
  'floor under the hole': { why: 'the default hole ends at the root, the whole wall under it', source: POPULATION },
  'boss wall carries the thread': BY_START,
  'sink, head half': BY_START,
  'sleeve passes the board': {
    why: 'the board holes of this population leave what the tolerances of sleeve and hole eat',
    source: POPULATION,
  },
  'sleeve carries the clamp': { why: 'the sleeves of this population are higher than the thickest board', source: POPULATION },
  'driver goes in': NOT_ASKED,
  'seat under the cone': NOT_ASKED,
  'wall under the groove': NOT_ASKED,
  'insert held': NOT_ASKED,
  'insert not drawn out': NOT_ASKED,
  'planned gap (boss hangs in tension)': NOT_ASKED,
  'load carried': NOT_ASKED,
  'strip before drive': NOT_ASKED,
  'set torque in its window': NOT_ASKED,
  'head does not sink in': NOT_ASKED,
  'steel beside the boss': NOT_ASKED,
};
