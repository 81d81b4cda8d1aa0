// functions.json as the bench reads it: the same file that Excel reads.
import type { Wrapper } from './custom-functions';

/** Of the page; the sheet's own words come in both. */
export type SheetLanguage = 'en' | 'de';

/** The namespace in manifest.xml. */
const namespace = 'ENCL';

export interface ParameterEntry {
  readonly name: string;
  readonly description: string;
  readonly optional?: boolean;
  readonly dimensionality?: string;
}

interface FunctionEntry {
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly ParameterEntry[];
}

/** A function as a cell knows it, with what is run for it. */
export interface SheetFunction extends FunctionEntry {
  /** `ENCL.BOSS.OD` */
  readonly name: string;
  readonly wrapper: Wrapper;
  /** The same in English, where the texts are German. */
  readonly english?: FunctionEntry;
}

export const isRange = (parameter: ParameterEntry): boolean => parameter.dimensionality === 'matrix';

const RANGE_WORDS = { en: ' (a range, or one value)', de: ' (ein Bereich, oder ein Wert)' } as const;

export const detail = (parameter: ParameterEntry, language: SheetLanguage): string =>
  `${parameter.description}${isRange(parameter) ? RANGE_WORDS[language] : ''}`;

/** `ENCL.BOSS.OD(hole, wall, [distance], [draft])` */
export const signature = ({ name, parameters }: SheetFunction): string =>
  `${name}(${parameters.map(parameter => (parameter.optional === true ? `[${parameter.name}]` : parameter.name)).join(', ')})`;

const entriesOf = async (file: string): Promise<readonly FunctionEntry[]> =>
  ((await (await fetch(file)).json()) as { readonly functions: readonly FunctionEntry[] }).functions;

/** Every function of functions.json with its wrapper; in German, as far as that can be had, with the English beside it. */
export async function readFunctions(language: SheetLanguage): Promise<SheetFunction[]> {
  const [functions, translated] = await Promise.all([
    entriesOf('functions.json'),
    language === 'de' ? entriesOf('functions-de.json').catch(() => []) : [],
  ]);
  const german = new Map(translated.map(entry => [entry.id, entry]));
  const { registered } = CustomFunctions as unknown as { registered: ReadonlyMap<string, Wrapper> };
  return functions.map(entry => {
    const wrapper = registered.get(entry.id);
    if (wrapper === undefined) throw new Error(`functions.json names ${entry.id}, but functions.js did not register it`);
    const other = german.get(entry.id);
    return { ...(other === undefined ? entry : { ...other, english: entry }), name: `${namespace}.${entry.id}`, wrapper };
  });
}
