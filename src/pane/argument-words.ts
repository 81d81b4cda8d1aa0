// How the field of an argument is labelled, and what happens when it is left blank.
import type { Blank, Param } from '../core/card';

export { choicesOf } from '../core/read/accepts';

export const inWords = (name: string): string => name.replaceAll('_', ' ');

export const labelOf = ({ name, kind }: Param): string => (kind.unit === '' ? inWords(name) : `${inWords(name)} (${kind.unit})`);

/** For the empty field: what a blank counts as. */
export function blankWords({ blank, optional, kind }: Param): string {
  if (blank === 'zero') return 'blank counts as 0';
  if (blank === 'absent') return 'may be left out';
  if (blank === 'explicit') return `for none write ${kind.unit === '°' ? '0°' : '0 mm'}`;
  if (blank === 'refused') return optional ? 'may be left out' : '';
  return 'default' in blank ? `blank counts as ${blank.default}` : sameWords(blank);
}

const sameWords = ({ sameAs, take }: Extract<Blank, { sameAs: string }>): string =>
  `blank: ${take === undefined ? 'as' : 'from'} ${inWords(sameAs)}`;
