// Joints drawn by a fixed seed: designed ones for the share of states, ordinary ones that a moulder would sign, and wild ones for the oracle.
import { lengthLimits, SCREWS, START, type Inputs } from './oracle';

export const SEED = 20_261_129;

/** mulberry32: the same joints on every machine. */
class Draw {
  private state: number;
  constructor(seed: number) {
    this.state = seed >>> 0;
  }

  share(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let t = this.state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  }

  happens(probability: number): boolean {
    return this.share() < probability;
  }

  /** To 0.01, as drawings are dimensioned. */
  between(low: number, high: number): number {
    return hundredths(low + this.share() * (high - low));
  }

  of<T>(list: readonly T[]): T {
    return list[Math.floor(this.share() * list.length)] as T;
  }
}

const hundredths = (mm: number): number => Math.round(mm * 100) / 100;
/** So many joints, each from the same draw. */
const joints = (count: number, seed: number, make: (draw: Draw) => Inputs): readonly Inputs[] => {
  const draw = new Draw(seed);
  return Array.from({ length: count }, () => make(draw));
};

const screwOf = (size: string) => {
  const screw = SCREWS[size];
  if (screw === undefined) throw new Error(`no ${size} is held`);
  return screw;
};

// --- Designed joints ---

const SIZES = [
  'ST2.2',
  'ST2.9',
  'ST3.5',
  'ST4.2',
  'M2',
  'M2.5',
  'M3',
  'M3.5',
  'M4',
  '#2 B',
  '#3 B',
  '#4 B',
  '#5 B',
  '#6 B',
  '#8 B',
  '#4 AB',
  '#6 AB',
];
const MATERIALS = ['ABS', 'PC', 'PC+ABS', 'PP', 'PS', 'PA6', 'PA66-GF30', 'PBT-GF30', 'POM', 'PBT'];

/** ISO 1478 has no y for the gimlet point of AB; a designer measures it: about one diameter. */
const measuredPoint = (size: string): Inputs => (size.endsWith(' AB') ? { point: hundredths(screwOf(size).majorMaxMm) } : {});

/** The ranges of the reviewers' population: length, pilot, boss, seat, drafts and limits by default; the height is three diameters and room for a point. */
export const designed = (count: number, seed = SEED): readonly Inputs[] =>
  joints(count, seed, draw => {
    const size = draw.of(SIZES);
    const { nominalMm, kind } = screwOf(size);
    const board = draw.of([0.8, 1, 1.2, 1.6]);
    const clearance = hundredths(nominalMm + 0.5);
    const hole: Inputs = kind === 'M' ? {} : { hole: clearance };
    const isSleeved = draw.happens(0.4);
    // through the thickest board, round the screw with walls of 1.0, and free in the board by what the tolerances eat
    const sleeve: Inputs = isSleeved
      ? { sleeve: hundredths(1.1 * board + 0.2), 'board hole': hundredths(clearance + 2 + draw.between(0.4, 0.8)) }
      : { 'board hole': clearance };
    return {
      screw: size,
      head: 'pan',
      material: draw.of(MATERIALS),
      wall: draw.between(1.5, 3.5),
      'board plane': draw.between(5, 12),
      board,
      face: draw.of(['hidden', 'show']),
      'boss height': hundredths(3 * nominalMm + 3.2 + draw.between(0, 5)),
      ...hole,
      ...sleeve,
      ...measuredPoint(size),
    };
  });

// --- Ordinary joints ---

const ORDINARY_MATERIALS = ['ABS', 'PC', 'PC+ABS', 'PP'];
const ST_LENGTHS_MM = [6.5, 9.5, 13, 16, 19, 22];

/** ST2.9 and ST3.5 (ISO 7049 has no head between them), walls 2 to 3, hidden, no sleeve, all by the material's start values; the hole is as deep as the shortest length of two diameters asks, or up to 0.8 deeper. */
export const ordinary = (count: number, seed = SEED): readonly Inputs[] =>
  joints(count, seed, draw => {
    const size = draw.of(['ST2.9', 'ST3.5']);
    const screw = screwOf(size);
    const wall = draw.between(2, 3);
    const board = draw.of([0.8, 1, 1.2, 1.6]);
    const seat = Math.max(0.8 * wall, 0.6 * screw.nominalMm, 1.5);
    const boardTolerance = Math.max(0.1 * board, 0.08);
    const lost = seat + 0.1 + board + boardTolerance + 0.6 + (screw.pointMm?.cone ?? NaN);
    const length = ST_LENGTHS_MM.find(mm => mm + lengthLimits(screw, mm, 'cone').lower - lost >= 2 * screw.nominalMm);
    if (length === undefined) throw new Error('no standard length holds two diameters');
    const reach = length + lengthLimits(screw, length, 'cone').upper - (seat - 0.1 + board - boardTolerance);
    return {
      screw: size,
      head: 'pan',
      material: draw.of(ORDINARY_MATERIALS),
      wall,
      'board plane': draw.between(6, 10),
      board,
      hole: hundredths(screw.nominalMm + 0.5),
      'board hole': hundredths(screw.nominalMm + 0.5),
      face: 'hidden',
      'boss height': hundredths(reach + 0.62 + draw.between(0, 0.8)),
    };
  });

// --- Wild joints ---

interface Sound {
  readonly inputs: Inputs;
  readonly size: string;
  readonly reachMm: number;
}

/** Everything typed, with room everywhere: what spoils it is known. */
function roomy(draw: Draw): Sound {
  const size = draw.of(['ST2.9', 'ST3.5', 'ST4.2']);
  const screw = screwOf(size);
  const d = screw.nominalMm;
  const material = draw.of(['ABS', 'PC+ABS', 'PP']);
  const share = START[material]?.threadShare ?? NaN;
  const isSleeved = draw.happens(0.3);
  const board = draw.of([1, 1.6]);
  const seat = draw.between(2, 2.5);
  const sleeve = isSleeved ? hundredths(1.1 * board + 0.25) : 0;
  const layer = Math.max(board, sleeve);
  const length = draw.of(d < 3 ? [16, 19] : [19, 22]);
  const limits = lengthLimits(screw, length, 'cone');
  const reachMm = length + limits.upper - (seat - 0.1 + (isSleeved ? sleeve - 0.1 : 0.9 * board));
  const hole = hundredths(d + 0.5);
  const bossHeight = hundredths(reachMm + 0.65 + draw.between(0, 0.3));
  const bossOd = hundredths(Math.max(2.2 * d, isSleeved ? hole + 4.4 : 0));
  return {
    size,
    reachMm,
    inputs: {
      screw: size,
      head: 'pan',
      material,
      length,
      wall: hundredths(bossOd / 2.2),
      seat,
      'board plane': hundredths(seat + screw.headHeightMaxMm + layer + 0.6),
      board,
      hole,
      'board hole': isSleeved ? hundredths(hole + 2.5) : hole,
      ...(isSleeved ? { sleeve } : {}),
      pilot: hundredths(screw.majorMaxMm - share * (screw.majorMaxMm - screw.rootMaxMm) + 0.02),
      'boss OD': bossOd,
      'boss height': bossHeight,
      'hole depth': bossHeight,
      'pin limit': 9,
    },
  };
}

type Spoil = (sound: Sound, draw: Draw) => Inputs;
const number = (inputs: Inputs, name: string): number => Number(inputs[name] ?? NaN);
const { max } = Math;

/** Each moves one thing from where it is sane to where it is absurd. */
const SPOILS: Readonly<Record<string, Spoil>> = {
  'hole depth beyond the wall': ({ inputs }, draw) => ({
    'hole depth': hundredths(number(inputs, 'boss height') + number(inputs, 'wall') * draw.between(0, 1.4)),
  }),
  'hole depth short of the tip': ({ reachMm }, draw) => ({ 'hole depth': hundredths(reachMm + draw.between(-1, 1.5)) }),
  hole: ({ size }, draw) => ({ hole: hundredths(screwOf(size).majorMaxMm * draw.between(0.8, 2.4)) }),
  'hole tolerance': (_, draw) => ({ 'hole tolerance': draw.between(0.05, 1.2) }),
  'lower hole tolerance': (_, draw) => ({ 'hole tolerance': `+0/-${draw.between(0.05, 1.2)}` }),
  'board hole': ({ inputs, size }, draw) => ({
    'board hole': hundredths(draw.between(0.6 * screwOf(size).majorMaxMm, 1.2 * number(inputs, 'boss OD'))),
  }),
  'board hole tolerance': (_, draw) => ({ 'board hole tolerance': draw.between(0.05, 1.2) }),
  pilot: ({ size }, draw) => ({ pilot: hundredths(screwOf(size).majorMaxMm * draw.between(0.6, 1.6)) }),
  'pilot at the mouth': ({ size }, draw) => ({
    pilot: hundredths(screwOf(size).majorMaxMm * draw.between(0.6, 1.6)),
    'pilot held at': 'mouth',
  }),
  'pilot tolerance': (_, draw) => ({ 'pilot tolerance': draw.between(0.02, 1) }),
  'hole draft': (_, draw) => ({ 'hole draft': draw.between(0.1, 8) }),
  seat: (_, draw) => ({ seat: draw.between(0.05, 4) }),
  'seat tolerance': ({ inputs }, draw) => ({
    'seat tolerance': draw.between(0.05, 3),
    'board plane': hundredths(number(inputs, 'board plane') + 3),
  }),
  'board plane': ({ inputs }, draw) => ({ 'board plane': hundredths(number(inputs, 'seat') + draw.between(0.2, 6)) }),
  'board plane tolerance': (_, draw) => ({ 'board plane tolerance': draw.between(0.05, 3) }),
  allowance: (_, draw) => ({ allowance: draw.between(0.05, 1.2) }),
  'allowance about 0': (_, draw) => ({ allowance: draw.between(-0.5, 0.5) }),
  'head diameter': ({ size }, draw) => ({ 'head diameter': hundredths(screwOf(size).majorMaxMm * draw.between(0.8, 2.4)) }),
  'head diameter min': ({ size }, draw) => ({ 'head diameter min': hundredths(screwOf(size).majorMaxMm * draw.between(0.8, 1.8)) }),
  'head height': ({ inputs }, draw) => ({
    'head height': hundredths((number(inputs, 'board plane') - number(inputs, 'seat')) * draw.between(0.5, 1.5)),
  }),
  countersunk: (_, draw) => ({ head: 'countersunk', seat: draw.between(0.4, 3) }),
  'post OD': ({ inputs, size }, draw) => ({
    'post OD': hundredths(screwOf(size).headMaxMm + draw.between(-1, 5)),
    'recess draft': draw.between(0.5, 3),
    wall: max(2.5, number(inputs, 'wall')),
  }),
  sleeve: ({ inputs }, draw) => ({
    sleeve: hundredths(number(inputs, 'board') * draw.between(0.3, 1.4)),
    'board hole': hundredths(number(inputs, 'hole') + 2.5),
  }),
  'sleeve wall': ({ inputs }, draw) => ({
    sleeve: hundredths(1.1 * number(inputs, 'board') + 0.25),
    'sleeve wall': draw.between(0.6, 1.6),
    'board hole': hundredths(number(inputs, 'hole') + 2.5),
  }),
  'sleeve draft': ({ inputs }, draw) => ({
    sleeve: hundredths(1.1 * number(inputs, 'board') + 0.25),
    'sleeve draft': draw.between(0.3, 8),
    'board hole': hundredths(number(inputs, 'hole') + 2.5),
  }),
  'boss OD': ({ size }, draw) => ({ 'boss OD': hundredths(screwOf(size).majorMaxMm * draw.between(0.7, 2.6)) }),
  'relief diameter': ({ inputs }, draw) => ({ 'relief diameter': hundredths(number(inputs, 'boss OD') * draw.between(0.5, 1.3)) }),
  relief: ({ reachMm }, draw) => ({ relief: hundredths(reachMm * draw.between(0.02, 1.1)) }),
  length: (_, draw) => ({ length: draw.of([4.5, 6.5, 9.5, 13, 25, 32]) }),
  'length tolerance': (_, draw) => ({ 'length tolerance': draw.between(0.1, 3) }),
  point: (_, draw) => ({ point: draw.between(0.5, 14) }),
  gap: (_, draw) => ({ gap: draw.between(0.1, 8) }),
  'ring depth': ({ inputs }, draw) => ({ 'ring depth': hundredths(number(inputs, 'wall') * draw.between(0, 1.5)) }),
};
export const SPOILED_BY: readonly string[] = Object.keys(SPOILS);

/** One thing of a sound joint moved, now and then two: a joint that cannot be for a single reason needs the rule that says so. */
export const wild = (count: number, seed = SEED): readonly Inputs[] =>
  joints(count, seed, draw => {
    const sound = roomy(draw);
    const times = draw.of([1, 1, 1, 1, 2]);
    return Array.from({ length: times }).reduce<Inputs>(inputs => {
      const spoil = SPOILS[draw.of(SPOILED_BY)];
      return spoil === undefined ? inputs : { ...inputs, ...spoil({ ...sound, inputs }, draw) };
    }, sound.inputs);
  });

// --- Wild joints with an insert ---

/** Inserts of our own, larger than the clearance hole by 0.35 and more a side. */
const INSERTS: Readonly<Record<string, readonly [diameterMm: number, lengthMm: number]>> = {
  'M2.5': [4.1, 4],
  M3: [4.6, 5.7],
  'M3.5': [5.2, 6],
  M4: [5.9, 7],
};

function roomyInsert(draw: Draw): Inputs {
  const size = draw.of(Object.keys(INSERTS));
  const screw = screwOf(size);
  const [diameter, length] = INSERTS[size] ?? [NaN, NaN];
  const seat = draw.between(2, 2.5);
  const board = draw.of([1, 1.6]);
  const lost = seat + 0.1 + 1.1 * board + 0.1 + (screw.pointMm?.cone ?? NaN);
  const screwLength = [8, 10, 12, 16].find(mm => mm + lengthLimits(screw, mm, 'cone').lower - lost >= screw.nominalMm) ?? NaN;
  const reach = screwLength + lengthLimits(screw, screwLength, 'cone').upper - (seat - 0.1 + 0.9 * board);
  const height = hundredths(max(reach + 0.65, length + 1.05) + draw.between(0, 0.5));
  return {
    screw: size,
    head: 'pan',
    material: draw.of(['ABS', 'PC+ABS', 'PP']),
    length: screwLength,
    wall: hundredths(diameter / 1.4),
    seat,
    'board plane': hundredths(seat + screw.headHeightMaxMm + board + 0.6),
    board,
    hole: hundredths(screw.nominalMm + 0.4),
    'board hole': hundredths(screw.nominalMm + 0.5),
    'boss OD': hundredths(2 * diameter),
    'boss height': height,
    'hole depth': height,
    'insert diameter': diameter,
    'insert length': length,
    'insert hole': hundredths(diameter - 0.5),
  };
}

const INSERT_SPOILS: readonly ((inputs: Inputs, draw: Draw) => Inputs)[] = [
  (inputs, draw) => ({ 'insert hole': hundredths(number(inputs, 'insert diameter') * draw.between(0.8, 1.2)) }),
  (inputs, draw) => ({ 'pilot tolerance': draw.between(0.05, 1) }),
  (inputs, draw) => ({
    hole: hundredths(number(inputs, 'insert diameter') * draw.between(0.8, 1.3)),
    'head diameter': 9,
    'head diameter min': 8.6,
  }),
  (inputs, draw) => ({ 'hole tolerance': draw.between(0.1, 2), 'head diameter': 9, 'head diameter min': 8.6 }),
  (inputs, draw) => ({ 'insert length': hundredths(number(inputs, 'hole depth') * draw.between(0.4, 1.5)) }),
  (inputs, draw) => ({ 'insert below face': hundredths(number(inputs, 'hole depth') * draw.between(0, 1)) }),
  (inputs, draw) => ({ 'hole depth': hundredths(number(inputs, 'boss height') * draw.between(0.4, 1)), length: 6 }),
  (inputs, draw) => ({ 'boss OD': hundredths(number(inputs, 'insert diameter') * draw.between(0.85, 1.6)) }),
  (inputs, draw) => ({ 'insert tolerance': draw.between(0.05, 6) }),
  (inputs, draw) => ({ length: draw.of([4, 5, 6, 20, 25]) }),
];

/** A joint with an insert of which one thing is moved. */
export const wildInserts = (count: number, seed = SEED): readonly Inputs[] =>
  joints(count, seed, draw => {
    const sound = roomyInsert(draw);
    return { ...sound, ...draw.of(INSERT_SPOILS)(sound, draw) };
  });

export const unspoiledInserts = (count: number, seed = SEED): readonly Inputs[] => joints(count, seed, roomyInsert);

/** The joints before anything is moved. */
export const unspoiled = (count: number, seed = SEED): readonly Inputs[] => joints(count, seed, draw => roomy(draw).inputs);
