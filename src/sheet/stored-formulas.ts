// Formulas in the form of a file. Excel saves the call of a custom function, ENCL.BOSS.OD(…), as _xldudf_ENCL_BOSS_OD(…).
import { isFunction, stringifyTokens, tokenize } from '@borgar/fx/xlsx';

/** Namespace and id in capitals, digits and dots: the ids have no underscore, so that the way back is unique. */
const OURS = /^ENCL\.[A-Z0-9.]+$/i;
const OURS_IN_FILE = /^(_xlfn\.)?_xldudf_ENCL_[A-Z0-9_]+$/i;

/** Most formulas of a hand-over call nothing of ours and need not be read. */
const namesOurs = (formula: string): boolean => /ENCL/i.test(formula);

const renamed = (formula: string, pattern: RegExp, name: (old: string) => string): string =>
  !namesOurs(formula)
    ? formula
    : stringifyTokens(
        tokenize(formula).map(token => (isFunction(token) && pattern.test(token.value) ? { ...token, value: name(token.value) } : token)),
      );

export const inFile = (formula: string): string => renamed(formula, OURS, name => `_xldudf_${name.replaceAll('.', '_')}`);

export const fromFile = (formula: string): string =>
  renamed(formula, OURS_IN_FILE, name => name.replace(/^(_xlfn\.)?_xldudf_/i, '').replaceAll('_', '.'));

export const callsOurs = (formula: string): boolean =>
  namesOurs(formula) && tokenize(formula).some(token => isFunction(token) && OURS.test(token.value));
