import { card, ITSELF, type Calculation } from '../card';

import { above, below } from '../read/relation';
import { numeric, param } from '../read/params';
import { ANGLE, FORCE, RATIO, SHARE, STRESS, TORQUE } from '../read/quantity';
import { hole, ofMaterial, SCREW } from '../read/sources';
import { FLAT_HEAD_DIAMETER } from './sources';
import * as F from './torque';

const T = 'Strength (estimates)';
const torque = numeric(TORQUE);
const size = param('size', SCREW);
const force = param('force', numeric(FORCE), { symbol: 'F', above: 0 });
const headDiameter = param('head_diameter', FLAT_HEAD_DIAMETER, { symbol: 'd_k', above: 0 });
const drive = param('drive', torque, { symbol: 'T_d', above: 0 });

export const TORQUE_CARDS: readonly Calculation[] = [
  card(
    'TORQUE.STRIP',
    T,
    [
      param('pullout', numeric(FORCE), { symbol: 'F', above: 0 }),
      size,
      param('friction', numeric(RATIO), { symbol: 'f', above: 0, atMost: 1 }),
    ],
    F.stripTorqueNm,
    { result: { shape: 'number', name: 'strip torque', symbol: 'T_s', unit: 'N·m' } },
  ),
  card(
    'TORQUE.SET',
    T,
    [
      drive,
      param('strip', torque, { symbol: 'T_s', above: 0, relation: above('drive') }),
      param('share', numeric(SHARE), { symbol: 'k', atLeast: 0, atMost: 1, default: 0.5 }),
    ],
    F.setTorqueNm,
    { result: { shape: 'number', name: 'set torque', symbol: 'T', unit: 'N·m' } },
  ),
  card(
    'TORQUE.WINDOW',
    T,
    [
      drive,
      param('strip', torque, { symbol: 'T_s', above: 0 }),
      param('ratio', numeric(RATIO), { symbol: 'k', above: 1, default: 3 }),
      param('scatter', numeric(SHARE), { symbol: 's', atLeast: 0, below: 1, default: 0.1 }),
    ],
    F.torqueWindow,
    {
      result: {
        shape: 'table',
        columns: [
          { name: 'strip ÷ drive', unit: '' },
          { name: 'state', unit: '' },
          { name: 'low set torque', unit: 'N·m' },
          { name: 'high set torque', unit: 'N·m' },
        ],
      },
    },
  ),
  card(
    'TORQUE.CLAMP',
    T,
    [
      force,
      size,
      param('thread_friction', numeric(RATIO), { symbol: 'μ', above: 0, atMost: 1 }),
      param('head_friction', numeric(RATIO), { symbol: 'μ_h', above: 0, atMost: 1 }),
      headDiameter,
      param('hole', hole(), { symbol: 'd_h', above: 0, relation: below('head_diameter') }),
      param('flank', numeric(ANGLE), { symbol: 'β', above: 0, below: 90, default: 30, given: 'size.flankDeg' }),
    ],
    F.clampTorqueNm,
    { result: { shape: 'number', name: 'torque for the clamp force', symbol: 'T', unit: 'N·m' } },
  ),
  card(
    'CLAMP.RELAX',
    T,
    [
      force,
      param('modulus_start', ofMaterial(STRESS, 'modulus'), { symbol: 'E_0', above: 0 }),
      param('modulus_end', numeric(STRESS), {
        symbol: 'E_t',
        above: 0,
        relation: { holds: [['>=', 'modulus_start', ITSELF]], words: 'at most modulus_start' },
      }),
    ],
    F.relaxedClampN,
    { result: { shape: 'number', name: 'clamp force left', symbol: 'F_t', unit: 'N' } },
  ),
  card(
    'BEARING',
    T,
    [force, headDiameter, param('hole', hole('max'), { symbol: 'd_h', above: 0, relation: below('head_diameter') })],
    F.bearingMpa,
    { result: { shape: 'number', name: 'pressure under the head', symbol: 'p', unit: 'MPa' } },
  ),
];
