// A workbook as its package holds it: what stands in cells as stored, what formulas may refer to, and what goes along unseen.
import { carriedBy, type Carried } from './carried';
import { CellReader, sharedTexts, type SheetContent } from './cells';
import { CONTENT_TYPES, PackageParts, type PartLink } from './parts';
import { namesOf, type StoredName, type StoredTable, tableOf } from './tables';
import { UnreadableFile } from './unreadable';
import { attribute, attributeIn, childOf, childrenOf, descendants, isSet, type XmlElement } from './xml';

export type SheetState = 'visible' | 'hidden' | 'veryHidden';

export interface StoredSheet extends SheetContent {
  readonly name: string;
  readonly part: string;
  readonly state: SheetState;
}

/** The workbook part with what it leads to. */
export interface BookPart {
  readonly part: string;
  readonly root: XmlElement;
  readonly links: readonly PartLink[];
}

export interface UserPackage {
  readonly parts: PackageParts;
  readonly book: BookPart;
  /** Sheets with cells, in their order. */
  readonly sheets: readonly StoredSheet[];
  /** Names of all sheets in their order, those that are one chart too. */
  readonly sheetNames: readonly string[];
  readonly names: readonly StoredName[];
  readonly tables: readonly StoredTable[];
  /** Dates count from 1904 and not from 1900. */
  readonly is1904: boolean;
  readonly carries: readonly Carried[];
}

const STATES: ReadonlySet<string> = new Set(['visible', 'hidden', 'veryHidden'] satisfies SheetState[]);
const isState = (text: string): text is SheetState => STATES.has(text);

export function bookOf(parts: PackageParts): BookPart {
  const start = parts.relations('');
  if (start.some(({ type }) => type === 'origin')) throw new UnreadableFile('signed');
  const part = start.find(({ type }) => type === 'officeDocument')?.target;
  if (part === undefined || !parts.packed.has(part)) throw new UnreadableFile('noWorkbook');
  const root = parts.tree(part);
  const types = parts.named(CONTENT_TYPES);
  if (root.local !== 'workbook' || types === undefined || parts.tree(types).local !== 'Types') throw new UnreadableFile('noWorkbook');
  return { part, root, links: parts.relations(part) };
}

/** Says of an entry in the metadata of cells, counted from 1, whether its formula spills. */
function spillsOf(metadata: XmlElement | undefined): (entry: number) => boolean {
  const types = childrenOf(childOf(metadata, 'metadataTypes'), 'metadataType').map(type => attribute(type, 'name'));
  const future = childrenOf(metadata, 'futureMetadata').find(group => attribute(group, 'name') === 'XLDAPR');
  const dynamic = childrenOf(future, 'bk').map(block =>
    descendants(block).some(({ local, ...tag }) => local === 'dynamicArrayProperties' && isSet(tag, 'fDynamic')),
  );
  const spills = childrenOf(childOf(metadata, 'cellMetadata'), 'bk').map(block =>
    childrenOf(block, 'rc').some(
      record => types[Number(attribute(record, 't')) - 1] === 'XLDAPR' && dynamic[Number(attribute(record, 'v'))] === true,
    ),
  );
  return entry => spills[entry - 1] === true;
}

export function readPackage(file: Uint8Array): UserPackage {
  const parts = new PackageParts(file);
  const book = bookOf(parts);
  const linked = (type: string): string | undefined => book.links.find(link => link.type === type && parts.packed.has(link.target))?.target;
  const [texts, metadata] = [linked('sharedStrings'), linked('sheetMetadata')];
  const is1904 = isSet(childOf(book.root, 'workbookPr') ?? book.root, 'date1904');
  const reader = new CellReader({
    texts: texts === undefined ? [] : sharedTexts(parts.decoded(texts).text, texts),
    is1904,
    spills: spillsOf(metadata === undefined ? undefined : parts.tree(metadata)),
  });
  const listed = childrenOf(childOf(book.root, 'sheets'), 'sheet');
  const sheetNames = listed.map(sheet => attribute(sheet, 'name') ?? '');
  const twice = sheetNames.find((name, i) => sheetNames.findIndex(other => other.toLowerCase() === name.toLowerCase()) !== i);
  if (twice !== undefined) throw new UnreadableFile('sheetTwice', twice);
  const sheets = listed.flatMap((sheet, i): StoredSheet[] => {
    const id = attributeIn(sheet, /\/relationships$/, 'id');
    const link = book.links.find(candidate => candidate.id === id);
    const [name = '', state = 'visible'] = [sheetNames[i], attribute(sheet, 'state')];
    if (link === undefined || !parts.packed.has(link.target)) throw new UnreadableFile('sheetMissing', name);
    if (!isState(state)) throw new UnreadableFile('inside', `the sheet "${name}" has the state "${state.slice(0, 20)}"`);
    return link.type === 'worksheet'
      ? [{ name, part: link.target, state, ...reader.read(parts.decoded(link.target).text, link.target) }]
      : [];
  });
  if (sheets.length === 0) throw new UnreadableFile('noSheet');
  return {
    parts,
    book,
    sheets,
    sheetNames,
    names: namesOf(book.root, sheetNames),
    tables: sheets.flatMap(({ name, part }) =>
      parts.relations(part).flatMap(({ type, target }) => (type === 'table' ? [tableOf(parts.tree(target), target, name)] : [])),
    ),
    is1904,
    carries: carriedBy(parts, book.part, book.root, sheets),
  };
}
