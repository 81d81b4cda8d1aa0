// Options of a command; what cannot be read is told with how it is used.
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { UserFault } from './user-fault';

type Names = readonly string[];

interface GivenOptions<N extends string> {
  readonly files: readonly string[];
  readonly values: Readonly<Partial<Record<N, string>>>;
}

/** Files and options with a value; `files` is how many there are at least and at most. */
export function given<N extends string>(
  args: Names,
  usage: string,
  names: readonly N[],
  files: readonly [least: number, most: number],
): GivenOptions<N> {
  const options: ParseArgsConfig['options'] = Object.fromEntries(names.map(name => [name, { type: 'string' as const }]));
  const { positionals, values } = (() => {
    try {
      return parseArgs({ args: [...args], allowPositionals: true, options });
    } catch (fault) {
      throw new UserFault(`${fault instanceof Error ? fault.message : String(fault)}\n${usage}`);
    }
  })();
  if (positionals.length < files[0] || positionals.length > files[1]) throw new UserFault(usage);
  return { files: positionals, values: values as GivenOptions<N>['values'] };
}

export function oneOf<T extends string>(words: readonly T[], asked: string, option: string): T {
  const found = words.find(word => word === asked);
  if (found === undefined) throw new UserFault(`${option} ${asked}: it is one of ${words.join(', ')}`);
  return found;
}
