import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['test/runtime/*.test.ts'], testTimeout: 120_000, hookTimeout: 60_000, fileParallelism: false },
});
