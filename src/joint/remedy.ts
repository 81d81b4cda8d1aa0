// What would mend a broken rule: a moulder's changes in a moulder's order, each tried on the whole joint before it is said.
import { WORST_FIRST } from '../core/check/check';
import { standardLengthsMm } from '../core/screw/length';
import { familySizes } from '../core/screw/thread';
import { Refused } from '../core/refuse';
import type { Finding, Rule } from './graph';
import { defaultSeatMm } from './formulas/head-half';
import { INPUTS } from './inputs';
import type { Variant } from './variant';
import { isBrokenBySize, withUnit } from './words';

/** A size is moved to a multiple of this. */
const STEPS: Readonly<Record<string, number>> = { 'N·m': 0.005 };
const stepOf = (name: string): number => STEPS[INPUTS.get(name)?.unit ?? ''] ?? 0.05;
/** Trials for one variant: a table of many rows has to end. */
const MAX_TRIALS = 200;
const MAX_SAID = 3;

interface Move {
  readonly name: string;
  readonly value: number | string;
}

/** The rule passes, or there is nothing left for it to judge, or it is to be reviewed whatever its size. */
function passes(rule: Rule, after: Variant): boolean {
  const found = after.finding(rule);
  return found === undefined || found.state === 'pass' || (found.state === 'review' && !isBrokenBySize(found));
}

/** And no other rule got worse. */
function mends(rule: Rule, before: readonly Finding[], after: Variant): boolean {
  if (!passes(rule, after)) return false;
  return before.every(found => found.rule === rule || severity(after.finding(found.rule)) >= severity(found));
}

const severity = (found: Finding | undefined): number => (found === undefined ? WORST_FIRST.length : WORST_FIRST.indexOf(found.state));

function sizeOf(variant: Variant, name: string): number | undefined {
  const value = variant.outcome(name);
  return typeof value === 'number' ? value : undefined;
}

/**
 * How far an input may be moved: a wall by a fifth, a pilot by a tenth of a millimetre, none beyond the least that its own
 * default asks for.
 */
function range(variant: Variant, name: string, from: number): readonly [low: number, high: number] {
  const size = (other: string, otherwise: number): number => sizeOf(variant, other) ?? otherwise;
  const { nominalMm } = variant.value('screw');
  switch (name) {
    case 'wall':
    case 'head wall':
      return [from, 1.2 * from];
    case 'pilot':
      return [from - 0.1, from + 0.1];
    case 'boss OD':
      return [size('boss OD required', size('boss OD for the insert', from)), Math.max(from, 3 * nominalMm, 3 * size('insert OD', 0))];
    case 'hole depth':
      return [nominalMm, size('boss height', 0) + size('wall', 0) - size('floor required', 0) - (size('hole depth max', from) - from)];
    case 'ring depth':
      return [0, size('wall', 0) - size('floor required', 0)];
    case 'seat':
      return [defaultSeatMm(size('head wall', 0), variant.value('screw')), 2 * from];
    case 'relief diameter':
      return [size('major max', from) + 0.2, from];
    case 'steel gap':
      return [from, from + 10];
    case 'relief':
      return [0, 2 * from];
    case 'gap':
    case 'insert below face':
      return [0, from];
    case 'hole':
    case 'board hole':
      return [size('major max', from), Math.max(2 * from, size('major max', from) + 2)];
    default:
      return [from / 4, Math.max(4 * from, from + 2)];
  }
}

class Search {
  private trials = 0;

  constructor(
    private readonly variant: Variant,
    private readonly rule: Rule,
    private readonly before: readonly Finding[],
  ) {}

  /** Changes that mend the rule, in the order of its moves; pairs where no single one does. */
  found(): readonly (readonly Move[])[] {
    if (this.variant.outcome('screw') instanceof Refused) return [];
    const single = this.rule.moves.flatMap(move => (typeof move === 'string' ? [this.moved(this.variant, move)] : []));
    const mended = single.filter(change => change !== undefined).map(change => [change]);
    if (mended.length > 0) return mended;
    return this.rule.moves.flatMap(move => {
      const pair = typeof move === 'string' ? undefined : this.together(move);
      return pair === undefined ? [] : [pair];
    });
  }

  private with(variant: Variant, { name, value }: Move): Variant {
    return variant.with(name, value === 0 ? (INPUTS.get(name)?.param.kind.unit === '°' ? '0°' : '0 mm') : value);
  }

  private works(variant: Variant): boolean {
    return ++this.trials <= MAX_TRIALS && mends(this.rule, this.before, variant);
  }

  private passes(variant: Variant): boolean {
    return ++this.trials <= MAX_TRIALS && passes(this.rule, variant);
  }

  private moved(variant: Variant, name: string): Move | undefined {
    if (name === 'length') return this.firstThatWorks(variant, lengthsNear(variant));
    if (name === 'screw') return this.firstThatWorks(variant, screwsNear(variant));
    const from = sizeOf(variant, name);
    if (from === undefined) return undefined;
    const [low, high] = range(variant, name, from);
    const ways = [high, low].map(end => this.nearest(variant, name, from, end, [low, high]));
    const found = ways.filter(change => change !== undefined);
    return found.sort((a, b) => Math.abs(Number(a.value) - from) - Math.abs(Number(b.value) - from))[0];
  }

  private firstThatWorks(variant: Variant, changes: readonly Move[]): Move | undefined {
    return changes.find(change => this.works(this.with(variant, change)));
  }

  /** The value nearest to the present one on a grid towards an end; the end may overshoot into another fault, so it is approached. */
  private nearest(variant: Variant, name: string, from: number, end: number, [low, high]: readonly [number, number]): Move | undefined {
    const step = stepOf(name);
    const side = end > from ? 1 : -1;
    const first =
      side > 0
        ? Math.max(Math.floor(from / step) + 1, Math.ceil(low / step - 1e-9))
        : Math.min(Math.ceil(from / step) - 1, Math.floor(high / step + 1e-9));
    const last = side > 0 ? Math.floor(end / step + 1e-9) : Math.ceil(end / step - 1e-9);
    const count = (last - first) * side;
    if (count < 0) return undefined;
    const at = (i: number): Move => ({ name, value: Math.round((first + side * i) * step * 1e6) / 1e6 });
    const ends = [...new Set([count / 8, count / 4, count / 2, count].map(Math.ceil))];
    const reached = ends.findIndex(i => this.passes(this.with(variant, at(i))));
    if (reached < 0) return undefined;
    let [fails, good] = [reached === 0 ? -1 : (ends[reached - 1] ?? -1), ends[reached] ?? count];
    while (good - fails > 1) {
      const middle = Math.floor((fails + good) / 2);
      if (this.passes(this.with(variant, at(middle)))) good = middle;
      else fails = middle;
    }
    return [good, good + 1]
      .filter(i => i <= count)
      .map(at)
      .find(change => this.works(this.with(variant, change)));
  }

  /** Two inputs: seat and board plane by the same amount; else some values of the first, and what the second needs then. */
  private together([one, other]: readonly [string, string]): readonly Move[] | undefined {
    if (one === 'seat' && other === 'board plane') return this.shifted(one, other);
    for (const change of this.stepsOf(one)) {
      const second = this.moved(this.with(this.variant, change), other);
      if (second !== undefined) return [change, second];
    }
    return undefined;
  }

  private stepsOf(name: string): readonly Move[] {
    if (name === 'length') return lengthsNear(this.variant);
    if (name === 'screw') return screwsNear(this.variant);
    const from = sizeOf(this.variant, name);
    if (from === undefined) return [];
    const [low, high] = range(this.variant, name, from);
    const step = stepOf(name);
    return [high, low].filter(end => Math.abs(end - from) >= step).map(end => ({ name, value: Math.round(end / step) * step }));
  }

  private shifted(one: string, other: string): readonly Move[] | undefined {
    const [first, second] = [sizeOf(this.variant, one), sizeOf(this.variant, other)];
    if (first === undefined || second === undefined) return undefined;
    const [low, high] = range(this.variant, one, first);
    for (const by of [0.1, -0.1, 0.2, -0.2, 0.3, -0.3, 0.5, -0.5, 0.75, -0.75, 1, -1]) {
      const to = Math.round((first + by) * 1000) / 1000;
      if (to < low || to > high) continue;
      const changes = [
        { name: one, value: to },
        { name: other, value: Math.round((second + by) * 1000) / 1000 },
      ];
      if (this.works(changes.reduce((variant, change) => this.with(variant, change), this.variant))) return changes;
    }
    return undefined;
  }
}

function lengthsNear(variant: Variant): readonly Move[] {
  const from = sizeOf(variant, 'length') ?? 0;
  const { size } = variant.value('screw');
  if (size.own !== undefined && size.own.lengths === undefined) return [];
  return [...standardLengthsMm(size)]
    .filter(length => length !== from)
    .sort((a, b) => Math.abs(a - from) - Math.abs(b - from))
    .slice(0, 8)
    .map(value => ({ name: 'length', value }));
}

/** The next smaller and the next larger screw of the family. */
function screwsNear(variant: Variant): readonly Move[] {
  const { size } = variant.value('screw');
  const sizes = familySizes(size);
  const at = sizes.indexOf(size.text);
  return [sizes[at - 1], sizes[at + 1]].flatMap(value => (value === undefined ? [] : [{ name: 'screw', value }]));
}

function inWords(variant: Variant, changes: readonly Move[]): string {
  const words = changes.map(({ name, value }) =>
    typeof value === 'string' ? `${name} ${value}` : `${name} ${withUnit(value, INPUTS.get(name)?.unit ?? '')}`,
  );
  const addsPlastic = changes.some(({ name, value }) => name === 'boss OD' && Number(value) > (sizeOf(variant, name) ?? Infinity));
  return `${words.join(' with ')}${addsPlastic ? ' (steel-safe)' : ''}`;
}

/** "hole depth 14.95 mm", "length 19 mm with hole depth 17 mm": at most three, or why there is none. */
export function remedy(variant: Variant, found: Finding, all: readonly Finding[], most = MAX_SAID): string {
  if (found.state === 'pass') return '–';
  if (found.refusal !== undefined && found.state === 'not checked') return 'correct the input that is named';
  if (found.rule.moves.length === 0 || (found.state === 'review' && !isBrokenBySize(found))) return 'no change of size makes it pass';
  const said = new Search(variant, found.rule, all).found().map(changes => inWords(variant, changes));
  if (said.length > 0) return said.slice(0, most).join('; or ');
  return `no change of ${found.rule.moves.map(move => (typeof move === 'string' ? move : move.join(' with '))).join(', ')} passes`;
}

/** The first remedy of the reason. */
export function firstRemedy(variant: Variant): string {
  const worst = variant.worst();
  return worst === undefined ? '–' : remedy(variant, worst, variant.findings(), 1);
}
