import { readdirSync } from 'node:fs';

/** Whose facts are changed. */
export const FILES: readonly string[] = [
  ...readdirSync('src/core', { recursive: true, encoding: 'utf8' })
    .filter(name => /[.](cards|words)[.]ts$/.test(name))
    .sort()
    .map(name => `src/core/${name}`),
  'src/joint/inputs.ts',
  'src/joint/nodes.ts',
  'src/joint/rules.ts',
];
