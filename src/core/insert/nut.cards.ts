import { card, GEOMETRY, lookUp, type Card, type Kind } from '../card';
import type { Source } from '../kinds';
import { choice, named, numeric, param } from '../read/params';
import { LENGTH } from '../read/quantity';
import { SIZE } from '../read/sources';
import { parseSize } from '../screw/size';
import * as F from './nut';

const T = 'Inserts and nuts';
const NUT: Kind<F.Nut> = named('nut', 'M3', text => F.nutOf(parseSize(text)));
const pocket = [param('size', NUT), param('allowance', numeric(LENGTH), { symbol: 'c', atLeast: 0, default: 0.1 })] as const;
const held = 'read in secondary copies';
const POCKET: readonly Source[] = [
  { title: 'ISO 4032 width across flats', held },
  { title: 'allowance of 0.1 mm', held: 'common practice, from memory' },
];
const caution = 'The pocket at its narrowest: draft opens it outwards. What it holds against turning and pulling is not computed. Test.';

export const NUT_CARDS: readonly Card[] = [
  card('NUT.POCKET', T, pocket, F.nutPocketMm, {
    result: { shape: 'number', name: 'width across the flats of the pocket', symbol: 'S', unit: 'mm' },
    kind: 'common practice',
    sources: POCKET,
    example: { args: ['M3'], result: 5.6 },
    caution,
  }),
  card('NUT.POCKET.CORNER', T, pocket, F.nutPocketCornerMm, {
    result: { shape: 'number', name: 'width across the corners of the pocket', symbol: 'E', unit: 'mm' },
    kind: 'common practice',
    sources: [...POCKET, ...GEOMETRY],
    example: { args: ['M3'], result: 6.466 },
    caution,
  }),
  lookUp(
    'NUT.HEIGHT',
    T,
    [param('size', SIZE), param('limit', choice<F.NutLimit>('limit', { max: [], min: [] }), { default: 'max' })],
    F.nutHeightReadings,
    {
      result: { shape: 'number', name: 'height of the nut', symbol: 'm', unit: 'mm' },
      kind: 'standard table',
      sources: [{ title: 'ISO 4032', held }],
      example: { args: ['M3'], result: 2.4 },
      refusesFirst: true,
    },
  ),
];
