import { card, ITSELF, type Calculation } from '../card';
import { numbers } from '../read/lists';
import { DEVIATION, numeric, param } from '../read/params';
import { EXPANSION, LENGTH, TEMPERATURE_CHANGE } from '../read/quantity';
import { hole, ofMaterial } from '../read/sources';
import { WHOLE } from '../read/whole';
import { MOST_SEED } from '../tolerance/stack.cards';
import { patternFit } from './fit';
import * as F from './pattern';

const T = 'Pattern of holes';
const mm = numeric(LENGTH);
const expansion = ofMaterial(EXPANSION, 'expansion');

export const PATTERN_CARDS: readonly Calculation[] = [
  card(
    'PATTERN.SLOT',
    T,
    [
      param('hole', hole(), { symbol: 'd_h', above: 0 }),
      param('distance', mm, { symbol: 'l', above: 0 }),
      param('tolerance', DEVIATION, { symbol: 't' }),
      param('expansion_a', expansion, { symbol: 'α_a', atLeast: 0, default: 0 }),
      param('expansion_b', expansion, { symbol: 'α_b', atLeast: 0, default: 0 }),
      param('temperature_change', numeric(TEMPERATURE_CHANGE), { symbol: 'ΔT', default: 0 }),
    ],
    F.slotLengthMm,
    { result: { shape: 'number', name: 'length of the slot', symbol: 'L', unit: 'mm' } },
  ),
  card(
    'PATTERN.TURN',
    T,
    [
      param('play_round', mm, { symbol: 's_r', atLeast: 0 }),
      param('play_slot', mm, { symbol: 's_s', atLeast: 0 }),
      param('distance', mm, {
        symbol: 'l',
        above: 0,
        relation: {
          holds: [['>=', ['-', ITSELF, ['*', 5, 'play_round']], ['*', 5, 'play_slot']]],
          words: 'at least five times both plays',
        },
      }),
    ],
    F.patternTurnDeg,
    { result: { shape: 'number', name: 'largest turn', symbol: 'φ', unit: '°' } },
  ),
  card(
    'PATTERN.FIT',
    T,
    [
      param('x', numbers(LENGTH), { symbol: 'x_i' }),
      param('y', numbers(LENGTH), { symbol: 'y_i' }),
      param('zone_boss', mm, { symbol: 'T1', above: 0 }),
      param('zone_hole', mm, { symbol: 'T2', above: 0 }),
      param('play', mm, { symbol: 's', above: 0 }),
      param('samples', WHOLE, { symbol: 'N', atLeast: 1000, atMost: 1_000_000, default: 20_000 }),
      param('seed', WHOLE, { atLeast: 1, atMost: MOST_SEED, default: 1 }),
    ],
    patternFit,
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
];
