// Shapes of sheets in the old kind of drawing, which is no XML that can be relied on: notes, controls, embedded files.
import type { Draft } from '../draft';
import type { Splice } from '../xml';
import { naming, unlink } from './unlink';

export interface OldShape {
  readonly id: string;
  /** `Note`, `Button`. */
  readonly type: string;
  /** Of a note, from 0. */
  readonly row: number;
  readonly column: number;
}

const SHAPE = /<((?:\w+:)?shape)(?=[\s>/])(?:[^>]*\/>|[^>]*>[\s\S]*?<\/\1>)/g;
const RELATION = /\brelid\s*=\s*["']([^"']+)["']/g;
const inside = (shape: string, element: string): string => new RegExp(`<(?:\\w+:)?${element}>\\s*(\\d+)`).exec(shape)?.[1] ?? '';

const shapeOf = (text: string): OldShape => ({
  id: /\sid\s*=\s*["']([^"']*)["']/.exec(text)?.[1] ?? '',
  type: /ObjectType\s*=\s*["']([^"']*)["']/.exec(text)?.[1] ?? '',
  row: Number(inside(text, 'Row') || -1),
  column: Number(inside(text, 'Column') || -1),
});

const relationsIn = (text: string): Set<string> => new Set([...text.matchAll(RELATION)].map(([, id = '']) => id));

/** Takes shapes out of the drawing of a sheet, and the drawing when none is left in it. */
export function dropShapes(draft: Draft, sheet: string, goes: (shape: OldShape) => boolean): void {
  const drawing = draft
    .links(sheet)
    .find(({ id, type }) => type === 'vmlDrawing' && naming(draft, sheet, new Set([id])).some(({ local }) => local === 'legacyDrawing'));
  if (drawing === undefined || !draft.has(drawing.target)) return;
  const text = draft.text(drawing.target);
  const shapes = [...text.matchAll(SHAPE)];
  const going = shapes.filter(([shape]) => goes(shapeOf(shape)));
  if (going.length === shapes.length) {
    unlink(draft, sheet, ({ id }) => id === drawing.id);
    return;
  }
  draft.change(drawing.target, () => going.map(({ index, 0: shape }): Splice => ({ from: index, to: index + shape.length, text: '' })));
  const left = relationsIn(draft.text(drawing.target));
  const named = relationsIn(text);
  draft.unlink(
    drawing.target,
    draft.links(drawing.target).filter(({ id }) => named.has(id) && !left.has(id)),
  );
}
