/** The limits were set on a machine that takes so long for the reference work. */
const REFERENCE_MS = 1.6;

let kept = 0;

function referenceWork(): void {
  let x = 0.5;
  for (let turn = 0; turn < 100_000; turn++) x = Math.sqrt(x * x + (turn % 7));
  const texts = new Map<number, string>();
  for (let turn = 0; turn < 20_000; turn++) texts.set(turn, String(turn));
  kept += x + texts.size;
}

/** Milliseconds of processor time: what else the machine does is not counted. */
function processorMs(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

const fastestMs = (work: () => void, runs: number): number => Math.min(...Array.from({ length: runs }, () => processorMs(work)));

/** The fastest of three runs: a busy machine slows some of them, a slow function all. */
export const bestOfThreeMs = (work: () => void): number => fastestMs(work, 3);

/** How many times slower than the machine of the limits this one is just now. */
export const slowness = (): number => Math.max(1, fastestMs(referenceWork, 20) / REFERENCE_MS);
