// Rows of variants that give the same answers have the same formulas: they are printed once, and each row fills in what is its own.
import type { Cell } from '../../../core/kinds';
import type { Variant } from '../../../joint/variant';
import type { PlanCell } from '../../../sheet/plan';
import type { RowInput } from './row-input';

/** A row as it is. */
export interface OneRow {
  readonly variant: Variant;
  readonly given: ReadonlyMap<string, RowInput>;
}

export type OfRow<T> = (row: OneRow) => T;

/** One cell of all rows that are printed alike. */
export interface PrintedCell {
  readonly column: number;
  /** With `ROW`, and with marks for the texts that each row has of its own. */
  readonly form: string | undefined;
  readonly value: OfRow<Cell | undefined>;
  readonly role: PlanCell['role'];
}

/** Puts a formula or value under a title and answers its cell, as the formulas of its row name it: with `ROW`. */
export type WriteCell = (
  title: string,
  words: string,
  formula: string | undefined,
  value: OfRow<Cell | undefined>,
  role?: PlanCell['role'],
) => string;

/** No formula of a sheet has them. */
const [BEGIN, END] = ['\u0006', '\u0007'];
const MARK = new RegExp(`${BEGIN}([^${END}]*)${END}`, 'g');

/** What a row is asked while it is printed, in order, and the texts in which rows with the same answers still differ. */
export class Questions {
  readonly asked: { readonly question: OfRow<unknown>; readonly answer: unknown }[] = [];
  readonly texts = new Map<string, OfRow<string>>();
  private readonly answers = new Map<string, unknown>();

  constructor(private readonly row: OneRow) {}

  /** @param name the same for the same question. */
  ask<T>(name: string, question: OfRow<T>): T {
    if (this.answers.has(name)) return this.answers.get(name) as T;
    const answer = question(this.row);
    this.answers.set(name, answer);
    this.asked.push({ question, answer });
    return answer;
  }

  /** A mark for a text that each row has of its own. */
  text(name: string, text: OfRow<string>): string {
    this.texts.set(name, text);
    return `${BEGIN}${name}${END}`;
  }
}

export class RowPrint {
  private readonly cells: readonly (PrintedCell & { readonly isMarked: boolean })[];

  /** @param isHolding whether there is something that its numbers do not follow. */
  constructor(
    cells: readonly PrintedCell[],
    private readonly texts: Questions['texts'],
    readonly isHolding: boolean,
  ) {
    this.cells = cells.map(cell => ({ ...cell, isMarked: cell.form?.includes(BEGIN) === true }));
  }

  /** Tells each cell of a row, with its formula as this row has it. */
  write(row: OneRow, tell: (cell: PrintedCell, form: string | undefined) => void): void {
    const known = new Map<string, string>();
    const textOf = (_mark: string, name: string): string => {
      const text = known.get(name) ?? (this.texts.get(name) as OfRow<string>)(row);
      known.set(name, text);
      return text;
    };
    for (const cell of this.cells) tell(cell, cell.isMarked ? cell.form?.replace(MARK, textOf) : cell.form);
  }
}

interface Branch {
  readonly question: OfRow<unknown>;
  readonly answers: Map<unknown, Branch | RowPrint>;
}

/** The rows printed so far, found again by their answers. */
export class RowPrints {
  private readonly first = new Map<unknown, Branch | RowPrint>();

  /** @param key what is known of the row before it is asked anything. */
  of(key: string, row: OneRow, print: (questions: Questions) => RowPrint): RowPrint {
    let answers = this.first;
    let answer: unknown = key;
    for (;;) {
      const next = answers.get(answer);
      if (next instanceof RowPrint) return next;
      if (next === undefined) break;
      answers = next.answers;
      answer = next.question(row);
    }
    const questions = new Questions(row);
    const printed = print(questions);
    this.add(key, questions, printed);
    return printed;
  }

  private add(key: string, { asked }: Questions, printed: RowPrint): void {
    let answers = this.first;
    let answer: unknown = key;
    for (const one of asked) {
      const next = answers.get(answer) ?? { question: one.question, answers: new Map<unknown, Branch | RowPrint>() };
      if (next instanceof RowPrint) throw new TypeError('a row was asked more than another with the same answers');
      answers.set(answer, next);
      answers = next.answers;
      answer = one.answer;
    }
    answers.set(answer, printed);
  }
}
