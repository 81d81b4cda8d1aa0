// One call as a block on the Steps sheet: its inputs, its named steps, whether the inputs are in limits, its result.
import type { Card } from '../core/card';
import { applied, readArguments } from '../core/call';
import { Refused } from '../core/refuse';
import type { Size } from '../core/screw/size';
import { formNamed, formOfCard, type Form } from '../plain/forms';
import { digits, known, printSteps } from '../plain/print';
import { atom, type CellFormula, spreadsheetFormulas, type Ref, type Step } from '../plain/spreadsheet';
import { type Argument, bind, type Bound, type Desk, sizeKey } from './bind';
import { checkFormula, worstFormula } from './checks';
import { areaOf, fixedArea, type FormulaNode } from './formula';
import { LOOK_UPS } from './lookups';
import type { Known } from './source';

export interface Block {
  /** The cell with the result; for a row of results, the cells one by one. */
  readonly cells: readonly string[];
  readonly live: boolean;
}

/** Which parts of records the form reads, itself or through the forms it calls. */
function partsRead(form: Form, found: Set<string> = new Set()): Set<string> {
  const visit = (tree: unknown): void => {
    if (Array.isArray(tree)) {
      if (tree[0] === 'of') found.add(String(tree[2]));
      const called = tree[0] === 'call' ? formNamed(String(tree[1])) : undefined;
      if (called !== undefined) partsRead(called, found);
      tree.forEach(visit);
    } else if (typeof tree === 'object' && tree !== null) Object.values(tree).forEach(visit);
  };
  visit([form.steps ?? [], form.result]);
  return found;
}

/** A step's name in words: `shearStressMpa` -> `shear stress`. */
const inWords = (name: string): string => name.replace(/(Mpa|Mm3|Mm2|Mm|Deg|Nmm|Nm|N)$/, '').replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

const source = (card: Card): string => `${card.kind}: ${card.sources.map(({ title, held }) => `${title} (${held})`).join('; ')}`;

const all = (conditions: readonly string[]): string => `AND(${conditions.join(',')})`;

export interface Call {
  readonly card: Card;
  readonly node: FormulaNode;
  readonly formula: string;
  readonly sheet: string;
  readonly at: string;
}

/** Writes the block. Nothing where the call has no plain form, or its arguments cannot be read here. */
export function block(desk: Desk, { card, node, formula, sheet, at }: Call): Block | undefined {
  const args = card.params.map((_, i): Argument => ({ node: node.arguments?.[i] ?? null, formula, sheet }));
  if (card.id === 'CHECK.MAX' || card.id === 'CHECK.MIN' || card.id === 'CHECK.WORST') return checkBlock(desk, card, args, { sheet, at });
  const form = formOfCard(card.id);
  const lookUp = LOOK_UPS[card.id];
  if ((form === undefined && lookUp === undefined) || (card.result.shape !== 'number' && card.result.shape !== 'row')) return undefined;
  const raws = args.map(arg => desk.source.evaluate(arg.node, sheet));
  if (raws.includes(undefined)) return undefined;
  const values = valuesOf(card, raws);
  if (values === undefined) return undefined;
  desk.steps.heading(`${sheet} ${at}: ${card.id}`);
  const needed = form === undefined ? new Set<string>() : partsRead(form);
  const bound: Bound[] = card.params.map((param, i) => (lookUp !== undefined && typeof values[i] !== 'number' ? { ref: atom(''), conditions: [], live: true } : bind(desk, param, args[i] as Argument, values[i], needed)));
  const conditions = bound.flatMap(b => b.conditions);
  const ok = conditions.length === 0 ? undefined : desk.steps.row({ label: 'inputs in limits', formula: all(conditions), value: true });
  const results = lookUp === undefined ? formulas(desk, form as Form, bound, values) : [lookedUp(desk, lookUp, args, bound, values)];
  if (results[0] === undefined) return undefined;
  const worth = applied(card, values);
  const numbers = Array.isArray(worth) ? (worth as (number | string)[]) : [worth as number | string];
  const words = form === undefined ? ['from the table on Data'] : printed(form, values);
  const cells = (results as CellFormula[]).map((result, i) =>
    desk.steps.row(
      { label: resultName(card, i), formula: ok === undefined ? result.formula : `IF(${ok},${result.formula},NA())`, value: numbers[i] ?? 0, unit: resultUnit(card, i), words: words[i] ?? '', source: source(card) },
      'result',
    ),
  );
  desk.steps.gap();
  return { cells, live: bound.some(b => b.live) };
}

function valuesOf(card: Card, raws: readonly Known[]): unknown[] | undefined {
  try {
    return readArguments(card, raws);
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}

function formulas(desk: Desk, form: Form, bound: readonly Bound[], values: readonly unknown[]): readonly (CellFormula | undefined)[] {
  const worded = new Map(printSteps(form, values.map(known)).steps.map(({ name, piece }) => [name, piece.text]));
  const step: Step = (name, formula, value) => desk.steps.row({ label: inWords(name), formula, ...(value === undefined ? {} : { value }), words: worded.get(name) ?? '' });
  const result = spreadsheetFormulas(form, bound.map(({ ref }): Ref => ref), step);
  return Array.isArray(result) ? (result as CellFormula[]) : [result as CellFormula];
}

function lookedUp(desk: Desk, lookUp: (typeof LOOK_UPS)[string], args: readonly Argument[], bound: readonly Bound[], values: readonly unknown[]): CellFormula | undefined {
  const size = values[0] as Size;
  const formula = lookUp?.(
    {
      size: row => sizeKey(desk, args[0] as Argument, row === size.gauge && size.text !== row ? row : size.text).key,
      cell: index => (bound[index]?.ref as { text: string }).text,
      lookup: (table, key, row) => desk.data.lookup(table, key, row),
      band: (table, key, cell) => desk.data.band(table, key, cell),
    },
    values,
  );
  return formula === undefined ? undefined : { formula };
}

function printed(form: Form, values: readonly unknown[]): string[] {
  const { result } = printSteps(form, values.map(known));
  return (result.items ?? [result]).map(({ text, value }) => (typeof value === 'number' && text !== digits(value) ? `${text} = ${digits(value)}` : text));
}

const resultName = ({ id, result }: Card, i: number): string => (result.shape === 'number' ? result.name : 'columns' in result ? (result.columns[i]?.name ?? id) : id);
const resultUnit = ({ result }: Card, i: number): string => (result.shape === 'number' ? result.unit : 'columns' in result ? (result.columns[i]?.unit ?? '') : '');

function checkBlock(desk: Desk, card: Card, args: readonly Argument[], { sheet, at }: { readonly sheet: string; readonly at: string }): Block | undefined {
  const [first] = args;
  if (first?.node === undefined || first.node === null) return undefined;
  const area = areaOf(first.node, sheet);
  if (card.id === 'CHECK.WORST') {
    if (area === undefined) return undefined;
    desk.steps.heading(`${sheet} ${at}: ${card.id}`);
    const cells = (area.bottom - area.top + 1) * (area.right - area.left + 1);
    return { cells: [desk.steps.row({ label: 'worst state', formula: worstFormula(fixedArea(area), cells), words: 'fail, then not checked, then look, then pass' }, 'result')], live: true };
  }
  const raws = args.map(({ node }) => (node === null ? null : desk.source.evaluate(node, sheet)));
  if (raws.includes(undefined) || raws.some(raw => typeof raw === 'string')) return undefined;
  desk.steps.heading(`${sheet} ${at}: ${card.id}`);
  const number = { name: '', kind: { noun: '', unit: '', accepts: '', shape: 'one' as const, read: (raw: unknown) => raw }, blank: 'zero' as const, optional: false };
  const cell = (i: number, name: string): string | undefined => {
    const raw = raws[i];
    if (raw === null || raw === undefined || (i === 2 && raw === 0)) return undefined;
    const { ref } = bind(desk, { ...number, name }, args[i] as Argument, typeof raw === 'number' ? raw : 0, new Set());
    return (ref as { text: string }).text;
  };
  const value = cell(0, 'value');
  const limit = cell(1, 'limit');
  if (value === undefined || limit === undefined) return undefined;
  const look = cell(2, 'look');
  const state = card.formula(...(raws as never[])) as string;
  const result = desk.steps.row({ label: 'state', formula: checkFormula(card.id === 'CHECK.MAX' ? 'max' : 'min', value, limit, look), value: state, words: card.id === 'CHECK.MAX' ? 'pass up to look, look up to the limit, fail above' : 'pass down to look, look down to the limit, fail below' }, 'result');
  desk.steps.gap();
  return { cells: [result], live: true };
}
