// Pairs of functions that undo each other.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { number, value } from '../kit/ask';
import { SEED } from '../kit/seed';

const mm = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: min * 100, max: max * 100 }).map(hundredths => hundredths / 100);
const tolerance = fc.integer({ min: 1, max: 50 }).map(hundredths => hundredths / 100);
const degrees = fc.integer({ min: 1, max: 300 }).map(hundredths => hundredths / 100);
const share = fc.integer({ min: 1, max: 100 }).map(percent => percent / 100);
const screw = fc.constantFrom('ST2.2', 'ST2.9', 'ST3.5', 'ST4.8', 'M2', 'M3', 'M4', '#4 B', '#4-40');
const seeded = { seed: SEED };

describe(`inverse pairs (seed ${SEED})`, () => {
  test('DRAFT.OFFSET, DRAFT.ANGLE and DRAFT.HEIGHT: each from the two others', () => {
    fc.assert(
      fc.property(mm(1, 40), degrees, (height, draft) => {
        const offset = number('DRAFT.OFFSET', height, draft);
        expect(number('DRAFT.ANGLE', offset, height)).toBeCloseTo(draft, 9);
        expect(number('DRAFT.HEIGHT', offset, draft)).toBeCloseTo(height, 9);
      }),
      seeded,
    );
  });
  test('DRAFT.SIZE there and back', () => {
    fc.assert(
      fc.property(mm(5, 20), mm(1, 20), degrees, (size, distance, draft) => {
        expect(number('DRAFT.SIZE', number('DRAFT.SIZE', size, distance, draft, 'grows'), distance, draft, 'shrinks')).toBeCloseTo(size, 9);
      }),
      seeded,
    );
  });
  test('HOLE.AT and HOLE.MOUTH', () => {
    fc.assert(
      fc.property(mm(1, 6), mm(0, 20), degrees, (hole, depth, draft) => {
        expect(number('HOLE.AT', number('HOLE.MOUTH', hole, depth, draft), depth, draft)).toBeCloseTo(hole, 9);
      }),
      seeded,
    );
  });
  test('HOLE.PILOT and HOLE.THREAD.SHARE', () => {
    fc.assert(
      fc.property(screw, share, (size, e) => {
        expect(number('HOLE.THREAD.SHARE', size, number('HOLE.PILOT', size, e))).toBeCloseTo(e, 9);
      }),
      seeded,
    );
  });
  test('RECESS.DEPTH and RECESS.SEAT', () => {
    fc.assert(
      fc.property(mm(2, 20), share, (boardPlane, part) => {
        const seat = boardPlane * part;
        expect(number('RECESS.SEAT', boardPlane, number('RECESS.DEPTH', boardPlane, seat))).toBeCloseTo(seat, 9);
      }),
      seeded,
    );
  });
  test('RECESS.DEPTH.MIN and RECESS.FLUSH', () => {
    fc.assert(
      fc.property(
        mm(1, 5),
        mm(0, 3).filter(x => x > 0),
        (height, subflush) => {
          expect(number('RECESS.FLUSH', number('RECESS.DEPTH.MIN', height, subflush), height)).toBeCloseTo(subflush, 9);
        },
      ),
      seeded,
    );
  });
  test('RIM.SAG and RIM.PITCH', () => {
    fc.assert(
      fc.property(mm(10, 80), share, mm(60, 400), fc.constantFrom('clamped', 'simple'), (pitch, load, second, ends) => {
        const sag = number('RIM.SAG', pitch, load, 2400, second, ends);
        expect(number('RIM.PITCH', sag, load, 2400, second, ends)).toBeCloseTo(pitch, 9);
      }),
      seeded,
    );
  });
  test('RIB.BASE and RIB.TIP', () => {
    fc.assert(
      fc.property(mm(1, 3), mm(1, 20), degrees, (tip, height, draft) => {
        expect(number('RIB.TIP', number('RIB.BASE', tip, height, draft), height, draft)).toBeCloseTo(tip, 9);
      }),
      seeded,
    );
  });
  test('BOSS.OD and BOSS.WALL: the wall that is asked for is the wall that is there', () => {
    fc.assert(
      fc.property(mm(1, 6), mm(1, 4), mm(1, 20), degrees, (hole, wall, distance, draft) => {
        expect(number('BOSS.WALL', number('BOSS.OD', hole, wall), hole)).toBeCloseTo(wall, 9);
        expect(number('BOSS.WALL', number('BOSS.OD', hole, wall, distance, draft), hole)).toBeCloseTo(
          wall + number('DRAFT.OFFSET', distance, draft),
          9,
        );
      }),
      seeded,
    );
  });
  test('PENETRATION and GRIP add up to the length', () => {
    fc.assert(
      fc.property(mm(10, 40), fc.array(mm(1, 3), { minLength: 1, maxLength: 3 }), (length, layers) => {
        const list = layers.map(layer => [layer]);
        expect(number('PENETRATION', length, list) + number('GRIP', list)).toBeCloseTo(length, 9);
      }),
      seeded,
    );
  });
  test('HOLE.DEPTH leaves the gap that SCREW.BOTTOM finds', () => {
    fc.assert(
      fc.property(mm(10, 40), mm(1, 5), mm(0, 2), tolerance, tolerance, (length, grip, gap, lengthTol, gripTol) => {
        const deepest = length + lengthTol - (grip - gripTol);
        const depth = number('HOLE.DEPTH', deepest, gap, 0.1);
        expect(number('SCREW.BOTTOM', depth, 0.1, length, lengthTol, grip, gripTol)).toBeCloseTo(gap, 9);
      }),
      seeded,
    );
  });
  test('BOSS.CONFLICT: the wall that satisfies both is the one whose allowed diameter is the one asked', () => {
    fc.assert(
      fc.property(
        screw,
        mm(1, 4),
        share.filter(e => e < 1),
        (size, wall, e) => {
          const hole = number('HOLE.PILOT', size, e);
          const [asked, , both] = (value('BOSS.CONFLICT', size, wall, hole) as number[][])[1] as [number, number, number];
          const [, allowed] = (value('BOSS.CONFLICT', size, both, hole) as number[][])[1] as [number, number];
          expect(allowed).toBeCloseTo(asked, 9);
        },
      ),
      seeded,
    );
  });
  test('TORQUE.SET: from its share of the way back to the share', () => {
    fc.assert(
      fc.property(mm(1, 2), mm(3, 5), share, (drive, strip, part) => {
        expect((number('TORQUE.SET', drive, strip, part) - drive) / (strip - drive)).toBeCloseTo(part, 9);
      }),
      seeded,
    );
  });
});
