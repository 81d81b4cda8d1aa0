// What a variant of the joint is described by. A given drawing value always wins over a table or a start value.
import type { Kind } from '../core/card';
import { bossOutsideDiaByRuleMm } from '../core/boss/boss';
import { pickedLengthMm } from '../core/engagement/screw-length';
import { pilotHoleMm, reliefDiaMm } from '../core/hole/hole';
import { materialValue, type Material } from '../core/material/material';
import { choice, DEVIATION, named, numeric, param, type ParamOptions } from '../core/read/params';
import { ANGLE, LENGTH, RATIO, SHARE, STRESS } from '../core/read/quantity';
import { END, headDiameter, headHeight, hole, MATERIAL, ofMaterial, SCREW } from '../core/read/sources';
import { notInTable, wrongInput } from '../core/refuse';
import { clearanceHoleMm } from '../core/screw/clearance';
import { headDiameterMm, headHeightMm, parseHead, type Head } from '../core/screw/head';
import type { Screw } from '../core/screw/thread';
import * as J from './formulas';
import type { Input, Made } from './graph';

const mm = numeric(LENGTH);
const degrees = numeric(ANGLE);
const SIZE_LIMIT = { above: 0 };
const DRAFT = { atLeast: 0, below: 90 };

const HEAD_OF_SCREW: Kind<Head> = named('head', 'pan', (text, earlier) => parseHead(text, (earlier.get('screw') as Screw).size));
const FACE = choice('face', { hidden: ['hidden face'], show: ['show face'] });
const HELD_AT = choice<J.PilotHeldAt>('pilot held at', { mid: ['middle'], mouth: [] });

/** Look-ups that make a default. */
const headDiameterOf = (screw: Screw, head: Head): number => headDiameterMm(screw.size, head, 'max');
const headHeightOf = (screw: Screw, head: Head): number => headHeightMm(screw.size, head, 'max');
const fromMaterial =
  (quantity: string, what: string) =>
  (material: Material | undefined): number => {
    if (material === undefined) throw wrongInput(`${what} is not given and there is no material to take it from`);
    return materialValue(material, quantity);
  };
const threadShareOf = fromMaterial('thread share', 'thread share');
const odRatioOf = fromMaterial('od ratio', 'od ratio');
export const densityOf = fromMaterial('density', 'density');
const yieldStressOf = fromMaterial('strength', 'yield stress');
const mediumHoleOf = (screw: Screw): number => {
  if (screw.size.family === 'ST')
    throw notInTable(
      `hole must be given for ${screw.size.text}: no standard clearance hole is held; "${screw.size.text} DIN 74-1" reads a form C through hole`,
    );
  return clearanceHoleMm(screw.size, 'medium', 'nominal');
};

type Options = ParamOptions & { readonly required?: true; readonly zeroByUnit?: true; readonly made?: Made; readonly words?: string };

function input(name: string, kind: Kind<unknown>, meaning: string, options: Options = {}): [string, Input] {
  const { required, zeroByUnit, made, words, ...rest } = options;
  const fixed = rest.default;
  const blank = zeroByUnit ? 'explicit' : required ? 'refused' : fixed === undefined ? 'absent' : undefined;
  return [
    name,
    {
      param: param(name, kind, blank === undefined ? rest : { ...rest, blank }),
      unit: kind.unit,
      meaning,
      ...(made === undefined ? (fixed === undefined ? {} : { fallback: { raw: fixed } }) : { fallback: made }),
      defaultWords: required ? 'required' : (words ?? (fixed === undefined ? '–' : String(fixed))),
    },
  ];
}

const made = (formula: Made['formula'], ...args: Made['args']): Made => ({ formula, args });

export const INPUTS: ReadonlyMap<string, Input> = new Map([
  input('screw', SCREW, 'screw size, "ST2.9"; a blank or an unquoted M3 is refused', { required: true }),
  input('head', HEAD_OF_SCREW, 'head by standard or trade word, "ISO 7049" or "pan"', { required: true }),
  input('end', END, 'screw end: cone or flat', { default: 'cone' }),
  input('length', mm, 'nominal screw length', {
    ...SIZE_LIMIT,
    made: made(
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
  input('material', MATERIAL, 'material symbol, or your own card as text: "strength 40 MPa; thread share 0.8"', {
    words: 'none; needed where something comes from it',
  }),
  input('wall', mm, 'nominal housing wall', { ...SIZE_LIMIT, required: true }),
  input('feature share', numeric(SHARE), 'wall of internal features ÷ wall', { above: 0, atMost: 1, default: 0.6 }),
  input('board plane', mm, 'outer face of the head half to the underside of the board', { ...SIZE_LIMIT, required: true }),
  input('seat', mm, 'plastic under the head; "0 mm": the head lies on the board', {
    atLeast: 0,
    zeroByUnit: true,
    made: made(J.defaultSeatMm, 'wall', 'screw'),
    words: 'largest of 0.8·wall, 0.6·d, 1.5',
  }),
  input('seat tolerance', DEVIATION, 'tolerance of the seat', {
    zeroByUnit: true,
    made: made(J.seatDeviation, 'seat'),
    words: '0.1; 0 without a seat',
  }),
  input('board', mm, 'board thickness', { atLeast: 0, default: 0 }),
  input('board tolerance', DEVIATION, 'tolerance of the board thickness', {
    zeroByUnit: true,
    made: made(J.boardDeviation, 'board'),
    words: '10 % of board, at least 0.08',
  }),
  input('sleeve', mm, 'height of a sleeve moulded on the head half, through the board', { atLeast: 0, default: 0 }),
  input('sleeve tolerance', DEVIATION, 'tolerance of the sleeve height', { zeroByUnit: true, default: 0.1 }),
  input('gap', mm, 'planned gap between boss face and what it lands on', { atLeast: 0, default: 0 }),
  input('gap tolerance', DEVIATION, 'tolerance of the planned gap', { default: 0 }),
  input('hole', hole(), 'clearance hole in the head half', {
    ...SIZE_LIMIT,
    made: made(mediumHoleOf, 'screw'),
    words: 'ISO 273 medium, ASME B18.2.8 normal; required for ST',
  }),
  input('hole tolerance', DEVIATION, 'tolerance of the clearance hole', { zeroByUnit: true, default: 0.1 }),
  input('board hole', hole(), 'hole in the board', { ...SIZE_LIMIT, words: 'not checked' }),
  input('head diameter', headDiameter('max'), 'head diameter, largest', {
    ...SIZE_LIMIT,
    made: made(headDiameterOf, 'screw', 'head'),
    words: 'table, max',
  }),
  input('head height', headHeight('max'), 'head height, largest', {
    ...SIZE_LIMIT,
    made: made(headHeightOf, 'screw', 'head'),
    words: 'table, max',
  }),
  input('allowance', mm, 'recess diameter − head diameter, on diameter', {
    atLeast: 0,
    zeroByUnit: true,
    made: made(J.defaultAllowanceMm, 'hole', 'hole tolerance', 'screw'),
    words: 'hole max − screw major min + 0.2',
  }),
  input('recess draft', degrees, 'draft of the recess, per side', { ...DRAFT, zeroByUnit: true, default: 1 }),
  input('relief', mm, 'depth of the relief at the mouth of the pilot', { atLeast: 0, zeroByUnit: true, default: 0.5 }),
  input('relief tolerance', DEVIATION, 'tolerance of the relief depth', { zeroByUnit: true, default: 0.1 }),
  input('relief diameter', mm, 'diameter of the relief', {
    ...SIZE_LIMIT,
    made: made(reliefDiaMm, 'screw', { is: 0.2 }),
    words: 'major max + 0.2',
  }),
  input('ratio', numeric(RATIO), 'full-thread engagement asked at worst case, ÷ d', { ...SIZE_LIMIT, default: 2 }),
  input('pilot', hole(), 'pilot hole', { ...SIZE_LIMIT, made: made(pilotHoleMm, 'screw', 'thread share'), words: 'from thread share' }),
  input('pilot held at', HELD_AT, 'where the pilot has its size: mid (of the full thread) or mouth', { default: 'mid' }),
  input('thread share', ofMaterial(SHARE, 'thread share'), 'share of the flank depth that the pilot leaves to the thread', {
    above: 0,
    atMost: 1,
    made: made(threadShareOf, 'material'),
    words: 'material',
  }),
  input('boss OD', mm, 'boss outside diameter at the free end', {
    ...SIZE_LIMIT,
    made: made(bossOutsideDiaByRuleMm, 'screw', 'od ratio'),
    words: 'od ratio × d',
  }),
  input('od ratio', ofMaterial(RATIO, 'od ratio'), 'boss outside diameter ÷ d', {
    ...SIZE_LIMIT,
    made: made(odRatioOf, 'material'),
    words: 'material',
  }),
  input('boss height', mm, 'boss height above the wall of the thread half', { ...SIZE_LIMIT, required: true }),
  input('outside draft', degrees, 'draft of the boss outside, per side', { ...DRAFT, zeroByUnit: true, default: 0.5 }),
  input('hole draft', degrees, 'draft of the pilot hole, per side', { ...DRAFT, zeroByUnit: true, default: 0.25 }),
  input('hole depth', mm, 'depth of the pilot hole below the boss face', {
    ...SIZE_LIMIT,
    made: made(J.same, 'boss height'),
    words: 'boss height',
  }),
  input('hole depth tolerance', DEVIATION, 'tolerance of the hole depth', { default: 0 }),
  input('bottom gap', mm, 'room asked under the tip', { atLeast: 0, zeroByUnit: true, default: 0.5 }),
  input('sink limit', numeric(SHARE), 'boss wall at the root ÷ wall', { ...SIZE_LIMIT, default: 0.6 }),
  input('face', FACE, 'outer face behind the boss: hidden or show', { default: 'hidden' }),
  input('slender limit', numeric(RATIO), 'boss height ÷ outside diameter to be looked at', { ...SIZE_LIMIT, default: 3 }),
  input('pin limit', numeric(RATIO), 'core-pin length ÷ diameter to be looked at', { ...SIZE_LIMIT, default: 6 }),
  input('yield stress', ofMaterial(STRESS, 'strength'), 'yield (or allowable) stress', {
    ...SIZE_LIMIT,
    made: made(yieldStressOf, 'material'),
    words: 'material',
  }),
  input('safety', numeric(RATIO), 'divisor of the strength estimates', { ...SIZE_LIMIT, default: 1 }),
]);

export const JOINT_INPUT_NAMES: readonly string[] = [...INPUTS.keys()];
