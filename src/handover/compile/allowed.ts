// Functions that every spreadsheet program reads, as tried in two independent engines.
export const PLAIN: ReadonlySet<string> = new Set(
  [
    'ABS ACOS ASIN ATAN ATAN2 COS SIN TAN SQRT EXP LN LOG10 PI RADIANS DEGREES MIN MAX SUM SUMSQ SUMPRODUCT ROUND',
    'ROUNDUP ROUNDDOWN CEILING INT MOD IF AND OR NOT IFERROR ISNUMBER INDEX MATCH LOOKUP VLOOKUP TRIM LEFT MID FIND',
    'LEN SUBSTITUTE CONVERT NORMSDIST NORMSINV NA',
  ].flatMap(row => row.split(' ')),
);

export const isPlain = (name: string): boolean => PLAIN.has(name.toUpperCase());
