// What people put on cells besides values: comments, each told alone, and colours, told of as many cells as they fill.
import { address, cellPosition, isOneCell, type Place, placesIn, type Rectangle, rectanglesOf } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import type { CellPlaces } from './places';
import type { Change } from './returned-changes';
import type { SeenGrid } from './seen';
import { areaWords } from './whole-lines';

/** Cells of a sheet that are looked at one by one. */
const MOST_CELLS = 400_000;

type LabelOf = (row: number, column: number) => string;

const spoken = (text: string): string => text.replace(/\s+/g, ' ').trim();
const at = (places: CellPlaces, { row, column }: Place): readonly [number, number] => places.back(row, column) ?? [row, column];

export function newComments(sent: SeenGrid, returned: SeenGrid, places: CellPlaces, labelOf: LabelOf): Change[] {
  return [...(returned.sheet.comments ?? [])].flatMap(([place, is]) => {
    const [row, column] = at(places, cellPosition(place));
    const was = spoken(sent.sheet.comments?.get(address(row, column)) ?? '');
    if (spoken(is) === '' || (was !== '' && spoken(is).endsWith(was))) return [];
    const label = labelOf(row, column);
    return [{ sheet: sent.sheet.name, at: address(row, column), label, sent: cellText(was), returned: cellText(is) }];
  });
}

/** The ground of a cell, from its row or column where it has none of its own. */
const groundOf = ({ sheet }: SeenGrid, place: string): string => sheet.fills?.get(place) ?? sheet.beneath?.(place) ?? '';

export function newColours(sent: SeenGrid, returned: SeenGrid, places: CellPlaces, labelOf: LabelOf): Change[] {
  const [rows, columns] = [Math.max(sent.rows, returned.rows), Math.max(sent.columns, returned.columns)];
  const isSeen = ({ row, column }: Place): boolean => row < rows && column < columns;
  const own = [...(returned.sheet.fills?.keys() ?? [])].map(cellPosition);
  const all = rows * columns <= MOST_CELLS ? placesIn({ top: 0, left: 0, bottom: rows - 1, right: columns - 1 }) : own.filter(isSeen);
  const newAt = (place: Place): string => {
    const is = groundOf(returned, address(place.row, place.column));
    if (is === '') return '';
    const was = groundOf(sent, address(...at(places, place)));
    return was === '' || (was !== '?' && is !== '?' && !isNear(was, is)) ? is : '';
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
    .map(({ colour, area }) => {
      const [first, last] = [at(places, { row: area.top, column: area.left }), at(places, { row: area.bottom, column: area.right })];
      const label = isOneCell(area) ? labelOf(...first) : '';
      return { sheet: sent.sheet.name, at: areaWords(...first, ...last), label, sent: '', returned: cellText(colour) };
    });
}

interface Coloured {
  readonly colour: string;
  readonly area: Rectangle;
}

function areasOf(places: readonly Place[], colourAt: (place: Place) => string): Coloured[] {
  const byColour = new Map<string, Place[]>();
  for (const place of places) {
    const colour = colourAt(place);
    const same = byColour.get(colour);
    if (same !== undefined) same.push(place);
    else if (colour !== '') byColour.set(colour, [place]);
  }
  return [...byColour].flatMap(([colour, some]) => rectanglesOf(some).map(area => ({ colour, area })));
}

/** Programs reckon tints each in their own way. */
const isNear = (a: string, b: string): boolean =>
  [0, 2, 4].every(i => Math.abs(parseInt(a.slice(i, i + 2), 16) - parseInt(b.slice(i, i + 2), 16)) <= 12);
