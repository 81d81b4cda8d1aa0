// The dimensions as they stand on the sheet of the figure, for a drawing in mm.
import type { Entity } from './dxf';
import { type Label, leftSpots, rightSpots, type Sheet } from './labels';
import type { Point } from './svg';

type DimensionLayer = 'DIMENSIONS';

/** Height of its letters where the figure has so many pixels for a line. */
const LETTER_PX = 8;
const TICK_PX = 3;

export function dxfDimensions(sheet: Sheet & { readonly threadX: number }, labels: readonly Label[]): Entity<DimensionLayer>[] {
  const { view } = sheet;
  const mm = ([x, y]: Point): Point => [(x - view.axisX) / view.scale, (view.faceY - y) / view.scale];
  const lines = (...points: readonly Point[]): Entity<DimensionLayer>[] =>
    points.slice(1).map((to, i) => ({ is: 'LINE', layer: 'DIMENSIONS', from: mm(points[i] ?? to), to: mm(to) }));
  const words = ({ words: name, number }: Label, [x, y]: Point, align: 'left' | 'right'): Entity<DimensionLayer> => ({
    is: 'TEXT',
    layer: 'DIMENSIONS',
    at: mm([x, y + LETTER_PX / 2]),
    heightMm: LETTER_PX / view.scale,
    content: `${name} ${number}`,
    align,
  });
  return [
    ...leftSpots(sheet, labels).flatMap(({ label, tip, elbow, labelY }) => [
      ...lines(tip, elbow, [sheet.leftX + 4, labelY]),
      words(label, [sheet.leftX, labelY], 'right'),
    ]),
    ...rightSpots(sheet, labels, sheet.threadX).flatMap(({ label, x, fromY, toY, starts, leader, labelY }) => [
      ...starts.flatMap(start => lines(start, [x + 4, start[1]])),
      ...lines([x, fromY], [x, toY]),
      ...[fromY, toY].flatMap(y => lines([x - TICK_PX, y + TICK_PX], [x + TICK_PX, y - TICK_PX])),
      ...lines(...leader),
      words(label, [sheet.rightX, labelY], 'left'),
    ]),
  ];
}
