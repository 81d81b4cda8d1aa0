// A variant as a row is printed from it: what kind of value each name has, never how much it is. A number is NaN here, so that
// none can slip into a formula that other rows share.
import type { State } from '../../../core/check/check';
import type { Cell } from '../../../core/kinds';
import type { Deviation } from '../../../core/read/deviation';
import { Refused } from '../../../core/refuse';
import { type Arg, type Finding, NotApplicable, type Rule } from '../../../joint/graph';
import type { Joint, JointName } from '../../../joint/nodes';
import { number } from '../../../plain/spreadsheet';
import { type RowInput, rowInput } from './row-input';
import type { OfRow, Questions, OneRow } from './row-print';

const NUMBER = Symbol('a number');
const NUMBERS = Symbol('a list of numbers');
const DEVIATION = Symbol('two deviations');
const NOT_APPLICABLE = Symbol('does not apply');
const REFUSED = Symbol('no value');

function kindOf(outcome: unknown): unknown {
  if (typeof outcome === 'number') return NUMBER;
  if (outcome instanceof NotApplicable) return NOT_APPLICABLE;
  if (outcome instanceof Refused) return REFUSED;
  if (Array.isArray(outcome) && outcome.every(one => typeof one === 'number')) return NUMBERS;
  return typeof outcome === 'object' && outcome !== null && 'upperMm' in outcome ? DEVIATION : outcome;
}

const STANDS_FOR = new Map<unknown, unknown>([
  [NUMBER, NaN],
  [NUMBERS, []],
  [DEVIATION, { upperMm: NaN, lowerMm: NaN }],
  [NOT_APPLICABLE, new NotApplicable('')],
  [REFUSED, new Refused('#N/A', '')],
]);

/** What a row has under a name of the joint. */
export const valueOf =
  <T = Cell>(name: string): OfRow<T> =>
  ({ variant }: OneRow) =>
    variant.value(name) as T;

/** How a rule stands that is not left out. */
export const stateOfRule =
  (rule: Rule): OfRow<State> =>
  ({ variant }) =>
    (variant.finding(rule) as Finding).state;

type Judging = 'left out' | 'not checked' | 'judged';

export interface SentNumber {
  readonly worth: OfRow<number>;
  readonly text: string;
}

export class AskedVariant {
  constructor(readonly questions: Questions) {}

  /** A word, a truth or an entry of a table as it is; NaN for a number. */
  outcome(name: string): unknown {
    const kind = this.questions.ask(name, ({ variant }) => kindOf(variant.outcome(name)));
    return STANDS_FOR.get(kind) ?? kind;
  }

  /** Throws Refused. */
  value<N extends JointName>(name: N): Joint[N];
  value(name: string): unknown;
  value(name: string): unknown {
    const outcome = this.outcome(name);
    if (outcome instanceof Refused) throw outcome;
    return outcome;
  }

  /** A list or an entry of a table as it is. */
  entry(name: string): unknown {
    return this.questions.ask(`entry ${name}`, valueOf<unknown>(name));
  }

  /** An argument as it is, a number too: rows in which it differs are printed each. Throws Refused. */
  arg(arg: Arg): unknown {
    const answer = this.questions.ask(`argument ${JSON.stringify(arg)}`, ({ variant }) => {
      try {
        return variant.arg(arg);
      } catch (fault) {
        if (fault instanceof Refused) return kindOf(fault);
        throw fault;
      }
    });
    const outcome = STANDS_FOR.get(answer) ?? answer;
    if (outcome instanceof Refused) throw outcome;
    return outcome;
  }

  /** Whether a tolerance has two sides that differ. */
  isTwoSided(name: string): boolean {
    return this.questions.ask(`sides of ${name}`, ({ variant }) => {
      const { upperMm, lowerMm } = variant.value(name) as Deviation;
      return upperMm + lowerMm !== 0;
    });
  }

  /** One side of a tolerance: how much it is in a row, and as it stands in its formulas. */
  side(name: string, key: keyof Deviation): SentNumber {
    return this.sent(`${key} of ${name}`, ({ variant }) => (variant.value(name) as Deviation)[key]);
  }

  /** A number that has no formula, as it stands in the formulas of a row. */
  number(name: string): string {
    return this.sent(`number ${name}`, valueOf<number>(name)).text;
  }

  private sent(name: string, worth: OfRow<number>): SentNumber {
    return { worth, text: this.questions.text(name, row => number(worth(row)).text) };
  }

  isGiven(name: string): boolean {
    return this.questions.ask(`given ${name}`, ({ variant }) => variant.isGiven(name));
  }

  judging(rule: Rule): Judging {
    return this.questions.ask(`rule ${rule.name}`, ({ variant }) => {
      const state = variant.finding(rule)?.state;
      return state === undefined ? 'left out' : state === 'not checked' ? state : 'judged';
    });
  }

  /** How a rule stands, where it is in the formulas of a row. */
  state(rule: Rule): State {
    return this.questions.ask(`state of ${rule.name}`, stateOfRule(rule));
  }
}

const isNumber = ({ typed }: RowInput): boolean => typeof typed === 'number' && typed !== 0;

/** What is known of the inputs of a row before it is asked anything: all but how much a number is. */
export const keyOfInputs = (given: OneRow['given']): string =>
  JSON.stringify([...given].map(([name, input]) => [name, isNumber(input) ? [] : input.typed]));

/** The inputs of a row with marks for their cells and numbers. */
export const askedInputs = (given: OneRow['given'], questions: Questions): OneRow['given'] =>
  new Map(
    [...given].map(([name, input]): [string, RowInput] => {
      const of = (row: OneRow): RowInput => row.given.get(name) as RowInput;
      const cell = questions.text(`cell ${name}`, row => of(row).cell);
      if (!isNumber(input)) return [name, rowInput(cell, input.typed)];
      const sent = questions.text(`typed ${name}`, row => number(of(row).typed as number).text);
      return [name, { cell, typed: NaN, asSent: [`${cell}=${sent}`] }];
    }),
  );
