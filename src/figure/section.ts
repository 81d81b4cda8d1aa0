// The joint cut along its axis, to scale, as one SVG text: pure, the same text for the same values.
import { stateOf, verdict } from '../joint/verdict';
import { sentence } from '../joint/words';
import type { State } from '../core/check/check';
import { dualText } from '../core/unit/unit-text';
import type { Variant } from '../joint/variant';
import { arranged, CENTRE_PX, DEFAULT_WIDTH_PX, HEADING_PX, MARGIN_PX, numberText } from './arranged';
import { type Dimension, dimensionsOf } from './dimensions';
import { findingList, marksOnPart, missingList, type Numbered, numbered } from './findings';
import { columnsOf, type Label, leftLabels, rightLabels } from './labels';
import { drawPlastic } from './plastic';
import { drawScrew } from './screw';
import { JointValues } from './joint-values';
import { ENGLISH, type FigureSpeech, numberIn } from './speech';
import { extentOf, type ScrewShape, type Shape } from './shape';
import { shapeOf } from './shape-of-joint';
import { centreLine, heading, pulls, scaleBar } from './surroundings';
import { hatches, style } from './style';
import { type Child, el, px, text } from './svg';

export interface SectionOptions {
  /** Inches in brackets behind every length. */
  readonly inch?: boolean;
  readonly widthPx?: number;
  /** Letters on the drawing; what they stand for is in the legend. */
  readonly letters?: boolean;
  /** For a sheet whose values go on changing: letters, and nothing that judges them; in fixed colours, for what draws without a page. */
  readonly print?: boolean;
  /** Numbers in balloons for some names of the joint, and no other dimension. */
  readonly numbers?: ReadonlyMap<string, string>;
  /** These dimensions alone, without heading and findings: a joint that explains something. */
  readonly only?: readonly string[];
  readonly speech?: FigureSpeech;
}

export interface Section {
  readonly svg: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly legend: readonly LegendEntry[];
}

export interface LegendEntry {
  readonly letter: string;
  readonly name: string;
  /** What it is in the joint: an input or node. */
  readonly of: string;
  /** Undefined where the value is refused; then the letter is not on the drawing. */
  readonly value: number | undefined;
  readonly unit: string;
}

const FOOT_PX = 38;
const PARTS = ['headHalf', 'board', 'threadHalf', 'screw'] as const;

/** A dimension that is no name of the joint has a word in each language. */
const labelIn = (words: string, labels: Readonly<Record<string, string>>): string => labels[words] ?? words;

/** A … Z, AA, AB … */
export const letterOf = (i: number): string => (i < 26 ? '' : letterOf(Math.floor(i / 26) - 1)) + String.fromCharCode(65 + (i % 26));

const inBoth = (mm: number, places: number, { decimal }: FigureSpeech): string =>
  dualText(mm, places, 3).replaceAll('-', '−').replaceAll('.', decimal);

export function titleOf(shape: ScrewShape | undefined, { words: W, decimal }: FigureSpeech = ENGLISH): string {
  if (shape === undefined) return W.section;
  const { screw, length, isFlatEnd, head } = shape;
  const end = !screw.isTapping ? '' : isFlatEnd ? ' flat' : ' cone';
  const named = head.word === undefined ? head.table.standard : head.word || 'own';
  return `${W.section}: ${screw.size.text} × ${String(Math.round(length * 100) / 100).replace('.', decimal)}${end}, ${W.head(named)}`;
}

function describe(variant: Variant, shape: Shape, dimensions: readonly Dimension[], state: State, speech: FigureSpeech): string {
  const { words: W } = speech;
  const named = (words: string): string => {
    const value = dimensions.find(dimension => dimension.words === words)?.value;
    return value === undefined ? '' : `${labelIn(words, W.labels)} ${numberIn(speech, value)} mm`;
  };
  const numbers = ['boss OD', 'boss OD root', 'boss height', 'full thread, worst', 'nominal', 'required', 'hole depth', 'screw length']
    .map(named)
    .filter(words => words !== '');
  const parts = PARTS.filter(part => shape[part] !== undefined).map(part => W.parts[part]);
  const drawn = parts.length === 0 ? W.nothingDrawn : W.drawn(parts.join(', '));
  const [worst, told] = [variant.worst(), String(verdict(variant, 'reason'))];
  // an input that nothing takes is no finding
  const reason = worst !== undefined && sentence(worst) === told ? speech.reason(worst) : told;
  const why = told === '–' ? '' : ` – ${reason}`;
  return `${drawn} ${numbers.length === 0 ? '' : `${numbers.join(', ')}. `}${W.state(W.states[state])}${why}.`;
}

export function section(
  variant: Variant,
  {
    inch = false,
    widthPx: askedWidthPx = DEFAULT_WIDTH_PX,
    print = false,
    letters = print,
    numbers,
    only,
    speech = ENGLISH,
  }: SectionOptions = {},
): Section {
  const { words: W } = speech;
  const read = new JointValues(variant);
  const shape = shapeOf(read);
  const dimensions = dimensionsOf(read, shape, name => numbers?.has(name) === true).filter(
    ({ words, name }) => (only?.includes(words) ?? true) && (numbers?.has(name) ?? true),
  );
  const findings = variant.findings();
  for (const { rule, state, refusal } of findings)
    if (state === 'not checked' && refusal !== undefined) read.note(rule.value, refusal.message);
  const lengthText = (mm: number): string => (inch ? inBoth(mm, 2, speech).replace(' mm', '') : numberIn(speech, mm));
  const dMm = read.get('screw')?.nominalMm;
  const columns = columnsOf(dimensions);
  const marks = dimensions.map(({ name }, i) => numbers?.get(name) ?? letterOf(i));
  const legend = dimensions.map(({ words, title, name, value, unit }, i): LegendEntry => ({
    letter: marks[i] ?? '',
    name: W.titles[words as keyof typeof W.titles] ?? title,
    of: name,
    value,
    unit,
  }));
  const labels = dimensions.map((dimension, i): Label => ({
    dimension,
    words: letters ? '' : labelIn(dimension.words, W.labels),
    number: letters ? (marks[i] ?? '') : numberText(dimension, dMm, lengthText, speech),
    isBalloon: letters && numbers !== undefined,
    column: columns.get(dimension) ?? 0,
  }));
  const state = stateOf(variant);
  const list = print || only !== undefined ? [] : numbered(findings);

  const isEmpty = Object.keys(shape).length === 0;
  const sheet = isEmpty ? undefined : arranged(shape, labels, askedWidthPx);
  const widthPx = sheet?.widthPx ?? askedWidthPx;
  const drawing = sheet === undefined ? [text(W.tooLittle, [MARGIN_PX, HEADING_PX + 22])] : drawn(sheet, shape, labels, list, inch, speech);
  const found = findingList(list, MARGIN_PX, (sheet?.bottom ?? HEADING_PX) + FOOT_PX + 14, widthPx - 2 * MARGIN_PX, speech);
  const missing = only === undefined ? missingList(read, shape, MARGIN_PX, found.bottom, widthPx - 2 * MARGIN_PX, speech) : found;
  const heightPx = Math.ceil(missing.bottom + MARGIN_PX);
  const title = titleOf(shape.screw, speech);
  const svg = el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${px(widthPx)} ${heightPx}`,
      width: widthPx,
      height: heightPx,
      role: 'img',
      class: 'bw-figure',
    },
    el('title', {}, title),
    el('desc', {}, describe(variant, shape, dimensions, state, speech)),
    style(print),
    hatches(),
    el('rect', { class: 'bw-sheet', width: widthPx, height: heightPx }),
    only === undefined ? heading(title, print ? undefined : state, MARGIN_PX, widthPx) : undefined,
    drawing,
    found.markup,
    missing.markup,
  );
  return { svg: svg.markup, widthPx, heightPx, legend };
}

function drawn(
  sheet: ReturnType<typeof arranged>,
  shape: Shape,
  labels: readonly Label[],
  list: readonly Numbered[],
  inch: boolean,
  speech: FigureSpeech,
): Child[] {
  const { view, bottom } = sheet;
  const extent = extentOf(shape);
  const [left, right] = [leftLabels(sheet, labels), rightLabels(sheet, labels, sheet.threadX)];
  const barText = (mm: number): string => (inch ? inBoth(mm, 1, speech) : `${String(mm).replace('.', speech.decimal)} mm`);
  return [
    ...drawPlastic(view, shape),
    ...(shape.screw === undefined ? [] : drawScrew(view, shape.screw)),
    centreLine(view, view.faceY + extent.top * view.scale - CENTRE_PX, view.faceY + extent.bottom * view.scale + CENTRE_PX),
    ...pulls(view, shape, left.runs, right.runs),
    ...left.markup,
    ...right.markup,
    ...marksOnPart(view, shape, list),
    ...scaleBar(view, [MARGIN_PX, bottom + FOOT_PX - 6], barText, inch ? speech.words.pullInches : speech.words.pull),
  ];
}
