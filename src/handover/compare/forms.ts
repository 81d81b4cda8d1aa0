// Our pages on which the supplier answers, in whatever language they were written.
import { call } from '../../registry';
import { address } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import { type SourceWorkbook, WorkbookValues } from '../../sheet/workbook-values';
import { COLUMN, HEAD_ROW, SAMPLES } from '../pages/characteristics';
import { LANGUAGES, WORDS } from '../words/words';
import type { SeenGrid } from './seen';

/** The list of what was worked out and is not measured. */
export const isCalculated = (grid: SeenGrid): boolean => LANGUAGES.some(language => grid.value(0, 0) === WORDS[language].calculated.title);

export type FormKind = 'measured' | 'cover';

/** A size that was measured. */
export interface Measured {
  readonly sheet: string;
  readonly at: string;
  readonly characteristic: string;
  readonly nominal: string;
  readonly lower: string;
  readonly upper: string;
  readonly method: string;
  /** One a sample. */
  readonly results: readonly string[];
  readonly judged: string;
  readonly remark: string;
}

export function formOf(grid: SeenGrid): FormKind | undefined {
  const title = String(grid.value(0, 0) ?? '');
  if (LANGUAGES.some(language => title === WORDS[language].measured.title)) return 'measured';
  return LANGUAGES.some(language => title.startsWith(`${WORDS[language].cover.title}:`)) ? 'cover' : undefined;
}

const OUR_TITLES: ReadonlySet<string> = new Set(
  LANGUAGES.flatMap(language => {
    const { figure, variants, cautions, calculated, conversion, steps, stepRows, variantSteps, tables, data, sources } = WORDS[language];
    return [figure, variants, cautions, calculated, conversion, steps, stepRows, variantSteps, tables, data, sources].map(
      ({ title }) => title,
    );
  }),
);

/** A sheet that the hand-over added. */
export const isOurs = (grid: SeenGrid): boolean => formOf(grid) !== undefined || OUR_TITLES.has(String(grid.value(0, 0) ?? ''));

export const isResultPlace = (row: number, column: number): boolean =>
  row >= HEAD_ROW && column >= COLUMN.result && column < COLUMN.result + SAMPLES;

/** With what its formulas give where the program that saved it kept no values. */
export function workedOut(grid: SeenGrid, workbook: SourceWorkbook): SeenGrid {
  const values = new WorkbookValues(workbook, call);
  return {
    ...grid,
    value: (row, column) => {
      const { value, formula } = grid.cell(row, column);
      if (formula === undefined || value !== null) return grid.value(row, column);
      const worked = values.value(grid.sheet.name, address(row, column));
      return worked === null || worked === undefined || typeof worked === 'object' || worked === '' ? undefined : worked;
    },
  };
}

export function measuredIn(grid: SeenGrid): Measured[] {
  return Array.from({ length: Math.max(0, grid.rows - HEAD_ROW) }, (_, i) => i + HEAD_ROW).flatMap(row => {
    const text = (column: number): string => {
      const value = grid.value(row, column) ?? '';
      return cellText(String(typeof value === 'number' ? Number(value.toPrecision(9)) : value));
    };
    const results = Array.from({ length: SAMPLES }, (_, s) => text(COLUMN.result + s)).filter(result => result !== '');
    if (results.length === 0) return [];
    const { name, nominal, lower, upper, method, result, judged, remark } = COLUMN;
    return [
      {
        sheet: grid.sheet.name,
        at: address(row, result),
        characteristic: text(name),
        nominal: text(nominal),
        lower: text(lower),
        upper: text(upper),
        method: text(method),
        results,
        judged: text(judged),
        remark: text(remark),
      },
    ];
  });
}
