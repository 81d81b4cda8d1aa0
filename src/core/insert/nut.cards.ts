import { card, lookUp, type Calculation, type Kind } from '../card';

import { choice, named, numeric, param } from '../read/params';
import { LENGTH } from '../read/quantity';
import { SIZE } from '../read/sources';
import { parseSize } from '../screw/size';
import * as F from './nut';

const T = 'Inserts and nuts';
const NUT: Kind<F.Nut> = named('nut', 'M3', text => F.nutOf(parseSize(text)));
const pocket = [param('size', NUT), param('allowance', numeric(LENGTH), { symbol: 'c', atLeast: 0, default: 0.1 })] as const;

export const NUT_CARDS: readonly Calculation[] = [
  card('NUT.POCKET', T, pocket, F.nutPocketMm, {
    result: { shape: 'number', name: 'width across the flats of the pocket', symbol: 'S', unit: 'mm' },
  }),
  card('NUT.POCKET.CORNER', T, pocket, F.nutPocketCornerMm, {
    result: { shape: 'number', name: 'width across the corners of the pocket', symbol: 'E', unit: 'mm' },
  }),
  lookUp(
    'NUT.HEIGHT',
    T,
    [param('size', SIZE), param('limit', choice<F.NutLimit>('limit', { max: [], min: [] }), { default: 'max' })],
    F.nutHeightReadings,
    { result: { shape: 'number', name: 'height of the nut', symbol: 'm', unit: 'mm' }, refusesFirst: true },
  ),
];
