// Limits between arguments, as conditions on their references: what the readers of the core refuse, in the words of a spreadsheet.
import type { Card } from '../core/card';

/** The reference of a parameter, or of a part of it: `size.majorMaxMm`. */
export type Named = (name: string) => string;

const widened = (size: string, depth: string, draft: string, sign: '+' | '-'): string => `${size}${sign}2*${depth}*TAN(RADIANS(${draft}))`;

/** Of a result: one side at least, and the upper one above. */
const asLimits = (of: Named): readonly string[] => [
  `IF(AND(ISNUMBER(${of('lower')}),ISNUMBER(${of('upper')})),${of('upper')}>${of('lower')},OR(ISNUMBER(${of('lower')}),ISNUMBER(${of('upper')})))`,
];

const RELATIONS: Readonly<Record<string, (of: Named) => readonly string[]>> = {
  'BOSS.MASS': of => [
    `${of('hole')}<${of('od')}`,
    `${widened(of('hole'), of('hole_depth'), of('hole_draft'), '-')}>=0`,
    `${widened(of('hole'), of('hole_depth'), of('hole_draft'), '-')}<${widened(of('od'), of('hole_depth'), of('outside_draft'), '+')}`,
  ],
  'BOSS.TORSION': of => [`${of('hole')}<${of('od')}`],
  'BOSS.CONFLICT': of => [`${of('pilot')}<${of('size.majorMaxMm')}`],
  BEARING: of => [`${of('hole')}<${of('head_diameter')}`],
  'COOLING.TIME': of => [
    `${of('eject')}>${of('mould')}`,
    `${of('eject')}<${of('melt')}`,
    `IF(${of('criterion')}="mean",8/PI()^2,4/PI())*(${of('melt')}-${of('mould')})>${of('eject')}-${of('mould')}`,
  ],
  'HOOP.LIMIT': of => [`${of('od')}>${of('pin')}`],
  'HOOP.PUSH': of => [`${of('od')}>${of('pin')}`],
  'HOOP.STRESS': of => [`${of('od')}>${of('pin')}`],
  'LIP.SKIN': of => [`INT(${of('gaps')})=${of('gaps')}`],
  'PULLOUT.BOSS': of => [`${of('size.majorMaxMm')}<${of('od')}`],
  'RECESS.CONE': of => [`${of('sharp_diameter.sharpMm')}>0`, `${of('hole')}<${of('sharp_diameter.sharpMm')}`],
  'STACK.CPK': asLimits,
  'STACK.PPM': asLimits,
  'TORQUE.CLAMP': of => [`${of('hole')}<${of('head_diameter')}`],
  'TORQUE.SET': of => [`${of('strip')}>${of('drive')}`],
};

export const relations = ({ id }: Card, of: Named): readonly string[] => RELATIONS[id]?.(of) ?? [];
/** Parts of records that only a relation reads. */
export const partsRelated = ({ id }: Card): readonly string[] => (id === 'PULLOUT.BOSS' || id === 'BOSS.CONFLICT' ? ['majorMaxMm'] : []);
