// The two charts read back: bars as long as their values, state as shape and word, hostile names as text.
import { describe, expect, test } from 'vitest';
import { stackChartSvg, variantChartSvg, variantRow, type VariantRow } from '../../src/figure/charts';
import { LOGGER, variantOf } from './joints';
import { allPoints, boxOf, elements, ofClass, overlap, pointsOf, viewBox } from './read-svg';

const texts = (svg: string): string[] =>
  elements(svg)
    .filter(({ name }) => name === 'text')
    .map(({ content }) => content);
/** Bars of the rows; the first of the class is the sample of the key where there is one. */
const widths = (svg: string, className: string, samples: number): number[] =>
  ofClass(elements(svg), className)
    .slice(samples)
    .map(({ attributes }) => Number(attributes.width));

const ROWS: readonly VariantRow[] = [
  { name: 'ST2.9 × 13', worstRatio: 1.5, nominalRatio: 1.9, askedRatio: 2, state: 'fail' },
  { name: 'ST2.9 × 16', worstRatio: 2.53, nominalRatio: 2.93, askedRatio: 2, state: 'review' },
  { name: 'short', worstRatio: -0.3, nominalRatio: 0.1, askedRatio: 2, state: 'pass' },
  {
    name: '"><script>alert(1)</script>&\u0001',
    worstRatio: undefined,
    nominalRatio: undefined,
    askedRatio: undefined,
    state: 'not checked',
  },
];

describe('variants', () => {
  const svg = variantChartSvg(ROWS);
  test('bars are as long as their ratios, nothing below 0', () => {
    const [first = NaN, second = NaN, ...more] = widths(svg, 'bw-worst-bar', 1);
    expect(first / second).toBeCloseTo(1.5 / 2.53, 3);
    expect(more).toEqual([]);
    expect(widths(svg, 'bw-nominal-bar', 1)).toHaveLength(3);
  });
  test('the ratio required is drawn on the scale of the bars', () => {
    const bar = ofClass(elements(svg), 'bw-worst-bar')[1]?.attributes;
    const asked = pointsOf(ofClass(elements(svg), 'bw-asked')[1] as never)[0]?.[0] ?? NaN;
    expect((asked - Number(bar?.x)) / Number(bar?.width)).toBeCloseTo(2 / 1.5, 3);
  });
  test('each state is a word and a shape of its own', () => {
    expect(texts(svg)).toEqual(
      expect.arrayContaining(['fail', 'review', 'pass', 'not checked', '1.50 d', '2.93 d', '−0.30 d', 'no value']),
    );
    expect(['bw-fail', 'bw-review', 'bw-pass', 'bw-unchecked'].map(name => ofClass(elements(svg), name).map(({ name }) => name))).toEqual([
      ['rect'],
      ['path'],
      ['circle'],
      ['rect'],
    ]);
  });
  test('hostile names are text, and the description names every variant', () => {
    expect(svg).not.toContain('<script');
    expect(elements(svg).find(({ name }) => name === 'desc')?.content).toContain(
      'ST2.9 × 13: worst 1.50 d, nominal 1.90 d, required 2.00 d, fail',
    );
  });
  test('a variant of the joint as a row', () => {
    const row = variantRow('first', variantOf(LOGGER));
    expect([row.state, row.askedRatio]).toEqual(['fail', 2]);
    expect([row.worstRatio, row.nominalRatio]).toEqual([expect.closeTo(4.34 / 2.9, 9), expect.closeTo(5.5 / 2.9, 9)]);
    expect(variantRow('none', variantOf({}))).toEqual({
      name: 'none',
      worstRatio: undefined,
      nominalRatio: undefined,
      askedRatio: 2,
      state: 'not checked',
    });
  });
});

describe('shares of a stack', () => {
  const svg = stackChartSvg([
    { name: 'screw length', share: 0.93 },
    { name: 'seat', share: 0.0145 },
    { name: 'relief', share: undefined },
  ]);
  test('bars as long as the shares, each with its name and per cent', () => {
    const [length = NaN, seat = NaN, ...more] = widths(svg, 'bw-nominal-bar', 0);
    expect(seat / length).toBeCloseTo(0.0145 / 0.93, 3);
    expect(more).toEqual([]);
    expect(texts(svg)).toEqual(expect.arrayContaining(['screw length', '93.0 %', '1.5 %', 'no value']));
  });
});

test.each<[name: string, svg: string]>([
  ['variants', variantChartSvg(ROWS)],
  ['narrow', variantChartSvg(ROWS, { widthPx: 120 })],
  ['no variant', variantChartSvg([])],
  ['long bars', variantChartSvg([{ name: 'x'.repeat(300), worstRatio: 1234, nominalRatio: 5e5, askedRatio: 2, state: 'review' }])],
  [
    'shares',
    stackChartSvg([
      { name: 'a', share: 1 },
      { name: 'b', share: 0 },
    ]),
  ],
  ['no link', stackChartSvg([])],
])('%s: sound, on its sheet, no text over another', (_, svg) => {
  const { width, height } = viewBox(svg);
  expect(svg).not.toMatch(/NaN|undefined|Infinity/);
  expect(allPoints(svg).filter(([x, y]) => !(x >= 0 && x <= width && y >= 0 && y <= height))).toEqual([]);
  const boxes = elements(svg)
    .filter(({ name }) => name === 'text')
    .map(found => boxOf(found, found.attributes.class?.includes('bw-small') === true ? 11 : 12));
  expect(
    boxes.flatMap((a, i) =>
      boxes
        .slice(i + 1)
        .filter(b => overlap(a, b))
        .map(b => `${a.content} | ${b.content}`),
    ),
  ).toEqual([]);
  expect(boxes.filter(box => box.left < 0 || box.right > width)).toEqual([]);
});
