import { card, COMMON_PRACTICE, type Card } from '../card';
import { ANYTHING, BLOCK, param } from '../read/params';
import { versionText } from '../version';
import * as F from './check';

const T = 'Checks, variants, trace';
const state = { shape: 'text', name: 'state' } as const;
const rest = { result: state, kind: 'common practice', sources: COMMON_PRACTICE } as const;

export const CHECK_CARDS: readonly Card[] = [
  card('CHECK.MAX', T, [param('value', ANYTHING), param('limit', ANYTHING), param('review', ANYTHING, { blank: 'absent' })], F.checkMax, {
    ...rest,
    example: { args: [1.1, 1.2, 1], result: 'review' },
  }),
  card('CHECK.MIN', T, [param('value', ANYTHING), param('limit', ANYTHING), param('review', ANYTHING, { blank: 'absent' })], F.checkMin, {
    ...rest,
    example: { args: [1.5, 2], result: 'fail' },
  }),
  card('CHECK.CLEAR', T, [param('value', ANYTHING), param('review', ANYTHING, { blank: 'absent' })], F.checkClear, {
    ...rest,
    example: { args: [0.05, 0.1], result: 'review' },
  }),
  card('CHECK.WORST', T, [param('states', { ...BLOCK, takesEverything: true })], F.checkWorst, {
    ...rest,
    example: { args: [[['pass'], ['review'], ['']]], result: 'not checked' },
  }),
  card('VERSION', T, [param('after', ANYTHING, { blank: 'absent' })], versionText, {
    result: { shape: 'text', name: 'version of functions and data' },
    kind: 'common practice',
    sources: COMMON_PRACTICE,
    example: { args: [], result: versionText() },
    notLive: 'text',
  }),
];
