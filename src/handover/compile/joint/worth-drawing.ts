// Which variants are drawn where there are more than figures.
import { type State, WORST_FIRST } from '../../../core/check/check';

/** The best of many, in the order of the sheet: what fails is not what will be tooled. */
export function worthDrawing<T extends { readonly state: State }>(variants: readonly T[], most: number): readonly T[] {
  const ranked = [...variants].sort((a, b) => WORST_FIRST.indexOf(b.state) - WORST_FIRST.indexOf(a.state));
  const chosen = new Set(ranked.slice(0, Math.max(0, most)));
  return variants.filter(variant => chosen.has(variant));
}
