// A fingerprint of what was handed over: FNV-1a, 64 bit. It tells copies apart; it is no protection.
/** The prime is this and bit 40. */
const PRIME = 0x1b3;
const WORD = 0x1_0000_0000;

/** Two words, since a number does not hold all 64 bits. */
export function fnv1a64(bytes: Iterable<number>): string {
  let [high, low] = [0xcbf29ce4, 0x84222325];
  for (const byte of bytes) {
    low = (low ^ byte) >>> 0;
    const product = low * PRIME;
    high = (Math.imul(high, PRIME) + (low << 8) + Math.floor(product / WORD)) >>> 0;
    low = product >>> 0;
  }
  return [high, low].map(word => word.toString(16).padStart(8, '0')).join('');
}

/** The code units of a text, low byte first. */
export function bytesOf(text: string): Uint8Array {
  const bytes = new Uint8Array(2 * text.length);
  for (let i = 0; i < text.length; i++) {
    const unit = text.charCodeAt(i);
    bytes[2 * i] = unit;
    bytes[2 * i + 1] = unit >> 8;
  }
  return bytes;
}
