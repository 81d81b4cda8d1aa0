import { COMMON_PRACTICE, type CardWords } from '../core/card';

const REST = { kind: 'common practice', sources: COMMON_PRACTICE, notLive: 'text' } as const;

export const ABOUT_WORDS: Readonly<Record<string, CardWords>> = {
  REASON: { ...REST, example: { args: ['BOSS.OD', 2.75, 1.2], result: 'ok' } },
  ABOUT: { ...REST, example: { args: ['BOSS.OD', 'formula'], result: 'D = d_h + 2·t + 2·z·tan(α)' } },
  WORKING: {
    ...REST,
    example: {
      args: ['BOSS.OD', '0.167 in + 0.25 mm', 1.2],
      result: 'hole "0.167 in + 0.25 mm" = 4.4918 mm\noutside diameter = 4.4918 + 2·1.2 = 6.8918 mm',
    },
  },
};
