// Looks of cells that are like those of before but for a mark. They go behind the formats that the workbook has, so that no
// cell of it gets another.
import { UnreadableFile } from './unreadable';
import {
  atEnd,
  attribute,
  childOf,
  childrenOf,
  descendants,
  nameOf,
  placeAfter,
  type Splice,
  spliced,
  tree,
  unclosed,
  withAttributes,
  type XmlElement,
} from './xml';

/** In what a cell differs from how it looked before. */
export interface CellLook {
  /** As a file stores it: `0.0##" mm"`. */
  readonly numberFormat?: string;
  /** The value stays what it is whatever becomes of its inputs, and shows it. */
  readonly isFixed?: true;
}

/** Of all cells of a workbook; Excel opens no file with more. */
const MOST_FORMATS = 65_490;
const LONGEST_NUMBER_FORMAT = 255;
/** Below are those that every program knows. */
const FIRST_OWN_NUMBER = 164;

/** Of a style part, in the order of the format. */
const LISTS = ['numFmts', 'fonts', 'fills', 'borders', 'cellStyleXfs', 'cellXfs'] as const;
type LookList = (typeof LISTS)[number];
const ITEM = { numFmts: 'numFmt', fonts: 'font', fills: 'fill', borders: 'border', cellStyleXfs: 'xf', cellXfs: 'xf' } as const;

const LIGHT = '<fill><patternFill patternType="solid"><fgColor rgb="FFFFF2CC"/><bgColor indexed="64"/></patternFill></fill>';
const SIDES = ['left', 'right', 'top', 'bottom'] as const;
/** Lines of a border that is dashed all round, whatever they were. */
const DASHED = SIDES.map(side => `<${side} style="dashed"><color auto="1"/></${side}>`).join('');

const PLAIN = '<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>';
/** What a list begins with: the number 0 is what every cell has, and of grounds the first two are these whatever stands there. */
const FIRST: Readonly<Partial<Record<LookList, readonly string[]>>> = {
  fonts: ['<font><sz val="11"/><name val="Calibri"/><family val="2"/></font>'],
  fills: ['<fill><patternFill patternType="none"/></fill>', '<fill><patternFill patternType="gray125"/></fill>'],
  borders: ['<border><left/><right/><top/><bottom/><diagonal/></border>'],
  cellStyleXfs: [PLAIN],
  cellXfs: [PLAIN],
};

/** Of a workbook that says nothing of looks, with as many formats as its cells name. */
export const noStyles = (main: string, formats: number): string =>
  `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<styleSheet xmlns="${main}">` +
  `<cellXfs count="${formats}">${PLAIN.repeat(formats)}</cellXfs>` +
  '<cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles></styleSheet>';

export class CellStyles {
  private readonly text: string;
  private readonly root: XmlElement;
  private readonly known: Readonly<Record<LookList, readonly XmlElement[]>>;
  /** What goes behind each list, each once, with its number in the list. */
  private readonly more: Readonly<Record<LookList, Map<string, number>>>;
  private readonly looks = new Map<string, number>();
  private readonly numbers: Map<string, number>;
  private nextNumber: number;

  constructor(text: string, part: string) {
    const root = tree(text, part);
    this.text = root.isEmpty ? spliced(text, atEnd(text, root, '')) : text;
    this.root = root.isEmpty ? tree(this.text, part) : root;
    const lists = LISTS.map(list => [list, childrenOf(childOf(this.root, list), ITEM[list])] as const);
    this.known = Object.fromEntries(lists) as Record<LookList, readonly XmlElement[]>;
    this.more = Object.fromEntries(LISTS.map(list => [list, new Map<string, number>()])) as Record<LookList, Map<string, number>>;
    const all = descendants(this.root).filter(({ local }) => local === 'numFmt' || local === 'xf');
    this.nextNumber = all.reduce((next, format) => Math.max(next, (Number(attribute(format, 'numFmtId')) || 0) + 1), FIRST_OWN_NUMBER);
    this.numbers = new Map(
      this.known.numFmts.map(format => [attribute(format, 'formatCode') ?? '', Number(attribute(format, 'numFmtId') ?? 0)]),
    );
    for (const list of LISTS) for (const item of FIRST[list]?.slice(this.known[list].length) ?? []) this.added(list, this.prefixed(item));
  }

  /** The number of a format that is like another one but for its look. */
  like(base: number, { numberFormat, isFixed }: CellLook): number {
    const key = JSON.stringify([base, numberFormat, isFixed]);
    const found = this.looks.get(key);
    if (found !== undefined) return found;
    const xf = this.known.cellXfs[base] ?? this.known.cellXfs[0];
    const changes = {
      ...(numberFormat !== undefined && { numFmtId: this.number(numberFormat), applyNumberFormat: '1', quotePrefix: undefined }),
      ...(isFixed && this.fixed(xf)),
    };
    const start = xf === undefined ? this.prefixed(PLAIN) : this.text.slice(xf.from, xf.to);
    const number = this.added('cellXfs', withAttributes(start, changes) + (xf === undefined ? '' : this.text.slice(xf.to, xf.end)));
    if (number >= MOST_FORMATS)
      throw new UnreadableFile(
        'inside',
        `the workbook has no room for another look of a cell: a file holds ${MOST_FORMATS}, and this one has them`,
      );
    this.looks.set(key, number);
    return number;
  }

  /** The part with the looks that were asked for. */
  get changed(): string {
    return spliced(
      this.text,
      LISTS.flatMap(list => this.grown(list)),
    );
  }

  /**
   * Italic, on a light ground where the cell has none of its own. Where italic or ground would say nothing new, a dashed
   * line all round.
   */
  private fixed(xf: XmlElement | undefined): Record<string, string> {
    const of = (list: LookList, id: string): XmlElement | undefined => this.known[list][Number((xf && attribute(xf, id)) ?? 0)];
    const [font, fill, border] = [of('fonts', 'fontId'), of('fills', 'fillId'), of('borders', 'borderId')];
    const slanted = font && childOf(font, 'i');
    const isItalic = slanted !== undefined && !/^(0|false)$/.test(attribute(slanted, 'val') ?? '1');
    const pattern = fill && childOf(fill, 'patternFill');
    const hasGround =
      fill !== undefined &&
      fill.children.length > 0 &&
      !(pattern !== undefined && (attribute(pattern, 'patternType') ?? 'none') === 'none');
    return {
      ...(!isItalic && { fontId: String(this.added('fonts', this.italic(font, slanted))), applyFont: '1' }),
      ...(!hasGround && { fillId: String(this.added('fills', this.prefixed(LIGHT))), applyFill: '1' }),
      ...((isItalic || hasGround) && { borderId: String(this.added('borders', this.dashed(border))), applyBorder: '1' }),
    };
  }

  private italic(font: XmlElement | undefined, slanted: XmlElement | undefined): string {
    const i = this.prefixed('<i/>');
    if (font === undefined || font.isEmpty) return this.prefixed('<font><i/></font>');
    const at = placeAfter(font, ['b']) - font.from;
    const source = this.source(font);
    if (slanted === undefined) return source.slice(0, at) + i + source.slice(at);
    return source.slice(0, slanted.from - font.from) + i + source.slice(slanted.end - font.from);
  }

  /** Its other lines stay. */
  private dashed(border: XmlElement | undefined): string {
    const kept = border?.children.filter(({ local }) => /^(diagonal|vertical|horizontal)$/.test(local)) ?? [];
    const start = border === undefined ? this.prefixed('<border>') : unclosed(this.text.slice(border.from, border.to));
    return start + this.prefixed(DASHED) + kept.map(line => this.source(line)).join('') + this.prefixed('</border>');
  }

  private number(format: string): string {
    if (format.length > LONGEST_NUMBER_FORMAT)
      throw new RangeError(
        `the number format ${format.slice(0, 20)}… has ${format.length} characters; a cell holds ${LONGEST_NUMBER_FORMAT}`,
      );
    const known = this.numbers.get(format) ?? this.nextNumber++;
    if (!this.numbers.has(format)) {
      this.numbers.set(format, known);
      this.added('numFmts', withAttributes(this.prefixed('<numFmt/>'), { numFmtId: String(known), formatCode: format }));
    }
    return String(known);
  }

  private added(list: LookList, item: string): number {
    const more = this.more[list];
    const number = more.get(item) ?? this.known[list].length + more.size;
    more.set(item, number);
    return number;
  }

  private grown(list: LookList): Splice[] {
    const items = [...this.more[list].keys()];
    if (items.length === 0) return [];
    const before = childOf(this.root, list);
    const count = String(this.known[list].length + items.length);
    if (before !== undefined) return atEnd(this.text, before, items.join(''), { count });
    const at = placeAfter(this.root, LISTS.slice(0, LISTS.indexOf(list)));
    const name = nameOf({ prefix: this.root.prefix, local: list });
    return [{ from: at, to: at, text: `<${name} count="${count}">${items.join('')}</${name}>` }];
  }

  private source({ from, end }: XmlElement): string {
    return this.text.slice(from, end);
  }

  private prefixed(xml: string): string {
    return this.root.prefix === '' ? xml : xml.replace(/<(\/?)/g, `<$1${this.root.prefix}:`);
  }
}
