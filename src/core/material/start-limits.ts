// Limits that a polymer brings to the rules of a joint: common practice by class, from memory. No two texts that were read agree on them.
// sink limit: boss wall ÷ wall. tightness: pilot ÷ root diameter; below the limit the boss splits, below the second it is to be reviewed.
import type { Held } from '../../standards/table';

export const START_LIMITS_HELD: Held = 'common practice, from memory';

const RIGID = { 'sink limit': 0.6, 'tightness limit': 0.97, 'tightness review': 1 };
/** They give way before they split. */
const SEMI_CRYSTALLINE = { 'sink limit': 0.5, 'tightness limit': 0.9, 'tightness review': 0.95 };
const FILLED = { ...RIGID, 'sink limit': 0.5 };

export const START_LIMITS: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  ABS: RIGID,
  PC: RIGID,
  'PC+ABS': RIGID,
  PS: RIGID,
  PMMA: RIGID,
  PP: SEMI_CRYSTALLINE,
  'PE-HD': SEMI_CRYSTALLINE,
  POM: SEMI_CRYSTALLINE,
  PA6: SEMI_CRYSTALLINE,
  'PA6 conditioned': SEMI_CRYSTALLINE,
  PA66: SEMI_CRYSTALLINE,
  'PA66 conditioned': SEMI_CRYSTALLINE,
  PBT: SEMI_CRYSTALLINE,
  'PA66-GF30': FILLED,
  'PA66-GF30 conditioned': FILLED,
  'PBT-GF30': FILLED,
};
