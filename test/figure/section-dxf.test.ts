// The drawing for design programs, read back: the sizes of the joint where they belong, outlines closed, plain text.
import { describe, expect, test } from 'vitest';
import { ascii } from '../../src/figure/dxf';
import { sectionDxf } from '../../src/figure/section-dxf';
import { type Inputs, JOINTS, LOGGER, variantOf } from './joints';
import { type DrawnEntity, endsOf, entitiesOf, groupsOf, looseEnds, numberAt } from './read-dxf';

const drawn = (inputs: Inputs): DrawnEntity[] => entitiesOf(sectionDxf(variantOf(inputs)));
const on = (list: readonly DrawnEntity[], layer: string, is?: string): DrawnEntity[] =>
  list.filter(entity => entity.layer === layer && (is === undefined || entity.is === is));

/** Diameters of circles on a layer, the widest first. */
const diameters = (list: readonly DrawnEntity[], layer: string): number[] =>
  on(list, layer, 'CIRCLE')
    .map(circle => 2 * numberAt(circle, 40))
    .sort((a, b) => b - a);

/** Every corner of a layer: distance from the axis, and how far below the boss face. */
const corners = (list: readonly DrawnEntity[], layer: string): (readonly [r: number, z: number])[] =>
  on(list, layer).flatMap(entity => endsOf(entity).map(([x, y]) => [Math.abs(x), -y] as const));

const SAME_MM = 1e-9;
const FLOOR = 500;
const CUTS = ['HEAD_HALF', 'BOARD', 'THREAD_HALF'] as const;

/** The sizes that the joint answers and the drawing holds, each where it belongs: compared and wrong. */
function against(inputs: Inputs, list: readonly DrawnEntity[]): { compared: number; wrong: string[] } {
  const variant = variantOf(inputs);
  const mm = (name: string): number | undefined => {
    const value = variant.outcome(name);
    return typeof value === 'number' ? value : undefined;
  };
  const wrong: string[] = [];
  let compared = 0;
  const holds = (what: string, asked: number | undefined, held: readonly number[]): void => {
    if (asked === undefined || held.length === 0) return;
    compared++;
    if (!held.some(value => Math.abs(value - asked) <= SAME_MM)) wrong.push(`${what}: ${asked} is not among ${held.join(', ')}`);
  };
  const [head, boss] = [corners(list, 'HEAD_HALF'), corners(list, 'THREAD_HALF')];
  const faceZ = Math.min(...head.map(([, z]) => z));
  holds('recess mouth', mm('recess mouth'), diameters(list, 'RECESS').slice(0, 1));
  holds('recess diameter', mm('recess diameter'), diameters(list, 'RECESS').slice(-1));
  holds('post OD', mm('post OD'), diameters(list, 'POST'));
  if (head.length > 0) holds('hole', mm('hole'), diameters(list, 'HOLE'));
  holds('board hole', mm('board hole'), diameters(list, 'BOARD_HOLE'));
  holds('boss OD', mm('boss OD'), diameters(list, 'BOSS').slice(-1));
  holds('boss OD root', mm('boss OD root'), diameters(list, 'BOSS').slice(0, 1));
  if (mm('insert diameter') === undefined) holds('pilot mouth', mm('pilot mouth'), diameters(list, 'PILOT').slice(0, 1));
  if ((mm('hole depth') ?? NaN) <= (mm('boss height') ?? NaN) + (mm('wall') ?? NaN))
    holds(
      'pilot bottom',
      mm('pilot bottom'),
      corners(list, 'THREAD_HALF').map(([r]) => 2 * r),
    );
  const floorR = (mm('recess diameter') ?? NaN) / 2;
  holds(
    'recess depth',
    mm('recess depth'),
    head.filter(([r]) => Math.abs(r - floorR) <= SAME_MM).map(([, z]) => z - faceZ),
  );
  const freeR = (mm('boss OD') ?? NaN) / 2;
  holds(
    'boss face',
    boss.length > 0 ? 0 : undefined,
    boss.filter(([r]) => Math.abs(r - freeR) <= SAME_MM).map(([, z]) => z),
  );
  holds(
    'hole depth',
    Math.min(mm('hole depth') ?? NaN, (mm('boss height') ?? NaN) + (mm('wall') ?? NaN)),
    boss.map(([, z]) => z),
  );
  holds(
    'boss height',
    mm('boss height'),
    boss.map(([, z]) => z),
  );
  holds(
    'back of the wall',
    (mm('boss height') ?? NaN) + (mm('wall') ?? NaN),
    boss.map(([, z]) => z),
  );
  const screw = corners(list, 'SCREW').map(([, z]) => z);
  holds('tip of the screw', (mm('screw length') ?? NaN) - (mm('grip') ?? NaN), screw.slice(0, screw.length));
  holds(
    'boss OD root in section',
    mm('boss OD root'),
    boss.filter(([, z]) => z > SAME_MM && z < (mm('boss height') ?? NaN) + 1).map(([r]) => 2 * r),
  );
  return { compared, wrong };
}

const WITHOUT_ROOT_CORNER = /fillet|groove/;

test('every size stands in the drawing where the joint has it', () => {
  let total = 0;
  for (const [name, inputs] of Object.entries(JOINTS)) {
    const { compared, wrong } = against(inputs, drawn(inputs));
    expect(
      wrong.filter(text => !(WITHOUT_ROOT_CORNER.test(name) && text.startsWith('boss OD root in section'))),
      name,
    ).toEqual([]);
    total += compared;
  }
  expect(total).toBeGreaterThan(FLOOR - 100);
});

test('a drawing whose recess is wider by a micrometre does not pass', () => {
  const text = sectionDxf(variantOf(LOGGER));
  const [circle] = on(entitiesOf(text), 'RECESS', 'CIRCLE');
  const radius = circle?.at.get(40) ?? '';
  const wider = entitiesOf(text.replaceAll(`\n${radius}\n`, `\n${String(Number(radius) + 0.001)}\n`));
  expect(against(LOGGER, wider).wrong.join()).toContain('recess mouth');
});

describe.each(Object.entries(JOINTS))('%s', (_, inputs) => {
  const text = sectionDxf(variantOf(inputs));
  const list = entitiesOf(text);

  test('cut parts, screw and insert are closed outlines', () => {
    const outlines = [...CUTS.map(layer => [...on(list, layer), ...on(list, 'BREAK')]).flat(), ...on(list, 'SCREW'), ...on(list, 'INSERT')];
    const once = [...new Set(outlines)];
    expect(looseEnds(once, SAME_MM)).toEqual([]);
  });
  test('plain ASCII, numbers without exponent, known layers and entities', () => {
    expect(text).toMatch(/^[\n -~]*$/);
    const groups = groupsOf(text);
    const layers = new Set(groups.flatMap(([code, value], i) => (code === 2 && groups[i - 1]?.[1] === 'LAYER' ? [value] : [])));
    for (const [code, value] of groups) if (code >= 10 && code < 60) expect(value, String(code)).toMatch(/^-?\d+\.\d+$/);
    for (const { is, layer } of list) {
      expect(['LINE', 'ARC', 'CIRCLE', 'TEXT']).toContain(is);
      expect(layers).toContain(layer);
    }
  });
});

test('a line that misses its neighbour by a tenth of a micrometre is seen', () => {
  const [first, ...others] = on(drawn(LOGGER), 'SCREW', 'LINE');
  const moved = { ...first, at: new Map([...(first?.at ?? []), [10, String(Number(first?.at.get(10)) + 1e-4)]]) } as DrawnEntity;
  const rest = on(drawn(LOGGER), 'SCREW').filter(({ is }) => is === 'ARC');
  expect(looseEnds([moved, ...others, ...rest], SAME_MM)).not.toEqual([]);
});

test('says its release and its unit', () => {
  const text = sectionDxf(variantOf(LOGGER));
  expect(text).toMatch(/^999\nAll lengths in millimetres/);
  expect(text).toContain('$ACADVER\n  1\nAC1009\n');
  expect(on(entitiesOf(text), 'NOTES', 'TEXT').map(({ at }) => at.get(1))).toContainEqual(expect.stringContaining('in millimetres'));
});

test('a text cannot become groups of its own', () => {
  expect(ascii('a\n  0\nLINE')).toBe('a 0 LINE');
  expect(ascii('Gehäuse Ø 6 µm – ß %%d ^J 字')).toBe('Gehause dia 6 um - ss %d J ?');
});
