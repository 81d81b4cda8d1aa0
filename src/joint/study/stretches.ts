// How a joint stands over all that one input may be: looked at on a grid, and closer wherever the room of a rule may run out.
import { LIMIT_MARGIN } from '../../core/maths';
import { HOLDS, type Look, type Movable, PASSES, type Watch } from './moved';
import { stepsFrom } from './steps';

/** What is nearer than this, in the unit of the input, is not told apart. */
const NEAR = 5e-7;

/** The room of a rule, where it has a number there, as far as this standing asks for it. */
export const roomAt = ({ toFail, toReview }: Look, rule: number, standing: number): number =>
  (standing === PASSES ? toReview : toFail)[rule] ?? NaN;

const slope = (a: Look | undefined, b: Look | undefined, rule: number, standing: number): number => {
  if (a === undefined || b === undefined) return 0;
  const steep = (roomAt(b, rule, standing) - roomAt(a, rule, standing)) / (b.at - a.at);
  return Number.isFinite(steep) ? steep : 0;
};

/** Two neighbours, and those beside them. */
interface Gap {
  readonly before: Look | undefined;
  readonly from: Look;
  readonly to: Look;
  readonly after: Look | undefined;
}

/**
 * Where the room of a rule may come to nothing inside a gap: it runs on from either side as it came there, however it may jump
 * in between. Undefined where it lasts.
 * @param sign 1 for a room that is there and may run out, −1 for one that is lacking and may come.
 */
function runsOut({ before, from, to, after }: Gap, rule: number, standing: number, sign: 1 | -1): number | undefined {
  const [width, spare] = [to.at - from.at, 2 * LIMIT_MARGIN];
  const [here, there] = [sign * roomAt(from, rule, standing), sign * roomAt(to, rule, standing)];
  const onwards = sign * slope(before, from, rule, standing);
  if (onwards < 0 && here + onwards * width < -spare) return from.at - here / onwards;
  const backwards = sign * slope(to, after, rule, standing);
  if (backwards > 0 && there - backwards * width < -spare) return to.at - there / backwards;
  return undefined;
}

/** Where in a gap something may begin or end that its two sides do not show; undefined where nothing does, NaN for anywhere. */
function suspect(gap: Gap, standing: number): number | undefined {
  const { from, to } = gap;
  const [isGood, isGoodBeyond] = [from.standing >= standing, to.standing >= standing];
  if (isGood && isGoodBeyond) {
    for (let rule = 0; rule < from.toFail.length; rule++) {
      const at = runsOut(gap, rule, standing, 1);
      if (at !== undefined) return at;
    }
    return undefined;
  }
  const rule = isGood ? to.rule : from.rule;
  if (isGood === isGoodBeyond && from.rule === to.rule) return runsOut(gap, rule, standing, -1);
  const [here, there] = [roomAt(from, rule, standing), roomAt(to, rule, standing)];
  return here > 0 === there > 0 ? NaN : from.at + ((to.at - from.at) * here) / (here - there);
}

/** Both sides of where it is suspected and, every other time, the middle: a gap is halved at least. */
function pointsIn({ from, to }: Gap, suspected: number, depth: number): number[] {
  const half = NEAR / 2.5;
  const aimed = depth % 2 === 0 ? [suspected - half, suspected + half].filter(at => at > from.at && at < to.at) : [];
  return aimed.length > 0 ? aimed : [(from.at + to.at) / 2].filter(at => at > from.at && at < to.at);
}

function closer(watch: Watch, gap: Gap, standing: number, depth = 0): Look[] {
  const { before, from, to, after } = gap;
  const suspected = to.at - from.at > NEAR ? suspect(gap, standing) : undefined;
  if (suspected === undefined) return [];
  const inside = pointsIn(gap, suspected, depth).map(at => watch.look(at));
  if (inside.length === 0) return [];
  const all = [before, from, ...inside, to, after];
  return [...inside, to].flatMap((next, i) => {
    const within: Gap = { before: all[i], from: all[i + 1] as Look, to: next, after: all[i + 3] };
    const between = closer(watch, within, standing, depth + 1);
    return next === to ? between : [...between, next];
  });
}

/** With looks between them until whatever of that standing begins or ends is between two that are near. */
export const refined = (watch: Watch, looks: readonly Look[], standing: number): Look[] =>
  looks.flatMap((from, i) => {
    const to = looks[i + 1];
    return to === undefined ? [from] : [from, ...closer(watch, { before: looks[i - 1], from, to, after: looks[i + 2] }, standing)];
  });

/** All that is looked at of one input, in its order. */
export function stretches(watch: Watch, { now, limits }: Movable, size: number): Look[] {
  const numbers = [...stepsFrom(now, size, limits, -1).reverse(), now, ...stepsFrom(now, size, limits, 1)];
  return refined(watch, numbers.map(number => watch.look(number)), HOLDS);
}
