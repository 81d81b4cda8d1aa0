import { card, ITSELF, type Card, type Relation } from '../card';
import type { Source } from '../kinds';
import { numeric, param } from '../read/params';
import { LENGTH, RATIO, STRESS } from '../read/quantity';
import { above, about, exists } from '../read/relation';
import { ofMaterial } from '../read/sources';
import * as F from './hoop';

const T = 'Strength (estimates)';
const length = numeric(LENGTH);
const interference = param('interference', length, { symbol: 'i', above: 0 });
const SMALL = `the formula holds for an interference of at most ${100 * F.LARGEST_INTERFERENCE} % of the pin`;
const smallStrain: Relation = exists([['>=', ['*', F.LARGEST_INTERFERENCE, ITSELF], 'interference']], () => SMALL);
const pin = param('pin', length, { symbol: 'd', above: 0 });
const pinOfInterference = param('pin', length, { symbol: 'd', above: 0, relation: smallStrain });
const od = param('od', length, { symbol: 'D', above: 0, relation: above('pin') });
const modulus = param('modulus', ofMaterial(STRESS, 'modulus'), { symbol: 'E', above: 0 });
const poisson = param('poisson', ofMaterial(RATIO, 'poisson'), { symbol: 'ν', above: 0, atMost: 0.5 });
const LAME: readonly Source[] = [
  { title: 'thick ring after Lamé, rigid pin', held: 'derived' },
  { title: 'Crawford, Plastics Engineering, 3rd ed., example 2.7', held: 'read in 1 secondary copy; edition from memory' },
];
const LASTING =
  'An estimate: elastic and short-term. Use a creep modulus for a lasting fit; a weld line halves what the ring bears or less.';

export const HOOP_CARDS: readonly Card[] = [
  card('HOOP.STRESS', T, [interference, pinOfInterference, od, modulus, poisson], F.hoopStressMpa, {
    result: { shape: 'number', name: 'hoop stress at the bore', symbol: 'σ', unit: 'MPa' },
    kind: 'handbook formula',
    sources: LAME,
    example: { args: [0.04, 4, 8, 2600, 0.4], result: 20.97 },
    caution: LASTING,
  }),
  card(
    'HOOP.LIMIT',
    T,
    [
      param('stress', numeric(STRESS), { symbol: 'σ', above: 0 }),
      pin,
      od,
      modulus,
      param('poisson', ofMaterial(RATIO, 'poisson'), {
        symbol: 'ν',
        above: 0,
        atMost: 0.5,
        relation: exists(
          [
            [
              '>=',
              ['*', F.LARGEST_INTERFERENCE, 'pin'],
              { formula: { interferenceLimitMm: F.interferenceLimitMm }, of: ['stress', 'pin', 'od', 'modulus', ITSELF] },
            ],
          ],
          (number, poisson) =>
            `that stress asks for ` +
            `${about(F.interferenceLimitMm(number('stress'), number('pin'), number('od'), number('modulus'), poisson))}; ${SMALL}`,
        ),
      }),
    ],
    F.interferenceLimitMm,
    {
      result: { shape: 'number', name: 'largest interference on diameter', symbol: 'i', unit: 'mm' },
      kind: 'handbook formula',
      sources: LAME,
      example: { args: [60, 4, 8, 2400, 0.38], result: 0.1228 },
      caution: LASTING,
    },
  ),
  card(
    'HOOP.PUSH',
    T,
    [
      interference,
      pinOfInterference,
      od,
      param('length', length, { symbol: 'L', above: 0 }),
      modulus,
      poisson,
      param('friction', numeric(RATIO), { symbol: 'μ', above: 0, atMost: 1 }),
    ],
    F.pushForceN,
    {
      result: { shape: 'number', name: 'axial force', symbol: 'F', unit: 'N' },
      kind: 'handbook formula',
      sources: LAME,
      example: { args: [0.04, 4, 8, 6, 2600, 0.4, 0.2], result: 189.7 },
      caution: LASTING,
    },
  ),
];
