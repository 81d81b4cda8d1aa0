// One variant as formulas: every input and node of the joint in its column, each written from its plain form.
import { withUnit } from '../../../core/call';
import type { Card, Param } from '../../../core/card';
import type { Cell } from '../../../core/kinds';
import { isBlank } from '../../../core/read/params';
import type { Deviation } from '../../../core/read/deviation';
import { Refused } from '../../../core/refuse';
import { lengthTable } from '../../../core/screw/length';
import { SIZE_READINGS, type Screw, type ScrewSize } from '../../../core/screw/thread';
import { cardOf, unitOf, type Variant } from '../../../joint/evaluate';
import { type Arg, type Input, type Made, namesIn, type Node, NotApplicable } from '../../../joint/graph';
import { INPUTS, isWithin } from '../../../joint/inputs';
import { NODES } from '../../../joint/nodes';
import { formOfDefault, formOfNode } from '../../../plain/forms';
import { known, phrase, print } from '../../../plain/print';
import { atom, negative, number, operand, type Ref, type Scalar, spreadsheetRef, text } from '../../../plain/spreadsheet';
import { type Form, visit } from '../../../plain/tree';
import type { DataSheet } from '../data-sheet';
import { allOf, choiceFormula, numberFormula, quoted, sameAs, choicesOf } from '../inputs';
import { lengthToleranceFormulas } from '../length-tolerance';
import { limitFormulas } from '../limits';
import { type Reader, readingsRef } from '../lookups';
import type { Known } from '../../../sheet/workbook-values';

export interface RowInput {
  readonly cell: string;
  /** As the cell has it on the hand-over: a text with units is a number there. */
  readonly typed: Known;
}

/** Puts a formula or value under a title and answers its cell. */
export type WriteCell = (title: string, words: string, formula: string | undefined, value: Cell | undefined) => string;

export class JointRow {
  private readonly done = new Map<string, Ref | Refused>();
  /** What the formulas of this row do not follow: they hold while these conditions do. */
  private readonly fixed = new Set<string>();
  private readonly sent = new Map<string, string>();

  constructor(
    readonly variant: Variant,
    private readonly given: ReadonlyMap<string, RowInput>,
    private readonly data: DataSheet,
    private readonly put: WriteCell,
  ) {}

  /** The cell of a scalar, or nothing where there is no value. */
  cellOf(name: string): string | undefined {
    try {
      const ref = this.ref(name);
      return 'text' in ref ? ref.text : undefined;
    } catch (fault) {
      if (fault instanceof Refused) return undefined;
      throw fault;
    }
  }

  putState(title: string, words: string, formula: string, value: Cell): string {
    return this.put(title, words, formula, value);
  }

  /** The row holds only while this condition does. */
  guardBy(condition: string): void {
    this.fixed.add(condition);
  }

  /** Cell that says whether everything that the row does not follow is as it was sent. Nothing where it follows all. */
  guardCell(): string | undefined {
    if (this.fixed.size === 0) return undefined;
    return this.put(
      'fixed inputs as sent',
      'the formulas of this row hold for these texts',
      `IFERROR(${allOf([...this.fixed])},FALSE)`,
      true,
    );
  }

  /** Cell that says whether the inputs of a value are as they were sent: what has no formula holds only then. Without a name, all inputs. */
  unchangedCell(name?: string): string {
    const needed = name === undefined ? undefined : this.inputsOf(name);
    const conditions = [...this.given].flatMap(([input, { cell, typed }]) => {
      if (needed !== undefined && !needed.has(input)) return [];
      // where a blank is refused, a zero is another thing
      const isZero = typed === 0 && INPUTS.get(input)?.param.blank === 'explicit';
      return [...(isZero ? [`ISNUMBER(${cell})`] : []), ...(sameAs(cell, typed) ?? [])];
    });
    if (conditions.length === 0) return 'TRUE';
    const title = name === undefined ? 'all inputs as sent' : `inputs of ${name} as sent`;
    const cell =
      this.sent.get(title) ??
      this.put(title, 'a value without a formula holds for these inputs', `IFERROR(${allOf(conditions)},FALSE)`, true);
    this.sent.set(title, cell);
    return cell;
  }

  /** The given inputs that a value is made of. */
  private inputsOf(name: string, found: Set<string> = new Set()): ReadonlySet<string> {
    if (found.has(name)) return found;
    found.add(name);
    const here = this.given.get(name);
    const fallback = here === undefined || takesDefault(here.typed) ? INPUTS.get(name)?.fallback : undefined;
    const made = NODES.get(name) ?? (fallback !== undefined && 'by' in fallback ? fallback : undefined);
    for (const arg of [...(NODES.get(name)?.where ?? []), ...(made?.args.flatMap(namesIn) ?? [])]) this.inputsOf(arg, found);
    return found;
  }

  private ref(name: string): Ref {
    const known_ = this.done.get(name);
    if (known_ instanceof Refused) throw known_;
    if (known_ !== undefined) return known_;
    try {
      const ref = NODES.has(name) ? this.node(name) : this.input(name);
      this.done.set(name, ref);
      return ref;
    } catch (fault) {
      if (fault instanceof Refused) this.done.set(name, fault);
      throw fault;
    }
  }

  private arg(arg: Arg): Ref {
    if (typeof arg === 'string') return this.ref(arg);
    // where the formula does not look at it, it may well have no value
    if ('only' in arg) return atom(this.cellOf(arg.only) ?? NONE);
    if ('of' in arg) return this.variant.outcome(arg.of) instanceof NotApplicable ? constant(arg.orElse) : this.ref(arg.of);
    return constant(arg.is);
  }

  /** A scalar in its column; a list or record stays what it is made of. */
  private placed(name: string, ref: Ref, words: string): Ref {
    if (!('text' in ref)) return ref;
    const value = this.variant.value(name) as Cell;
    const isFixed = ref.text === String(value) || ref.text === `"${String(value)}"`;
    return atom(this.put(withUnit(name, unitOf(name)), words, isFixed ? undefined : ref.text, value), value);
  }

  /** A value without a formula. What comes from one input alone is fixed with that; anything else by all inputs. */
  private value(name: string, words: string, source: string | undefined): Ref {
    const value = this.variant.value(name);
    if (typeof value === 'object' && value !== null) return literal(value);
    if (source !== undefined) this.ref(source);
    if (typeof value === 'boolean') return atom(value ? 'TRUE' : 'FALSE', value);
    const formula =
      source !== undefined
        ? undefined
        : `IF(${this.unchangedCell(name)},${typeof value === 'string' ? quoted(value) : number(Number(value)).text},${NONE})`;
    return atom(this.put(withUnit(name, unitOf(name)), `${words}; value, not live`, formula, value as Cell), value as Cell);
  }

  private node(name: string): Ref {
    const node = NODES.get(name) as Node;
    // what this variant has no value for has no formula either
    this.variant.value(name);
    const conditions = (node.where ?? []).flatMap(needed => this.condition(needed));
    const ref = this.made(name, node);
    return ref === undefined
      ? this.value(name, node.meaning, onlyInput(node))
      : this.placed(name, within(conditions, ref), this.words(name, node));
  }

  /** Where it does not hold, what hangs on it has no value. */
  private condition(name: string): string[] {
    const ref = this.ref(name);
    if (!('text' in ref)) return [];
    if (NODES.get(name)?.otherwise === undefined) return typeof ref.value === 'number' ? [`ISNUMBER(${ref.text})`] : [];
    return ref.text === 'TRUE' ? [] : [ref.text];
  }

  /** What a formula that is printed as it stands says in the names of the joint. */
  private words(name: string, how: Made & { readonly meaning: string }): string {
    const form = how.by === 'formula' ? formOf(name) : undefined;
    return form === undefined
      ? how.meaning
      : print(
          form,
          how.args.map(arg => (typeof arg === 'object' && 'is' in arg ? known(arg.is) : phrase(nameOf(arg)))),
        ).text;
  }

  /** How a value is made, as a formula: nothing where none follows it. */
  private made(name: string, how: Made): Ref | undefined {
    switch (how.by) {
      case 'formula': {
        const form = formOf(name) as Form;
        const refs = how.args.map(arg => this.arg(arg));
        const ref = spreadsheetRef(form, refs);
        return within(limitsOf(cardOf(how.formula), how.args, refs), hasChoice(form) ? onlyWith(refs.flatMap(numberCells), ref) : ref);
      }
      case 'readings':
        return this.readings(how);
      case 'length tolerances':
        return this.lengthTolerance();
      case 'length list': {
        // inch lengths are converted: not every program takes 19.05 for 0.75·25.4
        const away = `(${this.data.column(lengthTable(this.variant.value('screw').size), 'length')}-${this.cellOf('length') ?? '0'})`;
        return atom(`IF(${this.hasScrew()},IF(SUMPRODUCT(0+(${away}*${away}<1E-12))>0,1,0),${NONE})`);
      }
      case 'argument':
        return this.arg(how.args[0] as Arg);
      case 'presence':
        return this.presence(nameOf(how.args[0] as Arg));
      case 'nothing':
        return undefined;
    }
  }

  /** A cell without a size has none; what cannot be read is not left out, but an error. */
  private presence(input: string): Ref | undefined {
    if (this.variant.value(input) === undefined) {
      this.ref(input);
      return atom('FALSE', false);
    }
    const typed = this.given.get(input)?.cell ?? '""';
    return atom(`IF(OR(${typed}="",${typed}=0,${typed}="default"),FALSE,${this.cellOf(input)}>0)`);
  }

  /** Out of the tables, by the words of a choice where they matter. */
  private readings({ reads, args }: Made & { readonly by: 'readings' }): Ref | undefined {
    const values = args.map(arg => this.variant.arg(arg));
    const formula = (at: number, word: string): Scalar =>
      readingsRef(this.reader, reads(...(values.map((value, i) => (i === at ? word : value)) as never[])));
    for (const arg of args) if (typeof arg === 'string' && arg !== 'screw') this.ref(arg);
    const at = args.findIndex(arg => typeof arg === 'string' && typeof this.variant.value(arg) === 'string');
    if (at < 0) return formula(at, '');
    const cell = this.cellOf(args[at] as string) ?? '""';
    const words = choicesOf((INPUTS.get(args[at] as string) as Input).param);
    const [first = '', ...others] = words.map(word => formula(at, word).text);
    const isOne = others.every(other => other === first);
    return atom(
      isOne
        ? `IF(${cell}<>"",${first},${NONE})`
        : words.reduceRight((otherwise, word) => `IF(${cell}=${quoted(word)},${formula(at, word).text},${otherwise})`, NONE),
    );
  }

  private readonly reader: Reader = {
    size: row => this.sizeKey(row),
    cell: () => NONE,
    lookup: (table, key, row) => this.data.lookup(table, key, row),
    band: (table, key, size) => this.data.band(table, key, size),
  };

  private hasScrew(): string {
    const screw = this.ref('screw') as { readonly parts: Record<ScrewSize, Ref> };
    return `ISNUMBER(${textOf(screw.parts.nominalMm)})`;
  }

  /** Whether the end is one of the words, which a table that does not ask for it must know too. */
  private hasEnd(): string {
    return `${this.cellOf('end')}<>""`;
  }

  private lengthTolerance(): Ref {
    const { size } = this.variant.value('screw');
    const value = this.variant.value('length tolerance');
    const formulas = lengthToleranceFormulas(this.data, size, this.cellOf('length') ?? '0', this.cellOf('end') ?? '""');
    // each family has its own table: without a screw of this one there is no tolerance
    const inFamily = `AND(${this.hasScrew()},${this.hasEnd()})`;
    const side = (title: string, formula: string, worth: number): Ref =>
      atom(this.put(`${title} (mm)`, `from the table on ${this.data.name}`, `IF(${inFamily},${formula},${NONE})`, worth), worth);
    return {
      parts: {
        upperMm: side('length tolerance, upper', formulas.upper, value.upperMm),
        lowerMm: side('length tolerance, lower', formulas.lower, value.lowerMm),
      },
    };
  }

  /** The cell with the screw where the table is entered with its text; else the row's name, and the screw is fixed. */
  private sizeKey(row: string): string {
    const screw = this.given.get('screw');
    if (!this.done.has('screw text')) this.ref('screw');
    if (screw === undefined) return `"${row}"`;
    if (typeof screw.typed === 'string' && screw.typed.toLowerCase() === row.toLowerCase()) return this.cellOf('screw text') ?? `"${row}"`;
    this.guardInput(screw);
    return `"${row}"`;
  }

  private guardInput({ cell, typed }: RowInput): void {
    for (const condition of sameAs(cell, typed) ?? []) this.fixed.add(condition);
  }

  private input(name: string): Ref {
    const input = INPUTS.get(name);
    if (input === undefined) throw new TypeError(name);
    const value = this.variant.value(name);
    const here = this.given.get(name);
    if (name === 'screw') return this.screw(value as Screw, here);
    if (name === 'screw text') throw new TypeError(name);
    if (value === undefined || (typeof value === 'object' && !('upperMm' in (value as object)))) {
      if (here !== undefined) this.guardInput(here);
      return value === undefined ? atom('""', '') : literal(value);
    }
    const fallback = this.fallback(name, input);
    if (typeof value === 'object') return this.deviation(name, input, value as Deviation, here, fallback);
    if (here === undefined)
      return fallback === undefined
        ? this.value(name, input.meaning, onlyInput(input.fallback))
        : this.placed(name, fallback, `${input.meaning}; default`);
    return this.placed(name, atom(this.inputFormula(input.param, here, fallback, value as number | string)), input.meaning);
  }

  private inputFormula(param: Param, { cell, typed }: RowInput, fallback: Ref | undefined, value: number | string): string {
    const otherwise = fallback !== undefined && 'text' in fallback ? fallback.text : undefined;
    const isDefault = takesDefault(typed);
    // a default without a formula holds for the inputs as sent
    const made =
      isDefault && otherwise === undefined
        ? `IF(${this.unchangedCell(param.name)},${typeof value === 'string' ? quoted(value) : number(value).text},NA())`
        : otherwise;
    if (typeof value === 'string') return choiceFormula(cell, choicesOf(param), made, isDefault ? undefined : { typed, means: value });
    return numberFormula(cell, param, made, typeof typed === 'string' && !isDefault ? { typed, means: value } : undefined);
  }

  /** The default as a formula, if it has one. */
  private fallback(name: string, { fallback }: Input): Ref | undefined {
    if (fallback === undefined) return undefined;
    if ('raw' in fallback) return constant(fallback.raw);
    try {
      return this.made(name, fallback);
    } catch (fault) {
      if (fault instanceof Refused) return undefined;
      throw fault;
    }
  }

  private screw(screw: Screw, here: RowInput | undefined): Ref {
    this.done.set(
      'screw text',
      here === undefined ? text(screw.size.text) : atom(this.put('screw', 'size', here.cell, here.typed as Cell), here.typed as Cell),
    );
    const column = (title: string, part: ScrewSize): Ref =>
      atom(
        this.put(
          `${title} (mm)`,
          `from the table on ${this.data.name}`,
          readingsRef(this.reader, SIZE_READINGS[part](screw.size)).text,
          screw[part],
        ),
        screw[part],
      );
    return {
      parts: {
        nominalMm: column('screw nominal', 'nominalMm'),
        majorMaxMm: column('screw major, max', 'majorMaxMm'),
        majorMinMm: column('screw major, min', 'majorMinMm'),
        rootMaxMm: column('screw root, max', 'rootMaxMm'),
        pitchMm: column('pitch', 'pitchMm'),
      },
    };
  }

  /** A half width is followed, so is the default; a text with two deviations holds while it is as it was sent. */
  private deviation(
    name: string,
    { param, meaning }: Input,
    { upperMm, lowerMm }: Deviation,
    here: RowInput | undefined,
    fallback: Ref | undefined,
  ): Ref {
    const title = withUnit(name, 'mm');
    if (here === undefined) {
      if (fallback !== undefined && 'parts' in fallback) return fallback;
      return halfWidth(this.put(title, `± ${meaning}; default`, undefined, upperMm), upperMm);
    }
    const { cell, typed } = here;
    const [upper, lower] =
      fallback === undefined
        ? [NONE, NONE]
        : 'parts' in fallback
          ? [textOf(fallback.parts['upperMm']), textOf(fallback.parts['lowerMm'])]
          : [textOf(fallback), `-${textOf(fallback)}`];
    const isText = typeof typed === 'string' && !takesDefault(typed);
    const side = (half: string, otherwise: string, worth: number): string => {
      const asNumber =
        param.blank === 'explicit' ? `IF(${cell}>=0,${half},${NONE})` : `IF(${cell}>0,${half},IF(${cell}=0,${otherwise},${NONE}))`;
      const asDefault = `IF(${param.blank === 'explicit' ? `${cell}="default"` : `OR(${cell}="",${cell}="default")`},${otherwise},${NONE})`;
      const asText = isText ? `IF(${cell}=${quoted(typed)},${number(worth).text},${asDefault})` : asDefault;
      return `IF(ISNUMBER(${cell}),${asNumber},${asText})`;
    };
    if (upperMm + lowerMm === 0) return halfWidth(this.put(title, `± ${meaning}`, side(cell, upper, upperMm), upperMm), upperMm);
    const part = (which: string, half: string, otherwise: string, worth: number): Ref =>
      atom(this.put(`${name}, ${which} (mm)`, meaning, side(half, otherwise, worth), worth), worth);
    return { parts: { upperMm: part('upper', cell, upper, upperMm), lowerMm: part('lower', `-${cell}`, lower, lowerMm) } };
  }
}

const NONE = 'NA()';

/** A cell with a half width counts both ways. */
const halfWidth = (cell: string, halfMm: number): Ref => ({
  parts: { upperMm: atom(cell, halfMm), lowerMm: negative(atom(cell, halfMm)) },
});

const textOf = (ref: Ref | undefined): string => (ref !== undefined && 'text' in ref ? ref.text : NONE);

/** The limits that a base function has for its arguments, as conditions, where the inputs do not keep them already. */
function limitsOf(card: Card | undefined, args: readonly Arg[], refs: readonly Ref[]): string[] {
  return (card?.params ?? []).flatMap(({ limits }, i) => {
    const [arg, ref] = [args[i], refs[i]];
    if (arg === undefined || ref === undefined || !('text' in ref) || nameOf(arg) === '') return [];
    return isWithin(nameOf(arg), limits) ? [] : limitFormulas(operand(ref), limits);
  });
}

const within = (conditions: readonly string[], ref: Ref): Ref =>
  conditions.length === 0 || !('text' in ref) ? ref : atom(`IF(${allOf(conditions)},${ref.text},${NONE})`, ref.value);

/** The name that an argument reads. */
const nameOf = (arg: Arg): string => [...namesIn(arg)].pop() ?? '';

const formOf = (name: string): Form | undefined => (NODES.has(name) ? formOfNode(name) : formOfDefault(name));

const constant = (value: unknown): Ref => (typeof value === 'number' ? number(value === Infinity ? 9.99e307 : value) : text(String(value)));

/** The one input that a value is made of. */
function onlyInput(how: Input['fallback']): string | undefined {
  const [first, ...others] = how !== undefined && 'by' in how ? how.args : [];
  return typeof first === 'string' && others.length === 0 && INPUTS.has(first) ? first : undefined;
}

const takesDefault = (typed: Known): boolean => isBlank(typed) || (typeof typed === 'string' && typed.trim().toLowerCase() === 'default');

/** Whether the form looks at some of its arguments only in some cases. */
function hasChoice(form: Form): boolean {
  let has = false;
  visit(form, { if: () => void (has = true) });
  return has;
}

const IN_ROW = /^\$[A-Z]+\d+$/;

/** The cells with numbers that a reference is made of. */
function numberCells(ref: Ref): string[] {
  if ('text' in ref) return typeof ref.value === 'number' && IN_ROW.test(ref.text) ? [ref.text] : [];
  if ('items' in ref) return ref.items.flatMap(numberCells);
  return 'parts' in ref ? Object.values(ref.parts).flatMap(numberCells) : [];
}

/** No value where one of its arguments has none, looked at or not. */
function onlyWith(cells: readonly string[], ref: Ref): Ref {
  if ('items' in ref) return { items: ref.items.map(item => onlyWith(cells, item)) };
  if ('parts' in ref) return { parts: Object.fromEntries(Object.entries(ref.parts).map(([key, part]) => [key, onlyWith(cells, part)])) };
  if (!('text' in ref) || cells.length === 0) return ref;
  return atom(`IF(${allOf([...new Set(cells)].map(cell => `ISNUMBER(${cell})`))},${ref.text},NA())`, ref.value);
}

function literal(value: unknown): Ref {
  if (typeof value === 'number') return number(value);
  if (typeof value === 'string') return text(value);
  if (Array.isArray(value)) return { items: value.map(literal) };
  if (typeof value === 'object' && value !== null)
    return { parts: Object.fromEntries(Object.entries(value).map(([key, part]) => [key, literal(part)])) };
  return atom('""', '');
}
