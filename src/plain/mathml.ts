// A plain form as mathematics: MathML as data, in symbols. Choices become cases; named steps, and choices inside a formula, get a line
// of their own.
import { formCalled } from './forms';
import { digits } from './digits';
import { signOf, stepWords } from './print';
import { type BinaryOperator, type Form, isLooser, type Level, printed, type Printer } from './tree';

export type MathNode =
  string | { readonly tag: string; readonly attributes: Readonly<Record<string, string>>; readonly children: readonly MathNode[] };

/** A piece that is set; a list has items, a record has parts, a choice has the rows of its cases. */
export interface MathPiece {
  readonly node: MathNode;
  readonly level: Level;
  readonly cases?: readonly MathNode[];
  readonly items?: readonly MathPiece[];
  readonly parts?: Readonly<Record<string, MathPiece>>;
}

/** A named value on a line of its own; a condition holds or not. */
export interface MathLine {
  readonly left: MathNode;
  readonly right: MathNode;
  readonly isCondition: boolean;
}

const element = (tag: string, ...children: readonly MathNode[]): MathNode => ({ tag, attributes: {}, children });
const row = (...children: readonly MathNode[]): MathNode => element('mrow', ...children);
const operator = (sign: string): MathNode => element('mo', sign);
const words = (text: string): MathNode => element('mtext', text);
const atom = (node: MathNode): MathPiece => ({ node, level: 'atom' });
const identifier = (text: string): MathNode => element('mi', text);
/** A name of several words; as a text it would count as space between operators. */
const name = (text: string): MathNode => ({ tag: 'mi', attributes: { class: 'name' }, children: [text] });

const RAISED: Readonly<Record<string, string>> = { '⁺': '+', '⁻': '−' };

/** `d_h`, `t_i⁺`, `d1 min` and words. */
export function symbolPiece(text: string): MathPiece {
  const [, base = text, tail, sign = ''] = /^(\p{L}{1,2})(_\p{L}{1,2}|_?\d(?: \p{L}+)?)?([⁺⁻])?$/u.exec(text) ?? [];
  if (base === text && [...text].length > 2) return atom(name(text));
  const below = tail?.replace('_', '');
  const index =
    below === undefined ? undefined : /^\d$/.test(below) ? element('mn', below) : /^\p{L}$/u.test(below) ? identifier(below) : name(below);
  const over = RAISED[sign] === undefined ? undefined : operator(RAISED[sign]);
  if (index !== undefined && over !== undefined) return atom(element('msubsup', identifier(base), index, over));
  if (index !== undefined) return atom(element('msub', identifier(base), index));
  return atom(over === undefined ? identifier(base) : element('msup', identifier(base), over));
}

/** The formula line by line: the named steps, then the result. */
export function setForm(form: Form, args: readonly MathPiece[]): { readonly lines: readonly MathLine[]; readonly result: MathPiece } {
  const setting = new Setting();
  const result = printed(form, args, setting);
  return { lines: setting.lines, result };
}

class Setting implements Printer<MathPiece> {
  readonly lines: MathLine[] = [];

  /** Puts a piece on a line and answers its name; a name that stands for something else already leaves the piece where it is. */
  step(step: string, piece: MathPiece): MathPiece {
    if (piece.items !== undefined || piece.parts !== undefined) return piece;
    const left = name(stepWords(step));
    const same = this.lines.find(line => JSON.stringify(line.left) === JSON.stringify(left));
    if (same === undefined) this.lines.push({ left, right: piece.node, isCondition: piece.level === 'relation' });
    else if (JSON.stringify(same.right) !== JSON.stringify(piece.node)) return piece;
    return atom(left);
  }

  call(formula: string, args: readonly MathPiece[]): MathPiece {
    const maths = MATHS[formula];
    if (maths !== undefined) return maths(...args);
    const piece = printed(formCalled(formula), args, this);
    return piece.level === 'choice' ? this.step(formula, piece) : piece;
  }

  /** A choice in the last branch of a choice is one more case. */
  if(condition: MathPiece, whenTrue: () => MathPiece, whenFalse: () => MathPiece): MathPiece {
    const line = (value: MathPiece, ...when: readonly MathNode[]): MathNode =>
      element('mtr', element('mtd', value.node), element('mtd', ...when));
    const first = line(whenTrue(), words('if '), condition.node);
    const otherwise = whenFalse();
    const cases = [first, ...(otherwise.cases ?? [line(otherwise, words('otherwise'))])];
    return {
      node: row(operator('{'), { tag: 'mtable', attributes: { class: 'cases', displaystyle: 'true' }, children: cases }),
      level: 'choice',
      cases,
    };
  }

  readonly leftOut = (param: string): MathPiece => symbolPiece(stepWords(param));
  readonly number = number;
  readonly name = (text: string): MathPiece => symbolPiece(text === 'PI' ? 'π' : stepWords(text));
  readonly text = (text: string): MathPiece => atom(words(text));
  readonly of = (owner: MathPiece, key: string): MathPiece => owner.parts?.[key] ?? atom(element('msub', owner.node, name(stepWords(key))));
  readonly list = (items: readonly MathPiece[]): MathPiece => ({ ...atom(''), items });
  readonly record = (parts: Readonly<Record<string, MathPiece>>): MathPiece => ({ ...atom(''), parts });
  readonly neg = (a: MathPiece): MathPiece => ({ node: row(operator('−'), inside(a, 'power')), level: 'sign' });
  readonly not = (a: MathPiece): MathPiece => ({ node: row(words('not '), inside(a, 'atom')), level: 'relation' });
  readonly binary = binary;
}

const UNBOUNDED = 1e90;
/** Thin spaces between the thousands of long numbers. */
const number = (value: number): MathPiece =>
  Math.abs(value) > UNBOUNDED
    ? atom(identifier('∞'))
    : {
        node: element('mn', digits(value).replace(/\d(?=(\d{3})+$)/g, value >= 10_000 ? '$&\u202f' : '$&')),
        level: value < 0 ? 'sign' : 'atom',
      };

const bracketed = (...nodes: readonly MathNode[]): MathNode => row(operator('('), ...nodes, operator(')'));
const inside = ({ node, level }: MathPiece, least: Level): MathNode => (isLooser(level, least) ? bracketed(node) : node);

const isOne = ({ node }: MathPiece): boolean => JSON.stringify(node) === JSON.stringify(number(1).node);

/** A fraction needs no brackets but under a power. */
function binary(op: BinaryOperator, a: MathPiece, b: MathPiece): MathPiece {
  switch (op) {
    case '+':
      return { node: row(inside(a, 'sum'), operator('+'), inside(b, 'sum')), level: 'sum' };
    case '-':
      return { node: row(inside(a, 'sum'), operator('−'), inside(b, 'product')), level: 'sum' };
    case '*':
      return isOne(a) ? b : { node: row(inside(a, 'product'), operator('·'), inside(b, 'product')), level: 'product' };
    case '/':
      return { node: element('mfrac', a.node, b.node), level: 'power' };
    case '^':
      return { node: element('msup', inside(a, 'atom'), b.node), level: 'power' };
    case 'and':
    case 'or':
      return { node: row(a.node, words(` ${op} `), b.node), level: 'relation' };
    default:
      return { node: row(a.node, operator(signOf(op)), b.node), level: 'relation' };
  }
}

const APPLICATION = '\u2061';
/** A name before brackets; a single symbol stands a thin space behind it. */
const applied = (sign: string, a: MathPiece): MathPiece => ({
  node:
    a.level === 'atom'
      ? row(identifier(sign), { tag: 'mo', attributes: { rspace: '0.17em' }, children: [APPLICATION] }, a.node)
      : row(identifier(sign), operator(APPLICATION), bracketed(a.node)),
  level: 'product',
});
const ofAll = (sign: string, args: readonly MathPiece[]): MathPiece =>
  atom(
    row(identifier(sign), operator(APPLICATION), bracketed(...args.flatMap(({ node }, i) => (i === 0 ? [node] : [operator(','), node])))),
  );

/** A sum over rows: term by term where they are known, else with its sign. */
function sumOver(lists: readonly MathPiece[], term: (...row: MathPiece[]) => MathPiece): MathPiece {
  const [first] = lists;
  if (lists.every(({ items }) => items !== undefined))
    return (first?.items ?? [])
      .map((_, i) => term(...lists.map(({ items }) => items?.[i] ?? number(0))))
      .reduce((a, b) => binary('+', a, b));
  return { node: row(element('munder', operator('∑'), identifier('i')), inside(term(...lists), 'product')), level: 'product' };
}

const two = number(2);
const square = (a: MathPiece): MathPiece => binary('^', a, two);
const width = (upper: MathPiece, lower: MathPiece): MathPiece => binary('-', upper, lower);
const size = ({ node }: MathPiece): MathPiece => atom(row(operator('|'), node, operator('|')));

/** The setting of each entry of core/maths. */
const MATHS: Readonly<Record<string, (...args: MathPiece[]) => MathPiece>> = {
  tanDeg: (a = two) => applied('tan', a),
  cosDeg: (a = two) => applied('cos', a),
  atanDeg: (a = two) => applied('arctan', a),
  sqrt: (a = two) => atom(element('msqrt', a.node)),
  cbrt: (a = two) => atom(element('mroot', a.node, element('mn', '3'))),
  abs: (a = two) => size(a),
  ln: (a = two) => applied('ln', a),
  min: (...args) => ofAll('min', args),
  max: (...args) => ofAll('max', args),
  wholeUp: (a = two) => atom(row(operator('⌈'), a.node, operator('⌉'))),
  normalTail: (a = two) => atom(row(identifier('Φ'), operator(APPLICATION), bracketed(operator('−'), inside(a, 'power')))),
  sum: (...lists) => sumOver(lists, (x = two) => x),
  sumSquaredDifferences: (...lists) => sumOver(lists, (x = two, y = two) => square(binary('-', x, y))),
  sumProducts: (...lists) => sumOver(lists, (x = two, y = two) => binary('*', x, y)),
  sumWidths: (...lists) => sumOver(lists, (x = two, u = two, l = two) => binary('*', size(x), width(u, l))),
  sumSquaredWidths: (...lists) => sumOver(lists, (x = two, u = two, l = two) => square(binary('*', x, width(u, l)))),
  countWidths: (x = two, u = two, l = two) =>
    ofAll('count', [{ node: row(binary('*', x, width(u, l)).node, operator('≠'), element('mn', '0')), level: 'relation' }]),
  atMost: (a = two, b = two) => binary('<=', a, b),
  atLeast: (a = two, b = two) => binary('>=', a, b),
};
