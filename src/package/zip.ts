// The container of a workbook: its directory, judged before anything is unpacked; parts unpacked when they are asked for;
// parts that stay written with the very bytes in which they were packed.
import { Deflate, Inflate } from 'fflate';
import { MOST_PACKED_BYTES, MOST_PARTS, MOST_RATIO, MOST_UNPACKED_BYTES, SMALL_BYTES, UnreadableFile } from './unreadable';

const STORED = 0;
const DEFLATED = 8;
/** Flags that say how the name and the bytes are written; that sizes follow the bytes is not said again. */
const KEPT_FLAGS = 0x0806;
const ENCRYPTED = 0x2041;
const UTF8_NAME = 0x0800;
const [LOCAL, CENTRAL, END, END_64] = [0x04034b50, 0x02014b50, 0x06054b50, 0x07064b50];
/** Of the end of the directory without its comment, and of the longest comment. */
const [END_BYTES, LONGEST_COMMENT] = [22, 0xffff];
const FIRST_DAY = 0x0021_0000; // 1 January 1980, midnight
/** Packed bytes at a time: they can unpack to about a thousand times as many. */
const PIECE_BYTES = 16 * 1024;

/** One part as it is stored. */
export interface PackedPart {
  readonly name: string;
  readonly nameBytes: Uint8Array;
  readonly flags: number;
  readonly method: number;
  /** In the form of the container: day above, time below. */
  readonly time: number;
  readonly crc: number;
  readonly unpackedBytes: number;
  readonly raw: Uint8Array;
}

const CRC_TABLE = Int32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? -306674912 ^ (c >>> 1) : c >>> 1;
  return c;
});

function crcGoesOn(crc: number, bytes: Uint8Array): number {
  let c = crc;
  for (let i = 0; i < bytes.length; i++) c = (CRC_TABLE[(c ^ (bytes[i] ?? 0)) & 255] ?? 0) ^ (c >>> 8);
  return c;
}

const mb = (bytes: number): string => `${Math.round(bytes / 1024 / 1024)} MB`;
const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

function endOfDirectory(file: Uint8Array, view: DataView): number {
  const first = Math.max(0, file.length - END_BYTES - LONGEST_COMMENT);
  for (let at = file.length - END_BYTES; at >= first; at--) {
    if (view.getUint32(at, true) === END && at + END_BYTES + view.getUint16(at + 20, true) === file.length) return at;
  }
  throw new UnreadableFile('noWorkbook');
}

/** Where the bytes of a part begin, after its own header, which must name it as the directory does. */
function startOf(view: DataView, file: Uint8Array, local: number, nameBytes: Uint8Array): number {
  const nameAt = local + 30;
  if (view.getUint32(local, true) !== LOCAL || view.getUint16(local + 26, true) !== nameBytes.length)
    throw new UnreadableFile('noWorkbook');
  if (nameBytes.some((byte, i) => file[nameAt + i] !== byte)) throw new UnreadableFile('noWorkbook');
  return nameAt + nameBytes.length + view.getUint16(local + 28, true);
}

interface FoundPart {
  readonly part: PackedPart;
  readonly next: number;
}

function partAt(file: Uint8Array, view: DataView, at: number, directory: number): FoundPart {
  if (view.getUint32(at, true) !== CENTRAL) throw new UnreadableFile('noWorkbook');
  const [short, long] = [(o: number) => view.getUint16(at + o, true), (o: number) => view.getUint32(at + o, true)];
  const nameBytes = file.subarray(at + 46, at + 46 + short(28));
  const name = new TextDecoder().decode(nameBytes);
  const [packed, unpackedBytes, local] = [long(20), long(24), long(42)];
  if (short(8) & ENCRYPTED) throw new UnreadableFile('encrypted', name);
  if ([packed, unpackedBytes, local].includes(0xffff_ffff)) throw new UnreadableFile('partOver4GB', name);
  if (short(10) !== STORED && short(10) !== DEFLATED)
    throw new UnreadableFile('inside', `the part "${name}" is packed by method ${short(10)}, which is not read`);
  const from = startOf(view, file, local, nameBytes);
  if (from + packed > directory || (short(10) === STORED && packed !== unpackedBytes)) throw new UnreadableFile('noWorkbook');
  const part = {
    name,
    nameBytes,
    flags: short(8) & KEPT_FLAGS,
    method: short(10),
    time: long(12),
    crc: long(16),
    unpackedBytes,
    raw: file.subarray(from, from + packed),
  };
  return { part, next: at + 46 + short(28) + short(30) + short(32) };
}

function judged(file: Uint8Array, by: WrittenBy): Map<string, PackedPart> {
  const view = viewOf(file);
  const end = endOfDirectory(file, view);
  const [count, directory] = [view.getUint16(end + 10, true), view.getUint32(end + 16, true)];
  if (count === 0xffff || directory === 0xffff_ffff || (end >= 20 && view.getUint32(end - 20, true) === END_64))
    throw new UnreadableFile('over4GB');
  if (count > MOST_PARTS) throw new UnreadableFile('tooManyParts', MOST_PARTS);
  const parts = new Map<string, PackedPart>();
  const names = new Set<string>();
  let [at, total, packed] = [directory, 0, 0];
  for (let i = 0; i < count; i++) {
    const { part, next } = partAt(file, view, at, directory);
    const { name, unpackedBytes, raw } = part;
    // a name of a part has no capitals of its own
    if (names.has(name.toLowerCase()) || /(^|[/\\])\.\.([/\\]|$)|^[/\\]/.test(name))
      throw new UnreadableFile('inside', `the file has the part "${name}" twice or out of place`);
    parts.set(name, part);
    names.add(name.toLowerCase());
    [at, total, packed] = [next, total + unpackedBytes, packed + raw.length];
    if (by === 'us') continue;
    if (total > MOST_UNPACKED_BYTES) throw new UnreadableFile('tooLargeUnpacked', mb(MOST_UNPACKED_BYTES));
    if (unpackedBytes > SMALL_BYTES && unpackedBytes > raw.length * MOST_RATIO) throw new UnreadableFile('tooTight', name, MOST_RATIO);
  }
  if (at !== end || packed > directory) throw new UnreadableFile('noWorkbook');
  return parts;
}

/** What anybody may have made must keep to a size; what was written a moment ago is as large as it had to be. */
export type WrittenBy = 'anybody' | 'us';

/** The parts in the order of the directory. Nothing is unpacked. */
export function openZip(file: Uint8Array, by: WrittenBy = 'anybody'): Map<string, PackedPart> {
  if (by === 'anybody' && file.length > MOST_PACKED_BYTES) throw new UnreadableFile('tooLarge', mb(MOST_PACKED_BYTES));
  if (file[0] === 0xd0 && file[1] === 0xcf) throw new UnreadableFile('password');
  try {
    return judged(file, by);
  } catch (fault) {
    throw fault instanceof UnreadableFile ? fault : new UnreadableFile('noWorkbook');
  }
}

/** Its bytes, of the size and with the checksum that the directory says; they are counted while they come. */
export function unpacked({ name, method, raw, unpackedBytes, crc }: PackedPart): Uint8Array {
  const size = new UnreadableFile('inside', `the part "${name}" has not the size that the file says`);
  let bytes = raw;
  if (method === DEFLATED) {
    bytes = new Uint8Array(unpackedBytes);
    let [filled, ended] = [0, false];
    const inflate = new Inflate((piece, final) => {
      if (filled + piece.length > unpackedBytes) throw size;
      bytes.set(piece, filled);
      filled += piece.length;
      ended ||= final;
    });
    try {
      for (let from = 0; from < raw.length; from += PIECE_BYTES)
        inflate.push(raw.subarray(from, from + PIECE_BYTES), from + PIECE_BYTES >= raw.length);
    } catch (fault) {
      throw fault instanceof UnreadableFile ? fault : new UnreadableFile('damaged', name);
    }
    if (!ended || filled < unpackedBytes) throw size;
  }
  if (~crcGoesOn(-1, bytes) >>> 0 !== crc) throw new UnreadableFile('checksum', name);
  return bytes;
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const all = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    all.set(piece, at);
    at += piece.length;
  }
  return all;
}

/** Packs bytes that come in pieces, so that a long part need not stand in memory as a whole. */
export function packed(name: string, pieces: Iterable<Uint8Array>): PackedPart {
  const out: Uint8Array[] = [];
  let [crc, unpackedBytes] = [-1, 0];
  const deflate = new Deflate({ level: 5 }, piece => out.push(piece));
  for (const piece of pieces) {
    crc = crcGoesOn(crc, piece);
    unpackedBytes += piece.length;
    deflate.push(piece);
  }
  deflate.push(new Uint8Array(), true);
  const nameBytes = new TextEncoder().encode(name);
  return { name, nameBytes, flags: UTF8_NAME, method: DEFLATED, time: FIRST_DAY, crc: ~crc >>> 0, unpackedBytes, raw: joined(out) };
}

export function writeZip(parts: Iterable<PackedPart>): Uint8Array {
  const [body, directory]: [Uint8Array[], Uint8Array[]] = [[], []];
  let [at, count] = [0, 0];
  for (const { nameBytes, flags, method, time, crc, unpackedBytes, raw } of parts) {
    const [head, entry] = [viewOf(new Uint8Array(30)), viewOf(new Uint8Array(46))];
    head.setUint32(0, LOCAL, true);
    entry.setUint32(0, CENTRAL, true);
    entry.setUint16(4, 20, true);
    // the directory repeats the header, two bytes further on
    for (const [view, from] of [
      [head, 4],
      [entry, 6],
    ] as const) {
      view.setUint16(from, 20, true);
      view.setUint16(from + 2, flags, true);
      view.setUint16(from + 4, method, true);
      view.setUint32(from + 6, time, true);
      view.setUint32(from + 10, crc, true);
      view.setUint32(from + 14, raw.length, true);
      view.setUint32(from + 18, unpackedBytes, true);
      view.setUint16(from + 22, nameBytes.length, true);
    }
    entry.setUint32(42, at, true);
    body.push(new Uint8Array(head.buffer), nameBytes, raw);
    directory.push(new Uint8Array(entry.buffer), nameBytes);
    at += 30 + nameBytes.length + raw.length;
    count++;
  }
  const end = viewOf(new Uint8Array(END_BYTES));
  end.setUint32(0, END, true);
  end.setUint16(8, count, true);
  end.setUint16(10, count, true);
  end.setUint32(
    12,
    directory.reduce((sum, piece) => sum + piece.length, 0),
    true,
  );
  end.setUint32(16, at, true);
  return joined([...body, ...directory, new Uint8Array(end.buffer)]);
}
