// The lengths and angles of one joint as parameters that a design program imports: name, value, unit, tolerance, source.
import type { Deviation } from '../core/read/deviation';
import { sourceOf } from './card';
import { INPUTS } from './inputs';
import { OUTPUTS, unitOf } from './outputs';
import type { Variant } from './variant';

/** One length or angle of a joint, as a design program takes it. */
export interface JointParameter {
  readonly name: string;
  readonly value: number;
  readonly unit: 'mm' | 'deg';
  /** Deviations from the value in its unit; null where the joint holds none. */
  readonly lower: number | null;
  readonly upper: number | null;
  readonly source: string;
}

/** What holds the tolerance of these; of the others it is what is called by their name with `tolerance` behind it. */
const TOLERANCE_OF: Readonly<Record<string, string>> = {
  'screw length': 'length deviation',
  'pilot hole': 'pilot tolerance',
  'insert hole': 'pilot tolerance',
  'insert length': 'insert tolerance',
  'insert below face': 'insert tolerance',
};

/** Outputs that repeat these under a name of their own. */
const REPEATED: readonly string[] = ['length', 'pilot'];
/** Neither sizes of the part nor of the screw: what the joint is judged by, and tolerances, which stand beside what they are of. */
const NO_SIZE = / (?:limit|tolerance)$/;

const NAMES: readonly string[] = [...new Set<string>([...INPUTS.keys(), ...OUTPUTS])].filter(
  name => !NO_SIZE.test(name) && !REPEATED.includes(name) && ['mm', '°'].includes(unitOf(name)),
);

/** Letters, digits and underscores, a letter first. */
export const parameterName = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '_')
    .replace(/^_+|_+$/g, '');

/** Digits of the value that are not of its binary form. */
const DIGITS = 12;
const typed = (value: number): number => Number(value.toPrecision(DIGITS));

/** What stands before every name: no function, unit or constant of a program is called so, and it tells joints apart. */
export function prefixOf(label: string): string {
  const name = parameterName(label);
  return name === '' ? 'joint' : /^[A-Za-z]{2}/.test(name) ? name : `joint_${name}`;
}

const isDeviation = (value: unknown): value is Deviation => typeof value === 'object' && value !== null && 'lowerMm' in value;

/**
 * The lengths and angles of a joint, in mm and °, with their tolerances where one is known.
 *
 * @param variant the joint
 * @param label what its parameters are told apart by; `joint` without it
 */
export function parametersOf(variant: Variant, label = ''): JointParameter[] {
  return NAMES.flatMap((name): JointParameter[] => {
    const value = variant.outcome(name);
    if (typeof value !== 'number') return [];
    const tolerance = TOLERANCE_OF[name] ?? `${name} tolerance`;
    const deviation = tolerance === 'length deviation' || INPUTS.has(tolerance) ? variant.outcome(tolerance) : undefined;
    return [
      {
        name: `${prefixOf(label)}_${parameterName(name)}`,
        value: typed(value),
        unit: unitOf(name) === 'mm' ? 'mm' : 'deg',
        lower: isDeviation(deviation) ? typed(deviation.lowerMm) : null,
        upper: isDeviation(deviation) ? typed(deviation.upperMm) : null,
        source: sourceOf(variant, name),
      },
    ];
  });
}

const COLUMNS = ['name', 'value', 'unit', 'lower', 'upper', 'source'] as const satisfies readonly (keyof JointParameter)[];

/** Quoted where it has to be. */
const csvCell = (value: string | number | null): string => {
  const text = String(value ?? '');
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
};

/** The forms in which parameters are written. */
export const PARAMETER_FORMATS = {
  csv: (parameters: readonly JointParameter[]): string =>
    [COLUMNS, ...parameters.map(parameter => COLUMNS.map(column => parameter[column]))]
      .map(cells => `${cells.map(csvCell).join(',')}\r\n`)
      .join(''),
  json: (parameters: readonly JointParameter[]): string => `${JSON.stringify(parameters, undefined, 1)}\n`,
} as const;
