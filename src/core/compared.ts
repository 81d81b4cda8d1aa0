// A sentence that sets what is asked beside what there is. People read it from here, the hand-over prints it as a formula.
import { placesThatDiffer, rounded } from './decimal';

export interface Compared<T> {
  readonly words: readonly [before: string, between: string, after: string];
  readonly asked: T;
  readonly has: T;
}

/** With as many digits as it takes the two to differ. */
export function comparedText({ words: [before, between, after], asked, has }: Compared<number>): string {
  const places = placesThatDiffer(asked, has);
  return `${before}${rounded(asked, places)}${between}${rounded(has, places)}${after}`;
}
