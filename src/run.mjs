// Runs a command written in TypeScript, which Node does not run by itself: node src/run.mjs src/handover/cli.ts …
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [entry, ...args] = process.argv.slice(2);
const outfile = path.join('.cache', entry.replace(/[.]ts$/, '.mjs'));
await build({ entryPoints: [entry], bundle: true, platform: 'node', format: 'esm', packages: 'external', outfile, logLevel: 'error' });
const { main } = await import(pathToFileURL(outfile).href);
try {
  await main(args, line => console.log(line));
} catch (fault) {
  if (fault?.name !== 'UserFault') throw fault;
  console.error(fault.message);
  process.exitCode = 1;
}
