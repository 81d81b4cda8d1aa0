import { card, ITSELF, type Calculation, type Term } from '../card';
import { numbers } from '../read/lists';
import { numeric, param } from '../read/params';
import { EXPANSION, LENGTH, RATIO, SHARE, STRESS, TEMPERATURE_CHANGE } from '../read/quantity';
import { exists } from '../read/relation';
import { hole, ofMaterial, point } from '../read/sources';
import * as F from './insert';

const T = 'Inserts and nuts';
const mm = numeric(LENGTH);
const insert = param('insert', mm, { symbol: 'd_i', above: 0 });
const insertLength = param('insert_length', mm, { symbol: 'l_i', above: 0 });
const belowFace = param('below_face', mm, { symbol: 'b', atLeast: 0, default: 0 });
const expansion = ofMaterial(EXPANSION, 'expansion');
const strain: Term = {
  formula: { insertStrain: F.insertStrain },
  of: ['expansion', 'expansion_insert', 'temperature_change', ITSELF],
};

export const INSERT_CARDS: readonly Calculation[] = [
  card('INSERT.BOSS.OD', T, [insert, param('ratio', numeric(RATIO), { symbol: 'k', above: 1, default: 2 })], F.insertBossOdMm, {
    result: { shape: 'number', name: 'outside diameter of the boss', symbol: 'D', unit: 'mm' },
  }),
  card(
    'INSERT.HOLE.DEPTH',
    T,
    [insertLength, param('margin', mm, { symbol: 'c', atLeast: 0, default: 1 }), belowFace],
    F.insertHoleDepthMm,
    { result: { shape: 'number', name: 'depth of the hole', symbol: 'H', unit: 'mm' } },
  ),
  card(
    'INSERT.ENGAGEMENT',
    T,
    [
      param('length', mm, { symbol: 'L', above: 0 }),
      param('grip', numbers(LENGTH, { atLeast: 0 }), { symbol: 'G' }),
      insertLength,
      belowFace,
      param('point', point, { symbol: 'y', atLeast: 0, default: 0, uncounted: 'point not counted' }),
    ],
    F.insertEngagementMm,
    { result: { shape: 'number', name: 'full thread in the insert', symbol: 'L_e', unit: 'mm' } },
  ),
  card('INSERT.LANDING', T, [insert, param('hole', hole('max'), { symbol: 'd_h', above: 0 })], F.insertLandingMm, {
    result: { shape: 'number', name: 'ring of the insert under the mating part', symbol: 'w', unit: 'mm' },
  }),
  card(
    'INSERT.STRAIN',
    T,
    [
      param('expansion', expansion, { symbol: 'α', above: 0 }),
      param('expansion_insert', expansion, { symbol: 'α_i', above: 0 }),
      param('temperature_change', numeric(TEMPERATURE_CHANGE), { symbol: 'ΔT', blank: 'refused' }),
      param('shrinkage', ofMaterial(SHARE, 'shrinkage'), {
        symbol: 'S',
        atLeast: 0,
        below: 1,
        default: 0,
        uncounted: 'shrinkage not counted: the thermal part alone',
        relation: exists(
          [
            ['>=', strain, 0],
            ['>=', F.LARGEST_INSERT_STRAIN, strain],
          ],
          (number, shrinkage) =>
            F.insertStrain(number('expansion'), number('expansion_insert'), number('temperature_change'), shrinkage) < 0
              ? 'the insert shrinks more than the plastic: it comes loose, and there is no hoop strain'
              : `the formula holds for a strain of at most ${100 * F.LARGEST_INSERT_STRAIN} %`,
        ),
      }),
    ],
    F.insertStrain,
    { result: { shape: 'number', name: 'hoop strain round the insert', symbol: 'ε', unit: '' } },
  ),
  card(
    'INSERT.PULLOUT',
    T,
    [
      insert,
      insertLength,
      param('yield_stress', ofMaterial(STRESS, 'strength'), { symbol: 'σ', above: 0 }),
      param('share', numeric(SHARE), { symbol: 'e', above: 0, atMost: 1, default: 0.5 }),
      param('safety', numeric(RATIO), { symbol: 'S', atLeast: 1, default: 1 }),
    ],
    F.insertPullOutN,
    { result: { shape: 'number', name: 'pull-out force of the insert', symbol: 'F', unit: 'N' } },
  ),
];
