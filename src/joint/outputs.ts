// What the joint answers: its outputs in their order, each with its unit and meaning.
import { INPUTS } from './inputs';
import { type JointName, NODES } from './nodes';

/** Outputs that are about the other outputs and the rules. */
const VERDICTS = {
  'all computed': 'TRUE where every output that applies has a value',
  state: 'worst state of all rules',
  reason: 'first broken rule of that state, with what is needed and what there is',
  reasons: 'every broken rule, worst first, at most five',
  fails: 'number of rules that fail',
  reviews: 'number of rules to review',
  margin: 'least distance to a fail limit, as a share of the limit, or of d where that is 0; negative where one fails',
  'margin rule': 'rule that is nearest to its fail limit',
  remedy: 'first change that mends the reason, tried on the whole joint',
} as const;

export type VerdictName = keyof typeof VERDICTS;

const NAMES = [
  'feature wall',
  'recess diameter',
  'recess mouth',
  'recess depth',
  'subflush',
  'subflush min',
  'post OD',
  'post OD root',
  'post wall root',
  'hole',
  'bearing ring',
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
  'thread share min',
  'boss OD',
  'boss OD root',
  'boss wall',
  'boss wall root',
  'root circle',
  'sink ratio',
  'head sink ratio',
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
  'load margin',
  'strip torque',
  'clamp force',
  'bearing pressure',
  'boss mass',
  'all computed',
  'state',
  'reason',
  'reasons',
  'fails',
  'reviews',
  'margin',
  'margin rule',
  'remedy',
] as const satisfies readonly (JointName | VerdictName)[];

export type Output = (typeof NAMES)[number];
/** What the joint answers: the names of its outputs, in their order. */
export const OUTPUTS: readonly Output[] = NAMES;

export const isOutput = (name: string): name is Output => OUTPUTS.some(output => output === name);
export const isVerdict = (name: string): name is VerdictName => name in VERDICTS;
export const unitOf = (name: string): string => NODES.get(name)?.unit ?? INPUTS.get(name)?.unit ?? '';
export const meaningOf = (name: string): string =>
  isVerdict(name) ? VERDICTS[name] : (NODES.get(name)?.meaning ?? INPUTS.get(name)?.meaning ?? '');
