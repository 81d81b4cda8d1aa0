// What the sender chooses of a hand-over.
import { PAPERS, type Paper } from './title-block';
import { type Language, LANGUAGES } from '../words/language';

export interface HandoverChoice {
  readonly paper: Paper;
  readonly language: Language;
  /** Of the sender's sheets those that go along; without it all. */
  readonly sheets?: readonly string[];
  /** Of the variants those that the part is made by; without it the best one. */
  readonly variants?: readonly string[];
  /** Of what can be measured, by name; without it all sizes of the chosen variants, or of single calls where there are no variants. */
  readonly characteristics?: readonly string[];
}

const LISTS = ['sheets', 'variants', 'characteristics'] as const;

/** As a workbook remembers it; nothing where it is none. */
export function readChoice(text: string | undefined): HandoverChoice | undefined {
  if (text === undefined) return undefined;
  let given: Readonly<Partial<Record<string, unknown>>>;
  try {
    given = JSON.parse(text) as Readonly<Partial<Record<string, unknown>>>;
  } catch {
    return undefined;
  }
  const { paper, language } = given;
  const lists = LISTS.flatMap(name => {
    const names = given[name];
    return Array.isArray(names) && names.every(one => typeof one === 'string') ? [[name, names] as const] : [];
  });
  return {
    paper: PAPERS.find(one => one === paper) ?? PAPERS[0],
    language: LANGUAGES.find(one => one === language) ?? LANGUAGES[0],
    ...Object.fromEntries(lists),
  };
}

const oneOf = <T extends string>(what: string, known: readonly T[], text: string): T => {
  const found = known.find(one => one.toLowerCase() === text.toLowerCase());
  if (found === undefined) throw new RangeError(`${what} is one of ${known.join(', ')}`);
  return found;
};

/** As it is typed: lists are separated by semicolons. */
export function choiceOf(given: Readonly<Partial<Record<string, string | boolean>>>): Partial<HandoverChoice> {
  const text = (name: string): string | undefined => (typeof given[name] === 'string' ? given[name] : undefined);
  const [paper, language] = [text('paper'), text('language')];
  const lists = LISTS.flatMap(name => {
    const names = text(name)
      ?.split(';')
      .map(one => one.trim())
      .filter(one => one !== '');
    return names === undefined ? [] : [[name, names] as const];
  });
  return {
    ...(paper !== undefined && { paper: oneOf('paper', PAPERS, paper) }),
    ...(language !== undefined && { language: oneOf('language', LANGUAGES, language) }),
    ...Object.fromEntries(lists),
  };
}

export const CHOSEN_BY_ITSELF: HandoverChoice = { paper: PAPERS[0], language: LANGUAGES[0] };
