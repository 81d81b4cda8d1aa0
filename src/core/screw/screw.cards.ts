import { card, lookUp, type Calculation } from '../card';
import { choice, numeric, param } from '../read/params';
import { LENGTH } from '../read/quantity';
import { END, FIT, HEAD, MATERIAL, SIZE } from '../read/sources';
import { headDiameterReadings, headHeightReadings, HEAD_LIMITS, type HeadLimit } from './head';
import { clearanceReadings, HOLE_LIMITS, type HoleLimit } from './clearance';
import { type MajorLimit, majorReadings, pitchReadings, pointReadings, rootReadings } from './thread';
import { materialTable, materialWord, QUANTITY } from '../material/material-table';
import * as F from './screw';

const T = 'Screws and standard data';
const size = param('size', SIZE);
const head = param('head', HEAD);
const end = param('end', END, { default: 'cone' });
const limit = choice<MajorLimit>('limit', { max: [], min: [], nominal: [] });
const headLimit = param(
  'limit',
  choice<HeadLimit>('limit', Object.fromEntries(HEAD_LIMITS.map(word => [word, []])) as unknown as Record<HeadLimit, string[]>),
  { default: 'max' },
);
const LOOKUP = { refusesFirst: true } as const;
const mm = (name: string, symbol?: string): { shape: 'number'; name: string; symbol?: string; unit: string } => ({
  shape: 'number',
  name,
  ...(symbol === undefined ? {} : { symbol }),
  unit: 'mm',
});

export const SCREW_CARDS: readonly Calculation[] = [
  lookUp('SCREW.MAJOR', T, [size, param('limit', limit, { default: 'max' })], majorReadings, {
    result: mm('major diameter', 'd1'),
    ...LOOKUP,
  }),
  lookUp('SCREW.ROOT', T, [size, param('limit', choice<'max' | 'min'>('limit', { max: [], min: [] }), { default: 'max' })], rootReadings, {
    result: mm('root diameter', 'd2'),
    ...LOOKUP,
  }),
  lookUp('SCREW.PITCH', T, [size], pitchReadings, { result: mm('pitch', 'P'), ...LOOKUP }),
  lookUp('SCREW.POINT', T, [size, end], pointReadings, { result: mm('length without full thread', 'y'), ...LOOKUP }),
  lookUp('SCREW.HEAD.DIAMETER', T, [size, head, headLimit], headDiameterReadings, { result: mm('head diameter', 'd_k'), ...LOOKUP }),
  lookUp('SCREW.HEAD.HEIGHT', T, [size, head, headLimit], headHeightReadings, { result: mm('head height', 'k'), ...LOOKUP }),
  card('SCREW.LENGTHS', T, [size], F.standardLengths, { result: { shape: 'column', name: 'standard lengths', unit: 'mm' }, ...LOOKUP }),
  card('SCREW.LENGTH.TOL', T, [size, param('length', numeric(LENGTH), { symbol: 'L', above: 0 }), end], F.lengthTolerances, {
    result: {
      shape: 'row',
      columns: [
        { name: 'lower deviation', unit: 'mm' },
        { name: 'upper deviation', unit: 'mm' },
      ],
    },
    ...LOOKUP,
  }),
  card('SCREW.CARD', T, [size, head], F.screwCard, {
    result: {
      shape: 'table',
      columns: ['quantity', 'value', 'unit', 'limit', 'standard and edition', 'how held'].map(name => ({ name, unit: '' })),
    },
    ...LOOKUP,
  }),
  lookUp(
    'HOLE.CLEARANCE',
    T,
    [size, param('fit', FIT, { default: 'medium' }), param('limit', choice<HoleLimit>('limit', HOLE_LIMITS), { default: 'nominal' })],
    clearanceReadings,
    { result: mm('clearance hole', 'd_h'), ...LOOKUP },
  ),
  card('MATERIAL', T, [param('material', MATERIAL), param('quantity', QUANTITY)], materialWord, {
    result: { shape: 'number', name: 'value', unit: '' },
    refusesFirst: true,
  }),
  card('MATERIAL.TABLE', T, [param('material', MATERIAL, { blank: 'absent' })], materialTable, {
    result: { shape: 'table', columns: [] },
    refusesFirst: true,
  }),
];
