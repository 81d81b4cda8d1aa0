// Places of elements in the text of a part, and edits of that text. Nothing is printed from a tree: an edit is a list of
// splices, and everything else keeps its characters.
import { SaxesParser, type SaxesAttributeNS } from 'saxes';
import { MOST_DEPTH, MOST_ELEMENTS, UnreadableFile } from './unreadable';

export type XmlAttributes = Readonly<Record<string, SaxesAttributeNS>>;

/** A start tag; `from` and `to` are where it begins and ends in the text. */
export interface StartTag {
  readonly prefix: string;
  readonly local: string;
  readonly uri: string;
  readonly attributes: XmlAttributes;
  readonly from: number;
  readonly to: number;
  readonly isEmpty: boolean;
}

export interface Walker {
  open?(tag: StartTag, depth: number): void;
  /** `inner` is where the content ends, `end` where the element does. */
  close?(tag: StartTag, inner: number, end: number, depth: number): void;
  text?(text: string): void;
}

const why = (fault: unknown): string => (fault instanceof Error ? fault.message.replace(/^\d+:\d+: /, '').replace(/\.$/, '') : 'unknown');

/** One pass over a part, which must be well-formed to its last character. */
export function walk(text: string, part: string, walker: Walker): void {
  const parser = new SaxesParser({ xmlns: true });
  const open: StartTag[] = [];
  parser.on('error', fault => {
    throw new UnreadableFile('broken', part, why(fault));
  });
  parser.on('doctype', () => {
    throw new UnreadableFile('inside', `the part "${part}" declares a document type, which no workbook needs`);
  });
  parser.on('opentag', ({ prefix, local, uri, attributes, isSelfClosing }) => {
    const to = parser.position;
    const tag = { prefix, local, uri, attributes, from: text.lastIndexOf('<', to - 1), to, isEmpty: isSelfClosing };
    if (open.push(tag) > MOST_DEPTH) throw new UnreadableFile('inside', `the part "${part}" is nested more than ${MOST_DEPTH} deep`);
    walker.open?.(tag, open.length - 1);
  });
  parser.on('closetag', () => {
    const tag = open.pop();
    const end = parser.position;
    if (tag !== undefined) walker.close?.(tag, tag.isEmpty ? tag.to : text.lastIndexOf('<', end - 1), end, open.length);
  });
  if (walker.text !== undefined) {
    const take = walker.text.bind(walker);
    parser.on('text', take);
    parser.on('cdata', take);
  }
  parser.write(text).close();
}

/** An element of a small part with its content. */
export interface XmlElement extends StartTag {
  readonly children: readonly XmlElement[];
  /** The text in it, that of its children left out. */
  readonly text: string;
  readonly inner: number;
  readonly end: number;
}

type Growing = StartTag & { children: Growing[]; text: string; inner: number; end: number };

/** The elements of a part, without those of the names in `without` and all that is in them. */
export function tree(text: string, part: string, without: ReadonlySet<string> = new Set()): XmlElement {
  const open: Growing[] = [];
  let root: Growing | undefined;
  let [count, left] = [0, 0];
  walk(text, part, {
    open(tag) {
      if (left > 0 || without.has(tag.local)) {
        left++;
        return;
      }
      const node: Growing = { ...tag, children: [], text: '', inner: tag.to, end: tag.to };
      if (++count > MOST_ELEMENTS) throw new UnreadableFile('inside', `the part "${part}" has more than ${MOST_ELEMENTS} elements`);
      open[open.length - 1]?.children.push(node);
      root ??= node;
      open.push(node);
    },
    close(_, inner, end) {
      if (left > 0) left--;
      else Object.assign(open.pop() ?? {}, { inner, end });
    },
    text(piece) {
      const node = left > 0 ? undefined : open[open.length - 1];
      if (node !== undefined) node.text += piece;
    },
  });
  if (root === undefined) throw new UnreadableFile('inside', `the part "${part}" is empty`);
  return root;
}

export const childrenOf = (element: XmlElement | undefined, local: string): readonly XmlElement[] =>
  element?.children.filter(child => child.local === local) ?? [];
export const childOf = (element: XmlElement | undefined, local: string): XmlElement | undefined =>
  element?.children.find(child => child.local === local);
export const attribute = ({ attributes }: Pick<StartTag, 'attributes'>, name: string): string | undefined => attributes[name]?.value;
/** One that has a namespace, whatever its prefix: `r:id`. */
export const attributeIn = ({ attributes }: Pick<StartTag, 'attributes'>, namespace: RegExp, local: string): string | undefined =>
  Object.values(attributes).find(found => found.local === local && namespace.test(found.uri))?.value;
/** `1` and `true` are written for yes. */
export const isSet = (tag: Pick<StartTag, 'attributes'>, name: string): boolean => /^(1|true|on)$/.test(attribute(tag, name) ?? '');

/** `x:sheet` */
export const nameOf = ({ prefix, local }: Pick<StartTag, 'prefix' | 'local'>): string => (prefix === '' ? local : `${prefix}:${local}`);
/** A start tag that content follows. */
export const unclosed = (start: string): string => start.replace(/\s*\/>$/, '>');

/** Every element under one, in the order of the text. */
export function descendants(element: XmlElement): XmlElement[] {
  return element.children.flatMap(child => [child, ...descendants(child)]);
}

/** A place in the text with what stands there from now on. */
export interface Splice {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

/** Content behind what an element has, `start` being its start tag from now on. */
export function appendedTo(text: string, element: StartTag & { readonly inner: number }, content: string, start?: string): Splice[] {
  const { from, to, inner, isEmpty } = element;
  const before = text.slice(from, to);
  if (isEmpty) return [{ from, to, text: `${unclosed(start ?? before)}${content}</${nameOf(element)}>` }];
  return [...(start === undefined ? [] : [{ from, to, text: start }]), { from: inner, to: inner, text: content }];
}

const inOrder = (splices: readonly Splice[]): Splice[] => [...splices].sort((a, b) => a.from - b.from || a.to - b.to);

export function spliced(text: string, splices: readonly Splice[]): string {
  const out: string[] = [];
  let at = 0;
  for (const { from, to, text: instead } of inOrder(splices)) {
    if (from < at || to < from || to > text.length) throw new RangeError(`two edits meet at ${from}`);
    out.push(text.slice(at, from), instead);
    at = to;
  }
  out.push(text.slice(at));
  return out.join('');
}

/** The splices that bring the text back. */
export function undoing(text: string, splices: readonly Splice[]): Splice[] {
  let grown = 0;
  return inOrder(splices).map(({ from, to, text: instead }) => {
    const back = { from: from + grown, to: from + grown + instead.length, text: text.slice(from, to) };
    grown += instead.length - (to - from);
    return back;
  });
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  '\t': '&#9;',
  '\n': '&#10;',
  '\r': '&#13;',
};
const entity = (character: string): string => ENTITIES[character] ?? character;

/** As content of an element. */
export const escapedText = (text: string): string => text.replace(/[&<>\r]/g, entity);
const escapedAttribute = (text: string): string => text.replace(/[&<>"\t\n\r]/g, entity);

/** A start tag with attributes set or, where undefined, taken out; the others keep their characters. */
export function withAttributes(tag: string, changes: Readonly<Record<string, string | undefined>>): string {
  const left = new Map(Object.entries(changes));
  const written = (name: string, value: string | undefined): string => (value === undefined ? '' : ` ${name}="${escapedAttribute(value)}"`);
  const kept = tag.replace(/\s+([^\s=<>/"']+)\s*=\s*(?:"[^"]*"|'[^']*')/g, (whole, name: string) => {
    if (!left.has(name)) return whole;
    const value = left.get(name);
    left.delete(name);
    return written(name, value);
  });
  const added = [...left].map(([name, value]) => written(name, value)).join('');
  return added === '' ? kept : kept.replace(/\s*\/?>$/, end => `${added}${end}`);
}

/** More at the end of an element, with attributes set as by `withAttributes`. */
export function atEnd(
  text: string,
  element: XmlElement,
  content: string,
  attributes: Readonly<Record<string, string | undefined>> = {},
): Splice[] {
  const start = withAttributes(text.slice(element.from, element.to), attributes);
  if (element.isEmpty) return [{ from: element.from, to: element.end, text: `${unclosed(start)}${content}</${nameOf(element)}>` }];
  return [
    { from: element.from, to: element.to, text: start },
    { from: element.inner, to: element.inner, text: content },
  ];
}

/** Behind the last of the children that the format asks to stand before. */
export function placeAfter(root: XmlElement, before: readonly string[]): number {
  return root.children.filter(({ local }) => before.includes(local)).pop()?.end ?? root.to;
}
