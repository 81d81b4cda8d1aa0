import { defineConfig, type TestProjectInlineConfiguration } from 'vitest/config';

type Project = NonNullable<TestProjectInlineConfiguration['test']>;

const IN_CHROMIUM: Project = {
  // a busy machine may let a key arrive too soon: each test may be tried again
  retry: 2,
  expect: { poll: { timeout: 60_000 } },
  testTimeout: 240_000,
  hookTimeout: 240_000,
  fileParallelism: false,
};

const projects: readonly Project[] = [
  {
    name: 'plain',
    include: ['test/**/*.test.ts'],
    exclude: ['test/browser/**', 'test/documents/**', 'test/engines/**', 'test/library/**', 'test/runtime/**'],
    // loading everything anew for each file takes longer than the tests; the one replaced module (contract/cards) no other file loads
    isolate: false,
    maxWorkers: '100%',
    testTimeout: 300_000,
  },
  { ...IN_CHROMIUM, name: 'browser', include: ['test/browser/*.test.ts'] },
  { ...IN_CHROMIUM, name: 'pane', include: ['test/pane/*.browser.ts'] },
  { ...IN_CHROMIUM, name: 'runtime', include: ['test/runtime/*.test.ts'] },
  {
    name: 'documents',
    include: ['test/{documents,library}/*.test.ts'],
    testTimeout: 600_000,
    hookTimeout: 600_000,
    fileParallelism: false,
  },
  { name: 'engines', include: ['test/engines/**/*.test.ts'], testTimeout: 1_800_000, hookTimeout: 1_800_000 },
];

export default defineConfig({
  test: { globalSetup: './test/kit/forms.ts', reporters: ['default', './test/kit/retried.ts'], projects: projects.map(test => ({ test })) },
});
