// Tests that were tried again are told, in every suite that may try again and in the gate.
import { readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import config from '../../vitest.config';
import Retried from '../kit/retried';

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
  // told by the reporter alone: the gate's own list is not for names made up here
  vi.stubEnv('RETRIED', undefined);
  reporter.onTestRunEnd();
  vi.unstubAllEnvs();
  expect(print.mock.calls).toEqual([['retried: 2\n  in the end (1 more, passed)\n  never (2 more, failed)']]);
  print.mockRestore();
});

test('by every suite with tests that may be tried again, and by the gate', () => {
  const { reporters, projects } = config.test as { reporters: string[]; projects: { test: { name: string; retry?: number } }[] };
  const retrying = projects.filter(({ test: { retry } }) => retry !== undefined).map(({ test: { name } }) => name);
  expect(retrying).toEqual(['browser', 'pane', 'runtime']);
  expect(reporters).toContain('./test/kit/retried.ts');
  expect(readFileSync(new URL('../../.ci/run', import.meta.url), 'utf8')).toContain('--reporter=./test/kit/retried.ts');
});
