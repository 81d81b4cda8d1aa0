// The formulas of a call on its bound arguments: out of its plain form, or as a look-up on the Data sheet.
import { allOf } from '../inputs';
import { type Card, NOTHING_READ, type Param } from '../../../core/card';
import { isBlank } from '../../../core/read/cells';
import type { Size } from '../../../core/screw/size';
import { formNamed } from '../../../plain/forms';
import { print, symbol, stepWords } from '../../../plain/print';
import { atom, type CellFormula, spreadsheetFormulas, type Ref, type Step } from '../../../plain/spreadsheet';
import { type Form, visit } from '../../../plain/tree';
import type { Argument, BoundArgument } from '../arguments/argument';
import { bind } from '../arguments/bind';
import { sizeKey } from '../arguments/screw';
import type { ConversionContext } from '../context';
import { LOOK_UPS } from '../lookups';
import { partsRelated, relations } from '../relations';
import { unchanged } from '../unchanged';

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

const needed = new WeakMap<Card, ReadonlySet<string>>();

function neededBy(card: Card, form: Form): ReadonlySet<string> {
  const known = needed.get(card) ?? partsRead(form, new Set(partsRelated(card)));
  needed.set(card, known);
  return known;
}

interface CallFormulas {
  readonly bound: readonly BoundArgument[];
  readonly related: readonly string[];
  readonly results: readonly (CellFormula | undefined)[];
  readonly words: readonly string[];
}

/** The argument whose text brings along what this one leaves blank: the screw of a length tolerance its point. */
function broughtBy(context: ConversionContext, { params }: Card, args: readonly Argument[], i: number): Argument | undefined {
  const { blank, kind } = params[i] as Param;
  if (typeof blank !== 'object' || !('take' in blank)) return undefined;
  const worth = ({ node, sheet }: Argument): unknown => (node === null ? null : context.source.evaluate(node, sheet));
  if (!isBlank(worth(args[i] as Argument))) return undefined;
  const from = args[params.findIndex(({ name }) => name === blank.sameAs)] as Argument;
  const text = worth(from);
  return typeof text === 'string' && kind.from?.read(text, NOTHING_READ) !== undefined ? from : undefined;
}

/** Each argument bound, in order: a later one may take what an earlier one brings along. */
export function boundArguments(
  context: ConversionContext,
  card: Card,
  args: readonly Argument[],
  values: readonly unknown[],
  needed: ReadonlySet<string>,
  of: (param: Param, i: number) => BoundArgument | undefined = (param, i) => {
    const from = broughtBy(context, card, args, i);
    const argument = args[i] as Argument;
    if (from === undefined) return bind(context, param, argument, values[i], needed);
    const blank = unchanged(context, argument);
    const bound = bind(context, param, { ...argument, node: from.node }, values[i], needed);
    return blank && bound && { ...bound, conditions: [...bound.conditions, ...blank] };
  },
): BoundArgument[] | undefined {
  const bound: BoundArgument[] = [];
  for (const [i, param] of card.params.entries()) {
    const one = of(param, i);
    if (one === undefined) return undefined;
    bound.push(one);
    (args[i]?.preceding as Map<string, Ref>).set(param.name, one.ref);
  }
  return bound;
}

export function boundForm(
  context: ConversionContext,
  card: Card,
  form: Form,
  args: readonly Argument[],
  values: readonly unknown[],
): CallFormulas | undefined {
  const bound = boundArguments(context, card, args, values, neededBy(card, form));
  if (bound === undefined) return undefined;
  const said = wordsOf(card, form);
  const step: Step = (name, text, value) =>
    context.steps.row({
      label: stepWords(name),
      formula: text,
      // a step that is not looked at may have none
      ...(value === undefined || Number.isNaN(value) ? {} : { value }),
      words: said.steps.get(name) ?? '',
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
    words: said.results,
  };
}

interface Worded {
  readonly steps: ReadonlyMap<string, string>;
  readonly results: readonly string[];
}

const worded = new WeakMap<Card, Worded>();

/** The same for every call of a function. */
function wordsOf(card: Card, form: Form): Worded {
  const known =
    worded.get(card) ??
    symbolic(
      form,
      card.params.map(({ name }) => name.replace(/_/g, ' ')),
    );
  worded.set(card, known);
  return known;
}

/** The steps and results with names in place of numbers: what they say stays true when a number changes. */
function symbolic(form: Form, names: readonly string[]): Worded {
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

export function boundLookUp(
  context: ConversionContext,
  card: Card,
  args: readonly Argument[],
  values: readonly unknown[],
): CallFormulas | undefined {
  const followed: string[] = [];
  let isFollowed = false;
  const bound = boundArguments(context, card, args, values, new Set(), (param, i) => {
    if (typeof values[i] === 'number') return bind(context, param, args[i] as Argument, values[i], new Set());
    // the size is followed by its cell where the table is entered with it
    const conditions = i === 0 ? [] : unchanged(context, args[i] as Argument);
    return conditions && { ref: atom(''), conditions, live: false };
  });
  if (bound === undefined) return undefined;
  const size = values[0] as Size;
  let isLost = false;
  const formula = LOOK_UPS[card.id]?.(
    {
      size: row => {
        const found = sizeKey(context, args[0] as Argument, row === size.gauge && size.text !== row ? row : size.text);
        if (found === undefined) isLost = true;
        else followed.push(...found.conditions);
        isFollowed ||= found?.live === true;
        return found?.key ?? '""';
      },
      cell: index => (bound[index]?.ref as { text: string }).text,
      lookup: (table, key, row) => context.data.lookup(table, key, row),
      band: (table, key, cell) => context.data.band(table, key, cell),
    },
    values,
  );
  if (formula === undefined || isLost) return undefined;
  const size0 = bound[0];
  return {
    bound: size0 === undefined ? bound : [{ ...size0, live: size0.live || isFollowed }, ...bound.slice(1)],
    related: followed,
    results: [{ formula }],
    words: [`from the table on ${context.data.name}`],
  };
}

/** The step that says whether all conditions of a call hold; undefined where there are none. */
export const inLimits = ({ steps }: Pick<ConversionContext, 'steps'>, conditions: readonly string[]): string | undefined =>
  conditions.length === 0
    ? undefined
    : steps.row({
        label: 'inputs in limits',
        formula: allOf(conditions),
        value: true,
        words: 'limits of the function; blank or text is not in limits',
      });
