import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { testTimeout: 300_000, include: ['test/**/*.test.ts'], exclude: ['test/browser/**', 'test/documents/**', 'test/engines/**', 'test/library/**', 'test/runtime/**'] },
});
