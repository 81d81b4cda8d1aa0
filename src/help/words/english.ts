// The words of the help pages' own frame, in English. German is a table of the same type.
import type { Topic } from '../../core/card';
import { FUNCTIONS } from '../../words/functions';
import { CAUTIONS } from '../../words/cautions';
import { TOPIC_WORDS } from '../topic-words';

const about = Object.fromEntries(Object.entries(TOPIC_WORDS).map(([topic, words]) => [topic, words.about])) as Record<Topic, string>;

export const ENGLISH = {
  /** Named in its own language. */
  language: 'English',
  titled: (title: string) => `${title} – Bosswright help`,
  help: 'Bosswright help',
  whereYouAre: 'Where you are',
  inDecimals: 'Formulas with decimal comma',
  aid: 'An aid to sizing, for trained people: make and test a prototype.',
  allCautions: 'All cautions',
  topics: FUNCTIONS.topics,
  about,

  heading: 'Functions',
  lead:
    'Cell functions for the screw joints of two-part moulded housings. Every function has a page with its formula, its arguments, an ' +
    'example, its sources and what it was checked against.',
  find: 'Find by name, trade word or question',
  such: 'standoff, core pin, which pilot hole …',
  topicsLabel: 'Topics',
  readOn: 'Read on',
  library: 'The library, name by name',
  before: 'Before you rely on a number',
  cautions: CAUTIONS,

  formula: 'Formula',
  arguments: 'Arguments and symbols',
  noArgument: 'This function has no arguments.',
  oneOf: 'One of',
  also: 'Also',
  none: 'Also "none".',
  and: 'and',
  blank: {
    refused: 'must be given',
    zero: 'blank: 0',
    explicit: 'write zero with its unit',
    absent: 'may be left out',
    by: (value: string) => `blank: ${value}`,
    as: (argument: string) => `blank: as ${argument}`,
    from: (argument: string) => `blank: from ${argument}`,
  },
  screw: {
    sizes: 'Sizes of the screw, mm, from the thread table of its standard:',
    d: 'nominal diameter',
    d1: 'major diameter, max',
    d2: 'root diameter, max',
    P: 'pitch',
    own: 'An own screw is a text with its numbers, largest/smallest:',
    ownRest: 'The last word is forming, cutting or machine; a countersunk head has a head angle. What is left out has no value.',
  },
  nut: { size: 'Size of the nut, mm, from ISO 4032:', s: 'width across flats, max' },
  example: 'Example',
  gives: 'gives',
  result: 'Result',
  firstOf: (rows: number, columns: number) => `The first of ${rows} rows and ${columns} columns.`,
  readIn: 'Read in',
  figures: {
    demo: 'The joint of the demo',
    hatch: 'The joint of the guide hatch',
    exampleOf: (id: string) => `The example of ${id}`,
    corner:
      'A boss in a rounded corner, to scale: thick lines at the floor, thin ones at the free end, broken where the radius is kept constant',
    hook: 'A hook of our own, 5 mm wide, modulus 2300 MPa, friction 0.3; bent aside in broken lines',
    pattern: 'A board on a round hole and a slot, and two more screws; not to scale',
  },
  inBold: 'In bold: what this function works out.',
  mistakes: 'Common mistakes',
  more: (topic: string) => `More on ${topic}`,
  sources: 'Sources',
  kind: 'Kind',
  kinds: FUNCTIONS.kinds,
  plain: {
    heading: 'As a supplier gets it',
    remark: 'In the hand-over copy of a sheet:',
    words: 'The hand-over copy of a sheet with this example: plain formulas that every spreadsheet program reads.',
    formulas: 'Plain formulas',
    columns: ['cell', 'what', 'formula', 'value'],
  },
  related: {
    heading: 'Related',
    worksOut: 'In the joint it works out',
    isPartOf: 'In the joint it is part of',
    rule: (name: string) => `Rule “${name}”:`,
    uses: 'Its formula uses',
    usedBy: 'It is used in the formula of',
    takes: 'In the joint it takes from',
    gives: 'In the joint it gives to',
    sameTopic: 'Of the same topic',
  },
  evidence: {
    heading: 'Evidence',
    none: 'No check from outside is known: the values were worked out by hand or by arithmetic, or follow from an identity.',
  },
  joint: {
    inputs: 'Inputs',
    inputHeads: ['name', 'unit', 'default', 'meaning'],
    outputs: 'Outputs',
    outputHeads: ['name', 'unit', 'meaning'],
    rules: 'Rules, and what mends them',
    ruleHeads: ['rule', 'where it is broken', 'judges', 'source', 'remedies change'],
    with: ' with ',
  },
};

export type HelpWords = typeof ENGLISH;
