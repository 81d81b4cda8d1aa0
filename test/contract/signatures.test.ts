// What was released stays; arguments are appended, and are optional. That the list holds everything is in generated.test.ts.
import { describe, expect, test } from 'vitest';
import { broken, RELEASED, signaturesOf, type Signatures } from '../../src/release/signatures';
import { METADATA } from '../../src/tools/metadata';

test('released signatures still hold', () => {
  expect(Object.keys(RELEASED).length).toBeGreaterThanOrEqual(126);
  expect(broken(RELEASED, signaturesOf(METADATA.functions))).toEqual([]);
});

describe('a change that would break a workbook is found', () => {
  const BOSS = { 'BOSS.OD': 'hole, wall, [distance]', LIMITS: 'text -> range', GRIP: 'layers…' };
  test.each<[Signatures, string[]]>([
    [BOSS, []],
    [{ ...BOSS, 'BOSS.OD': 'hole, wall, [distance], [draft]', 'BOSS.NEW': 'wall' }, []],
    [{ ...BOSS, 'BOSS.OD': 'hole, [wall], [distance]' }, []],
    [{ LIMITS: 'text -> range', GRIP: 'layers…' }, ['BOSS.OD is gone; workbooks call it, so it must stay']],
    [{ ...BOSS, 'BOSS.OD': 'hole, wall' }, ['BOSS.OD has lost its argument distance']],
    [
      { ...BOSS, 'BOSS.OD': 'wall, hole, [distance]' },
      [
        'BOSS.OD: argument 1 was hole and is wall; arguments keep their place',
        'BOSS.OD: argument 2 was wall and is hole; arguments keep their place',
      ],
    ],
    [{ ...BOSS, 'BOSS.OD': 'hole, wall, distance' }, ['BOSS.OD: distance was optional']],
    [{ ...BOSS, 'BOSS.OD': 'hole, wall, [distance], draft' }, ['BOSS.OD: draft is new, so it must be optional']],
    [{ ...BOSS, GRIP: 'layers' }, ['GRIP: argument 1 was layers… and is layers; arguments keep their place']],
    [{ ...BOSS, LIMITS: 'text' }, ['LIMITS: its result spilled']],
    [{ ...BOSS, GRIP: 'layers… -> range' }, ['GRIP: its result was one value']],
  ])('%j', (now, faults) => expect(broken(BOSS, now)).toEqual(faults));
});
