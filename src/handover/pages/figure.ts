// The joints in section: a picture that carries letters only, and below it what the letters stand for, as live values.
import type { PlanCell, Picture, SheetPlan } from '../../sheet/plan';
import { address } from '../../sheet/addresses';
import type { Figures, JointFigure, TableCell } from '../compile/joint/joint-cells';
import { withStates } from '../../sheet/ranges';
import { cellText } from '../../sheet/cell-text';

/** SVG to PNG. */
export type SvgToPng = (svg: string) => Uint8Array;

/** A page each. */
export const MOST_FIGURES = 12;
/** Two tables of letter, name, value and unit side by side. */
const WIDTHS = [7, 24, 11, 6, 2, 7, 24, 11, 6];
const SECOND = 5;
const ROW_PX = 20;
const TITLE_ROWS = 2;
/** All values of a drawing have the same places. */
const FORMAT = '0.00';

export function figureSheet(name: string, { shown, left }: Figures, date: string, pngOf: SvgToPng): SheetPlan {
  const day = date === '' ? 'at the hand-over' : `on ${cellText(date)}`;
  const more = left === 0 ? '' : ` ${left} more variants have no figure; those that pass come first.`;
  const cells: PlanCell[] = [
    { at: 'A1', role: 'title', value: 'Figures: the joint in section' },
    { at: 'A2', role: 'note', value: `The pictures show the joints as they were ${day}. Values and states below them are live.${more}` },
  ];
  const merged = [`A1:${address(0, WIDTHS.length - 1)}`, `A2:${address(1, WIDTHS.length - 1)}`];
  const pictures: Picture[] = [];
  const breakAfter: number[] = [];
  let next = TITLE_ROWS;
  for (const figure of shown) {
    const { svg, widthPx, heightPx, state, reason } = figure;
    cells.push(
      { at: address(next, 0), role: 'heading', value: cellText(figure.label) },
      { at: address(next, SECOND), role: 'note', value: `of ${figure.from}` },
    );
    cells.push(
      { at: address(next + 1, 0), role: 'label', value: 'state' },
      live(next + 1, 1, state),
      { at: address(next + 1, 2), role: 'label', value: 'rule' },
      live(next + 1, SECOND, reason),
    );
    merged.push(`${address(next + 1, 2)}:${address(next + 1, 4)}`, `${address(next + 1, SECOND)}:${address(next + 1, WIDTHS.length - 1)}`);
    const rows = Math.ceil(heightPx / ROW_PX);
    pictures.push({ at: address(next + 2, 0), png: pngOf(svg), widthPx, heightPx, rows, words: wordsOf(figure, day) });
    next += 2 + rows;
    cells.push(...legendCells(next, figure));
    next += 1 + Math.ceil(figure.legend.length / 2) + 1;
    breakAfter.push(next);
  }
  return withStates({
    name,
    widths: WIDTHS,
    cells,
    merged,
    pictures,
    print: { repeatRows: TITLE_ROWS, breakAfter: breakAfter.slice(0, -1) },
  });
}

const wordsOf = ({ label, state }: JointFigure, day: string): string =>
  cellText(
    `Section through the joint "${label}" to scale, as it was ${day}, state then: ${String(state.value)}. The letters are ` +
      'explained in the table below.',
  );

function live(row: number, column: number, { formula, value }: TableCell): PlanCell {
  return {
    at: address(row, column),
    role: 'result',
    ...(formula === undefined ? {} : { formula: `=${formula}` }),
    value,
    ...(typeof value === 'number' ? { format: FORMAT } : {}),
  };
}

function legendCells(top: number, { legend }: JointFigure): PlanCell[] {
  const half = Math.ceil(legend.length / 2);
  const headers = [0, SECOND].flatMap(left =>
    ['letter', 'name', 'value', 'unit'].map((value, c): PlanCell => ({ at: address(top, left + c), role: 'header', value })),
  );
  return [...headers, ...legend.flatMap((entry, i) => legendRow(entry, top + 1 + (i % half), i < half ? 0 : SECOND))];
}

function legendRow({ letter, name, unit, cell }: JointFigure['legend'][number], row: number, left: number): PlanCell[] {
  return [
    { at: address(row, left), role: 'label', value: letter },
    { at: address(row, left + 1), role: 'label', value: name },
    cell === undefined ? { at: address(row, left + 2), role: 'result', value: 'no value' } : live(row, left + 2, cell),
    { at: address(row, left + 3), role: 'unit', value: unit },
  ];
}
