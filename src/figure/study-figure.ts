// A study in a cell as its figure: the plane of a map, and the bars of what moves an output.
import { readArguments } from '../core/call';
import type { Cell, CellRange } from '../core/kinds';
import { wrongInput } from '../core/refuse';
import { askedMap } from '../joint/study/map';
import { sensitivityRows } from '../joint/study/sensitivity';
import { STUDY_CARDS } from '../joint/study/study.cards';
import { unitOf } from '../joint/outputs';
import { oneVariant } from '../joint/table';
import type { ChartOptions } from './charts';
import { ENGLISH, type FigureSpeech } from './speech';
import { stateMapOf } from './state-map';
import { sensitivityChartSvg, stateMapSvg } from './study-charts';

export interface StudyFigure {
  /** What it shows, in few words. */
  readonly words: (speech?: FigureSpeech) => string;
  readonly svg: (options?: ChartOptions) => string;
}

type StudyId = 'JOINT.MAP' | 'JOINT.SENSITIVITY';
const CALLED = STUDY_CARDS.filter(({ id }) => id === 'JOINT.MAP' || id === 'JOINT.SENSITIVITY');

export const isDrawn = (id: string): id is StudyId => CALLED.some(card => card.id === id);

function mapFigure([inputs, x, xValues, y, yValues, , base]: readonly unknown[]): StudyFigure {
  const map = stateMapOf(askedMap(inputs as CellRange, x, xValues as CellRange, y, yValues as CellRange, base as CellRange | undefined));
  return { words: ({ words: W } = ENGLISH) => W.map(map.x.name, map.y.name), svg: options => stateMapSvg(map, options) };
}

function barsFigure([inputs, output, base]: readonly unknown[]): StudyFigure {
  const rows = sensitivityRows(oneVariant(inputs as CellRange, base as CellRange | undefined), output);
  const changes = rows.flatMap(([name, , , , , change, share]) =>
    typeof change === 'number' && change > 0 && typeof share === 'number' ? [{ name: String(name), change, share }] : [],
  );
  const name = String(output);
  return {
    words: ({ words: W } = ENGLISH) => W.moves(name),
    svg: options => sensitivityChartSvg(name, unitOf(name), changes, options),
  };
}

/** Where a map takes its values. */
const [X_VALUES, Y_VALUES] = [2, 4];
const numbersFrom = (shown: (i: number) => Cell | null): Cell[] => {
  const numbers: Cell[] = [];
  for (let cell = shown(1); typeof cell === 'number'; cell = shown(numbers.length + 1)) numbers.push(cell);
  return numbers;
};

/**
 * What a call is given, as far as it is known. Values of a map that some other function makes are those that it shows.
 * @param shown what stands so many rows below the call and columns beside it.
 */
export function givenArguments(
  id: StudyId,
  args: readonly unknown[],
  shown: (below: number, beside: number) => Cell | null,
): readonly unknown[] {
  if (id !== 'JOINT.MAP') return args;
  return args.map((value, i) => {
    if (value !== undefined || (i !== X_VALUES && i !== Y_VALUES)) return value;
    return [numbersFrom(i === X_VALUES ? beside => shown(0, beside) : below => shown(below, 0))];
  });
}

/** What the call would draw, given what it is given. Throws Refused. */
export function studyFigure(id: StudyId, args: readonly unknown[]): StudyFigure {
  const card = CALLED.find(one => one.id === id);
  const read = card === undefined ? args : readArguments(card, args);
  return id === 'JOINT.MAP' ? mapFigure(read) : barsFigure(read);
}

/** The same of a call in a sheet, of which an argument may not be known. Throws Refused. */
export function calledFigure(id: StudyId, given: readonly unknown[]): StudyFigure {
  const unknown = given.indexOf(undefined);
  const name = CALLED.find(one => one.id === id)?.params[unknown]?.name;
  if (name !== undefined) throw wrongInput(`${name} is made by a function that the figure does not follow: give cells`);
  return studyFigure(id, given);
}
