// One variant in full: every output with its working, its state and where it comes from.
import { CORE_WORDS } from '../core/words';
import type { Cell, CellRange } from '../core/kinds';
import { Refused, wrongInput } from '../core/refuse';
import { formOfDefault, formOfNode } from '../plain/forms';
import { digits } from '../plain/digits';
import { known, print } from '../plain/print';
import type { Form } from '../plain/tree';
import { cardOf } from './base-functions';
import { type Formula, type Made, namesIn } from './graph';
import * as Sizes from './formulas/sizes';
import { INPUTS } from './inputs';
import { NODES } from './nodes';
import { isVerdict, type Output, OUTPUTS, unitOf } from './outputs';
import type { Judged } from './rules';
import { baseOf, variantsOf } from './table';
import type { Variant } from './variant';
import { verdict } from './verdict';

/** A finding is shown with an output; where the judged node is none, with the one it belongs to. */
const SHOWN_AT: Readonly<Record<string, string>> = {
  tightness: 'pilot at tip',
  length: 'screw length',
  gap: 'grip',
  'seat under the cone': 'grip',
  'seat min': 'seat shear',
  'driver room': 'recess diameter',
  'hole min': 'hole',
  'board hole min': 'board play',
  'sleeve over the board': 'grip',
  'major max': 'screw length',
  'wall under the groove': 'root circle',
  'strip over drive': 'strip torque',
  'set torque room': 'clamp force',
  'mould steel': 'boss OD root',
  'insert landing': 'landing ring',
} satisfies Record<Exclude<Judged, Output>, Output>;

/** Outputs that repeat an input under a name of their own. */
const INPUT_OF: Readonly<Record<string, string>> = { 'screw length': 'length', 'pilot hole': 'pilot' };

function working(variant: Variant, form: Form | undefined, { args }: Made): string {
  if (form === undefined) return '–';
  return print(
    form,
    args.map(arg => known(variant.arg(arg))),
  ).text;
}

const CHOOSING: readonly Formula[] = [Sizes.chosenMm, Sizes.chosenN];

/** What a node that chooses between two takes. */
function taken(variant: Variant, name: string): string {
  const node = NODES.get(name);
  if (node === undefined || !CHOOSING.includes(node.formula)) return name;
  const [condition, first, other] = node.args;
  const arg = condition !== undefined && variant.arg(condition) === true ? first : other;
  return (arg === undefined ? undefined : [...namesIn(arg)].pop()) ?? name;
}

/** Where a value comes from, and what made it where it is worked out. */
function originOf(variant: Variant, name: string): { readonly source: string; readonly made?: Made } {
  const input = INPUTS.get(INPUT_OF[name] ?? name);
  if (input !== undefined && variant.isGiven(INPUT_OF[name] ?? name)) return { source: 'given' };
  const made = input?.fallback ?? NODES.get(name);
  if (made === undefined || 'raw' in made) return { source: 'default' };
  const card = cardOf(made.formula);
  const words = card === undefined ? undefined : CORE_WORDS[card.id];
  const source =
    words === undefined
      ? input === undefined
        ? 'plane geometry'
        : `default: ${input.defaultWords}`
      : [words.kind, ...words.sources.map(({ title }) => title).filter(title => title !== words.kind)].join(': ');
  return { source, made };
}

export const sourceOf = (variant: Variant, name: string): string => originOf(variant, taken(variant, name)).source;

function madeBy(variant: Variant, name: string): { readonly working: string; readonly source: string } {
  const { source, made } = originOf(variant, name);
  if (made === undefined) return { working: source === 'given' ? source : '–', source };
  const input = INPUT_OF[name] ?? name;
  return { working: working(variant, INPUTS.has(input) ? formOfDefault(input) : formOfNode(name), made), source };
}

function cardRow(variant: Variant, name: Output, states: ReadonlyMap<string, string>): Cell[] {
  const unit = unitOf(name) === '' ? '–' : unitOf(name);
  if (isVerdict(name)) return [name, verdict(variant, name), '–', '–', '–', '–'];
  const state = states.get(name) ?? '–';
  try {
    const value = variant.value(name);
    const { working: text, source } = madeBy(variant, taken(variant, name));
    return [
      name,
      value,
      unit,
      typeof value !== 'number' ? '–' : text === '–' || text === 'given' ? text : `${text} = ${digits(value)}`,
      state,
      source,
    ];
  } catch (fault) {
    if (!(fault instanceof Refused)) throw fault;
    return [name, `no value: ${fault.message}`, unit, '–', state, '–'];
  }
}

export function jointCard(inputs: CellRange, variantNumber: number, base: CellRange | undefined): Cell[][] {
  const variants = variantsOf(inputs, baseOf(base));
  const variant = variants[variantNumber - 1];
  if (variant === undefined) throw wrongInput(`variant is ${variantNumber}; inputs has ${variants.length}`, 'variant');
  const states = new Map([...variant.findings()].reverse().map(({ rule, state }) => [SHOWN_AT[rule.value] ?? rule.value, state]));
  return OUTPUTS.map(name => cardRow(variant, name, states));
}
