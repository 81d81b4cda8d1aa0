// How long a drawing takes, from the inputs of a joint to the finished picture.
import { stackChartSvg, variantChartSvg, variantRow } from '../../src/figure/charts';
import { section } from '../../src/figure/section';
import { LOGGER, variantOf } from '../figure/joints';
import { digits, ns, type Figure } from './figure';

const TURNS = 50;
const RUNS = 8;
const NAMES = Array.from({ length: 12 }, (_, i) => `link ${i + 1}`);

const PICTURES: readonly (readonly [what: string, draw: () => unknown])[] = [
  ['section, named', () => section(variantOf(LOGGER), { widthPx: 760 })],
  ['section, letters and inches', () => section(variantOf(LOGGER), { widthPx: 320, letters: true, inch: true })],
  [
    '8 variants',
    () => variantChartSvg(Array.from({ length: 8 }, (_, i) => variantRow(`variant ${i + 1}`, variantOf({ ...LOGGER, length: 10 + i })))),
  ],
  ['stack of 12', () => stackChartSvg(NAMES.map(name => ({ name, share: 1 / 12 })))],
];

/** The joint is worked out anew for each. */
export function drawing(): Figure[] {
  const times = PICTURES.map(([what, draw]) => ({ what, ms: ns(TURNS, draw, RUNS) / 1e6 }));
  return [
    {
      what: 'a drawing',
      target: {
        words: '≤ 16 ms, a frame',
        isMet: times.every(({ ms }) => ms <= 16),
        otherwise: 'on a machine as slow as the first row says',
      },
      measured: times.map(({ what, ms }) => `${what} ${digits(ms)} ms`).join(', '),
      how: 'evaluated and drawn as SVG text',
    },
  ];
}
