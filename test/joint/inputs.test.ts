// Each input of the joint against a table typed from the contract: what it is, its limits, its default, what a blank means.
import { describe, expect, test } from 'vitest';
import { accepts } from '../../src/core/read/accepts';
import { INPUTS } from '../../src/joint/inputs';

/** `*` required; `°` a blank or bare 0 is refused, a zero has its unit; `made` its default is worked out; `–` it has none. */
const TYPED: readonly (readonly [name: string, kind: string, limits: string, fallback: string | number])[] = [
  ['screw', 'screw', '', '*'],
  ['head', 'head', '', '*'],
  ['end', 'screw end: "cone" "flat"', '', 'cone'],
  ['length', 'length', '>0', 'made'],
  ['material', 'material', '', '–'],
  ['wall', 'length', '>0', '*'],
  ['feature share', 'share', '>0 <=1', 0.6],
  ['board plane', 'length', '>0', '*'],
  ['seat', 'length', '>=0', '° made'],
  ['seat tolerance', 'tolerance', '', '° made'],
  ['board', 'length', '>=0', 0],
  ['board tolerance', 'tolerance', '', '° made'],
  ['sleeve', 'length', '>=0', 0],
  ['sleeve tolerance', 'tolerance', '', '° 0.1'],
  ['gap', 'length', '>=0', 0],
  ['gap tolerance', 'tolerance', '', 0],
  ['hole', 'length of a screw with a fit, "M3 medium", or', '>0', 'made'],
  ['hole tolerance', 'tolerance', '', '° 0.1'],
  ['board hole', 'length of a screw with a fit, "M3 medium", or', '>0', '–'],
  ['head diameter', 'length of screw and head, "M3 pan": its max diameter', '>0', 'made'],
  ['head height', 'length of screw and head, "M3 pan": its max height', '>0', 'made'],
  ['allowance', 'length', '>=0', '° made'],
  ['recess draft', 'angle', '>=0 <90', '° 1'],
  ['relief', 'length', '>=0', '° 0.5'],
  ['relief tolerance', 'tolerance', '', '° 0.1'],
  ['relief diameter', 'length', '>0', 'made'],
  ['ratio', 'number', '>0', 2],
  ['pilot', 'length of a screw with a fit, "M3 medium", or', '>0', 'made'],
  ['pilot held at', 'pilot held at: "mid" "mouth"', '', 'mid'],
  ['thread share', 'share of a material, "ABS" or your own two-column card: its thread share', '>0 <=1', 'made'],
  ['boss OD', 'length', '>0', 'made'],
  ['od ratio', 'number of a material, "ABS" or your own two-column card: its od ratio', '>0', 'made'],
  ['boss height', 'length', '>0', '*'],
  ['outside draft', 'angle', '>=0 <90', '° 0.5'],
  ['hole draft', 'angle', '>=0 <90', '° 0.25'],
  ['hole depth', 'length', '>0', 'made'],
  ['hole depth tolerance', 'tolerance', '', 0],
  ['bottom gap', 'length', '>=0', '° 0.5'],
  ['sink limit', 'share', '>0', 0.6],
  ['face', 'face: "hidden" "show"', '', 'hidden'],
  ['slender limit', 'number', '>0', 3],
  ['pin limit', 'number', '>0', 6],
  ['yield stress', 'stress of a material, "ABS" or your own two-column card: its strength', '>0', 'made'],
  ['safety', 'number', '>0', 1],
];
const UNITS: Readonly<Record<string, string>> = { length: 'mm', tolerance: 'mm', angle: '°', stress: 'MPa' };
const SIGNS = { '>': 'above', '>=': 'atLeast', '<': 'below', '<=': 'atMost' } as const;

test('the inputs and their order', () => expect([...INPUTS.keys()]).toEqual(TYPED.map(([name]) => name)));

describe('each input as typed', () => {
  test.each(TYPED)('%s: %s %s [%s]', (name, typed, limits, fallback) => {
    const { param, unit, fallback: made, defaultWords } = INPUTS.get(name) as NonNullable<ReturnType<typeof INPUTS.get>>;
    const [, kind = '', reads, words] = /^([a-z ]+?)(?: of (.*)|: (.*))?$/.exec(typed) ?? [];
    expect([param.name, param.kind.noun, unit]).toEqual([name, kind, UNITS[kind] ?? '']);
    if (reads !== undefined) expect(accepts(param.kind)).toContain(`; or ${reads}`);
    else if (words !== undefined) expect(accepts(param.kind)).toBe(words.replace(/" "/g, '", "'));
    else expect(accepts(param.kind)).not.toMatch(/screw with a fit|screw and head|a material,/);
    const asked = Object.fromEntries(
      [...limits.matchAll(/([<>]=?)([\d.]+)/g)].map(([, sign, value]) => [SIGNS[sign as keyof typeof SIGNS], Number(value)]),
    );
    expect(Object.fromEntries(Object.entries(param.limits ?? {}).filter(([, limit]) => limit !== undefined))).toEqual(asked);

    const [mark, value = mark] = String(fallback).split(' ') as [string, string?];
    const isMade = value === 'made';
    const fixed = mark === '*' || value === '–' || isMade ? undefined : Number.isNaN(Number(value)) ? value : Number(value);
    expect(param.blank).toEqual(mark === '°' ? 'explicit' : mark === '*' ? 'refused' : fixed === undefined ? 'absent' : { default: fixed });
    expect(made === undefined ? undefined : 'raw' in made ? made.raw : 'made').toEqual(isMade ? 'made' : fixed);
    if (mark === '*') expect(defaultWords).toBe('required');
    else if (fixed !== undefined) expect(defaultWords).toBe(String(fixed));
  });
});
