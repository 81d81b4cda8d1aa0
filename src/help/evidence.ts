// What each function rests on, as the README shows it: from the cards and the list that a test holds to the tests.
import type { Card } from '../core/card';

/** From outside the project first. */
export const EVIDENCE_KINDS = ['published example', "standard's table", 'reference library', 'identity', 'hand-worked'] as const;
export type EvidenceKind = (typeof EVIDENCE_KINDS)[number];

const OUTSIDE: readonly EvidenceKind[] = EVIDENCE_KINDS.slice(0, 3);
export const isOutside = ({ kind }: Evidence): boolean => OUTSIDE.includes(kind);

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

const escaped = (text: string): string => text.replace(/\|/g, '\\|');
const fileName = (path: string): string => path.split('/').pop() ?? path;

export function evidenceOf(id: string, evidence: readonly Evidence[]): readonly Evidence[] {
  const mine = evidence.filter(one => one.id === id);
  return mine.length === 0 ? [{ id, ...EXAMPLE }] : mine;
}

function rowsOf({ id }: Card, evidence: readonly Evidence[]): string[] {
  const shown = evidenceOf(id, evidence);
  const known = shown.some(isOutside);
  return shown.map(({ kind, source, part, test }, i) => `| ${i === 0 ? `\`${id}\`` : ''} | ${i === 0 && !known ? 'no published check known; ' : ''}${kind} | ${escaped(part === undefined ? source : `${part}: ${source}`)} | [${fileName(test)}](${test}) |`);
}

export function evidenceTable(cards: Iterable<Card>, evidence: readonly Evidence[]): string {
  const all = [...cards];
  const outside = evidence.filter(isOutside);
  const whole = new Set(outside.filter(({ part }) => part === undefined).map(({ id }) => id));
  const inPart = new Set(outside.map(({ id }) => id).filter(id => !whole.has(id)));
  const counts = EVIDENCE_KINDS.map(kind => `${kind} ${new Set(evidence.filter(one => one.kind === kind).map(({ id }) => id)).size}`);
  return [
    '',
    `The results of ${whole.size} of ${all.length} functions are checked against numbers from outside the project; of ${inPart.size} more a term or a value that they read is, and the row says which. No standard’s own document was at hand: its numbers were read in secondary copies, collected once, and typed from that collection into the tests, which find slips of the tables but none of the copies. Functions by kind of evidence: ${counts.join(', ')}. Where no published check is known, the row says so: there the values are worked by hand or follow from an identity.`,
    '',
    '| function | evidence | source | test |',
    '|---|---|---|---|',
    ...all.flatMap(card => rowsOf(card, evidence)),
  ].join('\n');
}
