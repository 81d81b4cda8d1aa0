// Trade words of what is not worked out here, and what to do instead.

const NOT_COVERED: readonly (readonly [words: readonly string[], sentence: string])[] = [
  [
    ['warp', 'distortion', 'flatness'],
    'Warpage is not covered: it comes from flow, cooling and fibres. Ask for a filling simulation and measure first parts; ' +
      'what they show goes into RIM.GAP.LIMITS as a tolerance.',
  ],
  [
    ['boss to boss', 'between bosses', 'two bosses'],
    'How close two bosses may stand is not covered: BOSS.STEEL gives the mould steel between two drafted ' +
      'faces; ask the moulder. PATTERN.FIT says whether one board fits over all bosses.',
  ],
  [
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
  [
    ['weld line', 'knit line', 'flow line', 'weldline'],
    'Weld lines are not covered: gate and flow decide where they lie, and no strength here ' +
      'counts them. Keep them off the bosses, and test.',
  ],
  [
    ['water tight', 'watertight', 'waterproof', 'dust tight', 'dustproof', 'splash', 'ingress', 'ip rating', 'ip6', 'ip5', 'ip4'],
    'A degree of protection is not covered and not claimed: squeeze, fill and opening of ' +
      'the rim are worked out; a test of the housing decides.',
  ],
];

const plainWords = (text: string): string =>
  ` ${text
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .trim()}`;

export const NOT_COVERED_WORDS = NOT_COVERED.flatMap(([words]) => words);

/** Empty where what was asked holds none of these words; a word may go on: "warpage", "weld lines". */
export const notCovered = (asked: string): string =>
  NOT_COVERED.filter(([words]) => words.some(word => plainWords(asked).includes(` ${word}`)))
    .map(([, sentence]) => sentence)
    .join(' ');
