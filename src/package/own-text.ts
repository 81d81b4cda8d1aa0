// The text of a sheet of our own as it stands in the user's workbook: its vocabulary, formats behind those there, texts in the cells.
// It was written by ourselves, so that what a cell of ours never has is refused and not looked after.
import { type OwnRow, RowTexts } from './own-rows';
import { scanSheet } from './scan';
import { attribute, type Splice, spliced, type StartTag, walk, withAttributes } from './xml';

/** Names of vocabularies as we write them, with what the user's workbook calls them. */
export type Vocabulary = ReadonlyMap<string, string>;

/** The declarations of a start tag in the vocabulary of the workbook. */
function declared(text: string, tag: StartTag, vocabulary: Vocabulary): Splice[] {
  const changes = Object.values(tag.attributes)
    .filter(({ name, value }) => /^xmlns(:|$)/.test(name) && vocabulary.has(value))
    .map(({ name, value }) => [name, vocabulary.get(value)] as const);
  return changes.length === 0
    ? []
    : [{ from: tag.from, to: tag.to, text: withAttributes(text.slice(tag.from, tag.to), Object.fromEntries(changes)) }];
}

/** A part that has nothing but its vocabulary to be changed. */
export function inVocabulary(text: string, part: string, vocabulary: Vocabulary): string {
  const splices: Splice[] = [];
  walk(text, part, {
    open(tag, depth) {
      if (depth === 0) splices.push(...declared(text, tag, vocabulary));
    },
  });
  return spliced(text, splices);
}

/** What is in each shared text, as it is written. */
export function sharedContents(text: string, part: string): string[] {
  const contents: string[] = [];
  walk(text, part, {
    close(tag, inner, _, depth) {
      if (depth === 1 && tag.local === 'si') contents.push(text.slice(tag.to, inner));
    },
  });
  return contents;
}

export interface SheetMove {
  readonly vocabulary: Vocabulary;
  readonly firstCellFormat: number;
  readonly firstConditional: number;
  /** Of our own workbook: see `sharedContents`. */
  readonly texts: readonly string[];
  /** Rows that the text has not. */
  readonly rows: Iterable<OwnRow> | undefined;
}

const CELL_SAYS: ReadonlySet<string> = new Set(['r', 's', 't']);

/** Rows put in at a place. */
interface RowsAt {
  readonly place: number;
  readonly texts: Iterable<string>;
}

/** The text with its edits, in pieces: the rows that are put in may be many. */
function* woven(text: string, splices: readonly Splice[], rows: readonly RowsAt[]): Generator<string> {
  const left = [...splices].sort((a, b) => a.from - b.from).values();
  let [at, next] = [0, left.next()];
  for (const { place, texts } of [...rows, { place: text.length, texts: [] }]) {
    const inside: Splice[] = [];
    for (; next.done !== true && next.value.from < place; next = left.next())
      inside.push({ ...next.value, from: next.value.from - at, to: next.value.to - at });
    yield spliced(text.slice(at, place), inside);
    yield* texts;
    at = place;
  }
}

/** Its text in pieces. */
export function movedSheet(text: string, part: string, move: SheetMove): Iterable<string> {
  const { vocabulary, firstCellFormat, firstConditional, texts, rows } = move;
  const splices: Splice[] = [];
  const formats = new Map<string, string>();
  const more = rows && new RowTexts(rows, part);
  const rowsAt: RowsAt[] = [];
  const put = (from: number, to: number, instead: string): number => splices.push({ from, to, text: instead });
  const format = (of: string | undefined): string => String(Number(of ?? 0) + firstCellFormat);
  const rewrite = (tag: StartTag, changes: Readonly<Record<string, string>>): number =>
    put(tag.from, tag.to, withAttributes(text.slice(tag.from, tag.to), changes));
  scanSheet(text, part, {
    cell({ tag, value, end }) {
      for (const name in tag.attributes)
        if (!CELL_SAYS.has(name)) throw new RangeError(`${part}: a cell of ours has "${name}", which is not carried over`);
      const at = attribute(tag, 'r') ?? '';
      const type = attribute(tag, 't');
      const cellFormat = format(attribute(tag, 's'));
      if (more !== undefined) formats.set(at, cellFormat);
      const start = `<c r="${at}" s="${cellFormat}"`;
      if (type !== 's') {
        put(tag.from, tag.to, `${start}${type === undefined ? '' : ` t="${type}"`}${tag.isEmpty ? '/>' : '>'}`);
        return;
      }
      const content = texts[Number(value?.text)];
      if (content === undefined) throw new RangeError(`${part}: the cell ${at} of ours has no text`);
      put(tag.from, end, `${start} t="inlineStr"><is>${content}</is></c>`);
    },
    row({ tag, row }) {
      if (more !== undefined) rowsAt.push({ place: tag.from, texts: more.before(row, formats) });
      const style = attribute(tag, 's');
      if (style !== undefined) rewrite(tag, { s: format(style) });
    },
    data(tag, inner) {
      if (more !== undefined) rowsAt.push({ place: tag.isEmpty ? tag.from : inner, texts: more.before(Infinity, formats) });
    },
    other(tag) {
      const [style, conditional] = [attribute(tag, 'style'), attribute(tag, 'dxfId')];
      if (tag.local === 'worksheet') splices.push(...declared(text, tag, vocabulary));
      // the sheet need not say how far it reaches
      else if (tag.local === 'dimension' && more !== undefined) put(tag.from, tag.to, '');
      else if (tag.local === 'col' && style !== undefined) rewrite(tag, { style: format(style) });
      else if (conditional !== undefined) rewrite(tag, { dxfId: String(Number(conditional) + firstConditional) });
    },
  });
  return woven(text, splices, rowsAt);
}
