import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';

/** The same input gives the same answer on every machine and in every language setting. */
const deterministic = {
  'no-restricted-globals': [
    'error',
    { name: 'Date', message: 'No clock in the core: the answer may depend on the arguments only.' },
    { name: 'console', message: 'The core answers or refuses; it prints nothing.' },
  ],
  'no-restricted-properties': [
    'error',
    { object: 'globalThis', property: 'Date', message: 'No clock in the core.' },
    { object: 'Math', property: 'random', message: 'Use the seeded generator: same seed, same answer.' },
    { property: 'toFixed', message: 'It rounds the binary value; use the decimal rounding of the core.' },
    { property: 'toLocaleString', message: 'It follows the language of the machine; use the printing of the core.' },
  ],
};

export default defineConfig(
  globalIgnores(['dist/', 'dist-*/', 'coverage/', '.cache/', '.stryker/']),
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  tseslint.configs.recommended,
  {
    rules: {
      eqeqeq: 'error',
      'no-cond-assign': 'error',
      'no-constant-binary-expression': 'error',
      'no-constant-condition': ['error', { checkLoops: 'allExceptWhileTrue' }],
      'no-control-regex': 'error',
      'no-empty': 'error',
      'no-irregular-whitespace': ['error', { skipStrings: false }],
      'no-loss-of-precision': 'error',
      'no-misleading-character-class': 'error',
      'no-self-assign': 'error',
      'no-sparse-arrays': 'error',
      'no-unsafe-finally': 'error',
      'no-useless-assignment': 'error',
      'no-useless-escape': 'error',
      '@typescript-eslint/consistent-type-imports': ['error', { fixStyle: 'inline-type-imports' }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
    },
  },
  { files: ['src/{core,standards,joint,plain,sheet,demo,figure}/**'], rules: deterministic },
  {
    files: ['src/**/*.{ts,tsx}', 'functions/*.ts'],
    rules: {
      'max-len': ['error', { code: 140 }],
      'max-lines': ['error', { max: 250 }],
    },
  },
  // data, read a line at a time: cards, declarations of the joint, tables of standards, demo guides, the list of evidence
  {
    files: [
      'src/**/*.cards.ts',
      'src/standards/*.ts',
      'src/demo/guide-*.ts',
      'src/evidence/list.ts',
      'src/joint/{inputs,nodes,rules}.ts',
      'src/german/*.ts',
    ],
    rules: { 'max-lines': 'off' },
  },
  // The generator of the metadata reads one file at a time and knows no other type for "number or text with unit".
  { files: ['functions/*.ts'], rules: { '@typescript-eslint/no-explicit-any': 'off' } },
);
