// The map and the bars read back: areas where the states are, lines where the margin is, hostile names as text.
import { describe, expect, test } from 'vitest';
import { contour } from '../../src/figure/contour';
import { stateMapOf } from '../../src/figure/state-map';
import { sensitivityChartSvg, stateMapSvg } from '../../src/figure/study-charts';
import { value } from '../kit/ask';
import { askedMap } from '../../src/joint/study/map';
import { LOGGER } from './joints';
import { elements, ofClass, pointsOf, viewBox, allPoints } from './read-svg';

const spread = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));
const JOINT = { ...LOGGER, length: 16 };
const [ODS, WALLS] = [spread(4, 10, 60), spread(1, 4, 60)];
const mapped = () => stateMapOf(askedMap(Object.entries(JOINT), 'boss OD', [ODS], 'wall', [WALLS], undefined));
const map = mapped();
const svg = stateMapSvg(map);

const AREAS = { pass: 'bw-map-pass', review: 'bw-map-review', fail: 'bw-map-fail' } as const;
const areasOf = (name: string): { x: number; y: number; width: number; height: number }[] =>
  ofClass(elements(svg), name)
    .filter(({ attributes }) => !(attributes.class ?? '').includes('bw-map-key'))
    .map(({ attributes: { x, y, width, height } }) => ({ x: Number(x), y: Number(y), width: Number(width), height: Number(height) }));

describe('the map', () => {
  test('its states are those of JOINT.MAP', () => {
    const cells = value('JOINT.MAP', Object.entries(JOINT), 'boss OD', [ODS], 'wall', [WALLS]) as unknown[][];
    expect(map.states).toEqual(cells.slice(1).map(row => row.slice(1)));
  });

  test('each state takes as much of the plane as it has points', () => {
    const all = Object.values(AREAS).flatMap(areasOf);
    const size = (list: typeof all): number => list.reduce((sum, { width, height }) => sum + width * height, 0);
    let compared = 0;
    for (const [state, name] of Object.entries(AREAS)) {
      const share = map.states.flat().filter(one => one === state).length / 3600;
      expect(size(areasOf(name)) / size(all)).toBeCloseTo(share, 2);
      if (share > 0) compared++;
    }
    expect(compared).toBe(3);
  });

  test('colour is not alone: what fails and what is to be reviewed is hatched', () => {
    for (const state of ['fail', 'review'])
      expect(elements(svg).filter(({ attributes }) => attributes.fill === `url(#bw-map-${state}-hatch)`).length).toBeGreaterThan(10);
    expect(svg).not.toContain('url(#bw-map-pass');
  });

  test('axes are named with both ends, the present point is marked, all inside the picture', () => {
    const texts = elements(svg)
      .filter(({ name }) => name === 'text')
      .map(({ content }) => content);
    expect(texts).toEqual(expect.arrayContaining(['boss OD, mm', 'wall, mm', '4.00', '10.00', '1.00', 'now', 'fail', 'review', 'pass']));
    const [now] = ofClass(elements(svg), 'bw-map-now');
    const [left, right] = [64, 690];
    // 6.4 on cells from 4 to 10 with half a cell at each end
    const step = 6 / 59;
    expect(Number(now?.attributes.cx)).toBeCloseTo(left + ((6.4 - 4 + step / 2) / (6 + step)) * (right - left), 1);
    const { width, height } = viewBox(svg);
    for (const [x, y] of allPoints(svg)) expect(x >= 0 && x <= width && y >= 0 && y <= height, `${x} ${y}`).toBe(true);
  });

  test('what stands in the way is written where it does, and over nothing else', () => {
    const texts = elements(svg).filter(({ name }) => name === 'text');
    const limits = texts.filter(({ attributes }) => (attributes.class ?? '').includes('bw-map-limit'));
    expect(limits.length).toBeGreaterThanOrEqual(2);
    for (const { content, attributes } of limits) {
      const [x, y] = [Number(attributes.x), Number(attributes.y) - 4];
      const column = Math.floor(((x - 64) / 626) * 60);
      const height = viewBox(svg).height - 46 - 62;
      const row = 59 - Math.floor(((y - 62) / height) * 60);
      expect(map.limits[row]?.[column]?.startsWith(content.replace('…', '')), `${content} at ${x}, ${y}`).toBe(true);
      // the reason that a row of JOINT.TABLE has there
      const joint = { ...JOINT, 'boss OD': ODS[column], wall: WALLS[row] };
      const reason = value('JOINT.VALUE', [Object.keys(joint)], [Object.values(joint)], 'reason');
      expect(String(reason).startsWith(content.replace('…', '')), `${content}: ${String(reason)}`).toBe(true);
    }
  });

  test.each([280, 600])('words stand beside each other %d px wide', widthPx => {
    const coarse = { x: spread(4, 8, 9), y: spread(1.5, 3.75, 10) };
    const joint = {
      ...JOINT,
      wall: 2.85,
      'boss OD': 6,
      'board plane': 7,
      ratio: 2.5,
      'boss height': 13.5,
      'hole depth': 14.4,
      face: 'show',
    };
    const narrow = stateMapSvg(stateMapOf(askedMap(Object.entries(joint), 'boss OD', [coarse.x], 'wall', [coarse.y], undefined)), {
      widthPx,
    });
    const inPlane = elements(narrow).filter(({ name, attributes }) => name === 'text' && (attributes.class ?? '').includes('bw-halo'));
    const boxes = inPlane.map(({ content, attributes }) => {
      const [x, y, width] = [Number(attributes.x), Number(attributes.y), 5 * content.length];
      const from = attributes['text-anchor'] === 'middle' ? x - width / 2 : x;
      return { content, from, to: from + width, y };
    });
    expect(boxes.length).toBeGreaterThanOrEqual(5);
    for (const one of boxes)
      for (const other of boxes)
        if (one !== other)
          expect(Math.abs(one.y - other.y) < 11 && one.from < other.to && other.from < one.to, `${one.content} and ${other.content}`).toBe(
            false,
          );
  });

  test('the thick line is the edge of what fails', () => {
    const edge = ofClass(elements(svg), 'bw-map-edge').flatMap(one => pointsOf(one));
    expect(edge.length).toBeGreaterThan(20);
    const failing = areasOf(AREAS.fail);
    const cell = 626 / 60;
    const near = edge.filter(([x, y]) =>
      failing.some(
        area => x > area.x - 1.5 * cell && x < area.x + area.width + 1.5 * cell && y > area.y - cell && y < area.y + area.height + cell,
      ),
    );
    expect(near.length).toBe(edge.length);
  });

  test('hostile names are text', () => {
    const bad = stateMapSvg({ ...map, x: { ...map.x, name: '<script>' } });
    expect(bad).not.toContain('<script');
  });

  test('60 × 60 joints are drawn while a sheet is edited', () => {
    const start = performance.now();
    stateMapSvg(mapped());
    expect(performance.now() - start).toBeLessThan(1500);
  });
});

describe('lines of one height', () => {
  test('of a plane: straight, where it has that height', () => {
    const plane = spread(0, 9, 10).map(y => spread(0, 9, 10).map(x => 2 * x + y));
    const pieces = contour(plane, 7.5);
    expect(pieces.length).toBeGreaterThan(5);
    for (const [x, y] of pieces.flat()) expect(2 * x + y).toBeCloseTo(7.5, 9);
  });

  test('none where there is no height', () =>
    expect(
      contour(
        [
          [1, undefined],
          [3, 4],
        ],
        2,
      ),
    ).toEqual([]));
});

describe('the bars', () => {
  const bars = sensitivityChartSvg('engagement min', 'mm', [
    { name: 'length', change: 0.8, share: 0.926 },
    { name: 'board', change: 0.176, share: 0.045 },
    { name: '<b>', change: 0, share: 0 },
  ]);
  test('as long as the changes, each with its worth', () => {
    const [first, second, ...more] = ofClass(elements(bars), 'bw-nominal-bar').map(({ attributes }) => Number(attributes.width));
    expect((first ?? 0) / (second ?? 1)).toBeCloseTo(0.8 / 0.176, 2);
    expect(more).toEqual([]);
    expect(bars).toContain('±0.800 mm, 92.6 %');
    expect(bars).not.toContain('<b>');
  });
});
