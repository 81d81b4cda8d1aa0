// One variant as formulas: every input and node of the joint in its column, each written from its plain form.
import { RowGuards } from './row-guards';
import { type RowValues, TableFormulas } from './table-formulas';
import { withUnit } from '../../../core/call';
import type { Cell } from '../../../core/kinds';
import { Refused } from '../../../core/refuse';
import { type Screw } from '../../../core/screw/thread';
import { cardOf } from '../../../joint/base-functions';
import { unitOf } from '../../../joint/outputs';
import { type AskedVariant, valueOf } from './asked-variant';
import { type Arg, type Input, type Made, type Node, NotApplicable } from '../../../joint/graph';
import { INPUTS } from '../../../joint/inputs';
import { NODES } from '../../../joint/nodes';
import { atom, type Ref, type Scalar, spreadsheetRef } from '../../../plain/spreadsheet';
import type { Form } from '../../../plain/tree';
import { type DataSheet, ownIn } from '../data-sheet';
import { quoted } from '../inputs';
import { relatedTo } from '../relations';
import { deviationRef } from './row-deviation';
import { inputFormula } from './row-typed';
import type { RowInput } from './row-input';
import type { OfRow, WriteCell } from './row-print';
import {
  NONE,
  wordsOf,
  textOf,
  limitsOf,
  within,
  formOf,
  constant,
  onlyInput,
  hasChoice,
  numberCells,
  isLiteral,
  onlyWith,
  literal,
} from './row-refs';

export class JointRow implements RowValues {
  private readonly done = new Map<string, Ref | Refused>();
  readonly guards: RowGuards;
  private readonly tables: TableFormulas;

  constructor(
    readonly variant: AskedVariant,
    private readonly given: ReadonlyMap<string, RowInput>,
    private readonly data: DataSheet,
    private readonly put: WriteCell,
  ) {
    this.guards = new RowGuards(given, put, () => data.asSent((variant.outcome('screw') as Partial<Screw>).size));
    this.tables = new TableFormulas(this, given, data, put);
  }

  /** The cell of a scalar, or undefined if there is no value. */
  cellOf(name: string): string | undefined {
    try {
      const ref = this.ref(name);
      return 'text' in ref ? ref.text : undefined;
    } catch (fault) {
      if (fault instanceof Refused) return undefined;
      throw fault;
    }
  }

  /** The cell with d. */
  nominal(): string {
    try {
      const screw = this.ref('screw') as { readonly parts: Record<string, Ref> };
      return textOf(screw.parts['nominalMm']);
    } catch (fault) {
      if (fault instanceof Refused) return NONE;
      throw fault;
    }
  }

  putState(title: string, words: string, formula: string, value: OfRow<Cell>): string {
    return this.put(title, words, formula, value);
  }

  isKnown(name: string): boolean {
    return this.done.has(name);
  }

  remember(name: string, ref: Ref): void {
    this.done.set(name, ref);
  }

  ref(name: string): Ref {
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
    if ('of' in arg)
      return this.variant.outcome(arg.of) instanceof NotApplicable
        ? within([this.staysAway(arg.of)], constant(arg.orElse))
        : this.ref(arg.of);
    if ('given' in arg) return this.presence(arg.given);
    return constant(arg.is);
  }

  /** What does not apply has no formula here: it must stay away. */
  private staysAway(name: string): string {
    const why = NODES.get(name)?.where?.find(condition => this.variant.outcome(condition) === false);
    const cell = why === undefined ? undefined : this.cellOf(why);
    return cell === undefined ? this.guards.unchanged(name) : `NOT(${cell})`;
  }

  /** A scalar in its column; a list or record stays what it is made of. */
  private placed(name: string, ref: Ref, words: string): Ref {
    if (!('text' in ref)) return ref;
    const value = this.variant.value(name) as Cell;
    return atom(this.put(withUnit(name, unitOf(name)), words, isLiteral(ref.text) ? undefined : ref.text, valueOf(name)), value);
  }

  /** A value without a formula. What comes from one input alone is fixed with that; anything else by all inputs. */
  private value(name: string, words: string, source: string | undefined): Ref {
    const value = this.variant.value(name);
    if (typeof value === 'object' && value !== null) return literal(this.variant.entry(name));
    if (source !== undefined) this.ref(source);
    if (typeof value === 'boolean') return atom(value ? 'TRUE' : 'FALSE', value);
    const formula =
      source !== undefined
        ? undefined
        : `IF(${this.guards.unchanged(name)},${typeof value === 'string' ? quoted(value) : this.variant.number(name)},${NONE})`;
    return atom(this.put(withUnit(name, unitOf(name)), `${words}; value, not live`, formula, valueOf(name)), value as Cell);
  }

  private node(name: string): Ref {
    const node = NODES.get(name) as Node;
    // what this variant has no value for has no formula either
    this.variant.value(name);
    const conditions = (node.where ?? []).flatMap(needed => this.condition(needed));
    const ref = this.made(name, node);
    return ref === undefined
      ? this.value(name, node.meaning, onlyInput(node))
      : this.placed(name, within(conditions, ref), wordsOf(name, node));
  }

  /** Where it does not hold, what hangs on it has no value. */
  private condition(name: string): string[] {
    const ref = this.ref(name);
    if (!('text' in ref)) return [];
    if (NODES.get(name)?.otherwise === undefined) return typeof ref.value === 'number' ? [`ISNUMBER(${ref.text})`] : [];
    return ref.text === 'TRUE' ? [] : [ref.text];
  }

  /** How a value is made, as a formula: undefined where none follows it. */
  private made(name: string, how: Made): Ref | undefined {
    switch (how.by) {
      case 'formula': {
        const form = formOf(name) as Form;
        const refs = how.args.map(arg => this.arg(arg));
        const ref = spreadsheetRef(form, refs);
        return within(limitsOf(cardOf(how.formula), how.args, refs), hasChoice(form) ? onlyWith(refs.flatMap(numberCells), ref) : ref);
      }
      case 'readings':
        return this.tables.readings(how);
      case 'length tolerances':
        return this.lengthTolerance(name);
      case 'argument':
        return this.arg(how.args[0] as Arg);
      case 'nothing':
        return undefined;
    }
  }

  /** Whether an input is given: what cannot be read is not left out, but an error. */
  private presence(input: string): Ref {
    const cell = this.given.get(input)?.cell;
    // the rules that hang on an input that was left out have no formula: it must stay left out
    if (this.variant.outcome(input) === undefined) this.guards.addInputOfVerdict(input);
    return cell === undefined ? atom('FALSE', false) : atom(`NOT(OR(${cell}="",${cell}=0,${cell}="default"))`, this.variant.isGiven(input));
  }

  /** That of the table, or the user's own. */
  private lengthTolerance(name: string): Ref {
    const table = this.tables.lengthTolerance();
    const own = this.given.get('length tolerance');
    const input = INPUTS.get('length tolerance') as Input;
    if (own === undefined) return table;
    const { parts } = deviationRef(this.put, this.variant, name, input, own, table, true) as {
      readonly parts: Readonly<Record<string, Scalar>>;
    };
    // an end that cannot be read leaves the screw without a length
    const isRead = [`${this.cellOf('end') ?? '""'}<>""`];
    return { parts: Object.fromEntries(Object.entries(parts).map(([side, part]) => [side, within(isRead, part)])) };
  }

  private input(name: string): Ref {
    const input = INPUTS.get(name);
    if (input === undefined) throw new TypeError(name);
    const value = this.variant.value(name);
    const here = this.given.get(name);
    if (name === 'screw') return this.tables.screw(value as Screw, here);
    if (name === 'screw text') throw new TypeError(name);
    if (value === undefined || (typeof value === 'object' && !('upperMm' in (value as object)))) {
      if (here !== undefined) this.guards.addInput(here);
      return value === undefined ? atom('""', '') : literal(this.variant.entry(name));
    }
    // a size that a text takes from an own screw is no cell
    if (here !== undefined) this.guards.add(this.data.asSent(ownIn(here.typed)));
    const asked = input.askedWhere === undefined ? undefined : this.cellOf(input.askedWhere.condition);
    const made = this.fallback(name, input);
    const fallback = made === undefined || asked === undefined ? made : within([asked], made);
    if (typeof value === 'object') return deviationRef(this.put, this.variant, name, input, here, fallback);
    if (here === undefined)
      return fallback === undefined
        ? this.value(name, input.meaning, onlyInput(input.fallback))
        : this.placed(name, fallback, `${input.meaning}; default`);
    const related = relatedTo(input.param, here.cell, owner => this.ref(owner));
    // what is refused elsewhere holds only there, typed or not
    const taken = input.askedWhere?.alone === true && asked !== undefined && asked !== 'TRUE' ? [asked] : [];
    const typed = atom(
      inputFormula(input.param, here, fallback, value as number | string, this.variant.number(name), related, this.guards),
    );
    return this.placed(name, within(taken, typed), input.meaning);
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
}
