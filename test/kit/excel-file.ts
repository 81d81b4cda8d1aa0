// A workbook file as Excel stores it, written by hand: formulas go in to the letter.
import { strToU8, zipSync } from 'fflate';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const REL = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE_REL = 'http://schemas.openxmlformats.org/package/2006/relationships';
const CONTENT = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

/** A formula with the value that Excel kept; `array` is its `ref`, `isDynamic` its `cm`. */
export interface StoredFormula {
  readonly f: string;
  readonly v: string | number;
  readonly array?: string;
  readonly isDynamic?: true;
}
export type StoredCell = string | number | StoredFormula;

export interface StoredTable {
  readonly name: string;
  readonly sheet: string;
  readonly ref: string;
  readonly columns: readonly string[];
  readonly headerRowCount?: number;
  readonly totalsRowCount?: number;
}

export interface StoredWorkbook {
  readonly sheets: Readonly<Record<string, Readonly<Record<string, StoredCell>>>>;
  readonly tables?: readonly StoredTable[];
  /** Name to meaning; `S!name` holds on one sheet alone. */
  readonly names?: Readonly<Record<string, string>>;
}

const kept = (v: string | number): string => (typeof v === 'number' ? `<v>${v}</v>` : `<v xml:space="preserve">${escaped(v)}</v>`);

function cellXml(at: string, cell: StoredCell): string {
  if (typeof cell === 'number') return `<c r="${at}">${kept(cell)}</c>`;
  if (typeof cell === 'string') return `<c r="${at}" t="inlineStr"><is><t xml:space="preserve">${escaped(cell)}</t></is></c>`;
  const { f, v, array, isDynamic } = cell;
  const type = typeof v === 'number' ? '' : v.startsWith('#') ? ' t="e"' : ' t="str"';
  return `<c r="${at}"${type}${isDynamic ? ' cm="1"' : ''}><f${array === undefined ? '' : ` t="array" ref="${array}"`}>${escaped(f)}</f>${kept(v)}</c>`;
}

const rowOf = (at: string): number => Number(at.replace(/\D/g, ''));
const columnOf = (at: string): number => [...at.replace(/\d/g, '')].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);

function sheetXml(cells: Readonly<Record<string, StoredCell>>, tables: number): string {
  const rows = new Map<number, string[]>();
  const inOrder = Object.keys(cells).sort((a, b) => rowOf(a) - rowOf(b) || columnOf(a) - columnOf(b));
  for (const at of inOrder) rows.set(rowOf(at), [...(rows.get(rowOf(at)) ?? []), cellXml(at, cells[at] as StoredCell)]);
  const data = [...rows].map(([row, list]) => `<row r="${row}">${list.join('')}</row>`).join('');
  const parts = Array.from({ length: tables }, (_, i) => `<tablePart r:id="rId${i + 1}"/>`).join('');
  return `<worksheet xmlns="${MAIN}" xmlns:r="${REL}"><sheetData>${data}</sheetData>${tables === 0 ? '' : `<tableParts count="${tables}">${parts}</tableParts>`}</worksheet>`;
}

function tableXml({ name, ref, columns, headerRowCount, totalsRowCount }: StoredTable, id: number): string {
  const counts = Object.entries({ headerRowCount, totalsRowCount }).map(([key, n]) => (n === undefined ? '' : ` ${key}="${n}"`));
  const names = columns.map((column, i) => `<tableColumn id="${i + 1}" name="${escaped(column).replace(/\n/g, '_x000a_')}"/>`);
  return `<table xmlns="${MAIN}" id="${id}" name="T${id}" displayName="${name}" ref="${ref}"${counts.join('')}><tableColumns count="${columns.length}">${names.join('')}</tableColumns></table>`;
}

export function excelFile({ sheets, tables = [], names = {} }: StoredWorkbook): Uint8Array {
  const list = Object.keys(sheets);
  const relations = (each: readonly (readonly [type: string, target: string])[]): string =>
    `<Relationships xmlns="${PACKAGE_REL}">${each.map(([type, target], i) => `<Relationship Id="rId${i + 1}" Type="${REL}/${type}" Target="${target}"/>`).join('')}</Relationships>`;
  const defined = Object.entries(names).map(([key, meaning]) => {
    const [name = '', sheet] = key.split('!').reverse();
    return `<definedName name="${escaped(name)}"${sheet === undefined ? '' : ` localSheetId="${list.indexOf(sheet)}"`}>${escaped(meaning)}</definedName>`;
  });
  const parts: Record<string, string> = {
    '[Content_Types].xml': `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${CONTENT}.sheet.main+xml"/><Override PartName="/xl/metadata.xml" ContentType="${CONTENT}.sheetMetadata+xml"/>${list.map((_, i) => `<Override PartName="/xl/worksheets/sheet${i + 1}.xml" ContentType="${CONTENT}.worksheet+xml"/>`).join('')}${tables.map((_, i) => `<Override PartName="/xl/tables/table${i + 1}.xml" ContentType="${CONTENT}.table+xml"/>`).join('')}</Types>`,
    '_rels/.rels': relations([['officeDocument', 'xl/workbook.xml']]),
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${REL}"><sheets>${list.map((name, i) => `<sheet name="${escaped(name)}" sheetId="${i + 1}" r:id="rId${i + 1}"/>`).join('')}</sheets>${defined.length === 0 ? '' : `<definedNames>${defined.join('')}</definedNames>`}</workbook>`,
    'xl/_rels/workbook.xml.rels': relations([
      ...list.map((_, i) => ['worksheet', `worksheets/sheet${i + 1}.xml`] as const),
      ['sheetMetadata', 'metadata.xml'],
    ]),
    'xl/metadata.xml': `<metadata xmlns="${MAIN}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`,
  };
  list.forEach((name, i) => {
    const own = tables.flatMap((table, n) => (table.sheet === name ? [n + 1] : []));
    parts[`xl/worksheets/sheet${i + 1}.xml`] = sheetXml(sheets[name] ?? {}, own.length);
    if (own.length > 0) parts[`xl/worksheets/_rels/sheet${i + 1}.xml.rels`] = relations(own.map(n => ['table', `../tables/table${n}.xml`]));
  });
  tables.forEach((table, i) => (parts[`xl/tables/table${i + 1}.xml`] = tableXml(table, i + 1)));
  const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
  return zipSync(Object.fromEntries(Object.entries(parts).map(([path, xml]) => [path, strToU8(head + xml)])));
}
