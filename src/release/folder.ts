// The folders of this machine, for the two commands.
import { lstatSync, readdirSync, readFileSync, realpathSync } from 'node:fs';
import path from 'node:path';
import { UserFault } from '../cli/user-fault';
import type { Files } from './files';

export function filesIn(folder: string): Files {
  const entries = (() => {
    try {
      return readdirSync(folder, { recursive: true, withFileTypes: true });
    } catch {
      throw new UserFault(`${folder} is no folder that can be read`);
    }
  })();
  const rest = entries.filter(entry => !entry.isDirectory());
  const paths = rest.map(entry => path.join(entry.parentPath, entry.name));
  const odd = rest.findIndex(entry => !entry.isFile());
  if (odd >= 0)
    throw new UserFault(`${paths[odd]} is a link or a device; a release has plain files only, and what a link shows may change`);
  return new Map(paths.map(file => [path.relative(folder, file).split(path.sep).join('/'), readFileSync(file)]));
}

/** Whether a file lies in the folder, by its path or by a link: who can write there can write it. */
export function isInside(file: string, folder: string): boolean {
  const under = (one: string, top: string): boolean =>
    !/^\.\.([\\/]|$)/.test(path.relative(top, one)) && !path.isAbsolute(path.relative(top, one));
  const { dev, ino } = lstatSync(realpathSync(file), { bigint: true });
  const isThisFile = (name: string): boolean => {
    const other = lstatSync(path.join(folder, name), { bigint: true });
    return other.dev === dev && other.ino === ino;
  };
  return (
    under(path.resolve(file), path.resolve(folder)) ||
    under(realpathSync(file), realpathSync(folder)) ||
    readdirSync(folder, { recursive: true, encoding: 'utf8' }).some(isThisFile)
  );
}
