// How the field of an argument is labelled, and what happens when it is left blank.
import type { Blank, Param } from '../core/card';
import type { Words } from '../words/english';

export { choicesOf } from '../core/read/accepts';

export const inWords = (name: string): string => name.replaceAll('_', ' ');

export const labelOf = ({ name, kind }: Param): string => (kind.unit === '' ? inWords(name) : `${inWords(name)} (${kind.unit})`);

type BlankWords = Words['functions']['blank'];

/** For the empty field: what a blank counts as. */
export function blankWords({ blank, optional, kind }: Param, W: BlankWords): string {
  if (blank === 'zero') return W.zero;
  if (blank === 'absent') return W.absent;
  if (blank === 'explicit') return W.explicit(kind.unit === '°' ? '0°' : '0 mm');
  if (blank === 'refused') return optional ? W.absent : '';
  return 'default' in blank ? W.by(String(blank.default)) : sameWords(blank, W);
}

const sameWords = ({ sameAs, take }: Extract<Blank, { sameAs: string }>, W: BlankWords): string =>
  take === undefined ? W.as(inWords(sameAs)) : W.from(inWords(sameAs));
