// Each mutant meets the tests that read its file, the quickest first, until one notices it. All in one process: only what reads the mutant
// is loaded anew.
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { startTests, type Task } from '@vitest/runner';
import { type EvaluatedModules, inject, TestRunner } from 'vitest';
import type { Mutant } from './facts';
import { FILES } from './files';

/** The folders whose tests are asked: those of test/contract, and of a file's own folder. */
const ASKED = ['contract', 'core', 'joint'];
const isOf = (file: string, test: string): boolean => ['contract', file.split('/')[1]].includes(path.basename(path.dirname(test)));
/** A test that takes longer is not asked. */
const LONGEST_MS = 1_000;
const OUT = '.cache/facts.json';

declare global {
  var mutant: number | undefined;
}

interface Asked {
  readonly name: string;
  readonly ms: number;
  noticed: number;
}

export interface Done {
  readonly sha256: string;
  readonly mutants: readonly (Mutant & { readonly by: string | undefined })[];
}

const failed = (task: Task): string | undefined => {
  const own = task.result?.state === 'fail' ? task.name : undefined;
  return ('tasks' in task ? task.tasks.map(failed).find(name => name !== undefined) : undefined) ?? own;
};

export default class Facts extends TestRunner {
  async onBeforeCollect(): Promise<void> {
    const names = ASKED.flatMap(folder =>
      readdirSync(`test/${folder}`)
        .filter(name => name.endsWith('.test.ts'))
        .map(name => path.resolve('test', folder, name)),
    );
    // a stack is read by nobody
    Error.stackTraceLimit = 0;
    // once to load everything, once for the time
    for (const name of names) await this.#run(name);
    const tests: Asked[] = [];
    for (const name of names) {
      this.#forget(new Set([name]));
      const begin = process.cpuUsage();
      const fault = await this.#run(name);
      if (fault !== undefined) throw new Error(`${name} fails without a mutant: ${fault}`);
      const { user, system } = process.cpuUsage(begin);
      tests.push({ name, ms: (user + system) / 1000, noticed: 0 });
    }
    const slow = tests.filter(({ ms }) => ms > LONGEST_MS).map(({ name }) => path.relative('.', name));
    process.stderr.write(`not asked, too slow: ${slow.join(', ')}\n`);
    const mutants = inject('mutants');
    const only = process.env['FACTS'] ?? '';
    const done = existsSync(OUT) ? (JSON.parse(readFileSync(OUT, 'utf8')) as Record<string, Done>) : {};
    for (const file of FILES.filter(name => name.includes(only))) {
      const readers = this.#readers(path.resolve(file));
      const asked = tests.filter(({ name, ms }) => isOf(file, name) && readers.has(name) && ms <= LONGEST_MS).map(test => ({ ...test }));
      const sha256 = createHash('sha256').update(readFileSync(file)).digest('hex');
      // what was noticed in a file as it stands is not asked again
      const before = done[file]?.sha256 === sha256 ? done[file].mutants : [];
      const own: Done['mutants'][number][] = [];
      const begin = process.cpuUsage().user;
      for (const [number, mutant] of mutants.entries()) {
        if (mutant.file !== file) continue;
        globalThis.mutant = number;
        this.#forget(readers);
        own.push({ ...mutant, by: before[own.length]?.by ?? (await this.#noticed(asked)) });
      }
      // nothing of the last mutant may stay, or each of the next file is noticed by what it left
      globalThis.mutant = undefined;
      this.#forget(readers);
      for (const { name } of asked) {
        const fault = await this.#run(name);
        if (fault !== undefined) throw new Error(`${name} fails after the mutants of ${file}: ${fault}`);
      }
      done[file] = { sha256, mutants: own };
      writeFileSync(OUT, JSON.stringify(done));
      process.stderr.write(
        `${file}: ${own.filter(({ by }) => by !== undefined).length} of ${own.length}, ` +
          `${((process.cpuUsage().user - begin) / 1e6).toFixed(0)} s\n`,
      );
    }
  }

  /** The most promising first: what takes least time for what it has noticed so far. */
  async #noticed(asked: Asked[]): Promise<string | undefined> {
    asked.sort((a, b) => a.ms / (1 + a.noticed) - b.ms / (1 + b.noticed));
    for (const test of asked) {
      const fault = await this.#run(test.name);
      if (fault === undefined) continue;
      test.noticed++;
      return `${path.relative('.', test.name)}: ${fault}`;
    }
    return undefined;
  }

  /** The first test that failed. */
  async #run(filepath: string): Promise<string | undefined> {
    let forget = (): unknown => undefined;
    const once = Object.assign(Object.create(this) as TestRunner, {
      cancelRun: false,
      onBeforeCollect: undefined,
      onCollected: undefined,
      onTaskUpdate: undefined,
      onAfterRunTask(test: Task) {
        if (test.result?.state === 'fail') this.cancelRun = true;
      },
      // what a run keeps for the next makes the next slower
      onCleanupWorkerContext(listener: () => unknown) {
        forget = listener;
      },
    });
    const [file] = await startTests([filepath], once);
    await forget();
    return file === undefined ? 'nothing was run' : failed(file);
  }

  #readers(file: string): Set<string> {
    const found = new Set([file]);
    for (const id of found) for (const reader of this.#modules().getModuleById(id)?.importers ?? []) found.add(reader);
    return found;
  }

  #modules(): EvaluatedModules {
    return (this as unknown as { readonly moduleRunner: { readonly evaluatedModules: EvaluatedModules } }).moduleRunner.evaluatedModules;
  }

  #forget(ids: ReadonlySet<string>): void {
    for (const id of ids) {
      const module = this.#modules().getModuleById(id);
      if (module === undefined) continue;
      module.promise = undefined;
      module.exports = undefined;
      module.evaluated = false;
    }
  }
}
