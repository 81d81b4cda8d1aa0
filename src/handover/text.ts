// Text of the user on its way into a file: what could deceive or be cut is taken out, and nothing becomes a formula.

const MOST = 32_000;
/** Control characters but tab and line feed, marks that turn the reading direction, a byte order mark. */
// eslint-disable-next-line no-control-regex
const HARMFUL = /[\u0000-\u0008\u000b-\u001f\u007f\u202a-\u202e\u2066-\u2069\ufeff]/g;

export function cellText(text: string): string {
  const clean = text.replace(/\r\n?/g, '\n').replace(HARMFUL, '').normalize('NFC');
  return clean.length <= MOST ? clean : `${clean.slice(0, MOST)} [cut]`;
}
