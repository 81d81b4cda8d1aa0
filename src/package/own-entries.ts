// What the user's package says of sheets that are added: in the workbook, in its relations, among the types of parts.
import type { Vocabulary } from './own-text';
import { UnreadableFile } from './unreadable';
import { appendedTo, attribute, childOf, childrenOf, escapedText, type Splice, tree, withAttributes, type XmlElement } from './xml';

const TRANSITIONAL = 'http://schemas.openxmlformats.org';
const STRICT = 'http://purl.oclc.org/ooxml';
const MAIN = `${TRANSITIONAL}/spreadsheetml/2006/main`;
export const RELATIONSHIPS = `${TRANSITIONAL}/officeDocument/2006/relationships`;
const DRAWING = ['main', 'spreadsheetDrawing'].map(
  name => [`${TRANSITIONAL}/drawingml/2006/${name}`, `${STRICT}/drawingml/${name}`] as const,
);

/** What stands before the names in the workbook. */
const BEFORE_NAMES: ReadonlySet<string> = new Set(['sheets', 'functionGroups', 'externalReferences']);

const prefixOf = ({ prefix }: XmlElement): string => (prefix === '' ? '' : `${prefix}:`);
const idOf = (sheet: XmlElement) =>
  Object.values(sheet.attributes).find(({ local, uri }) => local === 'id' && uri.endsWith('/relationships'));
const sheetsOf = (book: XmlElement): readonly XmlElement[] => childrenOf(childOf(book, 'sheets'), 'sheet');

/** Of the words that we write, those that are others in the user's workbook. */
export function vocabularyOf(book: XmlElement): Vocabulary {
  const [sheet] = sheetsOf(book);
  const relationships = sheet && idOf(sheet)?.uri;
  if (relationships === undefined) throw new UnreadableFile('noWorkbook');
  const words = [[MAIN, book.uri], [RELATIONSHIPS, relationships], ...(book.uri.startsWith(STRICT) ? DRAWING : [])] as const;
  return new Map(words.filter(([ours, theirs]) => ours !== theirs));
}

/** What the kinds of relation in the user's workbook begin with; ours have the same last word. */
export function kindsOf(bookLinks: string): (ours: string) => string {
  const kinds = tree(bookLinks, 'workbook.xml.rels').children.map(link => attribute(link, 'Type') ?? '');
  const stem = kinds.find(kind => kind.endsWith('/worksheet'))?.slice(0, -'worksheet'.length) ?? `${RELATIONSHIPS}/`;
  return ours => ours.replace(`${RELATIONSHIPS}/`, stem);
}

export interface NewLink {
  readonly id: string;
  readonly type: string;
  readonly part: string;
}

/** Ids of relations that are free. */
export function freeIds(links: string): () => string {
  const used = tree(links, 'workbook.xml.rels').children.map(link => Number(/^rId(\d{1,9})$/i.exec(attribute(link, 'Id') ?? '')?.[1] ?? 0));
  let last = used.reduce((most, n) => Math.max(most, n), 0);
  return () => `rId${++last}`;
}

export function linkSplices(text: string, part: string, links: readonly NewLink[]): Splice[] {
  const root = tree(text, part);
  const written = links.map(({ id, type, part: target }) =>
    withAttributes(`<${prefixOf(root)}Relationship/>`, { Id: id, Type: type, Target: `/${target}` }),
  );
  return appendedTo(text, root, written.join(''));
}

/** A type by its extension where that says nothing else yet, so that pictures are declared as other programs do it. */
export function typeSplices(text: string, part: string, types: ReadonlyMap<string, string>): Splice[] {
  const root = tree(text, part);
  const byExtension = new Map(
    childrenOf(root, 'Default').map(type => [(attribute(type, 'Extension') ?? '').toLowerCase(), attribute(type, 'ContentType') ?? '']),
  );
  const written = [...types].map(([name, type]) => {
    const extension = name.slice(name.lastIndexOf('.') + 1).toLowerCase();
    const said = byExtension.get(extension);
    if (said?.toLowerCase() === type.toLowerCase()) return '';
    if (said !== undefined || extension === 'xml')
      return withAttributes(`<${prefixOf(root)}Override/>`, { PartName: `/${name}`, ContentType: type });
    byExtension.set(extension, type);
    return withAttributes(`<${prefixOf(root)}Default/>`, { Extension: extension, ContentType: type });
  });
  return appendedTo(text, root, written.join(''));
}

export interface NewSheet {
  readonly name: string;
  readonly id: string;
}

function nameEntries(book: XmlElement, ownBook: XmlElement, prefix: string): string {
  const sheetCount = sheetsOf(book).length;
  const forAll = (of: XmlElement): readonly XmlElement[] =>
    childrenOf(childOf(of, 'definedNames'), 'definedName').filter(name => attribute(name, 'localSheetId') === undefined);
  const known = new Set(forAll(book).map(name => attribute(name, 'name')?.toLowerCase()));
  const twice = forAll(ownBook).find(name => known.has(attribute(name, 'name')?.toLowerCase()));
  if (twice !== undefined) throw new RangeError(`the workbook has the name "${attribute(twice, 'name') ?? ''}" already`);
  return childrenOf(childOf(ownBook, 'definedNames'), 'definedName')
    .map(own => {
      const on = attribute(own, 'localSheetId');
      const tag = withAttributes(`<${prefix}definedName>`, {
        name: attribute(own, 'name') ?? '',
        ...(on !== undefined && { localSheetId: String(Number(on) + sheetCount) }),
      });
      return `${tag}${escapedText(own.text)}</${prefix}definedName>`;
    })
    .join('');
}

/** Sheets behind the user's, and our names behind theirs. */
export function bookSplices(text: string, part: string, ownBook: XmlElement, added: readonly NewSheet[]): Splice[] {
  const book = tree(text, part);
  const list = childOf(book, 'sheets');
  const last = sheetsOf(book)[sheetsOf(book).length - 1];
  const link = last && idOf(last);
  if (list === undefined || link === undefined || last === undefined) throw new UnreadableFile('noWorkbook');
  const taken = new Set(sheetsOf(book).map(sheet => attribute(sheet, 'name')?.toLowerCase()));
  const twice = added.find(({ name }) => taken.has(name.toLowerCase()));
  if (twice !== undefined) throw new RangeError(`the workbook has a sheet "${twice.name}" already`);
  const lastId = sheetsOf(book).reduce((most, sheet) => Math.max(most, Number(attribute(sheet, 'sheetId')) || 0), 0);
  const declaration = `xmlns:${link.prefix}`;
  const sheets = added.map(({ name, id }, i) =>
    withAttributes(`<${prefixOf(list)}sheet/>`, {
      name,
      sheetId: String(lastId + 1 + i),
      ...(declaration in last.attributes && { [declaration]: link.uri }),
      [link.name]: id,
    }),
  );
  const splices = appendedTo(text, list, sheets.join(''));
  const names = childOf(book, 'definedNames');
  const entries = nameEntries(book, ownBook, prefixOf(names ?? list));
  if (entries === '') return splices;
  if (names !== undefined) return [...splices, ...appendedTo(text, names, entries)];
  const p = prefixOf(book);
  const at = book.children.filter(({ local }) => BEFORE_NAMES.has(local)).pop()?.end ?? list.end;
  return [...splices, { from: at, to: at, text: `<${p}definedNames>${entries}</${p}definedNames>` }];
}
