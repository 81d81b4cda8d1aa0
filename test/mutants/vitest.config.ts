import { defineConfig } from 'vitest/config';

export default defineConfig({
  // what holds the core and the joint; the random properties take too long for every mutant
  test: { include: ['test/{core,joint,standards}/*.test.ts', 'test/evidence/{inverse,monotone,published,standards,wrong-forms}.test.ts', 'test/plain/forms.test.ts', 'test/faults/found.test.ts'], testTimeout: 120_000 },
});
