import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: { include: ['test/{documents,library}/*.test.ts'], testTimeout: 600_000, hookTimeout: 600_000, fileParallelism: false },
});
