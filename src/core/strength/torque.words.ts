import { type Source } from '../kinds';
import type { CardWords } from '../card';

const POWER_SCREW: Source = { title: 'square-thread power screw, any machine design handbook', held: 'from memory' };

export const TORQUE_WORDS: Readonly<Record<string, CardWords>> = {
  'TORQUE.STRIP': {
    kind: 'handbook formula',
    sources: [
      POWER_SCREW,
      {
        title: 'copies in circulation have lost the π, (P + 2·f·r)/(2·r − f·P), and give twice this or more',
        held: 'read in secondary copies',
      },
    ],
    example: { args: [1105.7, 'ST2.9', 0.2], result: 0.4879 },
    caution:
      'An estimate: friction under the head is left out, that of the thread is seldom known. Confirm by test at the speed of the driver.',
  },
  'TORQUE.SET': {
    kind: 'common practice',
    sources: [{ title: 'half way from drive to strip torque', held: 'common practice, from memory' }],
    example: { args: [0.15, 0.49], result: 0.32 },
    caution: 'A start value: drive and strip torque must come from tests with the moulded part, the screw and the speed of the driver.',
  },
  'TORQUE.WINDOW': {
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
      'further. "review": no set torque is both at least twice the drive torque and at most 70 % of the strip torque.',
  },
  'TORQUE.CLAMP': {
    kind: 'handbook formula',
    sources: [
      { title: 'Shigley, Mechanical Engineering Design, power screws and bolt tension (example 8-3)', held: 'from memory, recomputed' },
    ],
    example: { args: [200, 'ST2.9', 0.2, 0.25, 5.6, 3.4], result: 0.20925 },
    caution:
      'An estimate: a screw that forms its thread needs the drive torque on top, and plastic ' +
      'relaxes. The short form T = 0.2·F·d for metal joints does not apply to plastic.',
  },
  'CLAMP.RELAX': {
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
  BEARING: {
    kind: 'handbook formula',
    sources: [{ title: 'force on a flat ring', held: 'derived' }],
    example: { args: [200, 5.6, 3.4], result: 12.86 },
    caution: 'An estimate of the mean pressure; plastic creeps under it, and no published table of allowable values was found.',
  },
};
