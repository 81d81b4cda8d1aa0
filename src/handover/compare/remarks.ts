// What people put on cells besides values: comments, each told alone, and colours, told of as many cells as they fill.
import { address, cellPosition, isOneCell, type Place, placesIn, type Rectangle, rectanglesOf } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import type { CellPlaces, CellSpot } from './places';
import type { Change } from './returned-changes';
import type { SeenGrid } from './seen';
import { areaWords } from './whole-lines';

/** Cells of a sheet that are looked at one by one. */
const MOST_CELLS = 400_000;

type LabelOf = (was: CellSpot, is: CellSpot) => string;

const spoken = (text: string): string => text.replace(/\s+/g, ' ').trim();
const origin = (places: CellPlaces, { row, column }: Place): CellSpot => places.back(row, column) ?? { grid: places.sent, row, column };

export function newComments(places: CellPlaces, labelOf: LabelOf): Change[] {
  return [...(places.returned.sheet.comments ?? [])].flatMap(([place, is]) => {
    const there = { grid: places.returned, ...cellPosition(place) };
    const from = origin(places, there);
    const { sheet } = from.grid;
    const at = address(from.row, from.column);
    const was = spoken(sheet.comments?.get(at) ?? '');
    if (spoken(is) === '' || (was !== '' && spoken(is).endsWith(was))) return [];
    return [{ sheet: sheet.name, at, label: labelOf(from, there), sent: cellText(was), returned: cellText(is) }];
  });
}

/** The ground of a cell, from its row or column where it has none of its own. */
const groundOf = ({ sheet }: SeenGrid, place: string): string => sheet.fills?.get(place) ?? sheet.beneath?.(place) ?? '';

export function newColours(places: CellPlaces, labelOf: LabelOf): Change[] {
  const { sent, returned } = places;
  const [rows, columns] = [Math.max(sent.rows, returned.rows), Math.max(sent.columns, returned.columns)];
  const isSeen = ({ row, column }: Place): boolean => row < rows && column < columns;
  const own = [...(returned.sheet.fills?.keys() ?? [])].map(cellPosition);
  const all = rows * columns <= MOST_CELLS ? placesIn({ top: 0, left: 0, bottom: rows - 1, right: columns - 1 }) : own.filter(isSeen);
  const newAt = (place: Place): Coloured | undefined => {
    const is = groundOf(returned, address(place.row, place.column));
    if (is === '') return undefined;
    const { grid, row, column } = origin(places, place);
    const was = groundOf(grid, address(row, column));
    return was === '' || (was !== '?' && is !== '?' && !isNear(was, is)) ? { colour: is, grid } : undefined;
  };
  const areas = [all, own.filter(place => !isSeen(place))].map(some => areasOf(some, newAt));
  const [inside = [], outside = []] = areas;
  // a row or column that is coloured as a whole is told as far as the sheet is filled
  const beyond = outside.filter(
    one =>
      !inside.some(({ colour, area }) => colour === one.colour && (area.right + 1 === one.area.left || area.bottom + 1 === one.area.top)),
  );
  return [...inside, ...beyond]
    .sort(({ area: a }, { area: b }) => a.top - b.top || a.left - b.left)
    .map(({ colour, grid, area }) => {
      const there = { grid: returned, row: area.top, column: area.left };
      const [first, last] = [origin(places, there), origin(places, { row: area.bottom, column: area.right })];
      const at = areaWords({ top: first.row, left: first.column, bottom: last.row, right: last.column });
      return { sheet: grid.sheet.name, at, label: isOneCell(area) ? labelOf(first, there) : '', sent: '', returned: cellText(colour) };
    });
}

interface Coloured {
  readonly colour: string;
  /** Where the cell was sent. */
  readonly grid: SeenGrid;
}

interface ColouredArea extends Coloured {
  readonly area: Rectangle;
}

function areasOf(places: readonly Place[], newAt: (place: Place) => Coloured | undefined): ColouredArea[] {
  const alike: (Coloured & { readonly places: Place[] })[] = [];
  for (const place of places) {
    const one = newAt(place);
    if (one === undefined) continue;
    const same = alike.find(({ colour, grid }) => colour === one.colour && grid === one.grid);
    if (same === undefined) alike.push({ ...one, places: [place] });
    else same.places.push(place);
  }
  return alike.flatMap(({ colour, grid, places: some }) => rectanglesOf(some).map(area => ({ colour, grid, area })));
}

/** Programs reckon tints each in their own way. */
const isNear = (a: string, b: string): boolean =>
  [0, 2, 4].every(i => Math.abs(parseInt(a.slice(i, i + 2), 16) - parseInt(b.slice(i, i + 2), 16)) <= 12);
