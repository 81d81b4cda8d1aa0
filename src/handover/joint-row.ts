// One variant as formulas: every input and node of the joint in its column, each written from its plain form.
import { ASME_B18_2_8_CLEARANCE_HOLES } from '../standards/asme-b18-2-8-clearance-holes';
import { ISO_273_CLEARANCE_HOLES } from '../standards/iso273-clearance-holes';
import { withUnit } from '../core/call';
import type { Card, Param } from '../core/card';
import type { Cell, Limits } from '../core/kinds';
import { isBlank } from '../core/read/params';
import type { Deviation } from '../core/read/deviation';
import { Refused } from '../core/refuse';
import { DIAMETER_KEYS, type Head, HEIGHT_KEYS } from '../core/screw/head';
import { lengthTable } from '../core/screw/length';
import type { Screw } from '../core/screw/thread';
import { threadRow, threadTable } from '../core/screw/thread';
import { cardOf, unitOf, type Variant } from '../joint/evaluate';
import type { Arg, Input, Made } from '../joint/graph';
import { INPUTS } from '../joint/inputs';
import { NODES } from '../joint/nodes';
import { formOfDefault, formOfNode } from '../plain/forms';
import { known, phrase, print } from '../plain/print';
import { atom, minus, negative, number, operand, type Ref, type Scalar, spreadsheetRef, text } from '../plain/spreadsheet';
import { type Form, visit } from '../plain/tree';
import type { DataSheet } from './data-sheet';
import { allOf, choiceFormula, numberFormula, quoted, sameAs, choicesOf } from './inputs';
import { lengthToleranceFormulas } from './length-tolerance';
import { limitFormulas } from './limits';
import type { Known } from './source';

export interface RowInput {
  readonly cell: string;
  /** As the cell has it on the hand-over: a text with units is a number there. */
  readonly typed: Known;
}

/** Puts a formula or value under a title and answers its cell. */
export type Put = (title: string, words: string, formula: string | undefined, value: Cell | undefined) => string;

/** Values that change with one input only, which no formula follows: they are fixed with it. */
const FIXED_WITH: Readonly<Record<string, string>> = {
  density: 'material',
  'thread share': 'material',
  'od ratio': 'material',
  'yield stress': 'material',
  'cone angle': 'head',
  'is countersunk': 'head',
  'has board hole': 'board hole',
  'has sleeve and board hole': 'board hole',
};

export class JointRow {
  private readonly done = new Map<string, Ref | Refused>();
  /** What the formulas of this row do not follow: they hold while these conditions do. */
  private readonly fixed = new Set<string>();
  private readonly sent = new Map<string, string>();

  constructor(
    readonly variant: Variant,
    private readonly given: ReadonlyMap<string, RowInput>,
    private readonly data: DataSheet,
    private readonly put: Put,
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
  fix(condition: string): void {
    this.fixed.add(condition);
  }

  /** Cell that says whether everything that the row does not follow is as it was sent. Nothing where it follows all. */
  holds(): string | undefined {
    if (this.fixed.size === 0) return undefined;
    return this.put(
      'fixed inputs as sent',
      'the formulas of this row hold for these texts',
      `IFERROR(${allOf([...this.fixed])},FALSE)`,
      true,
    );
  }

  /** Cell that says whether the inputs of a value are as they were sent: what has no formula holds only then. Without a name, all inputs. */
  asSent(name?: string): string {
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
    const made = NODES.get(name) ?? (fallback !== undefined && 'args' in fallback ? fallback : undefined);
    for (const arg of made?.args ?? []) if (typeof arg === 'string' || 'only' in arg) this.inputsOf(nameOf(arg), found);
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
    if ('only' in arg) return atom(this.cellOf(arg.only) ?? 'NA()');
    return typeof arg.is === 'number' ? number(arg.is) : text(String(arg.is));
  }

  /** A scalar in its column; a list or record stays what it is made of. */
  private placed(name: string, ref: Ref, words: string): Ref {
    if (!('text' in ref)) return ref;
    const value = this.variant.value(name) as Cell;
    const isFixed = ref.text === String(value) || ref.text === `"${String(value)}"`;
    return atom(this.put(withUnit(name, unitOf(name)), words, isFixed ? undefined : ref.text, value), value);
  }

  /** A value without a formula. What comes from a text alone is fixed with that text; anything else by all inputs. */
  private value(name: string, words: string): Ref {
    const value = this.variant.value(name);
    if (typeof value === 'object' && value !== null) return literal(value);
    const source = FIXED_WITH[name];
    if (source !== undefined) this.ref(source);
    if (typeof value === 'boolean') return atom(value ? 'TRUE' : 'FALSE', value);
    const formula =
      source !== undefined
        ? undefined
        : `IF(${this.asSent(name)},${typeof value === 'string' ? quoted(value) : number(Number(value)).text},NA())`;
    return atom(this.put(withUnit(name, unitOf(name)), `${words}; value, not live`, formula, value as Cell), value as Cell);
  }

  private made(name: string, form: Form, { formula, args }: Made): Ref {
    const words = print(
      form,
      args.map(arg => (typeof arg === 'object' && 'is' in arg ? known(arg.is) : phrase(nameOf(arg)))),
    ).text;
    const refs = args.map(arg => this.arg(arg));
    const ref = spreadsheetRef(form, refs);
    const checked = hasChoice(form) ? onlyWith(refs.flatMap(numberCells), ref) : ref;
    return this.placed(name, within(limitsOf(cardOf(formula), args, refs), checked), words);
  }

  private node(name: string): Ref {
    const node = NODES.get(name) as Made & { readonly meaning: string };
    // what this variant has no value for has no formula either
    this.variant.value(name);
    const own = this.lookUp(name);
    if (own !== undefined) return this.placed(name, own, node.meaning);
    const form = formOfNode(name);
    return form === undefined ? this.value(name, node.meaning) : this.made(name, form, node);
  }

  /** Nodes that read a table or ask a question, as formulas. */
  private lookUp(name: string): Ref | undefined {
    const cell = (of: string): string => this.cellOf(of) ?? '0';
    const part = (key: string): Ref => this.part(key);
    const where = (present: string, value: string): Ref => atom(`IF(${cell(present)}>0,${cell(value)},NA())`);
    switch (name) {
      case 'seat under the head':
        return where('seat', 'seat');
      case 'sleeve height':
        return where('sleeve', 'sleeve');
      case 'plane of the recess':
        return where('seat under the head', 'board plane');
      case 'recessed head':
        return where('seat under the head', 'head diameter');
      case 'recessed flat head':
        return this.ref('recessed head');
      case 'sleeve hole':
        return where('sleeve height', 'hole');
      case 'board hole given':
        return this.ref('board hole');
      case 'major max':
        return part('majorMaxMm');
      case 'major min':
        return part('majorMinMm');
      case 'root max':
        return part('rootMaxMm');
      case 'tapping screw':
        return this.ref('screw');
      case 'has recess':
        return atom(`${cell('seat')}>0`);
      case 'has board hole':
        return this.variant.value('board hole') === undefined ? undefined : atom(this.hasBoardHole());
      case 'has sleeve and board hole':
        return this.variant.value('board hole') === undefined ? undefined : atom(`AND(${cell('sleeve')}>0,${this.hasBoardHole()})`);
      case 'is hidden':
        return atom(`${cell('face')}<>"show"`);
      case 'standard length': {
        // inch lengths are converted: not every program takes 19.05 for 0.75·25.4
        const away = `(${this.data.column(lengthTable((this.variant.value('screw') as Screw).size), 'length')}-${cell('length')})`;
        return atom(`IF(ISNUMBER(${textOf(part('nominalMm'))}),IF(SUMPRODUCT(0+(${away}*${away}<1E-12))>0,1,0),NA())`);
      }
      case 'cone sharp':
        return this.headColumn(DIAMETER_KEYS.sharp);
      case 'head in the seat':
        return this.headInSeat();
      case 'weakest':
        return this.weakest();
      case 'point':
        return this.point();
      case 'length tolerance':
        return this.lengthTolerance();
      default:
        return undefined;
    }
  }

  /** A cell without a hole has none; what cannot be read is not left out, but an error. */
  private hasBoardHole(): string {
    const typed = this.given.get('board hole')?.cell ?? '""';
    return `IF(OR(${typed}="",${typed}=0,${typed}="default"),FALSE,${this.cellOf('board hole')}>0)`;
  }

  /** A size of the screw. */
  private part(key: string): Ref {
    return (this.ref('screw') as { parts: Record<string, Ref> }).parts[key] as Ref;
  }

  private headInSeat(): Ref | undefined {
    this.ref('head');
    const { style, table } = this.variant.value('head') as Head;
    if (style === 'flat-seated') return number(0);
    if (style === 'countersunk') return this.ref('head height');
    const { size } = this.variant.value('screw') as Screw;
    const column = (key: string): string | undefined =>
      table.columns.some(one => one.key === key) ? this.data.lookup(table, key, this.sizeKey(size.gauge)) : undefined;
    const [cone, raised, height] = [column('coneMax'), column('fApprox'), column('kMax')];
    const without = (height: Scalar): Ref => minus(atom(this.cellOf('head height') ?? NONE), height);
    if (cone !== undefined && height !== undefined) return without(minus(atom(height), atom(cone)));
    return raised === undefined ? undefined : without(atom(raised));
  }

  private weakest(): Ref {
    const [pull, tear, shear] = ['pull-out', 'boss tear', 'seat shear'].map(name => this.cellOf(name));
    const against = (force: string | undefined, word: string): string =>
      shear === undefined ? `"${word}"` : `IF(${force}<=${shear},"${word}","seat shear")`;
    const least = `IF(${pull}<=${tear},${against(pull, 'pull-out')},${against(tear, 'boss tear')})`;
    // a head that cannot be read is no reason to leave it out
    return atom(shear === undefined ? `IF(ISNUMBER(${this.cellOf('head diameter') ?? NONE}),${least},${NONE})` : least);
  }

  private point(): Ref | undefined {
    const { size } = this.variant.value('screw') as Screw;
    const key = this.sizeKey(threadRow(size));
    const table = threadTable(size);
    if (size.family === 'ST')
      return atom(
        `IF(${this.cellOf('end')}="flat",${this.data.lookup(table, 'pointFlat', key)},${this.data.lookup(table, 'pointCone', key)})`,
      );
    const point = size.family === 'B' ? this.data.lookup(table, 'pointTaperMax', key) : `2*${textOf(this.part('pitchMm'))}`;
    return atom(`IF(${this.hasEnd()},${point},${NONE})`);
  }

  /** Whether the end is one of the words, which a table that does not ask for it must know too. */
  private hasEnd(): string {
    return `${this.cellOf('end')}<>""`;
  }

  private lengthTolerance(): Ref {
    const { size } = this.variant.value('screw') as Screw;
    const value = this.variant.value('length tolerance') as Deviation;
    const formulas = lengthToleranceFormulas(this.data, size, this.cellOf('length') ?? '0', this.cellOf('end') ?? '""');
    // each family has its own table: without a screw of this one there is no tolerance
    const inFamily = `AND(ISNUMBER(${textOf(this.part('nominalMm'))}),${this.hasEnd()})`;
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
    this.fixTo(screw);
    return `"${row}"`;
  }

  private fixTo({ cell, typed }: RowInput): void {
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
      if (here !== undefined) this.fixTo(here);
      return value === undefined ? atom('""', '') : literal(value);
    }
    const fallback = this.fallback(name, input.fallback);
    if (typeof value === 'object') return this.deviation(name, input, value as Deviation, here, fallback);
    if (here === undefined)
      return fallback === undefined ? this.value(name, input.meaning) : this.placed(name, fallback, `${input.meaning}; default`);
    return this.placed(name, atom(this.inputFormula(input.param, here, fallback, value as number | string)), input.meaning);
  }

  private inputFormula(param: Param, { cell, typed }: RowInput, fallback: Ref | undefined, value: number | string): string {
    const otherwise = fallback !== undefined && 'text' in fallback ? fallback.text : undefined;
    const isDefault = takesDefault(typed);
    // a default without a formula holds for the inputs as sent
    const made =
      isDefault && otherwise === undefined
        ? `IF(${this.asSent(param.name)},${typeof value === 'string' ? quoted(value) : number(value).text},NA())`
        : otherwise;
    if (typeof value === 'string') return choiceFormula(cell, choicesOf(param), made, isDefault ? undefined : { typed, means: value });
    return numberFormula(cell, param, made, typeof typed === 'string' && !isDefault ? { typed, means: value } : undefined);
  }

  /** The default as a formula, if it has one. */
  private fallback(name: string, made: Input['fallback']): Ref | undefined {
    if (made === undefined) return undefined;
    if ('raw' in made) return typeof made.raw === 'number' ? number(made.raw) : text(made.raw);
    const form = formOfDefault(name);
    try {
      if (form !== undefined) {
        const refs = made.args.map(arg => this.arg(arg));
        return within(limitsOf(cardOf(made.formula), made.args, refs), spreadsheetRef(form, refs));
      }
      if (name === 'head diameter') return this.headColumn(DIAMETER_KEYS.max);
      if (name === 'head height') return this.headColumn(HEIGHT_KEYS.max);
      if (name === 'hole') return this.mediumHole();
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
    }
    return undefined;
  }

  /** A column of the head's own table; the head stays the one that was sent. */
  private headColumn(key: string): Ref | undefined {
    this.ref('head');
    const head = this.variant.value('head') as Head;
    const { size } = this.variant.value('screw') as Screw;
    if (head.table.columns.every(column => column.key !== key) || (key === HEIGHT_KEYS.max && head.style === 'raised countersunk'))
      return undefined;
    return atom(this.data.lookup(head.table, key, this.sizeKey(size.gauge)));
  }

  private mediumHole(): Ref | undefined {
    const { size } = this.variant.value('screw') as Screw;
    if (size.family === 'ST') return undefined;
    return atom(
      size.family === 'M'
        ? this.data.lookup(ISO_273_CLEARANCE_HOLES, 'medium', this.sizeKey(size.gauge))
        : this.data.lookup(ASME_B18_2_8_CLEARANCE_HOLES, 'normal', this.sizeKey(size.gauge)),
    );
  }

  private screw(screw: Screw, here: RowInput | undefined): Ref {
    this.done.set(
      'screw text',
      here === undefined ? text(screw.size.text) : atom(this.put('screw', 'size', here.cell, here.typed as Cell), here.typed as Cell),
    );
    const table = threadTable(screw.size);
    const key = this.sizeKey(threadRow(screw.size));
    const column = (title: string, of: string, value: number): Ref =>
      atom(this.put(`${title} (mm)`, `from the table on ${this.data.name}`, this.data.lookup(table, of, key), value), value);
    const isMetric = screw.size.family === 'M' || screw.size.family === 'ST';
    return {
      parts: {
        nominalMm: column('screw nominal', screw.isTapping ? 'majorMax' : 'nominal', screw.nominalMm),
        majorMaxMm: column('screw major, max', 'majorMax', screw.majorMaxMm),
        majorMinMm: column('screw major, min', 'majorMin', screw.majorMinMm),
        rootMaxMm: column('screw root, max', 'rootMax', screw.rootMaxMm),
        pitchMm: isMetric
          ? column('pitch', 'pitch', screw.pitchMm)
          : atom(
              this.put('pitch (mm)', `from the table on ${this.data.name}`, `25.4/${this.data.lookup(table, 'tpi', key)}`, screw.pitchMm),
              screw.pitchMm,
            ),
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
    if (arg === undefined || ref === undefined || !('text' in ref) || (typeof arg === 'object' && 'is' in arg)) return [];
    const input = INPUTS.get(nameOf(arg));
    const isKept =
      input !== undefined &&
      !(input.fallback !== undefined && 'args' in input.fallback) &&
      Object.entries(limits ?? {}).every(([side, limit]) => input.param.limits?.[side as keyof Limits] === limit);
    return isKept ? [] : limitFormulas(operand(ref), limits);
  });
}

const within = (conditions: readonly string[], ref: Ref): Ref =>
  conditions.length === 0 || !('text' in ref) ? ref : atom(`IF(${allOf(conditions)},${ref.text},${NONE})`, ref.value);

/** The name that an argument reads. */
const nameOf = (arg: Exclude<Arg, { readonly is: unknown }>): string => (typeof arg === 'string' ? arg : arg.only);

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
