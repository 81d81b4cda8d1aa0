// In which language a help page is written. Names, states and whatever a cell holds are English in both; so is what has no German, and is
// marked.
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Card } from '../core/card';
import { ENGLISH as ENGLISH_FIGURES, type FigureSpeech } from '../figure/speech';
import { acceptsInGerman, defaultOf } from '../german/accepts';
import { cautionOf } from '../german/cautions';
import { meaningOf, RULES } from '../german/joint';
import { inGerman } from '../german/metadata';
import { limitInGerman, reasonInGerman } from '../german/reasons';
import type { Rule } from '../joint/graph';
import type { RuleName } from '../joint/rules';
import { DRAWN } from '../words/german/drawn';
import type { Described } from './described-function';
import { sentenceIn } from './shown-cell';
import { ENGLISH as ENGLISH_WORDS, type HelpWords } from './words/english';
import { GERMAN as GERMAN_WORDS } from './words/german';

export interface HelpLanguage {
  readonly lang: 'en-GB' | 'de';
  /** What marks a passage as English where the page is not. */
  readonly english: 'en' | undefined;
  /** Where its pages are in the folder of the help, and the way back from there. */
  readonly folder: '' | 'de/';
  readonly up: '' | '../';
  readonly words: HelpWords;
  readonly figures: FigureSpeech;
  readonly described: (listed: Described) => Described;
  readonly caution: (card: Card) => string | undefined;
  /** Of an input or output of the joint, beside its English name. */
  readonly beside: (name: string) => string | undefined;
  readonly ruleBeside: (name: string) => string | undefined;
  readonly broken: (rule: Rule) => string;
  /** What an argument accepts. */
  readonly accepted: (english: string) => string;
  /** What counts where an input is not given. */
  readonly fallback: (english: string) => string;
  /** A text with numbers in it. */
  readonly numbers: (text: string) => string;
}

const asItIs = (text: string): string => text;
const nothing = (): undefined => undefined;

export const ENGLISH: HelpLanguage = {
  lang: 'en-GB',
  english: undefined,
  folder: '',
  up: '',
  words: ENGLISH_WORDS,
  figures: ENGLISH_FIGURES,
  described: listed => listed,
  caution: ({ caution }) => caution,
  beside: nothing,
  ruleBeside: nothing,
  broken: ({ broken }) => broken,
  accepted: asItIs,
  fallback: asItIs,
  numbers: asItIs,
};

const DECIMAL = ',';
const ruleInGerman = (name: string): { readonly name: string; readonly broken: string } => RULES[name as RuleName];

export const GERMAN: HelpLanguage = {
  lang: 'de',
  english: 'en',
  folder: 'de/',
  up: '../',
  words: GERMAN_WORDS,
  figures: { words: DRAWN, decimal: DECIMAL, reason: reasonInGerman, limit: broken => limitInGerman(broken, []) },
  described: inGerman,
  caution: ({ id }) => cautionOf(id),
  beside: meaningOf,
  ruleBeside: name => ruleInGerman(name).name,
  broken: ({ name }) => ruleInGerman(name).broken,
  accepted: acceptsInGerman,
  fallback: defaultOf,
  numbers: text => sentenceIn(text, DECIMAL),
};

export const LANGUAGES: readonly HelpLanguage[] = [ENGLISH, GERMAN];

export const Spoken = createContext(ENGLISH);
export const useLanguage = (): HelpLanguage => useContext(Spoken);
