// The figure draws an own screw as it draws the same screw of a standard, and with its own flank and head.
import { describe, expect, test } from 'vitest';
import { section } from '../../src/figure/section';
import { Variant } from '../../src/joint/variant';
import { OF_THE_CONTRACT, OWN_ST29 } from '../kit/own-screw';
import { JOINTS, LOGGER, type Inputs } from './joints';

const drawn = (inputs: Inputs): string => section(new Variant(new Map(Object.entries(inputs)))).svg;
const unnamed = (svg: string): string => svg.replaceAll('own screw', 'ST2.9').replaceAll(/own head|pan head|ISO 7049 head/g, 'head');

describe('the same screw as a card', () => {
  // beyond 19 mm the tolerance is another; what is said of a missing hole is not what is said of ST2.9
  const joints = Object.entries(JOINTS).filter(
    ([name, { screw, head, end, length }]) =>
      screw === 'ST2.9' && head === 'ISO 7049' && end !== 'flat' && Number(length ?? 0) <= 19 && name !== 'hole missing',
  );
  test('there are such joints', () => expect(joints.length).toBeGreaterThanOrEqual(20));
  test.each(joints)('%s', (_, inputs) => {
    const { head: _head, ...headless } = inputs;
    for (const own of [
      { ...headless, screw: OWN_ST29 },
      { ...inputs, screw: OWN_ST29, head: 'pan' },
    ])
      expect(unnamed(drawn(own))).toBe(unnamed(drawn(inputs)));
  });
});

describe('its own', () => {
  const base: Inputs = { ...LOGGER, screw: OF_THE_CONTRACT, head: null, length: 16 };
  test('a flank, a head, a kind change the drawing', () => {
    const all = [
      base,
      { ...base, screw: OF_THE_CONTRACT.replace('flank 15', 'flank 30') },
      { ...base, head: 'cheese' },
      { ...base, head: 'button' },
      { ...base, screw: OF_THE_CONTRACT.replace('forming', 'machine') },
      { ...base, screw: OF_THE_CONTRACT.replace('root 2.1', 'root 2.3') },
    ].map(inputs => unnamed(drawn(inputs)));
    expect(new Set(all).size).toBe(all.length);
  });

  test.each([
    ['root 2.1/2.0; ', 'add root 2.1/2.0'],
    ['pitch 1.34; ', 'add pitch 1.34'],
    ['; forming', 'add forming, cutting or machine'],
  ])('without "%s" no screw is drawn, and it says why', (left, words) => {
    const figure = section(new Variant(new Map(Object.entries({ ...base, screw: OF_THE_CONTRACT.replace(left, '') }))));
    expect(figure.svg).not.toContain('class="bw-screw"');
    expect(JSON.stringify(figure)).toContain(words);
  });
});
