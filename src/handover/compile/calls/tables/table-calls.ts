// Calls whose formula has no plain form, because it gives as many rows as its inputs or a table have: written row by row.
import type { CallBlock } from '../call-site';
import { commonLengthsBlock, lengthTableBlock, pickedLengthBlock } from './lengths';
import { standardLengthsBlock } from './standard-lengths';
import { stackShareBlock, stackTableBlock } from './stack';
import type { TableSite } from './table-site';

export const TABLE_CALLS: Readonly<Record<string, (site: TableSite) => CallBlock | undefined>> = {
  'STACK.TABLE': stackTableBlock,
  'STACK.SHARE': stackShareBlock,
  'SCREW.LENGTHS': standardLengthsBlock,
  'SCREW.LENGTH.TABLE': lengthTableBlock,
  'SCREW.LENGTH.PICK': pickedLengthBlock,
  'SCREW.LENGTH.COMMON': commonLengthsBlock,
};
