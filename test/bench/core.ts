// The core by itself: one call, long tables, a simulation. Bundled first, as the add-in is.
import { randomNormal } from 'd3-random';
import { bossOutsideDiaMm } from '../../src/core/boss/boss';
import { draws } from '../../src/core/tolerance/draws';
import { OUTPUTS } from '../../src/joint/outputs';
import { CARDS, call } from '../../src/registry';
import { beside } from './before';
import { digits, ns, type Figure } from './figure';
import { studies } from './studies';
import { inputsOf } from './variants';

const ADDITIONS = 1_000_000;
/** Each waits for the one before: some four cycles of any processor. */
function additions(): number {
  let total = 0.5;
  for (let i = 0; i < ADDITIONS; i++) total += 0.3;
  return total;
}

function calls(): Figure[] {
  const hole = (turn: number): number => 2.4 + turn * 1e-4;
  const turns = 20_000;
  let sum = 0;
  const bare = ns(turns, turn => (sum += bossOutsideDiaMm(hole(turn), 1.2, 14, 0.5)));
  if (!(sum > 0)) throw new Error('the bare formula gave no number');
  const numbers = (turn: number): unknown => call('BOSS.OD', [hole(turn), 1.2, 14, 0.5]);
  const addition = ns(1, additions) / ADDITIONS;
  const kinds: readonly [string, (turn: number) => unknown][] = [
    ['two numbers, two defaults', turn => call('BOSS.OD', [hole(turn), 1.2])],
    ['two numbers, two texts with units', () => call('BOSS.OD', ['4.2 mm', 1.2, 14, '0.5°'])],
    ['a list of two', () => call('GRIP', [[[2.5], [1.6]]])],
  ];
  const first = ns(turns, numbers);
  const others = kinds.map(([name, work]) => `${name} ${digits(ns(turns, work))} ns`);
  for (let round = 0; round < 20; round++)
    for (const { id, example } of CARDS.values()) if (!id.endsWith('.SIMULATE')) call(id, example.args);
  const mixed = ns(turns, numbers);
  return [
    {
      what: 'one call with four numbers, against its bare formula',
      target: {
        words: '≤ 150 ns on a quiet machine',
        isMet: first <= 150,
        otherwise: `here one floating-point addition behind another took ${digits(addition)} ns, where about 1 is usual`,
      },
      measured: `${digits(first)} ns against ${digits(bare)} ns: ${digits(first / bare)} times; ${digits(mixed)} ns once all functions have been called`,
      how: 'BOSS.OD in a loop of 20,000, with reading, limits and the check of the result',
    },
    { what: 'other kinds of arguments', measured: others.join(', '), how: 'the same loop' },
  ];
}

function growth(): Figure[] {
  const counts = [10, 100, 10_000];
  const figures = ['engagement min', 'state'].map((output): Figure => {
    const times = counts.map(count => {
      const args = [inputsOf(count), [[output]]];
      const answer = call('JOINT.TABLE', args);
      if (!answer.ok) throw new Error(answer.message);
      return ns(Math.max(1, 1000 / count), () => call('JOINT.TABLE', args), 2) / count / 1000;
    });
    const [, hundred = 0, most = 0] = times;
    return {
      what: `10 to 10,000 variants, ${output}`,
      target: {
        words: '≤ 1.5 times a variant',
        isMet: most / hundred <= 1.5,
        otherwise: 'the collection of memory takes its part in a long table',
      },
      measured: `${times.map(digits).join(', ')} µs a variant: ${digits(most / hundred)} times`,
      how: 'JOINT.TABLE of 10, 100 and 10,000 rows; the ratio is of the last two',
    };
  });
  const twenty = [...OUTPUTS.slice(0, 18), 'state', 'reason'];
  const whole = ns(1, () => call('JOINT.TABLE', [inputsOf(500), [twenty]]), 3) / 1e6;
  return [
    ...figures,
    { what: '500 variants, 20 outputs', measured: `${digits(whole)} ms`, how: 'JOINT.TABLE, state and reason among the outputs' },
  ];
}

function simulation(): Figure[] {
  const samples = 100_000;
  const links = 3;
  const stack = (): unknown => call('STACK.SIMULATE', [[[5], [3], [2]], [[0.1], [0.1], [0.1]], 1, 9, 11, samples, 1, 'normal']);
  const [ours, theirs] = [draws(1, 'normal'), randomNormal()].map(draw => ns(samples, draw, 5)) as [number, number];
  const whole = ns(1, stack, 3) / samples / links;
  return [
    {
      what: 'simulated stack, against the normal draws of d3-random 3.0.1',
      measured: `${digits(ours)} ns against ${digits(theirs)} ns a draw: ${digits(ours / theirs)} times; the whole of STACK.SIMULATE ${digits(whole)} ns a draw`,
      how: 'theirs on Math.random, which has no seed; ours is seeded and the same to the last digit everywhere, its logarithm included',
    },
  ];
}

export const core = async (): Promise<Figure[]> => [...(await beside()), ...calls(), ...growth(), ...simulation(), ...studies()];
