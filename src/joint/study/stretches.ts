// How a joint stands over all that one input may be: looked at on a grid, and closer wherever the room of a rule may run out.
import { LIMIT_MARGIN } from '../../core/maths';
import { FAILS, type StudyLook, type Movable, PASSES, type Watch } from './moved';
import { stepsFrom, type StudySizes } from './steps';

/** What is nearer than this, in the unit of the input, is not told apart. */
const NEAR = 5e-7;

type Room = 'toFail' | 'toReview';

/** The room of a rule as far as this standing asks for it; NaN where it has no number there. */
export const roomAt = (look: StudyLook, rule: number, standing: number): number =>
  (standing === PASSES ? look.toReview : look.toFail)[rule] ?? NaN;

/** Two neighbours, and those beside them. */
interface Gap {
  readonly before: StudyLook | undefined;
  readonly from: StudyLook;
  readonly to: StudyLook;
  readonly after: StudyLook | undefined;
}

function slope(a: StudyLook | undefined, b: StudyLook | undefined, rule: number, room: Room): number {
  if (a === undefined || b === undefined) return 0;
  const steep = ((b[room][rule] as number) - (a[room][rule] as number)) / (b.at - a.at);
  return Number.isFinite(steep) ? steep : 0;
}

/** What is not told apart from no room. */
const NONE = 2 * LIMIT_MARGIN;

/**
 * Where the room of a rule may come to nothing inside a gap: it runs on from either side as it came there, however it may jump
 * in between. Undefined where it lasts.
 * @param sign 1 for a room that is there and may run out, −1 for one that is lacking and may come.
 */
function runsOut({ before, from, to, after }: Gap, rule: number, room: Room, sign: 1 | -1): number | undefined {
  const width = to.at - from.at;
  const [here, there] = [sign * (from[room][rule] as number), sign * (to[room][rule] as number)];
  const onwards = sign * slope(before, from, rule, room);
  if (here > -NONE && onwards < 0 && here + onwards * width < -NONE) return from.at - here / onwards;
  const backwards = sign * slope(to, after, rule, room);
  if (there > -NONE && backwards > 0 && there - backwards * width < -NONE) return to.at - there / backwards;
  return undefined;
}

/** Where a gap may hide what its two sides do not show; undefined where it hides nothing, NaN for anywhere. */
function suspect(gap: Gap): number | undefined {
  const { from, to } = gap;
  if (from.standing !== to.standing) return crossing(gap);
  if (from.standing !== FAILS)
    for (let rule = 0; rule < from.toFail.length; rule++) {
      const at = runsOut(gap, rule, 'toFail', 1) ?? runsOut(gap, rule, 'toReview', 1);
      if (at !== undefined) return at;
    }
  if (from.standing === PASSES) return undefined;
  return from.rule === to.rule ? runsOut(gap, from.rule, from.standing === FAILS ? 'toFail' : 'toReview', -1) : crossing(gap);
}

/** Where the rule that tells two looks apart comes to no room, on a straight line; NaN where that is not between them. */
function crossing({ from, to }: Gap): number {
  const isAlike = from.standing === to.standing;
  // of two rules that stop, the first is looked at on both sides
  const rule = isAlike ? Math.min(from.rule, to.rule) : (from.standing < to.standing ? from : to).rule;
  const standing = isAlike ? from.standing + 1 : Math.max(from.standing, to.standing);
  const [here, there] = [roomAt(from, rule, standing), roomAt(to, rule, standing)];
  return here > 0 === there > 0 ? NaN : from.at + ((to.at - from.at) * here) / (here - there);
}

/** Both sides of where it is suspected and, every other time, the middle: a gap is halved at least. */
function pointsIn({ from, to }: Gap, suspected: number, depth: number): number[] {
  const half = NEAR / 2.5;
  const aimed = depth % 2 === 0 ? [suspected - half, suspected + half].filter(at => at > from.at && at < to.at) : [];
  return aimed.length > 0 ? aimed : [(from.at + to.at) / 2].filter(at => at > from.at && at < to.at);
}

function closer(watch: Watch, gap: Gap, depth = 0): StudyLook[] {
  const { before, from, to, after } = gap;
  const suspected = to.at - from.at > NEAR ? suspect(gap) : undefined;
  if (suspected === undefined) return [];
  const inside = pointsIn(gap, suspected, depth).map(at => watch.look(at));
  const all = [before, from, ...inside, to, after];
  return inside.length === 0
    ? []
    : [...inside, to].flatMap((next, i) => {
        const between = closer(watch, { before: all[i], from: all[i + 1] as StudyLook, to: next, after: all[i + 3] }, depth + 1);
        return next === to ? between : [...between, next];
      });
}

/**
 * All that is looked at of one input, in its order: whatever begins or ends is between two looks that are near.
 * @param also numbers at which it may stand by itself.
 */
export function stretches(watch: Watch, { now, limits }: Movable, sizes: StudySizes, also: readonly number[]): StudyLook[] {
  const grid = [...stepsFrom(now, sizes, limits, -1), now, ...stepsFrom(now, sizes, limits, 1)];
  const [least, most] = [Math.min(...grid), Math.max(...grid)];
  const numbers = new Set([...grid, ...also.filter(number => number > least && number < most)]);
  const looks = [...numbers].sort((a, b) => a - b).map(number => watch.look(number));
  return looks.flatMap((from, i) => {
    const to = looks[i + 1];
    return to === undefined ? [from] : [from, ...closer(watch, { before: looks[i - 1], from, to, after: looks[i + 2] })];
  });
}
