// The README's list of functions is generated. To write it anew: UPDATE_README=1 npx vitest run test/contract/readme.test.ts
import { readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { functionTable } from '../../src/help/function-table';
import { CARDS } from '../../src/registry';

const FILE = new URL('../../README.md', import.meta.url);
const BEGIN = '<!-- functions: generated -->';
const END = '<!-- end of functions -->';

test('the list of functions in the README is the one in the code', () => {
  const text = readFileSync(FILE, 'utf8');
  const [before = '', rest = ''] = text.split(BEGIN);
  const [held = '', after = ''] = rest.split(END);
  const current = `${functionTable(CARDS.values())}\n\n`;
  if (process.env['UPDATE_README'] === '1') writeFileSync(FILE, `${before}${BEGIN}${current}${END}${after}`);
  else expect(held).toBe(current);
});
