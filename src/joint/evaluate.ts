// One variant of the joint: inputs as they were typed, every value on demand and once, the rules' findings.
import type { Card, Earlier } from '../core/card';
import { CORE_CARDS } from '../core/cards';
import { WORST_FIRST } from '../core/check/check';
import { NoLengthPasses } from '../core/engagement/screw-length';
import { atLeast, atMost } from '../core/maths';
import { isBlank, isEmpty, limitWords, readArgument, withinLimits } from '../core/read/params';
import { Refused, wrongInput } from '../core/refuse';
import { type Arg, type Bound, type Finding, type Made, NotApplicable, type Rule } from './graph';
import { INPUTS } from './inputs';
import { NODES } from './nodes';
import { RULES } from './rules';

const NAMES = [
  'feature wall',
  'recess diameter',
  'recess mouth',
  'recess depth',
  'subflush',
  'post OD',
  'hole',
  'sleeve OD',
  'grip',
  'screw length',
  'penetration max',
  'engagement',
  'engagement min',
  'engagement ratio',
  'hole depth needed',
  'hole depth',
  'bottom clearance',
  'pilot hole',
  'pilot mouth',
  'pilot at tip',
  'pilot bottom',
  'boss OD',
  'boss OD root',
  'boss wall',
  'boss wall root',
  'sink ratio',
  'slenderness',
  'pin ratio',
  'floor under hole',
  'landing ring',
  'board play',
  'board hold',
  'boss stack',
  'pull-out',
  'boss tear',
  'seat shear',
  'weakest',
  'boss mass',
  'all computed',
  'state',
  'reason',
] as const;

export type Output = (typeof NAMES)[number];
export const OUTPUTS: readonly string[] = NAMES;

/** Outputs that are about the other outputs and the rules. */
const VERDICTS: Readonly<Record<string, string>> = {
  'all computed': 'TRUE where every output that applies has a value',
  state: 'worst state of all rules',
  reason: 'first rule of that state, with value and limit',
};

export const unitOf = (name: string): string => NODES.get(name)?.unit ?? INPUTS.get(name)?.unit ?? '';
export const meaningOf = (name: string): string => VERDICTS[name] ?? NODES.get(name)?.meaning ?? INPUTS.get(name)?.meaning ?? '';
export const isVerdict = (name: string): boolean => name in VERDICTS;

const CARD_OF: ReadonlyMap<unknown, Card> = new Map(CORE_CARDS.map(card => [card.formula, card]));
export const cardOf = (formula: Made['formula']): Card | undefined => CARD_OF.get(formula);

export const rounded = (value: number): string => String(Math.round(value * 1000) / 1000);
const withUnit = (value: number, unit: string): string => (unit === '' ? rounded(value) : `${rounded(value)} ${unit}`);

type Memo = { readonly value: unknown } | { readonly fault: Refused };

export class Variant {
  private readonly memo = new Map<string, Memo>();
  private readonly read: Earlier = { get: name => this.value(name) };

  /** @param given what was typed under each input name; names left out take their defaults. */
  constructor(private readonly given: ReadonlyMap<string, unknown>) {}

  /** The same variant with one input typed anew. */
  with(name: string, raw: unknown): Variant {
    return new Variant(new Map([...this.given, [name, raw]]));
  }

  /** Whether the user gave this input himself. */
  isGiven(name: string): boolean {
    const raw = this.given.get(name);
    return !isEmpty(raw) && !isDefaultWord(raw) && !(raw === 0 && INPUTS.get(name)?.param.blank === 'absent');
  }

  /** The value of an input or node. Throws Refused. */
  value(name: string): unknown {
    const known = this.memo.get(name) ?? this.work(name);
    if ('fault' in known) throw known.fault;
    return known.value;
  }

  private work(name: string): Memo {
    let memo: Memo;
    try {
      const node = NODES.get(name);
      memo = { value: node === undefined ? this.input(name) : this.made(node) };
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
      memo = { fault };
    }
    this.memo.set(name, memo);
    return memo;
  }

  private input(name: string): unknown {
    const input = INPUTS.get(name);
    if (input === undefined) throw new TypeError(`no such name in the joint: ${name}`);
    const { param, fallback } = input;
    const raw = this.given.get(name);
    const asksForDefault = !this.given.has(name) || isDefaultWord(raw);
    if (!asksForDefault && !isBlank(raw)) return readArgument(param, raw, this.read);
    if (!asksForDefault && param.blank === 'explicit')
      throw wrongInput(`${name}: 0 or blank? write ${param.kind.unit === '°' ? '"0°"' : '"0 mm"'} for zero, or default`, name);
    // a blank board plane is no slip where the head lies on the board
    if (name === 'board plane' && this.value('seat') === 0)
      throw new NotApplicable('the board plane is blank and the head lies on the board');
    if (fallback === undefined) return readArgument(param, undefined, this.read);
    return 'raw' in fallback ? param.kind.read(fallback.raw, this.read) : this.made(fallback);
  }

  private made({ formula, args }: Made): unknown {
    const values = args.map(arg => this.arg(arg));
    checkLimits(cardOf(formula), values);
    const result = formula(...(values as never[]));
    if (typeof result === 'number' && !Number.isFinite(result)) throw wrongInput('no finite result for these inputs');
    return result;
  }

  /** The value of an argument; nothing where the formula does not look at it. */
  arg(arg: Arg): unknown {
    if (typeof arg === 'string') return this.value(arg);
    if ('is' in arg) return arg.is;
    return this.value(arg.where) === true ? this.value(arg.only) : undefined;
  }

  finding(rule: Rule): Finding | undefined {
    try {
      if (rule.when !== undefined && this.value(rule.when) !== true) return undefined;
      const value = this.value(rule.value) as number;
      const limits = [rule.fail, rule.look].map(bound => (bound === undefined ? undefined : this.limit(bound)));
      if (rule.fail !== undefined && isBroken(value, rule.fail, limits[0] as number)) {
        const soft = rule.softWhen !== undefined && this.value(rule.softWhen) === true;
        return { rule, state: soft ? 'look' : 'fail', value, limit: limits[0], bound: rule.fail };
      }
      if (rule.look !== undefined && isBroken(value, rule.look, limits[1] as number))
        return { rule, state: 'look', value, limit: limits[1], bound: rule.look };
      return { rule, state: 'pass', value, limit: limits[0] ?? limits[1], bound: rule.fail ?? rule.look };
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
      const isAnswer = rule.value === 'standard length' && fault instanceof NoLengthPasses;
      return { rule, state: isAnswer ? 'fail' : 'not checked', value: undefined, limit: undefined, bound: undefined, refusal: fault };
    }
  }

  private limit({ limit }: Bound): number {
    return typeof limit === 'number' ? limit : (this.value(limit) as number);
  }

  findings(): Finding[] {
    return RULES.flatMap(rule => this.finding(rule) ?? []);
  }

  verdict(name: string): string | boolean {
    if (name === 'all computed') return OUTPUTS.every(output => isVerdict(output) || this.applies(output));
    const findings = this.findings();
    const state = WORST_FIRST.find(word => findings.some(finding => finding.state === word)) ?? 'not checked';
    if (name === 'state') return state;
    const first = findings.find(finding => finding.state === state);
    return first === undefined || state === 'pass' ? '–' : sentence(first);
  }

  /** Whether the output has a value, or has none because it does not apply. */
  private applies(output: string): boolean {
    try {
      this.value(output);
      return true;
    } catch (fault) {
      return fault instanceof NotApplicable;
    }
  }
}

const isDefaultWord = (raw: unknown): boolean => typeof raw === 'string' && raw.trim().toLowerCase() === 'default';

function isBroken(value: number, { side }: Bound, limit: number): boolean {
  if (side === 'below') return !atLeast(value, limit);
  if (side === 'above') return !atMost(value, limit);
  return side === 'at most' ? atMost(value, limit) : atLeast(value, limit);
}

/** Base functions keep their limits inside the joint too. */
function checkLimits(card: Card | undefined, values: readonly unknown[]): void {
  card?.params.forEach((param, i) => {
    const value = values[i];
    if (typeof value === 'number' && !withinLimits(value, param.limits)) {
      throw wrongInput(`${param.name} of ${card.id} is ${rounded(value)}; it must be ${limitWords(param.limits, param.kind.unit)}`);
    }
  });
}

/** "engagement: engagement ratio 1.497 is below 2". */
export function sentence({ rule, state, value, limit, bound, refusal }: Finding): string {
  if (refusal !== undefined) return `${rule.name}: ${state === 'fail' ? '' : 'not checked, '}${refusal.message}`;
  if (rule.words !== undefined && state !== 'pass') return `${rule.name}: ${rule.words}`;
  const unit = unitOf(rule.value);
  return `${rule.name}: ${rule.value} ${withUnit(value ?? NaN, unit)} is ${bound?.side} ${withUnit(limit ?? NaN, unit)}`;
}
