import { card, ITSELF, type Calculation, type Relation } from '../card';

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

export const HOOP_CARDS: readonly Calculation[] = [
  card('HOOP.STRESS', T, [interference, pinOfInterference, od, modulus, poisson], F.hoopStressMpa, {
    result: { shape: 'number', name: 'hoop stress at the bore', symbol: 'σ', unit: 'MPa' },
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
    { result: { shape: 'number', name: 'largest interference on diameter', symbol: 'i', unit: 'mm' } },
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
    { result: { shape: 'number', name: 'axial force', symbol: 'F', unit: 'N' } },
  ),
];
