import type { SheetPlan } from '../sheet/plan';
import { type GuideStep, cell, type SheetInput, row, stepSheet, table } from './sheet-rows';

const INPUTS: readonly SheetInput[] = [
  ['screw', 'ST2.9', '', 'tapping screw ISO 1478; a machine thread in plastic is refused'],
  ['head', 'ISO 7049', '', 'pan head: it must sit flat'],
  ['engagement', 7.34, 'mm', 'full thread at worst case, from the sheet Joint with 16 mm'],
  ['boss OD', 6.4, 'mm', 'at the free end'],
  ['seat', 2.5, 'mm', 'plastic under the head'],
  ['hole', 3.2, 'mm', 'clearance hole in the seat'],
  ['yield stress', 'ABS', 'MPa', 'a resin reads its start value, ABS 45; type the figure of your grade'],
  ['safety', 2, '', 'short-term; 3 to 5 where process or weld line are not known'],
  ['load', 800, 'N', 'short-term, that tries to pull the lid off'],
  ['thread friction', 0.2, '', 'seldom known'],
  ['head friction', 0.25, '', 'seldom known'],
  ['drive torque', 0.15, 'N·m', 'from a test with the part, the screw and the driver'],
  ['strip torque', 0.6, 'N·m', 'from the same test; until then the estimate below'],
  ['pin', 3, 'mm', 'steel pin pressed into a boss, rigid'],
  ['pin boss', 6, 'mm', 'outside diameter of that boss'],
  ['interference', 0.018, 'mm', 'on diameter'],
  ['modulus', 'ABS', 'MPa', 'short-term; a lasting fit needs a creep modulus'],
  ['poisson', 0.38, '', 'Poisson ratio'],
  ['pin length', 6, 'mm', 'in the boss'],
  ['allowed stress', 12, 'MPa', 'hoop stress that the plastic bears in the long term'],
];

const HEAD = '[screw]&" "&[head]';

const BLOCKS: readonly GuideStep[] = [
  [
    'What holds along the axis',
    [
      [
        'thread pull-out (estimate)',
        '=ENCL.PULLOUT([screw],[engagement],[yield stress],[safety])',
        'N',
        'shear of the cylinder between major and root diameter',
      ],
      [
        'boss tears (estimate)',
        '=ENCL.PULLOUT.BOSS([boss OD],[screw],[yield stress],[safety])',
        'N',
        'net tension on the ring around the thread',
      ],
      [
        'seat shears (estimate)',
        `=ENCL.PULLOUT.SEAT(${HEAD},[seat],[yield stress],[safety])`,
        'N',
        'the head punches through; its smallest diameter is taken',
      ],
      [
        'weakest (estimate)',
        '=MIN([thread pull-out (estimate)],[boss tears (estimate)],[seat shears (estimate)])',
        'N',
        'the least of the three; it is not always the thread',
      ],
      [
        'which one',
        '=IF([weakest (estimate)]=[thread pull-out (estimate)],"thread",IF([weakest (estimate)]=[boss tears (estimate)],"boss","seat"))',
        '',
        '',
      ],
      [
        'screws for the load (estimate)',
        '=ENCL.SCREW.COUNT([load],[weakest (estimate)],1)',
        '',
        'the safety factor is already in the force above',
      ],
    ],
  ],
  [
    'Torque',
    [
      [
        'strip torque (estimate)',
        '=ENCL.TORQUE.STRIP([thread pull-out (estimate)]*[safety],[screw],[thread friction])',
        'N·m',
        'from the pull-out without safety; the test decides',
      ],
      ['set torque', '=ENCL.TORQUE.SET([drive torque],[strip torque])', 'N·m', 'half way from drive to strip torque, a start value'],
      ['torque left to clamp', '=[set torque]-[drive torque]', 'N·m', 'forming the thread takes the rest'],
      [
        'torque for 100 N (estimate)',
        `=ENCL.TORQUE.CLAMP(100,[screw],[thread friction],[head friction],${HEAD},[hole])`,
        'N·m',
        'thread and head friction; K = 0.2 of metal joints does not hold here',
      ],
      ['clamp force (estimate)', '=100*[torque left to clamp]/[torque for 100 N (estimate)]', 'N', 'before the plastic relaxes'],
      ['pressure at 100 N (estimate)', `=ENCL.BEARING(100,${HEAD},[hole])`, 'MPa', 'under the smallest head'],
      [
        'pressure under the head (estimate)',
        '=[pressure at 100 N (estimate)]*[clamp force (estimate)]/100',
        'MPa',
        'common practice: half the yield stress for a short time, a quarter to last',
      ],
    ],
  ],
  [
    'A pin pressed into a boss',
    [
      [
        'hoop stress (estimate)',
        '=ENCL.HOOP.STRESS([interference],[pin],[pin boss],[modulus],[poisson])',
        'MPa',
        'at the bore; a weld line bears half or less',
      ],
      [
        'largest interference (estimate)',
        '=ENCL.HOOP.LIMIT([allowed stress],[pin],[pin boss],[modulus],[poisson])',
        'mm',
        'on diameter, for the allowed stress',
      ],
      [
        'push-out force (estimate)',
        '=ENCL.HOOP.PUSH([interference],[pin],[pin boss],[pin length],[modulus],[poisson],[thread friction])',
        'N',
        'short-term; it relaxes',
      ],
    ],
  ],
];

const FORMATS: Readonly<Record<string, string>> = { N: '0', 'N·m': '0.000', MPa: '0.0', mm: '0.000', '': '0' };

const { list, refer, next } = stepSheet(
  'Strength and torque: estimates',
  'Every result here is an estimate from values of the resin family: it compares designs. Build and test each joint.',
  INPUTS,
  BLOCKS,
  unit => FORMATS[unit] ?? '0.00',
);

export const strengthSheet: SheetPlan = {
  name: 'Strength',
  widths: [34, 12, 15, 15, 8, 66],
  frozenRows: 1,
  cells: [
    ...list,
    ...row(next, ['heading'], ['Drive and strip torque of the test: 1 : 3 or more is required (common practice)']),
    ...table(0, next + 1, 4, refer('=ENCL.TORQUE.WINDOW([drive torque],[strip torque])'), '0.000'),
    cell(
      `A${next + 4}`,
      'note',
      'Low: twice the drive torque or half the strip torque, whichever is more. High: 70 % of the strip torque. Drive ' +
        'and strip torque scatter: take the worst of many.',
    ),
  ],
  stateRanges: [`B${next + 2}`],
};
