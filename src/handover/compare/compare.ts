// A file that came back beside the one that was sent: what was changed, answered, measured and remarked, in the words of its sheets.
// Rows, columns and sheets are found again by what stands in them; formulas are compared as text.
import { address, cellPosition, type Place } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import { headingsOf, namedBy } from '../../sheet/headings';
import { ENGLISH, type PageWords } from '../words/english';
import { placesOf } from './blocks';
import { effectsOf } from './effects';
import { formOf, isResultPlace, measuredIn } from './forms';
import { filledFrom, isMatrix, matrixWords } from './matrix';
import { meantValues } from './meant';
import { type CellPlaces, type CellSpot, filledOf } from './places';
import type { Moved } from './references';
import { newColours, newComments } from './remarks';
import type { Change, Rearranged, ReturnedChanges } from './returned-changes';
import { same, shown } from './same';
import { type ComparedWorkbook, type SeenCell, type SeenGrid, gridOf, isBlank } from './seen';
import { pairedSheets } from './sheets';
import { meaningOf } from './typed-number';
import { MOST_WORDS, wholeLines } from './whole-lines';

type Lists = { -readonly [Key in keyof Omit<ReturnedChanges, 'effects'>]: ReturnedChanges[Key][number][] };

/** @param words in which it is told. */
export function compare(sent: ComparedWorkbook, returned: ComparedWorkbook, words: PageWords = ENGLISH): ReturnedChanges {
  const found: Lists = {
    changedInputs: [],
    changedFormulas: [],
    answers: [],
    results: [],
    comments: [],
    colours: [],
    rearranged: [],
    missing: [],
  };
  const all = sheetPairs(sent, returned, found, words);
  const moved: Moved = new Map([
    ...sent.sheets.map(({ name }): [string, undefined] => [name, undefined]),
    ...all.map((places): [string, CellPlaces] => [places.sent.sheet.name, places]),
  ]);
  for (const places of all) inSheet(places, moved, found, words);
  const after = meantValues(sent, returned, all, moved);
  for (const places of all)
    if (formOf(places.sent) === 'measured')
      found.results.push(...measuredIn(places.returned, after, (row, column) => places.there(row, column)));
  const isOther = [found.changedInputs, found.changedFormulas, found.missing, found.rearranged].some(list => list.length > 0);
  return { ...found, effects: isOther ? effectsOf(sent, all, after, words.of) : [] };
}

function sheetPairs(sent: ComparedWorkbook, returned: ComparedWorkbook, { rearranged }: Lists, { compare: said }: PageWords): CellPlaces[] {
  const { pairs, renamed, missing, added } = pairedSheets(sent.sheets.map(gridOf), returned.sheets.map(gridOf));
  const say = (grid: SeenGrid, how: Rearranged['how'], told: string): void =>
    void rearranged.push({ sheet: cellText(grid.sheet.name), what: 'sheet', how, words: told });
  for (const grid of missing) say(grid, 'missing', said.wholeSheet);
  for (const grid of renamed) say(grid, 'renamed', said.nowCalled(cellText(pairs.get(grid)?.sheet.name ?? '')));
  for (const grid of added) say(grid, 'added', said.notSent);
  return [...placesOf(pairs, added).values()];
}

function inSheet(places: CellPlaces, moved: Moved, found: Lists, words: PageWords): void {
  const { sent } = places;
  const { name } = sent.sheet;
  const form = formOf(sent);
  const labelOf = (was: CellSpot, is: CellSpot | undefined): string =>
    (form === 'cover' ? nameBeside(was) : undefined) ?? labelled(was, is, words.of);
  found.rearranged.push(...wholeLines(places, words));
  const cells = new Map<string, Place>();
  for (const place of [...filledOf(sent), ...places.filledBack()]) cells.set(address(place.row, place.column), place);
  const filled = filledFrom(sent);
  const refilled = new Map([places.returned, ...places.left.map(block => block.returned)].map(grid => [grid, filledFrom(grid)]));
  const broken = new Map<string, string[]>();
  const sorted = [...cells].sort(([, a], [, b]) => a.row - b.row || a.column - b.column);
  for (const [at, place] of sorted) {
    const there = places.there(place.row, place.column);
    if (there === undefined) continue;
    const [was, is] = [sent.cell(place.row, place.column), cellAt(there)];
    const matrix = filled.get(at) ?? (isMatrix(was.array) && !isMatrix(is.array) ? at : undefined);
    if (form === 'measured' && isResultPlace(place.row, place.column) && was.formula === undefined && !isBlank(is)) continue;
    const from = refilled.get(there.grid)?.get(address(there.row, there.column));
    // a formula that fills several cells is told at each that was typed
    if (from !== undefined && (matrix !== undefined || isBlank(was) || was.formula !== undefined)) continue;
    if (matrix !== undefined) {
      const isNew = is.formula !== undefined || shown(is) !== (at === matrix ? '' : shown(was));
      broken.set(matrix, [...(broken.get(matrix) ?? []), ...(isNew ? [`${at} ${shown(is)}`.trim()] : [])]);
      continue;
    }
    if (from === undefined && same(was, is, name, there.grid.sheet.name, moved)) continue;
    const over = from ?? (isMatrix(is.array) ? address(there.row, there.column) : undefined);
    const change: Change = {
      sheet: name,
      at,
      label: labelOf({ grid: sent, ...place }, there),
      sent: shown(was),
      returned: over === undefined ? shown(is) : matrixWords(there.grid, over, words),
    };
    if (isBlank(is)) found.missing.push({ sheet: name, at, label: change.label, sent: change.sent });
    else if (was.formula !== undefined || is.formula !== undefined || over !== undefined) found.changedFormulas.push(change);
    else if (form !== undefined) found.answers.push(change);
    else {
      const becameDate = is.isDate === true && was.isDate !== true && { becameDate: true as const };
      found.changedInputs.push({ ...change, ...meaningOf(sent, place.row, place.column, is.value), ...becameDate });
    }
  }
  for (const [at, parts] of broken) {
    const place = cellPosition(at);
    const was = sent.cell(place.row, place.column);
    found.changedFormulas.push({
      sheet: name,
      at: was.array?.range ?? at,
      label: labelOf({ grid: sent, ...place }, places.there(place.row, place.column)),
      sent: shown(was),
      returned: cellText(parts.join(', ').slice(0, MOST_WORDS)),
    });
  }
  found.comments.push(...newComments(places, labelOf));
  found.colours.push(...newColours(places, labelOf));
}

const cellAt = ({ grid, row, column }: CellSpot): SeenCell => grid.cell(row, column);

/** On the cover two names share a row, each before its own field. */
function nameBeside({ grid, row, column }: CellSpot): string | undefined {
  const before = grid.filled(row).filter(c => c < column);
  const name = before.length === 0 ? undefined : grid.value(row, Math.max(...before));
  return typeof name === 'string' ? cellText(name) : undefined;
}

/** By its headings where it was sent, else where it came back: what was filled in names its own row. */
function labelled(was: CellSpot, is: CellSpot | undefined, of: string): string {
  const [sent, back] = [was, ...(is ? [is] : [])].map(({ grid, row, column }) => headingsOf(grid, row, column));
  const called = sent?.row === undefined && back?.row !== undefined ? back : (sent ?? {});
  return cellText(namedBy(called, of) ?? (back && namedBy(back, of)) ?? '');
}
