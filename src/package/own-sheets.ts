// Sheets of our own, written as a small workbook by themselves, put behind the user's with all that they lead to.
import {
  bookSplices,
  freeIds,
  kindsOf,
  linkSplices,
  type NewLink,
  type NewSheet,
  RELATIONSHIPS,
  typeSplices,
  vocabularyOf,
} from './own-entries';
import type { OwnRow } from './own-rows';
import { inVocabulary, movedSheet, sharedContents, type Vocabulary } from './own-text';
import type { Draft } from './draft';
import { CONTENT_TYPES, PackageParts, type PartLink, relationsPart } from './parts';
import { bookOf, type BookPart } from './read';
import { NO_STYLES, stylesAppended } from './styles';
import { encoded } from './text';
import { UnreadableFile } from './unreadable';
import { attribute, attributeIn, childOf, childrenOf, type Splice, spliced, tree, withAttributes } from './xml';
import { packed, type PackedPart } from './zip';

const isXml = (part: string): boolean => part.endsWith('.xml');
/** Characters that are packed at a time. */
const PIECE = 262_144;

/** Short pieces together, as bytes; `pass` has each on its way. No word runs on from one to the next. */
function* inPieces(texts: Iterable<string>, pass: (text: string) => void): Generator<Uint8Array> {
  let [short, length]: [string[], number] = [[], 0];
  const bytes = (): Uint8Array => {
    const piece = short.join('');
    [short, length] = [[], 0];
    pass(piece);
    return encoded({ text: piece, encoding: 'utf-8' });
  };
  for (const text of texts) {
    short.push(text);
    length += text.length;
    if (length >= PIECE) yield bytes();
  }
  yield bytes();
}

const renamed = (part: PackedPart, name: string): PackedPart => ({ ...part, name, nameBytes: new TextEncoder().encode(name) });

/** Types of our parts, by the part or by the extension. */
function typesOf(parts: PackageParts): (part: string) => string {
  const types = new Map(
    parts
      .tree(CONTENT_TYPES)
      .children.map(type => [attribute(type, 'PartName') ?? attribute(type, 'Extension'), attribute(type, 'ContentType') ?? '']),
  );
  return part => types.get(`/${part}`) ?? types.get(part.slice(part.lastIndexOf('.') + 1)) ?? '';
}

/** Names that no part of the package has and of which it says nothing. */
function freeNames(to: Draft, types: string): (wanted: string) => string {
  const said = childrenOf(tree(to.text(types), types), 'Override').map(type => attribute(type, 'PartName')?.slice(1) ?? '');
  const taken = new Set([...to.parts, ...said].map(name => name.toLowerCase()));
  return wanted => {
    const [, stem = wanted, extension = ''] = /^(.*?)\d*(\.[^./]*)$/.exec(wanted) ?? [];
    let name = wanted;
    for (let n = 1; taken.has(name.toLowerCase()) || taken.has(relationsPart(name).toLowerCase()); n++) name = `${stem}${n}${extension}`;
    taken.add(name.toLowerCase());
    return name;
  };
}

/** What our sheets lead to, each part once, under names that are free. */
class Moving {
  /** Of the parts that were added. */
  readonly types = new Map<string, string>();
  /** Those in which nothing was found that is looked for. */
  readonly quiet = new Set<string>();
  private readonly names = new Map<string, string>();
  private readonly typeOf: (part: string) => string;

  constructor(
    private readonly to: Draft,
    private readonly own: PackageParts,
    private readonly vocabulary: Vocabulary,
    private readonly kind: (ours: string) => string,
    private readonly free: (wanted: string) => string,
    private readonly mentions: RegExp | undefined,
  ) {
    this.typeOf = typesOf(own);
  }

  /** Gives the name from now on. */
  part(part: string, texts?: Iterable<string>): string {
    const known = this.names.get(part);
    if (known !== undefined) return known;
    const stored = this.own.packed.get(part);
    if (stored === undefined) throw new UnreadableFile('noWorkbook');
    const name = this.free(part);
    this.names.set(part, name);
    this.types.set(name, this.typeOf(part));
    if (isXml(part)) {
      const words = texts ?? [inVocabulary(this.own.decoded(part).text, part, this.vocabulary)];
      let isQuiet = this.mentions !== undefined;
      this.to.add(
        name,
        packed(
          name,
          inPieces(words, text => void (isQuiet &&= this.mentions?.test(text) === false)),
        ),
      );
      if (isQuiet) this.quiet.add(name);
    } else this.to.add(name, renamed(stored, name));
    this.relations(part, name);
    return name;
  }

  private relations(part: string, name: string): void {
    const links = this.own.relations(part);
    if (links.length === 0) return;
    const { text } = this.own.decoded(relationsPart(part));
    const splices = childrenOf(tree(text, part), 'Relationship').map((link, i): Splice => {
      const { from, end } = link;
      const { target = '', isOutside = true } = links[i] ?? {};
      const changes = { Type: this.kind(attribute(link, 'Type') ?? ''), ...(!isOutside && { Target: `/${this.part(target)}` }) };
      return { from, to: end, text: withAttributes(text.slice(from, end), changes) };
    });
    this.to.add(relationsPart(name), spliced(text, splices));
  }
}

export type OwnRows = ReadonlyMap<string, Iterable<OwnRow>>;

/** Answers which of the parts that it adds have nothing that `mentions` looks for. */
export function addOwnSheets(
  to: Draft,
  book: Pick<BookPart, 'part' | 'root'>,
  file: Uint8Array,
  rows: OwnRows = new Map<string, never>(),
  mentions?: RegExp,
): ReadonlySet<string> {
  const own = new PackageParts(file, 'us');
  const ownBook = bookOf(own);
  const target = (among: readonly PartLink[], type: string, has: (part: string) => boolean): string | undefined =>
    among.find(link => link.type === type && has(link.target))?.target;
  const [types, links] = [CONTENT_TYPES, relationsPart(book.part)].map(part => to.named(part));
  const [ownStyles, ownTexts] = ['styles', 'sharedStrings'].map(type => target(ownBook.links, type, part => own.packed.has(part)));
  if (types === undefined || links === undefined || ownStyles === undefined) throw new UnreadableFile('noWorkbook');

  const vocabulary = vocabularyOf(book.root);
  const kind = kindsOf(to.text(links));
  const free = freeNames(to, types);
  const nextId = freeIds(to.text(links));
  const moving = new Moving(to, own, vocabulary, kind, free, mentions);
  const newLinks: NewLink[] = [];

  const styles = target(to.links(book.part), 'styles', part => to.has(part));
  const stylesText = styles === undefined ? NO_STYLES(book.root.uri) : to.text(styles);
  const { splices, ...formats } = stylesAppended(stylesText, styles ?? ownStyles, own.decoded(ownStyles).text);
  if (styles !== undefined) to.change(styles, () => splices);
  else {
    const part = free(ownStyles);
    to.add(part, spliced(stylesText, splices));
    moving.types.set(part, typesOf(own)(ownStyles));
    newLinks.push({ id: nextId(), type: kind(`${RELATIONSHIPS}/styles`), part });
  }

  const texts = ownTexts === undefined ? [] : sharedContents(own.decoded(ownTexts).text, ownTexts);
  const sheets = childrenOf(childOf(ownBook.root, 'sheets'), 'sheet').map((sheet): NewSheet => {
    const linkId = attributeIn(sheet, /\/relationships$/, 'id');
    const part = ownBook.links.find(link => link.id === linkId)?.target ?? '';
    const name = attribute(sheet, 'name') ?? '';
    const text = movedSheet(own.decoded(part).text, part, { vocabulary, texts, rows: rows.get(name), ...formats });
    const id = nextId();
    newLinks.push({ id, type: kind(`${RELATIONSHIPS}/worksheet`), part: moving.part(part, text) });
    return { name, id };
  });
  for (const name of rows.keys())
    if (!sheets.some(sheet => sheet.name === name)) throw new RangeError(`there are rows for "${name}", which is no sheet of ours`);
  to.change(book.part, text => bookSplices(text, book.part, ownBook.root, sheets));
  to.change(links, text => linkSplices(text, links, newLinks));
  to.change(types, text => typeSplices(text, types, moving.types));
  return moving.quiet;
}
