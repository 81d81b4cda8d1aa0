// How time is taken: processor time, so that another load on the machine counts less.
export type { MeasuredPart as Part, Measurement as Figure, Results } from '../../src/tools/figures-page';

export function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Nanoseconds of processor time a turn, the fastest of many runs. */
export function ns(turns: number, work: (turn: number) => unknown, runs = 10): number {
  let best = Infinity;
  for (let run = 0; run < runs; run++) {
    const start = processorMs();
    for (let turn = 0; turn < turns; turn++) work(turn);
    best = Math.min(best, processorMs() - start);
  }
  return (best / turns) * 1e6;
}

export const digits = (value: number): string => (value < 100 ? value.toPrecision(3) : value.toFixed(0));
