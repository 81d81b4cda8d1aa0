/** Milliseconds of processor time: what else the machine does is not counted. */
export function processorMs(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** The fastest of three runs: a busy machine slows some of them, a slow function all. */
export const bestOfThreeMs = (work: () => void): number => Math.min(...[1, 2, 3].map(() => processorMs(work)));
