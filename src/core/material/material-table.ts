// One value of a material, or all of them with range and source.
import { MATERIAL_RANGES, type MaterialRange, type MaterialRanges, type StrengthRange } from '../../standards/material-ranges';
import { choice } from '../read/params';
import { MATERIAL_QUANTITIES, materialValue, type Material } from './material';
import { START_LIMITS, START_LIMITS_HELD } from './start-limits';

export const QUANTITY = choice(
  'quantity',
  Object.fromEntries(Object.keys(MATERIAL_QUANTITIES).map(word => [word, []])) as unknown as Record<string, readonly string[]>,
);

/**
 * One value of a material, in the core unit of its quantity.
 * material symbol, or own card; quantity by its word.
 * MATERIAL: a quantity that is not held for the material is refused.
 * Source: collected ranges by ISO 1043 symbol (read in secondary copies or from memory; see MATERIAL.TABLE).
 */
export function materialWord(material: Material, quantity: string): number {
  return materialValue(material, quantity);
}

const TITLES: Readonly<Record<keyof MaterialRanges, string>> = {
  density: 'density',
  shrinkage: 'shrinkage',
  strength: 'strength',
  modulus: 'modulus',
  strain: 'strain',
  expansion: 'expansion',
  diffusivity: 'diffusivity',
  melt: 'melt',
  mould: 'mould',
  eject: 'eject',
  threadShare: 'thread share',
  odRatio: 'od ratio',
};

const HEADER = ['quantity', 'typical', 'low', 'high', 'unit', 'yield or break', 'how held'];

function rows(ranges: MaterialRanges): (string | number)[][] {
  return (Object.entries(ranges) as [keyof MaterialRanges, MaterialRange | StrengthRange][]).map(([quantity, range]) => [
    TITLES[quantity],
    range.typ,
    range.low ?? '–',
    range.high ?? '–',
    range.unit === '1' ? '–' : range.unit,
    'strengthKind' in range ? range.strengthKind : '–',
    range.held,
  ]);
}

const limitRows = (symbol: string): (string | number)[][] =>
  Object.entries(START_LIMITS[symbol] ?? {}).map(([quantity, value]) => [quantity, value, '–', '–', '–', '–', START_LIMITS_HELD]);

/**
 * The ranges of one material; of all, with their symbol in front, where none is named. An own card has values only.
 * material symbol, own card, or none.
 * MATERIAL.TABLE: a material that is not held is refused.
 * Source: collected ranges by ISO 1043 symbol (each row says how).
 */
export function materialTable(material: Material | undefined): (string | number)[][] {
  if (material === undefined) {
    return [
      ['material', ...HEADER],
      ...Object.entries(MATERIAL_RANGES).flatMap(([symbol, ranges]) =>
        [...rows(ranges), ...limitRows(symbol)].map(row => [symbol, ...row]),
      ),
    ];
  }
  const held = (MATERIAL_RANGES as Readonly<Record<string, MaterialRanges>>)[material.name];
  if (held !== undefined) return [HEADER, ...rows(held), ...limitRows(material.name)];
  return [
    HEADER,
    ...[...material.values].map(([quantity, value]) => [
      quantity,
      value,
      '–',
      '–',
      MATERIAL_QUANTITIES[quantity]?.unit || '–',
      '–',
      'own card',
    ]),
  ];
}
