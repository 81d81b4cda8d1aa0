// The checksums of a release, from the list in it, from a copy of that list, or from the zip itself.
import { createHash } from 'node:crypto';
import { strFromU8, unzipSync } from 'fflate';
import { type Files, SUMS } from './files';

/** Path to checksum. */
export type Sums = ReadonlyMap<string, string>;

export const sha256 = (content: Uint8Array): string => createHash('sha256').update(content).digest('hex');

const sumsOf = (files: Files): Sums => new Map([...files].map(([path, content]) => [path, sha256(content)]));

/** As `sha256sum -c` reads it. */
export const sumList = (files: Files): string => [...sumsOf(files)].map(([path, sum]) => `${sum}  ${path}\n`).join('');

/** What `sumList` wrote; undefined where a line is none of its kind, or there is no line. */
export function listed(list: Uint8Array): Sums | undefined {
  const lines = strFromU8(list)
    .split(/\r?\n/)
    .filter(line => line !== '');
  const sums = lines.map(line => /^([0-9a-f]{64}) [ *](.+)$/.exec(line)).map(found => [found?.[2] ?? '', found?.[1] ?? ''] as const);
  return sums.length === 0 || sums.some(([path]) => path === '') ? undefined : new Map(sums);
}

/** Of every file in a zip of a release, or in a copy of its list, which is then one file more. */
export function packedSums(content: Uint8Array): Sums | undefined {
  try {
    return sumsOf(new Map(Object.entries(unzipSync(content))));
  } catch {
    const sums = listed(content);
    return sums === undefined ? undefined : new Map([[SUMS, sha256(content)], ...sums]);
  }
}
