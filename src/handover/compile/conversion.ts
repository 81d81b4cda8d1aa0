// A conversion under way: what it works with, and what it found.
import type { Cell } from '../../core/kinds';
import type { HandoverFinding } from '../read/finding';
import type { Unfollowed } from '../read/prepared';
import type { FindingWords } from '../words/finding-words';
import type { SharedContext } from './context';
import { type JointSheets } from './joint/joint-sheet';
import type { Limit } from './joint/joint-cells';
import type { Steps } from './steps';

/** A value of ours on a converted sheet that follows its inputs. */
export interface LiveResult {
  readonly sheet: string;
  readonly at: string;
  readonly value: Cell;
  readonly unit: string;
  /** Which of several values of a call. */
  readonly name?: string;
  /** What a rule asks. */
  readonly lower?: Limit;
  readonly upper?: Limit;
  /** The one function of ours that gives it. */
  readonly call?: string;
  /** The tolerance that its call has. */
  readonly tolerance?: Limit;
}

export interface Conversion extends SharedContext {
  readonly steps: Steps;
  readonly joints: JointSheets;
  readonly findings: HandoverFinding[];
  /** In which they are told. */
  readonly said: FindingWords;
  readonly results: LiveResult[];
  /** By `Sheet!B4`. */
  readonly refused: ReadonlyMap<string, Unfollowed>;
  /** Cells whose formula stays as the user has it, by `Sheet!B4`. */
  readonly kept: Set<string>;
  /** Tables without room, and the cell that is filled. */
  readonly crowded: ReadonlyMap<string, string>;
  readonly used: Set<string>;
}
