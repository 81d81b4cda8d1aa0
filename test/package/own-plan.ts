// Sheets of our own with everything that a plan can ask for, and what the files say of them, found without the product.
import { SaxesParser } from 'saxes';
import { strFromU8, unzipSync } from 'fflate';
import type { SheetPlan, WorkbookPlan } from '../../src/sheet/plan';

const PNG = new Uint8Array(
  Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==', 'base64'),
);

const roles = ['title', 'heading', 'text', 'label', 'input', 'unit', 'note', 'result', 'header', 'caution'] as const;

const front: SheetPlan = {
  name: 'Handover',
  widths: [30, 20, 12],
  frozenRows: 2,
  isLocked: true,
  cells: [
    { at: 'A1', role: 'title', value: 'Hand-over' },
    { at: 'A2', role: 'header', value: 'name' },
    { at: 'B2', role: 'header', value: 'value' },
    { at: 'A3', role: 'label', value: ' led <&> text ', note: 'a note with <&> "quotes"' },
    { at: 'B3', role: 'result', formula: "='Größe ''1'''!$B$4*2+S!A1", value: 2.5, format: '0.00 "mm"' },
    { at: 'A4', role: 'label', value: 'two\nlines _x0041_' },
    { at: 'B4', role: 'input', value: 3, note: 'the second note', format: '0.0##' },
    { at: 'B5', role: 'result', formula: '=IF(B4>2,"pass","fail")', value: 'pass' },
    { at: 'B6', role: 'result', formula: '=B3:B4*2', value: 5, array: { range: 'B6:B7' } },
    { at: 'B8', role: 'text', value: '#N/A' },
    { at: 'B9', role: 'text', value: true },
    { at: 'B10', role: 'result', formula: '=NA()', value: '#N/A' },
    { at: 'B11', role: 'result', formula: '=Data!A2&"名"', value: 'ABS名' },
  ],
  stateRanges: ['B5:B5'],
  validations: [
    { range: 'B4', words: 'above 1', above: 1 },
    { range: 'C4', words: 'of the list', list: 'Data!$A$2:$A$3' },
  ],
  merged: ['A12:B12'],
  pictures: [{ at: 'C5', png: PNG, widthPx: 100, heightPx: 50, words: 'a "picture" & its words' }],
  print: { breakAfter: [7] },
};

const data: SheetPlan = {
  name: 'Data',
  widths: [10],
  frozenRows: 1,
  cells: [
    { at: 'A1', role: 'heading', value: 'material' },
    { at: 'A2', role: 'note', value: 'ABS', note: 'of the second sheet' },
    { at: 'A3', role: 'note', value: 'PC', format: '0.000' },
    ...roles.map((role, i) => ({ at: `A${i + 5}`, role, value: role })),
    ...roles.map((role, i) => ({ at: `B${i + 5}`, role, value: i / 8, format: `0.${'0'.repeat(i)}" °"` })),
  ],
  stateRanges: ['A5:A9', 'B5:B9'],
  pictures: [{ at: 'C5', png: PNG.slice(), widthPx: 90, heightPx: 40, words: 'two' }],
  print: { paper: 'Letter', repeatRows: 2 },
};

export const OWN_PLAN: WorkbookPlan = { name: 'T & Co', sheets: [front, data] };

export interface Node {
  readonly local: string;
  readonly at: Readonly<Record<string, string>>;
  readonly nodes: readonly Node[];
  readonly text: string;
}

/** An XML part as a tree of names without their prefixes. */
export function nodesOf(xml: string): Node {
  interface Open {
    local: string;
    at: Record<string, string>;
    nodes: Open[];
    text: string;
  }
  const top: Open = { local: '', at: {}, nodes: [], text: '' };
  const open: Open[] = [top];
  const parser = new SaxesParser({ xmlns: true });
  parser.on('opentag', tag => {
    const at = Object.fromEntries(
      Object.values(tag.attributes).map(({ local, prefix, value }) => [prefix === 'xmlns' ? `xmlns:${local}` : local, value]),
    );
    const node: Open = { local: tag.local, at, nodes: [], text: '' };
    open[open.length - 1]?.nodes.push(node);
    open.push(node);
  });
  parser.on('closetag', () => void open.pop());
  const text = (piece: string): void => {
    const node = open[open.length - 1];
    if (node !== undefined) node.text += piece;
  };
  parser.on('text', text);
  parser.on('cdata', text);
  parser.write(xml).close();
  const [root] = top.nodes;
  if (root === undefined) throw new Error('no element');
  return root;
}

export const child = (node: Node | undefined, local: string): Node | undefined => node?.nodes.find(one => one.local === local);
export const children = (node: Node | undefined, local: string): readonly Node[] => node?.nodes.filter(one => one.local === local) ?? [];
export const allUnder = (node: Node): Node[] => node.nodes.flatMap(one => [one, ...allUnder(one)]);

/** Every part of a file, and where its links lead. */
export class FileParts {
  readonly bytes: Readonly<Record<string, Uint8Array>>;

  constructor(file: Uint8Array) {
    this.bytes = unzipSync(file);
  }

  nodes(part: string): Node {
    const bytes = this.bytes[part];
    if (bytes === undefined) throw new Error(`no part ${part}`);
    const big = bytes[0] === 0xfe && bytes[1] === 0xff;
    const utf16 = big || (bytes[0] === 0xff && bytes[1] === 0xfe);
    const text = utf16 ? new TextDecoder(big ? 'utf-16be' : 'utf-16le').decode(bytes) : strFromU8(bytes).replace(/^\ufeff/, '');
    return nodesOf(text.replace(/^<\?xml[^>]*\?>/, ''));
  }

  /** Of a part by the ids of its links: kind (its last word) and target. */
  links(part: string): ReadonlyMap<string, readonly [kind: string, target: string]> {
    const slash = part.lastIndexOf('/') + 1;
    const list = `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
    if (this.bytes[list] === undefined) return new Map();
    return new Map(
      children(this.nodes(list), 'Relationship').map(({ at }) => {
        const { Id = '', Type = '', Target = '', TargetMode } = at;
        const target = TargetMode === 'External' ? `!${Target}` : decodeURI(new URL(Target, `part:///${part}`).pathname.slice(1));
        return [Id, [Type.replace(/.*\//, ''), target]];
      }),
    );
  }

  target(part: string, kind: string): string | undefined {
    return [...this.links(part).values()].find(([of]) => of === kind)?.[1];
  }
}

/** Of a sheet by name. */
export function sheetPart(file: FileParts, name: string): string {
  const sheet = children(child(file.nodes('xl/workbook.xml'), 'sheets'), 'sheet').find(one => one.at['name'] === name);
  const found = file.links('xl/workbook.xml').get(sheet?.at['id'] ?? '')?.[1];
  if (found === undefined) throw new Error(`no sheet ${name}`);
  return found;
}

const plain = ({ local, at, nodes, text }: Node): unknown => [local, at, text.trim(), nodes.map(plain)];

/** Formats of a file by what they look like, the numbers of fonts, fills, borders and number formats looked up. */
export class Looks {
  readonly cells: readonly unknown[];
  readonly conditional: readonly unknown[];

  constructor(file: FileParts) {
    const part = file.target('xl/workbook.xml', 'styles');
    const styles = part === undefined ? undefined : file.nodes(part);
    const list = (name: string): readonly Node[] => child(styles, name)?.nodes ?? [];
    const codes = new Map(list('numFmts').map(({ at }) => [at['numFmtId'], at['formatCode']]));
    const code = (id = '0'): string => (Number(id) < 164 ? `built in ${id}` : (codes.get(id) ?? `no number format ${id}`));
    const entry = (name: string, index = '0'): unknown => {
      const node = list(name)[Number(index)];
      return node === undefined ? `no ${name} ${index}` : plain(node);
    };
    this.cells = list('cellXfs').map(({ at, nodes }) => ({
      number: code(at['numFmtId']),
      font: entry('fonts', at['fontId']),
      fill: entry('fills', at['fillId']),
      border: entry('borders', at['borderId']),
      more: nodes.map(plain),
    }));
    this.conditional = list('dxfs').map(({ nodes }) =>
      nodes.map(node => (node.local === 'numFmt' ? code(node.at['numFmtId']) : plain(node))),
    );
  }
}
