// A file that came back beside the one that was sent: what was changed, answered, measured and remarked, in the words of its sheets.
// Rows, columns and sheets are found again by what stands in them; formulas are compared as text.
import type { Cell } from '../../core/kinds';
import { address, cellPosition } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import { plainText } from '../../sheet/formula';
import { headingsOf, namedBy } from '../../sheet/headings';
import type { SourceCell } from '../../sheet/workbook-values';
import { type Alignment, alignedSheets, behind, type Lines } from './aligned';
import { effectsOf } from './effects';
import { formOf, type FormKind, isResultPlace, measuredIn } from './forms';
import { filledFrom, isMatrix } from './matrix';
import { LOST, type MovedSheet, movedFormula } from './references';
import type { Change, Rearranged, ReturnedChanges } from './returned-changes';
import { type ComparedWorkbook, type SeenGrid, gridOf, isBlank } from './seen';
import { pairedSheets } from './sheets';

type Lists = { -readonly [Key in keyof Omit<ReturnedChanges, 'effects'>]: ReturnedChanges[Key][number][] };

interface Pair {
  readonly sent: SeenGrid;
  readonly returned: SeenGrid;
  readonly alignment: Alignment;
  readonly form: FormKind | undefined;
}

const MOST_WORDS = 120;

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
  const moved = new Map(
    pairs.map(({ sent: ours, returned: theirs, alignment }): [string, MovedSheet] => [
      ours.sheet.name,
      { name: theirs.sheet.name, alignment },
    ]),
  );
  for (const pair of pairs) inSheet(pair, moved, found);
  return { ...found, effects: found.changedInputs.length === 0 ? [] : effectsOf(sent, found.changedInputs) };
}

function sheetPairs(sent: ComparedWorkbook, returned: ComparedWorkbook, { rearranged }: Lists): Pair[] {
  const { pairs, renamed, missing, added } = pairedSheets(sent.sheets.map(gridOf), returned.sheets.map(gridOf));
  const say = (grid: SeenGrid, how: Rearranged['how'], words: string): void =>
    void rearranged.push({ sheet: cellText(grid.sheet.name), what: 'sheet', how, words });
  for (const grid of missing) say(grid, 'missing', 'the whole sheet');
  for (const grid of renamed) say(grid, 'renamed', `now called ${cellText(pairs.get(grid)?.sheet.name ?? '')}`);
  for (const grid of added) say(grid, 'added', 'was not sent');
  return [...pairs].map(([grid, there]) => ({ sent: grid, returned: there, alignment: alignedSheets(grid, there), form: formOf(grid) }));
}

function inSheet(pair: Pair, moved: ReadonlyMap<string, MovedSheet>, found: Lists): void {
  const { sent, returned, alignment, form } = pair;
  const { rows, columns } = alignment;
  const { name } = sent.sheet;
  if (form === 'measured') found.results.push(...measuredIn(returned));
  wholeLines(pair, found);
  const rowOf = new Map(rows.to.flatMap((to, from) => (to === undefined ? [] : [[to, from] as const])));
  const columnOf = new Map(columns.to.flatMap((to, from) => (to === undefined ? [] : [[to, from] as const])));
  const inOrder = (from: SeenGrid): (readonly [number, number])[] =>
    Array.from({ length: from.rows }, (_, row) => from.filled(row).map(column => [row, column] as const)).flat();
  const places = new Map<string, readonly [number, number]>();
  for (const [row, column] of inOrder(sent)) places.set(address(row, column), [row, column]);
  // what came back filled and was sent blank
  const sentLine = (line: number, of: ReadonlyMap<number, number>, all: Lines): number | undefined =>
    of.get(line) ?? (line - behind(all) >= all.to.length ? line - behind(all) : undefined);
  const returnedLine = (line: number, all: Lines): number | undefined => (line < all.to.length ? all.to[line] : line + behind(all));
  for (const [row, column] of inOrder(returned)) {
    const [r, c] = [sentLine(row, rowOf, rows), sentLine(column, columnOf, columns)];
    if (r !== undefined && c !== undefined) places.set(address(r, c), [r, c]);
  }
  const [filled, refilled] = [filledFrom(sent), filledFrom(returned)];
  const broken = new Map<string, string[]>();
  const sorted = [...places].sort(([, [a, b]], [, [c, d]]) => a - c || b - d);
  for (const [at, [row, column]] of sorted) {
    const [r, c] = [returnedLine(row, rows), returnedLine(column, columns)];
    if (r === undefined || c === undefined) continue;
    const [was, is] = [sent.cell(row, column), returned.cell(r, c)];
    const matrix = filled.get(at) ?? (isMatrix(was.array) && !isMatrix(is.array) ? at : undefined);
    if (refilled.has(address(r, c))) continue;
    if (matrix !== undefined) {
      const isNew = is.formula !== undefined || shown(is) !== (at === matrix ? '' : shown(was));
      broken.set(matrix, [...(broken.get(matrix) ?? []), ...(isNew ? [`${at} ${shown(is)}`.trim()] : [])]);
      continue;
    }
    if (same(was, is, name, moved)) continue;
    const change: Change = {
      sheet: name,
      at,
      label: labelOf(sent, returned, [row, column], [r, c]),
      sent: shown(was),
      returned: shown(is),
    };
    if (isBlank(is)) found.missing.push({ sheet: name, at, label: change.label, sent: change.sent });
    else if (was.formula !== undefined || is.formula !== undefined) found.changedFormulas.push(change);
    else if (form === 'measured' && isResultPlace(row, column)) continue;
    else if (form !== undefined) found.answers.push(change);
    else found.changedInputs.push({ ...change, value: is.value });
  }
  for (const [at, cells] of broken) {
    const { row, column } = cellPosition(at);
    const was = sent.cell(row, column);
    const label = labelOf(sent, returned, [row, column], [returnedLine(row, rows) ?? row, returnedLine(column, columns) ?? column]);
    found.changedFormulas.push({
      sheet: name,
      at: was.array?.range ?? at,
      label,
      sent: shown(was),
      returned: cellText(cells.join(', ').slice(0, MOST_WORDS)),
    });
  }
  remarks(pair, rowOf, columnOf, found);
}

function wholeLines({ sent, returned, alignment: { rows, columns } }: Pair, { rearranged }: Lists): void {
  const sheet = sent.sheet.name;
  const words = (texts: readonly SourceCell[]): string =>
    texts
      .filter(cell => !isBlank(cell))
      .map(shown)
      .join(' | ')
      .slice(0, MOST_WORDS);
  const row = (grid: SeenGrid, r: number): string => words(grid.filled(r).map(c => grid.cell(r, c)));
  const column = (grid: SeenGrid, c: number): string => words(Array.from({ length: Math.min(grid.rows, 200) }, (_, r) => grid.cell(r, c)));
  const say = (what: 'row' | 'column', how: Rearranged['how'], text: string): number => rearranged.push({ sheet, what, how, words: text });
  for (const r of rows.added) say('row', 'inserted', `${r + 1}${row(returned, r) === '' ? ', blank' : `: ${row(returned, r)}`}`);
  rows.to.forEach((to, r) => {
    if (to === undefined && sent.filled(r).length > 0) say('row', 'deleted', `${r + 1}: ${row(sent, r)}`);
  });
  for (const r of rows.moved) say('row', 'moved', `${r + 1} to ${(rows.to[r] ?? 0) + 1}: ${row(sent, r)}`);
  for (const c of columns.added) say('column', 'inserted', `${address(0, c).replace('1', '')}: ${column(returned, c)}`);
  columns.to.forEach((to, c) => {
    if (to === undefined && column(sent, c) !== '') say('column', 'deleted', `${address(0, c).replace('1', '')}: ${column(sent, c)}`);
  });
  for (const c of columns.moved)
    say('column', 'moved', `${address(0, c).replace('1', '')} to ${address(0, columns.to[c] ?? 0).replace('1', '')}`);
}

function remarks({ sent, returned }: Pair, rowOf: ReadonlyMap<number, number>, columnOf: ReadonlyMap<number, number>, found: Lists): void {
  const { name } = sent.sheet;
  const each = (of: 'comments' | 'fills', into: Change[], isNew: (was: string, is: string) => boolean): void => {
    const [before, after] = [sent.sheet[of] ?? new Map<string, string>(), returned.sheet[of] ?? new Map<string, string>()];
    for (const [at, is] of after) {
      const { row, column } = cellPosition(at);
      const [r, c] = [rowOf.get(row) ?? row, columnOf.get(column) ?? column];
      const was = before.get(address(r, c)) ?? (of === 'fills' ? (sent.sheet.beneath?.(address(r, c)) ?? '') : '');
      if (isNew(was, is))
        into.push({
          sheet: name,
          at: address(r, c),
          label: labelOf(sent, returned, [r, c], [row, column]),
          sent: cellText(was),
          returned: cellText(is),
        });
    }
  };
  const spoken = (text: string): string => text.replace(/\s+/g, ' ').trim();
  each('comments', found.comments, (was, is) => spoken(is) !== '' && !spoken(is).endsWith(spoken(was) === '' ? '\u0000' : spoken(was)));
  each('fills', found.colours, (was, is) => was === '' || (was !== '?' && is !== '?' && !isNear(was, is)));
}

/** Programs reckon tints each in their own way. */
const isNear = (a: string, b: string): boolean =>
  [0, 2, 4].every(i => Math.abs(parseInt(a.slice(i, i + 2), 16) - parseInt(b.slice(i, i + 2), 16)) <= 12);

const shown = ({ value, formula }: SourceCell): string => cellText(formula ?? (value === null ? '' : String(value)));

/** Programs write a formula with other blanks and capitals, and a number with other last digits. */
function same(a: SourceCell, b: SourceCell, home: string, moved: ReadonlyMap<string, MovedSheet>): boolean {
  if (a.formula !== undefined || b.formula !== undefined) {
    if (a.formula === undefined || b.formula === undefined) return false;
    const is = spelled(b.formula);
    return spelled(a.formula) === is || spelled(movedFormula(a.formula, home, moved)) === is;
  }
  if (isBlank(a) || isBlank(b)) return isBlank(a) && isBlank(b);
  if (typeof a.value === 'number' && typeof b.value === 'number')
    return Math.abs(a.value - b.value) <= 1e-12 * Math.max(Math.abs(a.value), Math.abs(b.value));
  return textOf(a.value) === textOf(b.value);
}

/** Programs differ in what they leave before the mark of a cell that is gone. */
const spelled = (formula: string): string => plainText(formula).replace(/(?:(?:'[^']*'|[\w.]+)!)?\$?(?:[A-Z]{1,3})?\$?#REF!/gi, LOST);

const textOf = (value: Cell | null): string =>
  `${typeof value}:${String(value ?? '')
    .replace(/\r\n?/g, '\n')
    .trim()}`;

/** By its headings where it was sent, else where it came back. */
function labelOf(sent: SeenGrid, returned: SeenGrid, was: readonly [number, number], is: readonly [number, number]): string {
  return cellText(namedBy(headingsOf(sent, ...was), 'of') ?? namedBy(headingsOf(returned, ...is), 'of') ?? '');
}
