// A file that came back beside the one that was sent: what was changed, answered, measured and remarked, in the words of its sheets.
// Rows, columns and sheets are found again by what stands in them; formulas are compared as text.
import type { Cell } from '../../core/kinds';
import { address, cellPosition } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import { headingsOf, namedBy } from '../../sheet/headings';
import { effectsOf } from './effects';
import { formOf, type FormKind, isResultPlace, measuredIn, workedOut } from './forms';
import { filledFrom, isMatrix, matrixWords } from './matrix';
import { type CellPlaces, type CellSpot, filledOf, placesOf } from './places';
import type { Moved, MovedSheet } from './references';
import { newColours, newComments } from './remarks';
import type { Change, ChangedInput, Rearranged, ReturnedChanges } from './returned-changes';
import { same, shown } from './same';
import { type ComparedWorkbook, type SeenGrid, gridOf, isBlank } from './seen';
import { pairedSheets } from './sheets';
import { isInInches, typedNumber, typedQuantity } from './typed-number';
import { MOST_WORDS, wholeLines } from './whole-lines';

type Lists = { -readonly [Key in keyof Omit<ReturnedChanges, 'effects'>]: ReturnedChanges[Key][number][] };

interface Pair {
  readonly sent: SeenGrid;
  readonly returned: SeenGrid;
  readonly places: CellPlaces;
  readonly form: FormKind | undefined;
}

export function compare(sent: ComparedWorkbook, returned: ComparedWorkbook): ReturnedChanges {
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
  const pairs = sheetPairs(sent, returned, found);
  const moved = new Map([
    ...sent.sheets.map(({ name }): [string, undefined] => [name, undefined]),
    ...pairs.map(({ sent: ours, returned: theirs, places }): [string, MovedSheet] => [
      ours.sheet.name,
      { name: theirs.sheet.name, places },
    ]),
  ]);
  for (const pair of pairs) inSheet(pair, moved, found);
  for (const { returned: grid, form } of pairs) if (form === 'measured') found.results.push(...measuredIn(workedOut(grid, returned)));
  return { ...found, effects: found.changedInputs.length === 0 ? [] : effectsOf(sent, found.changedInputs) };
}

function sheetPairs(sent: ComparedWorkbook, returned: ComparedWorkbook, { rearranged }: Lists): Pair[] {
  const { pairs, renamed, missing, added } = pairedSheets(sent.sheets.map(gridOf), returned.sheets.map(gridOf));
  const say = (grid: SeenGrid, how: Rearranged['how'], words: string): void =>
    void rearranged.push({ sheet: cellText(grid.sheet.name), what: 'sheet', how, words });
  for (const grid of missing) say(grid, 'missing', 'the whole sheet');
  for (const grid of renamed) say(grid, 'renamed', `now called ${cellText(pairs.get(grid)?.sheet.name ?? '')}`);
  for (const grid of added) say(grid, 'added', 'was not sent');
  return [...pairs].map(([grid, there]) => ({ sent: grid, returned: there, places: placesOf(grid, there), form: formOf(grid) }));
}

function inSheet(pair: Pair, moved: Moved, found: Lists): void {
  const { sent, returned, places, form } = pair;
  const { name } = sent.sheet;
  found.rearranged.push(...wholeLines(sent, returned, places));
  const cells = new Map<string, CellSpot>();
  for (const [row, column] of filledOf(sent)) cells.set(address(row, column), [row, column]);
  // what came back filled and was sent blank
  for (const [row, column] of filledOf(returned)) {
    const back = places.back(row, column);
    if (back !== undefined) cells.set(address(...back), back);
  }
  const [filled, refilled] = [filledFrom(sent), filledFrom(returned)];
  const broken = new Map<string, string[]>();
  const sorted = [...cells].sort(([, [a, b]], [, [c, d]]) => a - c || b - d);
  for (const [at, [row, column]] of sorted) {
    const there = places.there(row, column);
    if (there === undefined) continue;
    const [was, is] = [sent.cell(row, column), returned.cell(...there)];
    const matrix = filled.get(at) ?? (isMatrix(was.array) && !isMatrix(is.array) ? at : undefined);
    const from = refilled.get(address(...there));
    // a formula that fills several cells is told at each that was typed
    if (from !== undefined && (matrix !== undefined || isBlank(was) || was.formula !== undefined)) continue;
    if (matrix !== undefined) {
      const isNew = is.formula !== undefined || shown(is) !== (at === matrix ? '' : shown(was));
      broken.set(matrix, [...(broken.get(matrix) ?? []), ...(isNew ? [`${at} ${shown(is)}`.trim()] : [])]);
      continue;
    }
    if (from === undefined && same(was, is, name, moved)) continue;
    const over = from ?? (isMatrix(is.array) ? address(...there) : undefined);
    const change: Change = {
      sheet: name,
      at,
      label: labelOf(sent, returned, [row, column], there),
      sent: shown(was),
      returned: over === undefined ? shown(is) : matrixWords(returned, over),
    };
    if (isBlank(is)) found.missing.push({ sheet: name, at, label: change.label, sent: change.sent });
    else if (was.formula !== undefined || is.formula !== undefined || over !== undefined) found.changedFormulas.push(change);
    else if (form === 'measured' && isResultPlace(row, column)) continue;
    else if (form !== undefined) found.answers.push(change);
    else found.changedInputs.push({ ...change, ...meaningOf(sent, [row, column], is.value) });
  }
  for (const [at, parts] of broken) {
    const { row, column } = cellPosition(at);
    const was = sent.cell(row, column);
    found.changedFormulas.push({
      sheet: name,
      at: was.array?.range ?? at,
      label: labelOf(sent, returned, [row, column], places.there(row, column) ?? [row, column]),
      sent: shown(was),
      returned: cellText(parts.join(', ').slice(0, MOST_WORDS)),
    });
  }
  const named = (row: number, column: number): string => labelOf(sent, returned, [row, column], places.there(row, column) ?? [row, column]);
  found.comments.push(...newComments(sent, returned, places, named));
  found.colours.push(...newColours(sent, returned, places, named));
}

/** What goes into a workbook, and what it stands for where it is a text. */
function meaningOf(sent: SeenGrid, [row, column]: CellSpot, value: Cell | null): Pick<ChangedInput, 'value' | 'means'> {
  const isNumber = typedQuantity(sent.cell(row, column).value) !== undefined || typeof sent.cell(row, column).value === 'number';
  if (!isNumber || typeof value !== 'string') return { value };
  const bare = typedNumber(value);
  if (bare !== undefined) return { value: bare };
  const means = isInInches(sent, row, column) ? undefined : typedQuantity(value);
  return { value, ...(means !== undefined && { means }) };
}

/** By its headings where it was sent, else where it came back. */
function labelOf(sent: SeenGrid, returned: SeenGrid, was: readonly [number, number], is: readonly [number, number]): string {
  return cellText(namedBy(headingsOf(sent, ...was), 'of') ?? namedBy(headingsOf(returned, ...is), 'of') ?? '');
}
