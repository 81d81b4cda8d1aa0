// One rigid board over all its screws: the least play after its best shift and turn, and that of many assemblies that are drawn.
import { atMost, sqrt } from '../maths';
import { wrongInput } from '../refuse';
import { draws, HALF_WIDTH_IN_DRAWS } from '../tolerance/draws';
import { pointMm } from '../tolerance/stack-tables';

const at = (list: ArrayLike<number>, i: number): number => list[i] as number;

/** Coordinates of points, mm. */
interface Points {
  readonly x: ArrayLike<number>;
  readonly y: ArrayLike<number>;
}

/** The same, laid out for speed: a board is turned a million times. */
interface Left extends Points {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** The places about their middle, the farthest of them at 1. */
interface Pattern extends Left {
  readonly farthestMm: number;
}

export function patternOf(xMm: readonly number[], yMm: readonly number[]): Pattern {
  const middle = (list: readonly number[]): number => list.reduce((sum, each) => sum + each / list.length, 0);
  const [middleX, middleY] = [middle(xMm), middle(yMm)];
  const farthestMm = sqrt(Math.max(...xMm.map((x, i) => (x - middleX) ** 2 + (at(yMm, i) - middleY) ** 2)));
  return {
    x: Float64Array.from(xMm, x => (x - middleX) / farthestMm),
    y: Float64Array.from(yMm, y => (y - middleY) / farthestMm),
    farthestMm,
  };
}

/** Rounding alone puts no point outside its circle. */
const ROUNDING = 1 + 1e-12;

/** A circle on two points or through three, by their numbers; no third one is −1. */
interface Circle {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
  readonly i: number;
  readonly j: number;
  readonly k: number;
}

/** The smallest circle round points: each that lies outside is on the circle round those before it. */
function circleRound({ x, y }: Left): Circle {
  const count = x.length;
  let cx = x[0] as number;
  let cy = y[0] as number;
  let square = 0;
  let onI = 0;
  let onJ = 0;
  let onK = -1;
  for (let i = 1; i < count; i++) {
    const xi = x[i] as number;
    const yi = y[i] as number;
    if ((xi - cx) * (xi - cx) + (yi - cy) * (yi - cy) <= square * ROUNDING) continue;
    cx = xi;
    cy = yi;
    square = 0;
    for (let j = 0; j < i; j++) {
      const xj = x[j] as number;
      const yj = y[j] as number;
      if ((xj - cx) * (xj - cx) + (yj - cy) * (yj - cy) <= square * ROUNDING) continue;
      const ux = (xj - xi) / 2;
      const uy = (yj - yi) / 2;
      cx = xi + ux;
      cy = yi + uy;
      square = ux * ux + uy * uy;
      onI = i;
      onJ = j;
      onK = -1;
      for (let k = 0; k < j; k++) {
        const xk = x[k] as number;
        const yk = y[k] as number;
        if ((xk - cx) * (xk - cx) + (yk - cy) * (yk - cy) <= square * ROUNDING) continue;
        // from the middle of i and j along the line across, to where k is as far
        const vx = xk - xi;
        const vy = yk - yi;
        const along = (vx * (vx - 2 * ux) + vy * (vy - 2 * uy)) / (2 * (ux * vy - uy * vx));
        cx = xi + ux - along * uy;
        cy = yi + uy + along * ux;
        square = (xi - cx) * (xi - cx) + (yi - cy) * (yi - cy);
        onK = k;
      }
    }
  }
  return { x: cx, y: cy, radius: sqrt(square), i: onI, j: onJ, k: onK };
}

/** How fast the radius grows with the turn, but for a factor: its middle is a mean of the points it rests on, each pulls by its share. */
function growth(pattern: Pattern, left: Left, circle: Circle): number {
  const { i, j, k } = circle;
  if (k < 0) return pull(pattern, left, circle, i) + pull(pattern, left, circle, j);
  const ofI = area(left, circle, j, k);
  const ofJ = area(left, circle, k, i);
  const ofK = area(left, circle, i, j);
  const all = ofI * pull(pattern, left, circle, i) + ofJ * pull(pattern, left, circle, j) + ofK * pull(pattern, left, circle, k);
  return ofI + ofJ + ofK > 0 ? all : -all;
}

const pull = (pattern: Pattern, { x, y }: Left, circle: Circle, n: number): number =>
  ((x[n] as number) - circle.x) * (pattern.y[n] as number) - ((y[n] as number) - circle.y) * (pattern.x[n] as number);

/** Twice the area between the middle and two points. */
const area = ({ x, y }: Left, circle: Circle, p: number, q: number): number =>
  ((x[p] as number) - circle.x) * ((y[q] as number) - circle.y) - ((x[q] as number) - circle.x) * ((y[p] as number) - circle.y);

/** Leaves 1e-11 of the play without a turn. */
const STEPS = 40;

interface BestPlace {
  readonly playMm: number;
  /** What the turn moves the farthest screw by. */
  readonly turnMm: number;
}

/**
 * The smallest largest distance of a hole from its boss, twice, over shift and turn. The best shift is the middle of a circle; over the
 * turn its radius is convex with a slope of at most 1, and beyond four times the radius without a turn it is larger.
 */
export function leastPlay(pattern: Pattern, offMm: Left, left: Left): BestPlace {
  const atTurn = (turnMm: number): Circle => {
    for (let i = 0; i < left.x.length; i++) {
      left.x[i] = (offMm.x[i] as number) + turnMm * (pattern.y[i] as number);
      left.y[i] = (offMm.y[i] as number) - turnMm * (pattern.x[i] as number);
    }
    return circleRound(left);
  };
  let high = 4 * atTurn(0).radius;
  let low = -high;
  for (let step = 0; step < STEPS; step++) {
    const middle = (low + high) / 2;
    if (growth(pattern, left, atTurn(middle)) > 0) high = middle;
    else low = middle;
  }
  const turnMm = (low + high) / 2;
  return { playMm: 2 * atTurn(turnMm).radius, turnMm };
}

/** Draws in a plane, cut at a circle of as many standard deviations as half a tolerance has. */
function inCircle(draw: () => number): () => readonly [x: number, y: number] {
  return () => {
    let [x, y] = [draw(), draw()];
    while (x * x + y * y > HALF_WIDTH_IN_DRAWS.normal ** 2) [x, y] = [draw(), draw()];
    return [x, y];
  };
}

/** The two screws that are farthest from each other’s place. */
function worstPair({ x, y }: Points): readonly [i: number, j: number] {
  let [worst, most]: [readonly [number, number], number] = [[0, 1], -1];
  for (let i = 0; i < x.length; i++)
    for (let j = i + 1; j < x.length; j++) {
      const square = (at(x, j) - at(x, i)) ** 2 + (at(y, j) - at(y, i)) ** 2;
      if (square > most) [worst, most] = [[i, j], square];
    }
  return worst;
}

/** So many that a call stays within seconds. */
const MOST_SCREWS_DRAWN = 2_000_000;
const HIGH_POINT = 0.9973;

/**
 * One board over all screws, drawn many times: share that goes together, least play for 99.73 %, worst pair, error of the small turn, mm.
 * x_i places along x, mm; y_i places along y, mm; T1 zone of the bosses, a diameter, mm; T2 zone of the holes, a diameter, mm;
 * s play of a hole on diameter, mm; N samples; seed of the draws.
 * PATTERN.FIT accepts T1, T2, s above 0 mm; N at least 1000 and at most 1000000; seed at least 1 and at most 2147483647; two screws in one
 * place or fewer than two are refused. Source: least possible largest distance over all shifts and small turns (derived); generator
 * xoroshiro128+ of 2018, 32 bits a draw (compared with published values); polar method for normal draws, SIAM Review 6, 1964 (from memory).
 */
export function patternFit(
  xMm: readonly number[],
  yMm: readonly number[],
  zoneBossMm: number,
  zoneHoleMm: number,
  playMm: number,
  samples: number,
  seed: number,
): (string | number)[][] {
  const count = xMm.length;
  if (count < 2) throw wrongInput('x: give at least 2 screws', 'x');
  const places = xMm.map((x, i) => `${x} ${at(yMm, i)}`);
  const twin = places.findIndex((place, i) => places.indexOf(place) < i);
  if (twin >= 0) throw wrongInput(`x and y: rows ${places.indexOf(places[twin] as string) + 1} and ${twin + 1} are the same place`, 'y');
  if (samples * count > MOST_SCREWS_DRAWN)
    throw wrongInput(`samples × screws is ${samples * count}; at most ${MOST_SCREWS_DRAWN} are drawn`, 'samples');
  const pattern = patternOf(xMm, yMm);
  if (pattern.farthestMm === Infinity) throw wrongInput('x and y: no finite distances', 'y');
  const draw = inCircle(draws(seed, 'normal'));
  const [bossMm, holeMm] = [zoneBossMm, zoneHoleMm].map(zone => zone / 2 / HALF_WIDTH_IN_DRAWS.normal) as [number, number];
  const points = (): Left => ({ x: new Float64Array(count), y: new Float64Array(count) });
  const [offMm, left] = [points(), points()];
  const playsMm = new Float64Array(samples);
  const worst = new Map<string, number>();
  let turnMm = 0;
  for (let sample = 0; sample < samples; sample++) {
    for (let i = 0; i < count; i++) {
      const [boss, hole] = [draw(), draw()];
      offMm.x[i] = bossMm * boss[0] - holeMm * hole[0];
      offMm.y[i] = bossMm * boss[1] - holeMm * hole[1];
    }
    const fit = leastPlay(pattern, offMm, left);
    playsMm[sample] = fit.playMm;
    turnMm = Math.max(turnMm, Math.abs(fit.turnMm));
    const [i, j] = worstPair(left);
    const pair = `${i + 1} and ${j + 1}`;
    worst.set(pair, (worst.get(pair) ?? 0) + 1);
  }
  const [pair, times] = [...worst].reduce((most, each) => (each[1] > most[1] ? each : most));
  return [
    ['share that goes together', playsMm.filter(each => atMost(each, playMm)).length / samples, '–'],
    ['least play with which 99.73 % go together', pointMm(playsMm.sort(), HIGH_POINT), 'mm'],
    ['worst pair', pair, '–'],
    ['share in which it is the worst', times / samples, '–'],
    // |exp(iφ) − 1 − iφ| ≤ φ²/2 on either side of a hole
    ['error of the small turn, at most', turnMm ** 2 / pattern.farthestMm, 'mm'],
  ];
}
