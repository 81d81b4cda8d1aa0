// A release rests on results of the files as they are: a tenth of them may have changed since.
import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { changedSince, MUTANTS, shortSum, tooOld } from '../../src/release/measured';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const FILES = new Map(Array.from({ length: 20 }, (_, i) => [`src/core/f${i}.ts`, bytes(`const x = ${i};\n`)]));
const page = [
  '| file | sha-256 | noticed | of | not noticed |',
  ...[...FILES].map(([file, content]) => `| ${file} | ${shortSum(content)} | 1 | 1 | – |`),
].join('\n');
const since = (change: (file: string, i: number) => Uint8Array | undefined) =>
  changedSince(page, file => (FILES.has(file) ? change(file, [...FILES.keys()].indexOf(file)) : undefined));
const own = (file: string): Uint8Array => FILES.get(file) as Uint8Array;

describe('results of mutants', () => {
  it('hold as long as no more than a tenth of their files changed', () => {
    expect(since(own)).toEqual({ changed: [], of: 20 });
    expect(tooOld(since(own))).toEqual([]);
    expect(tooOld(since((file, i) => (i < 2 ? bytes('const x = 0.97;\n') : own(file))))).toEqual([]);
  });

  it('do not hold when more changed, or are gone', () => {
    expect(tooOld(since((file, i) => (i < 3 ? bytes('const x = 0.97;\n') : own(file))))).toEqual([
      expect.stringMatching(
        /: 3 of the 20 files have changed since, more than a tenth: src\/core\/f0\.ts, src\/core\/f1\.ts, src\/core\/f2\.ts; run /,
      ),
    ]);
    expect(tooOld(since((file, i) => (i < 3 ? undefined : own(file))))).toHaveLength(1);
  });

  it('do not hold when they name no file', () =>
    expect(tooOld(changedSince('', () => undefined))).toEqual([expect.stringContaining('it names none')]));

  it('of a file that two parts name are old when one of them is', () => {
    const twice = `${page}\n| src/core/f0.ts | 0123456789abcdef | 1 | 1 | – |`;
    expect(changedSince(twice, own)).toEqual({ changed: ['src/core/f0.ts'], of: 20 });
  });

  it('and those of the project refuse a copy of it in which every tenth file and one more differ', () => {
    const real = readFileSync(MUTANTS, 'utf8');
    const { changed: all } = changedSince(real, () => undefined);
    const sums = new Map([...real.matchAll(/^\| (src\/\S+) \| ([0-9a-f]{16}) \|/gm)].map(([, file = '', sum = '']) => [file, sum]));
    expect(all.length).toBe(sums.size);
    const least = Math.floor(all.length / 10) + 1;
    const touched = new Set(all.slice(0, least));
    const now = (file: string): Uint8Array | undefined => (existsSync(file) ? readFileSync(file) : undefined);
    const { changed } = changedSince(real, file =>
      touched.has(file) && existsSync(file) ? bytes(`${readFileSync(file, 'utf8')}\n`) : now(file),
    );
    expect(changed).toEqual(expect.arrayContaining([...touched]));
    expect(tooOld({ changed, of: all.length })).toHaveLength(1);
  });
});
