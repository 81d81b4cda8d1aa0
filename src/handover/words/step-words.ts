// What the sheets of steps say in fixed words. A {} is what differs from step to step: a number with its unit, a sheet, a text.
// Formulas in words, names and units stay as they are.

export const STEP_PHRASES = [
  'inputs in limits',
  'inputs as sent',
  'limits of the function; blank or text is not in limits',
  'input',
  'from other cells',
  'typed in the formula',
  'typed as {}',
  'left out: the default',
  'left out: the same',
  'from the text {}',
  'from its table',
  'from the table on {}',
  'where its size stands in the table on {}',
  'the first that passes, on {}',
  'for {}',
  'above {}',
  'at least {}',
  'below {}',
  'at most {}',
  'and',
  'as sent',
  'value, not live',
  'fail, then not checked, then review, then pass',
  'pass down to review, review down to the limit, fail below',
  'pass up to review, review up to the limit, fail above',
  'pass above review, review above 0, fail from 0 down',
  'default',
  'size and its tolerance',
  'what is wrong with it',
  'what that rule asks',
  'so many that they differ',
  'worst first',
  'fails first, then what is not checked',
  'first of these outputs that has none',
  'a value without a formula holds for these inputs',
] as const;
export type StepPhrase = (typeof STEP_PHRASES)[number];

export type StepSaid = Readonly<Record<StepPhrase, string>>;

const GAP = '{}';
/** Between what is said of one step. */
const BETWEEN = [', ', ' and '] as const;
/** Between things said of one step that have nothing to do with each other. */
const APART = '; ';

/** What fills the gap of a phrase; undefined where the text is another. */
function filling(text: string, phrase: string): string | undefined {
  const at = phrase.indexOf(GAP);
  if (at < 0) return text === phrase ? '' : undefined;
  const [head, tail] = [phrase.slice(0, at), phrase.slice(at + GAP.length)];
  const inside = text.slice(head.length, text.length - tail.length);
  return text.startsWith(head) && text.endsWith(tail) && isOneThing(inside) ? inside : undefined;
}

/** A quoted text may hold anything, and none is cut. */
const isOneThing = (text: string): boolean =>
  /^"[^"]*"$/.test(text) || (text !== '' && !text.includes('"') && [...BETWEEN, APART].every(mark => !text.includes(mark)));

function phrased(text: string, said: StepSaid): string | undefined {
  for (const phrase of STEP_PHRASES) {
    const inside = filling(text, phrase);
    if (inside !== undefined) return said[phrase].replace(GAP, () => inside);
  }
  return undefined;
}

/** The words of a step, phrase by phrase; from what is no phrase on they stay. */
export function stepWords(text: string, said: StepSaid): string {
  const whole = phrased(text, said);
  if (whole !== undefined) return whole;
  if (text.includes(APART))
    return text
      .split(APART)
      .map(part => stepWords(part, said))
      .join(APART);
  for (const mark of BETWEEN)
    for (let at = text.indexOf(mark); at >= 0; at = text.indexOf(mark, at + 1)) {
      const first = phrased(text.slice(0, at), said);
      if (first === undefined) continue;
      return `${first}${mark.replace('and', () => said.and)}${stepWords(text.slice(at + mark.length), said)}`;
    }
  return text;
}
