// A formula as a tree of operators: its shape, the one walk over it, and the precedence of operators.

export type ArithmeticOperator = '+' | '-' | '*' | '/' | '^';
export type RelationalOperator = '<' | '<=' | '>' | '>=' | '=' | '<>' | 'and' | 'or';
export type BinaryOperator = ArithmeticOperator | RelationalOperator;

/** A number, a name, or an operator with its operands. */
export type Tree =
  | number
  | string
  | readonly ['text', words: string]
  | readonly ['of', record: Tree, part: string]
  | List
  | readonly ['record', parts: { readonly [part: string]: Tree }]
  | Call
  | readonly ['if', condition: Tree, whenTrue: Tree, whenFalse: Tree]
  | readonly ['neg', Tree]
  | readonly ['not', Tree]
  | readonly [BinaryOperator, Tree, Tree];

/** ['list', …items] and ['call', formula, …arguments]; a tuple cannot repeat the type that it stands in. */
interface List extends ReadonlyArray<Tree> {
  readonly 0: 'list';
}
interface Call extends ReadonlyArray<Tree> {
  readonly 0: 'call';
  readonly 1: string;
}

export interface Form {
  readonly params: readonly string[];
  readonly steps?: readonly (readonly [name: string, tree: Tree])[];
  readonly result: Tree;
}

/** What becomes of each part of a form once its operands are printed; a printer of words prints texts, one of values prints numbers. */
export interface Printer<T> {
  /** An argument that is not given. */
  leftOut(param: string): T;
  /** A named step; what it answers stands wherever the step is read. */
  step(name: string, printed: T): T;
  number(value: number): T;
  /** A name that is neither argument nor step. */
  name(name: string): T;
  text(words: string): T;
  of(record: T, part: string): T;
  list(items: readonly T[]): T;
  record(parts: Readonly<Record<string, T>>): T;
  call(formula: string, args: readonly T[]): T;
  if(condition: T, whenTrue: () => T, whenFalse: () => T): T;
  neg(a: T): T;
  not(a: T): T;
  binary(op: BinaryOperator, a: T, b: T): T;
}

export const eachPart = <T, U>(parts: Readonly<Record<string, T>>, of: (part: T) => U): Readonly<Record<string, U>> =>
  Object.fromEntries(Object.entries(parts).map(([key, part]) => [key, of(part)]));

/** The walk: step by step, then the result. */
export function printed<T>({ params, steps = [], result }: Form, args: readonly T[], printer: Printer<T>): T {
  const env = new Map<string, T>(params.map((param, i) => [param, args[i] ?? printer.leftOut(param)]));
  const at = (tree: Tree): T => {
    if (typeof tree === 'number') return printer.number(tree);
    if (typeof tree === 'string') return env.get(tree) ?? printer.name(tree);
    switch (tree[0]) {
      case 'text':
        return printer.text(tree[1]);
      case 'of':
        return printer.of(at(tree[1]), tree[2]);
      case 'list':
        return printer.list(tree.slice(1).map(at));
      case 'record':
        return printer.record(eachPart(tree[1], at));
      case 'call':
        return printer.call(tree[1], tree.slice(2).map(at));
      case 'if':
        return printer.if(
          at(tree[1]),
          () => at(tree[2]),
          () => at(tree[3]),
        );
      case 'neg':
      case 'not':
        return printer[tree[0]](at(tree[1]));
      default:
        return printer.binary(tree[0], at(tree[1]), at(tree[2]));
    }
  };
  for (const [name, tree] of steps) env.set(name, printer.step(name, at(tree)));
  return at(result);
}

const nothing = (): void => undefined;
const PASSES_BY: Printer<void> = {
  leftOut: nothing,
  step: nothing,
  number: nothing,
  name: nothing,
  text: nothing,
  of: nothing,
  list: nothing,
  record: nothing,
  call: nothing,
  if: (_, whenTrue, whenFalse) => {
    whenTrue();
    whenFalse();
  },
  neg: nothing,
  not: nothing,
  binary: nothing,
};

/** The same walk for what it meets; nothing is bound, so every name is met. */
export const visit = (form: Form, meets: Partial<Printer<void>>): void => printed(form, [], { ...PASSES_BY, ...meets });

/**
 * From the loosest to the tightest; a looser piece inside a tighter one gets brackets. A series is a sum over rows: it ends at
 * the next + or −. Spreadsheets read -2^2 as (-2)², everyone else as −(2²): their sign stands above the power.
 */
const PRECEDENCE = ['choice', 'relation', 'sum', 'series', 'product', 'sign', 'power', 'spreadsheet sign', 'atom'] as const;
export type Level = (typeof PRECEDENCE)[number];

export const isLooser = (level: Level, than: Level): boolean => PRECEDENCE.indexOf(level) < PRECEDENCE.indexOf(than);
