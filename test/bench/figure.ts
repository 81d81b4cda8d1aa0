// How long the figure takes, from the inputs of a joint to the finished drawing.
import { stackChartSvg, variantChartSvg, variantRow } from '../../src/figure/charts';
import { section } from '../../src/figure/section';
import { LOGGER, variantOf } from '../figure/joints';

const TURNS = 50;
const RUNS = 8;
const NAMES = Array.from({ length: 12 }, (_, i) => `link ${i + 1}`);

const PICTURES: readonly (readonly [what: string, draw: () => unknown])[] = [
  ['section, named', () => section(variantOf(LOGGER), { widthPx: 760 })],
  ['section, letters and inches', () => section(variantOf(LOGGER), { widthPx: 320, letters: true, inch: true })],
  ['8 variants', () => variantChartSvg(Array.from({ length: 8 }, (_, i) => variantRow(`variant ${i + 1}`, variantOf({ ...LOGGER, length: 10 + i }))))],
  ['stack of 12', () => stackChartSvg(NAMES.map(name => ({ name, share: 1 / 12 })))],
];

/** Milliseconds a picture, the fastest of several runs, the joint worked out anew each time. */
export function figureTimes(): readonly (readonly [what: string, ms: number])[] {
  return PICTURES.map(([what, draw]) => {
    let best = Infinity;
    for (let run = 0; run < RUNS; run++) {
      const start = performance.now();
      for (let turn = 0; turn < TURNS; turn++) draw();
      best = Math.min(best, (performance.now() - start) / TURNS);
    }
    return [what, best];
  });
}
