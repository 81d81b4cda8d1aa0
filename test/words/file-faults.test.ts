// Why a file is refused, in German: every sentence that a file of somebody can bring about.
import { expect, it } from 'vitest';
import { FILE_FAULTS, troubleWith, UnreadableFile } from '../../src/package/unreadable';
import { readPackage } from '../../src/package/read';
import { troubleWords } from '../../src/words/german/file-faults';

const ENGLISH = /\b(the|is|has|have|than|more|save|which|without|with|another|not|file|part|sheet)\b/i;

it('leaves no English word where the user can do something', () => {
  const { inside: _, ...told } = FILE_FAULTS;
  const faults = Object.keys(told).map(key => new UnreadableFile(key as keyof typeof told, 'X', 'Y'));
  expect(faults.length).toBeGreaterThan(20);
  expect(faults.filter(({ message }) => !ENGLISH.test(message))).toEqual([]);
  expect(faults.map(troubleWords).filter(german => ENGLISH.test(german))).toEqual([]);
  const inParts = (text: string): number => text.split(/[XY]/).length;
  for (const fault of faults) expect([fault.fault.key, inParts(troubleWords(fault))]).toEqual([fault.fault.key, inParts(fault.message)]);
});

it('goes with what a file brings about, as data that a worker can hand over', () => {
  const thrown = ((): unknown => {
    try {
      return readPackage(new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]));
    } catch (fault) {
      return fault;
    }
  })();
  const { message, fault } = troubleWith('back.xlsx', thrown as UnreadableFile);
  expect(message).toBe('back.xlsx: the file is protected by a password, or of the old kind .xls: save it as .xlsx without a password');
  expect(troubleWords(structuredClone({ message, fault }))).toBe(
    'back.xlsx: Die Datei ist durch ein Kennwort geschützt oder hat das alte Format .xls: Speichern Sie sie ohne Kennwort als .xlsx',
  );
});

it('says in its own words what is no fault of a file', () => expect(troubleWords(new Error('out of memory'))).toBe('out of memory'));
