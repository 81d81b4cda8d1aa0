// A file that came back beside the one that was sent: what was changed, answered and measured.
// Formulas are compared as text, never worked out.
import type { Cell } from '../core/kinds';
import { COLUMN, HEAD_ROW } from './pages/characteristics';
import { LANGUAGES, WORDS } from './pages/words/words';
import { address, cellPosition, lastPlace } from '../sheet/addresses';
import { plainText } from '../sheet/formula';
import type { SourceCell, SourceSheet, SourceWorkbook } from '../sheet/workbook-values';
import { cellText } from '../sheet/cell-text';

export interface Change {
  readonly sheet: string;
  readonly at: string;
  /** What stands beside the cell. */
  readonly label: string;
  readonly sent: string;
  readonly returned: string;
}

export interface Measured {
  readonly sheet: string;
  readonly at: string;
  readonly characteristic: string;
  readonly requirement: string;
  readonly lower: string;
  readonly upper: string;
  readonly method: string;
  readonly result: string;
  readonly judged: string;
  readonly remark: string;
}

export interface ReturnedChanges {
  readonly changedInputs: readonly Change[];
  readonly changedFormulas: readonly Change[];
  /** Fields of the cover and of the characteristics that were filled in. */
  readonly answers: readonly Change[];
  readonly results: readonly Measured[];
  /** Sheets and cells that did not come back. */
  readonly missing: readonly Omit<Change, 'returned'>[];
  /** Sheets that were not sent. */
  readonly added: readonly string[];
}

/** Units are shorter. */
const SHORTEST_LABEL = 4;

const NOTHING: SourceCell = { value: null };

export function compare(sent: SourceWorkbook, returned: SourceWorkbook): ReturnedChanges {
  const changedInputs: Change[] = [];
  const changedFormulas: Change[] = [];
  const answers: Change[] = [];
  const results: Measured[] = [];
  const missing: Omit<Change, 'returned'>[] = [];
  for (const ours of sent.sheets) {
    const theirs = returned.sheets.find(({ name }) => name === ours.name);
    if (theirs === undefined) {
      missing.push({ sheet: ours.name, at: '', label: 'the whole sheet', sent: '' });
      continue;
    }
    const isMeasured = LANGUAGES.some(language => titleOf(ours) === WORDS[language].measured.title);
    const isForm = isMeasured || LANGUAGES.some(language => titleOf(ours).startsWith(`${WORDS[language].cover.title}:`));
    if (isMeasured) for (const one of measured(ours.name, theirs)) results.push(one);
    for (const at of inOrder([...ours.cells.keys(), ...theirs.cells.keys()])) {
      const [was, is] = [ours.cells.get(at) ?? NOTHING, theirs.cells.get(at) ?? NOTHING];
      if (same(was, is)) continue;
      const change: Change = { sheet: ours.name, at, label: labelOf(ours, at), sent: shown(was), returned: shown(is) };
      if (isBlank(is)) missing.push({ sheet: change.sheet, at, label: change.label, sent: change.sent });
      else if (was.formula !== undefined || is.formula !== undefined) changedFormulas.push(change);
      else if (isForm && isMeasured && cellPosition(at).column === COLUMN.result) continue;
      else (isForm ? answers : changedInputs).push(change);
    }
  }
  const added = returned.sheets.flatMap(({ name }) => (sent.sheets.some(one => one.name === name) ? [] : [cellText(name)]));
  return { changedInputs, changedFormulas, answers, results, missing, added };
}

/** Row by row. */
function inOrder(addresses: readonly string[]): string[] {
  const placed = [...new Set(addresses)].map(at => ({ at, ...cellPosition(at) }));
  return placed.sort((a, b) => a.row - b.row || a.column - b.column).map(({ at }) => at);
}

const titleOf = ({ cells }: SourceSheet): string => String(cells.get('A1')?.value ?? '');
const isBlank = ({ value, formula }: SourceCell): boolean => formula === undefined && (value === null || value === '');
const shown = ({ value, formula }: SourceCell): string => cellText(formula ?? (value === null ? '' : String(value)));

/** Programs write a formula with other blanks and capitals, and a number with other last digits. */
function same(a: SourceCell, b: SourceCell): boolean {
  if (a.formula !== undefined || b.formula !== undefined)
    return a.formula !== undefined && b.formula !== undefined && plainText(a.formula) === plainText(b.formula);
  if (isBlank(a) || isBlank(b)) return isBlank(a) && isBlank(b);
  if (typeof a.value === 'number' && typeof b.value === 'number')
    return Math.abs(a.value - b.value) <= 1e-12 * Math.max(Math.abs(a.value), Math.abs(b.value));
  return textOf(a.value) === textOf(b.value);
}

const textOf = (value: Cell | null): string =>
  `${typeof value}:${String(value ?? '')
    .replace(/\r\n?/g, '\n')
    .trim()}`;

/** The text to the left of a cell, or above it. */
function labelOf({ cells }: SourceSheet, at: string): string {
  const { row, column } = cellPosition(at);
  const text = (r: number, c: number): string | undefined => {
    const cell = cells.get(address(r, c));
    return typeof cell?.value === 'string' && cell.value.trim().length >= SHORTEST_LABEL && cell.formula === undefined
      ? cellText(cell.value)
      : undefined;
  };
  for (let c = column - 1; c >= 0; c--) {
    const found = text(row, c);
    if (found !== undefined) return found;
  }
  for (let r = row - 1; r >= 0; r--) {
    const found = text(r, column);
    if (found !== undefined) return found;
  }
  return '';
}

function measured(sheet: string, { cells }: SourceSheet): Measured[] {
  const rows = lastPlace(cells.keys()).row + 1;
  return Array.from({ length: Math.max(0, rows - HEAD_ROW) }, (_, i) => i + HEAD_ROW).flatMap(r => {
    const value = (c: number): string => cellText(String(cells.get(address(r, c))?.value ?? ''));
    if (value(COLUMN.result) === '') return [];
    const { name, nominal, lower, upper, method, result, judged, remark } = COLUMN;
    return [
      {
        sheet,
        at: address(r, result),
        characteristic: value(name),
        requirement: value(nominal),
        lower: value(lower),
        upper: value(upper),
        method: value(method),
        result: value(result),
        judged: value(judged),
        remark: value(remark),
      },
    ];
  });
}
