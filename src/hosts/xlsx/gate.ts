// What comes out of a file that anybody may have made: nothing is unpacked before its table of contents was judged,
// bytes are counted while they are unpacked, and only the parts that hold cells go on.
import { strFromU8, Unzip, UnzipInflate, unzipSync } from 'fflate';

export const MOST_PACKED_BYTES = 20 * 1024 * 1024;
export const MOST_UNPACKED_BYTES = 200 * 1024 * 1024;
export const MOST_PARTS = 2_000;
/** A sheet of equal rows packs well; what packs better than this and is not small was made to harm. */
const MOST_RATIO = 200;
const SMALL_BYTES = 1024 * 1024;
/** Packed bytes at a time: they can unpack to about a thousand times as many. */
const PIECE_BYTES = 16 * 1024;

/** A file that is no workbook, is broken, or is refused. */
export class UnreadableFile extends Error {
  override readonly name = 'UnreadableFile';
}

export const NO_WORKBOOK = 'this is not a workbook file (.xlsx), or it is broken';

/** Parts that can run something. */
const RUNS = /(^|\/)(vbaProject[^/]*\.bin|activeX\/.*|macrosheets\/.*|dialogsheets\/.*)$/i;
/** Parts that fetch something or carry another file, besides links to workbooks. */
const OUTSIDE = /^xl\/(connections\.xml|queryTables\/.+\.xml|embeddings\/.+)$/i;
/** Parts with cells, and what leads to them. */
const READ = [
  /^(\[Content_Types\]\.xml|_rels\/\.rels)$/i,
  /^xl\/(workbook\.xml|_rels\/workbook\.xml\.rels|sharedStrings\.xml|metadata\.xml|worksheets\/[^/]+\.xml)$/i,
  /^xl\/(tables\/[^/]+\.xml|worksheets\/_rels\/[^/]+\.rels)$/i,
  /^xl\/externalLinks\/([^/]+\.xml|_rels\/[^/]+\.rels)$/i,
];

interface ZipEntry {
  readonly packed: number;
  readonly unpacked: number;
}

const mb = (bytes: number): string => `${Math.round(bytes / 1024 / 1024)} MB`;

/** The table of contents, judged. */
function contents(bytes: Uint8Array): Map<string, ZipEntry> {
  const entries = new Map<string, ZipEntry>();
  let total = 0;
  unzipSync(bytes, {
    filter({ name, size: packed, originalSize: unpacked }) {
      if (entries.has(name) || /(^|[/\\])\.\.([/\\]|$)|^[/\\]/.test(name))
        throw new UnreadableFile(`the file has the part "${name}" twice or out of place`);
      entries.set(name, { packed, unpacked });
      total += unpacked;
      if (entries.size > MOST_PARTS) throw new UnreadableFile(`the file has more than ${MOST_PARTS} parts`);
      if (total > MOST_UNPACKED_BYTES) throw new UnreadableFile(`unpacked the file would be larger than ${mb(MOST_UNPACKED_BYTES)}`);
      if (unpacked > SMALL_BYTES && unpacked > packed * MOST_RATIO)
        throw new UnreadableFile(`the part "${name}" is packed more than ${MOST_RATIO} times: files like this are made to fill a memory`);
      return false;
    },
  });
  return entries;
}

/** The parts that hold cells, each of the size that the table of contents says. */
function unpacked(bytes: Uint8Array, entries: ReadonlyMap<string, ZipEntry>): Map<string, Uint8Array> {
  const parts = new Map<string, Uint8Array>();
  const unzip = new Unzip(file => {
    const size = entries.get(file.name)?.unpacked;
    if (!READ.some(part => part.test(file.name)) || size === undefined) return;
    if (parts.has(file.name)) throw new UnreadableFile(NO_WORKBOOK);
    const part = new Uint8Array(size);
    parts.set(file.name, part);
    let filled = 0;
    file.ondata = (fault, piece, final) => {
      if (fault !== null) throw fault;
      if (filled + piece.length > size || (final && filled + piece.length < size))
        throw new UnreadableFile(`the part "${file.name}" has not the size that the file says`);
      part.set(piece, filled);
      filled += piece.length;
    };
    file.start();
  });
  unzip.register(UnzipInflate);
  for (let from = 0; from < bytes.length; from += PIECE_BYTES)
    unzip.push(bytes.subarray(from, from + PIECE_BYTES), from + PIECE_BYTES >= bytes.length);
  return parts;
}

export interface Package {
  readonly parts: ReadonlyMap<string, Uint8Array>;
  /** Names of parts that fetch something or carry another file. They are told and not read. */
  readonly outside: readonly string[];
}

export function opened(bytes: Uint8Array): Package {
  if (bytes.length > MOST_PACKED_BYTES) throw new UnreadableFile(`the file is larger than ${mb(MOST_PACKED_BYTES)}`);
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf)
    throw new UnreadableFile('the file is protected by a password, or of the old kind .xls: save it as .xlsx without a password');
  let entries: Map<string, ZipEntry>;
  let parts: Map<string, Uint8Array>;
  try {
    entries = contents(bytes);
    const running = [...entries.keys()].find(name => RUNS.test(name));
    if (running !== undefined)
      throw new UnreadableFile(`the file can run something by itself ("${running}"): save it as .xlsx without macros`);
    parts = unpacked(bytes, entries);
  } catch (fault) {
    throw fault instanceof UnreadableFile ? fault : new UnreadableFile(NO_WORKBOOK);
  }
  for (const [name, part] of parts) {
    if (strFromU8(part).includes('<!DOCTYPE'))
      throw new UnreadableFile(`the part "${name}" declares a document type, which no workbook needs`);
  }
  return { parts, outside: [...entries.keys()].filter(name => OUTSIDE.test(name)) };
}
