// What a workbook file can hold, and how texts must be written so that they come back as they were.
import { LONGEST_FORMULA } from '../../sheet/formula';

const LONGEST_TEXT = 32_767;
const LONGEST_SHEET_NAME = 31;
/** Of a prompt or an error text of a validation. */
const LONGEST_PROMPT = 255;

/** A plan that no workbook file can hold. */
export class UnwritablePlan extends Error {
  override readonly name = 'UnwritablePlan';
}

/** Line ends as a cell has them, without characters that XML has no place for. */
const clean = (text: string): string =>
  text.replace(/\r\n?/g, '\n').replace(/[^\t\n\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, '');

/** `_x0041_` means A in a workbook file: an underscore that would begin such a sequence is written as one itself. */
export const escaped = (text: string): string => clean(text).replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_');

/** A text that a cell can hold, for those who escape it themselves. */
export function plainText(text: string, where: string): string {
  if (text.length > LONGEST_TEXT)
    throw new UnwritablePlan(`${where}: the text has ${text.length} characters; a cell holds ${LONGEST_TEXT}`);
  return clean(text);
}

export const cellText = (text: string, where: string): string => escaped(plainText(text, where));

export const isErrorCode = (text: string): boolean => /^#(NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)$/.test(text);

/** The formula without its equals sign. */
export function formulaText(formula: string, where: string): string {
  if (!formula.startsWith('=')) throw new UnwritablePlan(`${where}: a formula begins with an equals sign`);
  if (formula.length > LONGEST_FORMULA)
    throw new UnwritablePlan(`${where}: the formula has ${formula.length} characters; a cell holds ${LONGEST_FORMULA}`);
  return clean(formula.slice(1));
}

/** What no program takes in the name of a sheet. */
const NOT_IN_NAMES = /[:\\/?*[\]\u0000-\u001f]|^'|'$/; // eslint-disable-line no-control-regex

export function sheetName(name: string): string {
  if (name.trim() === '' || name.length > LONGEST_SHEET_NAME || NOT_IN_NAMES.test(name))
    throw new UnwritablePlan(
      `sheet "${name}": a name is 1 to ${LONGEST_SHEET_NAME} characters, none of them : \\ / ? * [ ], no ' at its ends`,
    );
  return name;
}

export const promptText = (text: string): string => escaped(text.length > LONGEST_PROMPT ? `${text.slice(0, LONGEST_PROMPT - 2)} …` : text);
