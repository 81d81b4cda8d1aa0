// Our pages on which the supplier answers, in whatever language they were written.
import type { Cell } from '../../core/kinds';
import { address, type Place } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import { typedText } from '../../sheet/formula';
import type { WorkbookValues } from '../../sheet/workbook-values';
import { COLUMN, HEAD_ROW, SAMPLES } from '../pages/characteristics';
import { LANGUAGES } from '../words/language';
import { WORDS } from '../words/words';
import type { SeenCell, SeenGrid } from './seen';
import { resultOf } from './typed-number';

/** The list of what was worked out and is not measured. */
export const isCalculated = (grid: SeenGrid): boolean => LANGUAGES.some(language => grid.value(0, 0) === WORDS[language].calculated.title);

export type FormKind = 'measured' | 'cover';

/** Of one sample. */
export interface MeasuredResult {
  readonly said: string;
  /** The text that stands for it, which no formula takes for a number. */
  readonly typed?: string;
  /** The formula that gives it. */
  readonly formula?: string;
}

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
  readonly results: readonly MeasuredResult[];
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

/**
 * @param after what came back, worked out anew.
 * @param there where a cell that was sent is now.
 */
export function measuredIn(grid: SeenGrid, after: WorkbookValues, there: (row: number, column: number) => Place | undefined): Measured[] {
  // a column that was taken out holds nothing
  const columnOf = (sent: number): number => there(HEAD_ROW - 1, sent)?.column ?? grid.columns;
  return Array.from({ length: Math.max(0, grid.rows - HEAD_ROW) }, (_, i) => i + HEAD_ROW).flatMap(row => {
    const cell = (sent: number): SeenCell => grid.cell(row, columnOf(sent));
    const valueOf = (sent: number): Cell | null => {
      const { value, formula, said } = cell(sent);
      const worked = formula === undefined ? undefined : after.value(grid.sheet.name, address(row, columnOf(sent)));
      return said ?? (worked === undefined || worked === null || typeof worked === 'object' ? value : worked);
    };
    const text = (sent: number): string => textOf(valueOf(sent));
    const results = Array.from({ length: SAMPLES }, (_, s): MeasuredResult => {
      const { formula, said } = cell(COLUMN.result + s);
      const value = valueOf(COLUMN.result + s);
      if (formula !== undefined)
        return { said: textOf(value ?? formula), ...(value !== null && { formula: cellText(typedText(formula)) }) };
      const { means } = said === undefined ? resultOf(value) : {};
      return means === undefined ? { said: textOf(value) } : { said: textOf(means), typed: textOf(value) };
    }).filter(({ said }) => said !== '');
    if (results.length === 0) return [];
    const { name, nominal, lower, upper, method, result, judged, remark } = COLUMN;
    return [
      {
        sheet: grid.sheet.name,
        at: address(row, columnOf(result)),
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

const textOf = (value: Cell | null | undefined): string =>
  cellText(String(typeof value === 'number' ? Number(value.toPrecision(9)) : (value ?? '')));
