// Each input of the joint against a table typed from the contract: what it is, its limits, its default, what a blank means.
import { describe, expect, test } from 'vitest';
import { accepts } from '../../src/core/read/accepts';
import { INPUTS } from '../../src/joint/inputs';

/** `*` required; `°` a blank or bare 0 is refused, a zero has its unit; `made` its default is worked out; `–` it has none; `insert` required with an insert. */
const TYPED: readonly (readonly [name: string, kind: string, limits: string, fallback: string | number])[] = [
  ['screw', 'screw', '', '*'],
  ['head', 'head', '', '*'],
  ['end', 'screw end: "cone" "flat"', '', 'cone'],
  ['length', 'length', '>0', 'made'],
  ['length tolerance', 'tolerance', '', '° made'],
  ['point', 'length of the screw with its end', '>=0', '° made'],
  ['material', 'material', '', '–'],
  ['wall', 'length', '>0', '*'],
  ['head wall', 'length', '>0', 'made'],
  ['feature share', 'share', '>0 <=1', 'made'],
  ['board plane', 'length', '>0', '*'],
  ['board plane tolerance', 'tolerance', '', '° 0.1'],
  ['seat', 'length', '>=0', '° made'],
  ['seat tolerance', 'tolerance', '', '° made'],
  ['board', 'length', '>=0', 0],
  ['board tolerance', 'tolerance', '', '° made'],
  ['sleeve', 'length', '>=0', 0],
  ['sleeve tolerance', 'tolerance', '', '° 0.1'],
  ['sleeve draft', 'angle', '>=0 <90', '° 0.5'],
  ['sleeve wall', 'length', '>0', 1],
  ['gap', 'length', '>=0', 0],
  ['gap tolerance', 'tolerance', '', '° made'],
  ['hole', 'length of a screw with a fit, "M3 medium", or', '>0', 'made'],
  ['hole tolerance', 'tolerance', '', '° 0.1'],
  ['board hole', 'length of a screw with a fit, "M3 medium", or', '>0', '–'],
  ['board hole tolerance', 'tolerance', '', '° 0.1'],
  ['head diameter', 'length of screw and head, "M3 pan": its max diameter', '>0', 'made'],
  ['head height', 'length of screw and head, "M3 pan": its max height', '>0', 'made'],
  ['head diameter min', 'length of screw and head, "M3 pan": its min diameter', '>0', 'made'],
  ['allowance', 'length', '', '° made'],
  ['recess draft', 'angle', '>=0 <90', '° 1'],
  ['post draft', 'angle', '>=0 <90', '° 0.5'],
  ['post OD', 'length', '>0', 'made'],
  ['relief', 'length', '>=0', '° 0.5'],
  ['relief tolerance', 'tolerance', '', '° 0.1'],
  ['relief diameter', 'length', '>0', 'made'],
  ['ratio', 'number', '>0', 'made'],
  ['pilot', 'length of a screw with a fit, "M3 medium", or', '>0', 'made'],
  ['pilot tolerance', 'tolerance', '', '° 0.05'],
  ['pilot held at', 'pilot held at: "mid" "mouth"', '', 'mid'],
  ['thread share', 'share of a material, "ABS" or your own two-column card: its thread share', '>0 <=1', 'made'],
  ['boss OD', 'length', '>0', 'made'],
  ['od ratio', 'number of a material, "ABS" or your own two-column card: its od ratio', '>0', 'made'],
  ['boss height', 'length', '>0', '*'],
  ['outside draft', 'angle', '>=0 <90', '° 0.5'],
  ['hole draft', 'angle', '>=0 <90', '° 0.25'],
  ['hole depth', 'length', '>0', 'made'],
  ['hole depth tolerance', 'tolerance', '', '° 0.1'],
  ['bottom gap', 'length', '>=0', '° 0.5'],
  ['root fillet', 'length', '>=0', 0],
  ['ring depth', 'length', '>=0', 0],
  ['insert diameter', 'length', '>0', '–'],
  ['insert length', 'length', '>0', 'insert'],
  ['insert hole', 'length', '>0', 'made'],
  ['insert below face', 'length', '>=0', 0],
  ['insert tolerance', 'tolerance', '', '° 0.1'],
  ['insert landing limit', 'length', '>0', 0.3],
  ['insert ratio', 'number', '>0', 2],
  ['insert margin', 'length', '>=0', '° 1'],
  ['face', 'face: "hidden" "show"', '', 'hidden'],
  ['head face', 'face: "hidden" "show"', '', 'show'],
  ['yield stress', 'stress of a material, "ABS" or your own two-column card: its strength', '>0', 'made'],
  ['safety', 'number', '>=1', 1],
  ['common share', 'share', '>=0 <=1', 0],
  ['load', 'force', '>0', '–'],
  ['load safety', 'number', '>=1', 2],
  ['friction', 'number', '>0 <=1', '–'],
  ['drive torque', 'torque', '>0', '–'],
  ['set torque', 'torque', '>0', '–'],
  ['torque scatter', 'share', '>=0 <1', 0.1],
  ['tool diameter', 'length', '>0', '–'],
  ['steel gap', 'length', '>0', '–'],
  ['subflush limit', 'length', '>=0', '° 0.2'],
  ['seat limit', 'length', '>0', 1.2],
  ['bearing limit', 'length', '>=0', '° 0.5'],
  ['thread limit', 'share', '>=0 <=1', '° 0.15'],
  ['od limit', 'number', '>0', 'made'],
  ['tightness limit', 'number of a material, "ABS" or your own two-column card: its tightness limit', '>0', 'made'],
  ['tightness review', 'number of a material, "ABS" or your own two-column card: its tightness review', '>0', 'made'],
  ['floor limit', 'share', '>0 <=1', 0.6],
  ['hold limit', 'length', '>=0', '° 0.5'],
  ['ring limit', 'length', '>0', 0.8],
  ['sink limit', 'share of a material, "ABS" or your own two-column card: its sink limit', '>0', 'made'],
  ['hidden sink limit', 'share', '>0', 1],
  ['slender limit', 'number', '>0', 3],
  ['pin limit', 'number', '>0', 7],
  ['strip limit', 'number', '>0', 3.5],
];
const UNITS: Readonly<Record<string, string>> = { length: 'mm', tolerance: 'mm', angle: '°', stress: 'MPa', force: 'N', torque: 'N·m' };
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
    const isRequired = mark === '*' || mark === 'insert';
    const fixed = isRequired || value === '–' || isMade ? undefined : Number.isNaN(Number(value)) ? value : Number(value);
    expect(param.blank).toEqual(
      // an own screw may bring its head
      name === 'head'
        ? { sameAs: 'screw', take: expect.any(Function) as unknown }
        : mark === '°'
          ? 'explicit'
          : isRequired
            ? 'refused'
            : fixed === undefined
              ? 'absent'
              : { default: fixed },
    );
    expect(made === undefined ? undefined : 'raw' in made ? made.raw : 'made').toEqual(isMade ? 'made' : fixed);
    if (isRequired) expect(defaultWords).toBe(mark === '*' ? 'required' : 'required with an insert');
    else if (fixed !== undefined) expect(defaultWords).toBe(String(fixed));
  });
});
