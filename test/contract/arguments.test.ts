// Each argument against the typed table: what it is, in which unit, what it reads besides numbers, its limits and what a blank means.
import { describe, expect, test } from 'vitest';
import { acceptedBy } from '../../src/core/read/accepts';
import { CARDS, call } from '../../src/registry';
import { ARGUMENTS } from './arguments';
import { SIGNATURES } from './released';

const UNITS: Readonly<Record<string, string>> = {
  length: 'mm',
  angle: '°',
  force: 'N',
  torque: 'N·m',
  stress: 'MPa',
  'line load': 'N/mm',
  'second moment': 'mm⁴',
  share: '',
  number: '',
  mass: 'g',
  density: 'g/cm³',
  expansion: '1e-6/K',
  diffusivity: 'mm²/s',
  temperature: '°C',
  'temperature change': 'K',
  tolerance: 'mm',
};

/** The noun of an argument, and what else than a number it reads: the words of its source. */
const READS: Readonly<Record<string, readonly [noun: string, words: RegExp]>> = {
  hole: ['length', /screw with a fit, "M3 medium", or/],
  'hole max': ['length', /screw with a fit, "M3 medium" \(largest hole\)/],
  'screw max': ['length', /; or a screw, "M3": its major max/],
  'screw min': ['length', /; or a screw, "M3": its major min/],
  'head diameter max': ['length', /; or screw and head, "M3 pan": its max diameter/],
  'head diameter sharp': ['length', /; or screw and head, "M3 countersunk": its sharp diameter; above 0 mm/],
  'head height max': ['length', /; or screw and head, "M3 pan": its max height/],
  'flat head min': ['length', /its min diameter; flat-seated heads only/],
  'tapping screw': ['screw', /^text such as "ST2\.9"/],
  across: ['length', /; or a hexagon by its flats, "1\/4 in hex": taken across corners$/],
  point: ['length', /; or the screw with its end, "ST2\.9 cone"/],
  'length tolerance': ['tolerance', /; or the screw with its end, "ST2\.9 cone"/],
  'lower limit': ['length', /; or "none"$/],
  'upper limit': ['length', /; or "none"$/],
  whole: ['number', /^a whole number$/],
  lengths: ['range of lengths', /row or column of lengths/],
  numbers: ['range of numbers', /row or column of numbers/],
  tolerances: ['range of tolerances', /row or column of tolerances/],
  anything: ['value', /^anything$/],
};

interface Typed {
  readonly kind: string;
  readonly material: string | undefined;
  readonly words: readonly string[] | undefined;
  readonly limits: { readonly above?: number; readonly atLeast?: number; readonly below?: number; readonly atMost?: number } | undefined;
  readonly group: string | undefined;
  readonly mark: string | undefined;
  readonly fallback: string | undefined;
}

const SIGNS = { '>': 'above', '>=': 'atLeast', '<': 'below', '<=': 'atMost' } as const;

function typed(text: string): Typed {
  const [all = '', fallback] = text.split(' = ');
  const [, before = '', choice] = /^([^:]*)(?:: (.*))?$/.exec(all) as RegExpExecArray;
  const limits = [...before.matchAll(/([<>]=?)(-?[\d.]+)/g)].map(([, sign, value]) => [SIGNS[sign as keyof typeof SIGNS], Number(value)]);
  const [, kind = '', material, group] =
    /^([a-z ]+?)(?: of ([a-z ]+?))?(?: in ([a-z]+))?$/.exec(before.replace(/ ?[<>]=?-?[\d.]+| !| zero| "0°"/g, '')) ?? [];
  return {
    kind,
    material: /^(size with limits|range of names)$/.test(before) ? undefined : material,
    words: choice?.split(' ').map(word =>
      word
        .replace(/^board-/, 'board ')
        .replace(/^(thread|od|sink|tightness)-/, '$1 ')
        .replace('DIN-74-1', 'din 74-1'),
    ),
    limits: limits.length === 0 ? undefined : (Object.fromEntries(limits) as Typed['limits']),
    group,
    mark: / (!|zero|"0°")$/.exec(before)?.[1],
    fallback,
  };
}

const nounOf = ({ kind, material }: Typed, text: string): string =>
  material === undefined && text.startsWith(`${kind} of`) ? text : (READS[kind]?.[0] ?? kind);

/** As it is typed: a default is taken, a zero is a zero where it may be one, a name is asked for. */
function blankOf(one: Typed, noun: string, optional: boolean, names: readonly string[]): unknown {
  const { fallback } = one;
  if (fallback !== undefined)
    return names.includes(fallback) ? { sameAs: fallback } : { default: /^-?[\d.]+$/.test(fallback) ? Number(fallback) : fallback };
  if (optional) return 'absent';
  if (one.mark === '"0°"') return 'explicit';
  if (one.mark === 'zero') return 'zero';
  const { above = -Infinity, atLeast = -Infinity } = one.limits ?? {};
  return noun in UNITS && one.mark === undefined && above < 0 && atLeast <= 0 ? 'zero' : 'refused';
}

/** Elsewhere: a blank grade is looked up and not found; what a cone or a screw brings is no argument's value. */
const OWN_BLANK: Readonly<Record<string, unknown>> = {
  'TOL.IT grade': 'zero',
  'ENGAGEMENT.LIMITS point': { sameAs: 'length_tol', take: expect.any(Function) as unknown },
  'RECESS.CONE angle': { sameAs: 'sharp_diameter', take: expect.any(Function) as unknown },
  'TORQUE.CLAMP flank': { default: 30, given: 'size.flankDeg' },
};
const TAKES_EVERYTHING = ['CHECK.MAX', 'CHECK.MIN', 'CHECK.CLEAR', 'CHECK.WORST', 'VERSION'];

test('all functions of the core are in the table, and no others', () => {
  const elsewhere = /^(JOINT|VARIANT|CHECK\.BOSS|CHECK\.JOINT|REASON|ABOUT|WORKING)/;
  expect(Object.keys(ARGUMENTS).sort()).toEqual([...CARDS.keys()].filter(id => !elsewhere.test(id)).sort());
});

describe.each(Object.entries(ARGUMENTS))('%s', (id, line) => {
  const released = SIGNATURES.find(one => one.id === id)?.args ?? [];
  const params = CARDS.get(id)?.params ?? [];

  test('has as many arguments as were released', () => {
    expect([params.length, released.length]).toEqual([line.split(', ').length, line.split(', ').length]);
  });

  test.each(line.split(', ').map((text, i) => [params[i]?.name, text, i] as const))('%s: %s', (name, text, i) => {
    const param = params[i] as NonNullable<(typeof params)[number]>;
    const one = typed(text);
    const noun = /^(size with limits|range of names)$/.test(text) ? text : nounOf(one, text);
    expect(name).toBe(released[i]?.name);
    expect(param.kind.noun).toBe(noun);
    expect(param.kind.unit).toBe(
      noun === 'size with limits' || noun.startsWith('range of lengths') || noun === 'range of tolerances' ? 'mm' : (UNITS[noun] ?? ''),
    );
    expect(
      param.limits === undefined ? undefined : Object.fromEntries(Object.entries(param.limits).filter(([, limit]) => limit !== undefined)),
    ).toEqual(param.kind.shape === 'list' ? undefined : one.limits);
    expect(param.blank).toEqual(
      OWN_BLANK[`${id} ${name}`] ??
        blankOf(
          one,
          noun,
          released[i]?.optional === true,
          released.map(arg => arg.name),
        ),
    );
    expect(param.group).toBe(one.group);
    expect(param.kind.takesEverything).toBe(TAKES_EVERYTHING.includes(id));
    const accepts = acceptedBy(param);
    if (one.words !== undefined) expect(accepts.split(', ').sort()).toEqual(one.words.map(word => `"${word}"`).sort());
    if (one.material !== undefined) expect(accepts).toMatch(new RegExp(`a material, .*: its ${one.material}`));
    else if (READS[one.kind] !== undefined) expect(accepts).toMatch(READS[one.kind]?.[1] as RegExp);
    else if (noun in UNITS && one.kind !== 'tolerance') expect(accepts).not.toContain('; or ');
  });
});

describe('each entry of a list keeps to the limits of its kind', () => {
  const lists = Object.entries(ARGUMENTS).flatMap(([id, line]) =>
    line
      .split(', ')
      .flatMap((text, i) =>
        text.startsWith('lengths') ? [[id, CARDS.get(id)?.params[i]?.name ?? '', i, /^lengths >=?0/.exec(text)?.[0]] as const] : [],
      ),
  );

  test('in each of a dozen functions at least', () => expect(lists.length).toBeGreaterThanOrEqual(12));

  test.each(lists)('%s %s', (id, name, i, limited) => {
    const card = CARDS.get(id);
    const args = (card?.example.args ?? []).map((arg, at) => (at === i ? -1e-6 : arg));
    const answer = call(id, args);
    if (limited !== undefined)
      expect(answer).toMatchObject({
        ok: false,
        code: '#VALUE!',
        argument: name,
        message: expect.stringMatching(limited === 'lengths >0' ? /must be above 0 mm$/ : /must be at least 0 mm$/) as unknown,
      });
    else expect(answer.ok ? '' : answer.message).not.toContain('must be');
  });
});
