// How many joints of a thousand are good: every size that has limits drawn within them, every rule judged on what was drawn.
import type { State } from '../../core/check/check';
import { sqrt } from '../../core/maths';
import type { Cell, CellRange } from '../../core/kinds';
import { Refused } from '../../core/refuse';
import { draws, HALF_WIDTH_IN_DRAWS } from '../../core/tolerance/draws';
import { type Judge, JUDGES, PLAN_OF_RULES } from '../judge';
import { NO_SLOT } from '../slots';
import { oneVariant } from '../table';
import type { Variant } from '../variant';
import { drawnJoint } from './drawn';

const LIMIT = HALF_WIDTH_IN_DRAWS.normal;

/** Without what is only to be reviewed. */
const FAILING: readonly Judge[] = JUDGES.filter(({ fail, rule }) => fail.length > 0 || rule.failsAs !== undefined).map(judge => ({
  ...judge,
  review: [],
  reviewWhere: NO_SLOT,
}));

const NOT_CHECKED: State = 'not checked';

interface Tally {
  readonly judge: Judge;
  /** It has no value in the nominal joint, and so is not asked of any draw. */
  readonly isUnchecked: boolean;
  met: number;
  valued: number;
  least: number;
  sum: number;
  largest: number;
}

interface Simulated {
  readonly tallies: readonly Tally[];
  readonly allMet: number;
}

/** A draw that lies within its limits, beside what it has in common with others. */
function cutDraw(draw: () => number, common: number, own: number): number {
  for (;;) {
    const z = common + own * draw();
    if (z >= -LIMIT && z <= LIMIT) return z;
  }
}

/** @param share of the variance that the dimensions of one half have in common. */
function simulated(variant: Variant, share: number, samples: number, seed: number): Simulated {
  variant.run(PLAN_OF_RULES);
  const tallies = FAILING.flatMap((judge): Tally[] => {
    const state = variant.stateOf(judge);
    return state === undefined
      ? []
      : [{ judge, isUnchecked: state === NOT_CHECKED, met: 0, valued: 0, least: Infinity, sum: 0, largest: -Infinity }];
  });
  const checked = tallies.filter(({ isUnchecked }) => !isUnchecked);
  const { drawn, put } = drawnJoint(variant);
  const draw = draws(seed, 'normal');
  const [inCommon, alone] = [sqrt(share), sqrt(1 - share)];
  const values = new Float64Array(drawn.length);
  let allMet = 0;
  for (let n = 0; n < samples; n++) {
    const [head, thread] = [cutDraw(draw, 0, 1), cutDraw(draw, 0, 1)];
    for (let i = 0; i < drawn.length; i++) {
      const { madeBy, middle, half } = drawn[i] as (typeof drawn)[number];
      const z = madeBy === 'itself' ? cutDraw(draw, 0, 1) : cutDraw(draw, inCommon * (madeBy === 'head half' ? head : thread), alone);
      values[i] = middle + (half * z) / LIMIT;
    }
    put(values);
    allMet += judged(variant, checked);
  }
  return { tallies, allMet };
}

/** 1 if every rule is met. */
function judged(variant: Variant, tallies: readonly Tally[]): number {
  let met = 1;
  for (const tally of tallies) {
    const state = variant.stateOf(tally.judge);
    // a rule that leaves a joint alone is met by it
    if (state === undefined || state === 'pass') tally.met++;
    else met = 0;
    const value = variant.values[tally.judge.value];
    if (typeof value !== 'number') continue;
    tally.valued++;
    tally.sum += value;
    if (value < tally.least) tally.least = value;
    if (value > tally.largest) tally.largest = value;
  }
  return met;
}

const unchecked = (name: string): Cell[] => [name, NOT_CHECKED, '–', '–', '–', '–'];

const ppm = (met: number, samples: number): number => ((samples - met) / samples) * 1e6;

/** A row a rule that applies and can fail, then all of them: as the joint says, with nothing and with everything in common. */
export function simulationRows(variant: Variant, samples: number, seed: number): Cell[][] {
  const own = variant.outcome('common share');
  if (own instanceof Refused) throw own;
  const share = own as number;
  const bySharing = new Map<number, Simulated>();
  const sharing = (common: number): Simulated => {
    const known = bySharing.get(common) ?? simulated(variant.copy(), common, samples, seed);
    bySharing.set(common, known);
    return known;
  };
  const all = (name: string, common: number): Cell[] => {
    const { allMet, tallies } = sharing(common);
    return tallies.some(({ isUnchecked }) => isUnchecked) ? unchecked(name) : [name, allMet / samples, ppm(allMet, samples), '–', '–', '–'];
  };
  return [
    ...sharing(share).tallies.map(({ judge, isUnchecked, met, valued, least, sum, largest }): Cell[] =>
      isUnchecked
        ? unchecked(judge.rule.name)
        : [judge.rule.name, met / samples, ppm(met, samples), ...(valued === 0 ? ['–', '–', '–'] : [least, sum / valued, largest])],
    ),
    all('all rules', share),
    all('all rules (common share 0)', 0),
    all('all rules (common share 1)', 1),
  ];
}

/** What JOINT.SIMULATE gives below its header. */
export const jointSimulated = (inputs: CellRange, samples: number, seed: number, base: CellRange | undefined): Cell[][] =>
  simulationRows(oneVariant(inputs, base), samples, seed);
