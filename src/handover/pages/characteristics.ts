// Characteristics: what is to be measured or judged, each with its balloon number, requirement, limits and room for the result.
import { isState } from '../../core/check/check';
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import type { LiveResult } from '../compile/conversion';
import type { DataSheet } from '../compile/data-sheet';
import { address, cellPosition, fixedCell } from '../../sheet/addresses';
import type { Limit } from '../compile/joint/joint-cells';
import { labelBeside } from '../compile/labels';
import { digitsOf } from '../compile/digits';
import { withStates } from '../../sheet/ranges';
import type { WorkbookValues } from '../../sheet/workbook-values';

export const CHARACTERISTICS_TITLE = 'Characteristics';

/** So many can be measured; the rest stands on its sheet. */
const MOST_NUMBERS = 40;
const MOST_STATES = 60;
const HEADERS = [
  'No.',
  'characteristic',
  'where',
  'requirement',
  'lower limit',
  'upper limit',
  'unit',
  'method',
  'result',
  'OK / not OK',
  'remark',
];
export const HEAD_ROW = 4;
/** Columns of the table, counted from 0. */
export const COLUMN = { name: 1, requirement: 3, lower: 4, upper: 5, method: 7, result: 8, judged: 9, remark: 10 } as const;
const METHODS = [
  'pin gauge',
  'plug gauge',
  'calliper',
  'depth gauge',
  'height gauge',
  'optical',
  'coordinate measuring',
  'tomography',
  'section cut',
  'torque test',
  'pull test',
  'by eye',
  'as agreed',
];

export interface Characteristics {
  readonly plan: SheetPlan;
  readonly count: number;
  /** What found no room. */
  readonly left: number;
}

export function characteristics(
  name: string,
  title: string,
  source: WorkbookValues,
  results: readonly LiveResult[],
  data: DataSheet,
): Characteristics {
  const states = results.filter(({ value }) => isState(value));
  // a value of a call of its own comes before the values of a table
  const numbers = results.filter(({ value }) => typeof value === 'number');
  const shown = [
    ...[...numbers.filter(one => one.name === undefined), ...numbers.filter(one => one.name !== undefined)].slice(0, MOST_NUMBERS),
    ...states.slice(0, MOST_STATES),
  ];
  const taken = new Set(results.map(({ sheet, at }) => `${sheet}!${at}`));
  const labelOf = ({ sheet, at, name }: LiveResult): string =>
    [labelBeside(source, sheet, at, place => !taken.has(`${sheet}!${place}`)) ?? `${sheet} ${at}`, name ?? '']
      .filter(text => text !== '')
      .join(': ');
  const cells: PlanCell[] = [
    { at: 'A1', role: 'title', value: CHARACTERISTICS_TITLE },
    {
      at: 'A2',
      role: 'note',
      value: `${title}. Requirements follow the sheets. Fill in limits where none are given, the method, and what was measured.`,
    },
    ...HEADERS.map((header, c): PlanCell => ({ at: address(HEAD_ROW - 1, c), role: 'header', value: header })),
  ];
  const rows = shown.map((result, i) => ({ result, r: HEAD_ROW + i }));
  for (const { result, r } of rows) cells.push(...row(result, r, r - HEAD_ROW + 1, labelOf(result)));
  const measured = rows.filter(({ result }) => typeof result.value === 'number').map(({ r }) => r);
  const methods = data.choices('method', METHODS);
  const plan: SheetPlan = {
    name,
    widths: [5, 46, 18, 13, 12, 12, 8, 18, 13, 13, 26],
    frozenRows: HEAD_ROW,
    cells,
    validations:
      measured.length === 0
        ? []
        : [
            {
              range: `${address(measured[0] ?? 0, COLUMN.method)}:${address(measured[measured.length - 1] ?? 0, COLUMN.method)}`,
              words: 'method of measuring',
              list: methods,
            },
          ],
    print: { landscape: true, repeatRows: HEAD_ROW },
  };
  return { plan: withStates(plan), count: shown.length, left: numbers.length + states.length - shown.length };
}

function row(result: LiveResult, r: number, no: number, label: string): PlanCell[] {
  const at = (c: number): string => address(r, c);
  const { row: homeRow, column: homeColumn } = cellPosition(result.at);
  const isNumber = typeof result.value === 'number';
  const common: PlanCell[] = [
    { at: at(0), role: 'label', value: no },
    { at: at(COLUMN.name), role: 'label', value: isNumber || /state$/.test(label) ? label : `${label}: state` },
    { at: at(2), role: 'note', value: `${result.sheet} ${result.at}` },
    {
      at: at(COLUMN.requirement),
      role: 'result',
      formula: `=${fixedCell(result.sheet, homeRow, homeColumn)}`,
      value: result.value,
      ...digitsOf(result.value),
    },
    { at: at(COLUMN.remark), role: 'input', value: '' },
  ];
  if (!isNumber) return common;
  const limit = (c: number, given: Limit | undefined): PlanCell =>
    given === undefined
      ? { at: at(c), role: 'input', value: '' }
      : { at: at(c), role: 'result', formula: `=${given.formula}`, ...digitsOf(given.value), value: given.value };
  return [
    ...common,
    limit(COLUMN.lower, result.lower),
    limit(COLUMN.upper, result.upper),
    { at: at(6), role: 'unit', value: result.unit },
    { at: at(COLUMN.method), role: 'input', value: '' },
    { at: at(COLUMN.result), role: 'input', value: '' },
    { at: at(COLUMN.judged), role: 'result', formula: judged(at(COLUMN.result), at(COLUMN.lower), at(COLUMN.upper)), value: '' },
  ];
}

/** A limit that is blank asks nothing; without any there is nothing to judge by. */
function judged(result: string, lower: string, upper: string): string {
  const isWithin = `AND(OR(${lower}="",${result}>=${lower}-1E-9),OR(${upper}="",${result}<=${upper}+1E-9))`;
  const word = `IF(AND(${lower}="",${upper}=""),"no limits",IF(${isWithin},"OK","not OK"))`;
  return `=IF(${result}="","",IF(ISNUMBER(${result}),${word},"not a number"))`;
}
