// Which row and column of a sheet that came back is which of the sheet that was sent: by what stands in them, not by their numbers.
import { diffArrays } from 'diff';
import { withoutTexts } from '../../sheet/formula';
import type { SourceCell } from '../../sheet/workbook-values';
import { type SeenGrid, isBlank } from './seen';

export interface Lines {
  /** Of each line that was sent, the one that came back; undefined where it is gone. */
  readonly to: readonly (number | undefined)[];
  /** Lines that were not sent. */
  readonly added: readonly number[];
  /** Lines that stand elsewhere, as they were sent. */
  readonly moved: readonly number[];
}

/** How much further behind lines stand that lie beyond all that was sent. */
export const behind = ({ to }: Lines): number => to.reduce<number>((most, line) => Math.max(most, line ?? -1), -1) - (to.length - 1);

export interface Alignment {
  readonly rows: Lines;
  readonly columns: Lines;
}

/** More edits are not looked for: such sheets are laid beside one another as they stand. */
const MOST_EDITS = 4000;
/** Pairs of lines that are tried in one place. */
const MOST_PAIRS = 40_000;
/** Rows by which columns are told apart. */
const MOST_ROWS = 400;
const ALIKE = 0.5;

/** The same in a row that was moved: a formula without the cells that it reads, a number as it is shown. */
export function token(cell: SourceCell): string {
  if (cell.formula !== undefined)
    return `=${withoutTexts(cell.formula)
      .replace(/('[^']*'|[\w.]+)!/g, '')
      .replace(/\$?[A-Z]{1,3}\$?\d+/gi, '#')
      .replace(/\s+/g, '')
      .toUpperCase()}`;
  const { value } = cell;
  return typeof value === 'number' ? `n${value.toPrecision(12)}` : `${typeof value}${String(value ?? '').trim()}`;
}

const tokensOf = (grid: SeenGrid, row: number): string[] => grid.filled(row).map(column => token(grid.cell(row, column)));

/** Filled cells that two lines have in common. */
function alike(a: readonly string[], b: readonly string[]): number {
  const left = new Map<string, number>();
  for (const one of a) left.set(one, (left.get(one) ?? 0) + 1);
  let same = 0;
  for (const one of b) {
    const count = left.get(one) ?? 0;
    if (count > 0) same++;
    left.set(one, count - 1);
  }
  return same;
}

/** Share of the filled cells of two lines that are the same. */
const likeness = (a: readonly string[], b: readonly string[]): number =>
  a.length === 0 || b.length === 0 ? Number(a.length === b.length) : alike(a, b) / Math.max(a.length, b.length);

interface Run {
  readonly from: number;
  readonly count: number;
}

/** Lines that differ in one place: the most alike are the same line, in order. */
function paired(sent: readonly (readonly string[])[], returned: readonly (readonly string[])[], was: Run, is: Run): [number, number][] {
  const one = (i: number): readonly string[] => sent[was.from + i] ?? [];
  const other = (j: number): readonly string[] => returned[is.from + j] ?? [];
  const inPlace = (): [number, number][] => Array.from({ length: Math.min(was.count, is.count) }, (_, i) => [was.from + i, is.from + i]);
  if (was.count * is.count > MOST_PAIRS) return inPlace();
  // the heaviest chain of pairs in order
  const best = Array.from({ length: was.count + 1 }, () => new Float64Array(is.count + 1));
  const worth = (i: number, j: number): number => {
    const like = likeness(one(i), other(j));
    // a line with one cell has nothing else to be known by than its place
    const isSingle = one(i).length === 1 && other(j).length === 1;
    return like >= ALIKE ? 1 + like : isSingle ? 0.6 : like > 0 ? 0.3 + like : 0;
  };
  for (let i = was.count - 1; i >= 0; i--)
    for (let j = is.count - 1; j >= 0; j--)
      (best[i] as Float64Array)[j] = Math.max(
        best[i + 1]?.[j] ?? 0,
        best[i]?.[j + 1] ?? 0,
        worth(i, j) === 0 ? 0 : worth(i, j) + (best[i + 1]?.[j + 1] ?? 0),
      );
  const pairs: [number, number][] = [];
  for (let [i, j] = [0, 0]; i < was.count && j < is.count;) {
    const here = best[i]?.[j] ?? 0;
    if (worth(i, j) > 0 && Math.abs(here - worth(i, j) - (best[i + 1]?.[j + 1] ?? 0)) < 1e-9) pairs.push([was.from + i++, is.from + j++]);
    else if (here === (best[i + 1]?.[j] ?? 0)) i++;
    else j++;
  }
  // as many lines as there were, all others: they were written over
  return pairs.length === 0 && was.count === is.count ? inPlace() : pairs;
}

interface Unaligned {
  readonly was: Run;
  readonly is: Run;
}

/** Lines between those that are the same. */
function gapsOf(to: readonly (number | undefined)[], count: number): Unaligned[] {
  const gaps: Unaligned[] = [];
  let [i, j] = [0, 0];
  for (const [line, there] of [...to.entries(), [to.length, count] as const]) {
    if (there === undefined) continue;
    if (line > i || there > j) gaps.push({ was: { from: i, count: line - i }, is: { from: j, count: there - j } });
    [i, j] = [line + 1, there + 1];
  }
  return gaps;
}

/** Between filled lines that are the same, as many as were there are those, where none contradicts it: filled in, emptied, added to. */
function settle(to: (number | undefined)[], sent: readonly (readonly string[])[], returned: readonly (readonly string[])[]): void {
  const isSame = (a: readonly string[], b: readonly string[]): boolean =>
    likeness(a, b) >= ALIKE || alike(a, b) === Math.min(a.length, b.length);
  const held = new Set(to);
  // what stands elsewhere as it was is there
  const lost = linesOf(sent.filter((_, i) => to[i] === undefined));
  const came = linesOf(returned.filter((_, j) => !held.has(j)));
  for (const { was, is } of gapsOf(
    to.map((there, i) => (sent[i]?.length === 0 ? undefined : there)),
    returned.length,
  )) {
    const lines = Array.from({ length: was.count }, (_, k) => [sent[was.from + k] ?? [], returned[is.from + k] ?? []] as const);
    const isElsewhere = lines.some(([a, b]) => came.has(lineOf(a)) || lost.has(lineOf(b)));
    if (was.count !== is.count || isElsewhere || !lines.every(([a, b]) => isSame(a, b))) continue;
    for (let k = 0; k < was.count; k++) to[was.from + k] = is.from + k;
  }
}

const lineOf = (line: readonly string[]): string => line.join('\u0001');
/** One cell alone is no line to be known by. */
const linesOf = (lines: readonly (readonly string[])[]): ReadonlySet<string> => new Set(lines.filter(line => line.length > 1).map(lineOf));

function aligned(sent: readonly (readonly string[])[], returned: readonly (readonly string[])[]): Lines {
  const [was, is] = [sent, returned].map(lines => lines.map(lineOf)) as [string[], string[]];
  const to: (number | undefined)[] = sent.map(() => undefined);
  const hunks = diffArrays(was, is, { maxEditLength: MOST_EDITS });
  if (hunks === undefined) {
    const both = Math.min(was.length, is.length);
    return { to: was.map((_, i) => (i < both ? i : undefined)), added: [], moved: [] };
  }
  let [i, j] = [0, 0];
  for (const { added = false, removed = false, count = 0 } of hunks) {
    if (!added && !removed) for (let k = 0; k < count; k++) to[i + k] = j + k;
    if (!added) i += count;
    if (!removed) j += count;
  }
  settle(to, sent, returned);
  const pending = gapsOf(to, is.length);
  const taken = new Set<number>();
  // what stands elsewhere as it was is moved, before anything is taken for written over
  const free = pending.flatMap(({ is: run }) => Array.from({ length: run.count }, (_, k) => run.from + k));
  const moved: number[] = [];
  for (const { was: run } of pending)
    for (let k = run.from; k < run.from + run.count; k++) {
      if ((sent[k]?.length ?? 0) < 2) continue;
      const there = free.find(row => !taken.has(row) && is[row] === was[k]);
      if (there === undefined) continue;
      to[k] = there;
      taken.add(there);
      moved.push(k);
    }
  for (const hunk of pending) {
    const rest = (run: Run, isFree: (line: number) => boolean): Run[] => {
      const runs: { from: number; count: number }[] = [];
      for (let line = run.from; line < run.from + run.count; line++) {
        const last = runs[runs.length - 1];
        if (!isFree(line)) continue;
        if (last !== undefined && last.from + last.count === line) last.count++;
        else runs.push({ from: line, count: 1 });
      }
      return runs;
    };
    const ones = rest(hunk.was, line => to[line] === undefined).flatMap(run => Array.from({ length: run.count }, (_, k) => run.from + k));
    const others = rest(hunk.is, line => !taken.has(line)).flatMap(run => Array.from({ length: run.count }, (_, k) => run.from + k));
    const pairs = paired(
      ones.map(line => sent[line] ?? []),
      others.map(line => returned[line] ?? []),
      { from: 0, count: ones.length },
      { from: 0, count: others.length },
    );
    for (const [a, b] of pairs) {
      const [line, there] = [ones[a], others[b]];
      if (line === undefined || there === undefined) continue;
      to[line] = there;
      taken.add(there);
    }
  }
  const held = new Set(to.filter(line => line !== undefined));
  // what stands behind all that was sent is written there, and moves nothing
  const last = [...held].reduce((most, line) => Math.max(most, line), -1);
  // a moved line leaves its place blank, and blank ones before it where it went
  const elsewhere = new Set(moved);
  const lastInPlace = to.reduce<number>((most, line, i) => (elsewhere.has(i) ? most : Math.max(most, line ?? -1)), -1);
  const isLeft = (line: number): boolean =>
    is[line] === '' &&
    (line > lastInPlace ||
      pending.some(hunk => hunk.was.count === hunk.is.count && line >= hunk.is.from && line < hunk.is.from + hunk.is.count));
  return { to, added: is.flatMap((_, line) => (held.has(line) || line > last || isLeft(line) ? [] : [line])), moved };
}

/** Columns by what stands in them, in rows that are the same. */
function columnTokens(grid: SeenGrid, rows: readonly number[]): string[][] {
  return Array.from({ length: grid.columns }, (_, column) =>
    rows.flatMap((row, i) => {
      const cell = grid.cell(row, column);
      return isBlank(cell) ? [] : [`${i} ${token(cell)}`];
    }),
  );
}

export function alignedSheets(sent: SeenGrid, returned: SeenGrid): Alignment {
  const lines = (grid: SeenGrid): string[][] => Array.from({ length: grid.rows }, (_, row) => tokensOf(grid, row));
  const rows = aligned(lines(sent), lines(returned));
  const pairs = rows.to.flatMap((line, i) => (line === undefined || sent.filled(i).length === 0 ? [] : [[i, line] as const]));
  const step = Math.max(1, Math.ceil(pairs.length / MOST_ROWS));
  const some = pairs.filter((_, i) => i % step === 0);
  const columns = aligned(
    columnTokens(
      sent,
      some.map(([row]) => row),
    ),
    columnTokens(
      returned,
      some.map(([, row]) => row),
    ),
  );
  return { rows, columns };
}
