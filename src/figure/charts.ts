// Two small charts as SVG text: variants by their engagement, and the links of a stack by their share.
import type { State } from '../core/check/check';
import { Refused } from '../core/refuse';
import type { Screw } from '../core/screw/thread';
import type { Variant } from '../joint/evaluate';
import { mark } from './marks';
import { style } from './style';
import { type Child, el, fitted, line, type Markup, px, shown, text, textWidthPx } from './svg';

/** Ratios are full-thread engagement ÷ d; nothing where there is no value. */
export interface VariantRow {
  readonly name: string;
  readonly worstRatio: number | undefined;
  readonly nominalRatio: number | undefined;
  readonly askedRatio: number | undefined;
  readonly state: State;
}

export interface StackShare {
  readonly name: string;
  /** Share of the whole, 0 … 1; nothing where there is no value. */
  readonly share: number | undefined;
}

export interface ChartOptions {
  readonly widthPx?: number;
}

const DEFAULT_WIDTH_PX = 700;
/** Narrower than this the key of the chart has no room. */
const LEAST_WIDTH_PX = 420;
const MARGIN_PX = 10;
const NAME_SHARE = 0.3;
const BAR_PX = 11;
const NO_VALUE = 'no value';

function numberOf(read: () => unknown): number | undefined {
  try {
    return read() as number;
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
    nominalRatio: numberOf(() => (variant.value('engagement') as number) / (variant.value('screw') as Screw).nominalMm),
    askedRatio: numberOf(() => variant.value('ratio')),
    state: variant.verdict('state') as State,
  };
}

interface Frame {
  readonly widthPx: number;
  readonly barX: number;
  readonly barEnd: number;
  /** Pixels a unit of the axis. */
  readonly scale: number;
}

const nameWidthPx = (names: readonly string[]): number => Math.max(40, ...names.map(name => textWidthPx(name, 12)));

/** Names left, what stands behind the bars right, bars from 0 to the largest value between. */
function frameOf(widthPx: number, namePx: number, behindPx: number, largest: number): Frame {
  const barX = MARGIN_PX + namePx;
  const barEnd = widthPx - MARGIN_PX - behindPx;
  return { widthPx, barX, barEnd, scale: (barEnd - barX) / largest };
}

const nameText = (name: string, { barX }: Frame, y: number): Markup => text(fitted(name, barX - MARGIN_PX - 10, 12), [barX - 10, y], { anchor: 'end' });

const bar = (className: string, { barX, scale }: Frame, y: number, value: number): Markup | undefined =>
  value <= 0 ? undefined : el('rect', { class: className, x: barX, y, width: value * scale, height: BAR_PX });

/** Ticks at 1, 2, 5 … so that they stand apart. */
function axis({ barX, barEnd, scale }: Frame, top: number, bottom: number, label: (value: number) => string, factor: number): Child[] {
  const largest = (barEnd - barX) / scale;
  const step = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 1000, 1e4, 1e5, 1e6].map(nice => nice * factor).find(nice => nice * scale >= 44) ?? largest;
  const count = Math.floor(largest / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => {
    const x = barX + i * step * scale;
    return [line('bw-grid', [x, top], [x, bottom]), text(label(i * step), [x, top - 6], { anchor: 'middle', className: 'bw-small bw-quiet' })];
  });
}

function chart(title: string, description: string, widthPx: number, heightPx: number, content: readonly Child[]): string {
  return el(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', viewBox: `0 0 ${px(widthPx)} ${px(heightPx)}`, width: widthPx, height: heightPx, role: 'img', class: 'bw-figure' },
    el('title', {}, title),
    el('desc', {}, description),
    style(),
    el('rect', { class: 'bw-sheet', width: widthPx, height: heightPx }),
    text(title, [MARGIN_PX, 22], { className: 'bw-strong' }),
    content,
  ).markup;
}

const VARIANT_ROW_PX = 40;
const TOP_PX = 80;

const inDiameters = (ratio: number | undefined): string => (ratio === undefined ? NO_VALUE : `${shown(ratio)} d`);

function variantBars(row: VariantRow, frame: Frame, top: number): Child[] {
  const end = (value: number): number => frame.barX + Math.max(0, value) * frame.scale + 5;
  const askedX = row.askedRatio === undefined ? undefined : frame.barX + row.askedRatio * frame.scale;
  const value = (ratio: number | undefined, y: number): Markup => text(inDiameters(ratio), [end(ratio ?? 0), y], { className: 'bw-small bw-halo' });
  const stateX = frame.barEnd + 66;
  return [
    nameText(row.name, frame, top + 20),
    bar('bw-worst-bar', frame, top + 4, row.worstRatio ?? 0),
    bar('bw-nominal-bar', frame, top + 4 + BAR_PX + 3, row.nominalRatio ?? 0),
    askedX === undefined ? undefined : [line('bw-casing', [askedX, top], [askedX, top + VARIANT_ROW_PX - 6]), line('bw-asked', [askedX, top], [askedX, top + VARIANT_ROW_PX - 6])],
    value(row.worstRatio, top + 13.5),
    value(row.nominalRatio, top + 27.5),
    mark(row.state, [stateX, top + 16]),
    text(row.state, [stateX + 18, top + 20], { className: 'bw-strong' }),
  ];
}

function variantKey(top: number, x: number): Child[] {
  const entry = (at: number, words: string, sample: Child): Child[] => [sample, text(words, [at + 32, top + 9], { className: 'bw-small' })];
  return [
    ...entry(x, 'full thread, worst', el('rect', { class: 'bw-worst-bar', x, y: top, width: 26, height: BAR_PX })),
    ...entry(x + 160, 'nominal', el('rect', { class: 'bw-nominal-bar', x: x + 160, y: top, width: 26, height: BAR_PX })),
    ...entry(x + 262, 'asked, ratio ÷ d', line('bw-asked', [x + 275, top - 3], [x + 275, top + BAR_PX + 3])),
  ];
}

/** Engagement of every variant, worst and nominal, against the ratio asked; the state as shape and word. */
export function variantChartSvg(rows: readonly VariantRow[], { widthPx = DEFAULT_WIDTH_PX }: ChartOptions = {}): string {
  const largest = Math.max(1, ...rows.flatMap(row => [row.worstRatio ?? 0, row.nominalRatio ?? 0, row.askedRatio ?? 0]));
  const chartPx = Math.max(LEAST_WIDTH_PX, widthPx);
  const namePx = Math.min(NAME_SHARE * chartPx, nameWidthPx(rows.map(({ name }) => name)));
  const frame = frameOf(chartPx, namePx + 10, 66 + 18 + textWidthPx('not checked', 12, 'bold'), largest);
  const bottom = TOP_PX + rows.length * VARIANT_ROW_PX;
  const said = rows.map(row => `${row.name}: worst ${inDiameters(row.worstRatio)}, nominal ${inDiameters(row.nominalRatio)}, asked ${inDiameters(row.askedRatio)}, ${row.state}`);
  return chart('Engagement of the variants', rows.length === 0 ? 'No variant.' : `${said.join('; ')}.`, frame.widthPx, bottom + MARGIN_PX, [
    ...variantKey(36, MARGIN_PX),
    ...axis(frame, TOP_PX - 4, bottom, value => `${shown(value, Number.isInteger(value) ? 0 : 1)} d`, 1),
    ...rows.map((row, i) => variantBars(row, frame, TOP_PX + i * VARIANT_ROW_PX)),
  ]);
}

const SHARE_ROW_PX = 24;
/** What a name takes above its bar. */
const NAME_LINE_PX = 16;
const SHARE_TOP_PX = 54;
const percent = (share: number | undefined): string => (share === undefined ? NO_VALUE : `${shown(100 * share, 1)} %`);

/** Share of each link of a stack, in the order given; names that have no room beside the bars stand above them. */
export function stackChartSvg(shares: readonly StackShare[], { widthPx = DEFAULT_WIDTH_PX }: ChartOptions = {}): string {
  const wanted = nameWidthPx(shares.map(({ name }) => name));
  const isAbove = wanted > NAME_SHARE * widthPx;
  const frame = frameOf(widthPx, isAbove ? 0 : wanted + 10, 58, Math.max(1, ...shares.map(({ share }) => share ?? 0)));
  const rowPx = SHARE_ROW_PX + (isAbove ? NAME_LINE_PX : 0);
  const bottom = SHARE_TOP_PX + shares.length * rowPx;
  const said = shares.map(({ name, share }) => `${name} ${percent(share)}`);
  return chart('Share of each link in the spread', shares.length === 0 ? 'No link.' : `${said.join('; ')}.`, frame.widthPx, bottom + MARGIN_PX, [
    ...axis(frame, SHARE_TOP_PX - 2, bottom, value => `${shown(100 * value, 0)} %`, 0.01),
    ...shares.map(({ name, share }, i) => {
      const top = SHARE_TOP_PX + i * rowPx + 5;
      const y = isAbove ? top + NAME_LINE_PX : top;
      const named = isAbove ? text(fitted(name, widthPx - 2 * MARGIN_PX, 12), [MARGIN_PX, top + 10], { className: 'bw-halo' }) : nameText(name, frame, y + 10);
      return [named, bar('bw-nominal-bar', frame, y, share ?? 0), text(percent(share), [frame.barX + Math.max(0, share ?? 0) * frame.scale + 5, y + 10], { className: 'bw-small bw-halo' })];
    }),
  ]);
}
