// Everything in one run: npm run bench, after npm run build; npm run bench -- core, one part anew. It writes results.json, which src/docs/speed.md quotes.
import { readFileSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { core } from './core';
import { drawing } from './drawing';
import { engines } from './engines';
import type { Figure, Part, Results } from './figure';
import { handOver } from './hand-over';
import { hosts, sizes } from './hosts';

const FILE = 'test/bench/results.json';
const PARTS: Readonly<Record<Part, () => readonly Figure[] | Promise<readonly Figure[]>>> = {
  core,
  drawing,
  engines,
  hosts,
  sizes,
  handOver,
};

const asked = process.argv.slice(2);
for (const [name, measure] of Object.entries(PARTS)) {
  if (asked.length > 0 && !asked.includes(name)) continue;
  const figures = await measure();
  console.log(figures.map(({ what, measured }) => `${what}: ${measured}`).join('\n'));
  const results = JSON.parse(readFileSync(FILE, 'utf8')) as Results;
  const on = `${new Date().toISOString().slice(0, 10)}, ${cpus()[0]?.model.trim()}, ${cpus().length} cores, Node ${process.version}`;
  writeFileSync(FILE, `${JSON.stringify({ ...results, [name]: { on, figures } }, undefined, 2)}\n`);
}
