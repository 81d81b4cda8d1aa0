/** Milliseconds of the fastest of three runs: a busy machine slows some of them, a slow function all. */
export const bestOfThreeMs = (work: () => void): number => Math.min(...[1, 2, 3].map(() => onceMs(work)));

/** Processor time: what else the machine does is not counted. */
function onceMs(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** What printing and reading numbers takes on a quiet machine of two cores, rather too much than too little. */
const YARDSTICK_MS = 4;
function yardstick(): void {
  let sum = 0;
  for (let i = 0; i < 20_000; i++) sum += Number(String(i / 8));
  if (sum !== 24_998_750) throw new Error('the yardstick is wrong');
}

/** Milliseconds that a quiet machine would take: on a slow or busy one the limit grows with the time of a yardstick beside it. */
export function quietMs(work: () => void, measured = bestOfThreeMs): number {
  const ms = measured(work);
  return ms / Math.max(1, bestOfThreeMs(yardstick) / YARDSTICK_MS);
}

/** The same of a single run, for work that takes seconds. */
export const quietOnceMs = (work: () => void): number => quietMs(work, onceMs);
