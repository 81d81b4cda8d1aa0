// Calls of one shape as a table: labels, words and sources once, then one row a call, one column a step.
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import type { Cell } from '../../core/kinds';
import { address, columnName, fixedCell } from '../../sheet/addresses';
import { ROW, RowForms } from '../../sheet/row-forms';
import type { PageWords } from '../words/words';
import { type StepSaid, stepWords } from '../words/step-words';
import { assertRoom } from './room';
import { stepCell } from './step-cell';
import { type BlockStep, inPlace, isTooLongInRow, type Placed, type StepBlock } from './step-block';

/** Above the rows of a table: what it is, and of each column label, unit, words, source, and the value that all rows share. */
const LINES = 4;
const ABOVE = LINES + 2;
const SHARED = ABOVE - 1;
/** More texts than this are not told apart above a column. */
const MOST_WORDS = 3;

interface StepColumn {
  readonly step: BlockStep;
  /** Its value where it is the same constant for all rows. */
  readonly shared?: Cell;
  readonly words: Set<string>;
  readonly sources: Set<string>;
}

/** Where a call stands: `I2`, and what is called. */
export interface TableCall {
  readonly sheet: string;
  readonly at: string;
  readonly what: string;
  /** The text beside it. */
  readonly label: string | undefined;
}

class StepTable {
  private readonly columns: StepColumn[] = [];
  private readonly places = new Map<string, number>();
  private readonly cells: PlanCell[] = [];
  private readonly forms = new RowForms();
  private readonly first: TableCall;
  private last: TableCall;
  private count = 0;

  constructor(
    private readonly sheet: string,
    private readonly top: number,
    private readonly room: number,
    call: TableCall,
    private readonly words: PageWords['stepRows'],
    private readonly said: StepSaid,
  ) {
    this.first = this.last = call;
  }

  get width(): number {
    return this.columns.length + 1;
  }

  /** Undefined where there is no row left, the results would not stand side by side, or a formula is too long: nothing is written. */
  write(call: TableCall, { steps }: StepBlock): Placed | undefined {
    if (this.count === this.room) return undefined;
    const r = this.top + ABOVE + this.count;
    const added: (readonly [key: string, column: StepColumn])[] = [];
    const seen = new Map<string, number>();
    const columns = steps.map(step => {
      const key = this.keyOf(step, seen);
      const known = this.places.get(key);
      if (known !== undefined) return known;
      added.push([key, { step, ...sharedOf(step, key), words: new Set(), sources: new Set() }]);
      return this.columns.length + added.length - 1;
    });
    const columnAt = (c: number): StepColumn => this.columns[c] ?? (added[c - this.columns.length] as readonly [string, StepColumn])[1];
    const results = columns.filter((_, i) => steps[i]?.role === 'result');
    if (results.some((c, i) => i > 0 && c !== (results[i - 1] ?? 0) + 1)) return undefined;
    const rowOf = (c: number): number => (columnAt(c).shared === undefined ? r : this.top + SHARED);
    const here = (step: number): string => {
      const c = columns[step] ?? 0;
      return `$${columnName(c + 1)}${columnAt(c).shared === undefined ? ROW : `$${rowOf(c) + 1}`}`;
    };
    const formulas = steps.map(({ formula }) => (formula === undefined ? undefined : inPlace(`=${formula}`, here)));
    if (formulas.some(form => form !== undefined && isTooLongInRow(form, r))) return undefined;
    for (const [key, column] of added) {
      this.places.set(key, this.columns.length);
      this.columns.push(column);
    }
    this.cells.push({ at: address(r, 0), role: 'label', value: call.label === undefined ? call.at : `${call.at}, ${call.label}` });
    steps.forEach(({ value, role, isInput, words, source }, i) => {
      const [c, formula] = [columns[i] ?? 0, formulas[i]];
      const column = columnAt(c);
      if (words !== undefined && words !== '') column.words.add(words);
      if (source !== undefined && source !== '') column.sources.add(source);
      if (column.shared !== undefined) return;
      const at = address(r, c + 1);
      if (formula !== undefined) this.cells.push(stepCell(at, role, this.forms.cell(formula, r), value));
      else if (value !== undefined) this.cells.push({ at, role: isInput === true ? 'input' : role, value });
    });
    this.last = call;
    this.count += 1;
    return text => inPlace(text, step => fixedCell(this.sheet, rowOf(columns[step] ?? 0), (columns[step] ?? 0) + 1));
  }

  /** Steps of the same name and unit share a column; a constant of the formula has one for all rows while it is the same. */
  private keyOf({ label, unit = '', role, isInput, value }: BlockStep, seen: Map<string, number>): string {
    const name = `${role} ${label} ${unit}`;
    const nth = (seen.get(name) ?? 0) + 1;
    seen.set(name, nth);
    const key = `${name} ${nth}`;
    if (isInput !== true || value === undefined) return key;
    const shared = `${key}${FOR_ALL}`;
    const c = this.places.get(shared);
    return c === undefined ? (this.count === 0 ? shared : key) : this.columns[c]?.shared === value ? shared : key;
  }

  head(): PlanCell[] {
    const { sheet, at, what } = this.first;
    const cells: PlanCell[] = [
      {
        at: address(this.top, 0),
        role: 'heading',
        value: `${sheet} ${at}${this.count > 1 ? ` ${this.words.to} ${this.last.at}` : ''}: ${what}`,
      },
      { at: address(this.top + 1, 0), role: 'header', value: this.words.cell },
      ...this.words.lines.map((line, i): PlanCell => ({ at: address(this.top + 2 + i, 0), role: 'note', value: line })),
    ];
    this.columns.forEach(({ step: { label, unit }, shared, words, sources }, c) => {
      const put = (line: number, cell: Omit<PlanCell, 'at'>): void => void cells.push({ at: address(this.top + line, c + 1), ...cell });
      put(1, { role: 'header', value: stepWords(label, this.said) });
      if (unit !== undefined && unit !== '') put(2, { role: 'unit', value: unit });
      if (words.size > 0) put(3, { role: 'note', value: joined(new Set([...words].map(one => stepWords(one, this.said)))) });
      if (sources.size > 0) put(4, { role: 'note', value: joined(sources) });
      if (shared !== undefined) put(SHARED, { role: 'input', value: shared });
    });
    return cells;
  }

  body(): readonly PlanCell[] {
    return this.cells;
  }
}

const FOR_ALL = ' for all';

const sharedOf = ({ value }: BlockStep, key: string): { readonly shared?: Cell } =>
  key.endsWith(FOR_ALL) && value !== undefined ? { shared: value } : {};

const joined = (texts: ReadonlySet<string>): string =>
  `${[...texts].slice(0, MOST_WORDS).join('; ')}${texts.size > MOST_WORDS ? ' …' : ''}`;

export class StepTables {
  private readonly tables = new Map<string, StepTable>();
  private next = 3;

  constructor(
    readonly name: string,
    private readonly words: PageWords['stepRows'],
    private readonly said: StepSaid,
  ) {}

  get isEmpty(): boolean {
    return this.tables.size === 0;
  }

  /** @param count so many calls have this shape at most. */
  write(shape: string, count: number, call: TableCall, block: StepBlock): Placed | undefined {
    const known = this.tables.get(shape);
    if (known !== undefined) return known.write(call, block);
    const end = this.next + ABOVE + count + 1;
    assertRoom(this.name, end, 0);
    const table = new StepTable(this.name, this.next, count, call, this.words, this.said);
    const placed = table.write(call, block);
    if (placed === undefined) return undefined;
    this.tables.set(shape, table);
    this.next = end;
    return placed;
  }

  plan(): SheetPlan {
    const tables = [...this.tables.values()];
    const width = tables.reduce((most, table) => Math.max(most, table.width), 0);
    assertRoom(this.name, this.next, width);
    return {
      name: this.name,
      widths: [30, ...Array.from({ length: width - 1 }, () => 18)],
      frozenRows: 1,
      cells: [
        { at: 'A1', role: 'title', value: this.words.title },
        { at: 'A2', role: 'note', value: this.words.note },
        ...tables.flatMap(table => [...table.head(), ...table.body()]),
      ],
      print: { landscape: true },
    };
  }
}
