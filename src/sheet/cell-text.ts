// Text of the user on its way into a file: what could deceive or be cut is taken out, and nothing becomes a formula.

const MOST = 32_000;
/** Control characters but tab and line feed, marks that turn the reading direction, a byte order mark. */
// eslint-disable-next-line no-control-regex
const HARMFUL = /[\u0000-\u0008\u000b-\u001f\u007f\u202a-\u202e\u2066-\u2069\ufeff]/g;
/** A character of two halves, or a half alone. */
const HALVES = /[\ud800-\udbff][\udc00-\udfff]|[\ud800-\udfff]/g;

export function cellText(text: string): string {
  const plain = (part: string): string =>
    part
      .replace(/\r\n?/g, '\n')
      .replace(HARMFUL, '')
      .replace(HALVES, halves => (halves.length === 2 ? halves : ''))
      .normalize('NFC');
  return text.length <= MOST ? plain(text) : `${plain(text.slice(0, MOST))} [cut]`;
}
