// Whether a joint can exist at all: plane geometry of screw, hole, boss, board and recess, and nothing of practice.
// It shares no line with the product: own tables, own reading of the inputs, own defaults as the contract words them.
// Worst case throughout, for a batch of which one joint cannot be put together is no design; the closing of the pin hole is judged nominal.

export type Inputs = Readonly<Record<string, string | number>>;

export interface Screw {
  readonly nominalMm: number;
  readonly majorMaxMm: number;
  readonly majorMinMm: number;
  readonly rootMaxMm: number;
  /** Length without full thread, by end. */
  readonly pointMm?: Readonly<Record<'cone' | 'flat', number>>;
  readonly headMaxMm: number;
  readonly headMinMm: number;
  readonly headHeightMaxMm: number;
  readonly kind: 'ST' | 'M' | '#' | 'own';
  /** Of an own screw. */
  readonly lengthHalfMm?: number;
}

const st = (
  [majorMaxMm, majorMinMm, rootMaxMm]: readonly [number, number, number],
  [cone, flat]: readonly [number, number],
  [headMaxMm, headMinMm, headHeightMaxMm]: readonly [number, number, number],
): Screw => ({
  kind: 'ST',
  nominalMm: majorMaxMm,
  majorMaxMm,
  majorMinMm,
  rootMaxMm,
  pointMm: { cone, flat },
  headMaxMm,
  headMinMm,
  headHeightMaxMm,
});

const m = (
  nominalMm: number,
  pitchMm: number,
  [majorMaxMm, majorMinMm, rootMaxMm]: readonly [number, number, number],
  [headMaxMm, headMinMm, headHeightMaxMm]: readonly [number, number, number],
): Screw => ({
  kind: 'M',
  nominalMm,
  majorMaxMm,
  majorMinMm,
  rootMaxMm,
  pointMm: { cone: 2 * pitchMm, flat: 2 * pitchMm },
  headMaxMm,
  headMinMm,
  headHeightMaxMm,
});

const INCH_MM = 25.4;
/** In inches, as ASME B18.6.3 prints them: major max and min, minor max; point taper max of type B; pan head max, min, height max. */
const inch = (
  [majorMaxIn, majorMinIn, rootMaxIn]: readonly [number, number, number],
  pointIn: number | undefined,
  [headMaxIn, headMinIn, headHeightMaxIn]: readonly [number, number, number],
): Screw => ({
  kind: '#',
  nominalMm: majorMaxIn * INCH_MM,
  majorMaxMm: majorMaxIn * INCH_MM,
  majorMinMm: majorMinIn * INCH_MM,
  rootMaxMm: rootMaxIn * INCH_MM,
  ...(pointIn === undefined ? {} : { pointMm: { cone: pointIn * INCH_MM, flat: pointIn * INCH_MM } }),
  headMaxMm: headMaxIn * INCH_MM,
  headMinMm: headMinIn * INCH_MM,
  headHeightMaxMm: headHeightMaxIn * INCH_MM,
});

/** Threads: ISO 1478, ISO 965-2 (major 6g) with ASME B1.13M (minor 6g), ASME B18.6.3. Pan heads: ISO 7049, ISO 7045, ASME B18.6.3. */
export const SCREWS: Readonly<Record<string, Screw>> = {
  'ST2.2': st([2.24, 2.1, 1.63], [2, 1.6], [4, 3.7, 1.6]),
  'ST2.9': st([2.9, 2.76, 2.18], [2.6, 2.1], [5.6, 5.3, 2.4]),
  'ST3.5': st([3.53, 3.35, 2.64], [3.2, 2.5], [7, 6.64, 2.6]),
  'ST4.2': st([4.22, 4.04, 3.1], [3.7, 2.8], [8, 7.64, 3.1]),
  'ST4.8': st([4.8, 4.62, 3.58], [4.3, 3.2], [9.5, 9.14, 3.7]),
  M2: m(2, 0.4, [1.981, 1.886, 1.548], [4, 3.7, 1.6]),
  'M2.5': m(2.5, 0.45, [2.48, 2.38, 1.993], [5, 4.7, 2.1]),
  M3: m(3, 0.5, [2.98, 2.874, 2.438], [5.6, 5.3, 2.4]),
  'M3.5': m(3.5, 0.6, [3.479, 3.354, 2.829], [7, 6.64, 2.6]),
  M4: m(4, 0.7, [3.978, 3.838, 3.22], [8, 7.64, 3.1]),
  '#2 B': inch([0.088, 0.082, 0.064], 0.062, [0.167, 0.155, 0.062]),
  '#3 B': inch([0.101, 0.095, 0.075], 0.071, [0.193, 0.18, 0.071]),
  '#4 B': inch([0.114, 0.108, 0.086], 0.083, [0.219, 0.205, 0.08]),
  '#5 B': inch([0.13, 0.123, 0.094], 0.1, [0.245, 0.231, 0.089]),
  '#6 B': inch([0.139, 0.132, 0.104], 0.1, [0.27, 0.256, 0.097]),
  '#8 B': inch([0.166, 0.159, 0.122], 0.111, [0.322, 0.306, 0.115]),
  '#4 AB': inch([0.114, 0.108, 0.086], undefined, [0.219, 0.205, 0.08]),
  '#6 AB': inch([0.139, 0.132, 0.104], undefined, [0.27, 0.256, 0.097]),
};

/** ISO 273 medium, the default of `hole`. */
const MEDIUM_MM: Readonly<Record<string, number>> = { M2: 2.4, 'M2.5': 2.9, M3: 3.4, 'M3.5': 3.9, M4: 4.5 };

/** Start values of moulding practice: thread share, outside diameter ÷ d. */
export const START: Readonly<Record<string, { readonly threadShare: number; readonly odRatio: number }>> = {
  ABS: { threadShare: 0.8, odRatio: 2.2 },
  PC: { threadShare: 0.6, odRatio: 2.5 },
  'PC+ABS': { threadShare: 0.75, odRatio: 2.3 },
  PP: { threadShare: 0.95, odRatio: 2 },
  'PE-HD': { threadShare: 0.95, odRatio: 2 },
  PS: { threadShare: 0.75, odRatio: 2.3 },
  PMMA: { threadShare: 0.6, odRatio: 2.5 },
  POM: { threadShare: 0.9, odRatio: 2 },
  PA6: { threadShare: 0.9, odRatio: 2 },
  PA66: { threadShare: 0.9, odRatio: 2 },
  PBT: { threadShare: 0.9, odRatio: 2 },
  'PA66-GF30': { threadShare: 0.7, odRatio: 2 },
  'PBT-GF30': { threadShare: 0.7, odRatio: 2 },
};

export interface Deviations {
  readonly lower: number;
  readonly upper: number;
}

/** Length limits: tapping screws of ISO 7049 and ASME B18.6.3, machine screws js15 (ISO 4759-1). */
export function lengthLimits({ kind, lengthHalfMm }: Screw, lengthMm: number, end: 'cone' | 'flat'): Deviations {
  if (lengthHalfMm !== undefined) return even(lengthHalfMm);
  if (kind === 'M')
    return even(lengthMm <= 3 ? 0.2 : lengthMm <= 6 ? 0.24 : lengthMm <= 10 ? 0.29 : lengthMm <= 18 ? 0.35 : lengthMm <= 30 ? 0.42 : 0.5);
  if (kind === '#') return even((lengthMm <= 19.05 ? 0.03 : lengthMm <= 38.1 ? 0.05 : 0.06) * INCH_MM);
  const half = lengthMm <= 19 ? 0.8 : lengthMm <= 38 ? 1.3 : 1.5;
  return end === 'flat' ? { lower: -half, upper: 0 } : even(half);
}

/** A screw typed as a card. */
function ownScrew(card: string): Screw | undefined {
  if (!card.startsWith('major ')) return undefined;
  const pair = (name: string): readonly [number, number] => {
    const [, max, min] = new RegExp(`(?:^|; )${name} ([\\d.]+)(?:/([\\d.]+))?`).exec(card) ?? [];
    return [Number(max), Number(min ?? max)];
  };
  const [majorMaxMm, majorMinMm] = pair('major');
  const [headMaxMm, headMinMm] = pair('head diameter');
  const [point] = pair('point');
  return {
    kind: 'own',
    nominalMm: majorMaxMm,
    majorMaxMm,
    majorMinMm,
    rootMaxMm: pair('root')[0],
    pointMm: { cone: point, flat: point },
    headMaxMm,
    headMinMm,
    headHeightMaxMm: pair('head height')[0],
    lengthHalfMm: pair('length tolerance')[0],
  };
}

const even = (half: number): Deviations => ({ lower: -half, upper: half });
const tan = (deg: number): number => Math.tan((deg * Math.PI) / 180);

const isBlank = (value: unknown): boolean => value === undefined || value === '' || value === 'default';
const leading = (text: string): number => Number.parseFloat(text.replace(',', '.'));

/** A joint as it is typed: a bare number, a number with its unit, `+a/-b` for a tolerance. */
export class Typed {
  constructor(private readonly inputs: Inputs) {}

  has(name: string): boolean {
    return !isBlank(this.inputs[name]);
  }

  word(name: string, otherwise: string): string {
    return this.has(name) ? String(this.inputs[name]) : otherwise;
  }

  number(name: string, otherwise: number): number {
    const value = this.inputs[name];
    return typeof value === 'number' ? value : typeof value === 'string' && this.has(name) ? leading(value) : otherwise;
  }

  limits(name: string, otherwise: number): Deviations {
    const value = this.inputs[name];
    const parts = typeof value === 'string' ? /^\+?([\d.]+)\s*\/\s*-?([\d.]+)/.exec(value) : null;
    return parts === null ? even(this.number(name, otherwise)) : { upper: Number(parts[1]), lower: -Number(parts[2]) };
  }
}

export const IMPOSSIBLE = {
  'hole out of the outer face': 'the core pin comes out of the outer face',
  'screw wider than the hole': 'the screw does not pass its clearance hole',
  'screw wider than the board hole': 'the screw does not pass the board',
  'head falls through': 'the head falls through what it should bear on',
  'head wider than the recess': 'the head does not go into its recess',
  'head stands out': 'the head stands out of the face that should hide it',
  'no seat': 'nothing is left between head and board plane',
  'cone through the seat': 'the countersink is deeper than the seat is thick',
  'recess breaks out': 'the recess is wider than the post around it',
  'thread touches nothing': 'the thread is thinner than the hole over its whole depth',
  'screw does not reach': 'no full thread is in the boss',
  'pin hole closed': 'the drafted hole closes before it is deep enough',
  'hole wider than the boss': 'the hole, or its relief, is as wide as the boss',
  'boss falls into the clearance hole': 'the boss is no wider than the hole above it',
  'tip beyond the bottom': 'the tip meets the bottom of its hole before the joint is closed',
  'sleeve wider than the board hole': 'the sleeve does not enter the board',
  'sleeve below the board': 'the sleeve does not come through the board',
  'board slips over the boss': 'the board hole is as wide as the boss',
  'insert held by nothing': 'the hole is as wide as the insert',
  'insert drawn out': 'the clearance hole is wider than the insert',
  'insert longer than its hole': 'the insert does not go into its hole',
  'insert wider than the boss': 'the insert is as wide as the boss',
  'groove through the wall': 'the groove round the boss is as deep as the wall',
} as const;
export type Impossible = keyof typeof IMPOSSIBLE;

/** Two sizes that are equal as decimals differ by the last digits of the machine: those are not judged. */
const SURELY_MM = 1e-6;

const isCountersunk = (head: string): boolean => /countersunk|flat|oval|7046|7050|10642/.test(head);

/** Why this joint cannot exist; empty where plane geometry has nothing against it. What is not given and has no plain default is not judged. */
export function impossible(inputs: Inputs): readonly Impossible[] {
  const typed = new Typed(inputs);
  const size = typed.word('screw', '');
  const screw = SCREWS[size] ?? ownScrew(size);
  if (screw === undefined) throw new Error(`the oracle holds no ${size}`);
  const end = typed.word('end', 'cone') === 'flat' ? 'flat' : 'cone';
  const start = START[typed.word('material', '')];
  const wall = typed.number('wall', NaN);
  const headWall = typed.number('head wall', wall);
  const headMax = typed.number('head diameter', screw.headMaxMm);
  const headMin = typed.has('head diameter min')
    ? typed.number('head diameter min', NaN)
    : typed.has('head diameter')
      ? headMax
      : screw.headMinMm;
  const countersunk = isCountersunk(typed.word('head', 'pan'));

  const seat = typed.number('seat', Math.max(0.8 * headWall, 0.6 * screw.nominalMm, 1.5));
  const onBoard = typed.has('seat') && seat === 0;
  const seatLimits = onBoard ? even(0) : typed.limits('seat tolerance', 0.1);
  const board = typed.number('board', 0);
  const boardLimits = board === 0 ? even(0) : typed.limits('board tolerance', Math.max(0.1 * board, 0.08));
  const plane = typed.number('board plane', NaN);
  const planeLimits = typed.limits('board plane tolerance', 0.1);
  const sleeve = typed.number('sleeve', 0);
  const sleeveLimits = sleeve === 0 ? even(0) : typed.limits('sleeve tolerance', 0.1);
  const gap = typed.number('gap', 0);
  const gapLimits = gap === 0 ? even(0) : typed.limits('gap tolerance', 0.1);

  const hasBoardHole = typed.has('board hole');
  const boardHole = typed.number('board hole', NaN);
  const boardHoleLimits = typed.limits('board hole tolerance', 0.1);
  /** Where the head lies on the board and there is no sleeve, the board's hole is the clearance hole. */
  const readsBoardHole = onBoard && sleeve === 0;
  const hole = readsBoardHole ? boardHole : typed.number('hole', MEDIUM_MM[size] ?? NaN);
  const holeLimits = readsBoardHole ? boardHoleLimits : typed.limits('hole tolerance', 0.1);
  const holeMin = hole + holeLimits.lower;
  const holeMax = hole + holeLimits.upper;

  const allowance = typed.number('allowance', holeMax - screw.majorMinMm + 0.2);
  const recess = headMax + allowance;
  const recessDepth = plane - seat;
  const recessAtMm = (fromFloorMm: number): number => recess + 2 * fromFloorMm * tan(typed.number('recess draft', 1));
  const post = typed.has('post OD') ? typed.number('post OD', NaN) : NaN;
  const postAtMm = (fromPlaneMm: number): number => post + 2 * fromPlaneMm * tan(typed.number('post draft', 0.5));
  const inWall = Math.max(0, recessDepth - headWall);

  const layer = {
    min: Math.max(sleeve + sleeveLimits.lower, board + boardLimits.lower),
    max: Math.max(sleeve + sleeveLimits.upper, board + boardLimits.upper),
    nominal: Math.max(sleeve, board),
  };
  const gripMin = seat + seatLimits.lower + layer.min + gap + gapLimits.lower;
  const gripMax = seat + seatLimits.upper + layer.max + gap + gapLimits.upper;
  const grip = seat + layer.nominal + gap;
  const length = typed.number('length', NaN);
  const lengths = typed.has('length tolerance') ? typed.limits('length tolerance', NaN) : lengthLimits(screw, length, end);
  const point = typed.number('point', screw.pointMm?.[end] ?? NaN);
  const relief = typed.number('relief', 0.5);
  const reliefLimits = typed.limits('relief tolerance', 0.1);
  const deepest = length + lengths.upper - gripMin;
  const shallowest = length + lengths.lower - gripMax;
  const insert = typed.number('insert diameter', NaN);
  const hasInsert = typed.has('insert diameter');
  const insertLength = typed.number('insert length', NaN);
  const belowFace = typed.number('insert below face', 0);
  const insertLimits = typed.limits('insert tolerance', 0.1);
  const engagementMin = hasInsert
    ? Math.min(shallowest - (belowFace + insertLimits.upper) - point, insertLength + insertLimits.lower)
    : shallowest - (relief + reliefLimits.upper) - point;

  const height = typed.number('boss height', NaN);
  const depth = typed.number('hole depth', height);
  const depthLimits = typed.limits('hole depth tolerance', 0.1);
  const share = typed.number('thread share', start?.threadShare ?? NaN);
  const pilot = typed.number('pilot', screw.majorMaxMm - share * (screw.majorMaxMm - screw.rootMaxMm));
  const pilotLimits = typed.limits('pilot tolerance', 0.05);
  const slope = 2 * tan(typed.number('hole draft', 0.25));
  const midMm = relief + (length - grip - relief - point) / 2;
  const mouth = hasInsert
    ? typed.number('insert hole', insert)
    : typed.word('pilot held at', 'mid') === 'mouth'
      ? pilot
      : pilot + midMm * slope;
  const bossOd = typed.has('boss OD')
    ? typed.number('boss OD', NaN)
    : hasBoardHole && sleeve > 0
      ? NaN
      : hasInsert
        ? typed.number('insert ratio', 2) * insert
        : typed.number('od ratio', start?.odRatio ?? NaN) * screw.nominalMm;
  const reliefDiameter = typed.number('relief diameter', screw.majorMaxMm + 0.2);

  const sleeveOd = hole + 2 * typed.number('sleeve wall', 1);
  const sleeveRootMax = sleeveOd + holeLimits.upper + 2 * (sleeve + sleeveLimits.upper) * tan(typed.number('sleeve draft', 0.5));
  const hasRecess = !onBoard;
  const coneDepth = (headMax - holeMin) / 2;
  const through = hasBoardHole && sleeve > 0;

  // NaN, what is not known, compares false
  const isOver = (one: number, other: number): boolean => one - other > SURELY_MM;
  const judged: Readonly<Record<Impossible, boolean>> = {
    'hole out of the outer face': isOver(depth + depthLimits.upper, wall + height),
    'screw wider than the hole': (hasRecess || sleeve > 0) && isOver(screw.majorMaxMm, holeMin),
    'screw wider than the board hole': hasBoardHole && sleeve === 0 && isOver(screw.majorMaxMm, boardHole + boardHoleLimits.lower),
    'head falls through': isOver(holeMax, headMin),
    'head wider than the recess': hasRecess && isOver(headMax, recess),
    'head stands out':
      hasRecess &&
      !countersunk &&
      isOver(typed.number('head height', screw.headHeightMaxMm), plane + planeLimits.lower - (seat + seatLimits.upper)),
    'no seat': hasRecess && isOver(0, seat + seatLimits.lower),
    'cone through the seat': hasRecess && countersunk && isOver(coneDepth, seat + seatLimits.lower),
    'recess breaks out': hasRecess && (isOver(recess, postAtMm(seat)) || isOver(recessAtMm(inWall), postAtMm(plane - headWall))),
    'thread touches nothing': !hasInsert && isOver(mouth - Math.max(0, shallowest - point) * slope + pilotLimits.upper, screw.majorMinMm),
    'screw does not reach': isOver(0, deepest) || isOver(0, engagementMin),
    'pin hole closed': isOver(depth * slope, mouth),
    'hole wider than the boss': isOver(Math.max(mouth, !hasInsert && relief > 0 ? reliefDiameter : 0), bossOd),
    'boss falls into the clearance hole': isOver(holeMax, bossOd),
    'tip beyond the bottom': isOver(deepest, depth + depthLimits.lower),
    'sleeve wider than the board hole': through && isOver(sleeveRootMax, boardHole + boardHoleLimits.lower),
    'sleeve below the board': sleeve > 0 && isOver(board + boardLimits.lower, sleeve + sleeveLimits.upper),
    'board slips over the boss': hasBoardHole && isOver(boardHole + boardHoleLimits.upper, bossOd),
    'insert held by nothing': typed.has('insert hole') && isOver(mouth + pilotLimits.upper, insert),
    'insert drawn out': isOver(holeMax, insert),
    'insert longer than its hole': isOver(insertLength + belowFace, depth + depthLimits.lower),
    'insert wider than the boss': isOver(insert, bossOd),
    'groove through the wall': isOver(typed.number('ring depth', 0), wall),
  };
  return (Object.keys(IMPOSSIBLE) as Impossible[]).filter(what => judged[what]);
}
