// SVG as a picture without a browser: text is really there, and the colours of the figure are.
import { expect, it } from 'vitest';
import { section } from '../../src/figure/section';
import { pngRenderer } from '../../src/hosts/png/node';
import { JOINTS, variantOf } from '../figure/joints';
import { pixelsOf, type Pixels } from '../kit/png';

const pngOf = await pngRenderer();
const svgOf = (content: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="40" height="20"><rect width="40" height="20" fill="#fff"/>${content}</svg>`;

const count = ({ colours }: Pixels, isMeant: (colour: string) => boolean): number =>
  [...colours].reduce((found, [colour, points]) => found + (isMeant(colour) ? points : 0), 0);

const isDark = (colour: string): boolean => Number.parseInt(colour.slice(1, 3), 16) < 96;
const inked = (content: string): number => count(pixelsOf(pngOf(svgOf(content))), isDark);

it('draws three points for each pixel', () => {
  expect(pixelsOf(pngOf(svgOf('')))).toMatchObject({ widthPx: 120, heightPx: 60 });
});

it('draws text, bold text with more ink, and letters that differ', () => {
  expect(inked('')).toBe(0);
  const text = (content: string, weight = 400): string =>
    `<text x="4" y="15" style="font-family:sans-serif;font-size:14px;font-weight:${weight}">${content}</text>`;
  expect(inked(text('H'))).toBeGreaterThan(100);
  expect(inked(text('H', 700))).toBeGreaterThan(1.2 * inked(text('H')));
  for (const sign of ['Ø', '°', '×', '±', '−', '–', 'µ'])
    expect([sign, inked(text(sign)) > 10 && inked(text(sign)) !== inked(text('\u{e000}'))]).toEqual([sign, true]);
});

it('draws the section for print: colours of the halves, white around, letters beside', () => {
  const { svg, widthPx, heightPx } = section(variantOf(JOINTS['to be reviewed'] ?? {}), { print: true });
  const picture = pixelsOf(pngOf(svg));
  expect([picture.widthPx, picture.heightPx]).toEqual([3 * widthPx, 3 * heightPx]);
  expect(picture.at(3, 3)).toBe('#ffffff');
  const share = (colour: string): number => (picture.colours.get(colour) ?? 0) / (picture.widthPx * picture.heightPx);
  for (const colour of ['#dfe9f5', '#fbead2', '#d9ecd6', '#eceef0']) expect([colour, share(colour) > 0.005]).toEqual([colour, true]);
  expect(share('#ffffff')).toBeGreaterThan(0.5);
  const withoutText = pixelsOf(pngOf(svg.replace(/<text.*?<\/text>/g, '')));
  expect(count(picture, isDark) - count(withoutText, isDark)).toBeGreaterThan(3000);
});
