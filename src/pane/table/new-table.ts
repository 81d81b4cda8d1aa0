// A table of variants as it is to stand in the sheet: its cells, the one formula of its results, and their looks.
import type { Cell } from '../../core/kinds';
import { inputChoices } from '../../joint/choices';
import { INPUTS } from '../../joint/inputs';
import { call } from '../../registry';
import { address, type Area, cellPosition, columnName, type Rectangle } from '../../sheet/addresses';
import type { DropDown, Dress } from '../../sheet/dress';
import type { CellEntry, Selection } from '../../sheet/port';
import { NAMESPACE } from '../function-list';
import { valueOf } from '../typed-argument';
import { looksOf } from './looks';

export interface ChosenInput {
  readonly name: string;
  /** As typed; it stands in every variant to begin with. */
  readonly text: string;
}

export interface TableChoice {
  readonly place: Selection;
  readonly inputs: readonly ChosenInput[];
  readonly outputs: readonly string[];
  readonly variants: number;
  /** The results beside the inputs, else beneath them. */
  readonly isBeside: boolean;
}

export interface NewTable {
  readonly entries: readonly CellEntry[];
  readonly formula: string;
  readonly inputs: Area;
  /** What the formula fills. */
  readonly results: Area;
  /** What it will show at first. */
  readonly shown: readonly (readonly Cell[])[];
  readonly dress: Dress;
}

/** Values of an invented part, to begin with; any other input begins with its default. */
export const START: Readonly<Record<string, string>> = {
  screw: 'ST2.9',
  head: 'pan',
  length: '16',
  material: 'ABS',
  wall: '2.5',
  'board plane': '5.5',
  board: '1.6',
  hole: '3.3',
  'boss height': '14.5',
  face: 'hidden',
};

const headed = (name: string, unit: string): string => (unit === '' || unit === '–' ? name : `${name} (${unit})`);

export const rangeText = ({ top, left, bottom, right }: Rectangle): string => `${address(top, left)}:${address(bottom, right)}`;

/** The label of a variant: A to Z, then AA. */
const label = (index: number): string => columnName(index);

export function choicesBelow(name: string, range: string): DropDown[] {
  const choices = inputChoices(name);
  return choices.length === 0 ? [] : [{ range, choices, words: INPUTS.get(name)?.meaning ?? name }];
}

/** Undefined while nothing is ticked on one of the sides; a message where the joint refuses. */
export function newTable({ place, inputs, outputs, variants, isBeside }: TableChoice): NewTable | string | undefined {
  if (inputs.length === 0 || outputs.length === 0) return undefined;
  const { sheetName } = place;
  const { row: top, column: left } = cellPosition(place.at);
  const header = ['variant', ...inputs.map(({ name }) => headed(name, INPUTS.get(name)?.unit ?? ''))];
  const values = inputs.map(({ text }) => (text.trim() === '' ? null : valueOf(text.trim())));
  const rows: (Cell | null)[][] = [header, ...Array.from({ length: variants }, (_, i) => [label(i), ...values])];
  const area: Area = { sheet: sheetName, top, left, bottom: top + variants, right: left + inputs.length };
  const asked = ['variant', ...outputs];
  const answer = call('JOINT.TABLE', [rows, [asked]]);
  if (!answer.ok) return answer.message;
  const shown = answer.value as Cell[][];
  const corner = isBeside ? { row: top, column: area.right + 2 } : { row: area.bottom + 2, column: left };
  const results: Area = {
    sheet: sheetName,
    top: corner.row,
    left: corner.column,
    bottom: corner.row + shown.length - 1,
    right: corner.column + asked.length - 1,
  };
  const formula = `=${NAMESPACE}.JOINT.TABLE(${rangeText(area)},{${asked.map(name => `"${name}"`).join(',')}})`;
  const entries = rows.flatMap((line, r) =>
    line.flatMap((content, c): CellEntry[] => (content === null ? [] : [{ sheetName, at: address(top + r, left + c), content }])),
  );
  const below = (column: number): string => rangeText({ top: top + 1, left: column, bottom: area.bottom, right: column });
  const looks = looksOf(shown[0] ?? [], results);
  const role = (rectangle: Rectangle, of: 'header' | 'input' | 'label' | 'result') =>
    Array.from({ length: rectangle.bottom - rectangle.top + 1 }, (_, r) =>
      Array.from({ length: rectangle.right - rectangle.left + 1 }, (__, c) => ({
        at: address(rectangle.top + r, rectangle.left + c),
        role: of,
      })),
    ).flat();
  return {
    entries: [...entries, { sheetName, at: address(corner.row, corner.column), content: formula }],
    formula,
    inputs: area,
    results,
    shown,
    dress: {
      sheetName,
      cells: [
        ...role({ ...area, bottom: top }, 'header'),
        ...role({ ...area, top: top + 1, right: left }, 'label'),
        ...role({ ...area, top: top + 1, left: left + 1 }, 'input'),
        ...role({ ...results, bottom: results.top }, 'header'),
        ...role({ ...results, top: results.top + 1 }, 'result'),
      ],
      ...looks,
      // "1/4-20" must not become a date.
      formats: [
        ...looks.formats,
        ...inputs.flatMap(({ name }, i) => (name === 'screw' ? [{ range: below(left + 1 + i), format: '@' }] : [])),
      ],
      dropDowns: inputs.flatMap(({ name }, i) => choicesBelow(name, below(left + 1 + i))),
    },
  };
}
