// Every command that a document shows is run here, or stands in a list that says where it is run instead. One in no list fails.
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { commandsIn, DOCUMENTS, textOf } from './documents';

/** Run as they stand, in this order; file names without a folder come into one that is thrown away. */
const RUN: readonly string[] = [
  'npm run bosswright -- handover --demo handover.xlsx',
  'npm run bosswright -- handover in.xlsx out.xlsx',
  'npm run bosswright -- compare sent.xlsx returned.xlsx',
  'npm run bosswright -- handover --guide NAME out.xlsx',
];

/** Started until they say what is expected, then stopped. */
const STARTED: Readonly<Record<string, RegExp>> = {
  'npm start': /Bench: http:\/\/localhost:\d+\//,
};

/** Run by a step of .ci/run, so only their scripts are looked for. */
const IN_THE_GATE: readonly string[] = [
  'npm ci',
  'npm test',
  'npm run build',
  'npm run types',
  'npm run lint',
  'npm run imports',
  'npm run library',
  'npm run test:browser',
  'npm run test:pane',
  'npm run test:runtime',
  'npm run test:engines',
  'npm run test:documents',
  '.ci/run',
];

/** Too long for every day, or they write into the sources, or need a server: what is behind them is tested where it says. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'npm run test:fuzz': 'test/faults/fuzz.test.ts',
  'npm run bench': 'test/bench/bench.ts',
  'npm run format': '.ci/run',
  'npm run test:mutants': 'test/mutants/stryker.config.json',
  'npm run test:facts': 'test/evidence/mutants.test.ts',
  'npm run test:corrupt': 'test/evidence/corrupt.test.ts',
  'npm run excel': 'test/runtime/server.test.ts',
  'npx office-addin-dev-certs@3.0.0 install': 'test/runtime/server.test.ts',
  'npx office-addin-dev-certs@3.0.0 uninstall': 'test/runtime/server.test.ts',
  'npm run package -- --base-url https://example.org/bosswright/': 'test/runtime/release.test.ts',
  'npm run package:excel -- --base-url https://example.org/bosswright/': 'test/runtime/without-bench.test.ts',
  'npm run bosswright -- verify /srv/addin --sums bosswright-VERSION.zip': 'test/release/verify.test.ts',
  'npm install ../bosswright/dist-library': 'test/library/library.test.ts',
  'npm run bosswright -- COMMAND …': 'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- table joints.csv --results "state, engagement ratio" --out results.csv': 'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- table joints.csv --results state --as json': 'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- card joints.csv --row 2 --out card.md': 'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- figure joints.csv joint.svg --row 2': 'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- figure joints.csv joint.dxf --row 2': 'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- parameters joints.csv joint-parameters.csv --row 2': 'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- map joints.csv --row 2 --x wall --x-values 2,2.5,3 --y "boss OD" --y-values 6,6.5,7 --as md':
    'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- map joints.csv --row 2 --x wall --x-values 2,2.5,3 --y "boss OD" --y-values 6,6.5,7 --out map.svg':
    'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- sensitivity joints.csv --row 2 --result "engagement min" --out bars.svg': 'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- simulate joints.csv --row 2 --out yield.csv': 'test/commands/bosswright.test.ts',
  'npm run -s bosswright -- check joints.csv': 'test/commands/bosswright.test.ts',
  'npm run generate': 'test/documents/adding.test.ts',
  'unzip -q bosswright-VERSION.zip -d /srv/addin': 'test/runtime/release.test.ts',
  'cd /srv/addin': 'test/runtime/release.test.ts',
  'sha256sum -c --quiet SHA256SUMS': 'test/runtime/release.test.ts',
  'curl -sI https://example.org/bosswright/functions.js': 'test/runtime/release.test.ts',
};

const folder = mkdtempSync(path.join(tmpdir(), 'commands-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** The same command on files of the throw-away folder. */
const inFolder = (command: string): string =>
  command
    .replace(/(?<=\s)([\w-]+\.(?:xlsx|csv))\b/g, name =>
      path.join(
        folder,
        ({ 'in.xlsx': 'handover.xlsx', 'sent.xlsx': 'handover.xlsx', 'returned.xlsx': 'out.xlsx' } as Record<string, string>)[name] ?? name,
      ),
    )
    .replace('NAME', 'hive');

const { scripts } = JSON.parse(readFileSync('package.json', 'utf8')) as { readonly scripts: Readonly<Record<string, string>> };
const shown = DOCUMENTS.flatMap(document => commandsIn(textOf(document)).map(command => [document, command] as const));

describe('every command shown', () => {
  const known = new Set([...RUN, ...Object.keys(STARTED), ...IN_THE_GATE, ...Object.keys(ELSEWHERE)]);
  it.each(shown)('%s: %s is in a list', (_, command) => expect([...known]).toContain(command));

  it('nothing is listed that no document shows', () => {
    const all = new Set(shown.map(([, command]) => command));
    expect([...known].filter(command => !all.has(command))).toEqual([]);
  });

  it('has its script', () => {
    const asked = shown
      .flatMap(([, command]) => /npm (?:run )?(?:-s )?(\S+)/.exec(command)?.[1] ?? [])
      .filter(name => !['ci', 'install'].includes(name));
    expect(asked.length).toBeGreaterThan(10);
    expect([...new Set(asked)].filter(name => scripts[name] === undefined)).toEqual([]);
  });
});

it('commands are found in fences, tables and sentences', () => {
  expect(
    commandsIn(
      '```\nnpm ci && npm start    # opens\nno command\n```\n```nginx\nnode x\n```\n| `npm run a` | `not one` |\nas `A=1 npx b c` says, `npm`, and `.ci/run`',
    ),
  ).toEqual(['npm ci', 'npm start', 'npm run a', 'A=1 npx b c', '.ci/run']);
});

describe('run', () => {
  it.each(RUN)('%s', command => {
    const [program = '', ...args] = inFolder(command).split(' ');
    expect(execFileSync(program, args, { encoding: 'utf8' })).not.toBe('');
  });
});

describe('started and stopped', () => {
  it.each(Object.entries(STARTED))('%s', async (command, expected) => {
    const [program = '', ...args] = command.split(' ');
    const started = spawn(program, args, { detached: true, stdio: ['ignore', 'pipe', 'pipe'] });
    let said = '';
    try {
      await new Promise<void>((resolve, reject) => {
        const hear = (data: Buffer): void => void ((said += data.toString()), expected.test(said) && resolve());
        started.stdout.on('data', hear);
        started.stderr.on('data', hear);
        started.on('exit', code => reject(new Error(`ended with ${code}: ${said}`)));
      });
    } finally {
      if (started.pid !== undefined && started.exitCode === null) process.kill(-started.pid);
    }
    const [address = ''] = /http:\S+/.exec(said) ?? [];
    await expect
      .poll(
        () =>
          fetch(address).then(
            () => 'served',
            () => 'stopped',
          ),
        { timeout: 20_000 },
      )
      .toBe('stopped');
  });
});
