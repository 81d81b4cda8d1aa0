// Bundles the command, since Node does not run TypeScript, and runs it.
import { build } from 'esbuild';

const outfile = new URL('../../.cache/handover.mjs', import.meta.url);
await build({
  entryPoints: [new URL('cli.ts', import.meta.url).pathname],
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  outfile: outfile.pathname,
  logLevel: 'error',
});
const { main, UserFault } = await import(outfile.href);
try {
  await main(process.argv.slice(2), line => console.log(line));
} catch (fault) {
  if (!(fault instanceof UserFault)) throw fault;
  console.error(fault.message);
  process.exitCode = 1;
}
