// Values of a variant for the figure: what is refused is left out, and said.
import { Refused } from '../core/refuse';
import { isOutput } from '../joint/outputs';
import type { Joint, JointName } from '../joint/nodes';
import type { Variant } from '../joint/variant';
import { NotApplicable } from '../joint/graph';
import { INPUTS } from '../joint/inputs';

/** Reads values of a variant and keeps what was refused. */
export class JointValues {
  /** Reason, and the names that have no value for it. */
  readonly missing = new Map<string, string[]>();

  constructor(readonly variant: Variant) {}

  /** The value; undefined where it is refused or does not apply. */
  get<N extends JointName>(name: N): Joint[N] | undefined;
  get(name: string): unknown;
  get(name: string): unknown {
    try {
      return this.variant.value(name);
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
      if (!(fault instanceof NotApplicable)) this.note(name, fault.message);
      return undefined;
    }
  }

  mm(name: string): number | undefined {
    const value = this.get(name);
    return typeof value === 'number' ? value : undefined;
  }

  /** Whether it was asked for and refused. */
  lacks(name: string): boolean {
    return [...this.missing.values()].some(names => names.includes(name));
  }

  /** Helpers of the joint that no user knows by name are not listed. */
  note(name: string, reason: string): void {
    if (!isOutput(name) && !INPUTS.has(name)) return;
    const names = this.missing.get(reason) ?? [];
    if (!names.includes(name)) this.missing.set(reason, [...names, name]);
  }

  /** All of them; undefined where one has no value. */
  all<K extends string>(names: Readonly<Record<K, string>>): Readonly<Record<K, number>> | undefined {
    const entries = Object.entries<string>(names).map(([key, name]) => [key, this.mm(name)] as const);
    return entries.every(([, value]) => value !== undefined) ? (Object.fromEntries(entries) as Record<K, number>) : undefined;
  }
}
