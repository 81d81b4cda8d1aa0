// Sentences that are put together from fixed phrases, in another language. A {} is what differs: a cell, a number, a name, or a phrase
// of its own. What is no phrase stays as it is.

type PhraseTable = Readonly<Record<string, string>>;

interface PhrasePattern {
  readonly pattern: RegExp;
  readonly becomes: string;
}

const GAP = '{}';
const BETWEEN = [': ', '; ', ', '] as const;

const patterns = new WeakMap<PhraseTable, readonly PhrasePattern[]>();

/** Those that say most first. */
function phrasesOf(said: PhraseTable): readonly PhrasePattern[] {
  const known = patterns.get(said);
  if (known !== undefined) return known;
  const made = Object.entries(said)
    .sort(([a], [b]) => b.length - a.length)
    .map(([phrase, becomes]): PhrasePattern => {
      const parts = phrase.split(GAP).map(part => part.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
      return { pattern: new RegExp(`^${parts.join('(.+?)')}$`, 's'), becomes };
    });
  patterns.set(said, made);
  return made;
}

export function phrased(text: string, said: PhraseTable): string {
  for (const { pattern, becomes } of phrasesOf(said)) {
    const [whole, ...inside] = pattern.exec(text) ?? [];
    if (whole === undefined) continue;
    return becomes.split(GAP).reduce((before, after, i) => `${before}${phrased(inside[i - 1] ?? '', said)}${after}`);
  }
  for (const mark of BETWEEN) {
    const at = text.indexOf(mark);
    if (at >= 0) return `${phrased(text.slice(0, at), said)}${mark}${phrased(text.slice(at + mark.length), said)}`;
  }
  return text;
}
