// What people put on cells besides values: comments, grounds in a colour, and formats that make a number a day, a time or a share.
import { address, cellPosition } from '../sheet/addresses';
import { type ShownAs, shownAs, type ShownNumber, shownText } from './shown-as';
import type { StoredSheet, UserPackage } from './read';
import { RichText } from './rich-text';
import { isMain, scanSheet } from './scan';
import { attribute, childOf, childrenOf, isSet, walk, type XmlElement } from './xml';

export interface SheetRemarks {
  /** By address. */
  readonly comments: ReadonlyMap<string, string>;
  /** Grounds that are not white: `FFE699`, or `?` where the file names the colour in another way than by itself. */
  readonly fills: ReadonlyMap<string, string>;
  /** Numbers that are shown as days, months, times or shares in per cent. */
  readonly shown: ReadonlyMap<string, ShownNumber>;
  /** The ground that a cell has from its row or column where it says none. */
  readonly beneath: (at: string) => string;
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

/** Of each format of cells. */
interface ReadFormat {
  readonly ground: string;
  readonly as: ShownAs | undefined;
}

function formatsOf(file: UserPackage): readonly ReadFormat[] {
  const part = file.book.links.find(({ type, target }) => type === 'styles' && file.parts.packed.has(target))?.target;
  if (part === undefined) return [];
  const root = file.parts.tree(part);
  const grounds = childrenOf(childOf(root, 'fills'), 'fill').map(groundOf);
  const codes = new Map(
    childrenOf(childOf(root, 'numFmts'), 'numFmt').map(one => [Number(attribute(one, 'numFmtId')), attribute(one, 'formatCode')] as const),
  );
  return childrenOf(childOf(root, 'cellXfs'), 'xf').map(format => {
    const id = Number(attribute(format, 'numFmtId') ?? 0);
    return { ground: grounds[Number(attribute(format, 'fillId') ?? 0)] ?? '', as: shownAs(id, codes.get(id)) };
  });
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

function looksOf(file: UserPackage, { part, cells }: StoredSheet, formats: readonly ReadFormat[]): Pick<SheetRemarks, 'fills' | 'shown'> {
  const [fills, kinds] = [new Map<string, string>(), new Map<string, ShownAs>()];
  scanSheet(file.parts.decoded(part).text, part, {
    cell({ tag, row, column }) {
      const { ground = '', as } = formats[Number(attribute(tag, 's') ?? 0)] ?? {};
      const at = ground === '' && as === undefined ? '' : address(row, column);
      if (ground !== '') fills.set(at, ground);
      if (as !== undefined) kinds.set(at, as);
    },
  });
  const shown = new Map<string, ShownNumber>();
  for (const { at, value } of kinds.size === 0 ? [] : cells) {
    const as = kinds.get(at);
    const said = as === undefined || typeof value !== 'number' ? undefined : shownText(value, as, file.is1904);
    if (as !== undefined && said !== undefined) shown.set(at, { as, said });
  }
  return { fills, shown };
}

/** Grounds of whole columns and rows, which their cells have without saying so. */
function groundBeneath(file: UserPackage, part: string, formats: readonly ReadFormat[]): (at: string) => string {
  const columns: { readonly first: number; readonly last: number; readonly ground: string }[] = [];
  const rows = new Map<number, string>();
  scanSheet(file.parts.decoded(part).text, part, {
    row({ tag, row }) {
      if (isSet(tag, 'customFormat')) rows.set(row, formats[Number(attribute(tag, 's') ?? 0)]?.ground ?? '');
    },
    other(tag) {
      if (tag.local === 'col' && isMain(tag))
        columns.push({
          first: Number(attribute(tag, 'min')) - 1,
          last: Number(attribute(tag, 'max')) - 1,
          ground: formats[Number(attribute(tag, 'style') ?? 0)]?.ground ?? '',
        });
    },
  });
  return at => {
    const { row, column } = cellPosition(at);
    return rows.get(row) ?? columns.find(({ first, last }) => first <= column && column <= last)?.ground ?? '';
  };
}

/** By the names of the sheets. */
export function remarksIn(file: UserPackage): ReadonlyMap<string, SheetRemarks> {
  const formats = formatsOf(file);
  return new Map(
    file.sheets.map(sheet => [
      sheet.name,
      { comments: commentsOf(file, sheet.part), ...looksOf(file, sheet, formats), beneath: groundBeneath(file, sheet.part, formats) },
    ]),
  );
}
