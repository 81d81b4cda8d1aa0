// Writes its part of results.md, which the page of proof names: tsx test/mutants/results.ts formulas after Stryker, facts after the mutants
// of facts.
// Each file has the beginning of the SHA-256 of what was measured, so that a change since is seen.
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import type { Done } from './facts.runner';

const PAGE = 'test/mutants/results.md';
/** What Stryker reports, as far as it is read. */
interface Changed {
  readonly status: string;
  readonly mutatorName: string;
  readonly replacement: string;
  readonly location: { readonly start: { readonly line: number } };
}
interface Report {
  readonly files: Readonly<Record<string, { readonly source: string; readonly mutants: readonly Changed[] }>>;
}

interface Row {
  readonly file: string;
  readonly sha256: string;
  readonly noticed: number;
  readonly missed: readonly string[];
}

const TABLE = ['| file | sha-256 | noticed | of | not noticed |', '|---|---|---|---|---|'];
const today = new Date().toISOString().slice(0, 10);
const inCell = (text: string, most: number): string => {
  const line = text.replace(/\s+/g, ' ');
  return `\`${(line.length > most ? `${line.slice(0, most)}…` : line).replace(/\|/g, '\\|').replace(/`/g, "'")}\``;
};
const sum = (rows: readonly Row[], of: (row: Row) => number): number => rows.reduce((total, row) => total + of(row), 0);
const counted = (rows: readonly Row[]) => {
  const noticed = sum(rows, row => row.noticed);
  const all = noticed + sum(rows, row => row.missed.length);
  return { noticed, all, percent: ((100 * noticed) / all).toFixed(1) };
};
const rowOf = ({ file, sha256, noticed, missed }: Row): string =>
  `| ${file} | ${sha256.slice(0, 16)} | ${noticed} | ${noticed + missed.length} | ${missed.join('; ') || '–'} |`;

function formulas(): string[] {
  const { files } = JSON.parse(readFileSync('.stryker/report.json', 'utf8')) as Report;
  const has = (mutants: readonly Changed[], ...status: readonly string[]): Changed[] =>
    mutants.filter(mutant => status.includes(mutant.status));
  const where = ({ location: { start }, mutatorName, replacement }: Changed): string =>
    `line ${start.line}: ${mutatorName} ${inCell(replacement, 60)}`;
  const rows = Object.entries(files)
    .map(([file, { source, mutants }]) => ({
      file,
      sha256: createHash('sha256').update(source).digest('hex'),
      noticed: has(mutants, 'Killed', 'Timeout').length,
      missed: has(mutants, 'Survived', 'NoCoverage').map(where),
    }))
    .filter(({ noticed, missed }) => noticed + missed.length > 0);
  const { noticed, all, percent } = counted(rows);
  const late = has(
    Object.values(files).flatMap(({ mutants }) => mutants),
    'Timeout',
  ).length;
  return [
    `Mutants on ${today}, put together from runs up to then: ${noticed} of ${all} noticed, ${late} of them by a test that ran out ` +
      `of time, ${percent} %, target 85 %. Changed were the ${rows.length} files below, one place at a time, and no others; not ` +
      'texts, not numbers as they are written, not the cards, and not what is worked out once when a file is loaded. A place that no ' +
      'test noticed may be one that changes nothing. test/properties was not run, so that the count is a lower bound.',
    '',
    ...TABLE,
    ...rows.map(rowOf),
  ];
}

function facts(): string[] {
  const files = JSON.parse(readFileSync('.cache/facts.json', 'utf8')) as Record<string, Done>;
  const rows = Object.entries(files).map(([file, { sha256, mutants }]) => ({
    file,
    sha256,
    noticed: mutants.filter(({ by }) => by !== undefined).length,
    missed: mutants
      .filter(({ by }) => by === undefined)
      .map(({ line, was, now }) => `line ${line}: ${inCell(was, 40)} → ${now === '[]' || now === '{}' ? 'gone' : inCell(now, 40)}`),
  }));
  const { noticed, all, percent } = counted(rows);
  const pinned = Object.values(files)
    .flatMap(({ mutants }) => mutants)
    .filter(({ by }) => by?.startsWith('test/contract/pinned.test.ts')).length;
  return [
    `Facts on ${today}: ${noticed} of ${all} noticed, ${percent} %, target 90 % of each file. Every number became 1 % larger (0 ` +
      'became 0.01), a whole one also larger by 1, a negative one also positive; every text became another one that its type or its ' +
      'place allows, and the same text with another number where it has one; every yes a no; every comparison and every limit took ' +
      'or left its end; a quantity became another that the file knows; an entry of a list and what may be left out of a declaration ' +
      'went missing. tsc was not asked: only what a test noticed counts. Symbols, names and units of results, sources, cautions and ' +
      `arguments of examples, which no outside source fixes, are pinned as they are (test/contract/pinned.json): ${pinned} of the ` +
      'changes were noticed by that first, which says that something changed and nothing of what is right. Asked were the tests of ' +
      `test/contract and of the file's own folder (test/core, test/joint) that take less than a second, so that the count is a lower ` +
      'bound. After each file the same tests passed without a mutant.',
    '',
    ...TABLE,
    ...rows.map(rowOf),
  ];
}

const PARTS = { formulas: ['Formulas', formulas], facts: ['Facts', facts] } as const;
const [title, made] = PARTS[process.argv[2] as keyof typeof PARTS];
const parts = new Map(
  readFileSync(PAGE, 'utf8')
    .split(/^## /m)
    .filter(part => part !== '')
    .map(part => [part.slice(0, part.indexOf('\n')), part.slice(part.indexOf('\n')).trim()] as const),
);
parts.set(title, made().join('\n'));
writeFileSync(PAGE, `${[...parts].map(([name, text]) => `## ${name}\n\n${text}\n`).join('\n')}`);
