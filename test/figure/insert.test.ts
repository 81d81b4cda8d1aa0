// An insert in the section: where it stands, how wide it is, what is dimensioned of it.
import { describe, expect, test } from 'vitest';
import { section } from '../../src/figure/section';
import { Variant } from '../../src/joint/variant';
import { elements, ofClass, type Point, pointsOf } from './read-svg';

type Inputs = Readonly<Record<string, unknown>>;

const INSERT: Inputs = {
  screw: 'M3',
  head: 'pan',
  material: 'ABS',
  wall: 3,
  'board plane': 5.5,
  seat: 2.5,
  board: 1.6,
  'boss height': 9,
  'insert diameter': 4.6,
  'insert length': 5.7,
  'insert hole': 4,
  'insert below face': 0.4,
};
const drawn = (inputs: Inputs): string => section(new Variant(new Map(Object.entries(inputs)))).svg;
const pathsOf = (svg: string, name: string): Point[] => ofClass(elements(svg), name).flatMap(pointsOf);
const span = (values: readonly number[]): readonly [number, number] => [Math.min(...values), Math.max(...values)];

/** In mm from the axis and from the boss face: of the boss it is known that it is 9.2 wide at its face and 9 high. */
function insertIn(inputs: Inputs): { readonly radii: readonly number[]; readonly depths: readonly number[] } {
  const svg = drawn(inputs);
  const boss = pathsOf(svg, 'bw-thread-half');
  const [face] = span(boss.map(([, y]) => y));
  const atFace = boss.filter(([, y]) => Math.abs(y - face) < 0.01).map(([x]) => x);
  const [left, right] = span(atFace);
  const [axis, scale] = [(left + right) / 2, (right - left) / Number(inputs['boss OD'] ?? 9.2)];
  const points = pathsOf(svg, 'bw-insert');
  const unique = (values: readonly number[]): number[] =>
    [...new Set(values.map(value => Math.round(value * 100) / 100))].sort((a, b) => a - b);
  return { radii: unique(points.map(([x]) => (x - axis) / scale)), depths: unique(points.map(([, y]) => (y - face) / scale)) };
}

describe('an insert is drawn', () => {
  test('on both sides of the screw, from below the face to its length', () => {
    const { radii, depths } = insertIn(INSERT);
    // M3 is 2.98 at most
    [-2.3, -1.49, 1.49, 2.3].forEach((mm, i) => expect(radii[i]).toBeCloseTo(mm, 1));
    expect(radii).toHaveLength(4);
    expect(depths).toHaveLength(2);
    expect(depths[0]).toBeCloseTo(0.4, 1);
    expect(depths[1]).toBeCloseTo(0.4 + 5.7, 1);
  });

  test.each([
    ['insert diameter', { 'insert diameter': 5, 'boss OD': 9.2 }, (found: ReturnType<typeof insertIn>) => found.radii[3], 2.5],
    ['insert length', { 'insert length': 4.2 }, (found: ReturnType<typeof insertIn>) => found.depths[1], 4.6],
    ['insert below face', { 'insert below face': 1 }, (found: ReturnType<typeof insertIn>) => found.depths[0], 1],
  ])('%s moves it', (_, change, of, mm) => expect(of(insertIn({ ...INSERT, ...change }))).toBeCloseTo(mm, 1));

  test('with its two sizes, and no pilot nor relief', () => {
    const said = JSON.stringify(section(new Variant(new Map(Object.entries(INSERT)))));
    for (const words of ['insert diameter', 'insert length']) expect(said).toContain(words);
    expect(said).not.toMatch(/pilot mouth|relief diameter/);
  });

  test('not where there is none, nor without its length', () => {
    for (const none of [{ 'insert diameter': null, pilot: 2.6 }, { 'insert length': null }])
      expect(pathsOf(drawn({ ...INSERT, ...none }), 'bw-insert')).toEqual([]);
  });

  test('in classes and hatches that the figure defines', () => {
    const svg = drawn(INSERT);
    const classes = [...svg.matchAll(/class="([^"]+)"/g)].flatMap(([, names = '']) => names.split(' '));
    expect(classes).toContain('bw-insert');
    expect(svg.slice(svg.indexOf('<style'), svg.indexOf('</style>'))).toContain('.bw-insert{');
    const filled = [...new Set([...svg.matchAll(/url\(#([^)]+)\)/g)].map(([, id = '']) => id))];
    expect(filled).toContain('bw-hatch-insert');
    expect(filled.filter(id => !svg.includes(`id="${id}"`))).toEqual([]);
  });
});
