// The folders of this machine, for the two commands.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { UserFault } from '../user-fault';
import type { Files } from './files';

export function filesIn(folder: string): Files {
  const entries = (() => {
    try {
      return readdirSync(folder, { recursive: true, withFileTypes: true });
    } catch {
      throw new UserFault(`${folder} is no folder that can be read`);
    }
  })();
  const paths = entries.filter(entry => !entry.isDirectory()).map(entry => path.join(entry.parentPath, entry.name));
  return new Map(paths.map(file => [path.relative(folder, file).split(path.sep).join('/'), readFileSync(file)]));
}
