// Which sizes stand among the characteristics, and what is only calculated.
import { cellPosition, address, fixedCell } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import { headingsOf, namedBy, type SeenSheet } from '../../sheet/headings';
import { CARDS } from '../../registry';
import type { WorkbookValues } from '../../sheet/workbook-values';
import type { LiveResult } from '../compile/conversion';
import type { ChosenVariant, Limit, MeasuredSize } from '../compile/joint/joint-cells';
import { SIZES_OF_CALLS } from '../compile/measuring';
import { MOST_CALCULATED, type NamedResult } from './calculated';
import type { Characteristic, CharacteristicGroup } from './characteristics';

/** Sizes of single calls that find room on a page. */
const MOST_OF_CALLS = 28;
const LONGEST_NAME = 80;

export interface PartSizes {
  readonly groups: readonly CharacteristicGroup[];
  /** Of each chosen variant its sizes, in the order of the groups. */
  readonly ofVariants: readonly { readonly variant: ChosenVariant; readonly names: readonly string[] }[];
  /** All that could be measured, by name. */
  readonly names: readonly string[];
  readonly left: number;
  readonly calculated: readonly NamedResult[];
  readonly calculatedLeft: number;
}

function seen(source: WorkbookValues, sheet: string): SeenSheet {
  return {
    value: (row, column) => {
      const value = source.value(sheet, address(row, column));
      return value === null || value === undefined || value === '' || typeof value === 'object' ? undefined : value;
    },
    isWorkedOut: (row, column) => {
      const at = address(row, column);
      // the first row of a table names its columns
      return (source.rowOfTable(sheet, at) ?? (source.cell(sheet, at)?.formula === undefined ? 0 : 1)) > 0;
    },
  };
}

/** What is too short to say what a value is. */
const SHORT = 2;

/** What nothing on its sheet names is called after the function that gives it. */
function nameOf(source: WorkbookValues, { sheet, at, name, call = '' }: LiveResult, of: string): string {
  const { row, column } = cellPosition(at);
  const seenName = namedBy(headingsOf(seen(source, sheet), row, column), of);
  const result = CARDS.get(call)?.result;
  const given = result?.shape === 'number' ? result.name : undefined;
  const label =
    seenName === undefined
      ? [given, `${sheet} ${at}`].filter(part => part !== undefined).join(', ')
      : given !== undefined && seenName.length <= SHORT
        ? `${given} ${of} ${seenName}`
        : seenName;
  return cellText(name === undefined || label.includes(name) ? label : `${label}: ${name}`).slice(0, LONGEST_NAME);
}

const sizeOfVariant = ({ name, formula, value, lower, upper, unit, method, toleranceMm }: MeasuredSize): Characteristic => ({
  name,
  nominal: { formula: formula ?? '', value },
  ...(lower !== undefined && { lower }),
  ...(upper !== undefined && { upper }),
  ...(toleranceMm !== undefined && { toleranceMm }),
  unit,
  method,
});

function sizeOfCall(name: string, { sheet, at, value, unit, call = '', tolerance }: LiveResult): Characteristic[] {
  const measuring = SIZES_OF_CALLS[call];
  if (measuring === undefined || typeof value !== 'number') return [];
  const { row, column } = cellPosition(at);
  const nominal = { formula: fixedCell(sheet, row, column), value };
  const aside = (sign: '+' | '-'): Limit | undefined =>
    typeof tolerance?.value !== 'number'
      ? undefined
      : {
          formula: `${nominal.formula}${sign}${tolerance.formula}`,
          value: sign === '+' ? value + tolerance.value : value - tolerance.value,
        };
  const lower = measuring.limit === 'lower' ? nominal : aside('-');
  const upper = measuring.limit === 'upper' ? nominal : aside('+');
  return [
    {
      name,
      nominal,
      ...(lower !== undefined && { lower }),
      ...(upper !== undefined && { upper }),
      ...(typeof tolerance?.value === 'number' && { toleranceMm: tolerance.value }),
      unit,
      method: measuring.method,
    },
  ];
}

const spelled = (name: string): string => name.trim().toLowerCase();

/**
 * @param asked names of what is to be measured; without them all sizes of the chosen variants, or of single calls where there are none.
 * @param of between the heading of a column and the name of a row.
 */
export function partSizes(
  source: WorkbookValues,
  results: readonly LiveResult[],
  variants: readonly ChosenVariant[],
  asked: readonly string[] | undefined,
  of: string,
): PartSizes {
  const wanted = asked && new Set(asked.map(spelled));
  const isWanted = ({ name }: { readonly name: string }): boolean => wanted === undefined || wanted.has(spelled(name));
  const measurable = results.filter(({ call = '', value }) => call in SIZES_OF_CALLS && typeof value === 'number');
  const calls = measurable.slice(0, MOST_CALCULATED).map(result => ({ result, sizes: sizeOfCall(nameOf(source, result, of), result) }));
  const ofVariants = variants.map(variant => ({ variant, sizes: variant.measured.map(sizeOfVariant).filter(isWanted) }));
  const isOfCalls = wanted !== undefined || variants.length === 0;
  const shownCalls = calls.filter(({ sizes }) => isOfCalls && sizes.some(isWanted)).slice(0, MOST_OF_CALLS);
  const groups: CharacteristicGroup[] = [
    ...ofVariants.map(({ variant, sizes }) => ({ ...(variants.length > 1 && { heading: variant.label }), sizes })),
    ...(shownCalls.length === 0 ? [] : [{ sizes: shownCalls.flatMap(({ sizes }) => sizes) }]),
  ];
  const shown = new Set(shownCalls.map(({ result }) => result));
  const calculated = results.filter(result => !shown.has(result));
  return {
    groups,
    ofVariants: ofVariants.map(({ variant, sizes }) => ({ variant, names: sizes.map(({ name }) => name) })),
    names: [...new Set([...variants.flatMap(({ measured }) => measured), ...calls.flatMap(({ sizes }) => sizes)].map(({ name }) => name))],
    left: isOfCalls ? measurable.length - shownCalls.length : 0,
    calculated: calculated.slice(0, MOST_CALCULATED).map(result => ({ name: nameOf(source, result, of), result })),
    calculatedLeft: Math.max(0, calculated.length - MOST_CALCULATED),
  };
}
