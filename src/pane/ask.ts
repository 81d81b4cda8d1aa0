// A question that names all that one function needs is answered at once. What is left over, or left out, gives no answer.
import MiniSearch from 'minisearch';
import type { Cell } from '../core/kinds';
import { stemGerman } from '../help/german';
import { call, CARDS } from '../registry';

/** What a question may name. */
type AskedKind = 'size' | 'material' | 'head' | 'length' | 'angle' | 'share' | 'fit';

interface Intent {
  readonly id: string;
  /** English and German; all words of one must be there. */
  readonly phrases: readonly string[];
  /** In the order of the arguments: what fills each, the first that was named; behind `?` it may be left out. A text stands for itself. */
  readonly args: readonly (readonly AskedKind[] | `?${AskedKind}` | { readonly is: string })[];
}

const property = (quantity: string, ...phrases: readonly string[]): Intent => ({
  id: 'MATERIAL',
  phrases,
  args: [['material'], { is: quantity }],
});

const INTENTS: readonly Intent[] = [
  {
    id: 'HOLE.PILOT',
    phrases: ['pilot hole', 'pilot', 'pilot diameter', 'core hole', 'kernloch', 'vorbohrung', 'kernbohrung', 'kernlochdurchmesser'],
    args: [['size'], ['share', 'material']],
  },
  { id: 'HOLE.CLEARANCE', phrases: ['clearance hole', 'through hole', 'durchgangsloch', 'durchgangsbohrung'], args: [['size'], '?fit'] },
  { id: 'SCREW.HEAD.DIAMETER', phrases: ['head diameter', 'kopfdurchmesser'], args: [['size'], ['head']] },
  { id: 'SCREW.HEAD.HEIGHT', phrases: ['head height', 'kopfhöhe'], args: [['size'], ['head']] },
  { id: 'SCREW.PITCH', phrases: ['pitch', 'thread pitch', 'steigung', 'gewindesteigung'], args: [['size']] },
  { id: 'SCREW.ROOT', phrases: ['root diameter', 'core diameter', 'minor diameter', 'kerndurchmesser'], args: [['size']] },
  { id: 'SCREW.MAJOR', phrases: ['major diameter', 'thread diameter', 'aussendurchmesser', 'gewindedurchmesser'], args: [['size']] },
  { id: 'SCREW.POINT', phrases: ['point length', 'spitzenlänge'], args: [['size']] },
  { id: 'SCREW.LENGTHS', phrases: ['standard lengths', 'normlängen'], args: [['size']] },
  { id: 'SCREW.LENGTH.TOL', phrases: ['length tolerance', 'längentoleranz'], args: [['size'], ['length']] },
  {
    id: 'BOSS.OD.RULE',
    phrases: ['boss diameter', 'boss outside diameter', 'boss od', 'domdurchmesser', 'domaussendurchmesser'],
    args: [['size'], ['material']],
  },
  { id: 'WALL.FEATURE', phrases: ['rib thickness', 'feature wall', 'rippendicke', 'rippenstärke'], args: [['length'], '?share'] },
  { id: 'DRAFT.OFFSET', phrases: ['draft offset', 'offset draft', 'entformungsversatz'], args: [['length'], ['angle']] },
  { id: 'LENGTH.MM', phrases: ['convert', 'convert mm', 'millimetres', 'umrechnen', 'umrechnen mm', 'millimeter'], args: [['length']] },
  property('shrinkage', 'shrinkage', 'mould shrinkage', 'schwindung'),
  property('density', 'density', 'dichte'),
  property('modulus', 'modulus', 'stiffness', 'e-modul', 'elastizitätsmodul'),
  property('strength', 'strength', 'yield strength', 'festigkeit', 'streckspannung'),
  property('expansion', 'thermal expansion', 'wärmeausdehnung'),
];

/** Words without a meaning of their own here. */
const FILLERS = new Set(
  [
    'a an the what is are which how big large wide much of for in to at by with and do i need does have my screw screws plastic size mm',
    'value give me was wie welche welcher welches ist sind der die das den dem ein eine einen für im mit von aus bei und brauche ich hat',
    'haben schraube schrauben gross kunststoff',
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
  ['share', new RegExp(String.raw`${NUMBER}\s*%`, 'g')],
  ['angle', new RegExp(String.raw`${NUMBER}\s*(?:°|deg(?:ree)?s?\b|grad\b)`, 'gi')],
  ['length', new RegExp(String.raw`${NUMBER}\s*(?:mm\b|inch(?:es)?\b|in\b|zoll\b|mil\b|")`, 'gi')],
];

const isMaterial = (text: string): boolean => call('MATERIAL', [text, 'density']).ok;
const unitless = (text: string): string => text.replace(/zoll|inch(?:es)?/i, 'in').replace(/degrees?|grad/i, 'deg');

type AskedTexts = Readonly<Record<AskedKind, string[]>>;

/** What a question names, and the words that are left. */
function taken(asked: string): { readonly named: AskedTexts; readonly words: readonly string[] } {
  const named: AskedTexts = { size: [], material: [], head: [], length: [], angle: [], share: [], fit: [] };
  let rest = ` ${asked.replace(/[?!;:]+/g, ' ').replace(/,(?!\d)|\.(?!\d)/g, ' ')} `;
  for (const [slot, pattern] of PATTERNS)
    rest = rest.replace(pattern, (found: string, inner: unknown) => {
      named[slot].push(unitless(typeof inner === 'string' ? inner : found));
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

const PHRASES: readonly IntentPhrase[] = INTENTS.flatMap(({ phrases }, intent) => phrases.map(phrase => ({ id: phrase, phrase, intent })));
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

/** What the words ask for: all of them, one letter in five may be wrong. Undefined where they fit two things alike. */
function intentOf(words: readonly string[]): Intent | undefined {
  if (words.length === 0) return undefined;
  const all = new Set(words.map(stemGerman)).size;
  const fits = index
    .search(words.join(' '), { fuzzy: term => (term.length < 5 ? 0 : 0.2) })
    .filter(({ id, terms, queryTerms }) => new Set(terms).size === WORDS_OF.get(String(id)) && new Set(queryTerms).size === all);
  const [best, ...others] = fits;
  if (best === undefined || others.some(({ score, intent }) => score === best.score && intent !== best.intent)) return undefined;
  return INTENTS[best.intent as number];
}

/** The arguments in their order, undefined where one is missing or what was named has no place. */
function argumentsFor({ args }: Intent, named: AskedTexts): string[] | undefined {
  const left = Object.fromEntries(Object.entries(named).map(([slot, texts]) => [slot, [...texts]])) as Record<AskedKind, string[]>;
  const given: string[] = [];
  for (const arg of args) {
    if (typeof arg === 'object' && 'is' in arg) given.push(arg.is);
    else if (typeof arg === 'string') {
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
  const intent = intentOf(words);
  const args = intent && argumentsFor(intent, named);
  const card = intent && CARDS.get(intent.id);
  if (args === undefined || card === undefined) return undefined;
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
