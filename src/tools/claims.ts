import type { Claim } from './claim';
import { FUNCTION_CLAIMS } from './function-claims';
import { PAGE_CLAIMS } from './page-claims';

/** In the order of the page of proof. */
export const CLAIMS: readonly Claim[] = [...FUNCTION_CLAIMS, ...PAGE_CLAIMS];
