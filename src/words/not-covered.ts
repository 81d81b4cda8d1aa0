// Trade words of what is not worked out here, and what to do instead.

const NOT_COVERED = {
  warpage: [
    ['warp', 'distortion', 'flatness', 'verzug', 'ebenheit'],
    'Warpage is not covered: it comes from flow, cooling and fibres. Ask for a filling simulation and measure first parts; ' +
      'what they show goes into RIM.GAP.LIMITS as a tolerance.',
  ],
  between: [
    ['boss to boss', 'between bosses', 'two bosses', 'domabstand', 'zwischen domen'],
    'How close two bosses may stand is not covered: BOSS.STEEL gives the mould steel between two drafted ' +
      'faces; ask the moulder. Whether one board fits over all bosses is PATTERN.FIT.',
  ],
  electrical: [
    [
      'creepage',
      'electrical clearance',
      'clearance distance',
      'air gap',
      'insulation',
      'kriechstrecke',
      'luftstrecke',
      'isolationsabstand',
    ],
    'Electrical distances are not given here: they come from the safety standard of your product and whoever answers for it. ' +
      'BOARD.MARGIN only compares a distance that you bring with the play of the board.',
  ],
  weldLines: [
    ['weld line', 'knit line', 'flow line', 'weldline', 'bindenaht', 'bindenähte', 'fließlinie'],
    'Weld lines are not covered: gate and flow decide where they lie, and no strength here ' +
      'counts them. Keep them off the bosses, and test.',
  ],
  ingress: [
    [
      'water tight',
      'watertight',
      'waterproof',
      'dust tight',
      'dustproof',
      'splash',
      'ingress',
      'ip rating',
      'ip6',
      'ip5',
      'ip4',
      'schutzart',
      'wasserdicht',
      'staubdicht',
    ],
    'A degree of protection is not covered and not claimed: squeeze, fill and opening of ' +
      'the rim are worked out; a test of the housing decides.',
  ],
} satisfies Readonly<Record<string, readonly [words: readonly string[], sentence: string]>>;

const plainWords = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .trim()}`;

export type NotCovered = keyof typeof NOT_COVERED;

const ALL = Object.entries(NOT_COVERED) as readonly (readonly [NotCovered, readonly [words: readonly string[], sentence: string]])[];

export const NOT_COVERED_WORDS = ALL.flatMap(([, [words]]) => words);

export const NOT_COVERED_SENTENCES = Object.fromEntries(ALL.map(([what, [, sentence]]) => [what, sentence])) as Record<NotCovered, string>;

/** Empty where what was asked holds none of these words; a word may go on: "warpage", "weld lines". */
export const notCovered = (asked: string, sentences: Readonly<Record<NotCovered, string>> = NOT_COVERED_SENTENCES): string =>
  ALL.filter(([, [words]]) => words.some(word => plainWords(asked).includes(` ${word}`)))
    .map(([what]) => sentences[what])
    .join(' ');
