// Formats of cells of one workbook behind those of another, so that no index of the other moves.
import { isMain } from './scan';
import { UnreadableFile } from './unreadable';
import { appendedTo, attribute, childOf, type Splice, type StartTag, tree, walk, withAttributes, type XmlElement } from './xml';

export const NO_STYLES = (namespace: string): string => `<?xml version="1.0" encoding="UTF-8"?>\n<styleSheet xmlns="${namespace}"/>`;

/** Lists of the part in the order of the format. */
const ORDER = 'numFmts fonts fills borders cellStyleXfs cellXfs cellStyles dxfs tableStyles colors extLst'.split(' ');
/** Those that are appended to, with what programs take for their first entries where there are none. */
const FIRST: Readonly<Record<string, readonly string[]>> = {
  numFmts: [],
  fonts: ['<font><sz val="11"/><name val="Calibri"/></font>'],
  fills: ['<fill><patternFill patternType="none"/></fill>', '<fill><patternFill patternType="gray125"/></fill>'],
  borders: ['<border><left/><right/><top/><bottom/><diagonal/></border>'],
  cellStyleXfs: ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>'],
  cellXfs: ['<xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/>'],
  dxfs: [],
};
/** Ids below are those of formats that every program knows. */
const FIRST_OWN_NUMBER_FORMAT = 164;
const MOST_CELL_FORMATS = 65_490;
/** All that a format says holds, whatever the style says that it names. */
const APPLIED = { applyNumberFormat: '1', applyFont: '1', applyFill: '1', applyBorder: '1', applyAlignment: '1', applyProtection: '1' };

interface StyleList {
  readonly tag: StartTag;
  count: number;
  inner: number;
  end: number;
}

interface StylesFound {
  readonly root: StartTag & { inner: number };
  readonly lists: ReadonlyMap<string, StyleList>;
  readonly lastNumberFormat: number;
}

/** The lists of a part that can be long, in one pass. */
function found(text: string, part: string): StylesFound {
  const lists = new Map<string, StyleList>();
  let root: (StartTag & { inner: number }) | undefined;
  let list: StyleList | undefined;
  let lastNumberFormat = FIRST_OWN_NUMBER_FORMAT - 1;
  walk(text, part, {
    open(tag, depth) {
      if (depth === 0) root = { ...tag, inner: tag.to };
      if (depth === 1) lists.set(isMain(tag) ? tag.local : '', (list = { tag, count: 0, inner: tag.to, end: tag.to }));
      if (depth === 2 && list !== undefined) list.count++;
      lastNumberFormat = Math.max(lastNumberFormat, Number(attribute(tag, 'numFmtId')) || 0);
    },
    close(_, inner, end, depth) {
      if (depth === 0 && root !== undefined) root.inner = inner;
      if (depth === 1 && list !== undefined) [list.inner, list.end] = [inner, end];
    },
  });
  if (root?.local !== 'styleSheet' || !isMain(root)) throw new UnreadableFile('inside', `the part "${part}" has no formats of cells`);
  return { root, lists, lastNumberFormat };
}

export interface StylesAppended {
  readonly splices: readonly Splice[];
  /** Where the first format of cells, and the first of conditions, stands from now on. */
  readonly firstCellFormat: number;
  readonly firstConditional: number;
}

/** `own` is written by ourselves: without prefixes, with an id in every place. */
export function stylesAppended(text: string, part: string, own: string): StylesAppended {
  const { root, lists, lastNumberFormat } = found(text, part);
  const ownRoot = tree(own, 'styles.xml');
  const before = (list: string): number => lists.get(list)?.count || (FIRST[list]?.length ?? 0);
  const numberFormat = (id: number): string =>
    String(id < FIRST_OWN_NUMBER_FORMAT ? id : id - FIRST_OWN_NUMBER_FORMAT + lastNumberFormat + 1);
  const moved = (element: XmlElement, name: string, list: string): string => String(Number(attribute(element, name) ?? 0) + before(list));
  const changes = (element: XmlElement): Readonly<Record<string, string>> => {
    const id = attribute(element, 'numFmtId');
    if (element.local !== 'xf') return id === undefined ? {} : { numFmtId: numberFormat(Number(id)) };
    return {
      numFmtId: numberFormat(Number(id ?? 0)),
      fontId: moved(element, 'fontId', 'fonts'),
      fillId: moved(element, 'fillId', 'fills'),
      borderId: moved(element, 'borderId', 'borders'),
      xfId: '0',
      ...APPLIED,
    };
  };
  const printed = (element: XmlElement, prefix: string): string => {
    const start = withAttributes(own.slice(element.from, element.to), changes(element)).replace('<', `<${prefix}`);
    return element.isEmpty
      ? start
      : `${start}${element.children.map(child => printed(child, prefix)).join('')}</${prefix}${element.local}>`;
  };
  const prefixOf = (tag: StartTag): string => (tag.prefix === '' ? '' : `${tag.prefix}:`);

  const splices: Splice[] = [];
  let [inRoot, place] = ['', root.to];
  for (const name of ORDER) {
    const list = lists.get(name);
    const items = name === 'cellStyleXfs' ? [] : (childOf(ownRoot, name)?.children ?? []);
    const first = FIRST[name];
    if (first !== undefined) {
      const missing = (list?.count ?? 0) === 0 ? first : [];
      const prefix = prefixOf(list?.tag ?? root);
      const content =
        missing.map(xml => xml.replace(/<(\/?)/g, `<$1${prefix}`)).join('') + items.map(item => printed(item, prefix)).join('');
      const count = String(before(name) + items.length);
      if (content !== '' && list !== undefined) {
        const tag = { ...list.tag, inner: list.inner };
        splices.push(...appendedTo(text, tag, content, withAttributes(text.slice(tag.from, tag.to), { count })));
      } else if (content !== '') {
        const written = `<${prefix}${name} count="${count}">${content}</${prefix}${name}>`;
        if (root.isEmpty) inRoot += written;
        else splices.push({ from: place, to: place, text: written });
      }
    }
    place = list?.end ?? place;
  }
  if (root.isEmpty) splices.push(...appendedTo(text, root, inRoot));
  const [formats, more] = [before('cellXfs'), childOf(ownRoot, 'cellXfs')?.children.length ?? 0];
  if (formats + more > MOST_CELL_FORMATS)
    throw new UnreadableFile(
      'inside',
      `the workbook has ${formats} formats of cells, our sheets need ${more} more, and a file holds ${MOST_CELL_FORMATS}`,
    );
  return { splices, firstCellFormat: formats, firstConditional: before('dxfs') };
}
