/** Milliseconds of the fastest of three runs: a busy machine slows some of them, a slow function all. */
export function bestOfThreeMs(work: () => void): number {
  const times = [1, 2, 3].map(() => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return Math.min(...times);
}
