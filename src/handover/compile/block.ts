// One call as a block on the Steps sheet: its inputs, its named steps, whether the inputs are in limits, its result.
import type { Card, Param } from '../../core/card';
import { readArguments } from '../../core/call';
import type { Cell } from '../../core/kinds';
import { ANYTHING, param as anyParam } from '../../core/read/params';
import { Refused } from '../../core/refuse';
import type { Size } from '../../core/screw/size';
import { formNamed, formOfCard } from '../../plain/forms';
import { print, symbol, stepWords } from '../../plain/print';
import { atom, type CellFormula, spreadsheetFormulas, type Ref, type Step } from '../../plain/spreadsheet';
import { type Form, visit } from '../../plain/tree';
import { call } from '../../registry';
import { type Argument, asSent, bind, type Bound, type Desk, sizeKey } from './bind';
import { checkFormula, worstFormula } from './checks';
import { fixedArea } from '../../sheet/addresses';
import { areaOf, type FormulaNode } from '../../sheet/formula';
import { allOf } from './inputs';
import { blockTitle } from './labels';
import { LOOK_UPS } from './lookups';
import { partsRelated, relations } from './relations';
import { isFault, isRows, type Known } from '../../sheet/workbook-values';

export interface Block {
  /** The cells with the results, row by row; a word that never changes stands in quotes. */
  readonly cells: readonly string[];
  /** What the cells hold, where that is not what the call gave at home. */
  readonly values?: readonly Cell[];
  readonly live: boolean;
}

/** Which parts of records the form reads, itself or through the forms it calls. */
function partsRead(form: Form, found: Set<string>): Set<string> {
  visit(form, {
    of: (_, part) => void found.add(part),
    call: formula => {
      const called = formNamed(formula);
      if (called !== undefined) partsRead(called, found);
    },
  });
  return found;
}

const source = (card: Card): string => `${card.kind}: ${card.sources.map(({ title, held }) => `${title} (${held})`).join('; ')}`;

export interface Call {
  readonly card: Card;
  readonly node: FormulaNode;
  readonly formula: string;
  readonly sheet: string;
  readonly at: string;
}

/** Writes the block. Nothing where the call has no plain form, or its arguments cannot be followed here. */
export function block(desk: Desk, { card, node, formula, sheet, at }: Call): Block | undefined {
  const earlier = new Map<string, Ref>();
  const args = card.params.map((_, i): Argument => ({ node: node.arguments?.[i] ?? null, formula, sheet, earlier }));
  const raws = args.map(arg => desk.source.evaluate(arg.node, sheet));
  if (raws.includes(undefined)) return undefined;
  if (card.id === 'CHECK.MAX' || card.id === 'CHECK.MIN')
    return limitCheck(desk, card, args, raws, blockTitle(desk.source, sheet, at, card.id));
  if (card.id === 'CHECK.WORST') return worstCheck(desk, card, args, raws, blockTitle(desk.source, sheet, at, card.id));
  const form = formOfCard(card.id);
  const lookUp = LOOK_UPS[card.id];
  if ((form === undefined && lookUp === undefined) || card.result.shape === 'text') return undefined;
  const answer = call(card.id, raws);
  const values = answer.ok ? valuesOf(card, raws) : undefined;
  if (!answer.ok || values === undefined) return undefined;
  const mark = desk.steps.mark();
  desk.steps.heading(blockTitle(desk.source, sheet, at, card.id));
  const written = lookUp === undefined ? boundForm(desk, card, form as Form, args, values) : boundLookUp(desk, card, args, values);
  if (written === undefined) {
    desk.steps.backTo(mark);
    return undefined;
  }
  const body = isRows(answer.value)
    ? card.result.shape === 'table' && 'columns' in card.result && card.result.columns.length > 0
      ? answer.value.slice(1)
      : answer.value
    : [[answer.value]];
  const conditions = [...new Set(written.bound.flatMap(b => b.conditions).concat(written.related))];
  const ok =
    conditions.length === 0
      ? undefined
      : desk.steps.row({
          label: 'inputs in limits',
          formula: allOf(conditions),
          value: true,
          words: 'limits of the function; blank or text is not in limits',
        });
  const width = body[0]?.length ?? 1;
  const cells = body.flat().map((value, i) => {
    const result = written.results[i];
    if (result === undefined) return '""';
    if (result.formula.startsWith('"')) return result.formula;
    const state = typeof value === 'string' ? '"not checked"' : 'NA()';
    return desk.steps.row(
      {
        label: resultName(card, i, body, width),
        formula: ok === undefined ? result.formula : `IF(${ok},${result.formula},${state})`,
        value: value as Cell,
        unit: resultUnit(card, i % width),
        words: written.words[i] ?? '',
        source: source(card),
      },
      'result',
    );
  });
  desk.steps.gap();
  return { cells, live: written.bound.some(b => b.live) };
}

function valuesOf(card: Card, raws: readonly Known[]): unknown[] | undefined {
  try {
    return readArguments(card, raws);
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}

interface Written {
  readonly bound: readonly Bound[];
  readonly related: readonly string[];
  readonly results: readonly (CellFormula | undefined)[];
  readonly words: readonly string[];
}

function boundArguments(
  desk: Desk,
  card: Card,
  args: readonly Argument[],
  values: readonly unknown[],
  needed: ReadonlySet<string>,
  of: (param: Param, i: number) => Bound | undefined = (param, i) => bind(desk, param, args[i] as Argument, values[i], needed),
): Bound[] | undefined {
  const bound: Bound[] = [];
  for (const [i, param] of card.params.entries()) {
    const one = of(param, i);
    if (one === undefined) return undefined;
    bound.push(one);
    (args[i]?.earlier as Map<string, Ref>).set(param.name, one.ref);
  }
  return bound;
}

function boundForm(desk: Desk, card: Card, form: Form, args: readonly Argument[], values: readonly unknown[]): Written | undefined {
  const bound = boundArguments(desk, card, args, values, partsRead(form, new Set(partsRelated(card))));
  if (bound === undefined) return undefined;
  const worded = symbolic(
    form,
    card.params.map(({ name }) => name.replace(/_/g, ' ')),
  );
  const step: Step = (name, text, value) =>
    desk.steps.row({
      label: stepWords(name),
      formula: text,
      ...(value === undefined ? {} : { value }),
      words: worded.steps.get(name) ?? '',
    });
  const formulas = spreadsheetFormulas(
    form,
    bound.map(({ ref }) => ref),
    step,
  );
  return {
    bound,
    related: relations(
      card,
      bound.map(({ ref }) => ref),
    ),
    results: [formulas].flat(2) as CellFormula[],
    words: worded.results,
  };
}

/** The steps and results with names in place of numbers: what they say stays true when a number changes. */
function symbolic(
  form: Form,
  names: readonly string[],
): { readonly steps: ReadonlyMap<string, string>; readonly results: readonly string[] } {
  const steps = form.steps ?? [];
  const env = [...names, ...steps.map(([name]) => stepWords(name))].map(symbol);
  const params = [...form.params, ...steps.map(([name]) => name)];
  const printed = (tree: Form['result']): ReturnType<typeof print> => print({ params, result: tree }, env);
  const result = printed(form.result);
  const flat = (result.items ?? [result]).flatMap(item => item.items ?? [item]);
  // parts of records: `size majorMax`
  const plain = (text: string): string =>
    text.replace(/([a-z])([A-Z])/g, (_, before: string, capital: string) => `${before} ${capital.toLowerCase()}`);
  return { steps: new Map(steps.map(([name, tree]) => [name, plain(printed(tree).text)])), results: flat.map(({ text }) => plain(text)) };
}

function boundLookUp(desk: Desk, card: Card, args: readonly Argument[], values: readonly unknown[]): Written | undefined {
  const followed: string[] = [];
  let isFollowed = false;
  const bound = boundArguments(desk, card, args, values, new Set(), (param, i) => {
    if (typeof values[i] === 'number') return bind(desk, param, args[i] as Argument, values[i], new Set());
    // the size is followed by its cell where the table is entered with it
    const conditions = i === 0 ? [] : asSent(desk, args[i] as Argument);
    return conditions && { ref: atom(''), conditions, live: false };
  });
  if (bound === undefined) return undefined;
  const size = values[0] as Size;
  let isLost = false;
  const formula = LOOK_UPS[card.id]?.(
    {
      size: row => {
        const found = sizeKey(desk, args[0] as Argument, row === size.gauge && size.text !== row ? row : size.text);
        if (found === undefined) isLost = true;
        else followed.push(...found.conditions);
        isFollowed ||= found?.live === true;
        return found?.key ?? '""';
      },
      cell: index => (bound[index]?.ref as { text: string }).text,
      lookup: (table, key, row) => desk.data.lookup(table, key, row),
      band: (table, key, cell) => desk.data.band(table, key, cell),
    },
    values,
  );
  if (formula === undefined || isLost) return undefined;
  const size0 = bound[0];
  return {
    bound: size0 === undefined ? bound : [{ ...size0, live: size0.live || isFollowed }, ...bound.slice(1)],
    related: followed,
    results: [{ formula }],
    words: [`from the table on ${desk.data.name}`],
  };
}

function resultName({ id, result }: Card, i: number, body: readonly (readonly unknown[])[], width: number): string {
  if (result.shape === 'number' || result.shape === 'text' || result.shape === 'column') return result.name;
  const first = body[Math.floor(i / width)]?.[0];
  const column = result.columns[i % width]?.name ?? id;
  return body.length > 1 && typeof first === 'string' && i % width > 0 ? first : column;
}

const resultUnit = ({ result }: Card, column: number): string =>
  result.shape === 'number' ? result.unit : 'columns' in result ? (result.columns[column]?.unit ?? '') : '';

const VALUE = (name: string): Param => ({ ...anyParam(name, ANYTHING), blank: 'zero' });

/** A value beside a limit; an error among them goes along as it is. */
function limitCheck(desk: Desk, card: Card, args: readonly Argument[], raws: readonly Known[], title: string): Block | undefined {
  const answer = call(card.id, raws);
  if (!answer.ok || raws.some(raw => typeof raw === 'string' || typeof raw === 'boolean' || isRows(raw))) return undefined;
  const mark = desk.steps.mark();
  desk.steps.heading(title);
  const cells = ['value', 'limit', 'look'].map((name, i): string | undefined => {
    const raw = raws[i];
    if (args[i]?.node === null && i === 2) return undefined;
    const bound = bind(desk, VALUE(name), args[i] as Argument, typeof raw === 'number' ? raw : 0, new Set());
    return bound !== undefined && 'text' in bound.ref ? bound.ref.text : undefined;
  });
  const [value, limit, look] = cells;
  if (value === undefined || limit === undefined || raws.some(isFault)) {
    desk.steps.backTo(mark);
    return undefined;
  }
  const side = card.id === 'CHECK.MAX' ? 'max' : 'min';
  const words =
    side === 'max' ? 'pass up to look, look up to the limit, fail above' : 'pass down to look, look down to the limit, fail below';
  const result = desk.steps.row(
    { label: 'state', formula: checkFormula(side, value, limit, look), value: answer.value as Cell, words },
    'result',
  );
  desk.steps.gap();
  return { cells: [result], live: true };
}

function worstCheck(desk: Desk, card: Card, args: readonly Argument[], raws: readonly Known[], title: string): Block | undefined {
  const [first] = args;
  const area = first === undefined || first.node === null ? undefined : areaOf(first.node, first.sheet);
  const answer = call(card.id, raws);
  const states = isRows(raws[0]) ? raws[0].flat() : [raws[0]];
  // a comparison with an error is an error, and spaces around a word are not seen by a formula
  if (area === undefined || !answer.ok || states.some(state => isFault(state) || (typeof state === 'string' && state !== state.trim())))
    return undefined;
  desk.steps.heading(title);
  const cell = desk.steps.row(
    {
      label: 'worst state',
      formula: worstFormula(fixedArea(area), (area.bottom - area.top + 1) * (area.right - area.left + 1)),
      value: answer.value as Cell,
      words: 'fail, then not checked, then look, then pass',
    },
    'result',
  );
  desk.steps.gap();
  return { cells: [cell], live: true };
}
