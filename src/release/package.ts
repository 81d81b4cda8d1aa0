// npm run package: what is in dist/, as one zip for a web server.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { UserFault } from '../cli/user-fault';
import { baseUrl } from './base-url';
import { checks } from './checks';
import { filesIn } from './folder';
import { changedSince, MUTANTS, tooOld } from './measured';
import { releaseOf, zipOf } from './release';

const USAGE = 'npm run package -- --base-url https://example.org/bosswright/';
const OUT = 'dist-release';

function baseOf(args: readonly string[]): string {
  try {
    return parseArgs({ args: [...args], options: { 'base-url': { type: 'string', default: '' } } }).values['base-url'];
  } catch (fault) {
    throw new UserFault(`${fault instanceof Error ? fault.message : String(fault)}\n${USAGE}`);
  }
}

export function main(args: readonly string[], print: (line: string) => void): void {
  const asked = baseOf(args);
  if (asked === '') throw new UserFault(USAGE);
  const base = baseUrl(asked);
  const read = (file: string): string => readFileSync(file, 'utf8');
  const old = tooOld(changedSince(read(MUTANTS), file => (existsSync(file) ? readFileSync(file) : undefined)));
  if (old.length > 0) throw new UserFault(`nothing was packed:\n${old.join('\n')}`);
  const { version } = JSON.parse(read('package.json')) as { readonly version: string };
  const files = releaseOf(filesIn('dist'), base, version, {
    licence: read('LICENSE'),
    hosting: read('src/docs/hosting.md'),
    developers: read('DEVELOPERS.md'),
  });
  const faults = checks(files).flatMap(check => check.faults);
  if (faults.length > 0) throw new UserFault(`nothing was packed:\n${faults.join('\n')}`);
  mkdirSync(OUT, { recursive: true });
  const zip = path.join(OUT, `bosswright-${version}.zip`);
  const bytes = zipOf(files);
  writeFileSync(zip, bytes);
  print(`${zip}: ${files.size} files, ${(bytes.length / 1e6).toFixed(1)} MB, for ${base.href}`);
}
