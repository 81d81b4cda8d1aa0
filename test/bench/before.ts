// The core beside itself as it was before a variant was a row of slots: built from that commit, both in one run.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { digits, type Figure, ns } from './figure';
import { inputsOf } from './variants';

const COMMIT = '166532a';

/** What the measurements call. */
interface Core {
  call(id: string, args: readonly unknown[]): { readonly ok: boolean };
  jointTable(inputs: readonly (readonly unknown[])[], outputs: readonly (readonly unknown[])[] | undefined): unknown[][];
  readonly CARDS: ReadonlyMap<string, { readonly id: string; readonly example: { readonly args: readonly unknown[] } }>;
  readonly OUTPUTS: readonly string[];
}

const run = (command: string, args: readonly string[], cwd = '.'): Buffer => execFileSync(command, args, { cwd, maxBuffer: 1 << 28 });
const bundled = (root: string, outfile: string): string => {
  const options = ['--bundle', '--platform=node', '--format=esm', '--log-level=error', `--outfile=${outfile}`];
  run(resolve('node_modules/.bin/esbuild'), ['src/library/index.ts', ...options], root);
  return outfile;
};

/** The files of both cores, as long as `use` needs them. */
async function both<T>(use: (now: string, before: string) => Promise<T>): Promise<T> {
  const folder = mkdtempSync(join(tmpdir(), 'core-before-'));
  try {
    execFileSync('tar', ['-x', '-C', folder], {
      input: run('git', ['archive', COMMIT, 'src', 'functions', 'package.json', 'tsconfig.json']),
    });
    symlinkSync(resolve('node_modules'), join(folder, 'node_modules'));
    run('node', ['src/plain/read.mjs'], folder);
    return await use(bundled('.', join(folder, 'now.mjs')), bundled(folder, join(folder, 'before.mjs')));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const ADDITIONS = 1000;
/** Additions, each of which waits for the one before and for a tangent: the yardstick. */
function yardstick(): number {
  let total = 0.5;
  for (let i = 0; i < ADDITIONS; i++) total += 0.3 + Math.tan(total * 1e-3) * 1e-3;
  return total;
}

const BEST_OF = 9;
const SCREWS = ['ST2.9', 'ST3.5', 'M3', 'ST2.2', 'ST4.2'];
const HOLES = [3.4, 4, 3.4, 2.8, 4.8];
const PILOTS = [2.4, 2.9, 2.5, 1.8, 3.5];

/** Five screws, and another length, wall, pilot and boss from variant to variant. */
function varied(count: number): readonly (readonly unknown[])[] {
  const [names = [], ...rows] = inputsOf(count);
  const at = (name: string): number => names.indexOf(name);
  return [
    names,
    ...rows.map((row, i) => {
      const own = [...row];
      own[at('screw')] = SCREWS[i % 5] as string;
      own[at('head')] = 'pan';
      own[at('hole')] = HOLES[i % 5] as number;
      own[at('pilot')] = PILOTS[i % 5] as number;
      own[at('boss OD')] = 6.4 + (i % 13) / 10;
      return own;
    }),
  ];
}

/** Of each core, yardsticks a turn: now, before. */
async function compared(now: Core, before: Core): Promise<Figure[]> {
  const stick = ns(2000, yardstick, BEST_OF);
  const sticks = (turns: number, work: (core: Core) => unknown): [number, number] =>
    [now, before].map(core => ns(turns, () => work(core), BEST_OF) / stick) as [number, number];
  const twenty = [[...now.OUTPUTS.filter(name => before.OUTPUTS.includes(name)).slice(0, 18), 'state', 'reason']];
  const figure = (what: string, limit: number | undefined, [ours, theirs]: readonly [number, number], how: string): Figure => ({
    what,
    ...(limit !== undefined && {
      target: { words: `≤ ${limit} yardsticks`, isMet: ours <= limit, otherwise: 'in processor time, the collection of memory in it' },
    }),
    measured: `${digits(ours)} yardsticks, ${digits(theirs)} before: ${digits(theirs / ours)} times as fast`,
    how,
  });
  const table = (count: number): [number, number] => {
    const inputs = varied(count);
    const perTable = sticks(Math.max(1, Math.round(6000 / count)), core => core.call('JOINT.TABLE', [inputs, twenty]));
    return perTable.map(worth => worth / count) as [number, number];
  };
  const library = (count: number): [number, number] => {
    const inputs = varied(count);
    return sticks(1, core => core.jointTable(inputs, twenty)).map(worth => worth / count) as [number, number];
  };
  const four = (): [number, number] => sticks(20_000, core => core.call('BOSS.OD', [2.75, 1.2, 14, 0.5]));
  const fresh = four();
  const text = sticks(20_000, core => core.call('BOSS.OD', ['4.2 mm', 1.2, 14, 0.5]));
  const pilot = sticks(20_000, core => core.call('HOLE.PILOT', ['ST2.9', 0.7]));
  const results = [['engagement min', 'boss wall', 'sink ratio', 'pull-out', 'state', 'reason']];
  const study = varied(10_000);
  const batch = sticks(1, core => core.jointTable(study, results)).map(worth => worth / 10_000) as [number, number];
  const tables = [20, 900].map(table) as [[number, number], [number, number]];
  const long = library(10_000);
  for (const core of [now, before])
    for (let round = 0; round < 20; round++)
      for (const { id, example } of core.CARDS.values()) if (id !== 'STACK.SIMULATE') core.call(id, example.args);
  const afterAll = four();
  return [
    {
      what: 'the yardstick',
      measured: `${digits(stick / 1000)} µs`,
      how: '1,000 additions, each of which waits for the one before and for a tangent',
    },
    figure(
      'a variant of 900, 20 outputs',
      0.35,
      tables[1],
      'JOINT.TABLE, five screws, state and reason among the outputs; rows that share a screw are worked out behind one another: where no input comes again, a row takes about twice as long',
    ),
    figure('a variant of 20, 20 outputs', undefined, tables[0], 'the same'),
    figure('a variant of 10,000, 20 outputs', undefined, long, 'the same through the library'),
    figure('a variant of a study, 6 results', undefined, batch, 'the results of the batch, 10,000 variants through the library'),
    figure('four numbers', 0.006, fresh, 'BOSS.OD in a loop of 20,000'),
    figure('four numbers after all functions', 0.012, afterAll, 'the same'),
    figure('a text with a unit', 0.055, text, 'BOSS.OD, one of its four arguments a text'),
    figure('a pilot hole', 0.024, pilot, 'HOLE.PILOT("ST2.9", 0.7)'),
  ];
}

/** Milliseconds of processor time until a process of its own has answered its first table. */
function firstCall(file: string): number {
  const script = `const { call } = await import(${JSON.stringify(pathToFileURL(file).href)}); call("JOINT.TABLE", [${JSON.stringify(varied(900))}]); const { user, system } = process.cpuUsage(); console.log((user + system) / 1000);`;
  return Math.min(...Array.from({ length: BEST_OF }, () => Number(execFileSync('node', ['--input-type=module', '-'], { input: script }))));
}

export const beside = (): Promise<Figure[]> =>
  both(async (now, before) => {
    const load = async (file: string): Promise<Core> => (await import(pathToFileURL(file).href)) as Core;
    const [ours, theirs] = [firstCall(now), firstCall(before)];
    return [
      ...(await compared(await load(now), await load(before))),
      {
        what: 'a process of its own until its first table of 900',
        target: { words: 'no slower than before', isMet: ours <= theirs, otherwise: 'in processor time, the collection of memory in it' },
        measured: `${digits(ours)} ms, ${digits(theirs)} before`,
        how: 'processor time from the start, all outputs',
      },
    ];
  });
