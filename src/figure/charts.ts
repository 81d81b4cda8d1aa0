// Two small charts as SVG text: variants by their engagement, and the links of a stack by their share.
import { stateOf } from '../joint/verdict';
import type { State } from '../core/check/check';
import { Refused } from '../core/refuse';
import type { Variant } from '../joint/variant';
import { mark } from './marks';
import { ENGLISH, type FigureSpeech, numberIn } from './speech';
import { style } from './style';
import { type Child, el, fitted, line, type Markup, px, text, textWidthPx } from './svg';

/** Ratios are full-thread engagement ÷ d; undefined where there is no value. */
export interface VariantRow {
  readonly name: string;
  readonly worstRatio: number | undefined;
  readonly nominalRatio: number | undefined;
  readonly askedRatio: number | undefined;
  readonly state: State;
}

export interface StackShare {
  /** Blank where it has none: then it is told by its number. */
  readonly name: string;
  /** Share of the whole, 0 … 1; undefined where there is no value. */
  readonly share: number | undefined;
}

export interface ChartOptions {
  readonly widthPx?: number;
  readonly speech?: FigureSpeech;
}

export const DEFAULT_WIDTH_PX = 700;
/** Narrower than this there is no room for bars. */
export const MIN_WIDTH_PX = 280;
/** Narrower than this the key of the chart takes two lines. */
const KEY_PX = 420;
export const MARGIN_PX = 10;
export const NAME_SHARE = 0.3;
const BAR_PX = 11;

function numberOf(read: () => number): number | undefined {
  try {
    return read();
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}

/** A variant of the joint as a row of the chart. */
export function variantRow(name: string, variant: Variant): VariantRow {
  return {
    name,
    worstRatio: numberOf(() => variant.value('engagement ratio')),
    nominalRatio: numberOf(() => variant.value('engagement') / variant.value('screw').nominalMm),
    askedRatio: numberOf(() => variant.value('ratio')),
    state: stateOf(variant),
  };
}

interface Frame {
  readonly widthPx: number;
  readonly barX: number;
  readonly barEnd: number;
  /** Pixels a unit of the axis. */
  readonly scale: number;
}

export const nameWidthPx = (names: readonly string[]): number => Math.max(40, ...names.map(name => textWidthPx(name, 12)));

/** Names left, what stands behind the bars right, bars from 0 to the largest value between. */
export function frameOf(widthPx: number, namePx: number, behindPx: number, largest: number): Frame {
  const barX = MARGIN_PX + namePx;
  const barEnd = widthPx - MARGIN_PX - behindPx;
  return { widthPx, barX, barEnd, scale: (barEnd - barX) / largest };
}

export const nameText = (name: string, { barX }: Frame, y: number): Markup =>
  text(fitted(name, barX - MARGIN_PX - 10, 12), [barX - 10, y], { anchor: 'end' });

export const bar = (className: string, { barX, scale }: Frame, y: number, value: number): Markup | undefined =>
  value <= 0 ? undefined : el('rect', { class: className, x: barX, y, width: value * scale, height: BAR_PX });

/** Ticks at 1, 2, 5 … so that they stand apart. */
export function axis(
  { barX, barEnd, scale }: Frame,
  top: number,
  bottom: number,
  label: (value: number) => string,
  factor: number,
): Child[] {
  const largest = (barEnd - barX) / scale;
  const step =
    [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 1000, 1e4, 1e5, 1e6].map(nice => nice * factor).find(nice => nice * scale >= 44) ?? largest;
  const count = Math.floor(largest / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => {
    const x = barX + i * step * scale;
    return [
      line('bw-grid', [x, top], [x, bottom]),
      text(label(i * step), [x, top - 6], { anchor: 'middle', className: 'bw-small bw-quiet' }),
    ];
  });
}

const TITLE_PX = 14;

/** A title as it stands above its chart: where it is too wide what follows its colon goes. */
const headingOf = (title: string, widthPx: number): string =>
  textWidthPx(title, TITLE_PX) <= widthPx ? title : fitted(title.split(':')[0] as string, widthPx, TITLE_PX);

export function chart(title: string, description: string, widthPx: number, heightPx: number, content: readonly Child[]): string {
  return el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${px(widthPx)} ${px(heightPx)}`,
      width: widthPx,
      height: heightPx,
      role: 'img',
      class: 'bw-figure',
    },
    el('title', {}, title),
    el('desc', {}, description),
    style(),
    el('rect', { class: 'bw-sheet', width: widthPx, height: heightPx }),
    text(headingOf(title, widthPx - 2 * MARGIN_PX), [MARGIN_PX, 22], { className: 'bw-strong' }),
    content,
  ).markup;
}

/** What a name takes above its bars. */
const NAME_LINE_PX = 16;
const VARIANT_ROW_PX = 40;
const TOP_PX = 80;
const KEY_LINE_PX = 20;
/** Room for a number behind its bar. */
const VALUE_PX = 66;
const STATE_PX = 18 + textWidthPx('not checked', 12, 'bold');

const inDiameters = (ratio: number | undefined, speech: FigureSpeech): string =>
  ratio === undefined ? speech.words.noValue : `${numberIn(speech, ratio)} d`;

/** From the left: name, bars, numbers, state; or name and state above the bars. */
function variantBars(row: VariantRow, frame: Frame, isAbove: boolean, top: number, speech: FigureSpeech): Child[] {
  const { barX, scale, widthPx } = frame;
  const barTop = isAbove ? top + NAME_LINE_PX : top;
  const askedX = row.askedRatio === undefined ? undefined : barX + row.askedRatio * scale;
  const value = (ratio: number | undefined, y: number): Markup => {
    const words = inDiameters(ratio, speech);
    const x = barX + Math.max(0, ratio ?? 0) * scale + 5;
    const isCrossed = askedX !== undefined && x < askedX + 3 && askedX < x + textWidthPx(words, 11) + 3;
    return text(words, [isCrossed ? askedX + 5 : x, y], { className: 'bw-small bw-halo' });
  };
  const stateX = widthPx - MARGIN_PX - STATE_PX + 6;
  const stateY = top + (isAbove ? 12 : 20);
  return [
    isAbove
      ? text(fitted(row.name, stateX - 20 - MARGIN_PX, 12), [MARGIN_PX, top + 12], { className: 'bw-halo' })
      : nameText(row.name, frame, top + 20),
    bar('bw-worst-bar', frame, barTop + 4, row.worstRatio ?? 0),
    bar('bw-nominal-bar', frame, barTop + 4 + BAR_PX + 3, row.nominalRatio ?? 0),
    askedX === undefined
      ? undefined
      : ['bw-casing', 'bw-asked'].map(className => line(className, [askedX, barTop], [askedX, barTop + VARIANT_ROW_PX - 6])),
    value(row.worstRatio, barTop + 13.5),
    value(row.nominalRatio, barTop + 27.5),
    mark(row.state, [stateX, stateY - 4]),
    text(row.state, [stateX + 18, stateY], { className: 'bw-strong' }),
  ];
}

function variantKey(top: number, x: number, isNarrow: boolean, { words: W }: FigureSpeech): Child[] {
  const entry = (words: string, at: number, y: number, sample: Child): Child[] => [
    sample,
    text(words, [at + 32, y + 9], { className: 'bw-small' }),
  ];
  const nominalX = x + Math.max(160, 48 + textWidthPx(W.worst, 11));
  const [askedX, askedTop] = isNarrow ? [x, top + KEY_LINE_PX] : [nominalX + Math.max(102, 48 + textWidthPx(W.nominal, 11)), top];
  return [
    ...entry(W.worst, x, top, el('rect', { class: 'bw-worst-bar', x, y: top, width: 26, height: BAR_PX })),
    ...entry(W.nominal, nominalX, top, el('rect', { class: 'bw-nominal-bar', x: nominalX, y: top, width: 26, height: BAR_PX })),
    ...entry(W.required, askedX, askedTop, line('bw-asked', [askedX + 13, askedTop - 3], [askedX + 13, askedTop + BAR_PX + 3])),
  ];
}

/** Engagement of every variant, worst and nominal, against the ratio required; the state as shape and word. */
export function variantChartSvg(
  rows: readonly VariantRow[],
  { widthPx: askedPx = DEFAULT_WIDTH_PX, speech = ENGLISH }: ChartOptions = {},
): string {
  const { words: W } = speech;
  const widthPx = Math.max(MIN_WIDTH_PX, askedPx);
  const largest = Math.max(1, ...rows.flatMap(row => [row.worstRatio ?? 0, row.nominalRatio ?? 0, row.askedRatio ?? 0]));
  const isNarrow = widthPx < KEY_PX;
  const namePx = isNarrow ? 0 : Math.min(NAME_SHARE * widthPx, nameWidthPx(rows.map(({ name }) => name))) + 10;
  const frame = frameOf(widthPx, namePx, VALUE_PX + (isNarrow ? 0 : STATE_PX), largest);
  const top = TOP_PX + (isNarrow ? KEY_LINE_PX : 0);
  const rowPx = VARIANT_ROW_PX + (isNarrow ? NAME_LINE_PX : 0);
  const bottom = top + rows.length * rowPx;
  const said = rows.map(({ name, worstRatio, nominalRatio, askedRatio, state }) => {
    const [worst = '', nominal = '', asked = ''] = [worstRatio, nominalRatio, askedRatio].map(ratio => inDiameters(ratio, speech));
    return W.variant(name, worst, nominal, asked, W.states[state]);
  });
  return chart(W.variants, rows.length === 0 ? W.noVariant : `${said.join('; ')}.`, widthPx, bottom + MARGIN_PX, [
    ...variantKey(36, MARGIN_PX, isNarrow, speech),
    ...axis(frame, top - 4, bottom, value => `${numberIn(speech, value, Number.isInteger(value) ? 0 : 1)} d`, 1),
    ...rows.map((row, i) => variantBars(row, frame, isNarrow, top + i * rowPx, speech)),
  ]);
}

const SHARE_ROW_PX = 24;
const SHARE_TOP_PX = 54;
const percentIn = (share: number | undefined, speech: FigureSpeech): string =>
  share === undefined ? speech.words.noValue : `${numberIn(speech, 100 * share, 1)} %`;

/** Share of each link of a stack, in the order given; names that have no room beside the bars stand above them. */
export function stackChartSvg(links: readonly StackShare[], { widthPx = DEFAULT_WIDTH_PX, speech = ENGLISH }: ChartOptions = {}): string {
  const { words: W } = speech;
  const shares = links.map(({ name, share }, i) => ({ name: name === '' ? W.link(i + 1) : name, share }));
  const percent = (share: number | undefined): string => percentIn(share, speech);
  const wanted = nameWidthPx(shares.map(({ name }) => name));
  const isAbove = wanted > NAME_SHARE * widthPx;
  const frame = frameOf(widthPx, isAbove ? 0 : wanted + 10, 58, Math.max(1, ...shares.map(({ share }) => share ?? 0)));
  const rowPx = SHARE_ROW_PX + (isAbove ? NAME_LINE_PX : 0);
  const bottom = SHARE_TOP_PX + shares.length * rowPx;
  const said = shares.map(({ name, share }) => `${name} ${percent(share)}`);
  return chart(W.shares, shares.length === 0 ? W.noLink : `${said.join('; ')}.`, frame.widthPx, bottom + MARGIN_PX, [
    ...axis(frame, SHARE_TOP_PX - 2, bottom, value => `${numberIn(speech, 100 * value, 0)} %`, 0.01),
    ...shares.map(({ name, share }, i) => {
      const top = SHARE_TOP_PX + i * rowPx + 5;
      const y = isAbove ? top + NAME_LINE_PX : top;
      const named = isAbove
        ? text(fitted(name, widthPx - 2 * MARGIN_PX, 12), [MARGIN_PX, top + 10], { className: 'bw-halo' })
        : nameText(name, frame, y + 10);
      return [
        named,
        bar('bw-nominal-bar', frame, y, share ?? 0),
        text(percent(share), [frame.barX + Math.max(0, share ?? 0) * frame.scale + 5, y + 10], { className: 'bw-small bw-halo' }),
      ];
    }),
  ]);
}
