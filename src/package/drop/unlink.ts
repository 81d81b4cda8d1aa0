// A part is taken away from those that lead to it: relation, and the elements that name the relation.
import { without } from '../cut';
import type { Draft } from '../draft';
import type { PartLink } from '../parts';
import { descendants, type Splice, withAttributes, type XmlElement } from '../xml';

/** What goes as well when nothing is left in it. */
const HOLDERS: ReadonlySet<string> = new Set(
  (
    'oleObjects controls externalReferences pivotCaches customProperties tableParts smartTags AlternateContent Choice Fallback ' +
    'ext extLst definedNames'
  ).split(' '),
);
/** What stays without the relation. */
const STAYS_WITHOUT: ReadonlySet<string> = new Set(['pageSetup']);
/** What is broken without it. */
const NEEDS: ReadonlySet<string> = new Set(['worksheetSource', 'rangeSet', 'dataRef', 'pivotCacheDefinition', 'sheet']);

const RELATIONSHIPS = /\/relationships$/;
const isXml = (part: string): boolean => /\.xml$/i.test(part);

const namedBy = ({ attributes }: XmlElement): string[] =>
  Object.values(attributes).flatMap(({ uri, value }) => (RELATIONSHIPS.test(uri) ? [value] : []));
const allIn = (element: XmlElement): XmlElement[] => [element, ...descendants(element)];

/** Elements of a part that name relations. */
export const naming = (draft: Draft, part: string, ids: ReadonlySet<string>): XmlElement[] =>
  isXml(part) ? allIn(draft.tree(part)).filter(element => namedBy(element).some(id => ids.has(id))) : [];

/** Takes elements out, with the relations that only they name. */
export function cut(draft: Draft, part: string, going: (element: XmlElement) => boolean): void {
  const root = draft.tree(part);
  const gone = new Set(descendants(root).filter(going));
  if (gone.size === 0) return;
  const named = new Set([...gone].flatMap(element => allIn(element).flatMap(namedBy)));
  draft.change(part, text => without(text, root, gone, HOLDERS));
  const left = new Set(allIn(draft.tree(part)).flatMap(namedBy));
  draft.unlink(
    part,
    draft.links(part).filter(({ id }) => named.has(id) && !left.has(id)),
  );
}

/** Why a part cannot do without relations, if it cannot. */
export const needing = (draft: Draft, part: string, goes: (link: PartLink) => boolean): string | undefined => {
  const ids = new Set(draft.links(part).flatMap(link => (goes(link) ? [link.id] : [])));
  return naming(draft, part, ids).some(({ local }) => NEEDS.has(local)) ? `${part} is read from it` : undefined;
};

/** The relations of a part for which `goes` holds, with the elements that name them. */
export function unlink(draft: Draft, part: string, goes: (link: PartLink) => boolean): void {
  const ids = new Set(draft.links(part).flatMap(link => (goes(link) ? [link.id] : [])));
  if (ids.size === 0) return;
  const named = naming(draft, part, ids);
  const bare = named.filter(({ local }) => STAYS_WITHOUT.has(local));
  if (bare.length > 0) draft.change(part, text => bare.map(element => withoutRelation(text, element, ids)));
  if (named.length > bare.length)
    cut(draft, part, element => !STAYS_WITHOUT.has(element.local) && namedBy(element).some(id => ids.has(id)));
  draft.unlink(part, draft.links(part).filter(goes));
}

function withoutRelation(text: string, { from, to, attributes }: XmlElement, ids: ReadonlySet<string>): Splice {
  const names = Object.values(attributes).filter(({ uri, value }) => RELATIONSHIPS.test(uri) && ids.has(value));
  return { from, to, text: withAttributes(text.slice(from, to), Object.fromEntries(names.map(({ name }) => [name, undefined]))) };
}

/** A part is led to no more; or why it must be. */
export function unlinkPart(draft: Draft, target: string): string | undefined {
  const goes = (link: PartLink): boolean => !link.isOutside && link.target === target;
  const leading = draft.leadingTo(target);
  const needs = leading.map(part => needing(draft, part, goes)).find(why => why !== undefined);
  if (needs === undefined) for (const part of leading) unlink(draft, part, goes);
  return needs;
}
