// What tests of leaving out share.
import { readXlsx } from 'hucre/xlsx';
import { expect } from 'vitest';
import type { CarriedKind } from '../../src/package/carried';
import { edited, type EditedPackage } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { CARRYING } from './carrying';
import { rawEntries, zipped, type MadeParts } from './made';
import { seen } from './sound';

/** A copy without some kinds. */
export const less = (kinds: readonly CarriedKind[], parts: MadeParts = CARRYING): EditedPackage => {
  const from = readPackage(zipped(parts));
  return edited(from, { cells: new Map(), drop: from.carries.filter(({ kind }) => kinds.includes(kind)) });
};
/** Sound after as before, and what is not named as changed has its bytes. */
export async function sound(before: Uint8Array, { bytes, touched, gone }: EditedPackage, least = 11): Promise<void> {
  const [was, is] = [seen(before), seen(bytes)];
  expect(was.faults).toEqual([]);
  expect(is.faults).toEqual([]);
  expect(is.looked).toBeGreaterThanOrEqual(least);
  expect([...is.reached].filter(part => !was.reached.has(part))).toEqual([]);
  for (const part of is.parts) if (was.reached.has(part)) expect(is.reached.has(part), `${part} is led to`).toBe(true);
  expect([...was.parts].filter(part => !is.parts.has(part)).sort()).toEqual([...gone].sort());
  const [raw, after] = [rawEntries(before), rawEntries(bytes)];
  for (const [part, entry] of after) if (!touched.includes(part)) expect(entry, part).toEqual(raw.get(part));
  readPackage(bytes);
  expect((await readXlsx(bytes)).sheets.length).toBeGreaterThan(0);
}

/** A change of one part's text. */
export const but = (part: string, ...changes: readonly (readonly [string, string])[]): MadeParts => ({
  ...CARRYING,
  [part]: changes.reduce((text, [from, to]) => {
    expect(text).toContain(from);
    return text.replace(from, to);
  }, String(CARRYING[part])),
});
/** What has to go for hidden sheets to go. */
export const SHEETS: readonly CarriedKind[] = ['hidden sheet', 'very hidden sheet', 'macros'];
