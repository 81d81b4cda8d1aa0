// The edits of one cell in the text of its sheet. What is not named, its format and its extensions too, keeps its characters.
import { LONGEST_FORMULA } from '../sheet/formula';
import type { CellLook } from './cell-styles';
import type { StoredValue } from './cells';
import { toStored } from './rich-text';
import type { CellPiece, ScannedCell } from './scan';
import { escapedText, type Splice, withAttributes } from './xml';

export interface NewFormula {
  /** In the form in which a file stores it, without equals sign. */
  readonly text: string;
  /** It fills the cells that the one filled that it stands for. */
  readonly keepsArea?: true;
}

/** One formula for many cells. */
export interface SharedFormula {
  readonly index: number;
  /** The first of the cells has the text, and the range that holds them all. */
  readonly first?: { readonly text: string; readonly range: string };
}

export interface CellMark extends CellLook {
  /** Words at the cell, for a cell that has none. */
  readonly note?: string;
}

export interface CellChange {
  /** What the cell shows. */
  readonly value: StoredValue;
  /** The formula behind it stays, goes, or is another. */
  readonly formula: 'kept' | 'none' | NewFormula;
  readonly mark?: CellMark;
}

/** In a cell, or at it. */
export const LONGEST_TEXT = 32_767;

interface WrittenValue {
  readonly type: string | undefined;
  readonly xml: string;
}

const spaced = (text: string): string => (/^\s|\s$|[\n\t]/.test(text) ? ' xml:space="preserve"' : '');
const prefixed = (prefix: string): string => (prefix === '' ? '' : `${prefix}:`);

function writtenValue(value: StoredValue, hasFormula: boolean, prefix: string, at: string): WrittenValue {
  const p = prefixed(prefix);
  const plain = (type: string | undefined, text: string): WrittenValue => ({ type, xml: `<${p}v>${escapedText(text)}</${p}v>` });
  switch (typeof value) {
    case 'undefined':
      return { type: undefined, xml: '' };
    case 'number':
      if (!Number.isFinite(value)) throw new RangeError(`${at}: ${value} is not a number that a cell can hold`);
      return plain(undefined, String(value));
    case 'boolean':
      return plain('b', value ? '1' : '0');
    case 'object':
      return plain('e', value.error);
    case 'string': {
      if (value.length > LONGEST_TEXT) throw new RangeError(`${at}: the text has ${value.length} characters; a cell holds ${LONGEST_TEXT}`);
      const text = escapedText(toStored(value));
      return hasFormula
        ? { type: 'str', xml: `<${p}v${spaced(value)}>${text}</${p}v>` }
        : { type: 'inlineStr', xml: `<${p}is><${p}t${spaced(value)}>${text}</${p}t></${p}is>` };
    }
  }
}

export function writtenFormula(text: string, prefix: string, at: string): string {
  if (text.length > LONGEST_FORMULA - 1)
    throw new RangeError(`${at}: the formula has ${text.length + 1} characters; a cell holds ${LONGEST_FORMULA}`);
  if (/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/u.test(text))
    throw new RangeError(`${at}: the formula has a character that no file can hold`);
  const p = prefixed(prefix);
  return `<${p}f${spaced(text)}>${escapedText(text)}</${p}f>`;
}

export interface NewCell {
  readonly value: StoredValue;
  readonly formula: CellChange['formula'] | SharedFormula;
}

function newFormula(formula: NewFormula | SharedFormula, prefix: string, at: string): string {
  if ('text' in formula) return writtenFormula(formula.text, prefix, at);
  const { index, first } = formula;
  const p = prefixed(prefix);
  if (first === undefined) return `<${p}f t="shared" si="${index}"/>`;
  return `<${p}f t="shared" ref="${first.range}" si="${index}"${writtenFormula(first.text, prefix, at).slice(p.length + 2)}`;
}

/** A cell that the sheet has not had. */
export function newCell(at: string, { value, formula }: NewCell, prefix: string, style: string | undefined): string {
  const isFormula = typeof formula === 'object';
  const { type, xml } = writtenValue(value, isFormula, prefix, at);
  const p = prefixed(prefix);
  const said = `${style === undefined ? '' : ` s="${style}"`}${type === undefined ? '' : ` t="${type}"`}`;
  return `<${p}c r="${at}"${said}>${isFormula ? newFormula(formula, prefix, at) : ''}${xml}</${p}c>`;
}

/** Another formula in the start tag of the one before, which names its area. */
function inArea(source: string, { tag }: CellPiece, text: string, at: string): string {
  const start = source.slice(tag.from, tag.to).replace(/\s*\/>$/, '>');
  const written = writtenFormula(text, tag.prefix, at);
  return start + written.slice(written.indexOf('>') + 1);
}

/** `style` is another format, where the cell gets one. */
export function cellSplices(source: string, cell: ScannedCell, at: string, { value, formula }: CellChange, style?: string): Splice[] {
  const { tag, formula: before } = cell;
  const keeps = formula === 'kept' || (typeof formula === 'object' && formula.keepsArea === true);
  if (keeps && before === undefined) throw new RangeError(`${at}: there is no formula to keep`);
  const written = writtenValue(value, formula !== 'none', tag.prefix, at);
  const start = withAttributes(source.slice(tag.from, tag.to), {
    t: written.type,
    vm: undefined,
    ...(!keeps && { cm: undefined }),
    ...(style !== undefined && { s: style }),
  });
  const text =
    formula === 'kept' || formula === 'none'
      ? ''
      : keeps && before
        ? inArea(source, before, formula.text, at)
        : writtenFormula(formula.text, tag.prefix, at);
  if (tag.isEmpty) {
    const content = text + written.xml;
    const name = `${prefixed(tag.prefix)}${tag.local}`;
    return [{ from: tag.from, to: tag.to, text: content === '' ? start : `${start.replace(/\s*\/>$/, '>')}${content}</${name}>` }];
  }
  const splices: Splice[] = [{ from: tag.from, to: tag.to, text: start }];
  const afterFormula = before?.end ?? tag.to;
  if (formula !== 'kept') splices.push({ from: before?.tag.from ?? tag.to, to: afterFormula, text });
  const [shown, other] = [cell.value, cell.ownText].filter(piece => piece !== undefined);
  splices.push({ from: shown?.tag.from ?? afterFormula, to: shown?.end ?? afterFormula, text: written.xml });
  if (other !== undefined) splices.push({ from: other.tag.from, to: other.end, text: '' });
  return splices.filter(({ from, to, text: instead }) => source.slice(from, to) !== instead);
}
