import { defineConfig } from 'vitest/config';
import { Facts, type Mutant } from './facts';
import { FILES } from './files';

const facts = new Facts();

export default defineConfig({
  plugins: [
    { name: 'facts', enforce: 'pre', transform: (_, id) => (FILES.some(file => id.endsWith(`/${file}`)) ? facts.written(id) : undefined) },
  ],
  test: {
    include: ['test/mutants/facts.all.ts'],
    runner: 'test/mutants/facts.runner.ts',
    isolate: false,
    maxWorkers: 1,
    testTimeout: 300_000,
    // much has been loaded by then
    teardownTimeout: 300_000,
    provide: { mutants: facts.mutants },
  },
});

declare module 'vitest' {
  interface ProvidedContext {
    mutants: readonly Mutant[];
  }
}
