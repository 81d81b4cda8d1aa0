// Which inputs a remedy or a refusal is about: each begins with its name.
import { JOINT_INPUT_NAMES } from '../joint/inputs';
import { inputNamed } from '../joint/headings';
import type { Selection } from '../sheet/port';
import type { Words } from '../words/english';
import type { LocatedJoint } from './find-joint';

export interface InputMeant {
  readonly name: string;
  /** Where it stands; undefined where the joint is not given it. */
  readonly cell: Selection | undefined;
}

/** Longer names first: "hole depth" is another input than "hole". */
const LONGEST_FIRST = [...JOINT_INPUT_NAMES].sort((a, b) => b.length - a.length);

export function inputMeant(words: string, { cells }: Pick<LocatedJoint, 'cells'>): InputMeant | undefined {
  const name = LONGEST_FIRST.find(each => words.startsWith(`${each} `) || words.startsWith(`${each}:`));
  return name === undefined ? undefined : { name, cell: cells.get(name) };
}

/** Of a remedy, "length 19 mm with hole depth 17 mm; or relief 0.4 mm", each once; none in words that name no change. */
export function inputsMeant(remedy: string, joint: Pick<LocatedJoint, 'cells'>): readonly InputMeant[] {
  const changes = remedy.split(/; or | with /).map(change => inputMeant(change, joint));
  const meant = changes.filter(input => input !== undefined);
  return meant.length === changes.length ? meant.filter(({ name }, i) => meant.findIndex(other => other.name === name) === i) : [];
}

/** What to do where the input is not given; empty for one that stands in the formula itself. */
export const missingWords = (name: string, { form, rows: [names] }: Pick<LocatedJoint, 'form' | 'rows'>, W: Words['frame']): string =>
  names.some(each => inputNamed(each) === name) ? '' : W.noPlace[form](name);
