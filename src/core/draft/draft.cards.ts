import { card, ITSELF, type Calculation } from '../card';
import { choice, numeric, param } from '../read/params';
import { ANGLE, LENGTH } from '../read/quantity';
import { about, exists } from '../read/relation';
import * as F from './draft';

const T = 'Draft';
// a forgotten draft must not pass for none
const draft = param('draft', numeric(ANGLE), { symbol: 'α', atLeast: 0, below: 90, blank: 'explicit' });
const height = param('height', numeric(LENGTH), { symbol: 'h', atLeast: 0 });

export const DRAFT_CARDS: readonly Calculation[] = [
  card('DRAFT.OFFSET', T, [height, draft], F.draftOffsetMm, {
    result: { shape: 'number', name: 'offset per side', symbol: 's', unit: 'mm' },
  }),
  card(
    'DRAFT.ANGLE',
    T,
    [param('offset', numeric(LENGTH), { symbol: 's', atLeast: 0 }), param('height', numeric(LENGTH), { symbol: 'h', above: 0 })],
    F.draftAngleDeg,
    { result: { shape: 'number', name: 'draft per side', symbol: 'α', unit: '°' } },
  ),
  card(
    'DRAFT.HEIGHT',
    T,
    [param('offset', numeric(LENGTH), { symbol: 's', atLeast: 0 }), param('draft', numeric(ANGLE), { symbol: 'α', above: 0, below: 90 })],
    F.draftHeightMm,
    { result: { shape: 'number', name: 'height', symbol: 'h', unit: 'mm' } },
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
    { result: { shape: 'number', name: 'size at that distance', symbol: 'D', unit: 'mm' } },
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
    { result: { shape: 'number', name: 'draft per side', symbol: 'α', unit: '°' } },
  ),
];
