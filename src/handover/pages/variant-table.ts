// The variants on one page: which one is chosen, and all that is wrong with each.
import { address } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import { withStates } from '../../sheet/ranges';
import type { VariantLine } from '../compile/joint/joint-cells';
import { liveCell } from './live-cell';
import type { PageWords } from '../words/words';

const WIDTHS = [20, 9, 12, 48];
const HEAD_ROW = 3;
/** What a page holds below the heads, in lines of text, and how much of a reason a line takes. */
const LINES = 30;
const LINE_LETTERS = 46;

/** The chosen ones and as many others as a page takes, in their order. */
function onPage(lines: readonly VariantLine[]): readonly VariantLine[] {
  const height = ({ reasons }: VariantLine): number => Math.max(1.4, 0.4 + Math.ceil(String(reasons?.value ?? '').length / LINE_LETTERS));
  let left = LINES - lines.filter(({ isChosen }) => isChosen).reduce((sum, one) => sum + height(one), 0);
  return lines.filter(one => {
    if (one.isChosen) return true;
    if (one.reasons === undefined || height(one) > left) return false;
    left -= height(one);
    return true;
  });
}

/** The sheets of steps on which variants stand. */
const sheetsOf = (lines: readonly VariantLine[]): string =>
  [...new Set(lines.flatMap(({ state: { formula } }) => /^'?([^'!]+)'?!/.exec(formula ?? '')?.[1] ?? []))].join(', ');

export function variantTable(name: string, lines: readonly VariantLine[], { variants }: PageWords): SheetPlan {
  const shown = onPage(lines);
  const left = lines.filter(line => !shown.includes(line));
  const more = left.length === 0 ? '' : ` ${variants.left(left.length, sheetsOf(left))}`;
  const cells: PlanCell[] = [
    { at: 'A1', role: 'title', value: variants.title },
    { at: 'A2', role: 'note', value: `${variants.note}${more}` },
    ...variants.headers.map((value, c): PlanCell => ({ at: address(HEAD_ROW - 1, c), role: 'header', value })),
    ...shown.flatMap(({ label, state, reasons, isChosen }, i): PlanCell[] => {
      const r = HEAD_ROW + i;
      return [
        { at: address(r, 0), role: 'label', value: cellText(label) },
        { at: address(r, 1), role: 'label', value: isChosen ? variants.chosen : '' },
        liveCell(r, 2, state),
        ...(reasons === undefined ? [] : [liveCell(r, 3, reasons)]),
      ];
    }),
  ];
  return withStates({
    name,
    widths: WIDTHS,
    frozenRows: HEAD_ROW,
    cells,
    merged: [0, 1].map(line => `${address(line, 0)}:${address(line, WIDTHS.length - 1)}`),
    print: { repeatRows: HEAD_ROW, isScaled: true },
  });
}
