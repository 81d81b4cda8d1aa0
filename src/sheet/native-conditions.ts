// The functions of ordinary sheets that count and sum what meets a condition: undefined where programs differ.
import type { Cell, CellError } from '../core/kinds';
import { BY_ZERO, finite, isFault, type Known, NO_VALUE, type One, rowsOf, scalar } from './known';
import { ordered } from './operators';

type Native = (args: readonly Known[]) => Known;
/** Undefined where it cannot be told. */
type Test = (value: One) => boolean | undefined;

const CRITERION = /^(<=|>=|<>|=|<|>)?([\s\S]*)$/;
const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)$/;

/** `*`, `?` and `~` as people know them from names of files. */
function wild(pattern: string): RegExp {
  const source = pattern.replace(/~([*?~])|[*?]|[.+^${}()|[\]\\~]/g, (sign, plain: string | undefined) =>
    plain !== undefined ? `\\${plain}` : sign === '*' ? '[\\s\\S]*' : sign === '?' ? '[\\s\\S]' : `\\${sign}`,
  );
  return new RegExp(`^${source}$`, 'i');
}

function numeric(operator: string, limit: number): Test {
  const compare: Readonly<Record<string, (order: number) => boolean>> = {
    '<': order => order < 0,
    '<=': order => order <= 0,
    '>': order => order > 0,
    '>=': order => order >= 0,
    '<>': order => order !== 0,
  };
  return value => {
    // a text that reads as the number is one for some programs
    if (typeof value === 'string' && NUMBER.test(value.trim())) return undefined;
    if (typeof value !== 'number') return operator === '<>';
    const order = ordered(value, limit, operator) ?? NaN;
    return (compare[operator] ?? ((same: number) => same === 0))(order);
  };
}

function criterion(given: One): Test | undefined {
  if (typeof given === 'number') return numeric('=', given);
  if (typeof given !== 'string') return undefined;
  const [, operator = '=', wanted = ''] = CRITERION.exec(given) ?? [];
  if (NUMBER.test(wanted.trim())) return numeric(operator, Number(wanted));
  if (wanted === '') return operator === '<>' ? (value: One) => (value === '' ? undefined : value !== null) : undefined;
  if ((operator !== '=' && operator !== '<>') || /\d[.,\d]*\s*%|\d+[/:-]\d|^(true|false)$/i.test(wanted)) return undefined;
  const pattern = wild(wanted);
  return value => (typeof value === 'string' && pattern.test(value)) === (operator === '=');
}

/** Which cells meet all conditions, in pairs of range and criterion; they are as large as the first. */
function meeting(pairs: readonly Known[], size: number | undefined): readonly boolean[] | CellError | undefined {
  let all: boolean[] | undefined;
  for (let i = 0; i < pairs.length; i += 2) {
    const cells = rowsOf(pairs[i])?.flat();
    const test = criterion(scalar(pairs[i + 1]));
    if (cells === undefined || test === undefined) return undefined;
    if (cells.length !== (size ?? all?.length ?? cells.length)) return NO_VALUE;
    const one = cells.map(test);
    if (one.includes(undefined)) return undefined;
    all = one.map((isMet, n) => isMet === true && all?.[n] !== false);
  }
  return all;
}

function worked(of: Known | undefined, pairs: readonly Known[], result: (numbers: readonly number[], met: number) => Known): Known {
  const values = of === undefined ? undefined : rowsOf(of)?.flat();
  const met = meeting(pairs, values?.length);
  if (met === undefined || 'cellError' in met) return met;
  const chosen = values?.filter((_, i) => met[i] === true) ?? [];
  const fault = chosen.find(isFault);
  if (fault !== undefined) return fault;
  return result(
    chosen.filter((value: Cell | null | CellError): value is number => typeof value === 'number'),
    met.filter(Boolean).length,
  );
}

const sum = (numbers: readonly number[]): Known => finite(numbers.reduce((a, b) => a + b, 0));
const mean = (numbers: readonly number[]): Known =>
  numbers.length === 0 ? BY_ZERO : finite(numbers.reduce((a, b) => a + b, 0) / numbers.length);
const extreme =
  (of: (a: number, b: number) => number) =>
  (numbers: readonly number[]): Known =>
    numbers.reduce((a, b) => of(a, b), numbers[0] ?? 0);

/** The range that is summed is the one that is asked where none is given. */
const single =
  (result: (numbers: readonly number[]) => Known): Native =>
  ([range, wanted, of = range]) =>
    sameSize(range, of) ? worked(of, [range, wanted], result) : undefined;

function sameSize(a: Known, b: Known): boolean {
  const [x, y] = [rowsOf(a), rowsOf(b)];
  return x?.length === y?.length && x?.[0]?.length === y?.[0]?.length;
}

const several =
  (result: (numbers: readonly number[]) => Known): Native =>
  ([of, ...pairs]) =>
    worked(of, pairs, result);

export const CONDITIONS: Readonly<Record<string, Native>> = {
  COUNTIF: ([range, wanted]) => worked(undefined, [range, wanted], (_, met) => met),
  COUNTIFS: pairs => worked(undefined, pairs, (_, met) => met),
  SUMIF: single(sum),
  SUMIFS: several(sum),
  AVERAGEIF: single(mean),
  AVERAGEIFS: several(mean),
  MAXIFS: several(extreme(Math.max)),
  MINIFS: several(extreme(Math.min)),
};
