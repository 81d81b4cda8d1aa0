// Controls and embedded files: what stands for them on the sheet goes with them.
import type { Draft } from '../draft';
import type { PartLink } from '../parts';
import { attribute, descendants, type XmlElement } from '../xml';
import { dropShapes } from './shapes';
import { cut, naming, unlink } from './unlink';

const isAnchor = ({ local }: XmlElement): boolean => /^(twoCell|oneCell|absolute)Anchor$/.test(local);

/** `links` of a part lead to objects or to files outside. */
export function dropObjects(draft: Draft, part: string, goes: (link: PartLink) => boolean): void {
  const ids = new Set(draft.links(part).flatMap(link => (goes(link) ? [link.id] : [])));
  const shapes = new Set(
    naming(draft, part, ids)
      .flatMap(element => attribute(element, 'shapeId') ?? [])
      .map(id => `_x0000_s${id}`),
  );
  unlink(draft, part, goes);
  if (shapes.size === 0) return;
  dropShapes(draft, part, ({ id }) => shapes.has(id));
  for (const { type, target, isOutside } of draft.links(part))
    if (type === 'drawing' && !isOutside && draft.has(target))
      cut(draft, target, element => isAnchor(element) && descendants(element).some(inner => shapes.has(attribute(inner, 'spid') ?? '')));
}

export function dropObject(draft: Draft, target: string): undefined {
  for (const part of draft.leadingTo(target)) dropObjects(draft, part, link => !link.isOutside && link.target === target);
}
