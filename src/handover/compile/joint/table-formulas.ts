// What a row reads out of the tables of the Data sheet: the screw, what hangs on its size, the tolerance of its length.
import type { Cell } from '../../../core/kinds';
import { ownReading } from '../../../core/screw/own';
import { SIZE_READINGS, type Screw, type ScrewSize } from '../../../core/screw/thread';
import type { Reading } from '../../../standards/table';
import type { AskedVariant } from './asked-variant';
import type { Deviation } from '../../../core/read/deviation';
import type { Input, Made } from '../../../joint/graph';
import { INPUTS } from '../../../joint/inputs';
import { lengthDeviation, lengthTable } from '../../../core/screw/length';
import { atom, number, type Ref, type Scalar, text } from '../../../plain/spreadsheet';
import type { DataSheet } from '../data-sheet';
import { choicesOf, quoted } from '../inputs';
import { lengthToleranceFormulas } from '../length-tolerance';
import { type Reader, readingsRef } from '../lookups';
import type { RowGuards } from './row-guards';
import type { RowInput } from './row-input';
import type { OfRow, WriteCell } from './row-print';
import { NONE, textOf } from './row-refs';
import { orNothing } from './variant-inputs';

/** The row as its tables see it. */
export interface RowValues {
  readonly variant: AskedVariant;
  readonly guards: RowGuards;
  ref(name: string): Ref;
  /** The cell of a scalar, or undefined if there is no value. */
  cellOf(name: string): string | undefined;
  isKnown(name: string): boolean;
  remember(name: string, ref: Ref): void;
}

export class TableFormulas {
  constructor(
    private readonly row: RowValues,
    private readonly given: ReadonlyMap<string, RowInput>,
    private readonly data: DataSheet,
    private readonly put: WriteCell,
  ) {}

  /** Whether the length is one that is held, as 1 or 0. */
  lengthInList(): Ref {
    // inch lengths are converted: not every program takes 19.05 for 0.75·25.4
    const away = `(${this.data.column(lengthTable(this.row.variant.value('screw').size), 'length')}-${this.row.cellOf('length') ?? '0'})`;
    return atom(`IF(${this.hasScrew()},IF(SUMPRODUCT(0+(${away}*${away}<1E-12))>0,1,0),${NONE})`);
  }

  private readonly reader: Reader = {
    size: row => this.sizeKey(row),
    cell: () => NONE,
    lookup: (table, key, row) => this.data.lookup(table, key, row),
    band: (table, key, size) => this.data.band(table, key, size),
  };

  /** The row of a table in a column of its own, for all that is read there. */
  private readonly inRows: Reader = {
    ...this.reader,
    lookup: (table, key, row, name) => {
      const number = 1 + table.rows.findIndex(([one]) => one === name);
      if (table.rows.length === 1 || number === 0) return this.data.lookup(table, key, row);
      const title = `row in ${table.standard}, ${table.subject}`;
      const known = this.rows.get(title);
      if (known !== undefined && known.row !== row) return this.data.lookup(table, key, row);
      const words = `where the size stands in the table on ${this.data.name}`;
      const cell = known?.cell ?? this.put(title, words, this.data.rowOf(table, row), () => number);
      this.rows.set(title, { row, cell });
      return this.data.inRow(table, key, cell);
    },
  };
  private readonly rows = new Map<string, { readonly row: string; readonly cell: string }>();

  /** Out of the tables, by the words of a choice where they matter. */
  readings({ reads, args }: Made & { readonly by: 'readings' }): Ref | undefined {
    const values = args.map(arg => this.row.variant.arg(arg));
    const formula = (at: number, word: string): Scalar =>
      readingsRef(this.reader, reads(...(values.map((value, i) => (i === at ? word : value)) as never[])));
    for (const arg of args) if (typeof arg === 'string' && arg !== 'screw') this.row.ref(arg);
    const at = args.findIndex(arg => typeof arg === 'string' && typeof this.row.variant.value(arg) === 'string');
    if (at < 0) return formula(at, '');
    const cell = this.row.cellOf(args[at] as string) ?? '""';
    const words = choicesOf((INPUTS.get(args[at] as string) as Input).param);
    const [first = '', ...others] = words.map(word => formula(at, word).text);
    const isOne = others.every(other => other === first);
    return atom(
      isOne
        ? `IF(${cell}<>"",${first},${NONE})`
        : words.reduceRight((otherwise, word) => `IF(${cell}=${quoted(word)},${formula(at, word).text},${otherwise})`, NONE),
    );
  }

  hasScrew(): string {
    const screw = this.row.ref('screw') as { readonly parts: Record<ScrewSize, Ref> };
    return `ISNUMBER(${textOf(screw.parts.nominalMm)})`;
  }

  /** Whether the end is one of the words, which a table that does not ask for it must know too. */
  private hasEnd(): string {
    return `${this.row.cellOf('end')}<>""`;
  }

  lengthTolerance(): Ref {
    const { variant } = this.row;
    const { size } = variant.value('screw');
    const held: OfRow<Deviation | undefined> = of =>
      orNothing(() => lengthDeviation(size, of.variant.value('length'), of.variant.value('end')));
    const isHeld = variant.questions.ask('length held', row => held(row) !== undefined);
    const formulas = lengthToleranceFormulas(this.data, size, this.row.cellOf('length') ?? '0', this.row.cellOf('end') ?? '""');
    // each family has its own table: without a screw of this one there is no tolerance
    const inFamily = `AND(${this.hasScrew()},${this.hasEnd()})`;
    const side = (title: string, formula: string, worth: OfRow<number | undefined>): Ref =>
      atom(
        this.put(`${title} (mm)`, `from the table on ${this.data.name}`, `IF(${inFamily},${formula},${NONE})`, worth),
        isHeld ? NaN : undefined,
      );
    return {
      parts: {
        upperMm: side('length tolerance, upper', formulas.upper, row => held(row)?.upperMm),
        lowerMm: side('length tolerance, lower', formulas.lower, row => held(row)?.lowerMm),
      },
    };
  }

  /** The cell with the screw where the table is entered with its text; else the row's name, and the screw is fixed. */
  private sizeKey(row: string): string {
    const screw = this.given.get('screw');
    if (!this.row.isKnown('screw text')) this.row.ref('screw');
    if (screw === undefined) return `"${row}"`;
    if (typeof screw.typed === 'string' && screw.typed.toLowerCase() === row.toLowerCase())
      return this.row.cellOf('screw text') ?? `"${row}"`;
    this.row.guards.addInput(screw);
    return `"${row}"`;
  }

  screw(screw: Screw, here: RowInput | undefined): Ref {
    this.row.remember(
      'screw text',
      here === undefined
        ? text(screw.size.text)
        : atom(
            this.put('screw', 'size', here.cell, ({ given }) => given.get('screw')?.typed as Cell),
            here.typed as Cell,
          ),
    );
    const read = (title: string, readings: readonly Reading[], worth: number): Ref =>
      atom(
        this.put(title, `from the table on ${this.data.name}`, readingsRef(this.inRows, readings).text, () => worth),
        worth,
      );
    // what an own screw leaves out has no cell
    const column = (title: string, part: ScrewSize): Ref =>
      orNothing(() => read(`${title} (mm)`, SIZE_READINGS[part](screw.size), screw[part])) ?? atom(NONE);
    const { own } = screw.size;
    return {
      parts: {
        nominalMm: column('screw nominal', 'nominalMm'),
        majorMaxMm: column('screw major, max', 'majorMaxMm'),
        majorMinMm: column('screw major, min', 'majorMinMm'),
        rootMaxMm: column('screw root, max', 'rootMaxMm'),
        pitchMm: column('pitch', 'pitchMm'),
        flankDeg: (own && orNothing(() => read('flank (°)', [ownReading(own, 'flank')], screw.flankDeg))) ?? number(screw.flankDeg),
      },
    };
  }
}
