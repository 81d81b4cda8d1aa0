// Joints of every build, as a user would type them.
import { Variant } from '../../src/joint/evaluate';

export type Inputs = Readonly<Record<string, unknown>>;

export const LOGGER: Inputs = { screw: 'ST2.9', head: 'ISO 7049', length: 13, material: 'ABS', wall: 2.5, 'board plane': 5.5, seat: 2.5, board: 1.6, hole: 3.4, relief: 0.8, pilot: 2.4, 'pilot held at': 'mouth', 'boss OD': 6.4, 'boss height': 14, 'hole depth': 14.75, 'bottom gap': 1 };

export const JOINTS: Readonly<Record<string, Inputs>> = {
  'too little thread': LOGGER,
  'to be looked at': { ...LOGGER, length: 16 },
  'the screw bottoms': { ...LOGGER, length: 19 },
  'sleeve through the board': { ...LOGGER, length: 16, sleeve: 2, 'board hole': 6.8 },
  'sleeve, board hole unknown': { ...LOGGER, length: 16, sleeve: 2 },
  'countersunk head': { screw: 'M3', head: 'countersunk', length: 12, material: 'ABS', wall: 2.5, 'board plane': 4, seat: 3, board: 1.6, relief: 0.6, pilot: 2.6, 'boss OD': 6.5, 'boss height': 9 },
  'countersink through the seat': { screw: 'M3', head: 'countersunk', length: 12, material: 'ABS', wall: 2.5, 'board plane': 1.2, seat: 1.2, board: 1.6, pilot: 2.6, 'boss OD': 6.5, 'boss height': 12 },
  'raised countersunk head': { screw: 'M3', head: 'raised countersunk', length: 12, material: 'ABS', wall: 2.5, 'board plane': 4, seat: 3, board: 1.6, pilot: 2.6, 'boss OD': 6.5, 'boss height': 9 },
  'socket head': { screw: 'M3', head: 'socket cap', length: 12, material: 'PC', wall: 2.5, 'board plane': 6, board: 1.6, pilot: 2.6, 'boss height': 10 },
  'button head': { screw: 'M3', head: 'button', length: 12, material: 'PC', wall: 2.5, 'board plane': 6, board: 1.6, pilot: 2.6, 'boss height': 10 },
  'head on the board': { screw: 'ST2.9', head: 'ISO 7049', end: 'flat', length: 9.5, material: 'PP', wall: 2.6, 'board plane': null, seat: '0 mm', board: 1.6, hole: 3.2, relief: 0.6, pilot: 2.4, 'pilot held at': 'mouth', 'boss OD': 5.8, 'boss height': 12, 'hole depth': 12.4, 'bottom gap': 1 },
  'head on the board, board hole given': { ...LOGGER, seat: '0 mm', 'board plane': null, 'board hole': 3.6 },
  'nose through the board': { ...LOGGER, board: 0 },
  'planned gap': { ...LOGGER, length: 16, gap: 0.3, 'gap tolerance': 0.1 },
  'solid root': { ...LOGGER, 'hole depth': 12 },
  'hole through the wall': { ...LOGGER, 'hole depth': 17 },
  'no relief': { ...LOGGER, relief: '0 mm' },
  'relief no wider than the pilot': { ...LOGGER, 'relief diameter': 2 },
  'flush recess': { ...LOGGER, 'board plane': 2.5 },
  'proud head': { ...LOGGER, 'board plane': 3.5 },
  'tall boss': { ...LOGGER, length: 25, 'boss height': 24, 'hole depth': 24 },
  'screw that does not reach': { ...LOGGER, length: 4.5 },
  'no draft': { ...LOGGER, 'outside draft': '0°', 'hole draft': '0°', 'recess draft': '0°' },
  'inch tapping screw': { screw: '#4 B', head: 'pan', length: '1/2 in', hole: '0.14 in', material: 'PC', wall: '0.1 in', 'board plane': '0.24 in', board: '0.062 in', 'boss height': '0.45 in' },
  'much wrong at the mouth': { ...LOGGER, gap: 0.1, pilot: 2.85, 'boss OD': 3.6, 'board hole': 3.8, 'outside draft': '0°' },
  'short and wide': { ...LOGGER, length: 6.5, 'board plane': 1.5, seat: 1, board: 0.5, wall: 1, 'boss height': 3, 'hole depth': 3, 'boss OD': 12 },
  'no point length held': { ...LOGGER, screw: '#4 AB', head: 'pan', length: 12.7 },
  'hole missing': { ...LOGGER, hole: null },
  'boss height missing': { ...LOGGER, 'boss height': null },
  'board unreadable': { ...LOGGER, board: 'thick' },
  'nothing but a head': { head: 'pan' },
};

export const variantOf = (inputs: Inputs): Variant => new Variant(new Map(Object.entries(inputs)));
