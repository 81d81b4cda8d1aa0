// What a file holds besides cells that can harm who opens it: what runs is refused, what fetches is told.
import type { UserPackage } from '../../package/read';
import { UnreadableFile } from '../../package/unreadable';

/** Parts that can run something. */
const RUNS = /(^|\/)(vbaProject[^/]*\.bin|activeX\/.*|macrosheets\/.*|dialogsheets\/.*)$/i;
/** Parts that fetch something or carry another file, besides links to workbooks. */
const OUTSIDE = /^xl\/(connections\.xml|queryTables\/.+\.xml|embeddings\/.+)$/i;

export function assertTame({ parts }: UserPackage): void {
  const running = [...parts.packed.keys()].find(name => RUNS.test(name));
  if (running !== undefined) throw new UnreadableFile('runs', running);
}

/** Targets of links, and names of parts that fetch something or carry another file. */
export const outsideOf = ({ parts, carries }: UserPackage): string[] => [
  ...carries.flatMap(({ kind, words }) => (kind === 'external link' ? [words ?? 'a link to another program'] : [])),
  ...[...parts.packed.keys()].filter(name => OUTSIDE.test(name)),
];
