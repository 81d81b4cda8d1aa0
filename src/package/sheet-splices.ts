// The edits of a worksheet: cells that change, cells and rows that it has not had, and members of a shared formula whose
// first cell changes.
import { address, cellPosition, holds, type Place, type Rectangle, rectangleOf } from '../sheet/addresses';
import { type CellChange, cellSplices, newCell, writtenFormula } from './cell-splices';
import type { CellLook } from './cell-styles';
import { type ScannedCell, type ScannedRow, scanSheet } from './scan';
import { movable, type MovableFormula } from './shared-formula';
import { attribute, isSet, nameOf, type Splice, type StartTag, unclosed, withAttributes } from './xml';

interface PlacedChange {
  readonly at: string;
  readonly column: number;
  readonly change: CellChange;
}

/** The number of a format that is like another one but for its look. */
export type LookOf = (base: number, look: CellLook) => number;

interface ColumnStyle {
  readonly first: number;
  readonly last: number;
  readonly style: string;
}

/** Changes by row, each row from left to right. */
function byRow(changes: ReadonlyMap<string, CellChange>): Map<number, PlacedChange[]> {
  const rows = new Map<number, PlacedChange[]>();
  for (const [at, change] of changes) {
    if (!/^[A-Z]{1,3}[1-9]\d{0,6}$/.test(at)) throw new RangeError(`"${at}" is no cell`);
    const { row, column } = cellPosition(at);
    const placed = rows.get(row) ?? [];
    placed.push({ at, column, change });
    rows.set(row, placed);
  }
  for (const placed of rows.values()) placed.sort((a, b) => a.column - b.column);
  return new Map([...rows].sort(([a], [b]) => a - b));
}

class SheetEdit {
  readonly splices: Splice[] = [];
  private readonly open: Map<number, PlacedChange[]>;
  private readonly columns: ColumnStyle[] = [];
  /** By number, a shared formula whose first cell goes or changes. */
  private readonly orphaned = new Map<string, MovableFormula>();
  private readonly areas: Rectangle[] = [];
  private readonly added: Place[] = [];
  private dimension: StartTag | undefined;
  /** Cells to put into the row that is read, before one of its cells. */
  private before: { readonly from: number; readonly placed: PlacedChange }[] = [];

  constructor(
    private readonly source: string,
    private readonly changes: ReadonlyMap<string, CellChange>,
    private readonly lookOf: LookOf,
  ) {
    this.open = byRow(changes);
  }

  private start({ from, to }: StartTag): string {
    return this.source.slice(from, to);
  }

  other(tag: StartTag): void {
    if (tag.local === 'dimension') this.dimension = tag;
    const style = tag.local === 'col' ? attribute(tag, 'style') : undefined;
    if (style !== undefined)
      this.columns.push({ first: Number(attribute(tag, 'min')) - 1, last: Number(attribute(tag, 'max')) - 1, style });
  }

  cell(cell: ScannedCell): void {
    const left = this.open.get(cell.row) ?? [];
    for (let next = left[0]; next !== undefined && next.column < cell.column; next = left[0]) {
      this.before.push({ from: cell.tag.from, placed: next });
      left.shift();
    }
    const at = address(cell.row, cell.column);
    const change = left[0]?.column === cell.column ? left.shift()?.change : undefined;
    const keepsFormula = change === undefined || change.formula === 'kept';
    this.shared(cell, at, keepsFormula);
    const area = cell.formula && attribute(cell.formula.tag, 't') === 'array' ? attribute(cell.formula.tag, 'ref') : undefined;
    if (area !== undefined && (keepsFormula || (typeof change.formula === 'object' && change.formula.keepsArea === true)))
      this.areas.push(rectangleOf(area));
    if (change !== undefined)
      this.splices.push(...cellSplices(this.source, cell, at, change, this.marked(attribute(cell.tag, 's'), change)));
  }

  /** A member whose first cell is another from now on gets the formula as its own. */
  private shared({ tag, row, column, formula }: ScannedCell, at: string, keepsFormula: boolean): void {
    const index = formula && attribute(formula.tag, 't') === 'shared' ? attribute(formula.tag, 'si') : undefined;
    if (formula === undefined || index === undefined) return;
    const orphaned = this.orphaned.get(index);
    if (formula.text !== '' && (orphaned === undefined || attribute(formula.tag, 'ref') !== undefined)) {
      if (keepsFormula) this.orphaned.delete(index);
      else this.orphaned.set(index, movable(formula.text, at));
    } else if (orphaned !== undefined && keepsFormula)
      this.splices.push({
        from: formula.tag.from,
        to: formula.end,
        text: writtenFormula(formula.text || orphaned({ row, column }), tag.prefix, at),
      });
  }

  /** The format of a cell after a change, where it is another. */
  private marked(style: string | undefined, { mark }: CellChange): string | undefined {
    const isMarked = mark?.numberFormat !== undefined || mark?.isFixed;
    return mark !== undefined && isMarked ? String(this.lookOf(Number(style ?? 0), mark)) : undefined;
  }

  private written(row: number, { at, column, change }: PlacedChange, prefix: string, rowStyle?: string): string {
    this.added.push({ row, column });
    const style = rowStyle ?? this.columns.find(({ first, last }) => column >= first && column <= last)?.style;
    return newCell(at, change, prefix, this.marked(style, change) ?? style);
  }

  /** Rows up to one, that the sheet has not had. */
  private newRows(upTo: number, prefix: string): string {
    const p = prefix === '' ? '' : `${prefix}:`;
    let written = '';
    for (const [row, cells] of this.open) {
      if (row >= upTo) break;
      this.open.delete(row);
      written += `<${p}row r="${row + 1}">${cells.map(placed => this.written(row, placed, prefix)).join('')}</${p}row>`;
    }
    return written;
  }

  row({ tag, row, inner, end }: ScannedRow): void {
    const missing = [...this.before, ...(this.open.get(row) ?? []).map(placed => ({ from: inner, placed }))];
    this.before = [];
    this.open.delete(row);
    const rows = this.open.size === 0 ? '' : this.newRows(row, tag.prefix);
    if (missing.length === 0 && rows === '') return;
    const style = isSet(tag, 'customFormat') ? attribute(tag, 's') : undefined;
    const start = missing.length === 0 ? this.start(tag) : withAttributes(this.start(tag), { spans: undefined });
    const cells = missing.map(({ from, placed }) => ({ from, to: from, text: this.written(row, placed, tag.prefix, style) }));
    if (tag.isEmpty && cells.length > 0) {
      const content = cells.map(({ text }) => text).join('');
      this.splices.push({ from: tag.from, to: end, text: `${rows}${unclosed(start)}${content}</${nameOf(tag)}>` });
    } else this.splices.push({ from: tag.from, to: tag.to, text: rows + start }, ...cells);
  }

  data(tag: StartTag, inner: number, end: number): void {
    const rows = this.newRows(Infinity, tag.prefix);
    if (rows === '') return;
    if (tag.isEmpty) this.splices.push({ from: tag.from, to: end, text: `${unclosed(this.start(tag))}${rows}</${nameOf(tag)}>` });
    else this.splices.push({ from: inner, to: inner, text: rows });
  }

  done(): Splice[] {
    for (const area of this.areas) {
      for (const [at, { formula }] of this.changes) {
        const place = cellPosition(at);
        const isFirst = place.row === area.top && place.column === area.left;
        if (formula !== 'kept' && typeof formula === 'object' && !isFirst && holds(area, place))
          throw new RangeError(`${at}: a formula elsewhere fills this cell, so it cannot have its own`);
      }
    }
    this.measure();
    return this.splices.filter(({ from, to, text }) => this.source.slice(from, to) !== text);
  }

  /** The sheet says how far it reaches. */
  private measure(): void {
    const reach = this.dimension && attribute(this.dimension, 'ref');
    if (this.dimension === undefined || reach === undefined || !/^[A-Z]{1,3}\d{1,7}(:[A-Z]{1,3}\d{1,7})?$/.test(reach)) return;
    const whole = this.added.reduce(
      (r, { row, column }) => ({
        top: Math.min(r.top, row),
        left: Math.min(r.left, column),
        bottom: Math.max(r.bottom, row),
        right: Math.max(r.right, column),
      }),
      rectangleOf(reach),
    );
    const ref = `${address(whole.top, whole.left)}:${address(whole.bottom, whole.right)}`;
    if (this.added.some(place => !holds(rectangleOf(reach), place)))
      this.splices.push({ from: this.dimension.from, to: this.dimension.to, text: withAttributes(this.start(this.dimension), { ref }) });
  }
}

/** What changes in the text of a sheet when cells do; values by address. */
export function sheetSplices(source: string, part: string, changes: ReadonlyMap<string, CellChange>, lookOf: LookOf): Splice[] {
  const edit = new SheetEdit(source, changes, lookOf);
  scanSheet(source, part, {
    cell: cell => edit.cell(cell),
    row: row => edit.row(row),
    data: (tag, inner, end) => edit.data(tag, inner, end),
    other: tag => edit.other(tag),
  });
  return edit.done();
}
