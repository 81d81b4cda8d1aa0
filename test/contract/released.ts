// The released signatures, which are the contract with every workbook, taken apart.
import { RELEASED } from '../../src/release/signatures';

export interface Signature {
  readonly id: string;
  readonly args: readonly { readonly name: string; readonly optional: boolean; readonly isRange: boolean }[];
  readonly spills: boolean;
}

export const SIGNATURES: readonly Signature[] = Object.entries(RELEASED).map(([id, text]) => {
  const [args = '', spills] = text.split(' -> ');
  return {
    id,
    args: [...args.matchAll(/(\[?)([a-z0-9_]+)(…?)/g)].map(([, open, name = '', range]) => ({
      name,
      optional: open === '[',
      isRange: range === '…',
    })),
    spills: spills === 'range',
  };
});
