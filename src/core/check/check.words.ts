import { COMMON_PRACTICE, type CardWords } from '../card';
import { versionText } from '../version';

const rest_WORDS = { kind: 'common practice', sources: COMMON_PRACTICE } as const;

export const CHECK_WORDS: Readonly<Record<string, CardWords>> = {
  'CHECK.MAX': { ...rest_WORDS, example: { args: [1.1, 1.2, 1], result: 'review' } },
  'CHECK.MIN': { ...rest_WORDS, example: { args: [1.5, 2], result: 'fail' } },
  'CHECK.CLEAR': { ...rest_WORDS, example: { args: [0.05, 0.1], result: 'review' } },
  'CHECK.WORST': { ...rest_WORDS, example: { args: [[['pass'], ['review'], ['']]], result: 'not checked' } },
  VERSION: { kind: 'common practice', sources: COMMON_PRACTICE, example: { args: [], result: versionText() }, notLive: 'text' },
};
