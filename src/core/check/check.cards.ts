import { card, type Calculation } from '../card';
import { ANYTHING, BLOCK, param } from '../read/params';
import { versionText } from '../version';
import * as F from './check';

const T = 'Checks, variants, trace';
const state = { shape: 'text', name: 'state' } as const;
const rest = { result: state } as const;

export const CHECK_CARDS: readonly Calculation[] = [
  card('CHECK.MAX', T, [param('value', ANYTHING), param('limit', ANYTHING), param('review', ANYTHING, { blank: 'absent' })], F.checkMax, {
    ...rest,
  }),
  card('CHECK.MIN', T, [param('value', ANYTHING), param('limit', ANYTHING), param('review', ANYTHING, { blank: 'absent' })], F.checkMin, {
    ...rest,
  }),
  card('CHECK.CLEAR', T, [param('value', ANYTHING), param('review', ANYTHING, { blank: 'absent' })], F.checkClear, { ...rest }),
  card('CHECK.WORST', T, [param('states', { ...BLOCK, takesEverything: true })], F.checkWorst, { ...rest }),
  card('VERSION', T, [param('after', ANYTHING, { blank: 'absent' })], versionText, {
    result: { shape: 'text', name: 'version of functions and data' },
  }),
];
