// One variant as formulas: every input and node of the joint in its column, each written from its plain form.
import { ISO_4759_1_LENGTH_LIMITS } from '../standards/iso4759-1-length-limits';
import { ISO_7049_LENGTH_TOLERANCES } from '../standards/iso7049-length-tolerances';
import { withUnit } from '../core/call';
import type { Cell } from '../core/kinds';
import type { Limits } from '../core/card';
import { isBlank } from '../core/read/params';
import { limitFormulas } from './limits';
import type { Deviation } from '../core/read/deviation';
import { Refused } from '../core/refuse';
import { DIAMETER_KEYS, type Head, HEIGHT_KEYS } from '../core/screw/head';
import { lengthTable } from '../core/screw/length';
import type { Screw } from '../core/screw/thread';
import { threadRow, threadTable } from '../core/screw/thread';
import { unitOf, type Variant } from '../joint/evaluate';
import type { Arg, Input, Made } from '../joint/graph';
import { INPUTS } from '../joint/inputs';
import { NODES } from '../joint/nodes';
import { formOfDefault, formOfNode, type Form } from '../plain/forms';
import { known, print } from '../plain/print';
import { atom, number, type Ref, spreadsheetRef, text } from '../plain/spreadsheet';
import type { DataSheet } from './data-sheet';
import type { Known } from './source';

export interface RowInput {
  readonly cell: string;
  readonly typed: Known;
}

/** Puts a formula or value under a title and answers its cell. */
export type Put = (title: string, words: string, formula: string | undefined, value: Cell | undefined) => string;

const isText = (raw: Known): raw is string => typeof raw === 'string';

export class JointRow {
  private readonly done = new Map<string, Ref | Refused>();

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
    return typeof arg.is === 'number' ? number(arg.is) : text(String(arg.is));
  }

  /** A scalar in its column; a list or record stays what it is made of. */
  private placed(name: string, ref: Ref, words: string): Ref {
    if (!('text' in ref)) return ref;
    const value = this.variant.value(name) as Cell;
    const isFixed = ref.text === String(value) || ref.text === `"${String(value)}"`;
    return atom(this.put(withUnit(name, unitOf(name)), words, isFixed ? undefined : ref.text, value), value);
  }

  private value(name: string, words: string): Ref {
    const value = this.variant.value(name);
    if (typeof value === 'object' && value !== null) return literal(value);
    return atom(this.put(withUnit(name, unitOf(name)), words, undefined, value as Cell), value as Cell);
  }

  private made(name: string, form: Form, { args }: Made): Ref {
    const words = print(form, args.map(arg => (typeof arg === 'string' ? { text: arg, level: 6 } : known(arg.is)))).text;
    return this.placed(name, spreadsheetRef(form, args.map(arg => this.arg(arg))), words);
  }

  private node(name: string): Ref {
    const node = NODES.get(name) as Made & { readonly meaning: string };
    // what this variant has no value for has no formula either
    this.variant.value(name);
    const own = this.lookUp(name);
    if (own !== undefined) return this.placed(name, own, node.meaning);
    const form = formOfNode(name);
    return form === undefined ? this.value(name, `${node.meaning}; value, not live`) : this.made(name, form, node);
  }

  /** Nodes that read a table or ask a question, as formulas. */
  private lookUp(name: string): Ref | undefined {
    const cell = (of: string): string => this.cellOf(of) ?? '0';
    const part = (key: string): Ref => (this.ref('screw') as { parts: Record<string, Ref> }).parts[key] as Ref;
    switch (name) {
      case 'seat under the head':
        return atom(`IF(${cell('seat')}>0,${cell('seat')},NA())`);
      case 'sleeve height':
        return atom(`IF(${cell('sleeve')}>0,${cell('sleeve')},NA())`);
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
      case 'is hidden':
        return atom(`${cell('face')}<>"show"`);
      case 'standard length':
        return atom(`IF(SUMPRODUCT(0+(${this.data.column(lengthTable((this.variant.value('screw') as Screw).size), 'length')}=${cell('length')}))>0,1,0)`);
      case 'point':
        return this.point();
      case 'length tolerance':
        return this.lengthTolerance();
      default:
        return undefined;
    }
  }

  private point(): Ref | undefined {
    const { size } = this.variant.value('screw') as Screw;
    if (size.family !== 'ST') return undefined;
    const key = this.sizeKey(threadRow(size));
    const table = threadTable(size);
    return atom(`IF(${this.cellOf('end')}="flat",${this.data.lookup(table, 'pointFlat', key)},${this.data.lookup(table, 'pointCone', key)})`);
  }

  private lengthTolerance(): Ref | undefined {
    const { size } = this.variant.value('screw') as Screw;
    const length = this.cellOf('length') ?? '0';
    const value = this.variant.value('length tolerance') as Deviation;
    const side = (title: string, formula: string, worth: number): Ref => atom(this.put(`${title} (mm)`, 'from the table on Data', formula, worth), worth);
    if (size.family === 'ST') {
      const table = ISO_7049_LENGTH_TOLERANCES;
      const band = (end: string, which: string): string => `INDEX(${this.data.column(table, `${end}${which}`)},SUMPRODUCT(0+(${this.data.column(table, 'upTo')}<${length}))+1)`;
      const both = (which: string): string => `IF(${this.cellOf('end')}="flat",${band('flat', which)},${band('cone', which)})`;
      return { parts: { upperMm: side('length tolerance, upper', both('Upper'), value.upperMm), lowerMm: side('length tolerance, lower', both('Lower'), value.lowerMm) } };
    }
    if (size.family === 'M') {
      const table = ISO_4759_1_LENGTH_LIMITS;
      return { parts: { upperMm: side('length tolerance, upper', this.data.lookup(table, 'upper', length), value.upperMm), lowerMm: side('length tolerance, lower', this.data.lookup(table, 'lower', length), value.lowerMm) } };
    }
    return undefined;
  }

  private sizeKey(row: string): string {
    const screw = this.given.get('screw');
    return screw?.typed === row ? (this.cellOf('screw text') ?? `"${row}"`) : `"${row}"`;
  }

  private input(name: string): Ref {
    const input = INPUTS.get(name);
    if (input === undefined) throw new TypeError(name);
    const value = this.variant.value(name);
    const here = this.given.get(name);
    if (name === 'screw') return this.screw(value as Screw, here);
    if (name === 'screw text') throw new TypeError(name);
    if (value === undefined) return atom('""', '');
    if (typeof value === 'object') return this.record(name, value as object, here, input.fallback);
    const usable = here !== undefined && (typeof here.typed === 'number' || isBlank(here.typed) || isQuantity(here.typed) || (isText(here.typed) && (typeof value === 'string' || here.typed.trim().toLowerCase() === 'default')));
    const fallback = this.fallback(name, input.fallback);
    if (!usable) return fallback === undefined || here !== undefined ? this.value(name, here === undefined ? input.meaning : `${input.meaning}; value, not live`) : this.placed(name, fallback, `${input.meaning}; default`);
    return this.placed(name, atom(inputFormula(here.cell, fallback, input.param.blank === 'explicit', typeof value === 'string', input.param.limits)), input.meaning);
  }

  /** The default as a formula, if it has one. */
  private fallback(name: string, made: Input['fallback']): Ref | undefined {
    if (made === undefined) return undefined;
    if ('raw' in made) return typeof made.raw === 'number' ? number(made.raw) : text(made.raw);
    const form = formOfDefault(name);
    try {
      if (form !== undefined) return spreadsheetRef(form, made.args.map(arg => this.arg(arg)));
      if (name === 'head diameter' || name === 'head height') return this.headLookUp(name);
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
    }
    return undefined;
  }

  private headLookUp(name: 'head diameter' | 'head height'): Ref | undefined {
    const head = this.variant.value('head') as Head;
    const { size } = this.variant.value('screw') as Screw;
    if (name === 'head height' && head.style === 'raised countersunk') return undefined;
    return atom(this.data.lookup(head.table, (name === 'head diameter' ? DIAMETER_KEYS : HEIGHT_KEYS).max, this.sizeKey(size.gauge)));
  }

  private screw(screw: Screw, here: RowInput | undefined): Ref {
    this.done.set('screw text', here === undefined ? text(screw.size.text) : atom(this.put('screw', 'size', here.cell, screw.size.text), screw.size.text));
    const table = threadTable(screw.size);
    const key = this.sizeKey(threadRow(screw.size));
    const column = (title: string, of: string, value: number): Ref => atom(this.put(`${title} (mm)`, 'from the table on Data', this.data.lookup(table, of, key), value), value);
    return {
      parts: {
        nominalMm: column('screw nominal', screw.isTapping ? 'majorMax' : 'nominal', screw.nominalMm),
        majorMaxMm: column('screw major, max', 'majorMax', screw.majorMaxMm),
        majorMinMm: column('screw major, min', 'majorMin', screw.majorMinMm),
        rootMaxMm: column('screw root, max', 'rootMax', screw.rootMaxMm),
        pitchMm: number(screw.pitchMm),
      },
    };
  }

  private record(name: string, value: object, here: RowInput | undefined, made: Input['fallback']): Ref {
    if (!('upperMm' in value)) return literal(value);
    const { upperMm, lowerMm } = value as Deviation;
    if (here !== undefined && typeof here.typed === 'number' && here.typed > 0) {
      const cell = this.put(withUnit(name, 'mm'), `± ${INPUTS.get(name)?.meaning ?? ''}`, here.cell, upperMm);
      return { parts: { upperMm: atom(cell, upperMm), lowerMm: { text: `-${cell}`, level: 5, value: lowerMm } } };
    }
    const fallback = here === undefined ? this.fallback(name, made) : undefined;
    if (fallback !== undefined && 'parts' in fallback) return fallback;
    if (upperMm === -lowerMm || upperMm === 0) {
      const cell = this.put(withUnit(name, 'mm'), `± ${INPUTS.get(name)?.meaning ?? ''}`, undefined, upperMm);
      return { parts: { upperMm: atom(cell, upperMm), lowerMm: { text: `-${cell}`, level: 5, value: lowerMm } } };
    }
    return literal(value);
  }
}

const isQuantity = (raw: Known): boolean => isText(raw) && /^[\s+\-−±.]*\d/.test(raw);

/** An input cell with its default: a blank or a bare 0 takes it, unless a zero there is refused. Outside its limits it has no value. */
function inputFormula(cell: string, fallback: Ref | undefined, zeroIsRefused: boolean, isWord: boolean, limits: Limits | undefined): string {
  const otherwise = fallback !== undefined && 'text' in fallback ? fallback.text : 'NA()';
  if (isWord) return otherwise === 'NA()' ? cell : `IF(OR(${cell}="",${cell}=0,${cell}="default"),${otherwise},${cell})`;
  const conditions = limitFormulas(cell, limits);
  const kept = conditions.length === 0 ? cell : `IF(AND(${conditions.join(',')}),${cell},NA())`;
  if (zeroIsRefused) return `IF(ISNUMBER(${cell}),${kept},IF(${cell}="default",${otherwise},NA()))`;
  return `IF(ISNUMBER(${cell}),IF(${cell}=0,${otherwise},${kept}),${otherwise})`;
}

function literal(value: unknown): Ref {
  if (typeof value === 'number') return number(value);
  if (typeof value === 'string') return text(value);
  if (Array.isArray(value)) return { items: value.map(literal) };
  if (typeof value === 'object' && value !== null) return { parts: Object.fromEntries(Object.entries(value).map(([key, part]) => [key, literal(part)])) };
  return atom('""', '');
}
