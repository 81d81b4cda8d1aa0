// A table as lines of text that a person can read and a comparison can point at: head, columns, how each value is held, and a line a row.
import type { Table } from '../../src/standards/table';

/** Letters for texts, in the order in which they come. */
function legend(): { readonly letter: (text: string) => string; readonly lines: () => string[] } {
  const texts: string[] = [];
  const name = (i: number): string => String.fromCharCode('a'.charCodeAt(0) + i);
  return {
    letter: text => name(texts.includes(text) ? texts.indexOf(text) : texts.push(text) - 1),
    lines: () => texts.map((text, i) => `${name(i)} = ${text}`),
  };
}

export function linesOf({ standard, edition, table, columns, rows, exceptions = [] }: Table): readonly string[] {
  const { letter, lines } = legend();
  const valued = rows.map(
    ([row, ...values]) =>
      `${row}: ${columns
        .map(({ key, held }, i) => {
          const value = values[i] ?? null;
          return value === null
            ? '–'
            : `${value}${letter(exceptions.find(single => single.row === row && single.key === key)?.held ?? held)}`;
        })
        .join(' ')}`,
  );
  return [
    `${standard} | ${edition} | ${table}`,
    columns.map(({ key, limit, unit }) => `${key} ${limit ?? '±'} ${unit}`).join(', '),
    ...lines(),
    ...valued,
  ];
}

export interface MaterialLine {
  readonly symbol: string;
  readonly quantity: string;
  readonly low: number | null;
  readonly typ: number;
  readonly high: number | null;
  readonly unit: string;
  readonly kind: string;
  readonly held: string;
}

/** A line a material, its quantities from low by typical to high. */
export function materialLines(values: readonly MaterialLine[]): readonly string[] {
  const { letter, lines } = legend();
  const symbols = [...new Set(values.map(({ symbol }) => symbol))];
  const valued = symbols.map(
    symbol =>
      `${symbol}: ${values
        .filter(value => value.symbol === symbol)
        .map(
          ({ quantity, low, typ, high, unit, kind, held }) =>
            `${quantity} ${low ?? '–'}/${typ}/${high ?? '–'} ${unit}${kind && ` ${kind}`} ${letter(held)}`,
        )
        .join(', ')}`,
  );
  return [...lines(), ...valued];
}
