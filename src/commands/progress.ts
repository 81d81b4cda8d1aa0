// How far a long command is: one line on a terminal, nothing in a pipe or a log.
const EVERY_MS = 200;

export interface ProgressLine {
  step(): void;
  /** Takes the line away. */
  end(): void;
}

export function progressOf(share: () => number | undefined, to: NodeJS.WriteStream = process.stderr): ProgressLine {
  if (!to.isTTY) return { step: () => undefined, end: () => undefined };
  let rows = 0;
  let shownAt = performance.now();
  let isShown = false;
  return {
    step() {
      rows++;
      if (rows % 64 !== 0 || performance.now() - shownAt < EVERY_MS) return;
      shownAt = performance.now();
      isShown = true;
      const part = share();
      to.write(`\r${part === undefined ? '' : `${String(Math.floor(100 * part)).padStart(3)} %  `}${rows.toLocaleString('en')} rows`);
    },
    end() {
      if (isShown) to.write('\r\u001B[K');
    },
  };
}
