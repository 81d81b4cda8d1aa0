// Parts that a package has not had: a free name, what leads to them, and their type.
import type { Draft } from './draft';
import { CONTENT_TYPES, relationsPart } from './parts';
import { atEnd, attribute, childrenOf, nameOf, tree, type XmlElement } from './xml';

const RELATIONS = 'http://schemas.openxmlformats.org/package/2006/relationships';
const TYPES = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const VML_TYPE = 'application/vnd.openxmlformats-officedocument.vmlDrawing';
const STRICT = 'http://purl.oclc.org/ooxml/spreadsheetml/main';

/** Where the relations of a workbook in the namespace of its parts are named. */
export const relationNamespace = (main: string): string =>
  main === STRICT
    ? 'http://purl.oclc.org/ooxml/officeDocument/relationships'
    : 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** `xl/comments` and `.xml` as `xl/comments3.xml`. */
export function freePart(of: Draft, stem: string, extension: string): string {
  let number = 1;
  while (of.isTaken(`${stem}${number}${extension}`)) number++;
  return `${stem}${number}${extension}`;
}

/** A relation from one part to another, within the package. Its id. */
export function linked(of: Draft, part: string, kind: string, target: string, main: string): string {
  const list = of.named(relationsPart(part)) ?? relationsPart(part);
  if (of.named(list) === undefined)
    of.add(list, `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<Relationships xmlns="${RELATIONS}"></Relationships>`);
  const ids = new Set(of.links(part).map(({ id }) => id));
  let number = ids.size + 1;
  while (ids.has(`rId${number}`)) number++;
  const id = `rId${number}`;
  // a target from the top holds wherever the part lies
  appended(
    of,
    list,
    root => `<${sibling(root, 'Relationship')} Id="${id}" Type="${relationNamespace(main)}/${kind}" Target="/${target}"/>`,
  );
  return id;
}

/** The type of a part that was added; a drawing of notes is known by its extension, as programs write it. */
export function typed(of: Draft, part: string, kind: 'comments' | 'styles' | 'vmlDrawing'): void {
  const types = of.named(CONTENT_TYPES) ?? CONTENT_TYPES;
  appended(of, types, root => {
    if (kind !== 'vmlDrawing') return `<${sibling(root, 'Override')} PartName="/${part}" ContentType="${TYPES}.${kind}+xml"/>`;
    const isKnown = childrenOf(root, 'Default').some(known => attribute(known, 'Extension')?.toLowerCase() === 'vml');
    return isKnown ? '' : `<${sibling(root, 'Default')} Extension="vml" ContentType="${VML_TYPE}"/>`;
  });
}

const sibling = ({ prefix }: XmlElement, local: string): string => nameOf({ prefix, local });

function appended(of: Draft, part: string, content: (root: XmlElement) => string): void {
  of.change(part, text => {
    const root = tree(text, part);
    const more = content(root);
    return more === '' ? [] : atEnd(text, root, more);
  });
}
