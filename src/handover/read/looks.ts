// The looks of the user's sheets, as far as they are known.
import type { Role, SheetPlan } from '../../sheet/plan';

/** How a sheet looked at home: roles, formats, widths. What is not said is plain text. */
export type Looks = (sheet: string) => Partial<Pick<SheetPlan, 'widths' | 'frozenRows' | 'merged' | 'stateRanges'>> & {
  readonly role?: (at: string) => Role | undefined;
  readonly format?: (at: string) => string | undefined;
};
