// Standard lengths against one joint or several: long enough to hold, short enough not to bottom.
import { atLeast, atMost } from '../maths';
import { type Deviation, type Deviations, plusMinus } from '../read/deviation';
import { Refused } from '../refuse';
import { lengthDeviation, standardLengthsMm } from '../screw/length';
import { type End, pointMm, type Screw } from '../screw/thread';
import { engagementMinMm, engagementRatio, penetrationMaxMm } from './engagement';

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
}

interface Verdict {
  readonly lengthMm: number;
  readonly engagementMinMm: number;
  readonly ratio: number;
  readonly holeNeededMm: number;
  readonly holds: boolean;
  readonly clears: boolean;
}

const two = (x: number): string => String(Math.round(x * 100) / 100);

function judged(demand: Demand, lengthMm: number): Verdict {
  const { screw, layersMm, tolerances, reliefMm, reliefTol, end } = demand;
  const lengthTol = lengthDeviation(screw.size, lengthMm, end);
  const engagement = engagementMinMm(lengthMm, lengthTol, layersMm, tolerances, reliefMm, reliefTol, pointMm(screw.size, end));
  const ratio = engagementRatio(engagement, screw);
  const holeNeededMm = penetrationMaxMm(lengthMm, lengthTol, layersMm, tolerances) + demand.bottomGapMm;
  return {
    lengthMm,
    engagementMinMm: engagement,
    ratio,
    holeNeededMm,
    holds: atLeast(ratio, demand.ratio),
    clears: atMost(holeNeededMm, demand.holeDepthMm),
  };
}

const verdicts = (demand: Demand): Verdict[] => standardLengthsMm(demand.screw.size).map(lengthMm => judged(demand, lengthMm));

function reason({ holds, clears, ratio, holeNeededMm }: Verdict, demand: Demand): string {
  const parts: string[] = [];
  if (!holds) parts.push(`engagement ${two(ratio)} d is below ${two(demand.ratio)} d`);
  if (!clears) parts.push(`bottoms: needs ${two(holeNeededMm)} mm, hole is ${two(demand.holeDepthMm)} mm`);
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
  const all = verdicts(demand);
  const pass = all.find(({ holds, clears }) => holds && clears);
  if (pass !== undefined) return pass.lengthMm;
  const { text } = demand.screw.size;
  const firstToHold = all.find(({ holds }) => holds);
  if (firstToHold === undefined)
    throw new NoLengthPasses(
      `no standard length of ${text} passes: even ${two(all[all.length - 1]?.lengthMm ?? 0)} mm is below ${two(demand.ratio)} d of engagement`,
    );
  throw new NoLengthPasses(
    `no standard length of ${text} passes: ${two(firstToHold.lengthMm)} mm is the first with ${two(demand.ratio)} d, and ${reason(firstToHold, demand)}`,
  );
}

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
  return picked({ screw, layersMm, tolerances, ratio, holeDepthMm, bottomGapMm, reliefMm, reliefTol, end });
}

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
  const demand: Demand = { screw, layersMm, tolerances, ratio, holeDepthMm, bottomGapMm, reliefMm, reliefTol, end };
  return verdicts(demand).map(v => [
    v.lengthMm,
    v.engagementMinMm,
    v.ratio,
    v.holeNeededMm,
    v.holds && v.clears ? 'pass' : 'fail',
    reason(v, demand),
  ]);
}

/** How many of the joints each standard length passes. */
export function commonLengths(
  screw: Screw,
  gripsMm: readonly number[],
  gripTolerances: Deviations,
  holeDepthsMm: readonly number[],
  ratio: number,
  bottomGapMm: number,
  reliefMm: number,
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
    reliefTol: plusMinus(0),
    end,
  }));
  return standardLengthsMm(screw.size).map(lengthMm => [
    lengthMm,
    demands.filter(demand => {
      const { holds, clears } = judged(demand, lengthMm);
      return holds && clears;
    }).length,
    demands.length,
  ]);
}
