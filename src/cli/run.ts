// Runs a command, tsx src/cli/run.ts src/handover/cli.ts …: what the user can put right ends it with the message alone.
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { UserFault } from './user-fault';

interface Command {
  main(args: readonly string[], print: (line: string) => void): Promise<void> | void;
}

const [file = '', ...args] = process.argv.slice(2);
const { main } = (await import(pathToFileURL(path.resolve(file)).href)) as Command;
try {
  await main(args, line => console.log(line));
} catch (fault) {
  if (!(fault instanceof UserFault)) throw fault;
  console.error(fault.message);
  process.exitCode = 1;
}
