// Whether a standard length will do, and what is wrong with it in the words of the joint's rules.
import type { Compared } from '../compared';
import { atLeast, atMost } from '../maths';

/**
 * State of a standard length: it holds and does not bottom, or it fails.
 * engagement ÷ d; k least engagement ÷ d; hole depth needed, mm; H hole depth, mm.
 * Limits: as SCREW.LENGTH.TABLE has them. Source: as SCREW.LENGTH.TABLE.
 */
export function lengthState(ratio: number, leastRatio: number, holeNeededMm: number, holeDepthMm: number): string {
  return atLeast(ratio, leastRatio) && atMost(holeNeededMm, holeDepthMm) ? 'pass' : 'fail';
}

export const BOTTOMS = 'screw bottoms';
export const LITTLE_ROOM = 'little room under the tip';

export const tooLittleThread = <T>(asked: T, has: T): Compared<T> => ({
  words: ['too little full thread: needs engagement ratio at least ', ', has ', ''],
  asked,
  has,
});

export const tooDeep = <T>(broken: string, needed: T, depth: T): Compared<T> => ({
  words: [`${broken}: needs a hole `, ' mm deep, has ', ' mm'],
  asked: needed,
  has: depth,
});
