// Materials: the built-in ranges by ISO 1043 symbol, or the user's own card.
import { MATERIAL_RANGES, type MaterialRange, type MaterialRanges, type StrengthRange } from '../../standards/material-ranges';
import { NOTHING_READ } from '../card';
import { isBlank, isCellError, shown } from '../read/cells';
import { numeric } from '../read/params';
import * as Q from '../read/quantity';
import type { Quantity } from '../read/quantity';
import { codeOf, errorWords, notInTable, quoted, Refused, wrongInput } from '../refuse';
import { START_LIMITS } from './start-limits';

/** What a card of a material can hold, with the word a user types. */
export const MATERIAL_QUANTITIES: Readonly<Record<string, Quantity>> = {
  density: Q.DENSITY,
  shrinkage: Q.SHARE,
  strength: Q.STRESS,
  modulus: Q.STRESS,
  strain: Q.SHARE,
  expansion: Q.EXPANSION,
  diffusivity: Q.DIFFUSIVITY,
  melt: Q.TEMPERATURE,
  mould: Q.TEMPERATURE,
  eject: Q.TEMPERATURE,
  poisson: Q.RATIO,
  'thread share': Q.SHARE,
  'od ratio': Q.RATIO,
  'sink limit': Q.SHARE,
  'tightness limit': Q.RATIO,
  'tightness review': Q.RATIO,
};

export interface Material {
  readonly name: string;
  /** Quantity -> value in core units. */
  readonly values: ReadonlyMap<string, number>;
}

/** Blanks and hyphens are forgiven: PA 6, PA66 GF30, PC/ABS. */
const normal = (symbol: string): string =>
  symbol
    .toUpperCase()
    .replace(/[\s\u00a0_-]+/g, '')
    .replace('/', '+')
    .replace(/^(ABS\+PC|PC\+?ABS)$/, 'PC+ABS')
    .replace(/^HDPE$/, 'PEHD');

export const MATERIAL_SYMBOLS: readonly string[] = Object.keys(MATERIAL_RANGES);

const SYMBOL_OF: ReadonlyMap<string, string> = new Map(MATERIAL_SYMBOLS.map(symbol => [normal(symbol), symbol]));

export const isMaterial = (text: string): boolean => SYMBOL_OF.has(normal(text));

/** Those that were asked for: each is read once. */
const HELD = new Map<string, Material>();

function held(symbol: string): Material {
  const ranges: Readonly<Record<string, MaterialRange>> = MATERIAL_RANGES[symbol as keyof typeof MATERIAL_RANGES];
  const values = new Map([
    ...Object.entries(ranges).map(([quantity, { typ }]) => [WORDS[quantity] ?? quantity, typ] as const),
    ...Object.entries(START_LIMITS[symbol] ?? {}),
  ]);
  const material = { name: symbol, values };
  HELD.set(symbol, material);
  return material;
}

/** A symbol, or an own card as text: "strength 40 MPa; thread share 0.8". */
export function parseMaterial(text: string): Material {
  const symbol = SYMBOL_OF.get(normal(text));
  if (symbol !== undefined) return HELD.get(symbol) ?? held(symbol);
  if (quantityWord(text) === undefined)
    throw notInTable(`${quoted(text)} is not a material held here; held are ${MATERIAL_SYMBOLS.join(', ')}; or give your own card`);
  return ownCard(
    text
      .split(';')
      .filter(part => part.trim() !== '')
      .map(part => {
        const word = quantityWord(part);
        if (word === undefined)
          throw wrongInput(`${quoted(part.trim())} does not begin with one of ${Object.keys(MATERIAL_QUANTITIES).join(', ')}`);
        return [word, part.trim().slice(word.length)];
      }),
  );
}

const WORDS: Readonly<Record<string, string>> = { threadShare: 'thread share', odRatio: 'od ratio' };

const quantityWord = (text: string): string | undefined =>
  Object.keys(MATERIAL_QUANTITIES).find(word => text.trim().toLowerCase().startsWith(`${word} `));

/** The user's own card: rows of quantity and value. */
export function ownCard(rows: readonly (readonly unknown[])[]): Material {
  const values = new Map<string, number>();
  rows.forEach(([name, value], i) => {
    const error = [name, value].find(isCellError);
    if (error !== undefined) throw new Refused(codeOf(error), `row ${i + 1} ${errorWords(error)}`);
    if (isBlank(name) || isBlank(value)) return;
    const word = String(name).trim().toLowerCase();
    const quantity = Object.keys(MATERIAL_QUANTITIES).includes(word) ? MATERIAL_QUANTITIES[word] : undefined;
    if (quantity === undefined)
      throw wrongInput(`${shown(name)} is not a quantity of a material card; say ${Object.keys(MATERIAL_QUANTITIES).join(', ')}`);
    values.set(word, numeric(quantity).read(value, NOTHING_READ));
  });
  return { name: 'own card', values };
}

const DRY = / conditioned$/;

/** Family and, where it takes up water, the same polymer conditioned. */
function strengthsOf(symbol: string): readonly StrengthRange[] {
  const dry = symbol.replace(DRY, '');
  const held: Readonly<Record<string, MaterialRanges>> = MATERIAL_RANGES;
  return [held[dry]?.strength, held[`${dry} conditioned`]?.strength].filter(range => range !== undefined);
}

/**
 * What an argument takes: of a strength the low end of the family, conditioned where it takes up water, and never one at break;
 * of the rest the start value.
 */
export function safeValue(material: Material, quantity: string): number {
  const strengths = quantity === 'strength' ? strengthsOf(material.name) : [];
  if (strengths.length === 0) return materialValue(material, quantity);
  if (strengths.some(({ strengthKind }) => strengthKind === 'break'))
    throw notInTable(
      `the strength of ${material.name} is held at break; an estimate needs its yield or an allowable stress: give the value`,
    );
  return Math.min(...strengths.map(({ low, typ }) => low ?? typ));
}

/** Which strength that is. */
export const strengthWords = ({ name }: Material): string | undefined => {
  const { length } = strengthsOf(name);
  return length === 0 ? undefined : `yield, low end of the family${length === 1 ? '' : ', conditioned'}`;
};

/** Lowest start value of its range; undefined if none is held. */
export function lowestOdRatio(material: Material): number | undefined {
  const held: Readonly<Record<string, MaterialRanges>> = MATERIAL_RANGES;
  return held[material.name]?.odRatio?.low ?? undefined;
}

export function materialValue(material: Material, quantity: string): number {
  const value = material.values.get(quantity);
  if (value === undefined) throw notInTable(`${quantity} is not held for ${material.name}; give the value, or a card with it`);
  return value;
}
