import { type Source } from '../kinds';
import type { CardWords } from '../card';

const BEAM: Source = { title: 'curvature M/(E·I) integrated along the hook, root and wall rigid', held: 'derived' };
const HANDBOOKS: Source = {
  title: 'handbooks on snap joints: 0.67·ε·L²/t, and 1.09·ε·L²/t where the tip is half as thick',
  held: 'from memory',
};
const HOOK =
  'An estimate: the wall behind the root also bends, and shear counts in a hook shorter than five thicknesses. Take the permissible ' +
  'strain, for single or repeated use, from the data of the grade. A hook left bent creeps. Give the root a fillet.';

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
