import { type Source } from '../kinds';
import type { CardWords } from '../card';

const BEAM: Source = { title: 'curvature M/(E·I) integrated along the hook, root and wall stiff', held: 'derived' };
const HANDBOOKS: Source = {
  title: 'handbooks on snap joints: 0.67·ε·L²/t, and 1.09·ε·L²/t where the tip is half as thick',
  held: 'from memory',
};
const HOOK =
  'An estimate: the wall behind the root gives, and a hook shorter than five thicknesses shears. The permissible strain, once or ' +
  'often, comes from its data; left bent, it creeps. Round the root.';

export const SNAP_WORDS: Readonly<Record<string, CardWords>> = {
  'SNAP.STRAIN': { kind: 'handbook formula', sources: [BEAM, HANDBOOKS], example: { args: [2, 15, 2], result: 0.026667 }, caution: HOOK },
  'SNAP.DEFLECTION': {
    kind: 'handbook formula',
    sources: [BEAM, HANDBOOKS],
    example: { args: ['3 %', 15, 2, 1], result: 3.68 },
    caution: HOOK,
  },
  'SNAP.FORCE': { kind: 'handbook formula', sources: [BEAM], example: { args: [2, 15, 5, 2, 2400], result: 14.2222 }, caution: HOOK },
  'SNAP.MATING': {
    kind: 'handbook formula',
    sources: [{ title: 'friction on a ramp', held: 'derived' }],
    example: { args: [14.2, 30, 0.3], result: 15.068 },
    caution: 'An estimate: friction differs with surface, speed and pressure. For release, enter the angle of the return side.',
  },
};
