// Changes one thing of the tables at a time and sees whether a test notices: npm run test:corrupt, with another seed behind --.
// It works on a copy in a temporary folder. First test/standards, then test/evidence, and what both let pass goes through the whole of npm test.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { createVitest } from 'vitest/node';
import { UserFault } from '../../src/cli/user-fault';
import { corruptions, FILES, KINDS, type Corruption, type Kind } from './corruptions';
import type { Results } from './results';

const FILE = 'test/corrupt/results.json';
/** What an earlier run found is not asked; that its test is there, another test asks. */
const OWN = 'test/evidence/corrupt.test.ts';
const TRIED: Readonly<Record<Kind, number>> = {
  digit: 120,
  'swap of neighbours': 50,
  '±1 in two rows': 45,
  unit: 25,
  edition: 20,
  'how held': 25,
  limit: 15,
};
/** After so many corruptions the tables as they are must pass again, so that "noticed" is not what a run always says. */
const PROOF_EVERY = 30;

export async function main([seed = '13']: readonly string[], print: (line: string) => void): Promise<void> {
  const started = performance.now();
  const random = xoroshiro128plus(Number(seed));
  const drawn = KINDS.flatMap(kind => {
    const pool = corruptions(kind, bound => uniformInt(random, 0, bound - 1));
    return Array.from({ length: TRIED[kind] }, () => pool.splice(uniformInt(random, 0, pool.length - 1), 1)).flat();
  });

  const copy = mkdtempSync(path.join(tmpdir(), 'corrupt-'));
  try {
    const here = process.cwd();
    cpSync(here, copy, {
      recursive: true,
      filter: source => !/^(node_modules|\.git|\.cache|\.stryker|dist.*)$/.test(path.relative(here, source)),
    });
    symlinkSync(path.join(here, 'node_modules'), path.join(copy, 'node_modules'));
    const noticing = await noticer(copy);
    const proof = async (): Promise<void> => {
      const failed = await noticing(undefined);
      if (failed !== undefined) throw new UserFault(`nothing can be said of corruptions: the tables as they are do not pass "${failed}"`);
    };
    const survivors: Corruption[] = [];
    for (const [i, corruption] of drawn.entries()) {
      if (i % PROOF_EVERY === 0) await proof();
      if ((await noticing(corruption)) !== undefined) continue;
      survivors.push(corruption);
      print(`through the whole of npm test: ${told(corruption)}`);
    }
    await proof();
    const missed = inAll(copy, survivors);

    const by = Object.fromEntries(
      KINDS.map(kind => [kind, { tried: TRIED[kind], caught: TRIED[kind] - missed.filter(one => one.kind === kind).length }]),
    );
    const caught = drawn.length - missed.length;
    const results: Results = {
      on: new Date().toISOString().slice(0, 10),
      seed: Number(seed),
      tried: drawn.length,
      caught,
      byStandardsAndEvidence: drawn.length - survivors.length,
      kinds: by,
      survivors: missed.map(({ kind, file, line, said }) => ({ kind, file, line, said })),
      files: Object.fromEntries(FILES.map(file => [file, createHash('sha256').update(readFileSync(file)).digest('hex').slice(0, 16)])),
    };
    writeFileSync(FILE, `${JSON.stringify(results, null, 2)}\n`);
    for (const [kind, { tried, caught: some }] of Object.entries(by)) print(`${kind}: ${tried} tried, ${some} caught`);
    for (const one of missed) print(`not noticed: ${told(one)}`);
    print(
      `${caught} of ${drawn.length} caught, ${drawn.length - survivors.length} by test/standards and test/evidence alone; seed ${seed}, ${Math.round((performance.now() - started) / 1000)} s`,
    );
  } finally {
    rmSync(copy, { recursive: true });
  }
}

const told = ({ kind, file, line, said }: Corruption): string => `${file}:${line}, ${kind}: ${said}`;
const write = (copy: string, { file, changed }: Corruption): void => writeFileSync(path.join(copy, file), changed);
const restore = (copy: string, { file, text }: Corruption): void => writeFileSync(path.join(copy, file), text);

/** Gives the test of test/standards or test/evidence that fails with the corruption, or without any. */
async function noticer(copy: string): Promise<(corruption: Corruption | undefined) => Promise<string | undefined>> {
  const vitest = await createVitest('test', {
    root: copy,
    project: 'plain',
    watch: false,
    reporters: [{}],
    fileParallelism: false,
    pool: 'threads',
  });
  const parts = await Promise.all(
    ['test/standards/records', 'test/standards', 'test/evidence'].map(async part =>
      (await vitest.globTestSpecifications([part])).filter(({ moduleId }) => !moduleId.endsWith(OWN)),
    ),
  );
  const failing = async (): Promise<string | undefined> => {
    for (const part of parts) {
      // the modules that it answers with are those of every run so far
      const { unhandledErrors } = await vitest.runTestSpecifications(part);
      const failed = part.find(({ testModule }) => testModule?.state() !== 'passed');
      if (failed !== undefined) return [...(failed.testModule?.children.allTests('failed') ?? [])][0]?.fullName ?? failed.moduleId;
      if (unhandledErrors.length > 0) return String(unhandledErrors[0]);
    }
    return undefined;
  };
  return async corruption => {
    if (corruption === undefined) return failing();
    const file = path.join(copy, corruption.file);
    write(copy, corruption);
    vitest.invalidateFile(file);
    const failed = await failing();
    restore(copy, corruption);
    vitest.invalidateFile(file);
    return failed;
  };
}

/** Those that the whole of npm test lets pass too. */
function inAll(copy: string, survivors: readonly Corruption[]): readonly Corruption[] {
  const asked = readdirSync(path.join(copy, 'test'), { recursive: true, encoding: 'utf8' })
    .map(name => path.posix.join('test', name))
    .filter(name => name.endsWith('.test.ts') && name !== OWN);
  const passes = (): boolean =>
    spawnSync('npx', ['vitest', 'run', '--project', 'plain', '--bail', '1', ...asked], { cwd: copy, stdio: 'ignore' }).status === 0;
  if (survivors.length > 0 && !passes()) throw new UserFault('npm test fails on the tables as they are');
  return survivors.filter(corruption => {
    write(copy, corruption);
    const passed = passes();
    restore(copy, corruption);
    return passed;
  });
}
