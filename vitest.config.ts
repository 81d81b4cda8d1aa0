import { defineConfig } from 'vitest/config';

export default defineConfig({
  // no file changes what another sees, and loading everything anew for each takes longer than the tests
  test: { isolate: false, maxWorkers: '100%', testTimeout: 300_000, include: ['test/**/*.test.ts'], exclude: ['test/browser/**', 'test/documents/**', 'test/engines/**', 'test/library/**', 'test/runtime/**'] },
});
