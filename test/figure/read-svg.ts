// Reads back what was drawn: elements, the points of paths, and the boxes of texts.

export interface Drawn {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly content: string;
}

export type Point = readonly [x: number, y: number];

const plain = (markup: string): string =>
  markup
    .replace(/<[^>]*>/g, '')
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&#39;/g, "'")
    .replace(/&amp;/g, '&');

/** Tags in pairs, attributes quoted, no stray < or &: what an XML reader would accept. Throws otherwise. */
export function elements(svg: string): Drawn[] {
  const list: Drawn[] = [];
  const open: { name: string; attributes: Record<string, string>; from: number }[] = [];
  const tag = /<(\/?)([a-zA-Z]+)((?: [a-zA-Z:-]+="[^"<]*")*)(\/?)>/g;
  let end = 0;
  for (const found of svg.matchAll(tag)) {
    checkText(svg.slice(end, found.index));
    end = found.index + found[0].length;
    const [, closing, name = '', attributeText = '', selfClosing] = found;
    checkText(attributeText);
    const attributes = Object.fromEntries(
      [...attributeText.matchAll(/ ([a-zA-Z:-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value]),
    );
    if (closing === '/') {
      const last = open.pop();
      if (last?.name !== name) throw new Error(`</${name}> closes <${last?.name}>`);
      list.push({ name, attributes: last.attributes, content: plain(svg.slice(last.from, found.index)) });
    } else if (selfClosing === '/') list.push({ name, attributes, content: '' });
    else open.push({ name, attributes, from: end });
  }
  checkText(svg.slice(end));
  if (open.length > 0) throw new Error(`<${open[0]?.name}> is never closed`);
  return list;
}

function checkText(text: string): void {
  if (/[<]|&(?!(?:amp|lt|gt|quot|#39);)/.test(text)) throw new Error(`not escaped: ${text.slice(0, 60)}`);
  if (Array.from(text).some(character => (character.codePointAt(0) ?? 0) < 0x20)) throw new Error('a character that XML cannot hold');
}

export const ofClass = (list: readonly Drawn[], className: string): Drawn[] =>
  list.filter(({ attributes }) => (attributes.class ?? '').split(' ').includes(className));

/** Every point that a path names, control points too. */
export function pointsOf({ attributes }: Drawn): Point[] {
  const points: Point[] = [];
  let [x, y] = [NaN, NaN];
  for (const [, command, numbers = ''] of (attributes.d ?? '').matchAll(/([A-Z])([^A-Z]*)/g)) {
    const values = numbers.trim() === '' ? [] : numbers.trim().split(/[ ,]+/).map(Number);
    const pairs =
      command === 'H'
        ? values.map(value => [value, y])
        : command === 'V'
          ? values.map(value => [x, value])
          : values.flatMap((value, i) => (i % 2 === 0 ? [[value, values[i + 1] ?? NaN]] : []));
    for (const [px = NaN, py = NaN] of pairs) {
      [x, y] = [px, py];
      points.push([px, py]);
    }
  }
  return points;
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly content: string;
}

/** Digits of the usual sans-serif faces are 0.56 of the type size wide, and few letters are wider. */
const CHARACTER = 0.56;

export function boxOf({ attributes, content }: Drawn, sizePx = 12): Box {
  const [x, y] = [Number(attributes.x), Number(attributes.y)];
  const width = Array.from(content).length * sizePx * CHARACTER;
  const left = attributes['text-anchor'] === 'end' ? x - width : attributes['text-anchor'] === 'middle' ? x - width / 2 : x;
  return { left, right: left + width, top: y - 0.75 * sizePx, bottom: y + 0.25 * sizePx, content };
}

export const overlap = (a: Box, b: Box): boolean => a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export function viewBox(svg: string): { readonly width: number; readonly height: number } {
  const found = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg);
  return { width: Number(found?.[1]), height: Number(found?.[2]) };
}

/** All points that are drawn, hatching patterns left aside. */
export function allPoints(svg: string): Point[] {
  const list = elements(svg.replace(/<defs>.*?<\/defs>/, ''));
  return list.flatMap((drawn): Point[] => {
    const n = (key: string): number => Number(drawn.attributes[key] ?? 0);
    if (drawn.name === 'path') return pointsOf(drawn);
    if (drawn.name === 'rect')
      return [
        [n('x'), n('y')],
        [n('x') + n('width'), n('y') + n('height')],
      ];
    if (drawn.name === 'circle')
      return [
        [n('cx') - n('r'), n('cy') - n('r')],
        [n('cx') + n('r'), n('cy') + n('r')],
      ];
    return drawn.name === 'text' ? [[n('x'), n('y')]] : [];
  });
}
