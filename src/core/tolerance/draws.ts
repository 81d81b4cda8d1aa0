// Draws for a simulated stack, the same on every platform: whole numbers, + − × ÷ √ and a logarithm made of these.
import ln from '@stdlib/math-base-special-ln';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { sqrt } from '../maths';

export type DrawShape = 'normal' | 'uniform' | 'triangular';

/** The first outputs of the generator still show the bare seed. */
const SKIPPED = 64;

/** Half the tolerance in units of one draw: `normal` draws have a standard deviation of 1 and ± is 3 of them; the others lie on −1 … 1. */
export const HALF_WIDTH_IN_DRAWS: Readonly<Record<DrawShape, number>> = { normal: 3, uniform: 1, triangular: 1 };

export function draws(seed: number, shape: DrawShape): () => number {
  const generator = xoroshiro128plus(seed);
  for (let i = 0; i < SKIPPED; i++) generator.next();
  // odd multiples of 2^-32: never 0, never −1 or 1
  const uniform = (): number => (2 * generator.next() + 1) / 2 ** 32;
  if (shape === 'uniform') return uniform;
  if (shape === 'triangular') return () => (uniform() + uniform()) / 2;
  return polarNormal(uniform);
}

/** Polar method: two normal draws from one point in the unit circle. */
function polarNormal(uniform: () => number): () => number {
  let spare: number | undefined;
  return () => {
    if (spare !== undefined) {
      const draw = spare;
      spare = undefined;
      return draw;
    }
    let x: number, y: number, square: number;
    do {
      x = uniform();
      y = uniform();
      square = x * x + y * y;
    } while (square >= 1);
    const stretch = sqrt((-2 * ln(square)) / square);
    spare = y * stretch;
    return x * stretch;
  };
}
