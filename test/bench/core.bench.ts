// How fast the core is; printed, never asserted. npm run bench:core
import { bench, describe } from 'vitest';
import { bossOutsideDiaMm } from '../../src/core/boss/boss';
import { OUTPUTS } from '../../src/joint/evaluate';
import { call } from '../../src/registry';

const NAMES = ['screw', 'head', 'length', 'material', 'wall', 'board plane', 'seat', 'board', 'hole', 'relief', 'pilot', 'pilot held at', 'boss OD', 'boss height', 'hole depth', 'bottom gap'];
const row = (i: number): unknown[] => ['ST2.9', 'ISO 7049', [9.5, 13, 16, 19][i % 4], 'ABS', 2.5 + (i % 7) / 10, 5.5, 2.5, 1.6, 3.4, 0.8, 2.4, 'mouth', 6.4, 14, 14.75, 1];
const variants = (n: number): unknown[][] => [NAMES, ...Array.from({ length: n }, (_, i) => row(i))];
const TWENTY = [OUTPUTS.slice(0, 18).concat('state', 'reason')];

describe('BOSS.OD, 10,000 calls', () => {
  bench('bare formula', () => {
    for (let i = 0; i < 10_000; i++) bossOutsideDiaMm(2.4 + i * 1e-4, 1.2, 14, 0.5);
  });
  bench('call with numbers', () => {
    for (let i = 0; i < 10_000; i++) call('BOSS.OD', [2.4 + i * 1e-4, 1.2, 14, 0.5]);
  });
  bench('call with units', () => {
    for (let i = 0; i < 10_000; i++) call('BOSS.OD', ['0.167 in + 0.25 mm', 1.2, 14, '0.5°']);
  });
});

describe('JOINT.TABLE, 20 outputs', () => {
  for (const n of [10, 100, 500, 900]) {
    const inputs = variants(n);
    bench(`${n} variants`, () => {
      call('JOINT.TABLE', [inputs, TWENTY]);
    });
  }
});
