// Differences that are known, each with its reason; one that no longer comes is a fault as well.

export interface Spared {
  /** Of files, programs and cells, in the line that tells a difference. */
  readonly line: RegExp;
  readonly why: string;
}

/** What programs cannot read, in the user's own formulas and in what depends on them. */
export const PROGRAMS: readonly Spared[] = [
  { line: /^(x|o)-table(s)?, \S+.* gnumeric: .*(\w\[|SUBTOTAL)/, why: 'Gnumeric 1.12 does not read the names of tables' },
  { line: /^x-table, .* gnumeric: (Bosses and more!(F9|H6)|Characteristics!|Steps)/, why: 'these depend on formulas that name a table' },
  { line: /^x-apostrophe, .* gnumeric: /, why: "Gnumeric 1.12 does not read 'Dave''s part'!A1" },
  { line: /, Gnumeric .*_xlfngnumeric\.ERROR/, why: 'Gnumeric keeps a formula that it could not read in a function of its own' },
  { line: /^x-(let|table), Gnumeric .*/, why: 'these depend on such a formula' },
  { line: /^x-arrays, .*Arrays!(G\d|H2)|^x-arrays, .*(Steps|Calculated)!/, why: 'SORT is in neither program, and H2 reads it' },
  { line: /^x-others, .*_(xldudf|xll)[_.]/i, why: 'functions of another add-in' },
  { line: /^x-others, Gnumeric .*: (TEXTJOIN|IFS)\(/, why: 'Gnumeric saves these without their prefix, and LibreOffice wants it' },
  { line: /^e-parts, .*\[1\]Prices/, why: 'Gnumeric looks for the other workbook, which is not there' },
  { line: /^e-parts, .* gnumeric: S!E2: #""/, why: 'Gnumeric does not read what-if cells' },
  { line: /^e-parts, as written libreoffice: S!E[23]: 9.5/, why: 'LibreOffice 7.4 does not follow what-if cells through another sheet' },
  { line: /^h-demo, .*: Checks!G\d+: inputs changed, not .*\(after\)$/, why: 'a remedy stands as of sending, and says so' },
  { line: /^e-parts, LibreOffice .*TABLE\(/, why: 'LibreOffice saves what-if cells in a way that no program reads' },
];

/** What the hand-over does not do yet, or does wrong. */
export const OPEN: readonly Spared[] = [];

/** Lines that are not spared, and lists of which an entry spared nothing. */
export function left(lines: readonly string[], ...lists: readonly (readonly Spared[])[]): string[] {
  return lines.filter(line => !lists.some(list => list.some(one => one.line.test(line))));
}

export const unused = (lines: readonly string[], list: readonly Spared[]): string[] =>
  list.filter(one => !lines.some(line => one.line.test(line))).map(({ why }) => why);
