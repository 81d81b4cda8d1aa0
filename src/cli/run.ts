// Runs a command of the sources: tsx src/cli/run.ts src/tools/generate.ts …
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { ended, type Main } from './ended';

const [file = '', ...args] = process.argv.slice(2);
const { main } = (await import(pathToFileURL(path.resolve(file)).href)) as { readonly main: Main };
await ended(main, args);
