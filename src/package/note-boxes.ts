// The boxes in which notes stand beside their cells, in the drawing language that spreadsheets keep for them.
import { LAST_PLACE } from '../sheet/addresses';
import type { Draft } from './draft';
import { type Splice, withAttributes } from './xml';

export interface NoteBox {
  readonly row: number;
  readonly column: number;
  readonly words: string;
  readonly number: number;
}

const NAMESPACES = {
  'xmlns:v': 'urn:schemas-microsoft-com:vml',
  'xmlns:o': 'urn:schemas-microsoft-com:office:office',
  'xmlns:x': 'urn:schemas-microsoft-com:office:excel',
} as const;
const SHAPE_TYPE =
  '<v:shapetype id="_x0000_t202" coordsize="21600,21600" o:spt="202" path="m,l,21600r21600,l21600,xe">' +
  '<v:stroke joinstyle="miter"/><v:path gradientshapeok="t" o:connecttype="rect"/></v:shapetype>';

/** Numbers of shapes come in blocks, of which each drawing has its own. */
const BLOCK = 1024;
const blockOf = (number: number): number => Math.floor(number / BLOCK);
const [WIDTH_COLUMNS, LINE_CHARACTERS] = [4, 36];

const ROOT = /<xml\b[^>]*[^/]>|<xml>/;
const END = '</xml>';

/** What is added stands at its end: a drawing has one, and means by its prefixes what everybody means. */
export function takesBoxes(text: string): boolean {
  const root = ROOT.exec(text)?.[0];
  if (root === undefined || !text.includes(END)) return false;
  return Object.entries(NAMESPACES).every(([name, uri]) => new RegExp(`${name}\\s*=\\s*["'](?!${uri}["'])`).exec(root) === null);
}

/** Numbers of boxes that no drawing of the package has. */
export class BoxNumbers {
  private last: number | undefined;

  constructor(private readonly of: Draft) {}

  next(): number {
    this.last = (this.last ?? this.highestBlock() * BLOCK + BLOCK) + 1;
    // the first number of a block stands for the drawing itself
    if (this.last % BLOCK === 0) this.last++;
    return this.last;
  }

  private highestBlock(): number {
    let highest = 0;
    for (const name of this.of.parts) {
      if (!/\.vml$/i.test(name)) continue;
      const text = this.of.text(name);
      for (const [, blocks = ''] of text.matchAll(/<o:idmap\b[^>]*\bdata\s*=\s*["']([\d,\s]+)["']/g))
        highest = blocks.split(',').reduce((most, block) => Math.max(most, Number(block)), highest);
      for (const [, shape] of text.matchAll(/\b_x0000_s(\d{1,9})\b/g)) highest = Math.max(highest, blockOf(Number(shape)));
    }
    return highest;
  }
}

/** Beside the cell, as high as its words need, and on the sheet. */
function anchor({ row, column, words }: NoteBox): string {
  const lines = words.split('\n').reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / LINE_CHARACTERS)), 1);
  const left = Math.min(column + 1, LAST_PLACE.column - WIDTH_COLUMNS);
  const top = Math.min(row, Math.max(0, LAST_PLACE.row - lines));
  return [left, 15, top, 2, left + WIDTH_COLUMNS, 15, Math.min(LAST_PLACE.row, top + lines), 2].join(', ');
}

const shape = (box: NoteBox, order: number): string =>
  `<v:shape id="_x0000_s${box.number}" type="#_x0000_t202" style="position:absolute;margin-left:60pt;margin-top:1.5pt;` +
  `width:190pt;height:60pt;z-index:${order};visibility:hidden" fillcolor="#ffffe1" o:insetmode="auto"><v:fill color2="#ffffe1"/>` +
  '<v:shadow on="t" color="black" obscured="t"/><v:path o:connecttype="none"/>' +
  '<v:textbox style="mso-direction-alt:auto"><div style="text-align:left"></div></v:textbox>' +
  `<x:ClientData ObjectType="Note"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>${anchor(box)}</x:Anchor><x:AutoFill>False</x:AutoFill>` +
  `<x:Row>${box.row}</x:Row><x:Column>${box.column}</x:Column></x:ClientData></v:shape>`;

export function addedBoxes(text: string, boxes: readonly NoteBox[]): Splice[] {
  const root = ROOT.exec(text);
  const end = text.lastIndexOf(END);
  if (root === null || end < 0) throw new RangeError('the drawing takes no boxes');
  const map = /<o:idmap\b[^>]*>/.exec(text);
  const known = map === null ? [] : (/\bdata\s*=\s*["']([^"']*)["']/.exec(map[0])?.[1]?.split(',') ?? []);
  const data = [...new Set([...known, ...boxes.map(({ number }) => String(blockOf(number)))])].join(',');
  const start = withAttributes(root[0], NAMESPACES);
  const mapped = map === null ? `<o:shapelayout v:ext="edit"><o:idmap v:ext="edit" data="${data}"/></o:shapelayout>` : '';
  const shapes = boxes.map((box, i) => shape(box, i + 1)).join('');
  return [
    { from: root.index, to: root.index + root[0].length, text: start + mapped },
    ...(map === null ? [] : [{ from: map.index, to: map.index + map[0].length, text: withAttributes(map[0], { data }) }]),
    { from: end, to: end, text: (text.includes('id="_x0000_t202"') ? '' : SHAPE_TYPE) + shapes },
  ];
}

/** A drawing without any. */
export const NO_BOXES = `<xml>${END}`;
