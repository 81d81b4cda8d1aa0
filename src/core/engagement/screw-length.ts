// Standard lengths against one joint or several: long enough to hold, short enough not to bottom.
import { comparedText } from '../compared';
import { rounded } from '../decimal';
import { holeDepthNeededMm } from '../hole/hole';
import { atLeast, atMost, min } from '../maths';
import type { Deviation, Deviations } from '../read/deviation';
import { Refused } from '../refuse';
import { lengthDeviation, standardLengthsMm } from '../screw/length';
import { type End, pointMm, type Screw } from '../screw/thread';
import { engagementMinMm, engagementRatio, penetrationMaxMm } from './engagement';
import { BOTTOMS, lengthState, LITTLE_ROOM, tooDeep, tooLittleThread } from './length-words';

interface Demand {
  readonly screw: Screw;
  readonly layersMm: readonly number[];
  readonly tolerances: Deviations;
  readonly ratio: number;
  readonly holeDepthMm: number;
  readonly bottomGapMm: number;
  readonly reliefMm: number;
  readonly reliefTol: Deviation;
  readonly end: End;
  readonly pointMm: number;
  /** The user's own in place of that of the table. */
  readonly lengthTol?: Deviation | undefined;
  /** An insert holds no more than its own length. */
  readonly mostMm?: number | undefined;
}

interface Verdict {
  readonly lengthMm: number;
  readonly engagementMinMm: number;
  readonly ratio: number;
  readonly reachMm: number;
  readonly holeNeededMm: number;
  readonly holds: boolean;
  readonly clears: boolean;
}

const NO_TOLERANCE: Deviation = { upperMm: 0, lowerMm: 0 };

/** What the tables hold of one standard length. */
type Choice = Readonly<{ lengthMm: number; lengthTol: Deviation }>;

const choicesOf = new Map<string, readonly Choice[]>();

/** The standard lengths of a screw with this end, read once; those of an own screw each time. */
function choices({ size }: Screw, end: End): readonly Choice[] {
  const key = `${size.text} ${end}`;
  const known = size.own === undefined ? choicesOf.get(key) : undefined;
  if (known !== undefined) return known;
  const read = standardLengthsMm(size).map(lengthMm => ({ lengthMm, lengthTol: lengthDeviation(size, lengthMm, end) }));
  if (size.own === undefined) choicesOf.set(key, read);
  return read;
}

function judged(demand: Demand, { lengthMm, lengthTol: heldTol }: Choice): Verdict {
  const { screw, layersMm, tolerances, reliefMm, reliefTol, lengthTol = heldTol, mostMm = Infinity } = demand;
  const engagement = min(engagementMinMm(lengthMm, lengthTol, layersMm, tolerances, reliefMm, reliefTol, demand.pointMm), mostMm);
  const ratio = engagementRatio(engagement, screw);
  const reachMm = penetrationMaxMm(lengthMm, lengthTol, layersMm, tolerances);
  const holeNeededMm = holeDepthNeededMm(reachMm, demand.bottomGapMm, NO_TOLERANCE);
  return {
    lengthMm,
    engagementMinMm: engagement,
    ratio,
    reachMm,
    holeNeededMm,
    holds: atLeast(ratio, demand.ratio),
    clears: atMost(holeNeededMm, demand.holeDepthMm),
  };
}

const passes = ({ holds, clears }: Verdict): boolean => holds && clears;

const verdicts = (demand: Demand): Verdict[] => choices(demand.screw, demand.end).map(choice => judged(demand, choice));

function reason({ holds, clears, ratio, reachMm, holeNeededMm }: Verdict, demand: Demand): string {
  const parts: string[] = [];
  if (!holds) parts.push(comparedText(tooLittleThread(demand.ratio, ratio)));
  if (!clears)
    parts.push(comparedText(tooDeep(atMost(reachMm, demand.holeDepthMm) ? LITTLE_ROOM : BOTTOMS, holeNeededMm, demand.holeDepthMm)));
  return parts.length === 0 ? '–' : parts.join('; ');
}

/** No standard length passes: an answer about the joint, not a slip in its inputs. */
export class NoLengthPasses extends Refused {
  constructor(message: string) {
    super('#N/A', message);
  }
}

/** Shortest standard length that holds and does not bottom. */
function picked(demand: Demand): number {
  const pass = choices(demand.screw, demand.end).find(choice => passes(judged(demand, choice)));
  if (pass !== undefined) return pass.lengthMm;
  const all = verdicts(demand);
  const firstToHold = all.find(({ holds }) => holds);
  const shown = firstToHold ?? (all[all.length - 1] as Verdict);
  const which = firstToHold === undefined ? 'the longest' : 'the first that holds';
  throw new NoLengthPasses(
    `no standard length of ${demand.screw.size.text} passes: with ${rounded(shown.lengthMm)} mm, ${which}, ${reason(shown, demand)}`,
  );
}

/**
 * Shortest standard length L that holds and does not bottom, mm.
 * size of the screw; s_i layers, mm; t_i their tolerances, mm; k least engagement ÷ d; H hole depth, mm; g gap under the tip, mm;
 * c relief, mm; t_c its tolerance, mm; end cone or flat.
 * SCREW.LENGTH.PICK accepts H above 0 mm; k above 0; s_i, g, c at least 0 mm; lists of equal counts;
 * a negative least grip and a joint that no standard length passes are refused.
 * Source: plane geometry (derived).
 */
export function pickedLengthMm(
  screw: Screw,
  layersMm: readonly number[],
  tolerances: Deviations,
  ratio: number,
  holeDepthMm: number,
  bottomGapMm: number,
  reliefMm: number,
  reliefTol: Deviation,
  end: End,
): number {
  return pickedJointLengthMm(
    screw,
    layersMm,
    tolerances,
    ratio,
    holeDepthMm,
    bottomGapMm,
    reliefMm,
    reliefTol,
    end,
    pointMm(screw.size, end),
    undefined,
    undefined,
  );
}

/** The same with a point of the user's own, with a tolerance where one is given, and the most that an insert holds. */
export function pickedJointLengthMm(
  screw: Screw,
  layersMm: readonly number[],
  tolerances: Deviations,
  ratio: number,
  holeDepthMm: number,
  bottomGapMm: number,
  reliefMm: number,
  reliefTol: Deviation,
  end: End,
  pointLengthMm: number,
  lengthTol: Deviation | undefined,
  mostMm: number | undefined,
): number {
  return picked({
    screw,
    layersMm,
    tolerances,
    ratio,
    holeDepthMm,
    bottomGapMm,
    reliefMm,
    reliefTol,
    end,
    pointMm: pointLengthMm,
    lengthTol,
    mostMm,
  });
}

/**
 * Each standard length, mm, with its worst engagement, mm and ÷ d, the hole depth it needs, mm, state and reason.
 * size of the screw; s_i layers, mm; t_i their tolerances, mm; k least engagement ÷ d; H hole depth, mm; g gap under the tip, mm;
 * c relief, mm; t_c its tolerance, mm; end cone or flat.
 * SCREW.LENGTH.TABLE accepts H above 0 mm; k above 0; s_i, g, c at least 0 mm; lists of equal counts; a negative least grip is refused.
 * Source: plane geometry (derived).
 */
export function lengthTable(
  screw: Screw,
  layersMm: readonly number[],
  tolerances: Deviations,
  ratio: number,
  holeDepthMm: number,
  bottomGapMm: number,
  reliefMm: number,
  reliefTol: Deviation,
  end: End,
): (number | string)[][] {
  const demand: Demand = {
    screw,
    layersMm,
    tolerances,
    ratio,
    holeDepthMm,
    bottomGapMm,
    reliefMm,
    reliefTol,
    end,
    pointMm: pointMm(screw.size, end),
  };
  return verdicts(demand).map(v => [
    v.lengthMm,
    v.engagementMinMm,
    v.ratio,
    v.holeNeededMm,
    lengthState(v.ratio, demand.ratio, v.holeNeededMm, demand.holeDepthMm),
    reason(v, demand),
  ]);
}

/**
 * How many of the joints each standard length, mm, passes.
 * size of the screw; G_i grips, mm; t_i their tolerances, mm; H_i hole depths, mm; k least engagement ÷ d; g gap under the tip, mm;
 * c relief, mm; t_c its tolerance, mm; end cone or flat.
 * SCREW.LENGTH.COMMON accepts H_i above 0 mm; k above 0; G_i, g, c at least 0 mm; lists of equal counts.
 * Source: plane geometry (derived).
 */
export function commonLengths(
  screw: Screw,
  gripsMm: readonly number[],
  gripTolerances: Deviations,
  holeDepthsMm: readonly number[],
  ratio: number,
  bottomGapMm: number,
  reliefMm: number,
  reliefTol: Deviation,
  end: End,
): number[][] {
  const demands = gripsMm.map((gripMm, i): Demand => ({
    screw,
    layersMm: [gripMm],
    tolerances: { upperMm: [gripTolerances.upperMm[i] ?? 0], lowerMm: [gripTolerances.lowerMm[i] ?? 0] },
    ratio,
    holeDepthMm: holeDepthsMm[i] ?? 0,
    bottomGapMm,
    reliefMm,
    reliefTol,
    end,
    pointMm: pointMm(screw.size, end),
  }));
  return choices(screw, end).map(choice => [
    choice.lengthMm,
    demands.filter(demand => passes(judged(demand, choice))).length,
    demands.length,
  ]);
}
