// The chosen joints in section, a page each: the numbers in balloons are those of the characteristics.
import type { PlanCell, Picture, SheetPlan } from '../../sheet/plan';
import { address } from '../../sheet/addresses';
import type { ChosenVariant } from '../compile/joint/joint-cells';
import { withStates } from '../../sheet/ranges';
import { cellText } from '../../sheet/cell-text';
import { liveCell } from './live-cell';
import type { PageWords } from './words/words';

/** SVG to PNG. */
export type SvgToPng = (svg: string) => Uint8Array;

/** A page each. */
export const MOST_FIGURES = 12;
const WIDTHS = [56, 14, 16];
const ROW_PX = 20;
const TITLE_ROWS = 2;

export interface NumberedVariant {
  readonly variant: ChosenVariant;
  /** Numbers of its characteristics by their names in the joint. */
  readonly numbers: ReadonlyMap<string, string>;
}

export function figureSheet(
  name: string,
  variants: readonly NumberedVariant[],
  date: string,
  pngOf: SvgToPng,
  { figure: words }: PageWords,
): SheetPlan {
  const day = date === '' ? words.atHandOver : `${words.on} ${cellText(date)}`;
  const cells: PlanCell[] = [
    { at: 'A1', role: 'title', value: words.title },
    { at: 'A2', role: 'note', value: words.note(day) },
  ];
  const merged = [`A1:${address(0, WIDTHS.length - 1)}`, `A2:${address(1, WIDTHS.length - 1)}`];
  const pictures: Picture[] = [];
  const breakAfter: number[] = [];
  let next = TITLE_ROWS;
  for (const { variant, numbers } of variants.slice(0, MOST_FIGURES)) {
    const { svg, widthPx, heightPx } = variant.drawn(numbers);
    cells.push(
      { at: address(next, 0), role: 'heading', value: cellText(variant.label) },
      { at: address(next, 1), role: 'label', value: words.state },
      liveCell(next, 2, variant.state),
    );
    const rows = Math.ceil(heightPx / ROW_PX);
    const described = cellText(words.described(variant.label, day, String(variant.state.value)));
    pictures.push({ at: address(next + 1, 0), png: pngOf(svg), widthPx, heightPx, rows, words: described });
    next += 1 + rows;
    breakAfter.push(next);
  }
  return withStates({
    name,
    widths: WIDTHS,
    cells,
    merged,
    pictures,
    print: { repeatRows: TITLE_ROWS, isScaled: true, ...(breakAfter.length > 1 && { breakAfter: breakAfter.slice(0, -1) }) },
  });
}
