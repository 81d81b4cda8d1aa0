/** What a hand-over is for. */
export const STATUSES = ['for quotation', 'for tooling', 'for information'] as const;
export type Status = (typeof STATUSES)[number];
