// SVG as text: elements with escaped attributes and escaped text, paths, numbers, and how wide a text may come out.
import { fixedText } from '../core/decimal';

/** Finished markup; a bare string among children is text and gets escaped. */
export interface Markup {
  readonly markup: string;
}

export type Child = Markup | string | undefined | readonly Child[];
type Attributes = Readonly<Record<string, string | number | undefined>>;

const ESCAPES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

/** Characters that XML cannot hold at all. */
function isForbidden(character: string): boolean {
  const code = character.codePointAt(0) ?? 0;
  return (
    (code < 0x20 && code !== 0x09 && code !== 0x0a && code !== 0x0d) ||
    (code >= 0xd800 && code <= 0xdfff) ||
    code === 0xfffe ||
    code === 0xffff
  );
}

/** Nothing to escape; nearly all attributes are of this kind, and paths are long. */
const PLAIN = /^[\w .,:;#()%+=/-]*$/;

const escaped = (text: string): string =>
  PLAIN.test(text) ? text : Array.from(text, character => (isForbidden(character) ? '\ufffd' : (ESCAPES[character] ?? character))).join('');

/** A coordinate: hundredths of a pixel. */
export const px = (value: number): string => String(Math.round(value * 100) / 100);

const written = (child: Child): string => {
  if (child === undefined) return '';
  if (typeof child === 'string') return escaped(child);
  return 'markup' in child ? child.markup : child.map(written).join('');
};

export function el(name: string, attributes: Attributes, ...children: readonly Child[]): Markup {
  const list = Object.entries(attributes).map(([key, value]) =>
    value === undefined ? '' : ` ${key}="${typeof value === 'number' ? px(value) : escaped(value)}"`,
  );
  const content = written(children);
  return { markup: content === '' ? `<${name}${list.join('')}/>` : `<${name}${list.join('')}>${content}</${name}>` };
}

/** A number to be read: fixed decimals, a true minus. */
export const shown = (value: number, places = 2): string => fixedText(value, places).replace('-', '−');

export type Point = readonly [x: number, y: number];

/** Straight lines through the points. */
export const through = (points: readonly Point[], closed = false): string =>
  `${points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${px(x)} ${px(y)}`).join('')}${closed ? 'Z' : ''}`;

export const line = (className: string, ...points: readonly Point[]): Markup => el('path', { class: className, d: through(points) });

export type Anchor = 'start' | 'middle' | 'end';

export const text = (
  content: string,
  [x, y]: Point,
  { anchor = 'start', className }: { readonly anchor?: Anchor; readonly className?: string } = {},
): Markup => el('text', { x, y, 'text-anchor': anchor === 'start' ? undefined : anchor, class: className }, content);

/** Shares of the type size, from the widest of the common sans-serif faces. */
const WIDTHS: readonly (readonly [characters: RegExp, share: number])[] = [
  [/[ijlI.,:;'|!/ ]/, 0.34],
  [/[ftr()°-]/, 0.44],
  [/[sckvxyzJ]/, 0.59],
  [/[mwMW@%–—×Ø=+−]/, 0.98],
];
const BOLD = 1.11;

/** Upper estimate of the width of a text; there is nothing to measure with. */
export function textWidthPx(content: string, sizePx: number, weight: 'plain' | 'bold' = 'plain'): number {
  const shares = Array.from(content, character => WIDTHS.find(([characters]) => characters.test(character))?.[1] ?? 0.65);
  return shares.reduce((sum, share) => sum + share, 0) * sizePx * (weight === 'bold' ? BOLD : 1);
}

/** Lines no wider than so many pixels, broken at blanks; a word that is too long is broken anywhere. */
export function wrapped(content: string, widthPx: number, sizePx: number): string[] {
  const lines: string[] = [];
  let current = '';
  const pieces = content.split(/\s+/).flatMap(word => brokenWord(word, widthPx, sizePx));
  for (const piece of pieces) {
    const longer = current === '' ? piece : `${current} ${piece}`;
    if (current !== '' && textWidthPx(longer, sizePx) > widthPx) {
      lines.push(current);
      current = piece;
    } else current = longer;
  }
  return [...lines, current];
}

function brokenWord(word: string, widthPx: number, sizePx: number): string[] {
  if (textWidthPx(word, sizePx) <= widthPx) return [word];
  const count = Math.max(1, Math.floor(widthPx / sizePx));
  const characters = Array.from(word);
  return Array.from({ length: Math.ceil(characters.length / count) }, (_, i) => characters.slice(i * count, (i + 1) * count).join(''));
}

/** As much of the text as fits, with an ellipsis where it was cut. */
export function fitted(content: string, widthPx: number, sizePx: number): string {
  if (textWidthPx(content, sizePx) <= widthPx) return content;
  const characters = Array.from(content);
  while (characters.length > 0 && textWidthPx(`${characters.join('')}…`, sizePx) > widthPx) characters.pop();
  return `${characters.join('')}…`;
}
