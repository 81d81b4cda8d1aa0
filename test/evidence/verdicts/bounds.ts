// Both sides of every numeric bound of the rules: one input moved between two joints, all others as they are.
import { BORDERLINE, DRIVEN, INSERTED, SOUND, STRAIGHT, without, type State } from './corpus';
import type { Inputs } from './oracle';

export interface Side {
  readonly value: number;
  readonly state: State;
}
export interface Bound {
  readonly rule: string;
  readonly inputs: Inputs;
  readonly input: string;
  readonly better: Side;
  readonly worse: Side;
}

/** The corpus has most of them as pairs. */
const PAIRS: readonly Bound[] = BORDERLINE.flatMap((worse, i) => {
  const better = BORDERLINE[i - 1];
  if (i % 2 === 0 || better === undefined) return [];
  const moved = Object.keys(worse.inputs).filter(name => worse.inputs[name] !== better.inputs[name]);
  const [input] = moved;
  if (input === undefined || moved.length !== 1 || worse.rule === undefined) throw new Error(`${worse.name}: not one input is moved`);
  const side = ({ inputs, state }: typeof worse): Side => ({ value: Number(inputs[input]), state });
  return [{ rule: worse.rule, inputs: worse.inputs, input, better: side(better), worse: side(worse) }];
});

const bound = (rule: string, inputs: Inputs, input: string, better: readonly [number, State], worse: readonly [number, State]): Bound => ({
  rule,
  inputs,
  input,
  better: { value: better[0], state: better[1] },
  worse: { value: worse[0], state: worse[1] },
});

/** No wider than the screw needs, so that a narrow boss still has a face to land on; no board hole. */
const NARROW: Inputs = { ...without(SOUND, 'board hole'), hole: 3.1 };
const UNSET: Inputs = without(DRIVEN, 'set torque');
/** A wide head presses less: the window of the torque ends first. */
const WIDE_HEAD: Inputs = { ...DRIVEN, 'head diameter min': 5.6 };
/** A long screw holds more than its head bears. */
const LONG: Inputs = { ...DRIVEN, hole: 4, length: 19, 'boss height': 17.2, 'drive torque': 0.1 };

/** No deeper than the insert asks, under a short screw. */
const SHORT: Inputs = { ...INSERTED, length: 8, ratio: 0.9, 'sink limit': 1.5 };

const OTHERS: readonly Bound[] = [
  // 1.5 and 2 × 4.6; 5.7 + 0.1 and 5.7 + 1; 4.6 − 0.05
  bound('insert held', INSERTED, 'boss OD', [9.25, 'pass'], [9.15, 'review']),
  bound('insert held', INSERTED, 'boss OD', [6.95, 'review'], [6.85, 'fail']),
  bound('insert held', SHORT, 'boss height', [6.75, 'pass'], [6.65, 'review']),
  bound('insert held', SHORT, 'boss height', [5.85, 'review'], [5.75, 'fail']),
  bound('insert held', INSERTED, 'insert hole', [4.54, 'pass'], [4.56, 'fail']),
  // holes of 4.6 − 2 × 0.1 and − 2 × 0.3 at most
  bound('insert not drawn out', INSERTED, 'hole', [3.85, 'pass'], [3.95, 'review']),
  bound('insert not drawn out', INSERTED, 'hole', [4.25, 'review'], [4.35, 'fail']),
  bound('insert not drawn out', INSERTED, 'insert below face', [0, 'pass'], [0.02, 'review']),
  bound('head fits the recess', SOUND, 'allowance', [0.1, 'review'], [-0.15, 'fail']),
  bound('seat holds', { ...SOUND, 'boss height': 15.4 }, 'seat', [0.95, 'review'], [0.85, 'fail']),
  bound('seat under the cone', { ...SOUND, head: 'countersunk' }, 'seat', [3, 'review'], [2, 'fail']),
  bound('wall under the groove', SOUND, 'ring depth', [1.4, 'review'], [1.6, 'fail']),
  bound('boss wall carries the thread', NARROW, 'boss OD', [4.4, 'review'], [4.3, 'fail']),
  bound('landing ring', SOUND, 'relief diameter', [5.2, 'review'], [5.5, 'fail']),
  bound('sink, thread half', { ...STRAIGHT, wall: 3, face: 'show' }, 'boss OD', [7.7, 'review'], [7.9, 'fail']),
  bound('slenderness', { ...NARROW, 'boss height': 22 }, 'boss OD', [4.5, 'review'], [4.36, 'fail']),
  bound('core pin', SOUND, 'boss height', [22, 'review'], [25, 'fail']),
  bound('load carried', SOUND, 'load', [200, 'pass'], [260, 'review']),
  bound('strip before drive', UNSET, 'drive torque', [0.13, 'pass'], [0.2, 'review']),
  bound('strip before drive', UNSET, 'drive torque', [0.2, 'review'], [0.35, 'fail']),
  bound('set torque in its window', DRIVEN, 'set torque', [0.34, 'pass'], [0.3, 'review']),
  bound('set torque in its window', WIDE_HEAD, 'set torque', [0.36, 'pass'], [0.39, 'review']),
  bound('set torque in its window', DRIVEN, 'set torque', [0.5, 'review'], [0.56, 'fail']),
  bound('set torque in its window', { ...DRIVEN, 'drive torque': 0.14 }, 'set torque', [0.2, 'review'], [0.15, 'fail']),
  bound('head does not sink in', DRIVEN, 'set torque', [0.34, 'pass'], [0.36, 'review']),
  bound('head does not sink in', LONG, 'set torque', [0.4, 'review'], [0.46, 'fail']),
];

export const BOUNDS: readonly Bound[] = [...PAIRS, ...OTHERS];
