// The last runs of mutants by file, with each one that no test noticed; results.md, which the page of proof names, is made from it.
import { readFileSync, writeFileSync } from 'node:fs';

const { files } = JSON.parse(readFileSync('.stryker/report.json', 'utf8'));
const NOTICED = ['Killed', 'Timeout'];
const MISSED = ['Survived', 'NoCoverage'];

const rows = Object.entries(files).map(([file, { mutants }]) => ({
  file,
  noticed: mutants.filter(({ status }) => NOTICED.includes(status)).length,
  missed: mutants.filter(({ status }) => MISSED.includes(status)),
})).filter(({ noticed, missed }) => noticed + missed.length > 0);
const noticed = rows.reduce((sum, row) => sum + row.noticed, 0);
const all = noticed + rows.reduce((sum, row) => sum + row.missed.length, 0);
const late = Object.values(files).flatMap(({ mutants }) => mutants).filter(({ status }) => status === 'Timeout').length;
const where = ({ location: { start }, mutatorName, replacement }) => `line ${start.line}: ${mutatorName} \`${replacement.replace(/\s+/g, ' ').replace(/\|/g, '\\|').slice(0, 60)}\``;

const page = [
  `Mutants on ${new Date().toISOString().slice(0, 10)}, put together from runs up to then: ${noticed} of ${all} noticed, ${late} of them by a test that ran out of time, ${((100 * noticed) / all).toFixed(1)} %, target 85 %. Changed were the ${rows.length} files below, one place at a time, and no others; not texts, not numbers as they are written, not the cards, and not what is worked out once when a file is loaded. A place that no test noticed may be one that changes nothing. test/properties was not run, so that the count is a lower bound.`,
  '',
  '| file | noticed | of | not noticed |',
  '|---|---|---|---|',
  ...rows.map(({ file, noticed: some, missed }) => `| ${file} | ${some} | ${some + missed.length} | ${missed.map(where).join('; ') || '–'} |`),
];
writeFileSync('test/mutants/results.md', `${page.join('\n')}\n`);
