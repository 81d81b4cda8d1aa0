// Between which values each input may move while nothing else does.
import { rounded } from '../../core/decimal';
import type { Cell, CellRange } from '../../core/kinds';
import { isBlank } from '../../core/read/cells';
import { wrongInput } from '../../core/refuse';
import { inputName, listOf, used } from '../headings';
import { INPUTS } from '../inputs';
import type { Judge } from '../judge';
import { oneVariant } from '../table';
import type { Variant } from '../variant';
import { FAILS, HOLDS, type Movable, movable, PASSES, sizeOf, Watch } from './moved';
import { closedEnd, stepsFrom } from './steps';

/** An end is known when what holds and what does not are as near as this, in the unit of the input. */
const NEAR = 5e-7;
/** What lies behind these places is rounding. */
const NEAT = 10;

/** Where a standing ends between a number that has it and one that has not. */
class Ending {
  private judge: Judge | undefined;
  /** Where the rule that stops it would have no room left, on a straight line. */
  private guess = NaN;

  constructor(
    private readonly watch: Watch,
    private readonly standing: number,
    private good: number,
    private bad: number,
  ) {}

  private stands(number: number): boolean {
    return this.watch.look(number) >= this.standing;
  }

  private narrow(number: number): void {
    const { good, bad } = this;
    if (!((number - good) * (number - bad) < 0)) return;
    if (this.stands(number)) this.good = number;
    else this.bad = number;
  }

  private aim(): void {
    const { watch, standing, good, bad } = this;
    this.guess = good;
    this.stands(bad);
    this.judge = watch.culprit;
    if (this.judge === undefined) return;
    const beyond = watch.roomOf(this.judge, standing);
    this.stands(good);
    const before = watch.roomOf(this.judge, standing);
    if (before >= 0 && beyond < 0) this.guess = good + ((bad - good) * before) / (before - beyond);
  }

  /** The last number that has the standing, and the rule that stops the next one. */
  found(): { readonly at: number; readonly rule: string } {
    for (this.aim(); Math.abs(this.bad - this.good) > NEAR; this.aim()) {
      const width = Math.abs(this.bad - this.good);
      const half = Math.sign(this.bad - this.good) * (NEAR / 2.5);
      this.narrow(this.guess - half);
      this.narrow(this.guess + half);
      if (Math.abs(this.bad - this.good) > width / 2) this.narrow((this.good + this.bad) / 2);
      if (Math.abs(this.bad - this.good) === width) break;
    }
    const at = [Number(rounded(this.guess, NEAT)), this.guess].find(number => this.stands(number)) ?? this.good;
    return { at, rule: this.judge?.rule.name ?? '' };
  }
}

const endBetween = (watch: Watch, inside: number, outside: number, standing: number): ReturnType<Ending['found']> =>
  new Ending(watch, standing, inside, outside).found();

/** What was looked at on one side, outwards, the present value first. */
interface LookedSide {
  readonly side: -1 | 1;
  readonly numbers: readonly number[];
  readonly standings: readonly number[];
  readonly closed: number | undefined;
}

function sideOf(watch: Watch, { now, limits }: Movable, size: number, standing: number, side: -1 | 1): LookedSide {
  const steps = stepsFrom(now, size, limits, side);
  const standings = steps.map(number => watch.look(number));
  return { side, numbers: [now, ...steps], standings: [standing, ...standings], closed: closedEnd(limits, side) };
}

interface WindowEnd {
  /** Undefined where nothing ends it. */
  readonly at: number | undefined;
  readonly rule: string;
  /** How many of the numbers on that side lie inside. */
  readonly inside: number;
}

/** How far a stretch of that standing reaches from a number of this side that has it. */
function endOf(watch: Watch, { numbers, standings, closed }: LookedSide, from: number, standing: number): WindowEnd {
  const outside = standings.findIndex((one, i) => i > from && one < standing);
  if (outside < 0) {
    const last = numbers[numbers.length - 1];
    return { at: last === closed ? closed : undefined, rule: '–', inside: numbers.length };
  }
  const end = endBetween(watch, numbers[outside - 1] as number, numbers[outside] as number, standing);
  return { ...end, inside: outside };
}

/** Where it holds again beyond that end. */
function again(watch: Watch, { side, numbers, standings }: LookedSide, from: number): string {
  const next = standings.findIndex((one, i) => i >= from && one >= HOLDS);
  if (next < 1) return '';
  const { at } = endBetween(watch, numbers[next] as number, numbers[next - 1] as number, HOLDS);
  return `; holds again ${side < 0 ? 'up to' : 'from'} ${rounded(at)}`;
}

const shown = (value: number | undefined): Cell => value ?? '–';

/** The stretch that passes inside the window: that of the present value, or else the nearest. */
function passing(watch: Watch, sides: readonly [LookedSide, LookedSide], ends: readonly [WindowEnd, WindowEnd]): readonly [Cell, Cell] {
  const [below, above] = sides;
  if (below.standings[0] === PASSES) return [shown(endOf(watch, below, 0, PASSES).at), shown(endOf(watch, above, 0, PASSES).at)];
  const found = sides.map(({ standings }, i) => standings.findIndex((one, k) => one === PASSES && k < (ends[i]?.inside ?? 0)));
  const distance = (i: 0 | 1): number => {
    const [{ numbers }, first] = [sides[i], found[i] ?? -1];
    return first < 0 ? Infinity : Math.abs((numbers[first] as number) - (numbers[0] as number));
  };
  const nearer = distance(0) <= distance(1) ? 0 : 1;
  if (distance(nearer) === Infinity) return ['–', '–'];
  const [side, first] = [sides[nearer], found[nearer] as number];
  const near = endBetween(watch, side.numbers[first] as number, side.numbers[first - 1] as number, PASSES).at;
  const far = endOf(watch, side, first, PASSES).at;
  return nearer === 0 ? [shown(far), near] : [near, shown(far)];
}

function windowRow(variant: Variant, moving: Movable, watch: Watch): Cell[] {
  const { name, unit, now } = moving;
  const start = [name, unit === '' ? '–' : unit, now];
  if (watch.isHopeless) return [...start, '–', '–', `fails now: ${watch.culprit?.rule.name ?? ''}`, '–', '–', '–'];
  const standing = watch.look(now);
  const nowFails = standing === FAILS ? `fails now: ${watch.culprit?.rule.name ?? ''}` : undefined;
  const size = sizeOf(variant, moving);
  const below = sideOf(watch, moving, size, standing, -1);
  const above = sideOf(watch, moving, size, standing, 1);
  if (nowFails !== undefined)
    return [...start, '–', '–', `${nowFails}${again(watch, below, 1)}`, `${nowFails}${again(watch, above, 1)}`, '–', '–'];
  const [low, high] = [endOf(watch, below, 0, HOLDS), endOf(watch, above, 0, HOLDS)];
  const rules = [`${low.rule}${again(watch, below, low.inside)}`, `${high.rule}${again(watch, above, high.inside)}`];
  return [...start, shown(low.at), shown(high.at), ...rules, ...passing(watch, [below, above], [low, high])];
}

/** A row an input; names left out: every number of the joint that some rule can feel. */
export function windowRows(variant: Variant, names: readonly string[] | undefined): Cell[][] {
  return (names ?? [...INPUTS.keys()]).flatMap(name => {
    // what is moved for one input stays as it is for the next
    const own = variant.copy();
    const moving = movable(own, name);
    const watch = moving && new Watch(own, moving);
    if (moving !== undefined && watch?.isFelt === true) return [windowRow(own, moving, watch)];
    if (names === undefined) return [];
    if (moving !== undefined) return [[name, moving.unit === '' ? '–' : moving.unit, moving.now, '–', '–', '–', '–', '–', '–']];
    throw wrongInput(`names: ${name} has no number in this joint that can be moved`, 'names');
  });
}

/** The names of a range, or undefined where there are none. */
function namesOf(range: CellRange | undefined): readonly string[] | undefined {
  if (range === undefined) return undefined;
  const list = listOf(range, 'names');
  const names = list.slice(0, used(list, isBlank)).map((raw, i) => {
    if (isBlank(raw)) throw wrongInput(`names is blank at ${i + 1}`, 'names');
    return inputName(raw, 'names');
  });
  return names.length === 0 ? undefined : names;
}

/** What JOINT.WINDOW gives below its header. */
export const jointWindow = (inputs: CellRange, names: CellRange | undefined, base: CellRange | undefined): Cell[][] =>
  windowRows(oneVariant(inputs, base), namesOf(names));
