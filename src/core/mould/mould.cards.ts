import { card, ITSELF, type Calculation, type Relation } from '../card';
import { DEVIATIONS, numbers } from '../read/lists';
import { choice, DEVIATION, numeric, param } from '../read/params';
import { ANGLE, DIFFUSIVITY, LENGTH, SHARE, TEMPERATURE } from '../read/quantity';
import { about, exists } from '../read/relation';
import { ofMaterial } from '../read/sources';
import { WHOLE } from '../read/whole';
import * as F from './mould';

const T = 'Ribs, lip, mould';
const mm = numeric(LENGTH);
const wall = param('wall', mm, { symbol: 'T', above: 0 });
const rib = param('rib', mm, { symbol: 'w', above: 0 });
const fillet = param('fillet', mm, { symbol: 'R', atLeast: 0, default: 0 });
const base = param('base', mm, { symbol: 't_b', above: 0 });
const tip = param('tip', mm, { symbol: 't_t', above: 0 });
const ribHeight = param('height', mm, { symbol: 'h', atLeast: 0 });
const draft = param('draft', numeric(ANGLE), { symbol: 'α', atLeast: 0, below: 90 });
const clearance = param('clearance', mm, { symbol: 'g', atLeast: 0 });
const layers = { atLeast: 0 };

/** Not one quantity with a temperature difference: a kelvin reading would be off by 273. */
const celsius = numeric(TEMPERATURE);
const between: Relation = {
  holds: [
    ['>', ITSELF, 'mould'],
    ['<', ITSELF, 'melt'],
  ],
  refusal: earlier => `must lie between mould ${String(earlier.get('mould'))} °C and melt ${String(earlier.get('melt'))} °C`,
};
const takesTime: Relation = {
  holds: [['>', ['*', { formula: { coolingShape: F.coolingShape }, of: [ITSELF] }, ['-', 'melt', 'mould']], ['-', 'eject', 'mould']]],
  refusal: earlier =>
    `eject ${String(earlier.get('eject'))} °C is so near melt ` +
    `${String(earlier.get('melt'))} °C that the formula gives no time; use "centre"`,
};

export const MOULD_CARDS: readonly Calculation[] = [
  card('RIB.TIP', T, [base, ribHeight, draft], F.ribTipMm, {
    result: { shape: 'number', name: 'thickness at the tip', symbol: 't_t', unit: 'mm' },
  }),
  card('RIB.BASE', T, [tip, ribHeight, draft], F.ribBaseMm, {
    result: { shape: 'number', name: 'thickness at the base', symbol: 't_b', unit: 'mm' },
  }),
  card(
    'RIB.SECTION',
    T,
    [param('width', mm, { symbol: 'B', above: 0 }), wall, base, tip, param('height', mm, { symbol: 'h', above: 0 })],
    F.ribSection,
    {
      result: {
        shape: 'table',
        columns: [
          { name: 'quantity', unit: '' },
          { name: 'value', unit: '' },
          { name: 'unit', unit: '' },
        ],
      },
    },
  ),
  card(
    'LIP.SKIN',
    T,
    [
      wall,
      param('lip', mm, { symbol: 't_l', above: 0 }),
      clearance,
      param('gaps', WHOLE, {
        symbol: 'n',
        atLeast: 1,
        atMost: 2,
        default: 1,
        relation: exists(
          [['>', { formula: { lipSkinMm: F.lipSkinMm }, of: ['wall', 'lip', 'clearance', ITSELF] }, 0]],
          (number, gaps) => `lip and clearance take ${about(number('lip') + gaps * number('clearance'))} and leave no wall`,
        ),
      }),
    ],
    F.lipSkinMm,
    { result: { shape: 'number', name: 'wall outside the lip', unit: 'mm' } },
  ),
  card(
    'LIP.FIT',
    T,
    [
      clearance,
      param('lip_tol', DEVIATION, { symbol: 't_l' }),
      param('groove_tol', DEVIATION, { symbol: 't_g' }),
      param('mismatch', mm, { symbol: 'm', atLeast: 0, default: 0 }),
    ],
    F.lipFitMm,
    {
      result: {
        shape: 'row',
        columns: [
          { name: 'min per side', unit: 'mm' },
          { name: 'nominal per side', unit: 'mm' },
          { name: 'max per side', unit: 'mm' },
        ],
      },
    },
  ),
  card('RIM.GAP', T, [param('boss_stack', mm, { symbol: 'b', above: 0 }), param('rim_stack', mm, { symbol: 'r', above: 0 })], F.rimGapMm, {
    result: { shape: 'number', name: 'gap at the rim when the bosses touch', unit: 'mm' },
  }),
  card(
    'RIM.GAP.LIMITS',
    T,
    [
      param('boss_layers', numbers(LENGTH, layers), { symbol: 'b_i', group: 'boss' }),
      param('boss_tolerances', DEVIATIONS, { symbol: 't_b', group: 'boss' }),
      param('rim_layers', numbers(LENGTH, layers), { symbol: 'r_i', group: 'rim' }),
      param('rim_tolerances', DEVIATIONS, { symbol: 't_r', group: 'rim' }),
    ],
    F.rimGapLimitsMm,
    {
      result: {
        shape: 'row',
        columns: [
          { name: 'min', unit: 'mm' },
          { name: 'nominal', unit: 'mm' },
          { name: 'max', unit: 'mm' },
          { name: 'root-sum-square half spread', unit: 'mm' },
        ],
      },
    },
  ),
  card('JUNCTION.CIRCLE', T, [wall, rib, fillet], F.junctionCircleMm, {
    result: { shape: 'number', name: 'largest circle in the junction', symbol: 'D', unit: 'mm' },
  }),
  card('JUNCTION.RATIO', T, [wall, rib, fillet], F.junctionRatio, { result: { shape: 'number', name: 'largest circle ÷ wall', unit: '' } }),
  card(
    'COOLING.TIME',
    T,
    [
      param('thickness', mm, { symbol: 's', above: 0 }),
      param('diffusivity', ofMaterial(DIFFUSIVITY, 'diffusivity'), { symbol: 'a', above: 0 }),
      param('melt', celsius, { symbol: 'T_m', blank: 'refused' }),
      param('mould', celsius, { symbol: 'T_w', blank: 'refused' }),
      param('eject', celsius, { symbol: 'T_e', blank: 'refused', relation: between }),
      param('criterion', choice<F.CoolingCriterion>('criterion', { centre: [], mean: [] }), { default: 'centre', relation: takesTime }),
    ],
    F.coolingTimeS,
    { result: { shape: 'number', name: 'cooling time', symbol: 't', unit: 's' } },
  ),
  card(
    'CAVITY.SIZE',
    T,
    [
      param('part', mm, { symbol: 'l', above: 0 }),
      param('shrinkage', ofMaterial(SHARE, 'shrinkage'), { symbol: 'S', atLeast: 0, below: 1, blank: 'refused' }),
    ],
    F.cavitySizeMm,
    { result: { shape: 'number', name: 'size in the cavity', unit: 'mm' } },
  ),
];
