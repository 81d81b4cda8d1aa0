// The examples of the functions, whose results are known: what the help pages show.
import { exampleArguments } from '../about/about';
import { cardOf, type ListedFunction } from './function-list';

/** The arguments by the id of the function, as they are typed. */
export const examplesOf = (functions: readonly ListedFunction[]): ReadonlyMap<string, readonly string[]> =>
  new Map(functions.map(listed => [listed.id, exampleArguments(cardOf(listed))]));
