// What was looked up before: found again by the same keys, one after another.
import { Refused } from '../core/refuse';

export class LookUps {
  private results: Map<unknown, unknown> | undefined;
  private nested: Map<unknown, LookUps> | undefined;

  /** What was looked up beside this key. */
  beside(key: unknown): LookUps {
    this.nested ??= new Map();
    let found = this.nested.get(key);
    if (found === undefined) this.nested.set(key, (found = new LookUps()));
    return found;
  }

  get(key: unknown): unknown {
    return this.results?.get(key);
  }

  /** Keeps what the work gives, or why it gives nothing. */
  keep(key: unknown, work: () => unknown): unknown {
    const outcome = outcomeOf(work);
    this.results ??= new Map();
    this.results.set(key, outcome);
    return outcome;
  }
}

function outcomeOf(work: () => unknown): unknown {
  try {
    return work();
  } catch (fault) {
    if (fault instanceof Refused) return fault;
    throw fault;
  }
}
