// Cells that called us, and calls that are left anywhere in a file: by the text of its parts, with no line of the product.
import { strFromU8, unzipSync } from 'fflate';
import { readPackage } from '../../../src/package/read';
import { address, cellPosition } from '../../../src/sheet/addresses';
import { type HandedOver, placesOf } from './handed';

export interface Called {
  readonly cells: number;
  readonly live: number;
  readonly fixed: number;
  readonly faults: readonly string[];
}

/** Each cell that called us is told once, and holds what is told of it. */
export function called(handed: HandedOver): Called {
  const live = placesOf(handed, what => what === 'live');
  const fixed = placesOf(handed, what => what === 'value, not live' || what === 'error');
  const sheets = new Map(
    readPackage(handed.copy.bytes).sheets.map(({ name, cells }) => [name, new Map(cells.map(cell => [cell.at, cell]))]),
  );
  const faults = handed.callers.flatMap(place => {
    const [sheet = '', at = ''] = place.split('!');
    const cells = sheets.get(sheet);
    if (cells === undefined) return handed.copy.dropped.some(({ words }) => words === sheet) ? [] : [`${place} is gone`];
    if (!live.has(place) && !fixed.has(place)) return [`${place} is not told`];
    // what heads a table is a word, and so is what names its rows
    const { row, column } = cellPosition(at);
    const under = Array.from({ length: 7 }, (_, i) => address(row + 1, column + i));
    const follows = [at, ...under].some(one => cells.get(one)?.formula !== undefined);
    return live.has(place) && !fixed.has(place) && !follows ? [`${place} is told as live and has no formula`] : [];
  });
  const counted = handed.callers.filter(place => live.has(place) && !fixed.has(place)).length;
  return { cells: handed.callers.length, live: counted, fixed: handed.callers.length - counted, faults };
}

const FORMULAS = /<(?:\w+:)?(f|formula\d?|definedName|calculatedColumnFormula|totalsRowFormula)\b([^>]*)>([^<]*)</g;
const TEXTS = /<(?:\w+:)?t\b[^>]*>[^<]*</g;
const unescaped = (text: string): string =>
  text
    .replace(/&lt;/g, '<')
    .replace(/&gt;/g, '>')
    .replace(/&quot;/g, '"')
    .replace(/&apos;/g, "'")
    .replace(/&amp;/g, '&');
const CALL = /(^|[^A-Za-z0-9_.\\])(_xlfn\.)?(_xldudf_)?ENCL[._][A-Z0-9._]+\s*\(/i;

/** Formulas that call us, and every mention of the name under which a file stores such a call. */
export function leftIn(file: Uint8Array): string[] {
  return Object.entries(unzipSync(file)).flatMap(([part, bytes]) => {
    if (!/\.(xml|vml|rels)$/.test(part)) return [];
    const text = strFromU8(bytes);
    const formulas = [...text.matchAll(FORMULAS)].flatMap(([, element = '', attributes = '', formula = '']) => {
      const bare = unescaped(formula)
        .replace(/"[^"]*"/g, '""')
        .replace(/'[^']*'!/g, '!');
      const isPlaceholder = /name="_xldudf_ENCL/i.test(attributes);
      return CALL.test(bare) || isPlaceholder ? [`${part} ${element}: ${formula.slice(0, 60)}`] : [];
    });
    // a program that could not read a formula keeps it as a text
    const elsewhere = text.replace(FORMULAS, '<').replace(TEXTS, '<');
    const mentions = (elsewhere.match(/_xldudf_ENCL/gi) ?? []).length;
    return formulas.length === 0 && mentions > 0 ? [`${part}: mentions a call ${mentions} times`] : formulas;
  });
}
