// What a study costs, against JOINT.TABLE's own loop over the same joints.
import { draws } from '../../src/core/tolerance/draws';
import type { Output } from '../../src/joint/outputs';
import { turned } from '../../src/joint/rows';
import { INPUTS } from '../../src/joint/inputs';
import { slotOf } from '../../src/joint/slots';
import { oneVariant } from '../../src/joint/table';
import { Variant } from '../../src/joint/variant';
import { call } from '../../src/registry';
import { digits, ns, type Figure } from './figure';
import { inputsOf } from './variants';

/** With a length that is long enough: a joint that fails has no windows. */
const JOINT = inputsOf(3).filter((_, i) => i === 0 || i === 3);
const MOST = 1.2;
const RUNS = 5;
const JOINTS_A_RUN = 20_000;

interface Study {
  readonly what: string;
  readonly looked: number;
  readonly study: () => unknown;
  /** The same joints one after another. */
  readonly bare: () => void;
}

const ask = (id: string, ...args: readonly unknown[]): void => {
  const answer = call(id, args);
  if (!answer.ok) throw new Error(answer.message);
};

/** Every number that a study puts in a joint, by its input. */
function lookedAt(study: () => void): ReadonlyMap<string, readonly number[]> {
  const nameOf = new Map([...INPUTS.keys()].map(name => [slotOf(name), name]));
  const numbers = new Map<string, number[]>();
  const { put, reread } = Variant.prototype;
  const seen = (slot: number, value: unknown): void => {
    const name = nameOf.get(slot) ?? '';
    const number = typeof value === 'number' ? value : (value as { readonly upperMm: number }).upperMm;
    numbers.set(name, [...(numbers.get(name) ?? []), number]);
  };
  Variant.prototype.put = function (slot, value): void {
    seen(slot, value);
    put.call(this, slot, value);
  };
  Variant.prototype.reread = function (slot, number): void {
    seen(slot, number);
    reread.call(this, slot, number);
  };
  study();
  Object.assign(Variant.prototype, { put, reread });
  return numbers;
}

/** A study that moves one input after another, against the same numbers in a row each. */
function moving(what: string, output: Output, study: () => void): Study {
  const numbers = lookedAt(study);
  return {
    what,
    looked: [...numbers.values()].reduce((sum, list) => sum + list.length, 0),
    study,
    bare: () => {
      for (const [name, list] of numbers) {
        const answer = turned(oneVariant(JOINT, undefined), [name], [output]);
        for (const number of list) answer([number]);
      }
    },
  };
}

const window = (): Study => moving('JOINT.WINDOW of every input', 'state', () => ask('JOINT.WINDOW', JOINT));
const sensitivity = (): Study => moving('JOINT.SENSITIVITY of the margin', 'margin', () => ask('JOINT.SENSITIVITY', JOINT, 'margin'));
const solve = (): Study =>
  moving('JOINT.SOLVE of the seat for a full thread', 'engagement min', () => ask('JOINT.SOLVE', JOINT, 'seat', 'engagement min', 7));

function map(): Study {
  const [across, down] = [4, 1.5].map(from => Array.from({ length: 100 }, (_, i) => from + i / 25)) as [number[], number[]];
  return {
    what: 'JOINT.MAP of 100 × 100 states',
    looked: 10_000,
    study: () => ask('JOINT.MAP', JOINT, 'boss OD', [across], 'wall', [down]),
    bare: () => {
      const state = turned(oneVariant(JOINT, undefined), ['wall', 'boss OD'], ['state']);
      for (const wall of down) for (const od of across) state([wall, od]);
    },
  };
}

const DRAWN = ['length', 'board plane', 'seat', 'board', 'hole', 'relief', 'pilot', 'hole depth', 'head diameter', 'head height'];

function simulation(): Study {
  const samples = 20_000;
  const draw = draws(1, 'normal');
  const middle = [16, 5.5, 2.5, 1.6, 3.4, 0.8, 2.4, 14.75, 5.45, 2.3];
  const joints = Array.from({ length: 2 * samples }, () => middle.map(size => size + draw() / 30));
  return {
    what: 'JOINT.SIMULATE of 20,000 draws, with nothing and with everything in common',
    looked: 2 * samples,
    study: () => ask('JOINT.SIMULATE', JOINT, samples),
    bare: () => {
      const state = turned(oneVariant(JOINT, undefined), DRAWN, ['state']);
      for (const joint of joints) state(joint);
    },
  };
}

const measured = ({ what, looked, study, bare }: Study): Figure => {
  // a study of few joints is over before it is compiled: it is asked for often
  const turns = Math.max(1, Math.round(JOINTS_A_RUN / looked));
  const [ours, loop] = [ns(turns, study, RUNS), ns(turns, bare, RUNS)];
  return {
    what,
    target: {
      words: `≤ ${MOST} times the loop over the same joints`,
      isMet: ours / loop <= MOST,
      otherwise: 'it does more than its joints ask for',
    },
    measured: `${digits(ours / 1e6)} ms for ${looked} joints: ${digits(ours / looked / 1000)} µs a joint, ${digits(ours / loop)} times the bare loop`,
    how: 'the loop is that of JOINT.TABLE with state, which reads what moved and works out what follows',
  };
};

export const studies = (): Figure[] => [map(), window(), sensitivity(), solve(), simulation()].map(measured);
