// Formulas in the form of a file. Excel saves the call of a custom function, ENCL.BOSS.OD(…), as _xldudf_ENCL_BOSS_OD(…).

/** What may hold anything: texts, names of sheets, columns of tables. Then the name of a function, where one begins and ends. */
const called = (name: string): RegExp =>
  new RegExp(`"[^"]*"|'[^']*'|\\[(?:'.|[^[\\]'])*\\]|(?<![\\w.\\]?\\\\\\u0080-\\uffff])(${name})(?=\\()`, 'gi');

/** Namespace and id in capitals, digits and dots: the ids have no underscore, so that the way back is unique. */
const OURS = called('ENCL\\.[A-Z0-9.]+');
const OURS_IN_FILE = called('(?:_xlfn\\.)?_xldudf_ENCL_[A-Z0-9_]+');

/** Most formulas of a hand-over call nothing of ours and need not be read. */
const namesOurs = (formula: string): boolean => /ENCL/i.test(formula);

const renamed = (formula: string, pattern: RegExp, name: (old: string) => string): string =>
  !namesOurs(formula)
    ? formula
    : formula.replace(pattern, (piece: string, old: string | undefined) => (old === undefined ? piece : name(old)));

export const inFile = (formula: string): string => renamed(formula, OURS, name => `_xldudf_${name.replaceAll('.', '_')}`);

export const fromFile = (formula: string): string =>
  renamed(formula, OURS_IN_FILE, name => name.replace(/^(_xlfn\.)?_xldudf_/i, '').replaceAll('_', '.'));

export const callsOurs = (formula: string): boolean =>
  namesOurs(formula) && [...formula.matchAll(OURS)].some(([, name]) => name !== undefined);
