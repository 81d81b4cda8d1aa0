// Options of a command; what cannot be read is told with how it is used.
import { parseArgs, type ParseArgsConfig } from 'node:util';
import { UserFault } from './user-fault';

type Names = readonly string[];

interface GivenOptions<N extends string> {
  readonly files: readonly string[];
  readonly values: Readonly<Partial<Record<N, string>>>;
}

/** Without what a programmer is told of the parser. */
export const unknownOption = (fault: unknown): string =>
  fault instanceof Error
    ? fault.message
        .replace(/^Unknown option '(.*?)'[^]*/, 'there is no option $1')
        .replace(/^Option '(?:-\w, )?(\S+?)(?: <value>)?' (?:argument missing|argument is ambiguous)[^]*/, '$1 needs a value')
    : String(fault);

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
      throw new UserFault(`${unknownOption(fault)}\n\n${usage}`);
    }
  })();
  const [least, most] = files;
  if (positionals.length < least || positionals.length > most)
    throw new UserFault(`${positionals.length} files given, takes ${least === most ? most : `${least} to ${most}`}\n\n${usage}`);
  return { files: positionals, values: values as GivenOptions<N>['values'] };
}

/** By the ending of a name. */
export function endingOf<T extends string>(endings: readonly T[], file: string, option = ''): T {
  const found = endings.find(ending => file.toLowerCase().endsWith(`.${ending}`));
  if (found === undefined) throw new UserFault(`${option}${file}: give a name that ends in ${endings.map(one => `.${one}`).join(', ')}`);
  return found;
}

export function oneOf<T extends string>(words: readonly T[], asked: string, option: string): T {
  const found = words.find(word => word === asked);
  if (found === undefined) throw new UserFault(`${option} ${asked}: it is one of ${words.join(', ')}`);
  return found;
}
