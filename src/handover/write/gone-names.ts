// What reads a name that is taken out goes as well, and what reads that.
import type { Elsewhere } from '../../package/elsewhere';
import { piecesOf } from '../../sheet/formula-tokens';
import type { DefinedName } from '../../sheet/plan';
import { fromFile } from '../../sheet/stored-formulas';
import { nameKey } from '../../sheet/workbook-values';

/** Names in a formula as they are written: `least`, `Bosses!least`. */
export const namesIn = (formula: string): string[] =>
  piecesOf(`=${fromFile(formula)}`).flatMap(({ kind, text }) => (kind === 'name' ? [text] : []));

/** The key of a name where it is read: of the sheet, where that has one of its own. */
function keyOf(written: string, home: string | undefined, known: ReadonlySet<string>): string {
  const [name = '', sheet = home] = written.split('!').reverse();
  const own = nameKey(name, sheet?.replace(/^'|'$/g, '').replaceAll("''", "'"));
  return known.has(own) ? own : nameKey(name);
}

/**
 * By each formula the name that it loses.
 * @param names all of the workbook.
 * @param gone formulas of names that are taken out.
 */
export function losing(
  found: readonly Elsewhere[],
  names: readonly DefinedName[],
  gone: readonly Elsewhere[],
): ReadonlyMap<Elsewhere, string> {
  const known = new Set(names.map(({ name, sheet }) => nameKey(name, sheet)));
  const open = gone.map(({ spot }) => spot);
  const lost = new Map<Elsewhere, string>();
  for (let one = open.pop(); one !== undefined; one = open.pop()) {
    const key = nameKey(one.what, one.sheet);
    for (const reader of found) {
      const { kind, spot, formula } = reader;
      if (lost.has(reader) || !namesIn(formula).some(name => keyOf(name, spot.sheet, known) === key)) continue;
      lost.set(reader, one.what);
      if (kind === 'name') open.push(spot);
    }
  }
  return lost;
}
