// Guards of a row: what its formulas do not follow holds only while it is as it was sent.
import { namesIn } from '../../../joint/graph';
import { INPUTS } from '../../../joint/inputs';
import { NODES } from '../../../joint/nodes';
import { allOf } from '../inputs';
import { type RowInput, takesDefault } from './row-input';
import type { WriteCell } from './row-print';

export class RowGuards {
  /** What the formulas of this row do not follow: they hold while these conditions do. */
  private readonly fixed = new Set<string>();
  /** What only its verdict does not follow: rules that were left out. */
  private readonly fixedOfVerdict = new Set<string>();
  private readonly sent = new Map<string, string>();
  private ofVerdict: { readonly cell: string | undefined } | undefined;

  constructor(
    private readonly given: ReadonlyMap<string, RowInput>,
    private readonly put: WriteCell,
    /** Conditions that hold while the numbers of the screw are as they were sent. */
    private readonly screwAsSent: () => readonly string[],
  ) {}

  /** The verdict holds only while this condition does. */
  addOfVerdict(condition: string): void {
    this.fixedOfVerdict.add(condition);
  }

  addInputOfVerdict(input: string): void {
    for (const condition of this.given.get(input)?.asSent ?? []) this.fixedOfVerdict.add(condition);
  }

  /** Cell that says whether the verdict is about these inputs. Undefined where it follows all. */
  cellOfVerdict(): string | undefined {
    this.ofVerdict ??= { cell: this.putOfVerdict() };
    return this.ofVerdict.cell;
  }

  private putOfVerdict(): string | undefined {
    const cell = this.cell();
    if (this.fixedOfVerdict.size === 0) return cell;
    const conditions = [...(cell === undefined ? [] : [cell]), ...this.fixedOfVerdict];
    return this.put('rules as sent', 'rules that do not apply are still left out', `IFERROR(${allOf(conditions)},FALSE)`, () => true);
  }

  /** Whether there is something that its numbers do not follow. */
  hasFixed(): boolean {
    return this.fixed.size > 0;
  }

  /** Cell that says whether everything that the row does not follow is as it was sent. Undefined where it follows all. */
  private cell(): string | undefined {
    if (this.fixed.size === 0) return undefined;
    return this.put(
      'fixed inputs as sent',
      'the formulas of this row hold for these texts',
      `IFERROR(${allOf([...this.fixed])},FALSE)`,
      () => true,
    );
  }

  /**
   * Cell that says whether the inputs of a value are as they were sent: what has no formula holds only then. Without a name,
   * all inputs.
   */
  unchanged(name?: string): string {
    const needed = name === undefined ? undefined : this.inputsOf(name);
    const conditions = [...this.given].flatMap(([input, { cell, typed, asSent = [] }]) => {
      if (needed !== undefined && !needed.has(input)) return [];
      // where a blank is refused, a zero is another thing
      const isZero = typed === 0 && INPUTS.get(input)?.param.blank === 'explicit';
      return [...(isZero ? [`ISNUMBER(${cell})`] : []), ...asSent];
    });
    if (needed === undefined || needed.has('screw')) conditions.push(...this.screwAsSent());
    if (conditions.length === 0) return 'TRUE';
    const title = name === undefined ? 'all inputs as sent' : `inputs of ${name} as sent`;
    const cell =
      this.sent.get(title) ??
      this.put(title, 'a value without a formula holds for these inputs', `IFERROR(${allOf(conditions)},FALSE)`, () => true);
    this.sent.set(title, cell);
    return cell;
  }

  /** The given inputs that a value is made of. */
  inputsOf(name: string, found: Set<string> = new Set()): ReadonlySet<string> {
    if (found.has(name)) return found;
    found.add(name);
    const here = this.given.get(name);
    const fallback = here === undefined || takesDefault(here.typed) ? INPUTS.get(name)?.fallback : undefined;
    const made = NODES.get(name) ?? (fallback !== undefined && 'by' in fallback ? fallback : undefined);
    for (const arg of [...(NODES.get(name)?.where ?? []), ...(made?.args.flatMap(namesIn) ?? [])]) this.inputsOf(arg, found);
    return found;
  }

  add(conditions: readonly string[]): void {
    conditions.forEach(condition => this.fixed.add(condition));
  }

  addInput({ asSent = [] }: RowInput): void {
    for (const condition of asSent) this.fixed.add(condition);
  }
}
