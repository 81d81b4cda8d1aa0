// The rules, in the order in which they are reported.
import { NoLengthPasses } from '../core/engagement/screw-length';
import type { NamesOf, Rule } from './graph';
import type { InputName } from './inputs';
import type { Joint } from './nodes';

const PRACTICE = 'common practice';
const GEOMETRY = 'plane geometry';

const LIST = [
  {
    name: 'head fits the recess',
    value: 'recess diameter',
    fail: { side: 'below', limit: 'head diameter' },
    when: ['has recess'],
    basis: 'recess diameter against head diameter, max',
    source: GEOMETRY,
    moves: ['allowance'],
  },
  {
    name: 'head hidden',
    value: 'subflush',
    fail: { side: 'below', limit: 0 },
    look: { side: 'below', limit: 0.2 },
    when: ['has recess'],
    basis: 'recess depth − head height, max',
    source: PRACTICE,
    moves: ['board plane', 'seat'],
  },
  {
    name: 'seat under the cone',
    value: 'seat under the cone',
    fail: { side: 'below', limit: 1 },
    look: { side: 'at least', limit: 1 },
    when: ['is countersunk'],
    basis: 'seat − countersink depth; a cone wedges the plastic open',
    source: PRACTICE,
    moves: ['seat'],
  },
  {
    name: 'screw passes the hole',
    value: 'hole',
    fail: { side: 'at most', limit: 'major max' },
    basis: 'clearance hole against screw major diameter, max',
    source: GEOMETRY,
    moves: ['hole'],
  },
  {
    name: 'a standard length exists',
    value: 'standard length',
    fail: { side: 'below', limit: 1 },
    failsAs: NoLengthPasses,
    words: 'the length is not one of SCREW.LENGTHS',
    basis: 'screw length against the list of standard lengths',
    source: 'ISO 888, ISO 7049, ASME B18.6.3',
    moves: ['length'],
  },
  {
    name: 'thread holds at the mouth',
    boss: true,
    value: 'pilot mouth',
    fail: { side: 'at least', limit: 'major min' },
    basis: 'pilot at the mouth against screw major diameter, min',
    source: GEOMETRY,
    moves: ['pilot', 'hole draft'],
  },
  {
    name: 'pilot not too tight at the tip',
    boss: true,
    value: 'tightness',
    fail: { side: 'below', limit: 0.97 },
    look: { side: 'below', limit: 1 },
    basis: 'pilot at the deepest reach ÷ root diameter, max',
    source: PRACTICE,
    moves: ['pilot', 'hole draft'],
  },
  {
    name: 'engagement',
    value: 'engagement ratio',
    fail: { side: 'below', limit: 'ratio' },
    basis: 'worst-case full thread ÷ d',
    source: PRACTICE,
    moves: ['length', 'seat', 'relief'],
  },
  {
    name: 'screw does not bottom',
    value: 'hole depth needed',
    fail: { side: 'above', limit: 'hole depth' },
    basis: 'deepest reach and bottom gap against hole depth',
    source: GEOMETRY,
    moves: ['length', 'hole depth'],
  },
  {
    name: 'board free on the sleeve',
    value: 'board play',
    fail: { side: 'below', limit: 0 },
    when: ['has sleeve', 'has board hole'],
    basis: 'board hole − sleeve, per side',
    source: GEOMETRY,
    moves: ['board hole'],
  },
  {
    name: 'board held by the boss',
    boss: true,
    value: 'board hold',
    fail: { side: 'below', limit: 0.5 },
    when: ['has board hole'],
    basis: 'ring of the boss on the board at its worst position',
    source: PRACTICE,
    moves: ['boss OD', 'board hole'],
  },
  {
    name: 'landing ring',
    boss: true,
    value: 'landing ring',
    fail: { side: 'below', limit: 0.5 },
    look: { side: 'below', limit: 0.8 },
    basis: 'ring between boss or sleeve outside and hole or relief',
    source: PRACTICE,
    moves: ['boss OD', 'relief diameter'],
  },
  {
    name: 'sink',
    boss: true,
    value: 'sink ratio',
    fail: { side: 'above', limit: 'sink limit' },
    softWhen: 'is hidden',
    basis: 'boss wall at the root ÷ housing wall',
    source: PRACTICE,
    moves: ['wall', 'boss OD'],
  },
  {
    name: 'slenderness',
    boss: true,
    value: 'slenderness',
    fail: { side: 'above', limit: 5 },
    look: { side: 'above', limit: 'slender limit' },
    basis: 'boss height ÷ outside diameter',
    source: PRACTICE,
    moves: ['boss height', 'boss OD'],
  },
  {
    name: 'core pin',
    boss: true,
    value: 'pin ratio',
    look: { side: 'above', limit: 'pin limit' },
    basis: 'hole depth ÷ pilot',
    source: PRACTICE,
    moves: ['hole depth', 'pilot'],
  },
  {
    name: 'planned gap',
    value: 'gap',
    look: { side: 'above', limit: 0 },
    basis: 'gap between boss and what it lands on: the boss hangs in tension',
    source: PRACTICE,
    moves: ['gap'],
  },
] as const satisfies readonly Rule<NamesOf<Joint, number>, NamesOf<Joint, boolean>, InputName>[];

export type RuleName = (typeof LIST)[number]['name'];
/** The names that a rule judges. */
export type Judged = (typeof LIST)[number]['value'];
export const RULES: readonly Rule[] = LIST;
