// What a kind of argument accepts, in words. They are read by people only.
import type { Kind, Param } from '../card';
import { DEVIATION_EXAMPLE } from './deviation';
import { type Quantity, unitsOf } from './quantity';
import { relationWords } from './relation';

/** What else a text may name. */
const alsoFrom = ({ from }: Kind<unknown>): string => (from === undefined ? '' : `; or ${from.words}`);

function quantityWords(quantity: Quantity): string {
  const units = unitsOf(quantity);
  return units === '' ? quantity.example : `${quantity.example} (units: ${units})`;
}

const inQuotes = (words: readonly string[]): string[] => words.map(word => `"${word}"`);

export function accepts(kind: Kind<unknown>): string {
  switch (kind.is) {
    case 'quantity':
    case 'cone':
      return `${quantityWords(kind.quantity)}${alsoFrom(kind)}`;
    case 'limit':
      return `${quantityWords(kind.quantity)}; or "none"`;
    case 'whole':
      return 'a whole number';
    case 'deviation':
      return `${DEVIATION_EXAMPLE}${alsoFrom(kind)}`;
    case 'size with limits':
      return `text such as ${kind.examples}`;
    case 'choice':
      return inQuotes(kind.words).join(', ');
    case 'screw size':
    case 'screw':
    case 'nut':
    case 'head':
    case 'function name':
    case 'joint input':
    case 'joint output':
      return `text such as "${kind.example}"`;
    case 'grade':
      return `${kind.examples}; ${kind.held}`;
    case 'group':
      return `${inQuotes(kind.names).join(' or ')}; or ${kind.ownTable}`;
    case 'material':
      return `a symbol such as "${kind.example}", or a two-column range of quantity and value`;
    case 'list':
      return listWords(kind.of);
    case 'names':
      return 'a row or column of names; a blank one is shown as –';
    case 'values':
      return 'a row or column of values';
    case 'block':
      return 'a range';
    case 'anything':
      return 'anything';
  }
}

function listWords(of: Kind<unknown>): string {
  if (of.is === 'choice') return `a row or column of ${accepts(of)}, or one for all`;
  if (of.is === 'deviation') return `a row or column of tolerances, or one for all; each ${accepts(of)}`;
  return `a row or column of ${of.noun}s, or one value`;
}

/** What an argument accepts, with how it must stand to others. */
export const acceptedBy = (param: Param): string => `${accepts(param.kind)}${relationWords(param)}`;

/** The words to choose from, where a word is asked for. */
export const choicesOf = ({ kind }: Param): readonly string[] => (kind.is === 'choice' ? kind.words : []);
