// Where the part and its dimensions stand on the sheet: what is written at each, the scale, and the columns of labels.
import type { Dimension } from './dimensions';
import { COLUMN_PX, FAN_PX, type Label, LABEL_PITCH, labelWidthPx, type Sheet } from './labels';
import { extentOf, type Shape } from './shape';
import { ENGLISH, type FigureSpeech, numberIn } from './speech';
import type { View } from './view';

export const DEFAULT_WIDTH_PX = 700;
export const MARGIN_PX = 10;
export const HEADING_PX = 34;
/** The centre line runs on beyond the part. */
export const CENTRE_PX = 12;
const OVERHEAD_PX = 34;
const SIDE_PX = 24;
const MIN_PART_PX = 216;
/** The part is never drawn higher than this share of the width. */
const TALLEST = 0.64;

export function numberText(
  { words, value, unit, place }: Dimension,
  dMm: number | undefined,
  lengthText: (mm: number) => string,
  speech: FigureSpeech = ENGLISH,
): string {
  if (value === undefined || place === undefined) return '';
  if (unit === '°') return `${numberIn(speech, value)}°${words.endsWith('draft') ? ' ↑' : ''}`;
  const sign = place.side === 'left' && place.ends === 'arrow' ? 'Ø' : '';
  const inDiameters = place.side === 'right' && place.look !== 'plain' && dMm !== undefined ? ` = ${numberIn(speech, value / dMm)} d` : '';
  return `${sign}${lengthText(value)}${inDiameters}`;
}

const widest = (labels: readonly Label[], side: 'left' | 'right'): number =>
  Math.max(0, ...labels.filter(({ dimension }) => dimension.place?.side === side).map(labelWidthPx));

/** Scale and columns: as large as width and height allow, the whole in the middle of the sheet. */
export function arranged(
  shape: Shape,
  labels: readonly Label[],
  askedWidthPx: number,
): Sheet & { readonly widthPx: number; readonly threadX: number } {
  const extent = extentOf(shape);
  const [left, right] = [widest(labels, 'left'), widest(labels, 'right')];
  const count = (beside: 'thread' | 'part'): number =>
    Math.max(
      -1,
      ...labels.filter(({ dimension: { place } }) => place?.side === 'right' && place.beside === beside).map(({ column }) => column),
    ) + 1;
  const threadPx = (count('thread') + 0.8) * COLUMN_PX;
  const outside = 2 * MARGIN_PX + left + right + 2 * FAN_PX + 6 + (count('part') + 0.8) * COLUMN_PX;
  const widthPx = Math.max(askedWidthPx, Math.ceil(outside + MIN_PART_PX));
  const halfPx = (widthPx - outside) / 2;
  const bossR = shape.threadHalf?.footR ?? 0;
  const scale = Math.min(
    (halfPx - SIDE_PX) / extent.radius,
    (halfPx - threadPx) / Math.max(bossR, 1e-6),
    (TALLEST * widthPx) / (extent.bottom - extent.top),
  );
  const edgePx = Math.min(halfPx, Math.max(extent.radius * scale + SIDE_PX, bossR * scale + threadPx));
  const partPx = (extent.bottom - extent.top) * scale;
  const top = HEADING_PX + (shape.headHalf === undefined ? CENTRE_PX + 4 : OVERHEAD_PX);
  const rows = Math.max(
    ...(['left', 'right'] as const).map(side => labels.filter(({ dimension }) => dimension.place?.side === side).length),
  );
  const heightPx = Math.max(partPx, rows * LABEL_PITCH);
  const leftX = MARGIN_PX + left + (halfPx - edgePx);
  const axisX = leftX + FAN_PX + 6 + edgePx;
  const view: View = { scale, axisX, edgePx, faceY: top + (heightPx - partPx) / 2 - extent.top * scale };
  return {
    view,
    top,
    bottom: top + heightPx,
    leftX,
    rightX: axisX + edgePx + (count('part') + 0.8) * COLUMN_PX + FAN_PX,
    widthPx,
    threadX: axisX + bossR * scale + COLUMN_PX,
  };
}
