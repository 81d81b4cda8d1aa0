// Between which values each input may move while nothing else does.
import { rounded } from '../../core/decimal';
import type { Cell, CellRange } from '../../core/kinds';
import { isBlank } from '../../core/read/cells';
import { Refused, wrongInput } from '../../core/refuse';
import { standardLengthsMm } from '../../core/screw/length';
import { inputName, listOf, used } from '../headings';
import { INPUTS } from '../inputs';
import { oneVariant } from '../table';
import type { Variant } from '../variant';
import { FAILS, HOLDS, type StudyLook, type Movable, movable, PASSES, sizesOf, Watch } from './moved';
import { closedEnd } from './steps';
import { roomAt, stretches } from './stretches';

/** What lies behind these places is rounding. */
const NEAT = 10;

type WindowSide = -1 | 1;

interface WindowEnd {
  /** Undefined where nothing ends it. */
  readonly at: number | undefined;
  readonly rule: string;
  /** The place of the first look that lies outside. */
  readonly outside: number;
}

/** The last number that has the standing, between one that has it and one that has not. */
function endBetween(watch: Watch, good: StudyLook, bad: StudyLook, standing: number): number {
  const [here, there] = [roomAt(good, bad.rule, standing), roomAt(bad, bad.rule, standing)];
  const guess = here >= 0 && there < 0 ? good.at + ((bad.at - good.at) * here) / (here - there) : good.at;
  return [Number(rounded(guess, NEAT)), guess].find(number => watch.look(number).standing >= standing) ?? good.at;
}

/** How far a stretch of that standing reaches to one side from a look that has it. */
function endOf(
  watch: Watch,
  { limits }: Movable,
  looks: readonly StudyLook[],
  from: number,
  side: WindowSide,
  standing: number,
): WindowEnd {
  let outside = from + side;
  while ((looks[outside]?.standing ?? FAILS) >= standing) outside += side;
  const [good, bad] = [looks[outside - side] as StudyLook, looks[outside]];
  if (bad !== undefined) return { at: endBetween(watch, good, bad, standing), rule: watch.nameOf(bad), outside };
  const closed = closedEnd(limits, side);
  return { at: good.at === closed ? closed : undefined, rule: '–', outside };
}

/** Where it holds again, from this look on. */
function again(watch: Watch, looks: readonly StudyLook[], from: number, side: WindowSide): string {
  let next = from;
  while (looks[next]?.standing === FAILS) next += side;
  const [good, bad] = [looks[next], looks[next - side]];
  if (good === undefined || bad === undefined) return '';
  return `; holds again ${side < 0 ? 'up to' : 'from'} ${rounded(endBetween(watch, good, bad, HOLDS), 6)}`;
}

const shown = (value: number | undefined): Cell => value ?? '–';

/** The stretch that passes inside a window: that of the present value, or else the nearest. */
function passing(watch: Watch, moving: Movable, looks: readonly StudyLook[]): readonly [Cell, Cell] {
  const distance = (look: StudyLook): number => (look.standing === PASSES ? Math.abs(look.at - moving.now) : Infinity);
  const nearest = looks.reduce((best, look, i) => (distance(look) < distance(looks[best] as StudyLook) ? i : best), 0);
  if (looks[nearest]?.standing !== PASSES) return ['–', '–'];
  const ends = ([-1, 1] as const).map(side => shown(endOf(watch, moving, looks, nearest, side, PASSES).at));
  return ends as [Cell, Cell];
}

/** The tables know other lengths between these of some screws only. */
function standardLengths(variant: Variant): readonly number[] {
  try {
    return standardLengthsMm(variant.value('screw').size);
  } catch (fault) {
    if (fault instanceof Refused) return [];
    throw fault;
  }
}

function windowRow(variant: Variant, moving: Movable, watch: Watch): Cell[] {
  const { name, unit, now } = moving;
  const start = [name, unit === '' ? '–' : unit, now];
  if (watch.hopeless !== undefined) return [...start, '–', '–', `fails now: ${watch.hopeless.rule.name}`, '–', '–', '–'];
  const looks = stretches(watch, moving, sizesOf(variant, moving), name === 'length' ? standardLengths(variant) : []);
  const present = looks.findIndex(({ at }) => at === now);
  if (looks[present]?.standing === FAILS) {
    const fails = `fails now: ${watch.nameOf(looks[present])}`;
    const [below, above] = ([-1, 1] as const).map(side => `${fails}${again(watch, looks, present, side)}`) as [string, string];
    return [...start, '–', '–', below, above, '–', '–'];
  }
  const [low, high] = ([-1, 1] as const).map(side => endOf(watch, moving, looks, present, side, HOLDS)) as [WindowEnd, WindowEnd];
  const rules = [`${low.rule}${again(watch, looks, low.outside, -1)}`, `${high.rule}${again(watch, looks, high.outside, 1)}`];
  const inside = looks.slice(Math.max(0, low.outside), high.outside + 1);
  return [...start, shown(low.at), shown(high.at), ...rules, ...passing(watch, moving, inside)];
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
