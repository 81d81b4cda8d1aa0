// Where text wraps and how tall a row must be for it: a file carries heights, nobody measures them when it is opened.
import { cellPosition, holds, isOneCell, type Place, type Rectangle, rectangleOf } from '../../sheet/addresses';
import type { PlanCell, Role, SheetPlan } from '../../sheet/plan';
import { ROLE_LOOKS } from '../../sheet/theme';

/** A cell of the plan with its place. */
export class PlacedCell implements Place {
  /** @param lines that its text takes. */
  constructor(
    readonly cell: PlanCell,
    readonly row: number,
    readonly column: number,
    private readonly merged: Rectangle | undefined,
    private readonly lastOfBand: number,
    readonly wraps: boolean,
    readonly lines: number,
  ) {}

  /** The cell itself, or all cells it is merged with. */
  get area(): Rectangle {
    return this.merged ?? { top: this.row, left: this.column, bottom: this.row, right: this.column };
  }

  /** The cells that share its looks: a heading runs on to the end of the sheet or to the next cell. */
  get band(): Rectangle {
    return { ...this.area, right: this.lastOfBand };
  }

  /** Nothing of it lies outside its cell. */
  get isOne(): boolean {
    return this.lastOfBand === this.column && (this.merged === undefined || isOneCell(this.merged));
  }
}

/** What the plan does not name, in characters of the sheet font and in points. */
const PLAIN_WIDTH = 9;
export const PLAIN_ROW_PT = 15;

export const PT_PER_PX = 0.75;
const LINE_PT = 12.75;
const PADDING_PT = 4.5;
const TALLEST_PT = 409;
const LEAST_PT: Partial<Record<Role, number>> = { title: 32, heading: 24 };

/** Programs replace fonts and round widths: a line is filled to this share only. */
const FILL = 0.95;
/** Both sides of a cell together, in digits: indent and the frame's own distance. */
const INDENT = 2;

/** Widths of letters in hundredths of the size of an Arial-like font; any other letter is as wide as a digit. */
const DIGIT = 56;
const IDEOGRAM = 100;
const BOLDER = 1.09;
const LETTERS = new Map(
  (
    [
      [22, "ijl'"],
      [28, ' !,./:;I[\\]ft|·'],
      [34, '()-`r{}"'],
      [40, '*°'],
      [50, 'ckJsvxyz^'],
      [58, '+<=>~×±÷≤≥'],
      [62, 'FTZ'],
      [67, 'ABEKPSVXY&'],
      [72, 'CDHNRUw'],
      [78, 'GOQØ'],
      [83, 'mM'],
      [90, '%'],
      [100, 'W@—…'],
    ] as const
  ).flatMap(([width, letters]) => [...letters].map(letter => [letter, width] as const)),
);

const NEVER_WRAPS: readonly Role[] = ['title', 'heading'];
const ALWAYS_WRAPS: readonly Role[] = ['input', 'result', 'header', 'caution'];

/** Of the sheet font, as screens round them. */
export const DIGIT_PX = 7;
const COLUMN_PADDING_PX = 5;
/** Size of the sheet font in digits of it. */
const EM = 13.33 / DIGIT_PX;

const widthOf = (plan: SheetPlan, col: number): number => plan.widths[col] ?? PLAIN_WIDTH;

export const columnPx = (plan: SheetPlan, col: number): number => widthOf(plan, col) * DIGIT_PX + COLUMN_PADDING_PX;

/** A file counts the distance of the cell's frame into the width. */
export const fileWidth = (characters: number): number => characters + COLUMN_PADDING_PX / DIGIT_PX;

/** Width of a text in digits of the sheet font. */
function textWidth(text: string, bold: boolean): number {
  let hundredths = 0;
  for (const letter of text) hundredths += LETTERS.get(letter) ?? (letter >= '\u1100' ? IDEOGRAM : DIGIT);
  return (hundredths / 100) * EM * (bold ? BOLDER : 1);
}

export function linesOf(text: string, width: number, bold: boolean): number {
  const room = Math.max(1, (width - INDENT) * FILL);
  let lines = 0;
  for (const paragraph of text.split('\n')) {
    lines += 1;
    let used = 0;
    for (const word of paragraph.split(/(?<=[ -])/)) {
      const needed = textWidth(word.trimEnd(), bold);
      if (used > 0 && used + needed > room) {
        lines += 1;
        used = 0;
      }
      // A word longer than a line is broken.
      lines += Math.max(0, Math.ceil(needed / room) - 1);
      used += textWidth(word, bold);
    }
  }
  return lines;
}

export function placed(plan: SheetPlan): PlacedCell[] {
  const merged = (plan.merged ?? []).map(rectangleOf);
  const filled: (true[] | undefined)[] = [];
  for (const { at } of plan.cells) {
    const { row, column } = cellPosition(at);
    (filled[row] ??= [])[column] = true;
  }
  const lastCol = plan.widths.length - 1;
  return plan.cells.map(cell => {
    const place = cellPosition(cell.at);
    const { row, column } = place;
    const range = merged.find(one => holds(one, place));
    const [left, end] = range === undefined ? [column, column] : [range.left, range.right];
    const isMerged = range !== undefined && !isOneCell(range);
    const isFree = (col: number): boolean => filled[row]?.[col] !== true;
    let right = end;
    if (cell.role === 'heading') while (!isMerged && right < lastCol && isFree(right + 1)) right += 1;
    // Only the last column that the plan gives a width keeps its text to itself.
    const hasRoom = !isMerged && end !== lastCol && isFree(end + 1);
    const wraps = typeof cell.value !== 'number' && !NEVER_WRAPS.includes(cell.role) && (ALWAYS_WRAPS.includes(cell.role) || !hasRoom);
    let width = 0;
    for (let col = left; col <= end; col++) width += widthOf(plan, col);
    const lines = wraps && typeof cell.value === 'string' ? linesOf(cell.value, width, ROLE_LOOKS[cell.role].isBold === true) : 1;
    return new PlacedCell(cell, row, column, range, right, wraps, lines);
  });
}

/** Heights in points by row. A cell merged over several rows asks for its lines over all of them, a picture for its height. */
export function heightsPt(
  cells: readonly PlacedCell[],
  { pictures = [], writingPt = 0 }: Pick<SheetPlan, 'pictures' | 'writingPt'>,
): Map<number, number> {
  const heights = new Map<number, number>();
  for (const { at, heightPx, rows = 0 } of pictures) {
    const { row: first } = cellPosition(at);
    for (let row = first; row < first + rows; row++) heights.set(row, (heightPx * PT_PER_PX) / rows);
  }
  for (const { cell, area, lines } of cells) {
    const rows = area.bottom - area.top + 1;
    const needed = Math.min(
      TALLEST_PT,
      Math.max(LEAST_PT[cell.role] ?? 0, cell.role === 'input' ? writingPt : 0, (lines * LINE_PT) / rows + PADDING_PT),
    );
    for (let row = area.top; row <= area.bottom; row++) if (needed > (heights.get(row) ?? -1)) heights.set(row, needed);
  }
  return heights;
}
