// test/mutants/results.md speaks of files as they were when its mutants met the tests. How many have changed since is told; a release does
// not rest on old results.
import { sha256 } from './sums';

export const MUTANTS = 'test/mutants/results.md';
/** Share of the files that may have changed. */
const MOST = 0.1;

export interface Since {
  readonly changed: readonly string[];
  readonly of: number;
}

/** Rows begin with a file and the first digits of its sum. */
const ROW = /^\| (src\/\S+) \| ([0-9a-f]{16}) \|/gm;

export const shortSum = (content: Uint8Array): string => sha256(content).slice(0, 16);

/** A file that is gone has changed. */
export function changedSince(page: string, contentOf: (file: string) => Uint8Array | undefined): Since {
  const rows = [...page.matchAll(ROW)].map(([, file = '', sum = '']) => ({ file, sum }));
  const files = [...new Set(rows.map(({ file }) => file))];
  const isChanged = (file: string): boolean => {
    const content = contentOf(file);
    return content === undefined || rows.some(row => row.file === file && row.sum !== shortSum(content));
  };
  return { changed: files.filter(isChanged), of: files.length };
}

export const sinceWords = (changed: number, of: number): string => `${changed} of the ${of} files have changed since`;

/** What stands against a release. */
export function tooOld({ changed, of }: Since): string[] {
  if (of > 0 && changed.length <= MOST * of) return [];
  return [
    `${MUTANTS}: ${sinceWords(changed.length, of)}, more than a tenth: ${changed.join(', ') || 'it names none'}; run npm run ` +
      'test:mutants and npm run test:facts',
  ];
}
