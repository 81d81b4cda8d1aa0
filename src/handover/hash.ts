// A fingerprint of what was handed over: FNV-1a, 64 bit. It tells copies apart; it is no protection.
const OFFSET = 0xcbf29ce484222325n;
const PRIME = 0x100000001b3n;

export function fnv1a64(bytes: Iterable<number>): string {
  let hash = OFFSET;
  for (const byte of bytes) hash = BigInt.asUintN(64, (hash ^ BigInt(byte)) * PRIME);
  return hash.toString(16).padStart(16, '0');
}

/** The code units of a text, low byte first. */
export function* bytesOf(text: string): Generator<number> {
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    yield unit & 0xff;
    yield unit >> 8;
  }
}
