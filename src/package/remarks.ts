// What people put on cells besides values: comments, and grounds in a colour.
import { cellPosition } from '../sheet/addresses';
import type { UserPackage } from './read';
import { RichText } from './rich-text';
import { isMain, scanSheet } from './scan';
import { attribute, childOf, childrenOf, isSet, walk, type XmlElement } from './xml';

export interface SheetRemarks {
  /** By address. */
  readonly comments: ReadonlyMap<string, string>;
  /** Grounds that are not white: `FFE699`, or `?` where the file names the colour in another way than by itself. */
  readonly fills: ReadonlyMap<string, string>;
}

/** Of all sheets together, in characters. */
const MOST_SAID = 5_000_000;

/** What stands in for a thread where a program knows none: the address of an explanation, then each that was said behind a word for it. */
const STAND_IN = /^\s*\[[^\]]*\][^]*linkid=870924\s*/;

const withoutStandIn = (text: string): string =>
  STAND_IN.test(text)
    ? text
        .replace(STAND_IN, '\n')
        .replace(/\r\n?/g, '\n')
        .replace(/\n[^\n:]*:\n {4}/g, '\n')
        .trim()
    : text;

function commentsOf(file: UserPackage, part: string): Map<string, string> {
  const said = new Map<string, string>();
  const threads = new Set<string>();
  let left = MOST_SAID;
  const add = (ref: string | undefined, text: string): void => {
    const at = (ref ?? '').replaceAll('$', '').split(':')[0] ?? '';
    left -= text.length;
    if (!/^[A-Z]{1,3}\d{1,7}$/.test(at) || text.trim() === '' || left < 0) return;
    said.set(at, [said.get(at), text].filter(one => one !== undefined).join('\n'));
  };
  const note = (ref: string | undefined, text: string): void => {
    if (!STAND_IN.test(text) || !threads.has(ref ?? '')) add(ref, withoutStandIn(text));
  };
  const targets = (kind: string): string[] =>
    file.parts
      .relations(part)
      .flatMap(({ type, target, isOutside }) => (type === kind && !isOutside && file.parts.packed.has(target) ? [target] : []));
  for (const target of targets('threadedComment'))
    for (const thread of childrenOf(file.parts.tree(target), 'threadedComment'))
      add(attribute(thread, 'ref'), childOf(thread, 'text')?.text ?? '');
  for (const at of said.keys()) threads.add(at);
  for (const target of targets('comments')) {
    const rich = new RichText();
    let ref: string | undefined;
    walk(file.parts.decoded(target).text, target, {
      open: tag => {
        if (tag.local === 'comment' && isMain(tag)) ref = attribute(tag, 'ref');
        else rich.open(tag);
      },
      close: tag => {
        if (tag.local === 'comment' && isMain(tag)) note(ref, rich.taken());
        else rich.close(tag);
      },
      text: piece => rich.text(piece),
    });
  }
  return said;
}

/** Of each format of cells its ground. */
function groundsOf(file: UserPackage): readonly string[] {
  const part = file.book.links.find(({ type, target }) => type === 'styles' && file.parts.packed.has(target))?.target;
  if (part === undefined) return [];
  const root = file.parts.tree(part);
  const grounds = childrenOf(childOf(root, 'fills'), 'fill').map(groundOf);
  return childrenOf(childOf(root, 'cellXfs'), 'xf').map(format => grounds[Number(attribute(format, 'fillId') ?? 0)] ?? '');
}

function groundOf(fill: XmlElement): string {
  const pattern = childOf(fill, 'patternFill');
  if (pattern === undefined || attribute(pattern, 'patternType') !== 'solid') return '';
  const colour = childOf(pattern, 'fgColor');
  const rgb = colour && attribute(colour, 'rgb');
  if (rgb === undefined) return '?';
  const [plain] = /[0-9A-F]{6}$/i.exec(rgb) ?? ['?'];
  return plain.toUpperCase() === 'FFFFFF' ? '' : plain.toUpperCase();
}

function fillsOf(file: UserPackage, part: string, grounds: readonly string[]): Map<string, string> {
  const fills = new Map<string, string>();
  scanSheet(file.parts.decoded(part).text, part, {
    cell({ tag }) {
      const ground = grounds[Number(attribute(tag, 's') ?? 0)] ?? '';
      if (ground !== '') fills.set(attribute(tag, 'r') ?? '', ground);
    },
  });
  return fills;
}

/** Grounds of whole columns and rows, which their cells have without saying so. */
function groundBeneath(file: UserPackage, part: string, grounds: readonly string[]): (at: string) => string {
  const columns: { readonly first: number; readonly last: number; readonly ground: string }[] = [];
  const rows = new Map<number, string>();
  scanSheet(file.parts.decoded(part).text, part, {
    row({ tag, row }) {
      if (isSet(tag, 'customFormat')) rows.set(row, grounds[Number(attribute(tag, 's') ?? 0)] ?? '');
    },
    other(tag) {
      if (tag.local === 'col' && isMain(tag))
        columns.push({
          first: Number(attribute(tag, 'min')) - 1,
          last: Number(attribute(tag, 'max')) - 1,
          ground: grounds[Number(attribute(tag, 'style') ?? 0)] ?? '',
        });
    },
  });
  return at => {
    const { row, column } = cellPosition(at);
    return rows.get(row) ?? columns.find(({ first, last }) => first <= column && column <= last)?.ground ?? '';
  };
}

/** By the names of the sheets, with what a cell has from its row or column beneath it. */
export function remarksIn(file: UserPackage): ReadonlyMap<string, SheetRemarks & { readonly beneath: (at: string) => string }> {
  const grounds = groundsOf(file);
  return new Map(
    file.sheets.map(({ name, part }) => [
      name,
      { comments: commentsOf(file, part), fills: fillsOf(file, part, grounds), beneath: groundBeneath(file, part, grounds) },
    ]),
  );
}
