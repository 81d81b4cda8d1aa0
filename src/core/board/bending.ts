// A board that bends: a strip of it under a force, and its first natural frequency.
import { PI, sqrt } from '../maths';

/** How a strip of board lies on its two supports, and how a board is held along all four edges. */
export type Held = 'simple' | 'clamped';

/** Beyond a tenth of the span the strip no longer bends a little. */
export const LARGEST_SAG = 0.1;
/** In 1e-6: beyond a tenth the strain is no longer small. */
export const LARGEST_BOARD_STRAIN = 1e5;

/**
 * Sag y of a board strip under a force in the middle of its span, mm: an estimate.
 * F force, N; L span between the supports, mm; w width of the strip, mm; t thickness, mm; E modulus, MPa; ends its two ends.
 * BOARD.SAG accepts F above 0 N; L, w, t above 0 mm; E above 0 MPa; a y above L/10, or a strain over a tenth, is refused.
 * Source: beam with a force in the middle, F·L³/(48·E·I), with clamped ends F·L³/(192·E·I) (from memory, integrated in a test).
 */
export function boardSagMm(forceN: number, spanMm: number, widthMm: number, thicknessMm: number, modulusMpa: number, ends: Held): number {
  const secondMomentMm4 = (widthMm * thicknessMm ** 3) / 12;
  return (forceN * spanMm ** 3) / ((ends === 'clamped' ? 192 : 48) * modulusMpa * secondMomentMm4);
}

/**
 * Strain ε on the surface of a board strip under a force in the middle of its span, 1e-6: an estimate.
 * F force, N; L span between the supports, mm; w width of the strip, mm; t thickness, mm; E modulus, MPa; ends its two ends.
 * BOARD.STRAIN accepts F above 0 N; L, w, t above 0 mm; E above 0 MPa; a sag above L/10, or an ε over a tenth, is refused.
 * Source: beam with a force in the middle, moment F·L/4, with clamped ends F·L/8 (from memory, integrated in a test).
 */
export function boardStrain(forceN: number, spanMm: number, widthMm: number, thicknessMm: number, modulusMpa: number, ends: Held): number {
  const momentNmm = (forceN * spanMm) / (ends === 'clamped' ? 8 : 4);
  const sectionModulusMm3 = (widthMm * thicknessMm ** 2) / 6;
  return (1e6 * momentNmm) / (modulusMpa * sectionModulusMm3);
}

/**
 * First natural frequency f of a rectangular board held along all four edges, its mass spread evenly, Hz: an estimate.
 * a length, mm; b width, mm; t thickness, mm; m mass with all that is on it, g; E modulus, MPa; ν Poisson ratio; edges how they are held.
 * BOARD.FREQUENCY accepts a, b, t above 0 mm; m above 0 g; E above 0 MPa; ν above 0 and at most 0.5.
 * Source: thin plate, exact for simple edges (derived); clamped: Warburton, The Vibration of Rectangular Plates, 1954, as in Blevins,
 * Formulas for Natural Frequency and Mode Shape, 1979: G 1.506, H and J 1.248 (from memory, within 1 % of a Ritz computation in a test).
 */
export function boardFrequencyHz(
  lengthMm: number,
  widthMm: number,
  thicknessMm: number,
  massG: number,
  modulusMpa: number,
  poisson: number,
  edges: Held,
): number {
  const plateStiffnessNmm = (modulusMpa * thicknessMm ** 3) / (12 * (1 - poisson ** 2));
  const along = edges === 'clamped' ? 1.506 ** 4 : 1;
  const twist = edges === 'clamped' ? 1.248 ** 2 : 1;
  const shape = sqrt(along / lengthMm ** 4 + along / widthMm ** 4 + (2 * twist) / (lengthMm * widthMm) ** 2);
  return (PI / 2) * shape * sqrt((1e6 * plateStiffnessNmm * lengthMm * widthMm) / massG);
}
