// The text of a part, and back without loss: UTF-8 or UTF-16, with or without a mark.
import { UnreadableFile } from './unreadable';

/** What stands in XML at the beginning: the mark and the declaration, as far as they are in ASCII. */
const DECLARED = /^(?:\xef\xbb\xbf)?<\?xml\s[^>]*?\bencoding\s*=\s*["']([^"']+)/;

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be';

export interface PartText {
  readonly text: string;
  readonly encoding: Encoding;
}

function encodingOf(bytes: Uint8Array, part: string): Encoding {
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0x3c && second === 0)) return 'utf-16le';
  if ((first === 0xfe && second === 0xff) || (first === 0 && second === 0x3c)) return 'utf-16be';
  const declared = DECLARED.exec(String.fromCharCode(...bytes.subarray(0, 256)))?.[1];
  if (declared !== undefined && !/^utf-?8$/i.test(declared))
    throw new UnreadableFile('inside', `the part "${part}" is written in ${declared}; UTF-8 and UTF-16 are read`);
  return 'utf-8';
}

export function decoded(bytes: Uint8Array, part: string): PartText {
  const encoding = encodingOf(bytes, part);
  try {
    return { text: new TextDecoder(encoding, { fatal: true, ignoreBOM: true }).decode(bytes), encoding };
  } catch {
    throw new UnreadableFile('inside', `the part "${part}" is not in the encoding that it says (${encoding})`);
  }
}

export function encoded({ text, encoding }: PartText): Uint8Array {
  if (encoding === 'utf-8') return new TextEncoder().encode(text);
  const bytes = new DataView(new ArrayBuffer(text.length * 2));
  for (let i = 0; i < text.length; i++) bytes.setUint16(i * 2, text.charCodeAt(i), encoding === 'utf-16le');
  return new Uint8Array(bytes.buffer);
}
