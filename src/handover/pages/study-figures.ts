// The maps and the bars of what moves an output, drawn as they are at the hand-over.
import type { Cell } from '../../core/kinds';
import { Refused } from '../../core/refuse';
import type { ChartOptions } from '../../figure/charts';
import { calledFigure, givenArguments, isDrawn } from '../../figure/study-figure';
import { inFixedColours } from '../../figure/style';
import { address, cellPosition, fixedCell } from '../../sheet/addresses';
import { ownFunction, parseFormula } from '../../sheet/formula';
import type { HandoverCopy } from '../compile/convert';
import { CHANGED, quoted } from '../compile/inputs';
import type { TableCell } from '../compile/joint/joint-cells';

export interface DrawnStudy {
  readonly words: string;
  /** `Plane!D10` */
  readonly place: string;
  readonly svg: string;
  /** Says whether its inputs are as they were; undefined where nothing watches them. */
  readonly inputs: Pick<TableCell, 'formula' | 'value'> | undefined;
}

const WIDTH: ChartOptions = { widthPx: 600 };

function drawnAt({ source, sheets }: HandoverCopy, sheet: string, at: string, formula: string, asDrawn: string): DrawnStudy[] {
  const tree = parseFormula(formula);
  const id = tree === undefined ? undefined : ownFunction(tree);
  if (tree === undefined || id === undefined || !isDrawn(id) || typeof source.value(sheet, at) !== 'string') return [];
  try {
    const { row, column } = cellPosition(at);
    const values = (tree.arguments ?? []).map(node => source.evaluate(node, sheet));
    const shown = (below: number, beside: number): Cell | null => {
      const cell = source.value(sheet, address(row + below, column + beside));
      return typeof cell === 'number' ? cell : null;
    };
    const figure = calledFigure(id, givenArguments(id, values, shown));
    const below = address(row + 1, column);
    const isWatched = sheets.find(({ name }) => name === sheet)?.cells.some(cell => cell.at === below && cell.formula !== undefined);
    const says = { formula: `IF(${fixedCell(sheet, row + 1, column)}=${CHANGED},${CHANGED},${quoted(asDrawn)})`, value: asDrawn };
    const inputs = isWatched === true ? says : undefined;
    return [{ words: figure.words(), place: `${sheet}!${at}`, svg: inFixedColours(figure.svg(WIDTH)), inputs }];
  } catch (fault) {
    // a map of words is not drawn
    if (fault instanceof Refused) return [];
    throw fault;
  }
}

export const drawnStudies = (copy: HandoverCopy, asDrawn: string): DrawnStudy[] =>
  copy.source.workbook.sheets.flatMap(({ name, cells }) =>
    [...cells].flatMap(([at, { formula }]) => (formula === undefined ? [] : drawnAt(copy, name, at, formula, asDrawn))),
  );
