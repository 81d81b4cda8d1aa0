// A text of functions.json is made of phrases, most of them in many texts: each is translated once.

/** What an argument reads, behind its name. */
const READS = /, (mm or text with unit|mm or text|degrees or text|MPa or text with unit|a row or column|N or text)$/;

const ARGUMENT_JOIN = '; ';

/** What an argument is, what it reads, and what stands behind each semicolon. */
export const phrasesOf = (argument: string): readonly (readonly string[])[] =>
  argument.split(ARGUMENT_JOIN).map(part => {
    const reads = READS.exec(part)?.[1];
    return reads === undefined ? [part] : [part.slice(0, -`, ${reads}`.length), reads];
  });

const BETWEEN_NAMES = /(, | \(|\)| (?:[A-Za-z]\d?|d[hk]|rf|IT\d+)(?=$|,| \())/;

/** The title of a table's column, "clearance hole dh, coarse (H14)": names at even places, between them commas, brackets and symbols. */
export const namesOf = (title: string): readonly string[] => title.split(BETWEEN_NAMES);

export const sentencesOf = (description: string): readonly string[] => description.split('\n');

type Translations = Readonly<Record<string, string>>;

function translated(words: Translations, text: string): string {
  const found = words[text];
  if (found === undefined) throw new Error(`there is no German for "${text}"`);
  return found;
}

interface WithTexts {
  readonly description: string;
  readonly parameters: readonly { readonly description: string }[];
}

/** Descriptions in the other language; everything else as it is. */
export const translator =
  (sentences: Translations, phrases: Translations) =>
  <T extends WithTexts>(listed: T): T => ({
    ...listed,
    description: sentencesOf(listed.description)
      .map(sentence => translated(sentences, sentence))
      .join('\n'),
    parameters: listed.parameters.map(parameter => ({
      ...parameter,
      description: phrasesOf(parameter.description)
        .map(part => part.map(phrase => translated(phrases, phrase)).join(', '))
        .join(ARGUMENT_JOIN),
    })),
  });
