// A text that a workbook keeps for us: a hidden name of its own, which programs carry along and do not show.
import { Draft } from './draft';
import { cut } from './drop/unlink';
import type { UserPackage } from './read';
import type { StoredName } from './tables';
import { appendedTo, attribute, childOf, escapedText, type Splice, type XmlElement } from './xml';
import { writeZip } from './zip';

const NAME = 'Bosswright.handover';
/** Of a text in a formula. */
const LONGEST_PIECE = 200;
const LONGEST = 6000;

/** What stands before the names, in the order of the format. */
const BEFORE_NAMES: ReadonlySet<string> = new Set(
  'fileVersion fileSharing workbookPr workbookProtection bookViews sheets functionGroups externalReferences'.split(' '),
);

export function rememberedIn({ names }: UserPackage): string | undefined {
  const meaning = names.find(({ name }) => name.toLowerCase() === NAME.toLowerCase())?.meaning;
  const pieces = meaning?.match(/"[^"]*"/g);
  if (pieces === null || pieces === undefined) return undefined;
  try {
    return decodeURIComponent(pieces.map(piece => piece.slice(1, -1)).join(''));
  } catch {
    return undefined;
  }
}

/** The name that keeps the text. */
export function rememberedName(text: string): Pick<StoredName, 'name' | 'meaning'> {
  const encoded = encodeURIComponent(text);
  if (encoded.length > LONGEST) throw new RangeError(`more than ${LONGEST} characters cannot be kept with a workbook`);
  const pieces = encoded.match(new RegExp(`.{1,${LONGEST_PIECE}}`, 'g')) ?? [''];
  return { name: NAME, meaning: pieces.map(piece => `"${piece}"`).join('&') };
}

const isOurs = (element: XmlElement): boolean =>
  element.local === 'definedName' && (attribute(element, 'name') ?? '').toLowerCase() === NAME.toLowerCase();

export const forget = (draft: Draft, book: string): void => cut(draft, book, isOurs);

/** The workbook with the text, and else as it was. */
export function withRemembered(file: UserPackage, text: string): Uint8Array {
  const { meaning } = rememberedName(text);
  const draft = new Draft(file.parts);
  const book = file.book.part;
  forget(draft, book);
  draft.change(book, before => {
    const root = draft.tree(book);
    const p = root.prefix === '' ? '' : `${root.prefix}:`;
    const entry = `<${p}definedName name="${NAME}" hidden="1">${escapedText(meaning)}</${p}definedName>`;
    const names = childOf(root, 'definedNames');
    if (names !== undefined) return appendedTo(before, names, entry);
    const at = root.children.filter(({ local }) => BEFORE_NAMES.has(local)).pop()?.end ?? root.inner;
    return [{ from: at, to: at, text: `<${p}definedNames>${entry}</${p}definedNames>` } satisfies Splice];
  });
  return writeZip(draft.packed());
}
