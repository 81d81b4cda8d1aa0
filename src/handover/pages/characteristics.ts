// Characteristics, a plan for measuring: sizes of the part with limits, method, room for five samples or cavities, and a judgement.
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import { address } from '../../sheet/addresses';
import { cellText } from '../../sheet/cell-text';
import type { DataSheet } from '../compile/data-sheet';
import type { Limit } from '../compile/joint/joint-cells';
import type { Method } from '../compile/measuring';
import { digitsByTolerance } from './digits-by-tolerance';
import { liveCell } from './live-cell';
import type { PageWords } from '../words/words';

export const HEAD_ROW = 4;
/** Columns of the table, counted from 0. */
export const COLUMN = { name: 1, nominal: 2, lower: 3, upper: 4, unit: 5, method: 6, result: 7, judged: 12, remark: 13 } as const;
/** Of results, side by side. */
export const SAMPLES = 5;
const WIDTHS = [5, 16.5, 11, 7.5, 7.5, 6.5, 15, 6, 6, 6, 6, 6, 7.5, 13.5];
/** A hand writes into it. */
const WRITING_PT = 21;
const CAVITY_ROW = HEAD_ROW - 2;
/** The number with the mark of those whose tolerance counts. */
const CRITICAL = '0" C"';

/** A size of the part. */
export interface Characteristic {
  readonly name: string;
  /** Where its nominal stands. */
  readonly nominal: Limit;
  readonly lower?: Limit;
  readonly upper?: Limit;
  readonly toleranceMm?: number;
  readonly unit: string;
  readonly method: Method;
}

/** Sizes under a heading, where there are several variants. */
export interface CharacteristicGroup {
  readonly heading?: string;
  readonly sizes: readonly Characteristic[];
}

export interface MeasuringPlan {
  readonly plan: SheetPlan;
  /** The number of each size, group by group. */
  readonly numbers: readonly (readonly number[])[];
}

/** @param more a sentence on what is not among them. */
export function characteristics(
  name: string,
  title: string,
  groups: readonly CharacteristicGroup[],
  more: string,
  data: DataSheet,
  { measured: words }: PageWords,
): MeasuringPlan {
  const cells: PlanCell[] = [
    { at: 'A1', role: 'title', value: words.title },
    { at: 'A2', role: 'note', value: [words.note(title), more].filter(text => text !== '').join(' ') },
    { at: address(CAVITY_ROW, COLUMN.method), role: 'label', value: words.cavity },
    ...samples(COLUMN.result).map((c): PlanCell => ({ at: address(CAVITY_ROW, c), role: 'input', value: '' })),
    ...words.headers.map((value, c): PlanCell => ({ at: address(HEAD_ROW - 1, c), role: 'header', value })),
  ];
  const methods = data.choices(words.methodWords, [...Object.values(words.methods), ...words.otherMethods]);
  let [r, no] = [HEAD_ROW, 0];
  const numbers = groups.map(({ heading, sizes }) => {
    if (heading !== undefined) cells.push({ at: address(r++, 0), role: 'heading', value: cellText(heading) });
    return sizes.map(size => {
      cells.push(...row(size, r++, ++no, words));
      return no;
    });
  });
  if (no === 0) cells.push({ at: address(r, COLUMN.name), role: 'note', value: words.none });
  const plan: SheetPlan = {
    name,
    widths: WIDTHS,
    frozenRows: HEAD_ROW,
    cells,
    merged: [0, 1].map(line => `${address(line, 0)}:${address(line, WIDTHS.length - 1)}`),
    validations:
      no === 0
        ? []
        : [{ range: `${address(HEAD_ROW, COLUMN.method)}:${address(r - 1, COLUMN.method)}`, words: words.methodWords, list: methods }],
    writingPt: WRITING_PT,
    print: { landscape: true, repeatRows: HEAD_ROW, isScaled: true },
  };
  return { plan, numbers };
}

const samples = (first: number): number[] => Array.from({ length: SAMPLES }, (_, i) => first + i);

function row(size: Characteristic, r: number, no: number, words: PageWords['measured']): PlanCell[] {
  const at = (c: number): string => address(r, c);
  const format = digitsByTolerance(size);
  const limit = (c: number, given: Limit | undefined): PlanCell =>
    given === undefined ? { at: at(c), role: 'input', value: '' } : liveCell(r, c, given, format);
  return [
    { at: at(0), role: 'label', value: no, ...(size.toleranceMm !== undefined && { format: CRITICAL }) },
    { at: at(COLUMN.name), role: 'label', value: cellText(size.name) },
    liveCell(r, COLUMN.nominal, size.nominal, format),
    limit(COLUMN.lower, size.lower),
    limit(COLUMN.upper, size.upper),
    { at: at(COLUMN.unit), role: 'unit', value: size.unit },
    { at: at(COLUMN.method), role: 'input', value: words.methods[size.method] },
    ...samples(COLUMN.result).map((c): PlanCell => ({ at: at(c), role: 'input', value: '' })),
    { at: at(COLUMN.judged), role: 'result', formula: judged(r, words), value: '' },
    { at: at(COLUMN.remark), role: 'input', value: '' },
  ];
}

/** A limit that is blank asks nothing; without any there is nothing to judge by. */
function judged(r: number, words: PageWords['measured']): string {
  const results = `${address(r, COLUMN.result)}:${address(r, COLUMN.result + SAMPLES - 1)}`;
  const [lower, upper] = [address(r, COLUMN.lower), address(r, COLUMN.upper)];
  const isWithin = `AND(OR(${lower}="",MIN(${results})>=${lower}-1E-9),OR(${upper}="",MAX(${results})<=${upper}+1E-9))`;
  const word = `IF(AND(${lower}="",${upper}=""),"${words.noLimits}",IF(${isWithin},"${words.ok}","${words.notOk}"))`;
  return `=IF(COUNTA(${results})=0,"",IF(COUNT(${results})=COUNTA(${results}),${word},"${words.noNumber}"))`;
}
