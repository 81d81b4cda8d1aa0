// All functions that need the core alone.
import { BENDING_CARDS } from './board/bending.cards';
import { BOARD_CARDS } from './board/board.cards';
import { BOSS_CARDS } from './boss/boss.cards';
import type { Calculation } from './card';
import { CHECK_CARDS } from './check/check.cards';
import { DRAFT_CARDS } from './draft/draft.cards';
import { ENGAGEMENT_CARDS } from './engagement/engagement.cards';
import { HOLE_CARDS } from './hole/hole.cards';
import { POSITION_CARDS } from './hole/position.cards';
import { INSERT_CARDS } from './insert/insert.cards';
import { NUT_CARDS } from './insert/nut.cards';
import { MOULD_CARDS } from './mould/mould.cards';
import { PATTERN_CARDS } from './pattern/pattern.cards';
import { RECESS_CARDS } from './recess/recess.cards';
import { SCREW_CARDS } from './screw/screw.cards';
import { SEAL_CARDS } from './seal/seal.cards';
import { SNAP_CARDS } from './snap/snap.cards';
import { HOOP_CARDS } from './strength/hoop.cards';
import { PULL_OUT_CARDS } from './strength/pull-out.cards';
import { TORQUE_CARDS } from './strength/torque.cards';
import { STACK_CARDS } from './tolerance/stack.cards';
import { TOLERANCE_CARDS } from './tolerance/tolerance.cards';
import { UNIT_CARDS } from './unit/unit.cards';

export const CORE_CARDS: readonly Calculation[] = [
  ...UNIT_CARDS,
  ...SCREW_CARDS,
  ...HOLE_CARDS,
  ...POSITION_CARDS,
  ...DRAFT_CARDS,
  ...BOSS_CARDS,
  ...RECESS_CARDS,
  ...ENGAGEMENT_CARDS,
  ...PULL_OUT_CARDS,
  ...TORQUE_CARDS,
  ...HOOP_CARDS,
  ...BOARD_CARDS,
  ...BENDING_CARDS,
  ...INSERT_CARDS,
  ...NUT_CARDS,
  ...SNAP_CARDS,
  ...PATTERN_CARDS,
  ...MOULD_CARDS,
  ...SEAL_CARDS,
  ...TOLERANCE_CARDS,
  ...STACK_CARDS,
  ...CHECK_CARDS,
];
