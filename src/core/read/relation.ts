// A value that must also fit those that stand before it: a hole inside its boss, a pin inside its hub.
import { type Comparison, type Earlier, ITSELF, type Param, type Relation, type Term } from '../card';
import { wrongInput } from '../refuse';

export const below = (earlier: string, words = `below ${earlier}`): Relation => ({ holds: [['<', ITSELF, earlier]], words });
/** A screw or a sleeve in its hole. */
export const goesThrough = (hole: string): Relation => ({
  holds: [['>=', hole, ITSELF]],
  words: `at most ${hole}, or it does not go through`,
});
export const above = (earlier: string): Relation => ({ holds: [['>', ITSELF, earlier]], words: `above ${earlier}` });

/** A result that cannot exist: where it ends stands in the refusal. */
export const exists = (holds: readonly Comparison[], refusal: (number: (name: string) => number, value: number) => string): Relation => ({
  holds,
  refusal: (earlier, value) => {
    const words = refusal(name => earlier.get(name) as number, value as number);
    return /NaN|Infinity/.test(words) ? 'no finite result for these inputs' : words;
  },
});

/** Two digits are enough to see where something ends. */
export const about = (value: number): string => `${Math.round(value * 100) / 100} mm`;

/** What stands among what is accepted: "; below od". */
export const relationWords = ({ relation }: Pick<Param, 'relation'>): string =>
  relation !== undefined && 'words' in relation ? `; ${relation.words}` : '';

/** `value` is the related argument itself. Throws Refused. */
export function checkRelation(relation: Relation, value: unknown, earlier: Earlier): void {
  if ('upperOf' in relation) return checkUpper(value, relation.upperOf, earlier.get(relation.upperOf));
  if (relation.holds.every(comparison => holds(comparison, value, earlier))) return;
  throw wrongInput('words' in relation ? `must be ${relation.words}` : relation.refusal(earlier, value));
}

function checkUpper(upper: unknown, name: string, lower: unknown): void {
  if (typeof lower !== 'number' && typeof upper !== 'number') throw wrongInput(`give at least one of ${name} and upper`);
  if (typeof lower === 'number' && typeof upper === 'number' && upper <= lower) throw wrongInput(`must be above ${name}, ${lower} mm`);
}

function holds([sign, left, right]: Comparison, value: unknown, earlier: Earlier): boolean {
  const [a, b] = [worth(left, value, earlier), worth(right, value, earlier)];
  return sign === '<' ? a < b : sign === '>' ? a > b : a >= b;
}

/** The name of an argument and of a part of it. */
export const partOf = (path: string): readonly [name: string, part: string | undefined] => {
  const [name = '', part] = path.split('.');
  return [name, part];
};

function worth(term: Term, value: unknown, earlier: Earlier): number {
  if (typeof term === 'number') return term;
  if (typeof term === 'string') return valueAt(term, value, earlier) as number;
  if ('formula' in term)
    return ran(
      term.formula,
      term.of.map(path => valueAt(path, value, earlier)),
    );
  const [sign, left, right] = term;
  const [a, b] = [worth(left, value, earlier), worth(right, value, earlier)];
  return sign === '*' ? a * b : a - b;
}

function valueAt(path: string, value: unknown, earlier: Earlier): unknown {
  const [name, part] = partOf(path);
  const found = name === ITSELF ? value : earlier.get(name);
  return part === undefined ? found : (found as Readonly<Record<string, unknown>>)[part];
}

const ran = (formula: Readonly<Record<string, (...args: never[]) => number>>, values: readonly unknown[]): number =>
  (Object.values(formula)[0] as (...args: unknown[]) => number)(...values);
