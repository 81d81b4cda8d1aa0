// npm run verify: whether a deployed folder or an unpacked release is whole.
import { UserFault } from '../user-fault';
import { checks } from './checks';
import { filesIn } from './folder';

export function main(args: readonly string[], print: (line: string) => void): void {
  const [folder] = args;
  if (folder === undefined || args.length > 1) throw new UserFault('npm run verify -- folder');
  const done = checks(filesIn(folder));
  for (const { name, seen, faults } of done) {
    print(`${faults.length === 0 ? 'ok   ' : 'FAULT'}  ${name.padEnd(10)}  ${faults.length === 0 ? seen : faults[0]}`);
    for (const fault of faults.slice(1)) print(`                   ${fault}`);
  }
  const faults = done.flatMap(check => check.faults);
  if (faults.length > 0) throw new UserFault(`${faults.length} ${faults.length === 1 ? 'fault' : 'faults'} in ${folder}`);
  print(`${done.length} checks passed: ${folder}`);
}
