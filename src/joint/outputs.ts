// What the joint answers: its outputs in their order, each with its unit and meaning.
import { INPUTS } from './inputs';
import { type JointName, NODES } from './nodes';

/** Outputs that are about the other outputs and the rules. */
const VERDICTS = {
  'all computed': 'TRUE where every output that applies has a value',
  state: 'worst state of all rules',
  reason: 'first rule of that state, with value and limit',
} as const;

export type VerdictName = keyof typeof VERDICTS;

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
] as const satisfies readonly (JointName | VerdictName)[];

export type Output = (typeof NAMES)[number];
/** What the joint answers: the names of its outputs, in their order. */
export const OUTPUTS: readonly Output[] = NAMES;

export const isOutput = (name: string): name is Output => OUTPUTS.some(output => output === name);
export const isVerdict = (name: string): name is VerdictName => name in VERDICTS;
export const unitOf = (name: string): string => NODES.get(name)?.unit ?? INPUTS.get(name)?.unit ?? '';
export const meaningOf = (name: string): string =>
  isVerdict(name) ? VERDICTS[name] : (NODES.get(name)?.meaning ?? INPUTS.get(name)?.meaning ?? '');
