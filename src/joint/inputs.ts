// What a variant of the joint is described by. A given drawing value always wins over a table or a start value.
import { ITSELF, type Kind, type Param } from '../core/card';
import type { Limits } from '../core/kinds';
import type { Reading } from '../standards/table';
import * as Boss from '../core/boss/boss';
import { pickedJointLengthMm } from '../core/engagement/screw-length';
import { pilotHoleMm, reliefDiaMm } from '../core/hole/hole';
import { lowestOdRatio, safeValue, type Material } from '../core/material/material';
import { choice, DEVIATION, named, numeric, param, type ParamOptions } from '../core/read/params';
import { ANGLE, FORCE, LENGTH, RATIO, SHARE, STRESS, TORQUE } from '../core/read/quantity';
import { END, headDiameter, headHeight, hole, MATERIAL, ofMaterial, point, SCREW } from '../core/read/sources';
import { notInTable, wrongInput } from '../core/refuse';
import { clearanceReadings } from '../core/screw/clearance';
import { headDiameterReadings, headHeightReadings, headOfOwn, parseHead, type Head } from '../core/screw/head';
import { type End, nominalDiaMm, pointReadings, type Screw } from '../core/screw/thread';
import type * as Thread from './formulas/boss';
import * as Grip from './formulas/grip';
import * as HeadHalf from './formulas/head-half';
import * as Sizes from './formulas/sizes';
import { fromTables, made, notLive, type Input, type Made } from './graph';

const mm = numeric(LENGTH);
const degrees = numeric(ANGLE);
const SIZE_LIMIT = { above: 0 };
const DRAFT = { atLeast: 0, below: 90 };

/** Everything in a joint is measured by d: an own screw must have one. */
const SCREW_WITH_D: Kind<Screw> = {
  ...SCREW,
  read(raw, preceding) {
    const screw = SCREW.read(raw, preceding);
    nominalDiaMm(screw.size);
    return screw;
  },
};
const HEAD_OF_SCREW: Kind<Head> = named('head', 'pan', (text, preceding) => parseHead(text, (preceding.get('screw') as Screw).size));
const FACE = choice<Thread.Face>('face', { hidden: ['hidden face'], show: ['show face'] });
const HELD_AT = choice<Thread.PilotHeldAt>('pilot held at', { mid: ['middle'], mouth: [] });

const fromMaterial =
  (quantity: string, what: string) =>
  (material: Material | undefined): number => {
    if (material === undefined) throw wrongInput(`${what} is not given and there is no material to take it from`);
    return safeValue(material, quantity);
  };
const threadShareOf = fromMaterial('thread share', 'thread share');
const odRatioOf = fromMaterial('od ratio', 'od ratio');
export const densityOf = fromMaterial('density', 'density');
export const OF_MATERIAL = 'a start value of the material';
const yieldStressOf = fromMaterial('strength', 'yield stress');

/** Without a material, or with a card that does not hold it: the limit of a rigid polymer. */
const limitFrom =
  (quantity: string, rigid: number) =>
  (material: Material | undefined): number =>
    material?.values.get(quantity) ?? rigid;
const sinkLimitOf = limitFrom('sink limit', 0.6);
const tightnessLimitOf = limitFrom('tightness limit', 0.97);
const tightnessReviewOf = limitFrom('tightness review', 1);
const odLimitOf = (material: Material | undefined): number => (material === undefined ? undefined : lowestOdRatio(material)) ?? 1.8;

function mediumHoleReadings({ size }: Screw): readonly Reading[] {
  if (size.own !== undefined) throw notInTable('hole must be given for an own screw: no standard clearance hole is available');
  if (size.family === 'ST')
    throw notInTable(
      `hole must be given for ${size.text}: no standard clearance hole is available; "${size.text} DIN 74-1" reads a form C through hole`,
    );
  return clearanceReadings(size, 'medium', 'nominal');
}

/** What a blank cell means, and so the type of the value. */
interface Options extends ParamOptions {
  readonly required?: true;
  readonly zeroByUnit?: true;
  readonly made?: Made;
  readonly words?: string;
  readonly beside?: string;
  readonly askedWhere?: Input['askedWhere'];
}

type Given<T, O> = O extends { readonly required: true } | { readonly default: unknown } | { readonly made: unknown } ? T : T | undefined;
type Fallback<O> = O extends { readonly made: infer M } ? { readonly fallback: M } : unknown;

/** The name is that of its place in the list. */
type Unnamed<T, O> = Omit<Input, 'param'> & { readonly param: Param<Given<T, O>> } & Fallback<O>;

function input<T, const O extends Options = object>(kind: Kind<T>, meaning: string, options?: O): Unnamed<T, O> {
  const { required, zeroByUnit, made: how, words, beside, askedWhere, ...rest } = (options ?? {}) as Options;
  const fixed = rest.default;
  const blank = rest.blank ?? (zeroByUnit ? 'explicit' : required ? 'refused' : fixed === undefined ? 'absent' : undefined);
  const declared: Input = {
    param: param('', kind, blank === undefined ? rest : { ...rest, blank }),
    unit: kind.unit,
    meaning,
    ...(how !== undefined ? { fallback: how } : fixed !== undefined && { fallback: { raw: fixed } }),
    defaultWords: words ?? (required ? 'required' : fixed === undefined ? '–' : String(fixed)),
    ...(beside !== undefined && { beside }),
    ...(askedWhere !== undefined && { askedWhere }),
  };
  return declared as Unnamed<T, O>;
}

/** What only a thread in plastic has: typed beside an insert it is refused. */
const IN_PLASTIC = { condition: 'thread in plastic', otherwise: 'the thread is in the insert', alone: true } as const;

export const INPUT = {
  screw: input(SCREW_WITH_D, 'screw size, "ST2.9"; a blank or an unquoted M3 is refused', { required: true }),
  head: input(
    HEAD_OF_SCREW,
    'head by standard or trade word, "ISO 7049" or "pan"; an own screw with diameter and height of its head needs none',
    {
      required: true,
      blank: { sameAs: 'screw', take: (screw: Screw) => headOfOwn(screw.size) },
      beside: 'screw',
    },
  ),
  end: input(END, 'screw end: cone or flat', { default: 'cone' }),
  length: input(mm, 'nominal screw length', {
    ...SIZE_LIMIT,
    made: notLive(
      'a length is picked by trying all of them',
      pickedJointLengthMm,
      'screw',
      'grip layers',
      'grip tolerances',
      'ratio',
      'hole depth min',
      'bottom gap',
      'thread start',
      'thread start tolerance',
      'end',
      'point',
      'length tolerance',
      { only: 'insert length min', where: 'has insert' },
    ),
    words: 'shortest standard length that meets ratio at worst case and fits the hole depth',
  }),
  'length tolerance': input(DEVIATION, 'tolerance of the screw length', {
    zeroByUnit: true,
    made: notLive('none is given', Sizes.notGiven),
    words: 'table',
  }),
  point: input(point, 'length at the point without full thread', {
    atLeast: 0,
    zeroByUnit: true,
    made: fromTables((screw: Screw, end: End) => pointReadings(screw.size, end), 'screw', 'end'),
    words: 'table',
  }),
  material: input(MATERIAL, 'material symbol, or your own card as text: "strength 40 MPa; thread share 0.8"', {
    words: 'none; required where a default comes from it',
  }),
  wall: input(mm, 'nominal wall of the thread half', { ...SIZE_LIMIT, required: true }),
  'head wall': input(mm, 'nominal wall of the head half', { ...SIZE_LIMIT, made: made(Sizes.sameMm, 'wall'), words: 'wall' }),
  'feature share': input(numeric(SHARE), 'wall of internal features ÷ wall', {
    above: 0,
    atMost: 1,
    made: notLive(OF_MATERIAL, sinkLimitOf, 'material'),
    words: 'sink limit of the material; 0.6 without one',
  }),
  'board plane': input(mm, 'from the outer face of the head half to the underside of the board', {
    ...SIZE_LIMIT,
    required: true,
    askedWhere: { condition: 'has recess', otherwise: 'the board plane is blank and the head lies on the board' },
  }),
  'board plane tolerance': input(DEVIATION, 'tolerance of the board plane', { zeroByUnit: true, default: 0.1 }),
  seat: input(mm, 'plastic under the head; "0 mm": the head lies on the board', {
    atLeast: 0,
    zeroByUnit: true,
    made: made(HeadHalf.defaultSeatMm, 'head wall', 'screw'),
    words: 'largest of 0.8·head wall, 0.6·d, 1.5',
  }),
  'seat tolerance': input(DEVIATION, 'tolerance of the seat', {
    zeroByUnit: true,
    made: made(HeadHalf.seatDeviation, 'seat'),
    words: '0.1; 0 without a seat',
  }),
  board: input(mm, 'board thickness', { atLeast: 0, default: 0 }),
  'board tolerance': input(DEVIATION, 'tolerance of the board thickness', {
    zeroByUnit: true,
    made: made(Grip.boardDeviation, 'board'),
    words: '10 % of board, at least 0.08',
  }),
  sleeve: input(mm, 'height of a sleeve moulded on the head half, through the board', { atLeast: 0, default: 0 }),
  'sleeve tolerance': input(DEVIATION, 'tolerance of the sleeve height', { zeroByUnit: true, default: 0.1 }),
  'sleeve draft': input(degrees, 'draft of the outside of the sleeve, per side', { ...DRAFT, zeroByUnit: true, default: 0.5 }),
  'sleeve wall': input(mm, 'wall of the sleeve at its free end', { ...SIZE_LIMIT, default: 1 }),
  gap: input(mm, 'planned gap between boss face and what it lands on', { atLeast: 0, default: 0 }),
  'gap tolerance': input(DEVIATION, 'tolerance of the planned gap', {
    zeroByUnit: true,
    made: made(Grip.gapDeviation, 'gap'),
    words: '0.1; 0 without a gap',
  }),
  hole: input(hole(), 'clearance hole in the head half', {
    ...SIZE_LIMIT,
    made: fromTables(mediumHoleReadings, 'screw'),
    words: 'ISO 273 medium, ASME B18.2.8 normal; required for ST',
    askedWhere: { condition: 'has hole', otherwise: 'the head lies on the board, whose hole stands for it' },
  }),
  'hole tolerance': input(DEVIATION, 'tolerance of the clearance hole', { zeroByUnit: true, default: 0.1 }),
  'board hole': input(hole(), 'hole in the board', {
    ...SIZE_LIMIT,
    words: 'its rules do not apply; required with seat "0 mm" and no sleeve',
  }),
  'board hole tolerance': input(DEVIATION, 'tolerance of the hole in the board', { zeroByUnit: true, default: 0.1 }),
  'head diameter': input(headDiameter('max'), 'head diameter, largest', {
    ...SIZE_LIMIT,
    made: fromTables((screw: Screw, head: Head) => headDiameterReadings(screw.size, head, 'max'), 'screw', 'head'),
    words: 'table, max',
  }),
  'head height': input(headHeight('max'), 'head height, largest', {
    ...SIZE_LIMIT,
    made: fromTables((screw: Screw, head: Head) => headHeightReadings(screw.size, head, 'max'), 'screw', 'head'),
    words: 'table, max',
  }),
  'head diameter min': input(headDiameter('min'), 'head diameter, smallest', {
    ...SIZE_LIMIT,
    beside: 'head diameter',
    relation: { holds: [['>=', 'head diameter', ITSELF]], words: 'at most the head diameter' },
    made: made(Sizes.chosenMm, 'head diameter is given', 'head diameter', 'table head diameter min'),
    words: 'table, min; the head diameter where that is given',
  }),
  allowance: input(mm, 'recess diameter − head diameter, on diameter', {
    zeroByUnit: true,
    made: made(HeadHalf.defaultAllowanceMm, 'hole max', 'major min'),
    words: 'hole max − screw major min + 0.2',
  }),
  'recess draft': input(degrees, 'draft of the recess, per side', { ...DRAFT, zeroByUnit: true, default: 1 }),
  'post draft': input(degrees, 'draft of the post around the recess, per side', { ...DRAFT, zeroByUnit: true, default: 0.5 }),
  'post OD': input(mm, 'outside diameter of the post around the recess, at the board plane', {
    ...SIZE_LIMIT,
    made: made(Boss.bossOutsideDiaMm, 'recess diameter', 'feature wall', { is: 0 }, { is: 0 }),
    words: 'recess diameter + 2·feature wall',
  }),
  relief: input(mm, 'depth of the relief at the mouth of the pilot', {
    atLeast: 0,
    zeroByUnit: true,
    default: 0.5,
    askedWhere: IN_PLASTIC,
  }),
  'relief tolerance': input(DEVIATION, 'tolerance of the relief depth', { zeroByUnit: true, default: 0.1 }),
  'relief diameter': input(mm, 'diameter of the relief', {
    ...SIZE_LIMIT,
    beside: 'screw',
    relation: { holds: [['>=', ITSELF, 'screw.majorMaxMm']], words: 'at least the major diameter of the screw' },
    made: made(reliefDiaMm, 'screw', { is: 0.2 }),
    words: 'major max + 0.2',
    askedWhere: IN_PLASTIC,
  }),
  ratio: input(numeric(RATIO), 'full-thread engagement required at worst case, ÷ d', {
    ...SIZE_LIMIT,
    made: made(Sizes.chosen, 'has insert', { is: 1 }, { is: 2 }),
    words: '2; in an insert 1',
  }),
  pilot: input(hole(), 'pilot hole', {
    ...SIZE_LIMIT,
    made: made(pilotHoleMm, 'screw', 'thread share'),
    words: 'from thread share',
    askedWhere: IN_PLASTIC,
  }),
  'pilot tolerance': input(DEVIATION, 'tolerance of the pilot hole', { zeroByUnit: true, default: 0.05 }),
  'pilot held at': input(HELD_AT, 'where the size of the pilot is held: mid (of the full thread) or mouth', {
    default: 'mid',
    askedWhere: IN_PLASTIC,
  }),
  'thread share': input(ofMaterial(SHARE, 'thread share'), 'share of the flank depth that the pilot leaves to the thread', {
    above: 0,
    atMost: 1,
    made: notLive(OF_MATERIAL, threadShareOf, 'material'),
    words: 'material',
    askedWhere: IN_PLASTIC,
  }),
  'boss OD': input(mm, 'boss outside diameter at the free end', {
    ...SIZE_LIMIT,
    made: made(Grip.defaultBossOdMm, 'board lies on the sleeve', 'boss OD by ratio', {
      only: 'boss OD for hold',
      where: 'board lies on the sleeve',
    }),
    words: 'od ratio × d, or insert ratio × insert diameter; with a sleeve and a board hole at least what holds the board',
  }),
  'od ratio': input(ofMaterial(RATIO, 'od ratio'), 'boss outside diameter ÷ d', {
    ...SIZE_LIMIT,
    made: notLive(OF_MATERIAL, odRatioOf, 'material'),
    words: 'material',
    askedWhere: IN_PLASTIC,
  }),
  'boss height': input(mm, 'boss height above the wall of the thread half', { ...SIZE_LIMIT, required: true }),
  'outside draft': input(degrees, 'draft of the outside of the boss, per side', { ...DRAFT, zeroByUnit: true, default: 0.5 }),
  'hole draft': input(degrees, 'draft of the pilot hole, per side', { ...DRAFT, zeroByUnit: true, default: 0.25 }),
  'hole depth': input(mm, 'depth of the pilot hole below the boss face', {
    ...SIZE_LIMIT,
    made: made(Sizes.sameMm, 'boss height'),
    words: 'boss height',
  }),
  'hole depth tolerance': input(DEVIATION, 'tolerance of the hole depth', { zeroByUnit: true, default: 0.1 }),
  'bottom gap': input(mm, 'minimum clearance under the screw tip', { atLeast: 0, zeroByUnit: true, default: 0.5 }),
  'root fillet': input(mm, 'fillet at the root of the boss; drawn, not counted in the sink', { atLeast: 0, default: 0 }),
  'ring depth': input(mm, 'depth of a groove round the foot of the boss', { atLeast: 0, default: 0 }),
  'insert diameter': input(mm, 'largest outside diameter of a threaded insert in the boss', {
    ...SIZE_LIMIT,
    words: 'none: the thread is in the plastic',
  }),
  'insert length': input(mm, 'length of the insert', {
    ...SIZE_LIMIT,
    required: true,
    words: 'required with an insert',
    askedWhere: { condition: 'has insert', otherwise: 'there is no insert' },
  }),
  'insert hole': input(mm, 'hole for the insert at the boss face, ± pilot tolerance', {
    ...SIZE_LIMIT,
    made: made(Sizes.sameMm, 'insert OD'),
    words: 'insert diameter: moulded in',
  }),
  'insert below face': input(mm, 'depth of the insert below the boss face', { atLeast: 0, default: 0 }),
  'insert tolerance': input(DEVIATION, 'tolerance of the insert length, and of its depth below the face', {
    zeroByUnit: true,
    default: 0.1,
  }),
  'insert landing limit': input(mm, 'ring of the insert under the mating part; less is reviewed', { ...SIZE_LIMIT, default: 0.3 }),
  'insert ratio': input(numeric(RATIO), 'boss outside diameter ÷ insert diameter', { ...SIZE_LIMIT, default: 2 }),
  'insert margin': input(mm, 'minimum clearance below the insert', { atLeast: 0, zeroByUnit: true, default: 1 }),
  face: input(FACE, 'outer face behind the boss: hidden or show', { default: 'hidden' }),
  'head face': input(FACE, 'outer face of the head half: hidden or show', { default: 'show' }),
  'yield stress': input(ofMaterial(STRESS, 'strength'), 'yield (or allowable) stress', {
    ...SIZE_LIMIT,
    made: notLive(OF_MATERIAL, yieldStressOf, 'material'),
    words: 'material, low end of the family, conditioned',
  }),
  safety: input(numeric(RATIO), 'safety factor: the strength estimates are divided by it', { atLeast: 1, default: 1 }),
  'common share': input(
    numeric(SHARE),
    'share of the variance that the dimensions of one half have in common; used by JOINT.SIMULATE alone',
    {
      atLeast: 0,
      atMost: 1,
      default: 0,
    },
  ),
  load: input(numeric(FORCE), 'short-term load on one screw', SIZE_LIMIT),
  'load safety': input(numeric(RATIO), 'safety factor on the load', { atLeast: 1, default: 2 }),
  friction: input(numeric(RATIO), 'coefficient of friction in the thread and under the head', { above: 0, atMost: 1 }),
  'drive torque': input(numeric(TORQUE), 'torque that drives the screw in', SIZE_LIMIT),
  'set torque': input(numeric(TORQUE), 'torque at which the driver is set', SIZE_LIMIT),
  'torque scatter': input(numeric(SHARE), 'scatter of the driver, a share of its set torque', { atLeast: 0, below: 1, default: 0.1 }),
  'tool diameter': input(mm, 'diameter of the driver', SIZE_LIMIT),
  'steel gap': input(mm, 'clear gap beside the boss at its free end', SIZE_LIMIT),
  'subflush limit': input(mm, 'head below the outer face; less is reviewed', { atLeast: 0, zeroByUnit: true, default: 0.2 }),
  'seat limit': input(mm, 'plastic under the head; less is reviewed', { ...SIZE_LIMIT, default: 1.2 }),
  'bearing limit': input(mm, 'ring under the head; less is reviewed', { atLeast: 0, zeroByUnit: true, default: 0.5 }),
  'thread limit': input(numeric(SHARE), 'share of the flank depth at the mouth; less is reviewed', {
    atLeast: 0,
    atMost: 1,
    zeroByUnit: true,
    default: 0.15,
    askedWhere: IN_PLASTIC,
  }),
  'od limit': input(numeric(RATIO), 'boss outside diameter ÷ d; less is reviewed', {
    ...SIZE_LIMIT,
    made: notLive(OF_MATERIAL, odLimitOf, 'material'),
    words: 'material: low end of its range; 1.8 without one',
    askedWhere: IN_PLASTIC,
  }),
  'tightness limit': input(
    ofMaterial(RATIO, 'tightness limit'),
    'pilot at the tip ÷ root diameter; less fails: the boss is likely to split',
    {
      ...SIZE_LIMIT,
      made: notLive(OF_MATERIAL, tightnessLimitOf, 'material'),
      words: 'material; 0.97 without one',
      askedWhere: IN_PLASTIC,
    },
  ),
  'tightness review': input(ofMaterial(RATIO, 'tightness review'), 'pilot at the tip ÷ root diameter; less is reviewed', {
    ...SIZE_LIMIT,
    made: notLive(OF_MATERIAL, tightnessReviewOf, 'material'),
    words: 'material; 1 without one',
    askedWhere: IN_PLASTIC,
  }),
  'floor limit': input(numeric(SHARE), 'plastic under hole or groove ÷ wall; less is reviewed', { ...SIZE_LIMIT, atMost: 1, default: 0.6 }),
  'hold limit': input(mm, 'ring that holds the board; less is reviewed', { atLeast: 0, zeroByUnit: true, default: 0.5 }),
  'ring limit': input(mm, 'landing ring; less is reviewed', { ...SIZE_LIMIT, default: 0.8 }),
  'sink limit': input(ofMaterial(SHARE, 'sink limit'), 'boss wall ÷ wall up to which no sink mark shows', {
    ...SIZE_LIMIT,
    made: notLive(OF_MATERIAL, sinkLimitOf, 'material'),
    words: 'material; 0.6 without one',
  }),
  'hidden sink limit': input(numeric(SHARE), 'boss wall ÷ wall on a hidden face; more is reviewed', { ...SIZE_LIMIT, default: 1 }),
  'slender limit': input(numeric(RATIO), 'boss height ÷ outside diameter; more is reviewed', { ...SIZE_LIMIT, default: 3 }),
  'pin limit': input(numeric(RATIO), 'core-pin length ÷ diameter; more is reviewed', { ...SIZE_LIMIT, default: 7 }),
  'strip limit': input(numeric(RATIO), 'strip ÷ drive torque; less is reviewed', { ...SIZE_LIMIT, default: 3.5 }),
} as const;

export type InputName = keyof typeof INPUT;

export const INPUTS: ReadonlyMap<string, Input> = new Map(
  Object.entries<Input>(INPUT).map(([name, declared]) => [name, { ...declared, param: { ...declared.param, name } }]),
);

/** What the joint takes: the names of its inputs, in their order. */
export const JOINT_INPUT_NAMES: readonly string[] = [...INPUTS.keys()];

const SIDES = ['above', 'atLeast', 'below', 'atMost'] as const;

/** Whether the input itself refuses what is outside these limits. What a default is made of may well be outside. */
export function isWithin(name: string, limits: Limits | undefined): boolean {
  const input = INPUTS.get(name);
  if (input === undefined || (input.fallback !== undefined && 'by' in input.fallback)) return false;
  return limits === undefined || SIDES.every(side => input.param.limits?.[side] === limits[side]);
}
