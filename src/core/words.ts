// What is said of the functions of the core.
import type { CardWords } from './card';
import { BENDING_WORDS } from './board/bending.words';
import { BOARD_WORDS } from './board/board.words';
import { BOSS_WORDS } from './boss/boss.words';
import { CHECK_WORDS } from './check/check.words';
import { DRAFT_WORDS } from './draft/draft.words';
import { ENGAGEMENT_WORDS } from './engagement/engagement.words';
import { HOLE_WORDS } from './hole/hole.words';
import { POSITION_WORDS } from './hole/position.words';
import { INSERT_WORDS } from './insert/insert.words';
import { NUT_WORDS } from './insert/nut.words';
import { MOULD_WORDS } from './mould/mould.words';
import { PATTERN_WORDS } from './pattern/pattern.words';
import { RECESS_WORDS } from './recess/recess.words';
import { SCREW_WORDS } from './screw/screw.words';
import { SEAL_WORDS } from './seal/seal.words';
import { SNAP_WORDS } from './snap/snap.words';
import { HOOP_WORDS } from './strength/hoop.words';
import { PULL_OUT_WORDS } from './strength/pull-out.words';
import { TORQUE_WORDS } from './strength/torque.words';
import { STACK_WORDS } from './tolerance/stack.words';
import { TOLERANCE_WORDS } from './tolerance/tolerance.words';
import { UNIT_WORDS } from './unit/unit.words';

export const CORE_WORDS: Readonly<Record<string, CardWords>> = {
  ...BENDING_WORDS,
  ...BOARD_WORDS,
  ...BOSS_WORDS,
  ...CHECK_WORDS,
  ...DRAFT_WORDS,
  ...ENGAGEMENT_WORDS,
  ...HOLE_WORDS,
  ...POSITION_WORDS,
  ...INSERT_WORDS,
  ...NUT_WORDS,
  ...MOULD_WORDS,
  ...PATTERN_WORDS,
  ...RECESS_WORDS,
  ...SCREW_WORDS,
  ...SEAL_WORDS,
  ...SNAP_WORDS,
  ...HOOP_WORDS,
  ...PULL_OUT_WORDS,
  ...TORQUE_WORDS,
  ...STACK_WORDS,
  ...TOLERANCE_WORDS,
  ...UNIT_WORDS,
};
