// Findings on the drawing: a numbered mark at the place concerned, the sentence in the list below, and what has no value.
import type { State } from '../core/check/check';
import type { Finding } from '../joint/graph';
import type { RuleName } from '../joint/rules';
import { mark, MARK_PX } from './marks';
import type { JointValues } from './joint-values';
import type { FigureSpeech } from './speech';
import type { Shape } from './shape';
import { type Markup, type Point, text, wrapped } from './svg';
import { at, type AxialPoint, type View } from './view';

/** Where the full thread of the longest screw ends. */
const lastThread = ({ screw: s }: Shape): number => (s?.penetrationMax ?? 0) - (s?.point ?? 0);
const landing = ({ headHalf: h, threadHalf: t }: Shape): number => Math.min(t?.odR ?? 0, h?.sleeveR ?? Infinity);

type Where = (shape: Shape) => AxialPoint | undefined;

/** Where each rule is concerned; undefined where that part is not drawn. */
const PLACES: Readonly<Record<string, Where>> = {
  'head fits the recess': ({ headHalf: h, screw: s }) => h && [h.floorR, (s?.bearing ?? h.floor) - 0.6 * (s?.headHeight ?? 0)],
  'driver goes in': ({ headHalf: h }) => h && [h.mouthR, h.outer],
  'head bears on its seat': ({ headHalf: h, board: b, screw: s }) => s && [(s.headR + (h?.holeR ?? b?.holeR ?? 0)) / 2, s.bearing],
  'head hidden': ({ screw: s }) => s && [0, s.bearing - (s.cone === undefined ? s.headHeight : 0)],
  'seat holds': ({ headHalf: h }) => h && [h.holeR + 0.4, (h.floor + h.plane) / 2],
  'seat under the cone': ({ headHalf: h }) => h && [h.holeR + 0.4, (h.boreFrom + h.plane) / 2],
  'screw passes the hole': ({ headHalf: h }) => h && [h.holeR, (h.boreFrom + h.plane) / 2],
  'screw passes the board': ({ board: b, screw: s }) => b && s && [s.screw.majorMaxMm / 2, (b.top + b.bottom) / 2],
  'sleeve passes the board': ({ headHalf: h, board: b }) => h && b && [h.sleeveR ?? h.holeR, (b.top + b.bottom) / 2],
  'sleeve carries the clamp': ({ headHalf: h }) => h && [h.sleeveR ?? h.holeR, h.end],
  'a standard length exists': ({ screw: s }) => s && [0, s.bearing - 0.3 * s.headHeight],
  'machine thread in plastic': ({ threadHalf: t, screw: s }) => t && s && [s.screw.majorMaxMm / 2, t.relief + 2 * s.screw.nominalMm],
  'thread bites at the mouth': ({ threadHalf: t }) => t && [t.pilotAt(t.relief), t.relief],
  'pilot not too tight': shape =>
    shape.threadHalf && [shape.threadHalf.pilotAt(lastThread(shape)), Math.min(lastThread(shape), shape.threadHalf.holeBottom)],
  engagement: ({ threadHalf: t, screw: s }) => t && s && [(t.odR + s.screw.majorMaxMm / 2) / 2, t.threadFrom + s.screw.nominalMm],
  'screw clears the bottom': ({ threadHalf: t }) => t && [t.pilotAt(t.holeBottom), t.holeBottom],
  'floor under the hole': ({ threadHalf: t }) => t && [0, (t.holeBottom + t.back) / 2],
  'wall under the groove': ({ threadHalf: t }) => t && [(t.rootR + t.footR) / 2, (t.foot + t.back) / 2],
  'boss wall carries the thread': ({ threadHalf: t }) => t && [t.odR, 0.3 * t.root],
  'insert held': ({ threadHalf: t }) => t && [t.odR, 0.3 * t.root],
  'insert not drawn out': ({ threadHalf: t }) => t && [t.insert?.outerR ?? t.pilotAt(0), 0],
  'board held by the boss': ({ threadHalf: t, board: b }) => t && [t.odR, b?.bottom ?? 0],
  'landing ring': shape => shape.threadHalf && [(landing(shape) + shape.threadHalf.reliefR) / 2, 0],
  'sink, thread half': ({ threadHalf: t }) => t && [(t.rootR + t.pilotAt(t.root)) / 2, t.back],
  'sink, head half': ({ headHalf: h }) => h && [(h.postRootR + h.floorR) / 2, h.outer],
  slenderness: ({ threadHalf: t }) => t && [t.rootR, 0.62 * t.root],
  'core pin': ({ threadHalf: t }) => t && [0, t.holeBottom],
  'planned gap (boss hangs in tension)': ({ threadHalf: t }) => t && [t.odR + 0.6, 0],
  'load carried': ({ threadHalf: t }) => t && [t.odR, 0.5 * t.root],
  'strip before drive': ({ screw: s }) => s && [0, s.bearing - s.headHeight],
  'set torque in its window': ({ screw: s }) => s && [0, s.bearing - s.headHeight],
  'head does not sink in': ({ screw: s }) => s && [s.headR, s.bearing],
  'steel beside the boss': ({ threadHalf: t }) => t && [t.footR + 0.6, t.root],
} satisfies Record<RuleName, Where>;

export interface Numbered {
  readonly number: number;
  readonly state: State;
  readonly finding: Finding;
}

/** What is to be mended or reviewed, worst first. */
export function numbered(findings: readonly Finding[]): Numbered[] {
  const found = (['fail', 'review'] as const).flatMap(state => findings.filter(finding => finding.state === state));
  return found.map((finding, i) => ({ number: i + 1, state: finding.state, finding }));
}

const STEP_PX = 2 * MARK_PX + 6;
const AROUND: readonly Point[] = [
  [0, 0],
  [0, STEP_PX],
  [STEP_PX, 0],
  [0, -STEP_PX],
  [-STEP_PX, 0],
  [STEP_PX, STEP_PX],
  [-STEP_PX, STEP_PX],
  [0, 2 * STEP_PX],
  [0, -2 * STEP_PX],
];

/** Marks never stand on each other: the next free place around the spot is taken. */
export function marksOnPart(view: View, shape: Shape, list: readonly Numbered[]): Markup[] {
  const taken: Point[] = [];
  return list.flatMap(({ number, state, finding }) => {
    const place = PLACES[finding.rule.name]?.(shape);
    if (place === undefined) return [];
    const [x, y] = at(view, place);
    const spots = AROUND.map(([dx, dy]): Point => [x + dx, y + dy]);
    const spot = spots.find(([sx, sy]) => taken.every(([tx, ty]) => Math.abs(sx - tx) >= STEP_PX || Math.abs(sy - ty) >= STEP_PX)) ?? [
      x,
      y,
    ];
    taken.push(spot);
    return mark(state, spot, number);
  });
}

const LINE_PX = 16;
/** Behind mark and word. */
const SENTENCE_PX = 82;

export interface TextBlock {
  readonly markup: readonly Markup[];
  readonly bottom: number;
}

/** The list below the drawing: mark, word, sentence. */
export function findingList(list: readonly Numbered[], x: number, top: number, widthPx: number, { reason }: FigureSpeech): TextBlock {
  let y = top;
  const markup = list.flatMap(({ number, state, finding }) => {
    const lines = wrapped(reason(finding), widthPx - SENTENCE_PX, 12);
    const first = y + 12;
    y += Math.max(26, lines.length * LINE_PX + 8);
    return [
      ...mark(state, [x + 12, first - 3], number),
      text(state, [x + 28, first + 1], { className: 'bw-strong' }),
      ...lines.map((words, i) => text(words, [x + SENTENCE_PX, first + 1 + i * LINE_PX])),
    ];
  });
  return { markup, bottom: y };
}

/** "no value: hole, recess diameter – hole must be given …", a paragraph a reason, and what was drawn for want of a value. */
export function missingList(
  read: JointValues,
  { board }: Shape,
  x: number,
  top: number,
  widthPx: number,
  { words: W }: FigureSpeech,
): TextBlock {
  let y = top;
  const missing = [...read.missing].map(([reason, names]) => W.noValueOf(names.join(', '), reason));
  const markup = [...missing, ...(board?.note === undefined ? [] : [W.boardHole[board.note]])].flatMap(paragraph => {
    const lines = wrapped(paragraph, widthPx, 12);
    const first = y + 13;
    y += lines.length * LINE_PX + 6;
    return lines.map((words, i) => text(words, [x, first + i * LINE_PX]));
  });
  return { markup, bottom: y };
}
