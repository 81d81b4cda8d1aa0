// What a function has to do with others: derived from the plain forms and from the graph of the joint.
import type { Card } from '../core/card';
import { type Arg, boundsOf, type Made, namesIn, type Rule } from '../joint/graph';
import * as Sizes from '../joint/formulas/sizes';
import { INPUTS } from '../joint/inputs';
import { NODES } from '../joint/nodes';
import { RULES } from '../joint/rules';
import { calledBy, calledIn, formOfNode } from '../plain/forms';
import { CARDS } from '../registry';

/** A quantity of the joint with what makes it. */
type JointQuantity = Made & { readonly name: string };

const MADE: readonly JointQuantity[] = [
  ...[...NODES].map(([name, node]) => ({ ...node, name })),
  ...[...INPUTS].flatMap(([name, { fallback }]): JointQuantity[] =>
    fallback !== undefined && 'by' in fallback ? [{ name, ...fallback }] : [],
  ),
];

const cardsOf = (made: Made): Card[] => [...CARDS.values()].filter(({ formula }) => formula === made.formula);
const names = (args: readonly Arg[]): string[] => args.flatMap(namesIn);

/** Names in the joint that a function works out. */
export const jointNames = (card: Card): string[] => MADE.filter(({ formula }) => formula === card.formula).map(({ name }) => name);

/** Names in the joint that a function works out or reads. */
export const jointNamesAround = (card: Card): string[] =>
  MADE.filter(({ formula }) => formula === card.formula).flatMap(({ name, args }) => [name, ...names(args)]);

/** Names in the joint whose own formula calls that of a function. */
export const jointNamesWith = (card: Card): string[] => [...NODES.keys()].filter(name => calledIn(formOfNode(name)).includes(card.id));

/** Rules that judge what a function works out, itself or as a part of what they judge. */
export function rulesOf(card: Card): readonly Rule[] {
  const mine = new Set([...jointNames(card), ...jointNamesWith(card)]);
  return RULES.filter(({ value, fail, review }) =>
    [value, ...[...boundsOf(fail), ...boundsOf(review)].flatMap(({ limit, of = value }) => [limit, of]), ...names(partsOf(value))].some(
      name => mine.has(String(name)),
    ),
  );
}

/** What a size is made of that only the joint has: no function says the rest. */
function partsOf(name: string): readonly Arg[] {
  const node = NODES.get(name);
  return node === undefined || cardsOf(node).length > 0 ? [] : node.args;
}

/** A quantity that is another one as it stands: of several the one that applies. */
const asItStands = ({ formula }: Made): boolean => formula === Sizes.chosenMm || formula === Sizes.sameMm;

type Kinship = 'uses' | 'usedBy' | 'takes' | 'gives' | 'sameTopic';

export interface Related {
  readonly how: Kinship;
  readonly ids: readonly string[];
}

export function related(card: Card): readonly Related[] {
  const mine = new Set(jointNames(card));
  const read = new Set(jointNamesAround(card).filter(name => !mine.has(name)));
  const passed = MADE.filter(asItStands);
  const handedOn = new Set(passed.filter(({ args }) => names(args).some(name => mine.has(name))).map(({ name }) => name));
  const readBehind = new Set(passed.filter(({ name }) => read.has(name)).flatMap(({ args }) => names(args)));
  const takes = MADE.filter(({ name }) => read.has(name) || readBehind.has(name)).flatMap(cardsOf);
  const gives = MADE.filter(({ args }) => names(args).some(name => mine.has(name) || handedOn.has(name))).flatMap(cardsOf);
  const calls = calledBy(card.id);
  const users = [...CARDS.keys()].filter(id => calledBy(id).includes(card.id));
  const list = (how: Kinship, ids: readonly string[]): Related => ({ how, ids: [...new Set(ids)].filter(id => id !== card.id) });
  return [
    list('uses', calls),
    list('usedBy', users),
    list(
      'takes',
      takes.map(({ id }) => id),
    ),
    list(
      'gives',
      gives.map(({ id }) => id),
    ),
    list(
      'sameTopic',
      [...CARDS.values()].filter(({ topic }) => topic === card.topic).map(({ id }) => id),
    ),
  ].filter(({ ids }) => ids.length > 0);
}
