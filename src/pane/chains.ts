// Calls of ours that wait for each other: each link is sent when the one before has its answer.
import { address, cellPosition, holds } from '../sheet/addresses';
import { areaOf, type FormulaNode, ownFunction, walk } from '../sheet/formula';
import type { Selection } from '../sheet/port';

/** A cell with its formula. */
interface ChainLink extends Selection {
  readonly tree: FormulaNode | undefined;
}

/** The cells of the longest chain, the one that all wait for first. Formulas of the sheet between them are followed, and cost nothing. */
export function chainIn(places: readonly ChainLink[]): Selection[] {
  const links = new Map(places.map(link => [`${link.sheetName}!${link.at}`, link]));
  const bySheet = grouped(places);
  const known = new Map<string, readonly Selection[]>();
  const open = new Set<string>();
  const before = ({ tree, sheetName }: ChainLink): string[] =>
    [...walk(tree ?? null)].flatMap(node => {
      const area = areaOf(node, sheetName);
      if (area === undefined) return [];
      if (area.top === area.bottom && area.left === area.right) return [`${area.sheet}!${address(area.top, area.left)}`];
      return (bySheet.get(area.sheet) ?? []).filter(({ at }) => holds(area, cellPosition(at))).map(({ at }) => `${area.sheet}!${at}`);
    });
  const chainTo = (key: string): readonly Selection[] => {
    const link = links.get(key);
    if (link === undefined || open.has(key)) return [];
    const done = known.get(key);
    if (done !== undefined) return done;
    open.add(key);
    const longest = before(link)
      .map(chainTo)
      .reduce((best, one) => (one.length > best.length ? one : best), []);
    open.delete(key);
    const { sheetName, at, tree } = link;
    const isOwn = [...walk(tree ?? null)].some(node => ownFunction(node) !== undefined);
    const chain = isOwn ? [...longest, { sheetName, at }] : longest;
    known.set(key, chain);
    return chain;
  };
  return [...links.keys()]
    .map(chainTo)
    .reduce<readonly Selection[]>((best, one) => (one.length > best.length ? one : best), [])
    .slice();
}

function grouped(places: readonly ChainLink[]): ReadonlyMap<string, readonly ChainLink[]> {
  const groups = new Map<string, ChainLink[]>();
  for (const link of places) {
    const group = groups.get(link.sheetName);
    if (group === undefined) groups.set(link.sheetName, [link]);
    else group.push(link);
  }
  return groups;
}
