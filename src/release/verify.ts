// bosswright verify: whether a deployed folder or an unpacked release is whole. Nothing of the folder is run.
import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { UserFault } from '../cli/user-fault';
import { checks, type Packed } from './checks';
import { filesIn, isInside } from './folder';
import { packedSums } from './sums';

export const USAGE =
  'bosswright verify folder [--sums FILE], FILE the zip of the release or a copy of its SHA256SUMS, from outside the folder';
const BESIDE =
  'This shows accidental damage only: whoever changes a file on purpose can change the list beside it too. Give the zip, or a list ' +
  'that came another way: --sums FILE';

function asked(args: readonly string[]): { readonly folder: string; readonly sums: string | undefined } {
  try {
    const {
      positionals: [folder, ...more],
      values: { sums },
    } = parseArgs({ args: [...args], allowPositionals: true, options: { sums: { type: 'string' } } });
    if (folder !== undefined && more.length === 0) return { folder, sums };
  } catch {
    // told as any other command that cannot be read
  }
  throw new UserFault(USAGE);
}

function packedIn(file: string, folder: string): Packed {
  const [content, inside] = (() => {
    try {
      return [readFileSync(file), isInside(file, folder)];
    } catch {
      throw new UserFault(`${file} cannot be read`);
    }
  })();
  if (inside)
    throw new UserFault(
      `${file} is in the folder that it is to judge, by its path or by a link: whoever changed the folder could change it too. ` +
        'Give a zip or a list that came another way',
    );
  const sums = packedSums(content);
  if (sums === undefined) throw new UserFault(`${file} is neither the zip of a release nor a list of checksums`);
  return { sums, from: file };
}

/** Names of files and texts in them come from whoever filled the folder: nothing in them may steer the terminal. */
const plain = (text: string): string => text.replace(/[\p{Cc}\p{Cf}]/gu, '�');

export function main(args: readonly string[], print: (line: string) => void): void {
  const { folder, sums } = asked(args);
  const files = filesIn(folder);
  const packed = sums === undefined ? undefined : packedIn(sums, folder);
  const done = checks(files, packed);
  for (const { name, seen, faults } of done) {
    print(plain(`${faults.length === 0 ? 'ok   ' : 'FAULT'}  ${name.padEnd(10)}  ${faults.length === 0 ? seen : faults[0]}`));
    for (const fault of faults.slice(1)) print(plain(`                   ${fault}`));
  }
  const faults = done.flatMap(check => check.faults);
  if (faults.length > 0) throw new UserFault(`${faults.length} ${faults.length === 1 ? 'fault' : 'faults'} in ${folder}`);
  print(
    packed === undefined
      ? `${done.length} checks passed, no accidental damage found: ${folder}\n${BESIDE}`
      : `${done.length} checks passed, whole by ${packed.from}: ${folder}`,
  );
}
