// What a variant of the joint is described by. A given drawing value always wins over a table or a start value.
import type { Kind, Param } from '../core/card';
import type { Limits } from '../core/kinds';
import type { Reading } from '../standards/table';
import { bossOutsideDiaByRuleMm } from '../core/boss/boss';
import { pickedLengthMm } from '../core/engagement/screw-length';
import { pilotHoleMm, reliefDiaMm } from '../core/hole/hole';
import { materialValue, type Material } from '../core/material/material';
import { choice, DEVIATION, named, numeric, param, type ParamOptions } from '../core/read/params';
import { ANGLE, LENGTH, RATIO, SHARE, STRESS } from '../core/read/quantity';
import { END, headDiameter, headHeight, hole, MATERIAL, ofMaterial, SCREW } from '../core/read/sources';
import { notInTable, wrongInput } from '../core/refuse';
import { clearanceReadings } from '../core/screw/clearance';
import { headDiameterReadings, headHeightReadings, parseHead, type Head } from '../core/screw/head';
import type { Screw } from '../core/screw/thread';
import * as J from './formulas';
import { fromTables, made, notLive, type Input, type Made } from './graph';

const mm = numeric(LENGTH);
const degrees = numeric(ANGLE);
const SIZE_LIMIT = { above: 0 };
const DRAFT = { atLeast: 0, below: 90 };

const HEAD_OF_SCREW: Kind<Head> = named('head', 'pan', (text, preceding) => parseHead(text, (preceding.get('screw') as Screw).size));
const FACE = choice<J.Face>('face', { hidden: ['hidden face'], show: ['show face'] });
const HELD_AT = choice<J.PilotHeldAt>('pilot held at', { mid: ['middle'], mouth: [] });

const fromMaterial =
  (quantity: string, what: string) =>
  (material: Material | undefined): number => {
    if (material === undefined) throw wrongInput(`${what} is not given and there is no material to take it from`);
    return materialValue(material, quantity);
  };
const threadShareOf = fromMaterial('thread share', 'thread share');
const odRatioOf = fromMaterial('od ratio', 'od ratio');
export const densityOf = fromMaterial('density', 'density');
export const OF_MATERIAL = 'a start value of the material';
const yieldStressOf = fromMaterial('strength', 'yield stress');

function mediumHoleReadings({ size }: Screw): readonly Reading[] {
  if (size.family === 'ST')
    throw notInTable(
      `hole must be given for ${size.text}: no standard clearance hole is held; "${size.text} DIN 74-1" reads a form C through hole`,
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
  const blank = zeroByUnit ? 'explicit' : required ? 'refused' : fixed === undefined ? 'absent' : undefined;
  const declared: Input = {
    param: param('', kind, blank === undefined ? rest : { ...rest, blank }),
    unit: kind.unit,
    meaning,
    ...(how !== undefined ? { fallback: how } : fixed !== undefined && { fallback: { raw: fixed } }),
    defaultWords: required ? 'required' : (words ?? (fixed === undefined ? '–' : String(fixed))),
    ...(beside !== undefined && { beside }),
    ...(askedWhere !== undefined && { askedWhere }),
  };
  return declared as Unnamed<T, O>;
}

export const INPUT = {
  screw: input(SCREW, 'screw size, "ST2.9"; a blank or an unquoted M3 is refused', { required: true }),
  head: input(HEAD_OF_SCREW, 'head by standard or trade word, "ISO 7049" or "pan"', { required: true, beside: 'screw' }),
  end: input(END, 'screw end: cone or flat', { default: 'cone' }),
  length: input(mm, 'nominal screw length', {
    ...SIZE_LIMIT,
    made: notLive(
      'a length is picked by trying all of them',
      pickedLengthMm,
      'screw',
      'grip layers',
      'grip tolerances',
      'ratio',
      'hole depth',
      'bottom gap',
      'relief',
      'relief tolerance',
      'end',
    ),
    words: 'shortest standard length that meets ratio and does not bottom',
  }),
  material: input(MATERIAL, 'material symbol, or your own card as text: "strength 40 MPa; thread share 0.8"', {
    words: 'none; needed where something comes from it',
  }),
  wall: input(mm, 'nominal housing wall', { ...SIZE_LIMIT, required: true }),
  'feature share': input(numeric(SHARE), 'wall of internal features ÷ wall', { above: 0, atMost: 1, default: 0.6 }),
  'board plane': input(mm, 'outer face of the head half to the underside of the board', {
    ...SIZE_LIMIT,
    required: true,
    askedWhere: { condition: 'has recess', otherwise: 'the board plane is blank and the head lies on the board' },
  }),
  seat: input(mm, 'plastic under the head; "0 mm": the head lies on the board', {
    atLeast: 0,
    zeroByUnit: true,
    made: made(J.defaultSeatMm, 'wall', 'screw'),
    words: 'largest of 0.8·wall, 0.6·d, 1.5',
  }),
  'seat tolerance': input(DEVIATION, 'tolerance of the seat', {
    zeroByUnit: true,
    made: made(J.seatDeviation, 'seat'),
    words: '0.1; 0 without a seat',
  }),
  board: input(mm, 'board thickness', { atLeast: 0, default: 0 }),
  'board tolerance': input(DEVIATION, 'tolerance of the board thickness', {
    zeroByUnit: true,
    made: made(J.boardDeviation, 'board'),
    words: '10 % of board, at least 0.08',
  }),
  sleeve: input(mm, 'height of a sleeve moulded on the head half, through the board', { atLeast: 0, default: 0 }),
  'sleeve tolerance': input(DEVIATION, 'tolerance of the sleeve height', { zeroByUnit: true, default: 0.1 }),
  gap: input(mm, 'planned gap between boss face and what it lands on', { atLeast: 0, default: 0 }),
  'gap tolerance': input(DEVIATION, 'tolerance of the planned gap', { default: 0 }),
  hole: input(hole(), 'clearance hole in the head half', {
    ...SIZE_LIMIT,
    made: fromTables(mediumHoleReadings, 'screw'),
    words: 'ISO 273 medium, ASME B18.2.8 normal; required for ST',
  }),
  'hole tolerance': input(DEVIATION, 'tolerance of the clearance hole', { zeroByUnit: true, default: 0.1 }),
  'board hole': input(hole(), 'hole in the board', { ...SIZE_LIMIT, words: 'not checked' }),
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
  allowance: input(mm, 'recess diameter − head diameter, on diameter', {
    atLeast: 0,
    zeroByUnit: true,
    made: made(J.defaultAllowanceMm, 'hole', 'hole tolerance', 'screw'),
    words: 'hole max − screw major min + 0.2',
  }),
  'recess draft': input(degrees, 'draft of the recess, per side', { ...DRAFT, zeroByUnit: true, default: 1 }),
  relief: input(mm, 'depth of the relief at the mouth of the pilot', { atLeast: 0, zeroByUnit: true, default: 0.5 }),
  'relief tolerance': input(DEVIATION, 'tolerance of the relief depth', { zeroByUnit: true, default: 0.1 }),
  'relief diameter': input(mm, 'diameter of the relief', {
    ...SIZE_LIMIT,
    made: made(reliefDiaMm, 'screw', { is: 0.2 }),
    words: 'major max + 0.2',
  }),
  ratio: input(numeric(RATIO), 'full-thread engagement asked at worst case, ÷ d', { ...SIZE_LIMIT, default: 2 }),
  pilot: input(hole(), 'pilot hole', { ...SIZE_LIMIT, made: made(pilotHoleMm, 'screw', 'thread share'), words: 'from thread share' }),
  'pilot held at': input(HELD_AT, 'where the pilot has its size: mid (of the full thread) or mouth', { default: 'mid' }),
  'thread share': input(ofMaterial(SHARE, 'thread share'), 'share of the flank depth that the pilot leaves to the thread', {
    above: 0,
    atMost: 1,
    made: notLive(OF_MATERIAL, threadShareOf, 'material'),
    words: 'material',
  }),
  'boss OD': input(mm, 'boss outside diameter at the free end', {
    ...SIZE_LIMIT,
    made: made(bossOutsideDiaByRuleMm, 'screw', 'od ratio'),
    words: 'od ratio × d',
  }),
  'od ratio': input(ofMaterial(RATIO, 'od ratio'), 'boss outside diameter ÷ d', {
    ...SIZE_LIMIT,
    made: notLive(OF_MATERIAL, odRatioOf, 'material'),
    words: 'material',
  }),
  'boss height': input(mm, 'boss height above the wall of the thread half', { ...SIZE_LIMIT, required: true }),
  'outside draft': input(degrees, 'draft of the boss outside, per side', { ...DRAFT, zeroByUnit: true, default: 0.5 }),
  'hole draft': input(degrees, 'draft of the pilot hole, per side', { ...DRAFT, zeroByUnit: true, default: 0.25 }),
  'hole depth': input(mm, 'depth of the pilot hole below the boss face', {
    ...SIZE_LIMIT,
    made: made(J.sameMm, 'boss height'),
    words: 'boss height',
  }),
  'hole depth tolerance': input(DEVIATION, 'tolerance of the hole depth', { default: 0 }),
  'bottom gap': input(mm, 'room asked under the tip', { atLeast: 0, zeroByUnit: true, default: 0.5 }),
  'sink limit': input(numeric(SHARE), 'boss wall at the root ÷ wall', { ...SIZE_LIMIT, default: 0.6 }),
  face: input(FACE, 'outer face behind the boss: hidden or show', { default: 'hidden' }),
  'slender limit': input(numeric(RATIO), 'boss height ÷ outside diameter to be looked at', { ...SIZE_LIMIT, default: 3 }),
  'pin limit': input(numeric(RATIO), 'core-pin length ÷ diameter to be looked at', { ...SIZE_LIMIT, default: 6 }),
  'yield stress': input(ofMaterial(STRESS, 'strength'), 'yield (or allowable) stress', {
    ...SIZE_LIMIT,
    made: notLive(OF_MATERIAL, yieldStressOf, 'material'),
    words: 'material',
  }),
  safety: input(numeric(RATIO), 'divisor of the strength estimates', { ...SIZE_LIMIT, default: 1 }),
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
