export type Inputs = Readonly<Record<string, unknown>>;

/** A joint of our own that passes every rule, for tests that change one input of it. */
export const SOUND: Inputs = {
  screw: 'ST2.9',
  head: 'pan',
  length: 16,
  material: 'ABS',
  wall: 3,
  'board plane': 5.5,
  seat: 2.5,
  board: 1.6,
  hole: 3.4,
  relief: 0.8,
  pilot: 2.46,
  'boss OD': 6,
  'boss height': 14,
  'hole depth': 14.7,
  'bottom gap': 1,
};
