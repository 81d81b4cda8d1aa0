import type { Card } from '../core/card';

export const JOINT_CARDS: readonly Card[] = [];
