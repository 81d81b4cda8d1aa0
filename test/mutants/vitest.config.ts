import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Most mutants are noticed by the first test that meets them. */
class ShortestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    return (await super.sort(files)).reverse();
  }
}

export default defineConfig({
  test: {
    // what holds the core and the joint; the random properties take too long for every mutant
    include: [
      'test/{core,joint,standards}/*.test.ts',
      'test/evidence/{inverse,monotone,published,standards,wrong-forms}.test.ts',
      'test/plain/forms.test.ts',
      'test/faults/found.test.ts',
    ],
    testTimeout: 120_000,
    isolate: false,
    sequence: { sequencer: ShortestFirst },
  },
});
