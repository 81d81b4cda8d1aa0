// What each function rests on. test/evidence/evidence.test.ts opens every test that is named here.
import type { Evidence, EvidenceKind } from './evidence';

const from = (kind: EvidenceKind, test: string, title: string, source: string, ...ids: string[]): Evidence[] =>
  ids.map(id => ({ id, kind, source, test: `test/${test}`, title }));

const published = from.bind(undefined, 'published example');
const standard = from.bind(undefined, "standard's table");
const library = from.bind(undefined, 'reference library');
const anotherWay = from.bind(undefined, 'independent computation');
const identity = from.bind(undefined, 'identity');
const arithmetic = from.bind(undefined, 'arithmetic');
const byHand = from.bind(undefined, 'hand-worked');
/** The number is for this much of the result. */
const only = (part: string, list: readonly Evidence[]): Evidence[] => list.map(one => ({ ...one, part }));

const PRINTED = 'evidence/published.test.ts';
const STANDARDS = 'evidence/standards.test.ts';
const INVERSE = 'evidence/inverse.test.ts';
const ANOTHER_WAY = 'evidence/independent.test.ts';
const SEAL = 'evidence/seal.test.ts';
const PATTERN = 'evidence/pattern.test.ts';
const LINES = 'lines in the plane that meet';
const CORNERS = 'every corner of the tolerances';
const BLOCKS = 'sums and differences, on the four blocks of Shigley’s Ex. 1–3';
const BENDING = 'evidence/bending.test.ts';
const CHART = 'draft chart for 1 inch of depth, read in 1 secondary copy';
const THE_TERM = 'the term with draft';
const SHIGLEY_STACK = 'Shigley’s Mechanical Engineering Design, 9th ed., Ex. 1–3, p. 20, read in 1 secondary copy';
const CRAWFORD = 'Crawford, Plastics Engineering, Ex. 2.7, p. 64–65, read in 1 secondary copy';
const ISO_1478 = 'ISO 1478:1999, read in secondary copies';
const METRIC = 'ISO 965-2 6g, read in secondary copies';
const INCH = 'ASME B18.6.3 and B1.1, read in secondary copies';
const ISO_HEADS = 'ISO 7045 and ISO 7049, read in secondary copies';

export const EVIDENCE: readonly Evidence[] = [
  ...library('evidence/reference-library.test.ts', 'LENGTH.MM: one unit', 'js-quantities 1.8.0', 'LENGTH.MM'),
  ...library('evidence/reference-library.test.ts', 'ANGLE.DEG: degrees', 'js-quantities 1.8.0', 'ANGLE.DEG'),
  ...library('evidence/reference-library.test.ts', 'DUAL: both numbers', 'js-quantities 1.8.0', 'DUAL'),
  ...library('evidence/reference-library.test.ts', 'LIMITS: size in one unit', 'js-quantities 1.8.0', 'LIMITS'),
  ...published(PRINTED, 'LIMITS', 'thickness of boards, fabricators, read in 2 pages', 'LIMITS'),
  ...byHand('core/unit.test.ts', 'both ends of each band are ok', 'bands, common practice', 'UNIT.CHECK'),

  ...standard(
    STANDARDS,
    'SCREW.PITCH, SCREW.MAJOR, SCREW.ROOT and SCREW.POINT of %s',
    ISO_1478,
    'SCREW.MAJOR',
    'SCREW.PITCH',
    'SCREW.POINT',
  ),
  ...standard(STANDARDS, 'SCREW.PITCH, SCREW.MAJOR, SCREW.ROOT and SCREW.POINT of %s', `${ISO_1478}; d2 min from memory`, 'SCREW.ROOT'),
  ...standard(STANDARDS, 'SCREW.PITCH, SCREW.MAJOR, SCREW.ROOT, and d of', METRIC, 'SCREW.MAJOR', 'SCREW.ROOT', 'SCREW.PITCH'),
  ...only(
    'the diameter d',
    standard(STANDARDS, 'SCREW.PITCH, SCREW.MAJOR, SCREW.ROOT, and d of', METRIC, 'ENGAGEMENT.RATIO', 'BOSS.OD.RULE'),
  ),
  ...standard(STANDARDS, 'SCREW.PITCH, SCREW.MAJOR and SCREW.ROOT of %s', INCH, 'SCREW.MAJOR', 'SCREW.ROOT', 'SCREW.PITCH'),
  ...standard(STANDARDS, 'SCREW.POINT, longest point taper', INCH, 'SCREW.POINT'),
  ...standard(STANDARDS, 'SCREW.HEAD.DIAMETER and SCREW.HEAD.HEIGHT of %s pan', ISO_HEADS, 'SCREW.HEAD.DIAMETER', 'SCREW.HEAD.HEIGHT'),
  ...standard(
    STANDARDS,
    'SCREW.HEAD.DIAMETER and SCREW.HEAD.HEIGHT of %s: %d',
    'ISO 1580, 1207, 4762, 7380-1, 7046-2, 7050 and DIN 7981, read in secondary copies or under a sister standard',
    'SCREW.HEAD.DIAMETER',
    'SCREW.HEAD.HEIGHT',
  ),
  ...standard(
    STANDARDS,
    'SCREW.HEAD.DIAMETER and SCREW.HEAD.HEIGHT of %s pan, ASME',
    'ASME B18.6.3, read in 1 secondary copy',
    'SCREW.HEAD.DIAMETER',
    'SCREW.HEAD.HEIGHT',
  ),
  ...standard(
    STANDARDS,
    'SCREW.LENGTHS: ISO 7049',
    'ISO 7049 and product standards of machine screws, read in secondary copies',
    'SCREW.LENGTHS',
  ),
  ...only(
    'the lengths',
    standard(
      STANDARDS,
      'SCREW.LENGTH.TABLE and SCREW.LENGTH.COMMON try',
      'ISO 7049, read in secondary copies',
      'SCREW.LENGTH.TABLE',
      'SCREW.LENGTH.COMMON',
    ),
  ),
  ...standard(STANDARDS, 'SCREW.LENGTH.TOL of M3', 'ISO 4759-1 grade A, read in secondary copies', 'SCREW.LENGTH.TOL'),
  ...standard(STANDARDS, 'SCREW.LENGTH.TOL of ST2.9', 'ISO 7049, read in 1 secondary copy to 13 mm', 'SCREW.LENGTH.TOL'),
  ...standard(STANDARDS, 'SCREW.CARD of ST2.9 pan', 'ISO 1478 and ISO 7049, read in secondary copies', 'SCREW.CARD'),
  ...standard(STANDARDS, 'HOLE.CLEARANCE of %s, ISO 273', 'ISO 273:1979, read in secondary copies', 'HOLE.CLEARANCE'),
  ...only(
    'the hole that is read',
    standard(STANDARDS, 'BOARD.SLEEVE and HOLE.AT read the medium one', 'ISO 273:1979, read in secondary copies', 'BOARD.SLEEVE'),
  ),
  ...standard(STANDARDS, 'loose by ASME B18.2.8', 'ASME B18.2.8-1999, read in 1 secondary copy', 'HOLE.CLEARANCE'),
  ...standard(STANDARDS, 'DIN 74-1 form C', 'DIN 74-1 form C, withdrawn, read in 1 secondary copy', 'HOLE.CLEARANCE'),
  ...only(
    '11 of 36 printed values; the other 25 differ',
    published(
      PRINTED,
      'MATERIAL: 11 of the 36 values',
      'Crawford, Plastics Engineering, tables 1.5 and 1.8, p. 22 and 31, read in 1 secondary copy',
      'MATERIAL',
    ),
  ),
  ...byHand(
    'core/material.test.ts',
    'of all: the symbol',
    'its form only: the ranges were merged from such tables and memory, so no table is a check of them',
    'MATERIAL.TABLE',
  ),

  ...only('the diameters', standard(STANDARDS, 'HOLE.PILOT and HOLE.THREAD.SHARE of %s', ISO_1478, 'HOLE.PILOT', 'HOLE.THREAD.SHARE')),
  ...identity(INVERSE, 'HOLE.PILOT and HOLE.THREAD.SHARE', 'one undoes the other', 'HOLE.PILOT', 'HOLE.THREAD.SHARE'),
  ...only(THE_TERM, published(PRINTED, 'the term with draft of %s', CHART, 'HOLE.AT', 'HOLE.MOUTH')),
  ...identity(INVERSE, 'HOLE.AT and HOLE.MOUTH', 'one undoes the other', 'HOLE.AT', 'HOLE.MOUTH'),
  ...only(
    'the diameters',
    standard(STANDARDS, 'what is told by d1 max and d2 max', ISO_1478, 'HOLE.TIGHT', 'HOLE.RELIEF', 'ENGAGEMENT.RATIO', 'BOSS.OD.RULE'),
  ),
  ...identity(INVERSE, 'HOLE.DEPTH leaves the gap', 'the room that is asked for is found again', 'HOLE.DEPTH', 'SCREW.BOTTOM'),
  ...published(
    'core/hole-position.test.ts',
    'ASME Y14.5 appendix B',
    'ASME Y14.5, appendix B, read in secondary copies',
    'HOLE.FLOATING',
    'HOLE.FIXED',
  ),
  ...published(
    PRINTED,
    'HOLE.PROJECTED: ASME',
    'ASME Y14.5M-1994, appendix B5, its numbers read in 1 secondary copy, its result from memory',
    'HOLE.PROJECTED',
  ),
  ...anotherWay(ANOTHER_WAY, 'HOLE.PROJECTED: every axis', 'every axis that leans in its zone', 'HOLE.PROJECTED'),
  ...published('core/hole-position.test.ts', 'ø 2√2·t', 'position beside DIN 16742 TG6, read in 1 secondary copy', 'POSITION.ZONE'),
  ...byHand('core/hole-position.test.ts', '12 long, 2.4 thick', '', 'PIN.RATIO'),
  ...anotherWay(ANOTHER_WAY, 'PIN.DEFLECTION: curvature', 'the curvature of a cantilever added up twice', 'PIN.DEFLECTION'),

  ...published(PRINTED, 'DRAFT.OFFSET, %s', CHART, 'DRAFT.OFFSET'),
  ...published(PRINTED, 'DRAFT.ANGLE and DRAFT.HEIGHT, backwards', CHART, 'DRAFT.ANGLE', 'DRAFT.HEIGHT'),
  ...published(PRINTED, 'the term with draft of %s', CHART, 'DRAFT.SIZE'),
  ...identity(
    INVERSE,
    'DRAFT.OFFSET, DRAFT.ANGLE and DRAFT.HEIGHT',
    'each from the two others',
    'DRAFT.OFFSET',
    'DRAFT.ANGLE',
    'DRAFT.HEIGHT',
  ),
  ...byHand('core/boss-mould.test.ts', 'guide for draft', 'the default is the guide’s own step, read in 1 secondary copy', 'DRAFT.TEXTURE'),
  ...anotherWay(
    ANOTHER_WAY,
    '%s by lines',
    LINES,
    'DRAFT.OFFSET',
    'DRAFT.SIZE',
    'HOLE.AT',
    'HOLE.MOUTH',
    'BOSS.OD',
    'BOSS.WALL',
    'BOSS.STEEL',
    'RECESS.DIAMETER',
    'RECESS.CONE',
    'RIB.TIP',
    'RIB.BASE',
    'BOARD.GAP',
    'NUT.POCKET',
    'NUT.POCKET.CORNER',
    'INSERT.BOSS.OD',
  ),
  ...only('a hole down to the root', anotherWay(ANOTHER_WAY, '%s by lines', LINES, 'BOSS.ENDS')),

  ...only(THE_TERM, published(PRINTED, 'the term with draft of %s', CHART, 'BOSS.OD', 'BOSS.WALL', 'BOSS.STEEL')),
  ...only(THE_TERM, published(PRINTED, 'BOSS.ENDS, the root', CHART, 'BOSS.ENDS')),
  ...anotherWay(ANOTHER_WAY, 'BOSS.CORNER: the nearest', 'the nearest of many points on walls and arc', 'BOSS.CORNER'),
  ...identity(INVERSE, 'BOSS.OD and BOSS.WALL', 'the wall that is asked for is there', 'BOSS.OD', 'BOSS.WALL'),
  ...byHand('core/boss-mould.test.ts', 'the flat between fillets', '', 'BOSS.FLAT'),
  ...byHand('evidence/wrong-forms.test.ts', 'BOSS.SINK compares walls', '', 'BOSS.SINK'),
  ...byHand('core/boss-mould.test.ts', 'with a hole of 0.8·d on a 2 mm wall', '', 'BOSS.CONFLICT'),
  ...identity(INVERSE, 'BOSS.CONFLICT: the wall', 'on the wall that satisfies both, both are satisfied', 'BOSS.CONFLICT'),
  ...byHand('core/boss-mould.test.ts', 'inside the ranges from memory', 'ranges, common practice', 'BOSS.GUSSET'),
  ...only('the outside cone', published(PRINTED, 'BOSS.MASS, the outside cone', 'a page of solved problems, read in 1 copy', 'BOSS.MASS')),
  ...anotherWay(ANOTHER_WAY, 'BOSS.MASS: rings', 'rings of boss and hole added up', 'BOSS.MASS'),
  ...published(PRINTED, 'BOSS.TORSION: a course', 'a course on mechanics of materials, read in 1 copy', 'BOSS.TORSION'),

  ...only(THE_TERM, published(PRINTED, 'the term with draft of %s', CHART, 'RECESS.DIAMETER')),
  ...only(
    'the head',
    standard(
      STANDARDS,
      'RECESS.DIAMETER, RECESS.DEPTH.MIN and RECESS.FLUSH clear',
      ISO_HEADS,
      'RECESS.DIAMETER',
      'RECESS.DEPTH.MIN',
      'RECESS.FLUSH',
    ),
  ),
  ...identity(INVERSE, 'RECESS.DEPTH and RECESS.SEAT', 'one undoes the other', 'RECESS.DEPTH', 'RECESS.SEAT'),
  ...only(
    'head, hole and screw',
    standard(
      'core/boss-mould.test.ts',
      'from text: largest head (ISO 7045',
      'ISO 7045, ISO 273 and ISO 965-2, read in secondary copies',
      'RECESS.FLOAT',
    ),
  ),
  ...standard('core/boss-mould.test.ts', 'DIN 74-1 form C', 'DIN 74-1 form C, withdrawn, read in 1 secondary copy', 'RECESS.CONE'),
  ...byHand('core/boss-mould.test.ts', 'a hexagon of 6.35', 'across corners of a hexagon', 'RECESS.TOOL'),

  ...arithmetic(PRINTED, 'GRIP and GRIP.LIMITS', BLOCKS, 'GRIP'),
  ...arithmetic(PRINTED, 'PENETRATION and ENGAGEMENT', BLOCKS, 'PENETRATION', 'ENGAGEMENT'),
  ...anotherWay(
    ANOTHER_WAY,
    '%s by corners',
    CORNERS,
    'GRIP.LIMITS',
    'ENGAGEMENT.LIMITS',
    'SCREW.BOTTOM',
    'RIM.GAP.LIMITS',
    'BOARD.CLAMP',
    'LIP.FIT',
    'STACK.SHARE',
  ),
  ...byHand(
    'evidence/wrong-forms.test.ts',
    'ENGAGEMENT.LIMITS is 4.34 at worst',
    'the joint of the demo',
    'ENGAGEMENT.LIMITS',
    'ENGAGEMENT.RATIO',
  ),
  ...anotherWay(ANOTHER_WAY, 'SCREW.LENGTH.PICK of ST2.9', 'each length at every corner of the tolerances', 'SCREW.LENGTH.PICK'),

  ...byHand('core/strength.test.ts', 'by hand: ST2.9, 6 mm, 40 MPa', 'no published example could be found', 'PULLOUT'),
  ...only(
    'the thread share',
    identity('core/strength.test.ts', 'with a share of %j it holds', 'twice the share, twice the force, up to a half', 'PULLOUT'),
  ),
  ...published(PRINTED, 'PULLOUT.BOSS: Singer', 'Singer, Strength of Materials, problem 104, read in 3 secondary copies', 'PULLOUT.BOSS'),
  ...only(
    'the sheared cylinder',
    published(PRINTED, 'PULLOUT.SEAT: Singer', 'Singer, Strength of Materials, problem 115, read in 1 secondary copy', 'PULLOUT.SEAT'),
  ),
  ...anotherWay(ANOTHER_WAY, 'SCREW.COUNT: screws are added', 'one screw more until they carry', 'SCREW.COUNT'),
  ...published(
    PRINTED,
    'TORQUE.STRIP: solutions to Shigley',
    'solutions to Shigley, Mechanical Engineering Design, problem 8-4, read in 1 secondary copy',
    'TORQUE.STRIP',
  ),
  ...published(PRINTED, 'TORQUE.STRIP: a book of statics', 'a book of statics, read in 1 copy', 'TORQUE.STRIP'),
  ...identity('core/strength.test.ts', 'friction nearly 0', 'the work of one turn', 'TORQUE.STRIP'),
  ...byHand('core/strength.test.ts', 'from 0.15 half way', '', 'TORQUE.SET'),
  ...only('the scatter', anotherWay(ANOTHER_WAY, 'TORQUE.WINDOW', 'every drive of the driver', 'TORQUE.WINDOW')),
  ...byHand(PRINTED, 'TORQUE.WINDOW: drive', 'the default is that practice itself, read in 1 secondary copy', 'TORQUE.WINDOW'),
  ...published(
    PRINTED,
    'TORQUE.CLAMP: solutions to Shigley',
    'solutions to Shigley, Mechanical Engineering Design, problem 8-6, read in 1 secondary copy',
    'TORQUE.CLAMP',
  ),
  ...published(
    PRINTED,
    'CLAMP.RELAX: a page',
    'a page on stress relaxation, read in 1 copy; the modulus at the start divided out by hand',
    'CLAMP.RELAX',
  ),
  ...published(PRINTED, 'BEARING: a page', 'a page of solved problems, read in 1 copy', 'BEARING'),
  ...published('core/strength.test.ts', ': hoop stress 18 MPa', CRAWFORD, 'HOOP.STRESS'),
  ...published(PRINTED, 'HOOP.LIMIT: Crawford', CRAWFORD, 'HOOP.LIMIT'),
  ...published('core/strength.test.ts', ': interference 0.32 mm on the radius', CRAWFORD, 'HOOP.PUSH'),
  ...identity('core/strength.test.ts', 'the limit of a stress gives that stress', 'one undoes the other', 'HOOP.STRESS', 'HOOP.LIMIT'),

  ...only(THE_TERM, published(PRINTED, 'the term with draft of %s', CHART, 'BOARD.GAP')),
  ...byHand('core/board.test.ts', '((61 − 0.3) − (60 + 0.2))/2', '', 'BOARD.GAP'),
  ...only(
    'head, hole and screw',
    standard(
      'core/board.test.ts',
      'from text: largest head (ISO 7045',
      'ISO 7045, ISO 273 and ISO 965-2, read in secondary copies',
      'BOARD.REACH',
    ),
  ),
  ...byHand('core/board.test.ts', 'copper at 5, reach 3.27', '', 'BOARD.MARGIN'),
  ...byHand(
    'core/board.test.ts',
    'quoted as practice under IPC-2221',
    'the default is that practice itself, as quoted in 2018, read in 1 secondary copy',
    'BOARD.KEEPOUT',
  ),
  ...byHand('core/board.test.ts', '(6 − 5.6)/2 = 0.2', '', 'BOARD.SLEEVE'),
  ...byHand('core/board.test.ts', '(8 − 6)/2 − (6 − 5.6)/2', '', 'BOARD.HOLD'),
  ...anotherWay(
    BENDING,
    'BOARD.SAG and BOARD.STRAIN: curvature',
    'layers of the thickness and the curvature of the half beam added up',
    'BOARD.SAG',
    'BOARD.STRAIN',
  ),
  ...anotherWay(BENDING, 'BOARD.FREQUENCY, simple: Ritz', 'Ritz’s method in polynomials, simple edges', 'BOARD.FREQUENCY'),
  ...anotherWay(BENDING, 'BOARD.FREQUENCY, clamped: within', 'the same, clamped edges: within a hundredth', 'BOARD.FREQUENCY'),
  ...anotherWay(BENDING, 'BOARD.FREQUENCY, corners: within', 'the same, four corners: within a twentieth', 'BOARD.FREQUENCY'),
  ...only(
    'four corners, ν 0.3',
    published(
      BENDING,
      'BOARD.FREQUENCY, corners as Blevins',
      'Blevins, Formulas for Natural Frequency and Mode Shape, 1979, from memory; Ritz’s method gives the same',
      'BOARD.FREQUENCY',
    ),
  ),
  ...only(
    'clamped edges, within a hundredth',
    published(
      BENDING,
      'BOARD.FREQUENCY, clamped: within a hundredth of Leissa',
      'Leissa, The Free Vibration of Rectangular Plates, J. Sound Vib. 31 (1973), from memory',
      'BOARD.FREQUENCY',
    ),
  ),
  ...published(
    'core/board.test.ts',
    'Crawford, Plastics Engineering, p. 63',
    'Crawford, Plastics Engineering, p. 63, read in 1 secondary copy',
    'THERMAL.GAP',
  ),

  ...anotherWay(ANOTHER_WAY, 'INSERT.ENGAGEMENT: slices', 'slices of the axis counted', 'INSERT.ENGAGEMENT'),
  ...anotherWay(ANOTHER_WAY, 'INSERT.HOLE.DEPTH: one', 'a hole that deepens until the margin is free', 'INSERT.HOLE.DEPTH'),
  ...anotherWay(ANOTHER_WAY, 'INSERT.LANDING: half', 'pieces of a radius counted', 'INSERT.LANDING'),
  ...anotherWay(ANOTHER_WAY, 'INSERT.STRAIN: an insert', 'insert and free bore cooled in steps', 'INSERT.STRAIN'),
  ...only(
    'the thermal part',
    published(PRINTED, 'INSERT.STRAIN: Crawford', 'Crawford, Plastics Engineering, p. 63, read in 1 secondary copy', 'INSERT.STRAIN'),
  ),
  ...anotherWay(
    ANOTHER_WAY,
    'INSERT.PULLOUT: the many sides',
    'sides of a prism added up, yield in pure shear by search',
    'INSERT.PULLOUT',
  ),
  ...only(
    'the sheared cylinder',
    published(PRINTED, 'INSERT.PULLOUT: Singer', 'Singer, Strength of Materials, problem 115, read in 1 secondary copy', 'INSERT.PULLOUT'),
  ),
  ...only(
    'without allowance',
    standard(
      STANDARDS,
      'NUT.POCKET, NUT.POCKET.CORNER and NUT.HEIGHT of %s',
      'ISO 4032, read in secondary copies; corners of ASME B18.2.4.1M, read in 1',
      'NUT.POCKET',
      'NUT.POCKET.CORNER',
    ),
  ),
  ...standard(STANDARDS, 'NUT.POCKET, NUT.POCKET.CORNER and NUT.HEIGHT of %s', 'ISO 4032, read in secondary copies', 'NUT.HEIGHT'),

  ...anotherWay(BENDING, 'SNAP.FORCE: the curvature', 'the curvature of the tapered beam added up twice', 'SNAP.FORCE'),
  ...anotherWay(
    BENDING,
    'SNAP.STRAIN and SNAP.DEFLECTION: a search',
    'the curvature added up twice, a search for the largest strain',
    'SNAP.STRAIN',
    'SNAP.DEFLECTION',
  ),
  ...only(
    'one thickness, and a tip half as thick',
    published(
      BENDING,
      'SNAP.DEFLECTION and SNAP.STRAIN as printed',
      'handbooks on snap joints, from memory',
      'SNAP.STRAIN',
      'SNAP.DEFLECTION',
    ),
  ),
  ...anotherWay(BENDING, 'SNAP.MATING: pressing', 'pressing and rubbing on the ramp put together', 'SNAP.MATING'),
  ...anotherWay(ANOTHER_WAY, 'PATTERN.SLOT: everywhere', 'a pin followed to both ends of tolerance and temperature', 'PATTERN.SLOT'),
  ...anotherWay(ANOTHER_WAY, 'PATTERN.TURN: a board', 'a board turned until it touches', 'PATTERN.TURN'),
  ...anotherWay(PATTERN, 'two screws, by integration', 'for two screws, the four positions folded by numeric integration', 'PATTERN.FIT'),
  ...anotherWay(PATTERN, 'four screws, by search', 'for four screws, other draws and a search in steps', 'PATTERN.FIT'),

  ...only(THE_TERM, published(PRINTED, 'the term with draft of %s', CHART, 'RIB.TIP', 'RIB.BASE')),
  ...identity(INVERSE, 'RIB.BASE and RIB.TIP', 'one undoes the other', 'RIB.TIP', 'RIB.BASE'),
  ...only('a web without taper', published(PRINTED, 'RIB.SECTION: a page', 'a page of solved problems, read in 1 copy', 'RIB.SECTION')),
  ...only(
    'a web without taper',
    published(
      PRINTED,
      'RIB.SECTION: Hibbeler',
      'Hibbeler, Mechanics of Materials, examples A.1 and A.2, from memory, recomputed',
      'RIB.SECTION',
    ),
  ),
  ...anotherWay(ANOTHER_WAY, 'RIB.SECTION: area', 'slices of the tapered rib added up', 'RIB.SECTION'),
  ...byHand('core/mould.test.ts', 'skin of 2.5', '', 'LIP.SKIN'),
  ...arithmetic(PRINTED, 'RIM.GAP and RIM.GAP.LIMITS', BLOCKS, 'RIM.GAP'),
  ...anotherWay(SEAL, 'RIM.SAG: curvature', 'the curvature of a beam added up twice, the moment at clamped ends by search', 'RIM.SAG'),
  ...anotherWay(SEAL, 'RIM.PITCH: a pitch', 'a pitch that grows until that beam opens so far', 'RIM.PITCH'),
  ...anotherWay(SEAL, 'SEAL.SQUEEZE by corners', `${CORNERS}; the thickness of the cord by its volume`, 'SEAL.SQUEEZE'),
  ...anotherWay(SEAL, 'SEAL.FILL by corners', `${CORNERS}; triangles of the cord added up`, 'SEAL.FILL'),
  ...anotherWay(SEAL, 'SEAL.STRETCH: the ring', 'ring and groove walked round', 'SEAL.STRETCH'),
  ...anotherWay(ANOTHER_WAY, 'BOSS.CIRCLE', 'search over all circles on the outer face', 'BOSS.CIRCLE'),
  ...identity(INVERSE, 'RIM.SAG and RIM.PITCH', 'one undoes the other', 'RIM.SAG', 'RIM.PITCH'),
  ...identity('core/mould.test.ts', 'the circle touches', 'tangent to outer face and fillets', 'JUNCTION.CIRCLE'),
  ...anotherWay(
    ANOTHER_WAY,
    'JUNCTION.CIRCLE and JUNCTION.RATIO',
    'a search for the largest circle, up to a rib of 1.8 walls',
    'JUNCTION.CIRCLE',
    'JUNCTION.RATIO',
  ),
  ...identity(
    'core/mould.test.ts',
    'it goes with the square of the thickness',
    'only how it goes with the thickness; 2 → 3 mm is also read in several secondary copies',
    'COOLING.TIME',
  ),
  ...anotherWay(
    'core/mould.test.ts',
    'the whole series gives the ejection temperature',
    'the whole series of the heat equation',
    'COOLING.TIME',
  ),
  ...published('core/mould.test.ts', 'a web page on casting shrinkage', 'a page on casting shrinkage, read in 1 copy', 'CAVITY.SIZE'),

  ...standard(
    'core/tolerance.test.ts',
    '%s mm, %s: %s mm',
    'ISO 286-1, read in 1 secondary copy; IT15, IT16 and above 315 mm from memory',
    'TOL.IT',
  ),
  ...standard('core/tolerance.test.ts', '%s mm, class %s', 'ISO 2768-1:1989, read in 3 secondary copies', 'TOL.GENERAL'),
  ...standard(
    'core/tolerance.test.ts',
    '%s mm, %s, %s',
    'DIN 16742:2013 TG6 and DIN 16901:1982 group 130, read in secondary copies',
    'TOL.MOULDED',
  ),
  ...published('core/stack.test.ts', 'Ex. 1–3, p. 20', SHIGLEY_STACK, 'STACK.NOMINAL'),
  ...published('core/stack.test.ts', 'a problem of the same kind', 'a problem of the same kind, read in 1 copy', 'STACK.WORST'),
  ...anotherWay(ANOTHER_WAY, '%s by corners', CORNERS, 'STACK.WORST', 'STACK.RSS'),
  ...published(PRINTED, 'STACK.RSS: .005', 'a page on stacks, read in 1 copy', 'STACK.RSS'),
  ...only('the totals', published(PRINTED, 'STACK.TABLE: 4.020', 'a page on stacks, read in 1 copy', 'STACK.TABLE')),
  ...identity('core/stack.test.ts', 'n equal links', 'n equal links', 'STACK.MODIFIED'),
  ...byHand('core/stack.test.ts', 'the blocks: root sum square', 'on the blocks of Shigley', 'STACK.MODIFIED'),
  ...identity(
    'core/stack.test.ts',
    'mean and deviation within 5 standard errors',
    'converges on the root sum square; its generator gives the published numbers',
    'STACK.SIMULATE',
  ),
  ...published('core/stack.test.ts', 'ppm, two-sided', 'a table of a software maker, read in 1 copy', 'STACK.PPM'),
  ...published('core/stack.test.ts', '3.4 ppm', 'the six-sigma literature, read in 1 copy', 'STACK.PPM', 'STACK.CPK'),

  ...byHand('evidence/wrong-forms.test.ts', 'ENGAGEMENT.LIMITS is 4.34 at worst', 'the joint of the demo', 'CHECK.MIN'),
  ...byHand('core/check.test.ts', '%j, review to %j', '', 'CHECK.CLEAR'),
  ...byHand('joint/variant.test.ts', 'the last list changes fastest', '', 'VARIANT.GRID'),
  ...byHand('joint/variant.test.ts', 'weights decide', '', 'VARIANT.RANK'),
  ...byHand('joint/variant.test.ts', 'better somewhere and nowhere worse', '', 'VARIANT.FRONT'),
  ...byHand('joint/d1.test.ts', 'ST2.9 × %s cone', 'the joint of the demo', 'JOINT.TABLE'),
  ...byHand('joint/joint.test.ts', 'one value for a table row', 'the joint of the demo', 'JOINT.VALUE'),
  ...byHand('joint/joint.test.ts', 'where nothing helps, it says what was tried', '', 'CHECK.JOINT'),
  ...byHand('joint/limits.test.ts', '$rule, $level, by $input', 'each rule at its limits, typed by hand', 'CHECK.JOINT'),
  ...byHand('joint/study/window.test.ts', '%s, its %s end', 'one rule solved for one input', 'JOINT.WINDOW'),
  ...anotherWay(
    'joint/study/window.test.ts',
    '%s on a grid',
    'ten grids of 10,000 joints, every number of ten drawn joints, stretches narrower than a step on grids of 100,000',
    'JOINT.WINDOW',
  ),
  ...anotherWay('joint/study/map.test.ts', 'margin over %s', 'JOINT.TABLE on every joint of five planes', 'JOINT.MAP'),
  ...byHand('joint/study/map.test.ts', 'numbers over a plane', 'the joint of the demo', 'JOINT.MAP'),
  ...byHand('joint/study/sensitivity.test.ts', '%s by %s', 'derivatives written down', 'JOINT.SENSITIVITY'),
  ...anotherWay('joint/study/sensitivity.test.ts', '%s by every input', 'differences of JOINT.VALUE', 'JOINT.SENSITIVITY'),
  ...identity('joint/study/simulate.test.ts', 'four links', 'the stack that the joint is reduced to, by STACK.SIMULATE', 'JOINT.SIMULATE'),
  ...only(
    'a share',
    anotherWay('joint/study/simulate.test.ts', 'one link', 'the cut normal distribution in closed form', 'JOINT.SIMULATE'),
  ),
  ...anotherWay('joint/study/wild.test.ts', 'a map over', 'JOINT.TABLE on drawn joints', 'JOINT.MAP'),
  ...anotherWay('joint/study/wild.test.ts', 'slopes are', 'differences of JOINT.VALUE on drawn joints', 'JOINT.SENSITIVITY'),
  ...anotherWay('joint/study/wild.test.ts', 'what is solved', 'put back into JOINT.VALUE, on drawn joints', 'JOINT.SOLVE'),
  ...byHand('joint/study/solve.test.ts', 'by hand: seat 2.5', 'the joint of the demo', 'JOINT.SOLVE'),
  ...anotherWay('joint/study/solve.test.ts', '%s for %s of %f', 'put back into JOINT.VALUE', 'JOINT.SOLVE'),
];
