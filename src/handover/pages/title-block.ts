import type { Status } from '../words/status';

/** What stands in the title block of a hand-over. */
export interface TitleBlock {
  readonly part: string;
  readonly number: string;
  readonly revision: string;
  readonly date: string;
  readonly status: Status;
  readonly madeBy: string;
  readonly checkedBy: string;
}

/** What the copy is printed on. */
export const PAPERS = ['A4', 'Letter'] as const;
export type Paper = (typeof PAPERS)[number];
