// German words as they are typed: any ending, umlauts as ä or ae.

/** Lower case, and one letter for each way to write an umlaut. */
export const foldGerman = (text: string): string =>
  text
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replaceAll('ß', 'ss')
    .replace(/([aou])e/g, '$1');

/** A shorter word would lose what it means with its ending. */
const SHORTEST_STEM = 4;

/** The word without the ending of a case or a plural: Kernlöcher is found as Kernloch. */
export function stemGerman(word: string): string {
  const folded = foldGerman(word);
  const stem = folded.replace(/(ern|em|en|er|es|e|n|s)$/, '');
  return stem.length < SHORTEST_STEM ? folded : stem;
}

/** Trade words that stand in no German sentence of the functions that they lead to. */
const SYNONYMS: Readonly<Record<string, readonly string[]>> = {
  schraubdom: ['BOSS.OD', 'BOSS.OD.RULE', 'BOSS.WALL', 'BOSS.ENDS'],
  einschraubdom: ['BOSS.OD', 'BOSS.OD.RULE', 'BOSS.WALL', 'BOSS.ENDS'],
  befestigungsdom: ['BOSS.OD', 'BOSS.OD.RULE', 'BOSS.WALL', 'BOSS.ENDS'],
  abstandshalter: ['BOSS.OD', 'BOSS.WALL', 'BOARD.SLEEVE'],
  distanzhülse: ['BOARD.SLEEVE', 'BOARD.CLAMP'],
  kernbohrung: ['HOLE.PILOT', 'HOLE.THREAD.SHARE'],
  vorbohrung: ['HOLE.PILOT', 'HOLE.THREAD.SHARE'],
  durchgangsbohrung: ['HOLE.CLEARANCE', 'HOLE.FLOATING', 'HOLE.FIXED'],
  freisenkung: ['HOLE.RELIEF'],
  sackloch: ['HOLE.DEPTH', 'HOLE.FLOOR', 'SCREW.BOTTOM'],
  einfallstelle: ['BOSS.SINK', 'BOSS.CIRCLE', 'BOSS.CONFLICT', 'JUNCTION.RATIO'],
  masseanhäufung: ['BOSS.CIRCLE', 'JUNCTION.CIRCLE', 'JUNCTION.RATIO'],
  ausformschräge: ['DRAFT.OFFSET', 'DRAFT.ANGLE', 'DRAFT.SIZE', 'DRAFT.TEXTURE'],
  auszugsschräge: ['DRAFT.OFFSET', 'DRAFT.ANGLE', 'DRAFT.SIZE', 'DRAFT.TEXTURE'],
  kopfauflage: ['RECESS.SEAT', 'RECESS.DEPTH', 'BEARING', 'PULLOUT.SEAT'],
  ansenkung: ['RECESS.DIAMETER', 'RECESS.DEPTH', 'RECESS.CONE'],
  trennebene: ['LIP.SKIN', 'LIP.FIT', 'RIM.GAP'],
  platine: ['BOARD.GAP', 'BOARD.CLAMP', 'BOARD.HOLD', 'BOARD.SLEEVE'],
  abmaß: ['SCREW.LENGTH.TOL', 'LIMITS', 'TOL.GENERAL'],
  gewindebuchse: ['INSERT.BOSS.OD', 'INSERT.HOLE.DEPTH', 'INSERT.PULLOUT'],
  einpressmutter: ['INSERT.BOSS.OD', 'INSERT.HOLE.DEPTH', 'INSERT.PULLOUT'],
  toleranzkette: ['STACK.TABLE', 'STACK.WORST', 'STACK.RSS'],
  anzugsmoment: ['TORQUE.SET', 'TORQUE.WINDOW', 'TORQUE.CLAMP'],
};

const BY_STEM: ReadonlyMap<string, readonly string[]> = new Map(Object.entries(SYNONYMS).map(([word, ids]) => [stemGerman(word), ids]));

export const GERMAN_ENTRIES: readonly (readonly [word: string, ids: readonly string[]])[] = Object.entries(SYNONYMS);

export const idsByGerman = (word: string): ReadonlySet<string> => new Set(BY_STEM.get(stemGerman(word)));
