// What cannot exist is refused: no negative size, no wall thicker than half its boss, nothing that grows where it must shrink.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Card } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { refusal } from '../kit/ask';
import { fitting } from '../kit/arguments';
import { SEED } from '../kit/seed';

/** Negative numbers of these mean something, and their help says what. */
const MAY_BE_NEGATIVE =
  /^(RIB\.TIP|RECESS\.FLUSH|RECESS\.TOOL|BOSS\.FLAT|BOSS\.STEEL|BOSS\.CORNER|SCREW\.BOTTOM|BOARD\.CLAMP|BOARD\.MARGIN|ENGAGEMENT.*|INSERT\.ENGAGEMENT|INSERT\.LANDING|RIM\.GAP.*|LIP\.FIT)$/;
/** Coordinates, deviations, sums with a sign, and what is quoted or only repeats its inputs. */
const SIGNED =
  /^(LENGTH\.MM|ANGLE\.DEG|LIMITS|SCREW\.LENGTH\.(TOL|TABLE)|STACK\..*|JOINT\..*|CHECK\..*|VARIANT\..*|MATERIAL.*|REASON|WORKING)$/;

/** Numbers with a unit in an answer. */
function sizes({ result }: Card, answer: unknown): number[] {
  if (typeof answer === 'number') return [answer];
  const rows = answer as unknown[][];
  return result.shape === 'table' || result.shape === 'row' ? rows.flat().filter(cell => typeof cell === 'number') : [];
}

describe(`no size below zero (seed ${SEED})`, () => {
  const cards = [...CARDS.values()].filter(({ id }) => !MAY_BE_NEGATIVE.test(id) && !SIGNED.test(id));
  let looked = 0;

  test.each(cards.map(card => [card.id, card] as const))('%s', (id, card) => {
    fc.assert(
      fc.property(fc.tuple(...card.params.map((_, i) => fitting(card, i))), args => {
        const answer = call(id, args);
        if (!answer.ok) return;
        for (const size of sizes(card, answer.value)) {
          looked++;
          if (size < 0) expect.fail(`${id}(${JSON.stringify(args)}) gives ${size}`);
        }
      }),
      { seed: SEED, numRuns: 400 },
    );
  });

  test('sizes were looked at', () => expect(looked).toBeGreaterThan(15_000));
});

describe(`a boss with a hole (seed ${SEED})`, () => {
  const mm = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const boss = fc.record({
    od: mm(2, 12),
    hole: mm(0.5, 12),
    distance: mm(0, 40),
    outside: mm(0, 10),
    draft: mm(-10, 10),
    depth: mm(0, 40),
  });

  test('its wall is at most half of it where the hole is, and all of it below', () => {
    let walls = 0;
    fc.assert(
      fc.property(boss, ({ od, hole, distance, outside, draft, depth }) => {
        const answer = call('BOSS.WALL', [od, hole, distance, outside, draft, `${depth} mm`]);
        if (!answer.ok) return;
        const outsideMm = od + 2 * distance * Math.tan((outside * Math.PI) / 180);
        const wall = answer.value as number;
        expect(wall).toBeGreaterThan(0);
        if (distance <= depth + 1e-9) expect(wall).toBeLessThan(outsideMm / 2);
        else expect(wall).toBeCloseTo(outsideMm, 9);
        walls++;
      }),
      { seed: SEED, numRuns: 3000 },
    );
    expect(walls).toBeGreaterThan(500);
  });

  test('refused exactly where the hole closes or breaks out on its way down', () => {
    let [refused, answered] = [0, 0];
    fc.assert(
      fc.property(boss, ({ od, hole, distance, outside, draft, depth }) => {
        const tan = (deg: number): number => Math.tan((deg * Math.PI) / 180);
        // step by step from the mouth to the bottom
        const exists = Array.from({ length: 201 }, (_, i) => (depth * i) / 200).every(z => {
          const holeMm = hole - 2 * z * tan(draft);
          return holeMm > 0 && holeMm < od + 2 * z * tan(outside);
        });
        const answer = call('BOSS.WALL', [od, hole, distance, outside, draft, `${depth} mm`]);
        expect(answer.ok, JSON.stringify(answer)).toBe(exists);
        if (exists) answered++;
        else refused++;
      }),
      { seed: SEED, numRuns: 3000 },
    );
    expect([refused > 500, answered > 500]).toEqual([true, true]);
  });

  test('a pilot narrows on its way down', () => {
    let holes = 0;
    fc.assert(
      fc.property(mm(0.5, 6), mm(0, 60), mm(0, 20), (mouth, depth, draft) => {
        const answer = call('HOLE.AT', [mouth, depth, draft]);
        if (!answer.ok) return;
        holes++;
        expect(answer.value).toBeGreaterThan(0);
        expect(answer.value).toBeLessThanOrEqual(mouth);
      }),
      { seed: SEED, numRuns: 1000 },
    );
    expect(holes).toBeGreaterThan(100);
  });
});

describe('what reached a cell before and cannot exist', () => {
  const CASES: readonly (readonly [words: string, id: string, ...args: readonly unknown[]])[] = [
    ['it does not go through', 'BOARD.REACH', 'M3 pan', 'M2 medium', 'M3'],
    ['it does not go through', 'BOARD.REACH', 5.6, 2, 'M3'],
    ['it does not go through', 'RECESS.FLOAT', 5.6, 2, 'M3', 0.1],
    ['it does not go through', 'BOARD.HOLD', 8, 4, 6],
    ['the hole closes at 68.75 mm', 'HOLE.AT', 2.4, 200, 1],
    ['the hole closes at 68.75 mm', 'HOLE.AT', 2.4, 68.75, 1],
    ['the hole closes at 68.75 mm', 'HOLE.TIGHT', 'ST2.9', 2.4, 200, 1],
    ['must end before 22.9 mm, where the hole closes', 'BOSS.WALL', 6, 2.4, 30, 0.5, 3],
    ['must end before 22.9 mm, where the hole closes', 'BOSS.ENDS', 6, 2.4, 30, 0.5, 3],
    ['must be below od', 'BOSS.WALL', 6, 7],
    ['must be below od', 'BOSS.WALL', 6, 6],
    ['must be below od', 'BOSS.ENDS', 6, 8, 10],
    ['where the hole breaks out of the boss', 'BOSS.WALL', 6, 2.4, 20, 0, -6],
    ['where the hole breaks out of the boss', 'BOSS.ENDS', 6, 2.4, 20, 0, -6],
    ['the feature is drafted away at 143.22 mm', 'DRAFT.SIZE', 5, 200, 1, 'shrinks'],
    ['must be more than half of od', 'BOSS.CORNER', 6, 3, 8, 2, 12],
    ['the boss touches the corner at its free end', 'BOSS.CORNER', 6, 3.5, 3.5, 6, 12],
    ['must be at least five times both plays', 'PATTERN.TURN', 1, 2, 14.9],
    ['give at least 2 screws', 'PATTERN.FIT', 10, 10, 0.2, 0.2, 0.4],
    ['rows 1 and 3 are the same place', 'PATTERN.FIT', [[10], [20], [10]], 10, 0.2, 0.2, 0.4],
    ['asks for 90° and more', 'DRAFT.TEXTURE', '1°', 2],
    ['below 90°', 'DRAFT.TEXTURE', '90°', 0.1],
    ['at most board_plane', 'RECESS.DEPTH', 2, 5],
    ['at most board_plane', 'RECESS.SEAT', 2, 5],
    ['the hole comes out of the outer face at 7 mm', 'HOLE.FLOOR', 2, 5, 12],
    ['leave no wall', 'LIP.SKIN', 1.5, 1.4, 0.2, 2],
    ['at most 10 % of the pin', 'HOOP.STRESS', 5, 3, 6, 2400, 0.38],
    ['at most a tenth of its length', 'PIN.DEFLECTION', 40, 2.4, 50],
    ['at most a third of the length', 'SNAP.STRAIN', 6, 15, 2],
    ['at most a third of the length', 'SNAP.FORCE', 6, 15, 5, 2, 2400],
    ['at most a third of the length', 'SNAP.DEFLECTION', '10 %', 35, 2, 1],
    ['at most 10 %, and this is 13.3 %', 'SNAP.STRAIN', 5, 15, 4],
    ['at most 10 %, and this is 13.3 %', 'SNAP.FORCE', 5, 15, 5, 4, 2400],
    ['must be above 0 and at most 0.1', 'SNAP.DEFLECTION', '11 %', 15, 2],
    // arctan(1/0.3) is 73.30°
    ['the ramp is self-locking from 73.3°', 'SNAP.MATING', 14, 74, 0.3],
    ['the ramp is self-locking from 45°', 'SNAP.MATING', 14, 45, 1],
    ['at most a tenth of the span', 'BOARD.SAG', 1000, 60, 20, 1.6, 20000],
    ['at most a tenth of the span', 'BOARD.STRAIN', 1000, 60, 20, 1.6, 20000],
    ['a strain of at most 10 %', 'BOARD.SAG', 1250, 10, 5, 5, 1000],
    ['where one side is 2.5 times the other', 'BOARD.FREQUENCY', 200, 79, 1.6, 60, 20000, 0.2, 'corners'],
    ['edges is blank', 'BOARD.FREQUENCY', 100, 80, 1.6, 60, 20000, 0.2],
    ['safety is 0.5: must be at least 1', 'PULLOUT.SEAT', 'M3 pan', 2, 45, 0.5],
    ['safety is 0.99: must be at least 1', 'SCREW.COUNT', 100, 50, 0.99],
    ['thread_friction is 0 or blank', 'TORQUE.CLAMP', 200, 'ST2.9', 0, 0.2, 5.6, 3.4],
    ['the screw of 5 mm ends before the boss face', 'PENETRATION', 5, 6],
    ['the least grip would be below 0', 'GRIP.LIMITS', [[0.5]], [[1]]],
    ['a wider hole leaves no thread', 'HOLE.THREAD.SHARE', 'ST2.9', 3],
  ];
  test.each(CASES.map(([words, id, ...args]) => ({ words, id, args })))('$id: $words', ({ words, id, args }) =>
    expect(refusal(id, ...args)).toContain(words),
  );
});
