// functions.json as the bench reads it: the same file that Excel reads.
import type { Wrapper } from './custom-functions';

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
}

export const isRange = (parameter: ParameterEntry): boolean => parameter.dimensionality === 'matrix';

export const detail = (parameter: ParameterEntry): string =>
  `${parameter.description}${isRange(parameter) ? ' (a range, or one value)' : ''}`;

/** `ENCL.BOSS.OD(hole, wall, [distance], [draft])` */
export const signature = ({ name, parameters }: SheetFunction): string =>
  `${name}(${parameters.map(parameter => (parameter.optional === true ? `[${parameter.name}]` : parameter.name)).join(', ')})`;

/** Every function of functions.json with its wrapper. */
export async function readFunctions(): Promise<SheetFunction[]> {
  const { functions } = (await (await fetch('functions.json')).json()) as { functions: readonly FunctionEntry[] };
  const { registered } = CustomFunctions as unknown as { registered: ReadonlyMap<string, Wrapper> };
  return functions.map(entry => {
    const wrapper = registered.get(entry.id);
    if (wrapper === undefined) throw new Error(`functions.json names ${entry.id}, but functions.js did not register it`);
    return { ...entry, name: `${namespace}.${entry.id}`, wrapper };
  });
}
