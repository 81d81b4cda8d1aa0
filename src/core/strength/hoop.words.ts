import { type Source } from '../kinds';
import type { CardWords } from '../card';

const LAME: readonly Source[] = [
  { title: 'thick-walled cylinder (Lamé), rigid pin', held: 'derived' },
  { title: 'Crawford, Plastics Engineering, 3rd ed., example 2.7', held: 'read in 1 secondary copy; edition from memory' },
];
const LASTING =
  'An estimate: elastic and short-term. Use a creep modulus for a lasting fit. At a weld line the ring bears half as much or less.';

export const HOOP_WORDS: Readonly<Record<string, CardWords>> = {
  'HOOP.STRESS': { kind: 'handbook formula', sources: LAME, example: { args: [0.04, 4, 8, 2600, 0.4], result: 20.97 }, caution: LASTING },
  'HOOP.LIMIT': { kind: 'handbook formula', sources: LAME, example: { args: [60, 4, 8, 2400, 0.38], result: 0.1228 }, caution: LASTING },
  'HOOP.PUSH': {
    kind: 'handbook formula',
    sources: LAME,
    example: { args: [0.04, 4, 8, 6, 2600, 0.4, 0.2], result: 189.7 },
    caution: LASTING,
  },
};
