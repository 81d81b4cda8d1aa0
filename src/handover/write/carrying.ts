// What a workbook carries besides what is seen on its sheets: it goes along only where the sender says so.
import { type Carried, CARRIED_KINDS, type CarriedKind } from '../../package/carried';

/** What is hidden within a sheet stays where it is, and is told; sheets that are seen are chosen by name. */
const STAYS: ReadonlySet<CarriedKind> = new Set<CarriedKind>(['sheet', 'hidden rows', 'hidden columns']);

/** Kinds of which the sender decides. */
export const ASKED_KINDS: readonly CarriedKind[] = CARRIED_KINDS.filter(kind => !STAYS.has(kind));

/** A kind in one word: `hidden-sheet`. */
export const optionOf = (kind: CarriedKind): string => kind.toLowerCase().replaceAll(' ', '-');

export interface CarriedLine {
  readonly kind: CarriedKind;
  readonly count: number;
  /** Names of sheets, addresses of links; what has none is counted alone. */
  readonly words: readonly string[];
}

/** One line a kind, in the order of the workbook. */
export function linesOf(carries: readonly Carried[]): CarriedLine[] {
  const lines = new Map<CarriedKind, CarriedLine>();
  for (const { kind, count, words } of carries) {
    const before = lines.get(kind);
    lines.set(kind, {
      kind,
      count: (before?.count ?? 0) + count,
      words: [...new Set([...(before?.words ?? []), ...(words === undefined ? [] : [words])])],
    });
  }
  return [...lines.values()];
}

/** `2 (Prices, Old)` */
export const amountOf = ({ count, words }: CarriedLine): string =>
  `${count}${words.length === 0 ? '' : ` (${words.slice(0, 5).join(', ')}${words.length > 5 ? ', …' : ''})`}`;

/** `hidden sheet: 2 (Prices, Old)` */
export const shownLine = (line: CarriedLine): string => `${line.kind}: ${amountOf(line)}`;
