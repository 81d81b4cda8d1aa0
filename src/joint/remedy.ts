// What would mend a broken rule: one input moved, worked out on the joint itself and tried again before it is said.
import { standardLengthsMm } from '../core/screw/length';
import { WORST_FIRST } from '../core/check/check';
import type { Finding, Rule } from './graph';
import { INPUTS } from './inputs';
import type { Variant } from './variant';
import { rounded } from './words';

/** A size is moved to a multiple of this on the passing side, mm or degrees. */
const STEP = 0.05;
const SOLVED = 1e-6;
/** Sizes are searched up to this many times their present value. */
const FARTHEST = 4;

const severity = (finding: Finding | undefined): number =>
  finding === undefined ? WORST_FIRST.length : WORST_FIRST.indexOf(finding.state);

/** The rule passes and no other rule got worse. */
function mends(rule: Rule, before: readonly Finding[], after: Variant): boolean {
  if (after.finding(rule)?.state !== 'pass') return false;
  return before.every(finding => finding.rule === rule || severity(after.finding(finding.rule)) >= severity(finding));
}

const zeroWithUnit = (name: string): string => (INPUTS.get(name)?.param.kind.unit === '°' ? '0°' : '0 mm');
const typed = (name: string, value: number): number | string => (value === 0 ? zeroWithUnit(name) : value);

function currentValue(variant: Variant, name: string): number | undefined {
  const value = variant.outcome(name);
  return typeof value === 'number' ? value : undefined;
}

/** The nearest standard length that mends the rule. */
function standardLength(variant: Variant, works: (value: number) => boolean): number | undefined {
  const from = currentValue(variant, 'length') ?? 0;
  const lengths = standardLengthsMm(variant.value('screw').size);
  return [...lengths].sort((a, b) => Math.abs(a - from) - Math.abs(b - from)).find(length => length !== from && works(length));
}

/** Bisection between a value that fails and one that passes, then rounded to the passing side and tried again. */
function nearest(from: number, to: number, passes: (value: number) => boolean, works: (value: number) => boolean): number | undefined {
  let [fails, good] = [from, to];
  while (Math.abs(good - fails) > SOLVED) {
    const middle = (fails + good) / 2;
    if (passes(middle)) good = middle;
    else fails = middle;
  }
  const side = good > from ? 1 : -1;
  const first = side * Math.ceil((side * good) / STEP - (2 * SOLVED) / STEP);
  return [first, first + side].map(steps => Math.round(steps * STEP * 1e6) / 1e6).find(value => value >= 0 && works(value));
}

function moved(variant: Variant, name: string, passes: (value: number) => boolean, works: (value: number) => boolean): number | undefined {
  const from = currentValue(variant, name);
  if (from === undefined) return undefined;
  // the farther end may overshoot into another fault, so a few places on the way are tried
  const ends = [1.1, 1.25, 1.5, 2, 3, FARTHEST].flatMap(times => [from * times, from / times]);
  const found = [...ends, 0].filter(end => end !== from && passes(end)).map(end => nearest(from, end, passes, works));
  return found.filter(value => value !== undefined).sort((a, b) => Math.abs(a - from) - Math.abs(b - from))[0];
}

/** "wall 2.55 mm" for the first input that can mend the rule alone, else that none can. */
export function remedy(variant: Variant, finding: Finding, all: readonly Finding[]): string {
  const { rule } = finding;
  if (finding.state === 'pass') return '–';
  if (finding.refusal !== undefined && finding.state === 'not checked') return 'mend the input that is named';
  for (const name of rule.moves) {
    const tried = (value: number): Variant => variant.with(name, typed(name, value));
    const passes = (value: number): boolean => tried(value).finding(rule)?.state === 'pass';
    const works = (value: number): boolean => mends(rule, all, tried(value));
    const value = name === 'length' ? standardLength(variant, works) : moved(variant, name, passes, works);
    if (value !== undefined) return `${name} ${rounded(value)} ${INPUTS.get(name)?.unit ?? ''}`.trim();
  }
  return `no single change of ${rule.moves.join(', ')} passes`;
}
