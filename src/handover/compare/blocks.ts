// Blocks of cells that were cut out and put down elsewhere, on their own sheet or on another one.
import { holds, type Place, type Rectangle, round } from '../../sheet/addresses';
import { alignedSheets, token } from './aligned';
import { type Block, CellPlaces, filledOf } from './places';
import { type SeenGrid, isBlank } from './seen';

/** Cells of a block that have to be the same as they were sent. */
const LEAST_SAME = 0.5;
/** Places that are tried for one cell. */
const MOST_PLACES = 100;
/** Blocks of one sheet. */
const MOST_BLOCKS = 8;

/** @param added sheets that were not sent. */
export function placesOf(pairs: ReadonlyMap<SeenGrid, SeenGrid>, added: readonly SeenGrid[]): ReadonlyMap<SeenGrid, CellPlaces> {
  const alignments = [...pairs].map(([sent, returned]) => ({ sent, returned, alignment: alignedSheets(sent, returned) }));
  const all = [...pairs.values(), ...added];
  let blocks: readonly Block[] = [];
  const now = (): Map<SeenGrid, CellPlaces> =>
    new Map(alignments.map(({ sent, returned, alignment }) => [sent, new CellPlaces(sent, returned, alignment, blocks)]));
  // what is found on its own sheet is not looked for elsewhere
  for (const isElsewhere of [false, true])
    for (const [sent, returned] of pairs) {
      const targets = all.filter(grid => (grid !== returned) === isElsewhere);
      let places = now();
      for (let gone = goneFrom(places.get(sent), isElsewhere); gone.length > 1;) {
        const back = new Map([...places.values()].map(one => [one.returned, one]));
        const found = targets.flatMap(target => blockOf(sent, gone, target, back.get(target)) ?? []);
        const [best] = found.sort((a, b) => b.cells - a.cells);
        if (best === undefined) break;
        blocks = [...blocks, best.block];
        places = now();
        if (blocks.filter(block => block.sent === sent).length >= MOST_BLOCKS) break;
        gone = gone.filter(place => !holds(best.block.from, place));
      }
    }
  return now();
}

/** Cells that came back blank; what was put down on another sheet may be gone with its row. */
function goneFrom(places: CellPlaces | undefined, isElsewhere: boolean): Place[] {
  if (places === undefined) return [];
  return filledOf(places.sent).filter(({ row, column }) => {
    const there = places.there(row, column);
    return there === undefined ? isElsewhere : isBlank(there.grid.cell(there.row, there.column));
  });
}

interface Vote {
  readonly down: number;
  readonly right: number;
  readonly cells: Place[];
  readonly said: Set<string>;
}

interface FoundBlock {
  readonly block: Block;
  readonly cells: number;
}

/** The block on a sheet that left those cells blank. */
function blockOf(sent: SeenGrid, gone: readonly Place[], returned: SeenGrid, places: CellPlaces | undefined): FoundBlock | undefined {
  const found = new Map<string, Place[]>();
  for (const { row, column } of filledOf(returned)) {
    const back = places?.back(row, column);
    const said = token(returned.cell(row, column));
    if (back !== undefined && token(back.grid.cell(back.row, back.column)) === said) continue;
    found.set(said, [...(found.get(said) ?? []), { row, column }]);
  }
  const votes = new Map<string, Vote>();
  for (const { row, column } of gone) {
    const said = token(sent.cell(row, column));
    for (const there of (found.get(said) ?? []).slice(0, MOST_PLACES)) {
      const [down, right] = [there.row - row, there.column - column];
      const vote = votes.get(`${down} ${right}`) ?? { down, right, cells: [], said: new Set() };
      votes.set(`${down} ${right}`, vote);
      vote.cells.push({ row, column });
      vote.said.add(said);
    }
  }
  const [best] = [...votes.values()].sort((a, b) => b.cells.length - a.cells.length);
  // one word that stands elsewhere too, however often, is no block
  if (best === undefined || best.said.size < 2) return undefined;
  const from = best.cells.map(({ row, column }): Rectangle => ({ top: row, left: column, bottom: row, right: column })).reduce(round);
  const inside = filledOf(sent).filter(place => holds(from, place));
  if (best.cells.length < LEAST_SAME * inside.length || isCopied(sent, gone, returned, best)) return undefined;
  const to = { top: from.top + best.down, left: from.left + best.right, bottom: from.bottom + best.down, right: from.right + best.right };
  return { block: { sent, from, returned, to }, cells: best.cells.length };
}

/** Where what is still in its place stands a second time too, all was copied. */
function isCopied(sent: SeenGrid, gone: readonly Place[], returned: SeenGrid, { down, right, cells }: Vote): boolean {
  const left = new Set(gone.map(({ row, column }) => `${row} ${column}`));
  const twice = filledOf(sent).filter(
    ({ row, column }) =>
      !left.has(`${row} ${column}`) && token(sent.cell(row, column)) === token(returned.cell(row + down, column + right)),
  );
  return twice.length > cells.length;
}
