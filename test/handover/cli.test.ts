// The command: files in, files out, and nothing else touched.
import { link, mkdtemp, readFile, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { writeXlsx } from 'hucre/xlsx';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { main as compareMain } from '../../src/handover/compare-cli';
import { main } from '../../src/handover/cli';
import { readWorkbook } from '../../src/hosts/xlsx/read';
import { edited } from '../../src/package/edit';
import { readPackage } from '../../src/package/read';
import { rememberedIn } from '../../src/package/remembered';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { UserFault } from '../../src/cli/user-fault';
import { CARRYING, WORDS } from '../package/carrying';
import { zipped } from '../package/made';

let folder: string;
const path = (name: string): string => join(folder, name);
const said = async (command: typeof main, args: readonly string[]): Promise<string[]> => {
  const lines: string[] = [];
  await command(args, line => lines.push(line));
  return lines;
};
const run = (...args: readonly string[]): Promise<string[]> => said(main, args);
const compared = (...args: readonly string[]): Promise<string[]> => said(async (given, print) => compareMain(given, print), args);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'handover-'));
  await writeFile(
    path('in.xlsx'),
    await writeWorkbook({
      name: 'In',
      sheets: [
        {
          name: 'S',
          widths: [],
          cells: [
            { at: 'A1', role: 'label', value: 'pilot' },
            { at: 'B1', role: 'input', value: '2.4 mm' },
            { at: 'A2', role: 'label', value: 'outside diameter' },
            { at: 'B2', role: 'result', formula: '=ENCL.BOSS.OD(B1,1.2)', value: 4.8 },
            { at: 'B3', role: 'result', formula: '=XLOOKUP(1,B1:B2,B1:B2)', value: 1 },
          ],
        },
      ],
    }),
  );
});

afterAll(() => rm(folder, { recursive: true }));

describe('a workbook', () => {
  it('becomes a copy with plain formulas; the report names what is not live', async () => {
    const before = await readFile(path('in.xlsx'));
    const lines = await run(
      path('in.xlsx'),
      path('out.xlsx'),
      '--part',
      'Lid',
      '--number',
      'L-7',
      '--revision',
      'C',
      '--date',
      '2026-11-25',
      '--status',
      'for tooling',
      '--made-by',
      'M',
      '--checked-by',
      'N',
    );
    expect(lines).toEqual([
      'pages: 3 of ours (Hand-over 1, Characteristics 1, Cautions 1); your 1 sheets print as you set them up',
      'S B3: not in every program: XLOOKUP stays as typed',
      'S B1: changed: "2.4 mm" became 2.4 mm',
      `1 values live, 0 as values: ${path('out.xlsx')}`,
    ]);
    const { sheets } = await readWorkbook(new Uint8Array(await readFile(path('out.xlsx'))));
    expect(sheets.map(({ name }) => name)).toEqual([
      'S',
      'Hand-over',
      'Characteristics',
      'Cautions',
      'Calculated',
      'Steps',
      'Data',
      'Sources',
      'Conversion',
    ]);
    const cells = new Map(sheets.find(({ name }) => name === 'S')?.cells.map(cell => [cell.at, cell]));
    expect(cells.get('B1')).toMatchObject({ value: 2.4 });
    expect(cells.get('B2')).toMatchObject({ value: 4.8, formula: '=Steps!$B$10' });
    expect(sheets[1]?.cells.map(({ value }) => value)).toEqual(
      expect.arrayContaining(['Hand-over: Lid', 'L-7 · revision C · 2026-11-25 · for tooling · uncontrolled when printed', 'M', 'N']),
    );
    expect(await readFile(path('in.xlsx'))).toEqual(before);
  });

  it('is handed over the same twice', async () => {
    await run(path('in.xlsx'), path('again.xlsx'), '--date', 'd');
    const first = await readFile(path('again.xlsx'));
    await run(path('in.xlsx'), path('again.xlsx'), '--date', 'd');
    expect(await readFile(path('again.xlsx'))).toEqual(first);
  });

  it('is never written over, under whatever name', async () => {
    await symlink(path('in.xlsx'), path('soft.xlsx'));
    await link(path('in.xlsx'), path('hard.xlsx'));
    for (const name of ['in.xlsx', './in.xlsx', 'soft.xlsx', 'hard.xlsx'])
      await expect(run(path('in.xlsx'), path(name))).rejects.toThrow('give it another name');
  });

  it('follows its defined names', async () => {
    const cells = new Map(
      Object.entries({ '0,0': { value: 2.4 }, '0,1': { formula: '_xldudf_ENCL_BOSS_OD(pilot,1.2)', formulaResult: 4.8 } }),
    );
    await writeFile(
      path('names.xlsx'),
      await writeXlsx({
        sheets: [{ name: 'S', cells }],
        namedRanges: [
          { name: 'Pilot', range: 'S!$A$1' },
          { name: '_xlnm.Print_Area', range: 'S!$A$1:$B$2', scope: 'S' },
        ],
      }),
    );
    expect((await run(path('names.xlsx'), path('out.xlsx'))).at(-1)).toMatch(/^1 values live, 0 as values: /);
  });

  it('is on Letter paper where that is asked for', async () => {
    await run(path('in.xlsx'), path('letter.xlsx'), '--paper', 'letter');
    expect(
      strFromU8(unzipSync(new Uint8Array(await readFile(path('letter.xlsx'))))['xl/worksheets/sheet2.xml'] ?? new Uint8Array()),
    ).toContain('<pageSetup paperSize="1"');
  });

  it('may be a guide', async () => {
    const lines = await run('--guide', 'timer', path('timer.xlsx'));
    expect(lines.at(-1)).toMatch(/^\d+ values live, \d+ as values: /);
    const { sheets } = await readWorkbook(new Uint8Array(await readFile(path('timer.xlsx'))));
    expect(sheets.map(({ name }) => name)).toEqual(expect.arrayContaining(['Hand-over', 'Guide', 'Copper', 'Variants']));
  });

  it('may be the demo', async () => {
    const lines = await run('--demo', path('demo.xlsx'));
    expect(lines.at(-1)).toMatch(/^\d+ values live, \d+ as values: /);
  });
});

describe('refusals', () => {
  it.each<[string, readonly string[], string]>([
    ['nothing given', [], 'bosswright handover'],
    ['one file', ['in.xlsx'], 'bosswright handover'],
    ['two files for the demo', ['--demo', 'a.xlsx', 'b.xlsx'], 'bosswright handover'],
    ['another paper', ['in.xlsx', 'out.xlsx', '--paper', 'foolscap'], 'paper is one of A4, Letter'],
    [
      'a guide that is not there',
      ['--guide', 'other', 'a.xlsx'],
      'guide is one of logger, hive, timer, gauge, monitor, hatch, handheld, pond',
    ],
    ['an unknown option', ['--colour', 'in.xlsx', 'out.xlsx'], 'bosswright handover'],
    ['an unknown status', ['--status', 'secret', 'in.xlsx', 'out.xlsx'], 'status is one of for quotation, for tooling, for information'],
    ['a file that is not there', ['nowhere.xlsx', 'out.xlsx'], 'nowhere.xlsx cannot be read'],
  ])('%s', async (_, args, why) => {
    const fault = await run(...args).catch((thrown: unknown) => thrown);
    expect(fault).toBeInstanceOf(UserFault);
    expect(String(fault)).toContain(why);
  });

  it('a file that is no workbook, and one that runs something', async () => {
    await writeFile(path('text.xlsx'), 'text');
    await expect(run(path('text.xlsx'), path('out.xlsx'))).rejects.toThrow('not a workbook file');
    await writeFile(path('macro.xlsx'), zipped(CARRYING));
    await expect(compared(path('in.xlsx'), path('macro.xlsx'))).rejects.toThrow('without macros');
  });
});

describe('what a workbook carries', () => {
  const holding = async (name: string): Promise<string[]> => {
    const parts = Object.values(unzipSync(new Uint8Array(await readFile(path(name))))).map(part => Buffer.from(part).toString('latin1'));
    return Object.entries(WORDS).flatMap(([kind, word]) => (parts.some(part => part.includes(word)) ? [kind] : []));
  };
  beforeAll(() => writeFile(path('carrying.xlsx'), zipped(CARRYING)));

  it('is left out, and listed with its counts', async () => {
    const lines = await run(path('carrying.xlsx'), path('bare.xlsx'));
    expect(await holding('carrying.xlsx')).toEqual(Object.keys(WORDS));
    expect(await holding('bare.xlsx')).toEqual([]);
    const kinds = lines.flatMap(line => /^left out: ([^:]+): \d+/.exec(line)?.[1] ?? []);
    expect([...kinds].sort()).toEqual(expect.arrayContaining(Object.keys(WORDS).sort()));
    expect(lines).toContain('left out: very hidden sheet: 1 (Deep); with it: --with very-hidden-sheet');
  });

  it('goes along where that is said, kind by kind or all of it, under the name that macros ask for', async () => {
    await run(path('carrying.xlsx'), path('some.xlsx'), '--with', 'comments, threaded-comments,persons');
    expect(await holding('some.xlsx')).toEqual(['comments', 'threaded comments', 'persons']);
    await expect(run(path('carrying.xlsx'), path('all.xlsx'), '--with', 'all')).rejects.toThrow('.xlsm');
    const lines = await run(path('carrying.xlsx'), path('all.xlsm'), '--with', 'all');
    expect(await holding('all.xlsm')).toEqual(Object.keys(WORDS));
    expect(lines.filter(line => line.startsWith('left out'))).toEqual([]);
    expect(lines.filter(line => line.startsWith('goes along')).length).toBeGreaterThan(20);
  });

  it('is asked for in words that there are', async () => {
    await expect(run(path('carrying.xlsx'), path('no.xlsx'), '--with', 'remarks')).rejects.toThrow('--with remarks');
  });
});

describe('what came back', () => {
  it('is listed beside what was sent', async () => {
    await run(path('in.xlsx'), path('sent.xlsx'));
    const lines = await compared(path('sent.xlsx'), path('in.xlsx'));
    expect(lines).toContain('  pilot, S B1: 2.4 -> 2.4 mm');
    expect(lines).toContain('  outside diameter, S B2: =Steps!$B$10 -> =ENCL.BOSS.OD(B1,1.2)');
    expect(lines).toContain('  Steps, sheet missing: the whole sheet');
    const same = await compared(path('sent.xlsx'), path('sent.xlsx'));
    expect(same).toHaveLength(9);
    expect(same.filter(line => !line.endsWith(': none'))).toEqual([]);
  });

  it('goes into a workbook of the sender as far as it is accepted', async () => {
    await run(path('in.xlsx'), path('sent.xlsx'));
    const back = readPackage(new Uint8Array(await readFile(path('sent.xlsx'))));
    await writeFile(
      path('back.xlsx'),
      edited(back, { cells: new Map([['S', new Map([['B1', { value: 2.6, formula: 'none' as const }]])]]) }).bytes,
    );
    const asked: string[] = [];
    const accept = (answer: boolean): Promise<void> =>
      compareMain(
        [path('sent.xlsx'), path('back.xlsx'), '--into', path('in.xlsx'), '--out', path('mine.xlsx')],
        () => undefined,
        question => {
          asked.push(question);
          return Promise.resolve(answer);
        },
      );
    const pilot = async (): Promise<unknown> =>
      (await readWorkbook(new Uint8Array(await readFile(path('mine.xlsx'))))).sheets[0]?.cells.find(({ at }) => at === 'B1')?.value;
    await accept(false);
    expect(await pilot()).toBe('2.4 mm');
    await accept(true);
    expect(await pilot()).toBe(2.6);
    expect(asked).toEqual(Array.from({ length: 2 }, () => 'pilot, S B1: 2.4 -> 2.6; now it is 2.4 mm?'));
  });
});

describe('the choice', () => {
  it('of sheets, variants and characteristics is made by name; pages are counted before anything is written', async () => {
    const lines = await run('--demo', path('unwritten.xlsx'), '--pages');
    expect(lines[0]).toBe(
      'pages: 5 of ours (Hand-over 1, Characteristics 1, Figure 1, Variant table 1, Cautions 1); your 7 sheets print as you set them up',
    );
    expect(lines).toContain('variant x F  thicker wall, slimmer boss: pass');
    expect(lines).toContain('characteristic x boss OD');
    await expect(readFile(path('unwritten.xlsx'))).rejects.toThrow();
    await run(
      '--demo',
      path('chosen.xlsx'),
      '--sheets',
      'variants',
      '--variants',
      'D',
      '--characteristics',
      'boss OD; pilot mouth',
      '--language',
      'german',
    );
    const { sheets } = await readWorkbook(new Uint8Array(await readFile(path('chosen.xlsx'))));
    expect(sheets.map(({ name }) => name)).toEqual([
      'Variants',
      'Deckblatt',
      'Merkmale',
      'Bild',
      'Variantentabelle',
      'Hinweise',
      'Berechnet',
      'Varianten_1',
      'Schritte',
      'Daten',
      'Quellen',
      'Umsetzung',
    ]);
    const measured = sheets.find(({ name }) => name === 'Merkmale')?.cells ?? [];
    expect(measured.flatMap(({ at, value }) => (/^B([5-9]|\d\d)$/.test(at) ? [value] : []))).toEqual(['pilot mouth', 'boss OD']);
  });

  it('is remembered with the workbook, which else stays as it was, and does not go along', async () => {
    await writeFile(path('mind.xlsx'), await readFile(path('in.xlsx')));
    await run(path('mind.xlsx'), path('out.xlsx'), '--language', 'german', '--paper', 'letter', '--remember');
    const file = readPackage(new Uint8Array(await readFile(path('mind.xlsx'))));
    expect(JSON.parse(rememberedIn(file) ?? '')).toEqual({ paper: 'Letter', language: 'German' });
    expect(rememberedIn(readPackage(new Uint8Array(await readFile(path('out.xlsx')))))).toBeUndefined();
    const before = readPackage(new Uint8Array(await readFile(path('in.xlsx'))));
    expect(file.sheets.map(({ cells }) => cells)).toEqual(before.sheets.map(({ cells }) => cells));
    await run(path('mind.xlsx'), path('again.xlsx'));
    const { sheets } = await readWorkbook(new Uint8Array(await readFile(path('again.xlsx'))));
    expect(sheets.map(({ name }) => name)).toContain('Merkmale');
  });
});
