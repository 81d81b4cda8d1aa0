// Calls that a copy cannot take along, or not without a word: what fetches or runs something, and what another add-in works out.
import { typedName } from '../../sheet/formula';
import type { FormulaPiece } from '../../sheet/formula-tokens';
import type { FindingSentence } from '../words/finding-words';

/** Functions that fetch something, send something or run something. */
const REACHES_OUT = new RegExp(
  '^(WEBSERVICE|RTD|CALL|EXEC|EVALUATE|REGISTER([.]ID)?|IMAGE|IMPORT\\w+|CUBE\\w+|DDE|SQL[.]REQUEST|STOCKHISTORY|PY|COPILOT|TRANSLATE|' +
    'DETECTLANGUAGE)$',
);

/** How a file stores a call of an add-in, and one of ours. */
const ADD_IN = /^(_XLL\.|_XLDUDF_)/;
const STORED_OURS = /^_XLDUDF_ENCL_/;

/** Name of one of our functions, `ENCL.BOSS.OD`, where a file calls it. */
export function ourName(called: string): string | undefined {
  const name = typedName(called);
  return name.startsWith('ENCL.') ? called : STORED_OURS.test(name) ? name.slice('_XLDUDF_'.length).replace(/_/g, '.') : undefined;
}

/** Name of the function of another add-in, without what the file puts before it. */
export function otherAddIn(called: string): string | undefined {
  const name = typedName(called);
  return ADD_IN.test(name) && !STORED_OURS.test(name) ? name.replace(ADD_IN, '') : undefined;
}

/** Why a call must not leave the house. A link to a place in the workbook may. */
export function reachesOut(called: string, [first, ...others]: readonly FormulaPiece[] = []): FindingSentence | undefined {
  const name = typedName(called);
  if (REACHES_OUT.test(name)) return said => said.fetches(name);
  const isInside = first?.kind === 'text' && first.text.startsWith('"#') && others.length === 0;
  return name === 'HYPERLINK' && !isInside ? said => said.leadsOutside : undefined;
}
