// Each kind of answer that comes back gives its own lines and no other, whichever program made it and saved it again.
import { beforeAll, describe, expect, it } from 'vitest';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { execFile } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { demoWorkbook } from '../../src/demo/demo';
import { changeLists } from '../../src/handover/compare/change-lists';
import { compare } from '../../src/handover/compare/compare';
import { comparedOf } from '../../src/handover/compare/compared-of';
import type { ComparedWorkbook } from '../../src/handover/compare/seen';
import { sourceOfFile } from '../../src/handover/read/from-file';
import { copyOf } from '../../src/handover/write/copy';
import { readWithRemarks, workbookIn } from '../../src/hosts/xlsx/read';
import { writeOwnSheets, writeWorkbook } from '../../src/hosts/xlsx/write';
import { readPackage } from '../../src/package/read';
import { TITLE } from '../handover/kit';
import { type Answer, answersTo } from './answers-kit';
import { DEMO, FOREIGN } from './answers-kinds';
import { FOLDER, PYTHON } from './foreign/inputs';

const EFFECTS = 'what they do';

const seen = async (bytes: Uint8Array): Promise<ComparedWorkbook> => comparedOf('file', await readWithRemarks(bytes));

/** Kinds after which each result stands where it stood, and no text means a number. */
const RECKONED = [
  'a value written over',
  'rows sorted',
  'a row cut out and put down below',
  'a sheet deleted',
  'a matrix over several inputs',
  'through .xls',
];

const shown = (value: unknown): string => (typeof value === 'number' ? String(Number(value.toPrecision(6))) : String(value));

interface Found {
  readonly what: string;
  readonly by: string;
  readonly lines: readonly string[];
  readonly effects: readonly string[];
}

function found(sent: ComparedWorkbook, returned: ComparedWorkbook): Pick<Found, 'lines' | 'effects'> {
  const changes = compare(sent, { ...returned, names: new Map() });
  const lists = changeLists(changes);
  return {
    lines: lists.filter(({ title }) => title !== EFFECTS).flatMap(({ title, lines }) => lines.map(line => `${title}: ${line}`)),
    effects: lists.find(({ title }) => title === EFFECTS)?.lines ?? [],
  };
}

async function xLookups(): Promise<Uint8Array> {
  const folder = await mkdtemp(join(tmpdir(), 'books-'));
  try {
    await promisify(execFile)(PYTHON, ['-B', join(FOLDER, 'books_xlsxwriter.py'), folder]);
    return new Uint8Array(await readFile(join(folder, 'x-lookups.xlsx')));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

describe.each([
  ['the demo', DEMO, () => writeWorkbook(demoWorkbook), 47],
  ['a workbook of others', FOREIGN, xLookups, 25],
] as const)('%s', (name, kinds, made, floor) => {
  const all: Found[] = [];
  let sent: ComparedWorkbook;
  let answers: readonly Answer[];

  beforeAll(async () => {
    const file = readPackage(await made());
    const copy = await copyOf(file, sourceOfFile(name, workbookIn(file)), TITLE, { write: writeOwnSheets, goesAlong: () => true });
    sent = await seen(copy.bytes);
    answers = await answersTo(copy.bytes, kinds);
    for (const { what, by, bytes } of answers) all.push({ what, by, ...found(sent, await seen(bytes)) });
  });

  it.each(kinds.map(kind => [kind.what, kind] as const))('%s gives its own lines', (what, { lines, effects = [], libreoffice }) => {
    const these = all.filter(one => one.what === what);
    expect(these.map(({ by }) => by).sort()).toEqual([...new Set(these.map(({ by }) => by))].sort());
    expect(these).toHaveLength(libreoffice === undefined ? 3 : 2);
    for (const one of these) {
      expect([one.by, ...[...one.lines].sort()]).toEqual([one.by, ...[...lines].sort()]);
      expect([one.by, ...effects.filter(line => !one.effects.includes(line))]).toEqual([one.by]);
      expect([one.by, one.effects.length > 0]).toEqual([one.by, effects.length > 0]);
    }
  });

  it('what they do is what LibreOffice worked out', async () => {
    let compared = 0;
    for (const { what, by, bytes } of answers.filter(one => one.by === 'LibreOffice' && RECKONED.includes(one.what))) {
      const returned = await seen(bytes);
      for (const { sheet, at, after } of compare(sent, { ...returned, names: new Map() }).effects) {
        const value = shown(returned.sheets.find(one => one.name === sheet)?.cells.get(at)?.value);
        expect([what, by, sheet, at, value.startsWith('#') ? 'no value' : value]).toEqual([what, by, sheet, at, after]);
        compared++;
      }
    }
    expect(compared).toBeGreaterThanOrEqual(30);
  });

  it('so many kinds were tried', () => {
    expect(new Set(all.map(({ what }) => what)).size).toBeGreaterThanOrEqual(floor);
  });

  it('a fault is noticed: an answer beside the lines of another', () => {
    for (const { what, lines } of kinds)
      for (const other of all.filter(one => one.what !== what && kinds.find(kind => kind.what === one.what)?.lines.join() !== lines.join()))
        expect([...other.lines].sort()).not.toEqual([...lines].sort());
  });
});
