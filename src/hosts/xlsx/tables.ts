// The named tables of a workbook file, each from its part: the library says nothing of a table without a row of headers.
import { strFromU8 } from 'fflate';
import { rectangleOf } from '../../sheet/addresses';
import type { SourceTable } from '../../sheet/workbook-values';

type Parts = ReadonlyMap<string, Uint8Array>;
type TagAttributes = ReadonlyMap<string, string>;

const ATTRIBUTE = /([^\s=]+)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/g;
const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
const RANGE = /^[A-Z]{1,3}\d{1,7}(:[A-Z]{1,3}\d{1,7})?$/;

/** A line feed stands in a name as `_x000a_`. */
const unescaped = (text: string): string =>
  text
    .replace(/&(?:#x([0-9a-f]{1,6})|#(\d{1,7})|(\w+));/gi, (entity, hex?: string, decimal?: string, name = '') => {
      const code = hex !== undefined ? parseInt(hex, 16) : Number(decimal ?? NaN);
      return code <= 0x10ffff ? String.fromCodePoint(code) : (ENTITIES[name as string] ?? entity);
    })
    .replace(/_x([0-9a-f]{4})_/gi, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)));

/** The attributes of all elements of a name, in their order. */
const elements = (xml: string, name: string): TagAttributes[] =>
  [...xml.matchAll(new RegExp(`<(?:[\\w.-]+:)?${name}((?:\\s+[^\\s=<>"'/]+\\s*=\\s*(?:"[^"<]*"|'[^'<]*'))*)\\s*/?>`, 'g'))].map(
    ([, attributes = '']) =>
      new Map([...attributes.matchAll(ATTRIBUTE)].map(([, key = '', double, single]) => [key, unescaped(double ?? single ?? '')])),
  );

/** A part that another one leads to, by its place or from the root. */
function resolved(from: string, target: string): string {
  const steps = target.startsWith('/') ? [] : from.split('/').slice(0, -1);
  for (const step of target.split('/')) {
    if (step === '..') steps.pop();
    else if (step !== '' && step !== '.') steps.push(step);
  }
  return steps.join('/');
}

function tableOf(xml: string, sheet: string): SourceTable[] {
  const [table] = elements(xml, 'table');
  const [name, range = ''] = [table?.get('displayName') ?? table?.get('name'), table?.get('ref')];
  if (table === undefined || name === undefined || !RANGE.test(range)) return [];
  return [
    {
      name,
      area: { sheet, ...rectangleOf(range) },
      headerRows: Number(table.get('headerRowCount') ?? 1),
      totalsRows: Number(table.get('totalsRowCount') ?? 0),
      columns: elements(xml, 'tableColumn').map(column => column.get('name') ?? ''),
    },
  ];
}

export function tablesOf(parts: Parts): SourceTable[] {
  const xml = (name: string): string => strFromU8(parts.get(name) ?? new Uint8Array());
  const links = (part: string): TagAttributes[] => elements(xml(part.replace(/([^/]+)$/, '_rels/$1.rels')), 'Relationship');
  const workbook = 'xl/workbook.xml';
  const sheets = new Map(links(workbook).map(link => [link.get('Id'), resolved(workbook, link.get('Target') ?? '')]));
  return elements(xml(workbook), 'sheet').flatMap(sheet => {
    const id = [...sheet].find(([key]) => /(^|:)id$/.test(key))?.[1];
    const part = sheets.get(id) ?? '';
    return links(part)
      .filter(link => link.get('Type')?.endsWith('/table'))
      .flatMap(link => tableOf(xml(resolved(part, link.get('Target') ?? '')), sheet.get('name') ?? ''));
  });
}
