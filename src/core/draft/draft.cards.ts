import { card, GEOMETRY, ITSELF, type Card } from '../card';
import { choice, numeric, param } from '../read/params';
import { ANGLE, LENGTH } from '../read/quantity';
import { about, exists } from '../read/relation';
import * as F from './draft';

const T = 'Draft';
const CHART = [...GEOMETRY, { title: 'draft chart for 1 inch of depth', held: 'read in 1 secondary copy' }];
// a forgotten draft must not pass for none
const draft = param('draft', numeric(ANGLE), { symbol: 'α', atLeast: 0, below: 90, blank: 'explicit' });
const height = param('height', numeric(LENGTH), { symbol: 'h', atLeast: 0 });

export const DRAFT_CARDS: readonly Card[] = [
  card('DRAFT.OFFSET', T, [height, draft], F.draftOffsetMm, {
    result: { shape: 'number', name: 'offset per side', symbol: 's', unit: 'mm' },
    kind: 'geometry',
    sources: CHART,
    example: { args: ['1 in', '1°'], result: 0.4434 },
  }),
  card(
    'DRAFT.ANGLE',
    T,
    [param('offset', numeric(LENGTH), { symbol: 's', atLeast: 0 }), param('height', numeric(LENGTH), { symbol: 'h', above: 0 })],
    F.draftAngleDeg,
    {
      result: { shape: 'number', name: 'draft per side', symbol: 'α', unit: '°' },
      kind: 'geometry',
      sources: CHART,
      example: { args: [1, 1], result: 45 },
    },
  ),
  card(
    'DRAFT.HEIGHT',
    T,
    [param('offset', numeric(LENGTH), { symbol: 's', atLeast: 0 }), param('draft', numeric(ANGLE), { symbol: 'α', above: 0, below: 90 })],
    F.draftHeightMm,
    {
      result: { shape: 'number', name: 'height', symbol: 'h', unit: 'mm' },
      kind: 'geometry',
      sources: CHART,
      example: { args: [0.1, '1°'], result: 5.729 },
    },
  ),
  card(
    'DRAFT.SIZE',
    T,
    [
      param('size', numeric(LENGTH), { symbol: 'D', above: 0 }),
      param('distance', numeric(LENGTH), { symbol: 'h', atLeast: 0 }),
      draft,
      param('direction', choice<F.DraftDirection>('direction', { grows: [], shrinks: [] }), {
        relation: exists(
          [['>', { formula: { draftedSizeMm: F.draftedSizeMm }, of: ['size', 'distance', 'draft', ITSELF] }, 0]],
          number => `the feature is drafted away at ${about(F.draftHeightMm(number('size') / 2, number('draft')))}`,
        ),
      }),
    ],
    F.draftedSizeMm,
    {
      result: { shape: 'number', name: 'size at that distance', symbol: 'D', unit: 'mm' },
      kind: 'geometry',
      sources: CHART,
      example: { args: [6, 12, '0.5°', 'grows'], result: 6.2094 },
    },
  ),
  card(
    'DRAFT.TEXTURE',
    T,
    [
      param('base', numeric(ANGLE), { symbol: 'α_0', atLeast: 0, below: 90 }),
      param('texture_depth', numeric(LENGTH), { symbol: 't', atLeast: 0 }),
      param('per_step', numeric(ANGLE), {
        symbol: 'k',
        above: 0,
        below: 90,
        default: 1.5,
        relation: exists(
          [['<', { formula: { texturedDraftDeg: F.texturedDraftDeg }, of: ['base', 'texture_depth', ITSELF] }, 90]],
          (number, perStepDeg) =>
            `with it a texture deeper than ${about(((90 - number('base')) / perStepDeg) * 0.025)} asks for 90° and more`,
        ),
      }),
    ],
    F.texturedDraftDeg,
    {
      result: { shape: 'number', name: 'draft per side', symbol: 'α', unit: '°' },
      kind: 'common practice',
      sources: [
        { title: '1.5° for each 0.025 mm of depth', held: 'common practice, read in 3 guides; 2 others print 1.0°, 1 prints 1 to 1.5°' },
      ],
      example: { args: ['0°', 0.125], result: 7.5 },
      caution: 'A start value: guides differ by half. Inner faces and low shrinkage need more; the texture maker decides.',
    },
  ),
];
