import { card, ITSELF, type Card } from '../card';
import type { Source } from '../kinds';
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
const POWER_SCREW: Source = { title: 'square-thread power screw, any machine design handbook', held: 'from memory' };

export const TORQUE_CARDS: readonly Card[] = [
  card(
    'TORQUE.STRIP',
    T,
    [
      param('pullout', numeric(FORCE), { symbol: 'F', above: 0 }),
      size,
      param('friction', numeric(RATIO), { symbol: 'f', above: 0, atMost: 1 }),
    ],
    F.stripTorqueNm,
    {
      result: { shape: 'number', name: 'strip torque', symbol: 'T_s', unit: 'N·m' },
      kind: 'handbook formula',
      sources: [
        POWER_SCREW,
        { title: 'copies in circulation that lost π, (P + 2·f·r)/(2·r − f·P), give twice this and more', held: 'read in secondary copies' },
      ],
      example: { args: [1105.7, 'ST2.9', 0.2], result: 0.4879 },
      caution:
        'An estimate: without friction under the head, with a friction that is seldom known. Confirm by test at the speed of the driver.',
    },
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
    {
      result: { shape: 'number', name: 'set torque', symbol: 'T', unit: 'N·m' },
      kind: 'common practice',
      sources: [{ title: 'half way from drive to strip torque', held: 'common practice, from memory' }],
      example: { args: [0.15, 0.49], result: 0.32 },
      caution: 'A start value: drive and strip torque must come from tests with the moulded part, the screw and the speed of the driver.',
    },
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
      kind: 'common practice',
      sources: [
        { title: 'drive : tighten : strip = 1 : 2 : 3 or more', held: 'common practice, read in 1 secondary copy' },
        { title: 'tighten at 50 to 70 % of the strip torque', held: 'common practice, from memory' },
        { title: 'a driver scatters by 10 % of its set torque', held: 'common practice, from memory' },
      ],
      example: {
        args: [0.1, 0.5],
        result: [
          ['strip ÷ drive', 'state', 'low set torque (N·m)', 'high set torque (N·m)'],
          [5, 'pass', 0.2778, 0.3182],
        ],
      },
      caution:
        'Start values: drive and strip torque must come from tests; their own scatter narrows the window ' +
        'further. "review": no set torque is both twice the drive torque and below 70 % of the strip torque.',
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
    {
      result: { shape: 'number', name: 'torque for the clamp force', symbol: 'T', unit: 'N·m' },
      kind: 'handbook formula',
      sources: [
        { title: 'Shigley, Mechanical Engineering Design, power screws and bolt tension (example 8-3)', held: 'from memory, recomputed' },
      ],
      example: { args: [200, 'ST2.9', 0.2, 0.25, 5.6, 3.4], result: 0.20925 },
      caution:
        'An estimate: a screw that forms its thread needs the drive torque on top, and plastic ' +
        'relaxes. The short form T = 0.2·F·d of metal joints does not hold in plastic.',
    },
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
    {
      result: { shape: 'number', name: 'clamp force left', symbol: 'F_t', unit: 'N' },
      kind: 'handbook formula',
      sources: [
        { title: 'creep modulus by ISO 899-1', held: 'from memory' },
        { title: 'pseudo-elastic method, Plastics Engineered Product Design, p. 133', held: 'read in 1 secondary copy' },
      ],
      example: { args: [200, 2400, 900], result: 75 },
      caution:
        'An estimate: the creep modulus must be for the time, temperature and strain of the joint; the screw is taken as rigid. ' +
        'Confirm by a test over time and temperature.',
    },
  ),
  card(
    'BEARING',
    T,
    [force, headDiameter, param('hole', hole('max'), { symbol: 'd_h', above: 0, relation: below('head_diameter') })],
    F.bearingMpa,
    {
      result: { shape: 'number', name: 'pressure under the head', symbol: 'p', unit: 'MPa' },
      kind: 'handbook formula',
      sources: [{ title: 'force on a flat ring', held: 'derived' }],
      example: { args: [200, 5.6, 3.4], result: 12.86 },
      caution: 'An estimate of the mean pressure; plastic creeps under it, and no published table of allowable values was found.',
    },
  ),
];
