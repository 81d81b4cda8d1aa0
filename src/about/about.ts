// What a function is, in a cell: put together from its sentence, its card and its plain form.
import { withUnit } from '../core/call';
import type { Blank, Card, NameKind, Param, Result } from '../core/card';
import { limitWords } from '../core/read/limits';
import { formOfCard, whatOf } from '../plain/forms';
import { type Piece, print, symbol } from '../plain/print';

export const ITEMS = { what: [], formula: [], symbols: [], limits: [], source: [], held: [], caution: [], example: [] } as const;
export type Item = keyof typeof ITEMS;

/** The longest text given. */
const MOST_CHARACTERS = 1000;
/** What is left out of a text that would be longer, the first that is enough: a caution never is. */
const LEFT_OUT: readonly (readonly Item[])[] = [
  [],
  ['example'],
  ['formula', 'example'],
  ['symbols', 'example'],
  ['formula', 'symbols', 'example'],
];

const NUT_SYMBOLS = { flatsMaxMm: 's' };
const SCREW_SYMBOLS = { nominalMm: 'd', majorMaxMm: 'd1', majorMinMm: 'd1 min', rootMaxMm: 'd2', pitchMm: 'P' };

export const nameOf = (param: Param): string => param.symbol ?? param.name.replace(/_/g, ' ');

/** The symbols of what formulas take from a parameter that is a record. */
export function partSymbols(param: Param): Readonly<Record<string, string>> | undefined {
  const { kind } = param;
  switch (kind.is) {
    case 'screw':
      return SCREW_SYMBOLS;
    case 'nut':
      return NUT_SYMBOLS;
    case 'deviation':
      return deviationSymbols(param);
    case 'list':
      return kind.of.is === 'deviation' ? deviationSymbols(param) : undefined;
    default:
      return noParts(kind.is);
  }
}

/** Kinds whose values have no parts that a formula takes, by name, so that a new one is asked for. */
const noParts = (
  _is:
    | NameKind
    | 'quantity'
    | 'whole'
    | 'limit'
    | 'cone'
    | 'size with limits'
    | 'choice'
    | 'grade'
    | 'group'
    | 'material'
    | 'names'
    | 'values'
    | 'block'
    | 'anything',
): undefined => undefined;

const deviationSymbols = (param: Param): Readonly<Record<string, string>> => ({
  upperMm: `${nameOf(param)}⁺`,
  lowerMm: `${nameOf(param)}⁻`,
});

function asSymbol(param: Param): Piece {
  const parts = partSymbols(param);
  return {
    ...symbol(nameOf(param)),
    ...(parts === undefined ? {} : { parts: Object.fromEntries(Object.entries(parts).map(([key, text]) => [key, symbol(text)])) }),
  };
}

function formula(card: Card): string {
  const form = formOfCard(card.id);
  if (form === undefined) return withoutForm(card);
  const { text, items } = print(form, card.params.map(asSymbol));
  return items === undefined
    ? `${resultSymbol(card.result)} = ${text}`
    : items.map((item, i) => `${columnName(card.result, i)} = ${item.text}`).join('; ');
}

/** A look-up, a table by its columns, or why there is no formula. */
export function withoutForm({ kind, result, notLive }: Card): string {
  if (kind === 'standard table' && result.shape === 'number') return `look-up: ${result.name} of the table of the standard`;
  if ('columns' in result && result.columns.length > 0)
    return `a table of ${result.columns.map(({ name, unit }) => withUnit(name, unit)).join('; ')}`;
  return notLive ?? ('name' in result ? result.name : 'none; the answer is a text');
}

export const resultSymbol = (result: Result): string => (result.shape === 'number' ? (result.symbol ?? result.name) : 'result');
export const columnName = (result: Result, i: number): string =>
  'columns' in result ? (result.columns[i]?.name ?? String(i + 1)) : String(i + 1);

function symbols(card: Card): string {
  const own = card.params.map(param => `${nameOf(param)}: ${param.name}${param.kind.unit === '' ? '' : `, ${param.kind.unit}`}`);
  const screw = card.params.some(({ kind }) => kind.is === 'screw')
    ? ['d nominal, d1 major max, d2 root max, P pitch of the screw, mm']
    : [];
  const nut = card.params.some(({ kind }) => kind.is === 'nut') ? ['s width across flats of the nut, max, mm'] : [];
  return [...own, ...screw, ...nut].join('; ') || '–';
}

export function blankWords(blank: Blank): string {
  if (typeof blank === 'object')
    return 'default' in blank ? `blank: ${blank.default}` : `blank: ${blank.take === undefined ? 'as' : 'from'} ${blank.sameAs}`;
  return { refused: 'must be given', zero: 'blank: 0', explicit: 'write zero with its unit', absent: 'may be left out' }[blank];
}

function limits(card: Card): string {
  return (
    card.params
      .map(param =>
        [param.name, [limitWords(param.limits, param.kind.unit), blankWords(param.blank)].filter(text => text !== '').join(', ')].join(
          ': ',
        ),
      )
      .join('; ') || '–'
  );
}

const shownArgument = (raw: unknown): string =>
  typeof raw === 'string'
    ? `"${raw}"`
    : Array.isArray(raw)
      ? `{${raw.map(row => (row as unknown[]).map(shownArgument).join(',')).join(';')}}`
      : raw === null
        ? ''
        : String(raw);

/** The arguments of the example as they are typed. */
export const exampleArguments = ({ example: { args } }: Card): string[] => args.map(shownArgument);

/** The call of the example as it is typed. */
export const exampleCall = (card: Card): string => `=ENCL.${card.id}(${exampleArguments(card).join(', ')})`;

function example(card: Card): string {
  const call = exampleCall(card);
  return 'result' in card.example && !Array.isArray(card.example.result) ? `${call} gives ${String(card.example.result)}` : call;
}

const PARTS: Readonly<Record<Item, (card: Card) => string>> = {
  what: card => whatOf(card.id),
  formula,
  symbols,
  limits,
  source: ({ kind, sources }) =>
    [
      kind,
      sources
        .map(({ title }) => title)
        .filter(title => title !== kind)
        .join('; '),
    ]
      .filter(text => text !== '')
      .join(': '),
  held: card => card.sources.map(({ held }) => held).join('; '),
  caution: card => card.caution ?? '–',
  example,
};

export function about(card: Card, item: Item | undefined): string {
  if (item !== undefined) return shortened(PARTS[item](card));
  const parts = (Object.keys(PARTS) as Item[]).map(key => [key, PARTS[key](card)] as const).filter(([, text]) => text !== '–');
  const lines = (left: readonly Item[]): string =>
    [
      ...parts
        .filter(([key]) => !left.includes(key))
        .map(([key, text]) => (key === 'what' ? text : `${key[0]?.toUpperCase()}${key.slice(1)}: ${text}`)),
      ...(left.length === 0 ? [] : [`Too long to show here; ask by name: ${left.join(', ')}`]),
    ].join('\n');
  const texts = LEFT_OUT.map(lines);
  return shortened(texts.find(text => text.length <= MOST_CHARACTERS) ?? (texts[texts.length - 1] as string));
}

const shortened = (text: string): string => (text.length <= MOST_CHARACTERS ? text : `${text.slice(0, MOST_CHARACTERS - 1)}…`);
