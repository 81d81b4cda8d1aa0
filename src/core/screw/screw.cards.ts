import { card, lookUp, type Card } from '../card';
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
const held = 'read in secondary copies; each value says how in SCREW.CARD';
const THREADS = [{ title: 'ISO 965-2 (6g), ISO 1478, ASME B1.1 (2A), ASME B18.6.3 (AB, B)', held }];
const HEADS = [{ title: 'ISO 7045, 14583, 1580, 1207, 4762, 7380-1, 7046, 7047, 7049, 14585, 7050, 7051; DIN 7981; ASME B18.6.3', held }];
const LENGTHS = [
  {
    title: 'ISO 888, ISO 7049, ASME B18.6.3; ISO 4759-1 limits',
    held: 'read in secondary copies; inch list and some tolerances from memory',
  },
];
const LOOKUP = { kind: 'standard table', refusesFirst: true } as const;
const mm = (name: string, symbol?: string): { shape: 'number'; name: string; symbol?: string; unit: string } => ({
  shape: 'number',
  name,
  ...(symbol === undefined ? {} : { symbol }),
  unit: 'mm',
});

export const SCREW_CARDS: readonly Card[] = [
  lookUp('SCREW.MAJOR', T, [size, param('limit', limit, { default: 'max' })], majorReadings, {
    result: mm('major diameter', 'd1'),
    ...LOOKUP,
    sources: THREADS,
    example: { args: ['ST2.9'], result: 2.9 },
  }),
  lookUp('SCREW.ROOT', T, [size, param('limit', choice<'max' | 'min'>('limit', { max: [], min: [] }), { default: 'max' })], rootReadings, {
    result: mm('root diameter', 'd2'),
    ...LOOKUP,
    sources: THREADS,
    example: { args: ['ST2.9'], result: 2.18 },
  }),
  lookUp('SCREW.PITCH', T, [size], pitchReadings, {
    result: mm('pitch', 'P'),
    ...LOOKUP,
    sources: THREADS,
    example: { args: ['M3'], result: 0.5 },
  }),
  lookUp('SCREW.POINT', T, [size, end], pointReadings, {
    result: mm('length without full thread', 'y'),
    ...LOOKUP,
    sources: [
      {
        title: 'ISO 1478 y; ASME B18.6.3 type B point taper; ISO 4753 two pitches for machine screws',
        held: 'read in secondary copies; ISO 4753 from memory',
      },
    ],
    example: { args: ['ST2.9', 'flat'], result: 2.1 },
  }),
  lookUp('SCREW.HEAD.DIAMETER', T, [size, head, headLimit], headDiameterReadings, {
    result: mm('head diameter', 'd_k'),
    ...LOOKUP,
    sources: HEADS,
    example: { args: ['M3', 'pan'], result: 5.6 },
  }),
  lookUp('SCREW.HEAD.HEIGHT', T, [size, head, headLimit], headHeightReadings, {
    result: mm('head height', 'k'),
    ...LOOKUP,
    sources: HEADS,
    example: { args: ['M3', 'pan'], result: 2.4 },
  }),
  card('SCREW.LENGTHS', T, [size], F.standardLengths, {
    result: { shape: 'column', name: 'standard lengths', unit: 'mm' },
    ...LOOKUP,
    sources: LENGTHS,
    example: { args: ['ST2.9'], result: [[4.5], [6.5], [9.5], [13], [16], [19], [22], [25], [32], [38], [45], [50]] },
  }),
  card('SCREW.LENGTH.TOL', T, [size, param('length', numeric(LENGTH), { symbol: 'L', above: 0 }), end], F.lengthTolerances, {
    result: {
      shape: 'row',
      columns: [
        { name: 'lower deviation', unit: 'mm' },
        { name: 'upper deviation', unit: 'mm' },
      ],
    },
    ...LOOKUP,
    sources: LENGTHS,
    example: { args: ['ST2.9', 13, 'flat'], result: [[-0.8, 0]] },
  }),
  card('SCREW.CARD', T, [size, head], F.screwCard, {
    result: {
      shape: 'table',
      columns: ['quantity', 'value', 'unit', 'limit', 'standard and edition', 'how held'].map(name => ({ name, unit: '' })),
    },
    ...LOOKUP,
    sources: [...THREADS, ...HEADS],
    example: { args: ['ST2.9', 'pan'], row: 3, values: ['pitch P', 1.1, 'mm', 'approx', 'ISO 1478:1999', 'read in 3 secondary copies'] },
    notLive: 'text and values of standards',
  }),
  lookUp(
    'HOLE.CLEARANCE',
    T,
    [size, param('fit', FIT, { default: 'medium' }), param('limit', choice<HoleLimit>('limit', HOLE_LIMITS), { default: 'nominal' })],
    clearanceReadings,
    {
      result: mm('clearance hole', 'd_h'),
      ...LOOKUP,
      sources: [{ title: 'ISO 273:1979; ASME B18.2.8-1999; DIN 74-1 form C (withdrawn)', held }],
      example: { args: ['M3'], result: 3.4 },
    },
  ),
  card('MATERIAL', T, [param('material', MATERIAL), param('quantity', QUANTITY)], materialWord, {
    result: { shape: 'number', name: 'value', unit: '' },
    kind: 'common practice',
    sources: [{ title: 'collected ranges by ISO 1043 symbol', held: 'read in secondary copies or from memory; see MATERIAL.TABLE' }],
    example: { args: ['ABS', 'strength'], result: 45 },
    notLive: 'a start value, as it was',
    refusesFirst: true,
    caution: 'A typical value inside a range: the data sheet of the grade governs.',
  }),
  card('MATERIAL.TABLE', T, [param('material', MATERIAL, { blank: 'absent' })], materialTable, {
    result: { shape: 'table', columns: [] },
    kind: 'common practice',
    sources: [{ title: 'collected ranges by ISO 1043 symbol', held: 'each row says how' }],
    example: {
      args: ['ABS'],
      row: 3,
      values: ['strength', 45, 38, 50, 'MPa', 'yield', 'range merged from secondary tables and memory, typical value from memory'],
    },
    notLive: 'text and values',
    refusesFirst: true,
  }),
];
