// A board that bends: a strip of it under a force, and its first natural frequency.
import { max, min, PI, sqrt } from '../maths';

/** How a strip of board lies on its two supports. */
export type BoardEnds = 'simple' | 'clamped';

/** Beyond a tenth of the span the strip no longer bends a little. */
export const LARGEST_SAG = 0.1;
/** In 1e-6: beyond a tenth the strain is no longer small. */
export const LARGEST_BOARD_STRAIN = 1e5;

/**
 * Sag y of a board strip under a force in the middle of its span, mm: an estimate.
 * F force, N; L span between the supports, mm; w width of the strip, mm; t thickness, mm; E modulus, MPa; ends its two ends.
 * BOARD.SAG accepts F above 0 N; L, w, t above 0 mm; E above 0 MPa; a y above L/10, or a strain over a tenth, is refused.
 * Source: beam with a central force, F·L³/(48·E·I) on simple supports, F·L³/(192·E·I) with clamped ends (from memory, integrated in a
 * test).
 */
export function boardSagMm(
  forceN: number,
  spanMm: number,
  widthMm: number,
  thicknessMm: number,
  modulusMpa: number,
  ends: BoardEnds,
): number {
  const secondMomentMm4 = (widthMm * thicknessMm ** 3) / 12;
  return (forceN * spanMm ** 3) / ((ends === 'clamped' ? 192 : 48) * modulusMpa * secondMomentMm4);
}

/**
 * Strain ε on the surface of a board strip under a force in the middle of its span, 1e-6: an estimate.
 * F force, N; L span between the supports, mm; w width of the strip, mm; t thickness, mm; E modulus, MPa; ends its two ends.
 * BOARD.STRAIN accepts F above 0 N; L, w, t above 0 mm; E above 0 MPa; a sag above L/10, or an ε over a tenth, is refused.
 * Source: beam with a central force, moment F·L/4 on simple supports, F·L/8 with clamped ends (from memory, integrated in a test).
 */
export function boardStrain(
  forceN: number,
  spanMm: number,
  widthMm: number,
  thicknessMm: number,
  modulusMpa: number,
  ends: BoardEnds,
): number {
  const momentNmm = (forceN * spanMm) / (ends === 'clamped' ? 8 : 4);
  const sectionModulusMm3 = (widthMm * thicknessMm ** 2) / 6;
  return (1e6 * momentNmm) / (modulusMpa * sectionModulusMm3);
}

/** How a whole board is held: along all four edges, or on its four corners. */
export type BoardEdges = BoardEnds | 'corners';

/** Of its sides, where the published numbers for a board on its corners end. */
export const LARGEST_CORNER_RATIO = 2.5;

/**
 * Longer side ÷ shorter side of a board on its corners, 1 for one that is held along its edges.
 * a length, mm; b width, mm; edges how it is held.
 * Limits: as BOARD.FREQUENCY has them. Source: plane geometry (derived).
 */
export function cornerRatio(lengthMm: number, widthMm: number, edges: BoardEdges): number {
  return edges === 'corners' ? max(lengthMm, widthMm) / min(lengthMm, widthMm) : 1;
}

/**
 * ω·a²·√(mass per area ÷ plate stiffness) of a plate on its four corners, a the longer side.
 * r longer side ÷ shorter side.
 * Limits: as BOARD.FREQUENCY has them. Source: Blevins, Formulas for Natural Frequency and Mode Shape, 1979 (from memory).
 */
export function cornerParameter(ratio: number): number {
  return ratio < 1.5
    ? 7.12 + ((8.92 - 7.12) * (ratio - 1)) / 0.5
    : ratio < 2
      ? 8.92 + ((9.29 - 8.92) * (ratio - 1.5)) / 0.5
      : 9.29 + ((9.39 - 9.29) * (ratio - 2)) / 0.5;
}

/**
 * First natural frequency f of a rectangular board with its mass spread evenly, Hz: an estimate.
 * a length, mm; b width, mm; t thickness, mm; m mass with all that is on it, g; E modulus, MPa; ν Poisson ratio; edges how it is held.
 * BOARD.FREQUENCY accepts a, b, t above 0 mm; m above 0 g; E above 0 MPa; ν above 0 and at most 0.5; corners beyond 2.5 : 1 are refused.
 * Source: thin plate, exact for simple edges (derived); clamped: Warburton 1954, as in Blevins, Formulas for Natural Frequency and Mode
 * Shape, 1979: G 1.506, H and J 1.248 (from memory); corners: Blevins, ν 0.3: 7.12, 8.92, 9.29, 9.39 at aspect ratios of 1,
 * 1.5, 2, 2.5, linear between (from memory).
 */
export function boardFrequencyHz(
  lengthMm: number,
  widthMm: number,
  thicknessMm: number,
  massG: number,
  modulusMpa: number,
  poisson: number,
  edges: BoardEdges,
): number {
  const plateStiffnessNmm = (modulusMpa * thicknessMm ** 3) / (12 * (1 - poisson ** 2));
  const shape =
    edges === 'corners'
      ? cornerParameter(cornerRatio(lengthMm, widthMm, edges)) / (PI * max(lengthMm, widthMm)) ** 2
      : edges === 'clamped'
        ? sqrt(1.506 ** 4 / lengthMm ** 4 + 1.506 ** 4 / widthMm ** 4 + (2 * 1.248 ** 2) / (lengthMm * widthMm) ** 2)
        : 1 / lengthMm ** 2 + 1 / widthMm ** 2;
  return (PI / 2) * shape * sqrt((1e6 * plateStiffnessNmm * lengthMm * widthMm) / massG);
}
