// What a topic is about, and what goes wrong in it in practice: common practice in our own words, short.
import type { Topic } from '../core/card';

export interface TopicWords {
  /** What the topic is about, in one or two sentences. */
  readonly about: string;
  readonly mistakes: readonly string[];
}

export const TOPIC_WORDS: Readonly<Record<Topic, TopicWords>> = {
  Units: {
    about:
      'Every length and angle may be typed as text with its unit, and sums may mix units. What cannot be read is ' +
      'refused; nothing is guessed.',
    mistakes: [
      'A board drawing in inches read as millimetres: 3.15 is a plausible board edge in inches and a plausible wall in mm.',
      'A radius entered where a diameter is required, or a total where a value per side is required.',
      'Degrees typed into a native TAN without RADIANS: the functions here take degrees.',
    ],
  },
  'Screws and standard data': {
    about:
      'Thread, head, length and point of a screw, read from the tables of the standards, each value with its edition ' +
      'and how it is known, or from the text of an own screw; and start values of plastics.',
    mistakes: [
      'The nominal diameter taken where the largest counts: a recess must clear the largest head, a hole the largest thread.',
      'One head taken for another. Pan, cheese, button and countersunk heads of one size differ in diameter and ' +
        'height; purchasing may change them.',
      'Two standards for the same trade word. M3 pan heads of two standards differ by 0.4 mm in diameter: name the standard.',
      'M3 without quotes is a cell of the sheet, not a screw.',
      'Only one piece of an own screw measured: pieces differ. Use its drawing, or the largest and smallest of many.',
      'The root of an own screw measured with jaws that sit on the flanks: it comes out too large.',
    ],
  },
  'Holes and core pins': {
    about:
      'Pilot and clearance holes, what draft makes of them, how deep a blind hole must be, and what the core pin that ' +
      'forms them can stand.',
    mistakes: [
      'A clearance hole where a pilot is needed, so that the screw holds nothing, or the reverse.',
      'A drafted pilot judged at its mouth alone: it is tightest at the deepest reach of the screw, and there the boss splits.',
      'A blind hole as deep as the nominal screw: length and grip tolerances and a gap under the tip come on top.',
      'A ratio of the hole mixed up with a ratio of the screw: 2 × hole and 2 × screw are different bosses.',
    ],
  },
  Draft: {
    about:
      'Draft is per side, acts from the end at which the size is held, and has a direction. Every drafted size has two ends: look at both.',
    mistakes: [
      'Draft added in the wrong direction: outsides grow towards the root, holes narrow away from their mouth, a ' +
        'pocket narrows towards its floor.',
      'Draft per side taken for the whole angle, or its offset counted once where a diameter needs it twice.',
      'A drawing that does not say which end is dimensioned, or whether draft lies inside the tolerance.',
      'Texture without more draft: the wall scrapes when it leaves the mould.',
    ],
  },
  'Boss and wall': {
    about:
      'The boss that takes the thread: outside diameter, wall at both ends, and what it does to the wall behind it and ' +
      'to the mould beside it.',
    mistakes: [
      'Two rules of thumb followed at once that contradict each other: a boss twice the screw and a boss wall of 60 % ' +
        'need a housing wall as thick as the screw.',
      'The boss wall checked at the free end only: draft outside and in the hole both make it thickest at the root, where sink starts.',
      'A boss merged with the side wall: a thick corner, sink and a void. Stand it off and join it with ribs.',
      'A sliver of mould steel between boss and wall: fillets take from its flat, and a knife edge breaks.',
    ],
  },
  'Head recess': {
    about:
      'The pocket for the head in the outer face: wide enough for the largest head where it sits, deep enough to hide ' +
      'it, and enough plastic left under it.',
    mistakes: [
      'The head height entered where the head diameter is required. A recess narrower than the hole gives it away.',
      'The nominal or smallest head taken: size the recess on the largest.',
      'The recess held at the outer face: draft makes it narrower at the floor, where the head must go.',
      'No room for the driver: the bit or its sleeve is wider than the recess.',
      'A countersunk head in plastic: it wedges its seat open, and it rides on the cone when the sharp edge is not counted.',
    ],
  },
  'Grip, engagement, screw length': {
    about:
      'What lies between head and boss is grip; what lies below is not all thread that holds. Relief, point and ' +
      'tolerances take their share before anything bites.',
    mistakes: [
      'Length minus grip taken for engagement. Relief and point carry no full thread; at worst case about half of it may be left.',
      'The tolerance of the screw length left out: with tapping screws it is often the largest of the chain.',
      'Board thickness taken as exact: ±10 % is usual.',
      'A length chosen that nobody stocks, or the board height fixed before a rough look at the lengths.',
      'A screw that bottoms forces the halves apart yet feels tight: the torque tells you nothing.',
    ],
  },
  'Strength (estimates)': {
    about: 'Estimates for comparing variants and for planning tests. Every one of them needs a test with the moulded part.',
    mistakes: [
      'A short-term pull-out force taken as a design load: plastic creeps, ages and cracks around the screw.',
      'Only the thread looked at: the boss may tear across or the head may go through its seat first.',
      'Formulas for metal joints used in plastic: the torque for a clamp force differs, and much of the clamp force is lost within hours.',
      'One torque for all: drive torque and stripping torque scatter with resin, pilot and speed of the driver.',
    ],
  },
  'Board and supports': {
    about: 'The circuit board: play around it, what clamps it, what the metal of the screw can reach, and what holds it when it shifts.',
    mistakes: [
      'A pocket drawn at its rim: its walls lean in, and the board sits near the floor.',
      'A board clamped between two fixed heights: ±10 % of thickness makes it rattle or crush. Screw it to the bosses ' +
        'and leave the pillars a gap.',
      'The head centred for the distance to copper: it moves by its play in the hole and by the position of the hole.',
      'A distance to copper taken from a table of layout habits: what is required comes from the product’s own ' +
        'standard and a qualified review.',
    ],
  },
  'Inserts and nuts': {
    about:
      'Threaded inserts by the sizes of their own drawing, and pockets for hexagon nuts: what they need of the boss and ' +
      'what holds them. Estimates; installation and torque-out are not computed: test them.',
    mistakes: [
      'A clearance hole as wide as the insert: the screw then draws the insert out through it, however well it holds.',
      'The insert left proud or deep: proud, it keeps the parts apart; deep, the plastic touches first and the screw draws the insert up.',
      'A hole only as deep as the insert: molten plastic and the tip of the screw have nowhere to go.',
      'Only the pull-out force checked: an insert that turns in its boss has failed too, and only a test shows when.',
      'A cold insert in a brittle plastic: the hoop strain stays for years and cracks the boss.',
    ],
  },
  'Snap hooks (estimates)': {
    about:
      'A hook in place of a screw: a straight cantilever that tapers from root to tip, its largest strain, how far and with ' +
      'what force it bends, and what its ramp makes of that force. Estimates; the permissible strain comes from the data of the plastic.',
    mistakes: [
      'The strain at break, or for a single use, taken for a hook that is opened often.',
      'A hook that stays bent when closed: it creeps and lets go. It must stand free where it has snapped in.',
      'A sharp inner corner at the root, where the strain is largest: the formula leaves the notch out.',
      'A thin wall behind the root taken as stiff: it turns with the hook, which is then softer than computed.',
      'A weld line or the gate at the root of the hook.',
    ],
  },
  'Pattern of holes': {
    about:
      'Several screws or pins in one board: how long a slot beside a round hole must be, how far the board can turn, and ' +
      'whether one rigid board fits over all bosses. Bent boards and the warp of the housing are not covered.',
    mistakes: [
      'Every hole judged by itself: with two screws the play of both must take up the whole difference in distance.',
      'Two round holes as locators: their distance is never the same in two parts. One round hole and one slot locate a board.',
      'A slot laid across the line to the round hole: it must point at the round hole.',
      'Both locators on one short side: the closer they stand, the further the same play turns the board.',
      'Holes moulded in one tool taken as independent: shrinkage moves them together, and the slot or the play must take that up first.',
    ],
  },
  'Ribs, lip, mould': {
    about:
      'Ribs and junctions, the lip between the halves, which of rim and boss touches first, how far the rim opens between its ' +
      'screws, a seal in its groove, cooling and cavity size.',
    mistakes: [
      'A rib whose tip is too thin to fill, because draft was forgotten.',
      'Wall, rib and fillet each within their rule and the junction thick all the same: look at the circle that fits in.',
      'Lip and groove without a budget: wall, lip and gaps must add up, and the two parts never shrink alike.',
      'The rim touches before the bosses: every screw then bends the lid and hangs its boss in tension. Cracks come weeks later.',
      'Part size × (1 + S) for the cavity: it is part size ÷ (1 − S).',
    ],
  },
  Tolerances: {
    about: 'Tolerances from tables, and chains of dimensions: worst case, root sum square, and what lies between.',
    mistakes: [
      'Every part within tolerance, and the assembly not: no chain was summed.',
      'Root sum square with few links, or with dimensions moulded in one tool: these are not independent.',
      'One-sided tolerances summed about their nominal: shift the nominal to the middle first.',
      'Tolerances of machined parts demanded of a moulding.',
    ],
  },
  'Checks, variants, trace': {
    about: 'A value against its limit, variants side by side, and functions that explain other functions.',
    mistakes: [
      'A blank input that shows as passed: here it is “not checked”.',
      'One green tick per rule: rules contradict each other, so keep the source beside each.',
      'A limit typed into a formula: put it into a cell with its name and its source.',
    ],
  },
  'The joint as one table': {
    about:
      'The whole joint in one call: one row per variant, inputs by name, every value computed once, every rule judged with its reason.',
    mistakes: [
      'A zero for “none”: a blank and a bare 0 cannot be told apart in a sheet, so write "0 mm" or "0°".',
      'A blank drawing value read as agreed: it takes a default. JOINT.INPUTS lists what each default is.',
      'A limit repeated in every table: put your company’s limits into one range and give it as base.',
      'A margin of one rule read as the margin of the joint: “margin rule” says which rule is nearest to its limit.',
      'A state read without its reason: “review” on a hidden face and “review” on a show face are different matters.',
    ],
  },
};
