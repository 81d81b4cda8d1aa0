// How much each input of a joint moves one of its results, by small steps on the joint itself.
import type { Param } from '../core/card';
import { Refused } from '../core/refuse';
import type { Deviation } from '../core/read/deviation';
import type { Variant } from '../joint/variant';
import { INPUTS } from '../joint/inputs';
import { call } from '../registry';

export interface Sensitivity {
  readonly input: string;
  readonly unit: string;
  /** A tolerance by half its width. */
  readonly value: number;
  /** Change of the result for one unit more. */
  readonly perUnit: number;
  /** Change of the result when the input grows by a tenth of itself. */
  readonly perTenth: number;
}

/** Share of a value by which it is moved. */
const STEP = 1e-3;
/** Less is the noise of the arithmetic. */
const NOTHING = 1e-9;

function numberOf(variant: Variant, output: string): number | undefined {
  try {
    const value = variant.value(output);
    return typeof value === 'number' ? value : undefined;
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}

function valueOf(variant: Variant, { name, kind }: Param): number | Deviation | undefined {
  try {
    const value = variant.value(name);
    if (typeof value === 'number') return value;
    return kind.is === 'deviation' ? (value as Deviation | undefined) : undefined;
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}

/** The input as it would be typed, larger by so much; a tolerance grows on both sides. */
const typed = (value: number | Deviation, more: number): number | string =>
  typeof value === 'number' ? value + more : `+${value.upperMm + more}/${value.lowerMm - more} mm`;

/** Lengths are only those of the standard. */
function lengthSteps(variant: Variant, lengthMm: number): number[] {
  const { own, text } = variant.value('screw').size;
  const lengths = call('SCREW.LENGTHS', [own?.table.subject ?? text]);
  const all =
    lengths.ok && Array.isArray(lengths.value) ? lengths.value.flat().filter((length): length is number => typeof length === 'number') : [];
  const longer = all.filter(length => length > lengthMm).slice(0, 1);
  const shorter = all.filter(length => length < lengthMm).slice(-1);
  return [...longer, ...shorter].map(length => length - lengthMm);
}

function perUnit(
  variant: Variant,
  output: string,
  now: number,
  input: string,
  value: number | Deviation,
  size: number,
): number | undefined {
  const step = Math.max(STEP * Math.abs(size), STEP / 10);
  const steps = [step, -step, ...(input === 'length' ? lengthSteps(variant, size) : [])];
  for (const more of steps) {
    const then = numberOf(variant.with(input, typed(value, more)), output);
    if (then !== undefined) return (then - now) / more;
  }
  return undefined;
}

/** Inputs that move the result, the strongest first; one of size 0 has nothing to grow by. */
export function sensitivities(variant: Variant, output: string): Sensitivity[] {
  const now = numberOf(variant, output);
  if (now === undefined) return [];
  return [...INPUTS.values()]
    .flatMap(({ param, unit }) => {
      const { name } = param;
      const value = valueOf(variant, param);
      if (value === undefined) return [];
      const size = typeof value === 'number' ? value : (value.upperMm - value.lowerMm) / 2;
      if (size === 0) return [];
      const slope = perUnit(variant, output, now, name, value, size);
      return slope === undefined || Math.abs(slope) < NOTHING
        ? []
        : [{ input: name, unit, value: size, perUnit: slope, perTenth: slope * size * 0.1 }];
    })
    .sort((a, b) => Math.abs(b.perTenth) - Math.abs(a.perTenth));
}
