// Everything in one run: npm run bench, after npm run build. It writes results.md, which the README quotes.
import { writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { core } from './core';
import { engines } from './engines';
import { handOver } from './hand-over';
import { hosts } from './hosts';
import type { Figure } from './figure';

const figures: Figure[] = [];
for (const part of [core, engines, hosts, handOver]) {
  const found = await part();
  console.log(found.map(({ what, measured }) => `${what}: ${measured}`).join('\n'));
  figures.push(...found);
}
const page = [
  `Measured on ${new Date().toISOString().slice(0, 10)}: ${cpus()[0]?.model.trim()}, ${cpus().length} cores, Node ${process.version}. Times of the core and of the spreadsheet programs are processor time.`,
  '',
  '| what | target | measured | how |',
  '|---|---|---|---|',
  ...figures.map(({ what, target, measured, how }) => `| ${[what, target === undefined ? '–' : `${target.words}: ${target.isMet ? 'met' : `not met, ${target.otherwise}`}`, measured, how].join(' | ')} |`),
];
writeFileSync('test/bench/results.md', `${page.join('\n')}\n`);
