// The standards' tables that a hand-over needs, on one sheet, each with edition and how it is held.
import type { Table } from '../../standards/table';
import { Refused } from '../../core/refuse';
import { OWN } from '../../core/screw/own';
import { leadingSize, type Size } from '../../core/screw/size';
import { columnOf, MM } from '../../core/table';
import { number } from '../../plain/spreadsheet';
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import { ENGLISH, type PageWords } from '../words/english';
import { address, fixedArea, fixedCell } from '../../sheet/addresses';

interface PlacedTable {
  readonly table: Table;
  /** Row of the first value, counted from 0. */
  readonly top: number;
}

export class DataSheet {
  private readonly cells: PlanCell[];
  private readonly placed = new Map<string, PlacedTable>();
  private readonly lists = new Map<string, string>();
  private next = 2;

  constructor(
    readonly name: string = ENGLISH.sheets.data,
    private readonly words: PageWords['data'] = ENGLISH.data,
  ) {
    this.cells = [{ at: 'A1', role: 'title', value: words.title }];
  }

  get isEmpty(): boolean {
    return this.cells.length === 1;
  }

  /** The tables that were asked for. */
  get tables(): readonly Table[] {
    return [...this.placed.values()].map(({ table }) => table);
  }

  /** Range of words to choose from. */
  choices(title: string, words: readonly string[]): string {
    const known = this.lists.get(words.join('|'));
    if (known !== undefined) return known;
    const top = this.next + 1;
    this.cells.push(
      { at: address(this.next, 0), role: 'heading', value: this.words.choices(title) },
      ...words.map((word, i): PlanCell => ({ at: address(top + i, 0), role: 'label', value: word })),
    );
    this.next = top + words.length + 1;
    const range = fixedArea({ sheet: this.name, top, left: 0, bottom: top + words.length - 1, right: 0 });
    this.lists.set(words.join('|'), range);
    return range;
  }

  /** Range of the row names of a table: `Data!$A$5:$A$14`. */
  names(table: Table): string {
    const { top } = this.place(table);
    return fixedArea({ sheet: this.name, top, left: 0, bottom: top + table.rows.length - 1, right: 0 });
  }

  /** Range of one column, in mm where it is a length. */
  column(table: Table, key: string): string {
    const { top } = this.place(table);
    const left = 1 + table.columns.findIndex(column => column.key === key);
    return fixedArea({ sheet: this.name, top, left, bottom: top + table.rows.length - 1, right: left });
  }

  /** `INDEX(column,MATCH(row name,names,0))`; in a table of one row some programs take its cell for no range. */
  lookup(table: Table, key: string, row: string): string {
    if (table.rows.length === 1) {
      const [name, value] = [this.names(table), this.column(table, key)].map(range => range.replace(/:.*/, ''));
      return `IF(${row}=${name},${value},NA())`;
    }
    return this.inRow(table, key, this.rowOf(table, row));
  }

  rowOf(table: Table, row: string): string {
    return `MATCH(${row},${this.names(table)},0)`;
  }

  /** By the number of the row, which `rowOf` gives. */
  inRow(table: Table, key: string, rowNumber: string): string {
    return `INDEX(${this.column(table, key)},${rowNumber})`;
  }

  /** The row of an "over … up to" table for a size; an error outside the table. The first band also holds its own lower limit. */
  band(table: Table, key: string, size: string): string {
    const [over, upTo] = [this.column(table, 'over'), this.column(table, 'upTo')];
    return `INDEX(${this.column(table, key)},IF(${size}<MIN(${over})-1E-9,NA(),1+SUMPRODUCT(0+(${upTo}+1E-9<${size}))))`;
  }

  /** What does not follow the numbers of an own screw holds while they are as they were sent. */
  asSent({ own }: Partial<Size> = {}): string[] {
    return [own?.table, own?.lengths].flatMap(table => {
      if (table === undefined) return [];
      const { top } = this.place(table);
      return table.rows.flatMap(([, ...values], r) =>
        values.map((value, c) => `${fixedCell(this.name, top + r, c + 1)}=${number(value ?? 0).text}`),
      );
    });
  }

  private place(table: Table): PlacedTable {
    const known = this.placed.get(table.standard + table.subject);
    if (known !== undefined) return known;
    const { said } = this.words;
    const at = (column: number): string => address(this.next, column);
    this.cells.push({ at: at(0), role: 'heading', value: `${said.table(table.standard)}, ${said.table(table.subject)}` });
    const notes = table.columns.flatMap(({ title, note }) => (note === undefined ? [] : [`${said.column(title)}: ${said.note(note)}`]));
    for (const line of [`${said.table(table.table)}; ${this.words.edition(said.table(table.edition))}`, ...new Set(notes)]) {
      this.next += 1;
      this.cells.push({ at: at(0), role: 'note', value: line });
    }
    this.next += 1;
    const titles = table.columns.map(({ title, limit }) =>
      [said.column(title), ...(limit === undefined ? [] : [said.limit(limit)])].join(', '),
    );
    [this.words.row, ...titles].forEach((value, c) => this.cells.push({ at: at(c), role: 'header', value }));
    this.next += 1;
    [this.words.held, ...table.columns.map(({ held }) => said.held(held))].forEach((value, c) =>
      this.cells.push({ at: at(c), role: 'note', value }),
    );
    const top = this.next + 1;
    // a row that is looked up by a number must be one: no program takes the text "12" for it
    const isByNumber = table.rows.every(([name]) => Number.isFinite(Number(name)));
    table.rows.forEach(([name, ...values], r) => {
      this.cells.push({ at: address(top + r, 0), role: 'label', value: isByNumber ? Number(name) : name });
      values.forEach((value, c) => {
        const factor = MM[columnOf(table, table.columns[c]?.key ?? '')?.unit ?? ''] ?? 1;
        // a gap that were an empty cell would be read as 0
        const role = table.standard === OWN ? 'input' : 'text';
        this.cells.push({ at: address(top + r, c + 1), role, value: value === null ? '–' : value * factor });
      });
    });
    const placed = { table, top };
    this.placed.set(table.standard + table.subject, placed);
    this.next = top + table.rows.length + 1;
    return placed;
  }

  plan(): SheetPlan {
    return {
      name: this.name,
      widths: [22, ...Array.from({ length: 14 }, () => 16)],
      frozenRows: 1,
      cells: this.cells,
      print: { landscape: true },
    };
  }
}

/** The own screw that a text names. */
export function ownIn(text: unknown): Size | undefined {
  try {
    const size = typeof text === 'string' ? leadingSize(text)?.size : undefined;
    return size?.own === undefined ? undefined : size;
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}
