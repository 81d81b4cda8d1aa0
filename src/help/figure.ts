// What is drawn beside a topic or a function: dimensions of the demo's joint, for inserts of a guide's, or a sketch.
import type { Card, Topic } from '../core/card';
import { INSERT_JOINT } from '../demo/guide-hatch';
import { jointSheet } from '../demo/joint-sheet';
import { letterOf, section } from '../figure/section';
import type { FigureSpeech } from '../figure/speech';
import { Variant } from '../joint/variant';
import { INPUTS } from '../joint/inputs';
import { STUDY_CARDS } from '../joint/study/study.cards';
import { CARDS } from '../registry';
import { cornerFigure, patternFigure } from './plan-views';
import { jointNames, jointNamesAround } from './related';
import { hookFigure } from './sketch-hook';
import { type Figure, RESULT, SKETCHES } from './sketches';

interface Shown {
  readonly caption: Figure['caption'];
  readonly joint: Variant;
}

/** As its sheet has it. */
const DEMO = new Variant(
  new Map(
    jointSheet.cells.flatMap(({ at, value }) => {
      const beside = jointSheet.cells.find(cell => cell.at === `B${at.slice(1)}`);
      return at.startsWith('A') && INPUTS.has(String(value)) && beside?.role === 'input' ? [[String(value), beside.value] as const] : [];
    }),
  ),
);

const OF_DEMO: Shown = { caption: W => W.demo, joint: DEMO };
const WITH_INSERT: Shown = { caption: W => W.hatch, joint: new Variant(new Map(Object.entries(INSERT_JOINT))) };
const shownFor = (topic: Topic): Shown => (topic === 'Inserts and nuts' ? WITH_INSERT : OF_DEMO);

/** Topics that the section through a joint explains. */
const DIMENSIONS: Readonly<Partial<Record<Topic, readonly string[]>>> = {
  'Screws and standard data': ['head diameter', 'head height', 'screw length', 'point', 'hole'],
  'Holes and core pins': [
    'hole',
    'relief diameter',
    'pilot mouth',
    'hole draft',
    'pilot at tip',
    'pilot bottom',
    'hole depth',
    'floor under hole',
    'penetration max',
    'bottom clearance',
  ],
  Draft: [
    'recess mouth',
    'recess draft',
    'recess diameter',
    'boss OD',
    'outside draft',
    'boss OD root',
    'pilot mouth',
    'hole draft',
    'pilot bottom',
    'boss height',
  ],
  'Boss and wall': ['boss OD', 'outside draft', 'boss OD root', 'pilot mouth', 'boss wall root', 'boss height', 'wall'],
  'Head recess': ['recess mouth', 'recess draft', 'recess diameter', 'head diameter', 'head height', 'recess depth', 'subflush', 'seat'],
  'Grip, engagement, screw length': [
    'seat',
    'board',
    'screw length',
    'relief',
    'full thread, worst',
    'nominal',
    'point',
    'penetration max',
    'bottom clearance',
    'hole depth',
  ],
  'Strength (estimates)': ['head diameter', 'hole', 'seat', 'boss OD', 'full thread, worst'],
  'Board and supports': ['board', 'hole', 'head diameter', 'boss OD', 'boss height'],
  'Inserts and nuts': [
    'hole',
    'insert diameter',
    'boss OD',
    'boss wall root',
    'seat',
    'insert length',
    'full thread, worst',
    'screw length',
    'hole depth',
    'boss height',
    'wall',
  ],
  'The joint as one table': [
    'recess diameter',
    'head diameter',
    'hole',
    'boss OD',
    'pilot mouth',
    'boss wall root',
    'seat',
    'board',
    'full thread, worst',
    'screw length',
    'hole depth',
    'boss height',
    'wall',
  ],
};

/** A dimension that is drawn under another name than its quantity has in the joint. */
const DRAWN_AS: Readonly<Record<string, string>> = {
  engagement: 'nominal',
  'engagement min': 'full thread, worst',
  pilot: 'pilot mouth',
  'pilot hole': 'pilot mouth',
  'boss wall': 'boss wall root',
};
const drawnAs = (name: string): string => DRAWN_AS[name] ?? name;

const STUDIES: ReadonlySet<string> = new Set(STUDY_CARDS.map(({ id }) => id));

/** Fewer dimensions say little by themselves. */
const MIN_DIMENSIONS = 2;
const WIDTH_PX = 330;

const drawn = ({ caption, joint }: Shown, only: readonly string[], own: ReadonlySet<string>, speech: FigureSpeech): Figure => {
  const { svg, legend } = section(joint, { letters: true, widthPx: WIDTH_PX, only, speech });
  const shown = legend.filter(({ value }) => value !== undefined);
  return { caption, isJoint: true, svg, legend: shown.map(entry => ({ ...entry, isOwn: own.has(entry.name) || own.has(entry.of) })) };
};

/** The drawing of a function of its own, with the numbers of its example. */
function sketched({ id, params, result, example }: Card): Figure | undefined {
  const sketch = SKETCHES[id];
  if (sketch === undefined) return undefined;
  const legend = sketch.letters.map((of, i) => {
    const at = params.findIndex(({ name }) => name === of);
    const worth = of === RESULT && 'result' in example ? example.result : example.args[at];
    const isOwn = of === RESULT && result.shape === 'number';
    const [name, unit] = isOwn ? [result.name, result.unit] : [of.replaceAll('_', ' '), params[at]?.kind.unit ?? ''];
    return { letter: letterOf(i), name, of, value: Number(worth), unit, isOwn };
  });
  return { caption: W => W.exampleOf(id), isJoint: false, svg: sketch.svg, legend };
}

/** Topics that no joint explains, alone and with what one of their functions works out. */
const SKETCHED: Readonly<Partial<Record<Topic, (of: Card | undefined) => Figure | undefined>>> = {
  'Snap hooks (estimates)': of => hookFigure(of && 'name' in of.result ? of.result.name : undefined),
  'Pattern of holes': of => patternFigure(of?.id),
  'Ribs, lip, mould': of => sketched(of ?? (CARDS.get('SEAL.SQUEEZE') as Card)),
};

export function topicFigure(topic: Topic, speech: FigureSpeech): Figure | undefined {
  const names = DIMENSIONS[topic];
  return names === undefined ? SKETCHED[topic]?.(undefined) : drawn(shownFor(topic), names, new Set(), speech);
}

/** What the function works out and reads; where the joint says too little, all of the topic. */
export function functionFigure(card: Card, speech: FigureSpeech): Figure | undefined {
  // of many joints: no one of them explains it
  if (STUDIES.has(card.id)) return undefined;
  if (card.id === 'BOSS.CORNER') return cornerFigure();
  const sketch = sketched(card);
  if (sketch !== undefined) return sketch;
  const topic = DIMENSIONS[card.topic];
  if (topic === undefined) return SKETCHED[card.topic]?.(card);
  const own = new Set(jointNames(card).flatMap(name => [name, drawnAs(name)]));
  const shown = shownFor(card.topic);
  const around = drawn(shown, jointNamesAround(card).map(drawnAs), own, speech);
  return around.legend.length >= MIN_DIMENSIONS && around.legend.some(({ isOwn }) => isOwn) ? around : drawn(shown, topic, own, speech);
}
