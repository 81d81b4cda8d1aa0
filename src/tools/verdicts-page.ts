// How the verdict tells designed joints apart, as the page of proof shows it.
import { ARGUED, type Figures } from '../../test/evidence/verdicts/figures';
import { RULES } from '../joint/rules';
import { inTable } from './markdown';

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** As Markdown. */
export function verdictsPage({ joints, sampled, shares, rules }: Figures): string {
  const { 'not checked': refused, ...judged } = shares;
  const row = ({ rule, applies, review, fail }: Figures['rules'][number]): string => {
    const argued = ARGUED[rule];
    const source = RULES.find(({ name }) => name === rule)?.source ?? '–';
    const argument = argued === undefined ? '–' : `${argued.why} (${argued.source})`;
    return `| ${[rule, percent(applies / sampled), percent(review), percent(fail), source, argument].map(inTable).join(' | ')} |`;
  };
  return [
    `Verdicts on ${joints.toLocaleString('en')} joints as they are designed, seeded, in test/evidence/verdicts/population.ts: ` +
      `${Object.entries(judged)
        .map(([state, share]) => `${state} ${percent(share)}`)
        .join(', ')}, refused ${percent(refused)}. How often each rule speaks was counted on every ${joints / sampled}th of them; ` +
      'one that speaks in more than half or in none says why, and a test asks for that.',
    '',
    '| rule | applies | review | fail | source of its limits | why it speaks so often, or not |',
    '|---|---|---|---|---|---|',
    ...rules.map(row),
  ].join('\n');
}
