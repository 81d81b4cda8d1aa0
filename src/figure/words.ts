// The words of figures in English. Another language is a table of the same type, among the words of the pages.
import type { State } from '../core/check/check';

/** Dimensions that have no name in the joint. */
type NamelessLabel = 'full thread, worst' | 'nominal' | 'required';

export interface FigureWords {
  readonly section: string;
  readonly head: (name: string) => string;
  readonly labels: Readonly<Record<NamelessLabel, string>>;
  /** The same where they stand alone. */
  readonly titles: Readonly<Record<NamelessLabel, string>>;
  readonly parts: Readonly<Record<'headHalf' | 'board' | 'threadHalf' | 'screw', string>>;
  readonly nothingDrawn: string;
  readonly drawn: (parts: string) => string;
  readonly state: (state: string) => string;
  readonly tooLittle: string;
  readonly noValue: string;
  readonly noValueOf: (names: string, why: string) => string;
  readonly boardHole: Readonly<Record<'broken' | 'as the clearance hole', string>>;
  readonly pull: string;
  readonly pullInches: string;
  readonly variants: string;
  readonly noVariant: string;
  readonly worst: string;
  readonly nominal: string;
  readonly required: string;
  /** One variant, as it is read out. */
  readonly variant: (name: string, worst: string, nominal: string, required: string, state: string) => string;
  readonly shares: string;
  readonly noLink: string;
  readonly link: (number: number) => string;
  readonly map: (x: string, y: string) => string;
  /** The same as a title: where it is too wide what follows its colon goes. */
  readonly mapTitle: (x: string, y: string) => string;
  readonly across: (axis: string, low: string, high: string) => string;
  readonly upwards: (axis: string, low: string, high: string) => string;
  readonly inTheWay: (limits: string) => string;
  readonly now: string;
  readonly moves: (output: string) => string;
  readonly noMove: string;
  /** States, as they are read out. */
  readonly states: Readonly<Record<State, string>>;
}

export const ENGLISH_WORDS: FigureWords = {
  section: 'Section through the joint',
  head: name => `${name} head`,
  labels: { 'full thread, worst': 'full thread, worst', nominal: 'nominal', required: 'required' },
  titles: { 'full thread, worst': 'full thread, worst', nominal: 'full thread, nominal', required: 'full thread, required' },
  parts: { headHalf: 'head half', board: 'board', threadHalf: 'thread half', screw: 'screw' },
  nothingDrawn: 'Nothing can be drawn yet.',
  drawn: parts => `Drawn to scale: ${parts}.`,
  state: state => `State: ${state}`,
  tooLittle: 'Too little is known to draw this joint.',
  noValue: 'no value',
  noValueOf: (names, why) => `no value: ${names} – ${why}`,
  boardHole: {
    broken: 'the board hole is not given: the board ends in a break line',
    'as the clearance hole': 'the board hole is not given: drawn as the clearance hole',
  },
  pull: 'pull; lengths in mm',
  pullInches: 'pull; lengths in mm (inch)',
  variants: 'Engagement of the variants',
  noVariant: 'No variant.',
  worst: 'full thread, worst',
  nominal: 'nominal',
  required: 'required, ratio ÷ d',
  variant: (name, worst, nominal, required, state) => `${name}: worst ${worst}, nominal ${nominal}, required ${required}, ${state}`,
  shares: 'Share of each link in the spread',
  noLink: 'No link.',
  link: number => `link ${number}`,
  map: (x, y) => `Map of ${x} and ${y}`,
  mapTitle: (x, y) => `${x} and ${y}: where the joint is good`,
  across: (axis, low, high) => `${axis} from ${low} to ${high} across`,
  upwards: (axis, low, high) => `${axis} from ${low} to ${high} upwards`,
  inTheWay: limits => `In the way: ${limits}.`,
  now: 'now',
  moves: output => `What moves ${output}`,
  noMove: 'No tolerance moves it.',
  states: { fail: 'fail', review: 'review', pass: 'pass', 'not checked': 'not checked' },
};
