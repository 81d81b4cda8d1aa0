// A question that names all that one function needs is answered at once. What is left over, or left out, gives no answer.
import MiniSearch from 'minisearch';
import type { Cell } from '../core/kinds';
import { stemGerman } from '../help/german';
import { call, CARDS } from '../registry';
import { INTENTS, type AskedKind, type Intent } from './ask-intents';

/** Words without a meaning of their own here. */
const FILLERS = new Set(
  [
    'a an the what is are which how big large wide much of for in to at by with and do i need does have my screw screws plastic size mm',
    'value give me was wie welche welcher welches ist sind der die das den dem ein eine einen für im mit von aus bei und brauche ich hat',
    'haben schraube schrauben gross kunststoff bitte zum zur wird calculate find tell please long thick should must between',
  ].flatMap(words => words.split(' ')),
);

const HEADS: Readonly<Record<string, string>> = {
  'raised countersunk': 'raised countersunk',
  linsensenkkopf: 'raised countersunk',
  countersunk: 'countersunk',
  senkkopf: 'countersunk',
  'socket cap': 'socket cap',
  'slotted pan': 'slotted pan',
  pan: 'pan',
  flachkopf: 'pan',
  cheese: 'cheese',
  button: 'button',
};
const FITS: Readonly<Record<string, string>> = {
  fine: 'fine',
  medium: 'medium',
  coarse: 'coarse',
  fein: 'fine',
  mittel: 'medium',
  grob: 'coarse',
};

const NUMBER = String.raw`\d+(?:[.,]\d+)?(?:\/\d+)?`;
const SCREW = String.raw`(?:\bM\s?${NUMBER}|\bST\s?${NUMBER}|#\d+(?:-\d+|\s?AB|\s?B)?)(?![\w.])`;
const PATTERNS: readonly (readonly [slot: AskedKind, pattern: RegExp])[] = [
  ['length', new RegExp(String.raw`(?<=${SCREW}\s*)[x×]\s*(${NUMBER})(?:\s*mm)?(?!\S)`, 'gi')],
  ['size', new RegExp(SCREW, 'gi')],
  ['group', /\b(?:DIN\s?16742-?\s?)?TG\d\b|\bDIN\s?16901-\d+\b/gi],
  ['grade', /\bIT\s?\d{1,2}\b/g],
  ['share', new RegExp(String.raw`${NUMBER}\s*%`, 'g')],
  ['angle', new RegExp(String.raw`${NUMBER}\s*(?:°|deg(?:ree)?s?\b|grad\b)`, 'gi')],
  ['length', new RegExp(String.raw`${NUMBER}\s*(?:mm\b|cm\b|inch(?:es)?\b|in\b|zoll\b|mil\b|")`, 'gi')],
];

const isMaterial = (text: string): boolean => call('MATERIAL', [text, 'density']).ok;
const unitless = (text: string): string => text.replace(/zoll|inch(?:es)?/i, 'in').replace(/degrees?|grad/i, 'deg');
const NAMED_AS: Partial<Readonly<Record<AskedKind, (text: string) => string>>> = {
  grade: text => text.replace(/\s/, ''),
  group: text => text.toUpperCase().replace(/^(?:DIN\s?16742-?\s?)?TG/, 'DIN 16742-TG'),
};

type AskedTexts = Readonly<Record<AskedKind, string[]>>;

/** What a question names, and the words that are left. */
function taken(asked: string): { readonly named: AskedTexts; readonly words: readonly string[] } {
  const named: AskedTexts = { size: [], material: [], head: [], length: [], angle: [], share: [], fit: [], grade: [], group: [] };
  let rest = ` ${asked
    .replace(/\bENCL\./gi, '')
    .replace(/(?<=[a-z])\.(?=[a-z])/gi, ' ')
    .replace(/[?!;:]+/g, ' ')
    .replace(/,(?!\d)|\.(?!\d)/g, ' ')} `;
  for (const [slot, pattern] of PATTERNS)
    rest = rest.replace(pattern, (found: string, inner: unknown) => {
      named[slot].push((NAMED_AS[slot] ?? unitless)(typeof inner === 'string' ? inner : found));
      return ' ';
    });
  rest = rest.replace(/\biso\s?\d{3,5}\b/gi, found => (named.head.push(found.toUpperCase().replace(/ISO\s?/, 'ISO ')), ' '));
  for (const [word, head] of Object.entries(HEADS))
    rest = rest.replace(new RegExp(`(?<=\\s)${word}(?:\\s?heads?|s)?(?=\\s)`, 'gi'), () => (named.head.push(head), ' '));
  const words: string[] = [];
  for (const word of rest.split(/\s+/).filter(text => text !== '')) {
    const fit = FITS[word.toLowerCase()];
    if (fit !== undefined) named.fit.push(fit);
    else if (/^[A-Z]{2}/i.test(word) && !FILLERS.has(word.toLowerCase()) && isMaterial(word)) named.material.push(word.toUpperCase());
    else if (!FILLERS.has(word.toLowerCase())) words.push(word);
  }
  return { named, words };
}

interface IntentPhrase {
  readonly id: string;
  readonly phrase: string;
  readonly intent: number;
}

const PHRASES: readonly IntentPhrase[] = INTENTS.flatMap(({ phrases }, intent) =>
  phrases.map(phrase => ({ id: `${phrase} ${intent}`, phrase, intent })),
);
const index = new MiniSearch<IntentPhrase>({
  fields: ['phrase'],
  storeFields: ['intent'],
  tokenize: text => text.split(/\s+/),
  processTerm: stemGerman,
});
index.addAll(PHRASES);
const WORDS_OF: ReadonlyMap<string, number> = new Map(
  PHRASES.map(({ id, phrase }) => [id, new Set(phrase.split(' ').map(stemGerman)).size]),
);

/** What the words ask for: all of them, one letter in five may be wrong. More than one where they fit several alike. */
function intentsOf(words: readonly string[]): readonly Intent[] {
  const all = new Set(words.map(stemGerman)).size;
  const fits = index
    .search(words.join(' '), { fuzzy: term => (term.length < 5 ? 0 : 0.2) })
    .filter(({ id, terms, queryTerms }) => new Set(terms).size === WORDS_OF.get(String(id)) && new Set(queryTerms).size === all);
  return [...new Set(fits.filter(({ score }) => score === fits[0]?.score).map(fit => INTENTS[fit.intent as number]))].filter(
    intent => intent !== undefined,
  );
}

/** The arguments in their order, undefined where one is missing or what was named has no place. */
function argumentsFor({ args }: Intent, named: AskedTexts): string[] | undefined {
  const left = Object.fromEntries(Object.entries(named).map(([slot, texts]) => [slot, [...texts]])) as Record<AskedKind, string[]>;
  const given: string[] = [];
  for (const arg of args) {
    if (typeof arg === 'object' && 'is' in arg) given.push(arg.is);
    else if (arg === 'screw and head') {
      const [size, head] = [left.size.shift(), left.head.shift()];
      if (size === undefined || head === undefined) return undefined;
      given.push(`${size} ${head}`);
    } else if (typeof arg === 'string') {
      const text = left[arg.slice(1) as AskedKind].shift();
      if (text !== undefined) given.push(text);
    } else {
      const text = arg.flatMap(slot => (left[slot].length > 0 ? [left[slot].shift() ?? ''] : []))[0];
      if (text === undefined) return undefined;
      given.push(text);
    }
  }
  return Object.values(left).every(texts => texts.length === 0) ? given : undefined;
}

export interface Told {
  readonly id: string;
  readonly args: readonly string[];
  readonly value: Cell | readonly (readonly Cell[])[];
  readonly unit: string;
  /** Formula with its numbers. */
  readonly working: string;
  readonly source: string;
  /** What was not asked for and is taken all the same. */
  readonly defaults: readonly string[];
}

/** Numbers in the core unit are numbers, as they would be typed. */
export function answerTo(asked: string): Told | undefined {
  const { named, words } = taken(asked);
  const fitting = intentsOf(words).flatMap(intent => {
    const args = argumentsFor(intent, named);
    return args === undefined ? [] : [{ id: intent.id, args }];
  });
  const [fit, ...others] = fitting;
  const card = fit && CARDS.get(fit.id);
  if (fit === undefined || card === undefined || others.length > 0) return undefined;
  const { args } = fit;
  const answer = call(card.id, args);
  if (!answer.ok) return undefined;
  const working = call('WORKING', [card.id, ...args]);
  return {
    id: card.id,
    args,
    value: answer.value,
    unit: card.id === 'MATERIAL' ? '' : 'unit' in card.result ? String(card.result.unit) : '',
    working: working.ok ? String(working.value) : '',
    source: [card.kind, ...card.sources.map(({ title }) => title)].join(': '),
    defaults: card.params
      .slice(args.length)
      .flatMap(({ name, blank }) => (typeof blank === 'object' && 'default' in blank ? [`${name} ${blank.default}`] : [])),
  };
}
