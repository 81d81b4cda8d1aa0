// The README's list of functions, its page of proof, its table of evidence and its figures are generated. To write them anew: UPDATE_README=1 npx vitest run test/contract/readme.test.ts
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { evidenceTable } from '../../src/help/evidence';
import { functionTable } from '../../src/help/function-table';
import { proofPage } from '../../src/help/proof';
import { CARDS } from '../../src/registry';
import { changedSince, MUTANTS, sinceWords } from '../../src/release/measured';
import { figuresPage, type Results } from '../bench/figure';
import { EVIDENCE } from '../evidence/evidence';

const FILE = new URL('../../README.md', import.meta.url);

const measured = figuresPage(JSON.parse(readFileSync(new URL('../bench/results.json', import.meta.url), 'utf8')) as Results);

/** Files go on changing after the page was written; how many had then is no fault of it. */
const since = (): string => {
  const { changed, of } = changedSince(readFileSync(MUTANTS, 'utf8'), file => (existsSync(file) ? readFileSync(file) : undefined));
  const told = /^Mutants: (\d+ of the \d+ files have changed since) /m.exec(readFileSync(FILE, 'utf8'))?.[1];
  return process.env['UPDATE_README'] === '1' || told === undefined ? sinceWords(changed.length, of) : told;
};

test.each([
  ['list of functions', '<!-- functions: generated -->', '<!-- end of functions -->', functionTable(CARDS.values())],
  ['page of proof', '<!-- proof: generated -->', '<!-- end of proof -->', `\n${proofPage(since())}`],
  ['figures', '<!-- figures: generated -->', '<!-- end of figures -->', `\n${measured}`],
  ['table of evidence', '<!-- evidence: generated -->', '<!-- end of evidence -->', evidenceTable(CARDS.values(), EVIDENCE)],
])('the %s in the README is the one in the code', (_, begin, end, generated) => {
  const text = readFileSync(FILE, 'utf8');
  const [before = '', rest = ''] = text.split(begin);
  const [held = '', after = ''] = rest.split(end);
  expect(after, `${begin} … ${end}`).not.toBe('');
  const current = `${generated}\n\n`;
  if (process.env['UPDATE_README'] === '1') writeFileSync(FILE, `${before}${begin}${current}${end}${after}`);
  else expect(held).toBe(current);
});
