// Tests that were tried again are told, in every suite that may try again and in the gate.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import Retried from '../kit/retried';

const read = (path: string): string => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8');

test('by name and counted: one that passes in the end, and one that never does', () => {
  const print = vi.spyOn(console, 'log').mockImplementation(() => undefined);
  const reporter = new Retried();
  const end = (fullName: string, retryCount: number, state: 'passed' | 'failed'): void =>
    reporter.onTestCaseResult({ fullName, diagnostic: () => ({ retryCount }), result: () => ({ state }) } as Parameters<
      Retried['onTestCaseResult']
    >[0]);
  end('at once', 0, 'passed');
  end('in the end', 1, 'passed');
  end('never', 2, 'failed');
  reporter.onTestRunEnd();
  expect(print.mock.calls).toEqual([['retried: 2\n  in the end (1 more, passed)\n  never (2 more, failed)']]);
  print.mockRestore();
});

test('by every suite with tests that may be tried again, and by the gate', () => {
  const configs = readdirSync(new URL('../', import.meta.url))
    .map(folder => `test/${folder}/vitest.config.ts`)
    .filter(path => existsSync(new URL(`../../${path}`, import.meta.url)));
  const retrying = ['vitest.config.ts', ...configs].filter(path => /\bretry:/.test(read(path)));
  expect(retrying).toEqual(['test/browser/vitest.config.ts', 'test/pane/vitest.config.ts', 'test/runtime/vitest.config.ts']);
  for (const path of retrying) expect(read(path), path).toContain('./test/kit/retried.ts');
  expect(read('.ci/run')).toContain('--reporter=./test/kit/retried.ts');
});
