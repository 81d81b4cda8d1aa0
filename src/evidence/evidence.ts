// What counts as evidence of a function, and how many functions are checked by it.
import type { Card } from '../core/card';

/** From outside the project first. */
export const EVIDENCE_KINDS = [
  'published example',
  "standard's table",
  'reference library',
  'independent computation',
  'identity',
  'arithmetic',
  'hand-worked',
] as const;
export type EvidenceKind = (typeof EVIDENCE_KINDS)[number];

const OUTSIDE: readonly EvidenceKind[] = EVIDENCE_KINDS.slice(0, 4);
export const isOutside = ({ kind }: Evidence): boolean => OUTSIDE.includes(kind);

/** What counts. `test/kit/refereed.ts` sees to its last words. */
export const RULE =
  'A function counts as checked when its whole result is compared with numbers that somebody else printed, with those of a ' +
  'standard’s table, with a library or with a computation by another way, and that test fails once the result is made a twentieth ' +
  'too large.';

export interface Evidence {
  readonly id: string;
  readonly kind: EvidenceKind;
  /** Whose number it is and how that is held; what an identity says; empty where the test says it. */
  readonly source: string;
  /** What of the result the number is for, where it is not for the whole. */
  readonly part?: string;
  readonly test: string;
  /** Words of the test's title. */
  readonly title: string;
}

/** Every card has an example; without anything else, that is what there is. */
const EXAMPLE = { kind: 'hand-worked', source: 'its example', test: 'test/core/examples.test.ts', title: '%s' } as const;

/** Ids in the order of the cards. */
export interface CheckedFunctions {
  readonly whole: readonly string[];
  readonly inPart: readonly string[];
  readonly none: readonly string[];
  /** Of the whole ones. */
  readonly byTableAlone: readonly string[];
  readonly byUsAlone: readonly string[];
}

/** By `RULE`, counted from the list. */
export function checked(cards: Iterable<Card>, evidence: readonly Evidence[]): CheckedFunctions {
  const ids = [...cards].map(({ id }) => id);
  const outside = evidence.filter(isOutside);
  const ofWhole = outside.filter(({ part }) => part === undefined);
  const among =
    (list: readonly Evidence[]) =>
    (id: string): boolean =>
      list.some(one => one.id === id);
  const whole = ids.filter(among(ofWhole));
  const alone = (kind: EvidenceKind): string[] => whole.filter(id => !among(ofWhole.filter(one => one.kind !== kind))(id));
  return {
    whole,
    inPart: ids.filter(id => among(outside)(id) && !whole.includes(id)),
    none: ids.filter(id => !among(outside)(id)),
    byTableAlone: alone("standard's table"),
    byUsAlone: alone('independent computation'),
  };
}

export function evidenceOf(id: string, evidence: readonly Evidence[]): readonly Evidence[] {
  const mine = evidence.filter(one => one.id === id);
  return mine.length === 0 ? [{ id, ...EXAMPLE }] : mine;
}
