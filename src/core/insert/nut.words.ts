import { GEOMETRY, type CardWords } from '../card';
import { type Source } from '../kinds';

const held = 'read in secondary copies';
const POCKET: readonly Source[] = [
  { title: 'ISO 4032 width across flats', held },
  { title: 'allowance of 0.1 mm', held: 'common practice, from memory' },
];
const caution = 'The pocket at its narrowest: draft widens it outwards. Its resistance to torque and pull-out is not computed. Test it.';

export const NUT_WORDS: Readonly<Record<string, CardWords>> = {
  'NUT.POCKET': { kind: 'common practice', sources: POCKET, example: { args: ['M3'], result: 5.6 }, caution },
  'NUT.POCKET.CORNER': { kind: 'common practice', sources: [...POCKET, ...GEOMETRY], example: { args: ['M3'], result: 6.466 }, caution },
  'NUT.HEIGHT': { kind: 'standard table', sources: [{ title: 'ISO 4032', held }], example: { args: ['M3'], result: 2.4 } },
};
