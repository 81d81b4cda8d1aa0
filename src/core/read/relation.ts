// A value that must also fit those that stand before it: a hole inside its boss, a pin inside its hub.
import { type Comparison, type PrecedingArguments, ITSELF, type Param, type Relation, type Term } from '../card';
import { wrongInput } from '../refuse';

export const below = (preceding: string, words = `below ${preceding}`): Relation => ({ holds: [['<', ITSELF, preceding]], words });
/** A screw or a sleeve in its hole. */
export const goesThrough = (hole: string): Relation => ({
  holds: [['>=', hole, ITSELF]],
  words: `at most ${hole}, or it does not go through`,
});
export const above = (preceding: string): Relation => ({ holds: [['>', ITSELF, preceding]], words: `above ${preceding}` });

/** A result that cannot exist: where it ends stands in the refusal. */
export const exists = (holds: readonly Comparison[], refusal: (number: (name: string) => number, value: number) => string): Relation => ({
  holds,
  refusal: (preceding, value) => {
    const words = refusal(name => preceding.get(name) as number, value as number);
    return /NaN|Infinity/.test(words) ? 'no finite result for these inputs' : words;
  },
});

/** Two digits are enough to see where something ends. */
export const about = (value: number): string => `${Math.round(value * 100) / 100} mm`;

/** What stands among what is accepted: "; below od". */
export const relationWords = ({ relation }: Pick<Param, 'relation'>): string =>
  relation !== undefined && 'words' in relation ? `; ${relation.words}` : '';

/** `value` is the related argument itself. Throws Refused. */
export function checkRelation(relation: Relation, value: unknown, preceding: PrecedingArguments): void {
  if ('upperOf' in relation) return checkUpper(value, relation.upperOf, preceding.get(relation.upperOf));
  if (relation.holds.every(comparison => holds(comparison, value, preceding))) return;
  throw wrongInput('words' in relation ? `must be ${relation.words}` : relation.refusal(preceding, value));
}

function checkUpper(upper: unknown, name: string, lower: unknown): void {
  if (typeof lower !== 'number' && typeof upper !== 'number') throw wrongInput(`give at least one of ${name} and upper`);
  if (typeof lower === 'number' && typeof upper === 'number' && upper <= lower) throw wrongInput(`must be above ${name}, ${lower} mm`);
}

function holds([sign, left, right]: Comparison, value: unknown, preceding: PrecedingArguments): boolean {
  const [a, b] = [worth(left, value, preceding), worth(right, value, preceding)];
  return sign === '<' ? a < b : sign === '>' ? a > b : a >= b;
}

/** The name of an argument and of a part of it. */
export const partOf = (path: string): readonly [name: string, part: string | undefined] => {
  const [name = '', part] = path.split('.');
  return [name, part];
};

function worth(term: Term, value: unknown, preceding: PrecedingArguments): number {
  if (typeof term === 'number') return term;
  if (typeof term === 'string') return valueAt(term, value, preceding) as number;
  if ('formula' in term)
    return ran(
      term.formula,
      term.of.map(path => valueAt(path, value, preceding)),
    );
  const [sign, left, right] = term;
  const [a, b] = [worth(left, value, preceding), worth(right, value, preceding)];
  return sign === '*' ? a * b : a - b;
}

export function valueAt(path: string, value: unknown, preceding: PrecedingArguments): unknown {
  const [name, part] = partOf(path);
  const found = name === ITSELF ? value : preceding.get(name);
  return part === undefined ? found : (found as Readonly<Record<string, unknown>>)[part];
}

const ran = (formula: Readonly<Record<string, (...args: never[]) => number>>, values: readonly unknown[]): number =>
  (Object.values(formula)[0] as (...args: unknown[]) => number)(...values);
