// Parameters for design programs: names that all of them take, the values of the joint, tolerances where the joint holds them.
import { parseCsv } from 'hucre/csv';
import { expect, it } from 'vitest';
import { PARAMETER_FORMATS, parameterName, type JointParameter, parametersOf, prefixOf } from '../../src/joint/parameters';
import { JOINTS, LOGGER, variantOf } from '../figure/joints';

const all = Object.values(JOINTS).map(inputs => ({ variant: variantOf(inputs), parameters: parametersOf(variantOf(inputs), 'boss 1') }));
const called = (parameters: readonly JointParameter[], name: string): JointParameter | undefined =>
  parameters.find(one => one.name === `joint_${name}`);

it('every name is letters, digits and underscores, begins with a letter, and is there once whatever its case', () => {
  let count = 0;
  for (const { parameters } of all) {
    const names = parameters.map(({ name }) => name);
    for (const name of names) expect(name).toMatch(/^[A-Za-z][A-Za-z0-9_]*$/);
    expect(new Set(names.map(name => name.toLowerCase())).size).toBe(names.length);
    count += names.length;
  }
  expect(count).toBeGreaterThan(1_500);
});

it('every value is that of the joint, in mm or degrees', () => {
  let compared = 0;
  for (const { variant, parameters } of all)
    for (const { name, value, unit } of parameters) {
      const of = name
        .replace(/^boss_1_/, '')
        .replaceAll('_', ' ')
        .replace('pull out', 'pull-out');
      const asked = variant.outcome(of) as number;
      expect(Math.abs(value - asked), name).toBeLessThanOrEqual(1e-11 * Math.max(1, Math.abs(asked)));
      expect(['mm', 'deg']).toContain(unit);
      compared++;
    }
  expect(compared).toBeGreaterThan(1_500);
});

it('sizes and tolerances of one joint, typed by hand', () => {
  const parameters = parametersOf(variantOf({ ...LOGGER, 'hole tolerance': '+0.1/-0.05' }));
  expect(called(parameters, 'boss_OD')).toMatchObject({ value: 6.4, unit: 'mm', lower: null, upper: null, source: 'given' });
  expect(called(parameters, 'hole')).toMatchObject({ value: 3.4, lower: -0.05, upper: 0.1 });
  // ISO 4759-1 and ISO 1478: tapping screw with cone end, ±0.8
  expect(called(parameters, 'screw_length')).toMatchObject({ value: 13, lower: -0.8, upper: 0.8 });
  expect(called(parameters, 'hole_draft')).toMatchObject({ value: 0.25, unit: 'deg' });
  expect(called(parameters, 'engagement_ratio')).toBeUndefined();
  expect(called(parameters, 'seat_limit')).toBeUndefined();
});

it('CSV and JSON hold the same', () => {
  const parameters = parametersOf(variantOf(LOGGER), 'Gehäuse "A", links');
  const [heading, ...rows] = parseCsv(PARAMETER_FORMATS.csv(parameters)) as string[][];
  expect(heading).toEqual(['name', 'value', 'unit', 'lower', 'upper', 'source']);
  expect(rows).toEqual(parameters.map(one => Object.values(one).map(value => String(value ?? ''))));
  expect(JSON.parse(PARAMETER_FORMATS.json(parameters))).toEqual(parameters);
  expect(rows.length).toBeGreaterThan(50);
});

it('a label becomes the beginning of a name', () => {
  expect([prefixOf(''), prefixOf('2'), prefixOf('A'), prefixOf('Gehäuse "A", links'), prefixOf('字')]).toEqual([
    'joint',
    'joint_2',
    'joint_A',
    'Gehause_A_links',
    'joint',
  ]);
  expect(parameterName('full thread, worst')).toBe('full_thread_worst');
});
