// Which sheets of the sender go along: those that were chosen, and those that they read.
import { sheetPrefix } from '../../sheet/addresses';
import type { SourceSheet, SourceWorkbook } from '../../sheet/workbook-values';

const formulasOf = ({ cells }: SourceSheet): string =>
  [...cells.values()].flatMap(({ formula }) => (formula === undefined ? [] : [formula.toLowerCase()])).join('\n');

/** @throws RangeError where no sheet has such a name. */
export function wantedSheets(source: SourceWorkbook, chosen: readonly string[]): ReadonlySet<string> {
  const { sheets, names = new Map<string, string>(), tables = [] } = source;
  const byName = new Map(sheets.map(sheet => [sheet.name.toLowerCase(), sheet]));
  const unknown = chosen.filter(name => !byName.has(name.trim().toLowerCase()));
  if (unknown.length > 0)
    throw new RangeError(`no sheet is called ${unknown.join(', ')}; there are ${sheets.map(({ name }) => name).join('; ')}`);
  const reads = (formulas: string, sheet: string): boolean => {
    const prefix = sheetPrefix(sheet).toLowerCase();
    const isRead = (text: string): boolean => text.includes(prefix) || text.includes(`'${sheet.toLowerCase()}'!`);
    return (
      isRead(formulas) ||
      [...names].some(([name, meaning]) => isRead(meaning.toLowerCase()) && formulas.includes(name.slice(name.indexOf('!') + 1))) ||
      tables.some(table => table.area.sheet === sheet && formulas.includes(table.name.toLowerCase()))
    );
  };
  const wanted = new Set<string>();
  const open = chosen.map(name => byName.get(name.trim().toLowerCase()) as SourceSheet);
  for (let sheet = open.pop(); sheet !== undefined; sheet = open.pop()) {
    if (wanted.has(sheet.name)) continue;
    wanted.add(sheet.name);
    const formulas = formulasOf(sheet);
    open.push(...sheets.filter(other => !wanted.has(other.name) && reads(formulas, other.name)));
  }
  return wanted;
}
