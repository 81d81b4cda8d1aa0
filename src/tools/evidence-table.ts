// What each function rests on, as its document shows it: from the cards and the list that a test holds to the tests.
import type { Card } from '../core/card';
import { checked, type Evidence, EVIDENCE_KINDS, evidenceOf, isOutside, RULE } from '../evidence/evidence';
import { inTable } from './markdown';

const fileName = (path: string): string => path.split('/').pop() ?? path;

function rowsOf({ id }: Card, evidence: readonly Evidence[]): string[] {
  const shown = evidenceOf(id, evidence);
  const known = shown.some(isOutside);
  return shown.map(
    ({ kind, source, part, test }, i) =>
      `| ${i === 0 ? `\`${id}\`` : ''} | ${i === 0 && !known ? 'nothing from outside; ' : ''}${kind} | ` +
      `${inTable(part === undefined ? source : `${part}: ${source}`)} | [${fileName(test)}](../../${test}) |`,
  );
}

export function evidenceTable(cards: Iterable<Card>, evidence: readonly Evidence[]): string {
  const all = [...cards];
  const { whole, inPart, none, byTableAlone, byUsAlone } = checked(all, evidence);
  const counts = EVIDENCE_KINDS.map(kind => `${kind} ${new Set(evidence.filter(one => one.kind === kind).map(({ id }) => id)).size}`);
  return [
    `${RULE} Of ${all.length} functions ${whole.length} are checked so: ${byTableAlone.length} of them by standards’ tables alone, ` +
      `and ${byUsAlone.length} by a second computation of our own alone, which finds a slip in a formula but no assumption that both ` +
      `ways share. Of ${inPart.length} more a term or a value that they read is checked, and the row says which. Of ${none.length} ` +
      'nothing is checked from outside: their values are worked by hand, by arithmetic or follow from an identity. No standard’s own ' +
      'document was at hand: its numbers were read in secondary copies, collected once, and typed from that collection into the tests, ' +
      `which find slips of the tables but none of the copies. Functions by kind of evidence: ${counts.join(', ')}.`,
    '',
    `Nothing from outside for: ${none.map(id => `\`${id}\``).join(', ')}.`,
    '',
    '| function | evidence | source | test |',
    '|---|---|---|---|',
    ...all.flatMap(card => rowsOf(card, evidence)),
  ].join('\n');
}
