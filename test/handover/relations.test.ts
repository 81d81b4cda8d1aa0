// How arguments must stand to each other: each relation of a card as the condition that a supplier's sheet gets.
import { describe, expect, test } from 'vitest';
import type { Card, Nature, Param, Term } from '../../src/core/card';
import { listLimits } from '../../src/handover/compile/inputs';
import { partsRelated, relations } from '../../src/handover/compile/relations';
import { formNamed } from '../../src/plain/forms';
import { atom, type Ref } from '../../src/plain/spreadsheet';
import { CARDS } from '../../src/registry';

const cards = [...CARDS.values()];
const related = cards.flatMap(({ id, params }) =>
  params.flatMap(({ name, relation }) => (relation === undefined ? [] : [{ id, name, relation }])),
);

const PARTS: Partial<Record<Nature['is'], readonly string[]>> = {
  screw: ['majorMaxMm'],
  cone: ['sharpMm'],
  deviation: ['upperMm', 'lowerMm'],
};

/** Each argument stands in a cell of its name, parts of records as `size_majorMaxMm`, entries of lists as `layers_1`. */
function refOf(name: string, kind: Nature): Ref {
  const listed = kind.is === 'list' ? kind.of : kind;
  const cellOrCells = (part: string): Ref =>
    kind.is === 'list' ? { items: [1, 2].map(i => atom(`${name}_${i}${part}`)) } : atom(`${name}${part}`);
  const parts = PARTS[listed.is];
  return parts === undefined ? cellOrCells('') : { parts: Object.fromEntries(parts.map(part => [part, cellOrCells(`_${part}`)])) };
}
const refs = ({ params }: Card): Ref[] => params.map(({ name, kind }) => refOf(name, kind));
const conditions = (id: string): string[] => relations(CARDS.get(id) as Card, refs(CARDS.get(id) as Card));

/** A hole in its boss: it leaves a wall at both ends, is open at its bottom and does not come out of the side there. */
const HOLE_IN_BOSS = [
  'hole<od',
  'hole-2*hole_depth*TAN(RADIANS(hole_draft))>0',
  'hole-2*hole_depth*TAN(RADIANS(hole_draft))<od+2*hole_depth*TAN(RADIANS(outside_draft))',
];

/** A hook that tapers, r its tip ÷ its root: how much more it bends than a straight one, in a series near r = 1, and its strain where it is largest ÷ at the root. */
const R = '(tip_thickness/thickness)';
const Z = `((1-${R})/(1+${R}))`;
const BENDS = `(0.75*(2/(1+${R}))*(1+(2/(1+${R}))^2*IF(ABS(${Z})<0.03,1/3+${Z}^2/5+${Z}^4/7+${Z}^6/9,(-LN(${R})/2-${Z})/${Z}^3)))`;
const PEAK = `((1-IF(${R}<0.5,length*(1-2*${R})/(1-${R}),0)/length)/MIN(1,2*${R})^2)`;
const HOOK = ['0.3333333333333333*length>=deflection', `0.1>=1.5*thickness*deflection/length^2*${PEAK}/${BENDS}`];
/** F·L³/(48·E·I) of at most a tenth of the span; moment ÷ (E·section modulus) of at most a tenth, in 1e-6. */
const STRIP = [
  '0.1*span>=force*span^3/(IF(ends="clamped",192,48)*modulus*(width*thickness^3/12))',
  '100000>=1000000*(force*span/IF(ends="clamped",8,4))/(modulus*(width*thickness^2/6))',
];

/** Written by hand, from what each function refuses. */
const WRITTEN: Readonly<Record<string, readonly string[]>> = {
  BEARING: ['hole<head_diameter'],
  // the published numbers end there
  'BOARD.FREQUENCY': ['2.5>=IF(edges="corners",MAX(length,width)/MIN(length,width),1)'],
  // the largest board goes into the smallest pocket
  'BOARD.GAP': ['((inside+inside_tol_lowerMm+2*height*TAN(RADIANS(draft)))-(board+board_tol_upperMm))/2>=0'],
  // the board slips off the boss where its play on the sleeve is more than the ring that holds it
  'BOARD.HOLD': ['board_hole>=sleeve', '((boss_od-board_hole)/2)-((board_hole-sleeve)/2+shift)>=0'],
  'BOARD.REACH': ['hole>=screw'],
  'BOARD.SAG': STRIP,
  'BOARD.SLEEVE': ['hole>=sleeve', '(hole-sleeve)/2-shift>=0'],
  'BOARD.STRAIN': STRIP,
  'BOSS.CIRCLE': ['ring_depth<wall'],
  // the boss touches neither wall nor arc at its free end
  'BOSS.CORNER': [
    '2*x>od',
    '2*y>od',
    '2*IF(AND(x<corner_radius,y<corner_radius),corner_radius-SQRT((corner_radius-x)^2+(corner_radius-y)^2),IF(x<y,x,y))>od',
  ],
  'BOSS.CONFLICT': ['pilot<size_majorMaxMm'],
  'BOSS.ENDS': HOLE_IN_BOSS,
  'BOSS.MASS': HOLE_IN_BOSS,
  'BOSS.TORSION': ['hole<od'],
  'BOSS.WALL': HOLE_IN_BOSS,
  'CLAMP.RELAX': ['modulus_start>=modulus_end'],
  'COOLING.TIME': ['eject>mould', 'eject<melt', 'IF(criterion="centre",4/PI(),8/PI()^2)*(melt-mould)>eject-mould'],
  // a feature of no size is drafted away
  'DRAFT.SIZE': ['IF(direction="grows",size+2*distance*TAN(RADIANS(draft)),size-2*distance*TAN(RADIANS(draft)))>0'],
  'DRAFT.TEXTURE': ['base+per_step*texture_depth/0.025<90'],
  // each layer at its least
  'ENGAGEMENT.LIMITS': ['layers_1+layers_2+tolerances_1_lowerMm+tolerances_2_lowerMm>=0'],
  'GRIP.LIMITS': ['layers_1+layers_2+tolerances_1_lowerMm+tolerances_2_lowerMm>=0'],
  'HOLE.AT': ['mouth-2*depth*TAN(RADIANS(draft))>0'],
  // the tolerance is that of the depth: the hole that comes out shallowest must still reach
  'HOLE.DEPTH': ['penetration_max+bottom_gap-depth_tol_lowerMm>=0'],
  'HOLE.FLOOR': ['wall+boss_height-hole_depth>=0'],
  'HOLE.THREAD.SHARE': ['size_majorMaxMm>=hole'],
  'HOLE.TIGHT': ['mouth-2*depth*TAN(RADIANS(draft))>0'],
  // interference of a rigid pin in a ring after Lamé: stress·pin·(k + poisson)/(modulus·k), k = (od² + pin²)/(od² − pin²);
  // more than a tenth of the pin is refused
  'HOOP.LIMIT': ['od>pin', '0.1*pin>=stress*pin*(((od^2+pin^2)/(od^2-pin^2))+poisson)/(modulus*((od^2+pin^2)/(od^2-pin^2)))'],
  'HOOP.PUSH': ['0.1*pin>=interference', 'od>pin'],
  'HOOP.STRESS': ['0.1*pin>=interference', 'od>pin'],
  // a strain below 0 is a loose insert; more than a tenth is refused
  'INSERT.STRAIN': [
    '(expansion-expansion_insert)*0.000001*ABS(temperature_change)+shrinkage>=0',
    '0.1>=(expansion-expansion_insert)*0.000001*ABS(temperature_change)+shrinkage',
  ],
  'LIP.SKIN': ['INT(gaps)=gaps', 'wall-lip-gaps*clearance>0'],
  PENETRATION: ['length-(grip_1+grip_2)>=0'],
  // 8·p·L⁴/(π·E·d³) of at most a tenth of the length
  'PIN.DEFLECTION': ['0.1*length>=8*pressure_difference*length^4/(PI()*modulus*diameter^3)'],
  // plays of at most a fifth of the distance
  'PATTERN.TURN': ['distance-5*play_round>=5*play_slot'],
  'PULLOUT.BOSS': ['size_majorMaxMm<od'],
  'RECESS.CONE': ['sharp_diameter_sharpMm>0', 'hole<sharp_diameter_sharpMm'],
  'RECESS.DEPTH': ['board_plane>=seat'],
  'RECESS.FLOAT': ['hole>=screw'],
  'RECESS.SEAT': ['board_plane>=depth'],
  // q·L⁴/(384·E·I), five times that between simple ends, of at most a tenth of the pitch
  'RIM.PITCH': ['0.1*SQRT(SQRT(384*modulus*second_moment*sag/(IF(ends="clamped",1,5)*line_load)))>=sag'],
  'RIM.SAG': ['0.1*pitch>=IF(ends="clamped",1,5)*line_load*pitch^4/(384*modulus*second_moment)'],
  'SCREW.BOTTOM': ['layers_1+layers_2+tolerances_1_lowerMm+tolerances_2_lowerMm>=0'],
  'SNAP.DEFLECTION': [`0.3333333333333333*length>=strain*length^2/(1.5*thickness)*${BENDS}/${PEAK}`],
  'SNAP.FORCE': HOOK,
  // friction takes all of the ramp
  'SNAP.MATING': ['1-friction*TAN(RADIANS(angle))>1E-9'],
  'SNAP.STRAIN': HOOK,
  'SEAL.FILL': [
    'cord_tol_lowerMm>0-cord',
    'width_tol_lowerMm>0-groove_width',
    'depth_tol_lowerMm>0-groove_depth',
    'PI()*(cord+cord_tol_upperMm)^2/(4*(groove_width+width_tol_lowerMm)*(groove_depth+depth_tol_lowerMm))<1',
  ],
  // the thinnest cord in the deepest groove at the widest gap still touches
  'SEAL.SQUEEZE': [
    'cord_tol_lowerMm>0-cord',
    'depth_tol_lowerMm>0-groove_depth',
    '1-(groove_depth+depth_tol_upperMm+MAX(0,gap+gap_tol_upperMm))*SQRT(1+stretch)/(cord+cord_tol_lowerMm)>=0',
  ],
  'SCREW.LENGTH.PICK': ['layers_1+layers_2+tolerances_1_lowerMm+tolerances_2_lowerMm>=0'],
  'SCREW.LENGTH.TABLE': ['layers_1+layers_2+tolerances_1_lowerMm+tolerances_2_lowerMm>=0'],
  'SEAL.STRETCH': ['groove_inside>=ring_inside'],
  'STACK.CPK': ['IF(AND(ISNUMBER(lower),ISNUMBER(upper)),upper>lower,OR(ISNUMBER(lower),ISNUMBER(upper)))'],
  'STACK.PPM': ['IF(AND(ISNUMBER(lower),ISNUMBER(upper)),upper>lower,OR(ISNUMBER(lower),ISNUMBER(upper)))'],
  'TORQUE.CLAMP': ['hole<head_diameter'],
  'TORQUE.SET': ['strip>drive'],
};

describe('conditions of a call', () => {
  test.each(Object.entries(WRITTEN))('%s', (id, written) => expect(conditions(id)).toEqual(written));

  test('every function with a relation that can be live is among them', () => {
    const live = related.map(({ id }) => id).filter(id => CARDS.get(id)?.notLive === undefined);
    expect(live.length).toBeGreaterThan(35);
    expect(live.filter(id => WRITTEN[id] === undefined)).toEqual([]);
  });

  test('parts that only a relation reads are asked for', () => {
    expect(partsRelated(CARDS.get('PULLOUT.BOSS') as Card)).toEqual(['majorMaxMm']);
    expect(partsRelated(CARDS.get('BOSS.CONFLICT') as Card)).toEqual(['majorMaxMm']);
    expect(partsRelated(CARDS.get('BOSS.TORSION') as Card)).toEqual([]);
  });
});

describe('a formula in a relation', () => {
  const formulas = (term: Term): Readonly<Record<string, unknown>>[] =>
    typeof term === 'number' || typeof term === 'string'
      ? []
      : 'formula' in term
        ? [term.formula]
        : [...formulas(term[1]), ...formulas(term[2])];
  const named = related
    .flatMap(({ relation }) => ('holds' in relation ? relation.holds : []))
    .flatMap(([, left, right]) => [...formulas(left), ...formulas(right)]);

  test('stands under its own name and has a plain form', () => {
    expect(named.length).toBeGreaterThan(3);
    for (const formula of named) {
      const [[name, called] = ['', undefined], ...others] = Object.entries(formula);
      expect(others).toEqual([]);
      expect((called as { name: string } | undefined)?.name).toBe(name);
      expect(formNamed(name), name).toBeDefined();
    }
  });
});

describe('limits of each entry of a list', () => {
  const limitsOf = (id: string, name: string): unknown => listLimits(CARDS.get(id)?.params.find(param => param.name === name) as Param);

  test('are those of its kind', () => {
    // a layer may be nothing: a zero with its unit is a zero everywhere
    expect(limitsOf('GRIP', 'layers')).toEqual({ atLeast: 0 });
    expect(limitsOf('STACK.NOMINAL', 'values')).toBeUndefined();
    expect(limitsOf('BOSS.OD', 'hole')).toBeUndefined();
  });

  test('of a tolerance: above 0, as a bare 0 is a blank', () => expect(limitsOf('STACK.WORST', 'tolerances')).toEqual({ above: 0 }));
});
