// A plain form as mathematics: MathML as data, in symbols. Choices become cases; named steps, and choices inside a formula, get a line of their own.
import { formNamed, type Form, type Tree } from './forms';
import { digits, stepWords } from './print';

/** How tightly a piece holds together; a looser piece inside a tighter one gets brackets. A fraction needs none but under a power. */
const CHOICE = 0,
  COMPARE = 1,
  SUM = 2,
  PRODUCT = 3,
  SIGN = 4,
  POWER = 5,
  ATOM = 6;

export type MathNode =
  string | { readonly tag: string; readonly attributes: Readonly<Record<string, string>>; readonly children: readonly MathNode[] };

/** A piece that is set; a list has items, a record has parts. */
export interface MathPiece {
  readonly node: MathNode;
  readonly level: number;
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
const atom = (node: MathNode): MathPiece => ({ node, level: ATOM });
const identifier = (text: string): MathNode => element('mi', text);
/** A name of several words; as a text it would count as space between operators. */
const name = (text: string): MathNode => ({ tag: 'mi', attributes: { class: 'name' }, children: [text] });

const SIGNS: Readonly<Record<string, string>> = { '⁺': '+', '⁻': '−' };

/** `d_h`, `t_i⁺`, `d1 min` and words. */
export function symbolPiece(text: string): MathPiece {
  const [, base = text, below, sign = ''] = /^(\p{L}{1,2})_?(\p{L}{1,2}|\d(?: \p{L}+)?)?([⁺⁻])?$/u.exec(text) ?? [];
  if (base === text && [...text].length > 2) return atom(name(text));
  const index =
    below === undefined ? undefined : /^\d$/.test(below) ? element('mn', below) : /^\p{L}$/u.test(below) ? identifier(below) : name(below);
  const over = SIGNS[sign] === undefined ? undefined : operator(SIGNS[sign]);
  if (index !== undefined && over !== undefined) return atom(element('msubsup', identifier(base), index, over));
  if (index !== undefined) return atom(element('msub', identifier(base), index));
  return atom(over === undefined ? identifier(base) : element('msup', identifier(base), over));
}

/** The formula line by line: the named steps, then the result. */
export function setForm(form: Form, args: readonly MathPiece[]): { readonly lines: readonly MathLine[]; readonly result: MathPiece } {
  const setter = new Setter();
  const result = setter.form(form, args);
  return { lines: setter.lines, result };
}

class Setter {
  readonly lines: MathLine[] = [];

  form(form: Form, args: readonly MathPiece[]): MathPiece {
    const env = new Map(form.params.map((param, i) => [param, args[i] ?? symbolPiece(stepWords(param))]));
    for (const [step, tree] of form.steps ?? []) env.set(step, this.named(stepWords(step), this.piece(tree, env)));
    return this.piece(form.result, env);
  }

  /** Puts a piece on a line and answers its name; a name that stands for something else already leaves the piece where it is. */
  private named(text: string, piece: MathPiece): MathPiece {
    if (piece.items !== undefined || piece.parts !== undefined) return piece;
    const left = name(text);
    const same = this.lines.find(line => JSON.stringify(line.left) === JSON.stringify(left));
    if (same === undefined) this.lines.push({ left, right: piece.node, isCondition: piece.level === COMPARE });
    else if (JSON.stringify(same.right) !== JSON.stringify(piece.node)) return piece;
    return atom(left);
  }

  private piece(tree: Tree, env: ReadonlyMap<string, MathPiece>): MathPiece {
    if (typeof tree === 'number') return number(tree);
    if (typeof tree === 'string') return env.get(tree) ?? symbolPiece(tree === 'PI' ? 'π' : stepWords(tree));
    const [op, ...rest] = tree as readonly [string, ...Tree[]];
    const part = (i: number): MathPiece => this.piece(rest[i] as Tree, env);
    if (op === 'text') return atom(words(String(rest[0])));
    if (op === 'of') return property(part(0), String(rest[1]));
    if (op === 'list') return { ...atom(''), items: rest.map((_, i) => part(i)) };
    if (op === 'record')
      return {
        ...atom(''),
        parts: Object.fromEntries(
          Object.entries(rest[0] as unknown as Record<string, Tree>).map(([key, value]) => [key, this.piece(value, env)]),
        ),
      };
    if (op === 'call')
      return this.called(
        String(rest[0]),
        rest.slice(1).map(arg => this.piece(arg, env)),
      );
    if (op === 'if') return this.cases(tree, env);
    if (op === 'neg') return { node: row(operator('−'), inside(part(0), POWER)), level: SIGN };
    if (op === 'not') return { node: row(words('not '), inside(part(0), ATOM)), level: COMPARE };
    return binary(op, part(0), part(1));
  }

  private called(formula: string, args: readonly MathPiece[]): MathPiece {
    const maths = MATHS[formula];
    if (maths !== undefined) return maths(...args);
    const form = formNamed(formula);
    if (form === undefined) throw new TypeError(`no printed form of ${formula}`);
    const piece = this.form(form, args);
    return piece.level === CHOICE ? this.named(stepWords(formula), piece) : piece;
  }

  /** A choice in the last branch of a choice is one more case. */
  private cases(tree: Tree, env: ReadonlyMap<string, MathPiece>): MathPiece {
    const lines: MathNode[] = [];
    const line = (value: Tree, ...condition: readonly MathNode[]): void =>
      void lines.push(element('mtr', element('mtd', this.piece(value, env).node), element('mtd', ...condition)));
    let rest = tree;
    while (Array.isArray(rest) && rest[0] === 'if') {
      const [, condition, whenTrue, whenFalse] = rest as unknown as readonly [string, Tree, Tree, Tree];
      line(whenTrue, words('if '), this.piece(condition, env).node);
      rest = whenFalse;
    }
    line(rest, words('otherwise'));
    return {
      node: row(operator('{'), { tag: 'mtable', attributes: { class: 'cases', displaystyle: 'true' }, children: lines }),
      level: CHOICE,
    };
  }
}

const UNBOUNDED = 1e90;
/** Thin spaces between the thousands of long numbers. */
const number = (value: number): MathPiece =>
  Math.abs(value) > UNBOUNDED
    ? atom(identifier('∞'))
    : {
        node: element('mn', digits(value).replace(/\d(?=(\d{3})+$)/g, value >= 10_000 ? '$&\u202f' : '$&')),
        level: value < 0 ? SIGN : ATOM,
      };

const bracketed = (...nodes: readonly MathNode[]): MathNode => row(operator('('), ...nodes, operator(')'));
const inside = ({ node, level }: MathPiece, least: number): MathNode => (level < least ? bracketed(node) : node);

function property(owner: MathPiece, key: string): MathPiece {
  return owner.parts?.[key] ?? atom(element('msub', owner.node, name(stepWords(key))));
}

const COMPARISONS: Readonly<Record<string, string>> = {
  '<': '<',
  '<=': '≤',
  '>': '>',
  '>=': '≥',
  '=': '=',
  '<>': '≠',
  and: ' and ',
  or: ' or ',
};
const isOne = ({ node }: MathPiece): boolean => JSON.stringify(node) === JSON.stringify(number(1).node);

function binary(op: string, a: MathPiece, b: MathPiece): MathPiece {
  const comparison = COMPARISONS[op];
  if (comparison !== undefined)
    return { node: row(a.node, comparison.startsWith(' ') ? words(comparison) : operator(comparison), b.node), level: COMPARE };
  if (op === '+') return { node: row(inside(a, SUM), operator('+'), inside(b, SUM)), level: SUM };
  if (op === '-') return { node: row(inside(a, SUM), operator('−'), inside(b, PRODUCT)), level: SUM };
  if (op === '*') return isOne(a) ? b : { node: row(inside(a, PRODUCT), operator('·'), inside(b, PRODUCT)), level: PRODUCT };
  if (op === '/') return { node: element('mfrac', a.node, b.node), level: POWER };
  return { node: element('msup', inside(a, ATOM), b.node), level: POWER };
}

const APPLICATION = '\u2061';
/** A name before brackets; a single symbol stands a thin space behind it. */
const applied = (sign: string, a: MathPiece): MathPiece => ({
  node:
    a.level === ATOM
      ? row(identifier(sign), { tag: 'mo', attributes: { rspace: '0.17em' }, children: [APPLICATION] }, a.node)
      : row(identifier(sign), operator(APPLICATION), bracketed(a.node)),
  level: PRODUCT,
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
  return { node: row(element('munder', operator('∑'), identifier('i')), inside(term(...lists), PRODUCT)), level: PRODUCT };
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
  normalTail: (a = two) => atom(row(identifier('Φ'), operator(APPLICATION), bracketed(operator('−'), inside(a, POWER)))),
  sum: (...lists) => sumOver(lists, (x = two) => x),
  sumSquaredDifferences: (...lists) => sumOver(lists, (x = two, y = two) => square(binary('-', x, y))),
  sumProducts: (...lists) => sumOver(lists, (x = two, y = two) => binary('*', x, y)),
  sumWidths: (...lists) => sumOver(lists, (x = two, u = two, l = two) => binary('*', size(x), width(u, l))),
  sumSquaredWidths: (...lists) => sumOver(lists, (x = two, u = two, l = two) => square(binary('*', x, width(u, l)))),
  countWidths: (x = two, u = two, l = two) =>
    ofAll('count', [{ node: row(binary('*', x, width(u, l)).node, operator('≠'), element('mn', '0')), level: COMPARE }]),
  atMost: (a = two, b = two) => binary('<=', a, b),
  atLeast: (a = two, b = two) => binary('>=', a, b),
};
