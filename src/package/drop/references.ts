// What formulas that stay refer to: sheets, names, functions, other workbooks. Looked for in the pieces of a formula, since a
// text may hold anything.
import { tokenize } from '@borgar/fx/xlsx';
import { address, sheetPrefix } from '../../sheet/addresses';
import type { Draft } from '../draft';
import { placeInWords, sheetsOfParts } from '../elsewhere';
import { formulaPlaces } from '../formula-places';
import type { PartLink } from '../parts';
import type { UserPackage } from '../read';
import { scanSheet } from '../scan';

export interface Referred {
  /** One sheet, or the first and the last of several. */
  readonly sheets: readonly (readonly [first: string, last: string])[];
  /** Of ranges, of tables. */
  readonly names: readonly string[];
  readonly functions: readonly string[];
  /** By their place among the other workbooks, from 1. */
  readonly books: readonly number[];
}

const QUOTED = /^'((?:[^']|'')*)'!(.*)$/s;
const BARE = /^((?:\[\d+\])?[^'![\]]*)!(.*)$/s;

export function referredBy(formula: string): Referred {
  const [sheets, names, functions, books]: [[string, string][], string[], string[], number[]] = [[], [], [], []];
  for (const { type, value } of tokenize(formula, { mergeRefs: true })) {
    if (type === 'func') functions.push(value.toUpperCase().replace(/^(_XLFN\.|_XLWS\.)+/, ''));
    if (!/^(range|structured|context)/.test(type)) continue;
    const whole = type === 'context' ? `${value}!` : value;
    const [, quoted, afterQuoted] = QUOTED.exec(whole) ?? [];
    const [, bare, afterBare] = quoted === undefined ? (BARE.exec(whole) ?? []) : [];
    const context = quoted?.replaceAll("''", "'") ?? bare ?? '';
    const [, book, sheet = ''] = /^(?:\[(\d+)\])?(.*)$/s.exec(context) ?? [];
    if (book !== undefined && book !== '0') {
      books.push(Number(book));
      continue;
    }
    if (sheet !== '') {
      const [first = sheet, last = first] = sheet.split(':');
      sheets.push([first, last]);
    }
    const rest = afterQuoted ?? afterBare ?? whole;
    if (type === 'range_named' || type === 'structured') names.push(/^[^[]*/.exec(rest)?.[0] ?? rest);
  }
  return { sheets, names, functions, books };
}

/** A formula and where it stands, in words. */
export interface StayingFormula {
  readonly at: string;
  readonly text: string;
  /** Of a defined name. */
  readonly name?: { readonly name: string; readonly sheetIndex?: number };
}

const isSheet = ({ type }: PartLink): boolean => type === 'worksheet' || type === 'xlMacrosheet' || type === 'xlIntlMacrosheet';

function* inCells(draft: Draft, part: string, sheet: string, mentions: RegExp): Generator<StayingFormula> {
  const found: StayingFormula[] = [];
  scanSheet(draft.text(part), part, {
    cell({ row, column, formula }) {
      if (formula !== undefined && mentions.test(formula.text))
        found.push({ at: `${sheetPrefix(sheet)}${address(row, column)}`, text: formula.text });
    },
  });
  yield* found;
}

/** Every formula of some parts, in cells and elsewhere, in which something may be found. */
export function* formulasIn(
  draft: Draft,
  { book, sheets }: UserPackage,
  parts: ReadonlySet<string>,
  mentions: RegExp,
): Generator<StayingFormula> {
  const on = sheetsOfParts(draft, sheets);
  for (const { target } of draft.links(book.part).filter(isSheet))
    if (parts.has(target)) yield* inCells(draft, target, on.get(target) ?? target, mentions);
  for (const place of formulaPlaces(draft, parts)) {
    if (!mentions.test(place.text)) continue;
    const { name, localSheetId } = place.element.attributes;
    const isName = place.element.local === 'definedName';
    yield {
      at: placeInWords(place, on.get(place.part)),
      text: place.text,
      ...(isName && { name: { name: name?.value ?? '', ...(localSheetId && { sheetIndex: Number(localSheetId.value) }) } }),
    };
  }
  for (const part of parts)
    if (/\.vml$/i.test(part))
      for (const [, text = ''] of draft.text(part).matchAll(/<(?:\w+:)?Fmla\w+>([^<]+)</g))
        if (mentions.test(text)) yield { at: part, text };
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
/** Whether a formula may hold one of these words, or sheets from one to another. */
export const mentioning = (words: readonly string[]): RegExp =>
  new RegExp([...new Set(words.flatMap(word => [word, word.replaceAll("'", "''")]))].map(escaped).concat(':[^!]*!').join('|'), 'i');
