// What the writing library leaves out or does in another way than a plan asks, put right in the finished file.
import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from 'fflate';
import type { SheetPlan } from '../../sheet/plan';
import { columnPx, DIGIT_PX, heightsPt, linesOf, PLAIN_ROW_PT, placed } from './layout';

const NOTE_WIDTH_PX = 300;
const NOTE_LINE_PX = 15;
const NOTE_PADDING_PX = 14;
/** Distance of a note from its cell, to the right and down. */
const NOTE_GAP_PX = 12;
const NOTE_DROP_PX = 2;

/** The same plan gives the same bytes: no clock in the file. Local time, as zip has it. */
const ZIP_EPOCH = new Date(1980, 0, 1);

type Repair = (xml: string) => string;

/** An error code beside a formula is an error, not a text. */
const errorResults: Repair = xml =>
  xml.replace(/ t="str">(<f\b[^>]*>[^<]*<\/f><v>#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A)<\/v>)/g, ' t="e">$1');

/** A picture keeps its own size, where the library stretches it over three columns and five rows. */
const ownSize: Repair = xml =>
  xml.replace(
    /<xdr:twoCellAnchor>(<xdr:from>.*?<\/xdr:from>)<xdr:to>.*?<\/xdr:to>(.*?<a:ext( cx="\d+" cy="\d+")\/>.*?)<\/xdr:twoCellAnchor>/g,
    '<xdr:oneCellAnchor>$1<xdr:ext$3/>$2</xdr:oneCellAnchor>',
  );

const noClock: Repair = xml => xml.replace(/<dcterms:modified\b.*?<\/dcterms:modified>/, '');

const ownName: Repair = xml => xml.replace('<Application>hucre</Application>', '<Application>Bosswright</Application>');

/** Index of the column or row in which a distance ends, and what is left of the distance there. */
function reach(start: number, distancePx: number, sizePx: (index: number) => number): string {
  let index = start;
  let left = distancePx;
  while (left >= sizePx(index)) left -= sizePx(index++);
  return `${index},${Math.round(left)}`;
}

/** A note is as tall as its text, where the library gives every one four rows. */
const noteSizes =
  (plan: SheetPlan): Repair =>
  xml => {
    const cells = placed(plan);
    const heights = heightsPt(cells, plan);
    const notes = new Map(cells.map(({ cell, row, column }) => [`${row},${column}`, cell.note ?? '']));
    const colPx = (col: number): number => columnPx(plan, col);
    const rowPx = (row: number): number => ((heights.get(row) ?? PLAIN_ROW_PT) * 4) / 3;
    return xml.replace(
      /<x:Anchor>[^<]*(<\/x:Anchor>.*?<x:Row>(\d+)<\/x:Row><x:Column>(\d+)<\/x:Column>)/g,
      (_, rest: string, row: string, col: string) => {
        const heightPx = linesOf(notes.get(`${row},${col}`) ?? '', NOTE_WIDTH_PX / DIGIT_PX, false) * NOTE_LINE_PX + NOTE_PADDING_PX;
        const next = Number(col) + 1;
        const from = `${reach(next, NOTE_GAP_PX, colPx)},${reach(Number(row), NOTE_DROP_PX, rowPx)}`;
        const to = `${reach(next, NOTE_GAP_PX + NOTE_WIDTH_PX, colPx)},${reach(Number(row), NOTE_DROP_PX + heightPx, rowPx)}`;
        return `<x:Anchor>${from},${to}${rest}`;
      },
    );
  };

export function repaired(bytes: Uint8Array, sheets: readonly SheetPlan[]): Uint8Array {
  const repairs = new Map<string, Repair>([
    ['docProps/core.xml', noClock],
    ['docProps/app.xml', ownName],
  ]);
  sheets.forEach((plan, i) => {
    repairs.set(`xl/worksheets/sheet${i + 1}.xml`, errorResults);
    repairs.set(`xl/drawings/drawing${i + 1}.xml`, ownSize);
    repairs.set(`xl/drawings/vmlDrawing${i + 1}.vml`, noteSizes(plan));
  });
  const parts: Zippable = {};
  for (const [path, part] of Object.entries(unzipSync(bytes))) {
    const repair = repairs.get(path);
    parts[path] = repair === undefined ? part : strToU8(repair(strFromU8(part)));
  }
  return zipSync(parts, { mtime: ZIP_EPOCH });
}
