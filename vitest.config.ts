import { defineConfig } from 'vitest/config';

export default defineConfig({
  // loading everything anew for each file takes longer than the tests; the one replaced module (contract/cards) no other file loads
  test: {
    isolate: false,
    maxWorkers: '100%',
    testTimeout: 300_000,
    include: ['test/**/*.test.ts'],
    exclude: ['test/browser/**', 'test/documents/**', 'test/engines/**', 'test/library/**', 'test/runtime/**'],
  },
});
