// Files that cannot be read or written, told in a sentence.
import { stat } from 'node:fs/promises';
import { UserFault } from './user-fault';

const WHY: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'there is no such folder',
  EISDIR: 'it is a folder',
  EACCES: 'you have no right to it',
  EPERM: 'you have no right to it',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
};

/** Why the system refused; undefined for any other fault. */
export const whyOf = (fault: unknown): string | undefined =>
  fault instanceof Error && 'code' in fault ? WHY[String(fault.code)] : undefined;

export function cannotBeRead(name: string, fault: unknown): UserFault {
  const why = whyOf(fault);
  return new UserFault(`${name} cannot be read${why === undefined ? '' : `: ${why}`}`);
}

/** Under whatever name. */
export async function isSameFile(a: string, b: string): Promise<boolean> {
  const [one, other] = await Promise.all([a, b].map(path => stat(path, { bigint: true }).catch(() => undefined)));
  return one !== undefined && other !== undefined && one.isFile() && one.dev === other.dev && one.ino === other.ino;
}

/** What is written takes the place of nothing that is read. */
export async function refuseOver(out: string | undefined, ...read: readonly (string | undefined)[]): Promise<void> {
  for (const file of read)
    if (out !== undefined && file !== undefined && (await isSameFile(out, file)))
      throw new UserFault(`${out} is read: give what is written another name`);
}
