import { defineConfig } from 'vitest/config';

export default defineConfig({
  // a busy machine may let a key arrive too soon: each test may be tried again
  test: {
    retry: 2,
    reporters: ['default', './test/kit/retried.ts'],
    expect: { poll: { timeout: 60_000 } },
    include: ['test/pane/*.browser.ts'],
    testTimeout: 240_000,
    hookTimeout: 240_000,
    fileParallelism: false,
  },
});
