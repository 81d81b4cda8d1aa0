// The chosen joints in section and the studies of the workbook, a page each: the numbers in balloons are those of the characteristics.
import type { PlanCell, Picture, SheetPlan } from '../../sheet/plan';
import { address } from '../../sheet/addresses';
import type { ChosenVariant } from '../compile/joint/joint-cells';
import { withStates } from '../../sheet/ranges';
import { cellText } from '../../sheet/cell-text';
import { liveCell } from './live-cell';
import type { DrawnStudy } from './study-figures';
import type { PageWords } from '../words/words';

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

/** As its own text says. */
function sizeOf(svg: string): { readonly widthPx: number; readonly heightPx: number } {
  const of = (name: string): number => Number(new RegExp(`<svg[^>]* ${name}="([\\d.]+)"`).exec(svg)?.[1]);
  return { widthPx: of('width'), heightPx: of('height') };
}

export function figureSheet(
  name: string,
  variants: readonly NumberedVariant[],
  studies: readonly DrawnStudy[],
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
  const put = (heading: string, label: string, live: DrawnStudy['inputs'], svg: string, described: string): void => {
    const { widthPx, heightPx } = sizeOf(svg);
    cells.push({ at: address(next, 0), role: 'heading', value: cellText(heading) });
    if (live !== undefined) cells.push({ at: address(next, 1), role: 'label', value: label }, liveCell(next, 2, live));
    const rows = Math.ceil(heightPx / ROW_PX);
    pictures.push({ at: address(next + 1, 0), png: pngOf(svg), widthPx, heightPx, rows, words: cellText(described) });
    next += 1 + rows;
    breakAfter.push(next);
  };
  for (const { variant, numbers } of variants.slice(0, MOST_FIGURES)) {
    const { svg } = variant.drawn(numbers);
    put(variant.label, words.state, variant.state, svg, words.described(variant.label, day, String(variant.state.value)));
  }
  for (const { words: study, place, svg, inputs } of studies.slice(0, MOST_FIGURES))
    put(`${study}, ${place}`, words.inputs, inputs, svg, words.studyDescribed(study, place, day));
  return withStates({
    name,
    widths: WIDTHS,
    cells,
    merged,
    pictures,
    print: { repeatRows: TITLE_ROWS, isScaled: true, ...(breakAfter.length > 1 && { breakAfter: breakAfter.slice(0, -1) }) },
  });
}
