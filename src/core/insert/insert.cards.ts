import { card, GEOMETRY, ITSELF, type Card, type Term } from '../card';
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

export const INSERT_CARDS: readonly Card[] = [
  card('INSERT.BOSS.OD', T, [insert, param('ratio', numeric(RATIO), { symbol: 'k', above: 1, default: 2 })], F.insertBossOdMm, {
    result: { shape: 'number', name: 'outside diameter of the boss', symbol: 'D', unit: 'mm' },
    kind: 'common practice',
    sources: [{ title: 'two to three times the insert', held: 'common practice, read in 2 secondary copies' }],
    example: { args: [4.2], result: 8.4 },
    caution: 'A start value: the drawing of the insert and a test govern.',
  }),
  card(
    'INSERT.HOLE.DEPTH',
    T,
    [insertLength, param('margin', mm, { symbol: 'c', atLeast: 0, default: 1 }), belowFace],
    F.insertHoleDepthMm,
    {
      result: { shape: 'number', name: 'depth of the hole', symbol: 'H', unit: 'mm' },
      kind: 'common practice',
      sources: [{ title: 'room under the insert for displaced plastic and the tip of the screw', held: 'common practice, from memory' }],
      example: { args: [5.8], result: 6.8 },
      caution: 'The least depth: a screw that reaches through needs its own room, SCREW.BOTTOM.',
    },
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
    {
      result: { shape: 'number', name: 'full thread in the insert', symbol: 'L_e', unit: 'mm' },
      kind: 'geometry',
      sources: GEOMETRY,
      example: { args: [10, [[2.5], [1.6]], 5.8, 0.1, 'M3'], result: 4.8 },
    },
  ),
  card('INSERT.LANDING', T, [insert, param('hole', hole('max'), { symbol: 'd_h', above: 0 })], F.insertLandingMm, {
    result: { shape: 'number', name: 'ring of the insert under the mating part', symbol: 'w', unit: 'mm' },
    kind: 'geometry',
    sources: GEOMETRY,
    example: { args: [4.2, 3.4], result: 0.4 },
    caution: 'Negative: the screw draws the insert out through the hole. The insert must also lie at the face, or the plastic lands first.',
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
    {
      result: { shape: 'number', name: 'hoop strain round the insert', symbol: 'ε', unit: '' },
      kind: 'handbook formula',
      sources: [{ title: 'plastic that cannot shrink with a rigid insert', held: 'derived' }],
      example: { args: [90, 19, -60, '0.5 %'], result: 0.00926 },
      caution: 'An estimate: nothing relaxed, no weld line, no notch. A strain that lasts cracks a brittle plastic after months. Test.',
    },
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
    {
      result: { shape: 'number', name: 'pull-out force of the insert', symbol: 'F', unit: 'N' },
      kind: 'handbook formula',
      sources: [
        { title: 'shear yield σ/√3 (von Mises) on the cylinder round the insert', held: 'derived' },
        { title: 'half of the surface holds', held: 'common practice, from memory' },
      ],
      example: { args: [4.2, 5.8, 40], result: 883.68 },
      caution: 'An estimate for a short pull. Installation and torque-out are not computed. Confirm by test.',
    },
  ),
];
