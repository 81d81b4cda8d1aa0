// Functions that every spreadsheet program reads, as tried in two independent engines.
const words = (...rows: readonly string[]): ReadonlySet<string> => new Set(rows.flatMap(row => row.split(' ')));

/** Functions that a file stores with a mark, because the first programs did not have them. */
const MARKED = words('IFNA IFS SWITCH CONCAT TEXTJOIN MAXIFS MINIFS');

export const PLAIN: ReadonlySet<string> = new Set([
  ...words(
    'ABS ACOS ASIN ATAN ATAN2 COS SIN TAN SQRT EXP LN LOG10 PI TRUE FALSE RADIANS DEGREES MIN MAX SUM SUMSQ SUMPRODUCT ROUND',
    'ROUNDUP ROUNDDOWN CEILING INT MOD IF AND OR NOT IFERROR ISNUMBER INDEX MATCH LOOKUP VLOOKUP TRIM LEFT MID FIND',
    'LEN SUBSTITUTE CONVERT NORMSDIST NORMSINV NA',
    'AVERAGE MEDIAN COUNT COUNTA LARGE SMALL FLOOR MROUND TRUNC SIGN POWER HLOOKUP CHOOSE ISERROR ISTEXT EXACT',
    'SUMIF SUMIFS COUNTIF COUNTIFS AVERAGEIF AVERAGEIFS RIGHT UPPER LOWER CONCATENATE',
  ),
  ...MARKED,
]);

/** Functions that a step says in those of the list. */
export const TRANSLATED: ReadonlySet<string> = words('XLOOKUP CEILING.MATH FLOOR.MATH');

const STORED = /^_XLFN\./;

export const isPlain = (name: string): boolean => PLAIN.has(name.toUpperCase().replace(STORED, ''));

/** A name as a file stores it; up or down to a multiple is the same without .MATH where a step is given. */
export const storedName = (name: string): string => (MARKED.has(name) ? `_xlfn.${name}` : name.replace(/\.MATH$/, ''));
