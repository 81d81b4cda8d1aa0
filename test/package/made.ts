// Packages made by hand, part by part, and another reader of the container than the product's.
import { strFromU8, strToU8, unzipSync, zipSync, type Zippable } from 'fflate';

export const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
export const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const RELATIONS = 'http://schemas.openxmlformats.org/package/2006/relationships';
const TYPES = 'http://schemas.openxmlformats.org/package/2006/content-types';
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

export const SHEET = 'xl/worksheets/sheet1.xml';
export const BOOK = 'xl/workbook.xml';
export const BOOK_LINKS = 'xl/_rels/workbook.xml.rels';
export const CONTENT_TYPES = '[Content_Types].xml';

export type MadeParts = Readonly<Record<string, string | Uint8Array>>;

/** `[id, kind or whole type, target]`; a target with `!` before it lies outside. */
export type MadeLink = readonly [string, string, string];
export const links = (...all: readonly MadeLink[]): string =>
  `<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\r\n<Relationships xmlns="${RELATIONS}">${all
    .map(
      ([id, type, target]) =>
        `<Relationship Id="${id}" Type="${type.includes('/') ? type : `${OFFICE}/${type}`}" Target="${target.replace(/^!/, '')}"${target.startsWith('!') ? ' TargetMode="External"' : ''}/>`,
    )
    .join('')}</Relationships>`;

export interface Making {
  /** In sheetData. */
  readonly rows?: string;
  readonly beforeData?: string;
  readonly afterData?: string;
  /** In the workbook, after its sheets. */
  readonly book?: string;
  readonly bookLinks?: readonly MadeLink[];
  readonly startLinks?: readonly MadeLink[];
  readonly types?: string;
  readonly more?: MadeParts;
  readonly level?: 0 | 6;
}

export function madeParts({
  rows = '',
  beforeData = '',
  afterData = '',
  book = '',
  bookLinks = [],
  startLinks = [],
  types = '',
  more = {},
}: Making): MadeParts {
  return {
    [CONTENT_TYPES]: `<Types xmlns="${TYPES}"><Default Extension="xml" ContentType="application/xml"/><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="${SPREADSHEET}.sheet.main+xml"/><Override PartName="/xl/worksheets/sheet1.xml" ContentType="${SPREADSHEET}.worksheet+xml"/>${types}</Types>`,
    '_rels/.rels': links(['a', 'officeDocument', 'xl/workbook.xml'], ...startLinks),
    [BOOK]: `<?xml version="1.0" encoding="UTF-8"?>\r\n<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets><sheet name="S" sheetId="7" r:id="r1"/></sheets>${book}</workbook>`,
    [BOOK_LINKS]: links(['r1', 'worksheet', 'worksheets/sheet1.xml'], ...bookLinks),
    [SHEET]: `<?xml version="1.0"?>\n<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}">${beforeData}<sheetData>${rows}</sheetData>${afterData}</worksheet>`,
    ...more,
  };
}

const bytesOf = (part: string | Uint8Array): Uint8Array => (typeof part === 'string' ? strToU8(part) : part);

export const zipped = (parts: MadeParts, level: 0 | 6 = 6): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, part]) => [name, bytesOf(part)])) as Zippable, {
    level,
    mtime: '2026-02-14',
  });

export const made = (making: Making = {}): Uint8Array => zipped(madeParts(making), making.level);

export const utf16 = (text: string, isBig = false): Uint8Array => {
  const bytes = Buffer.from(`\ufeff${text}`, 'utf16le');
  return new Uint8Array(isBig ? bytes.swap16() : bytes);
};

/** One entry as the container says it, found anew. */
export interface RawEntry {
  readonly name: string;
  readonly method: number;
  readonly time: number;
  readonly crc: number;
  readonly size: number;
  readonly raw: string;
}

/** By the directory alone: offsets of the format's own description (APPNOTE 4.3). */
export function rawEntries(zip: Uint8Array): Map<string, RawEntry> {
  const b = Buffer.from(zip);
  const end = b.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]));
  const found = new Map<string, RawEntry>();
  let at = b.readUInt32LE(end + 16);
  for (let left = b.readUInt16LE(end + 10); left > 0; left--) {
    const local = b.readUInt32LE(at + 42);
    const from = local + 30 + b.readUInt16LE(local + 26) + b.readUInt16LE(local + 28);
    const name = b.toString('utf8', at + 46, at + 46 + b.readUInt16LE(at + 28));
    found.set(name, {
      name,
      method: b.readUInt16LE(at + 10),
      time: b.readUInt32LE(at + 12),
      crc: b.readUInt32LE(at + 16),
      size: b.readUInt32LE(at + 24),
      raw: b.toString('base64', from, from + b.readUInt32LE(at + 20)),
    });
    at += 46 + b.readUInt16LE(at + 28) + b.readUInt16LE(at + 30) + b.readUInt16LE(at + 32);
  }
  return found;
}

/** The text of a part, unpacked by the library and not by the product. */
export const textOf = (zip: Uint8Array, part: string): string => {
  const bytes = unzipSync(zip)[part];
  if (bytes === undefined) throw new Error(`no part ${part}`);
  return bytes[0] === 0xff && bytes[1] === 0xfe ? Buffer.from(bytes).toString('utf16le') : strFromU8(bytes);
};
