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

export const STATUSES = ['for quotation', 'for tooling', 'for information'] as const;
export type Status = (typeof STATUSES)[number];

/** What the copy is printed on. */
export const PAPERS = ['A4', 'Letter'] as const;
export type Paper = (typeof PAPERS)[number];
