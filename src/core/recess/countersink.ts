// A countersunk screw as text brings its theoretical sharp diameter and its included angle.
import { DIN_7982_HEAD_ANGLE } from '../../standards/head-angles';
import type { Kind } from '../card';
import { ONE } from '../read/params';
import { LENGTH } from '../read/quantity';
import { headDiameter } from '../read/sources';
import { notInTable, wrongInput } from '../refuse';
import { headBehind } from '../screw/head';
import { leadingSize } from '../screw/size';
import { valueOf } from '../table';

export interface Cone {
  readonly sharpMm: number;
  /** Nothing where the diameter is a number. */
  readonly angleDeg: number | undefined;
}

const DIN_7982_DEG = valueOf(DIN_7982_HEAD_ANGLE, 'all', 'angle');
const sharpDiameter = headDiameter('sharp');

function angleOf(text: string): number | undefined {
  const found = leadingSize(text);
  if (found === undefined) return undefined;
  if (/^din ?7982$/i.test(found.rest))
    throw notInTable(`no head diameters of DIN 7982 are held; give the sharp diameter in mm and the angle, ${DIN_7982_DEG}`);
  const head = headBehind(found);
  if (head === undefined) return undefined;
  if (head.angleDeg === undefined) throw wrongInput('not a countersunk head');
  return head.angleDeg;
}

export const CONE: Kind<Cone> = {
  ...ONE,
  is: 'cone',
  quantity: LENGTH,
  noun: LENGTH.noun,
  unit: LENGTH.unit,
  from: sharpDiameter.from,
  read(raw, earlier) {
    const angleDeg = typeof raw === 'string' ? angleOf(raw) : undefined;
    return { sharpMm: sharpDiameter.read(raw, earlier), angleDeg };
  },
};

/** The angle that the screw brings; a number brings none. */
export function ownAngleDeg({ angleDeg }: Cone): number {
  if (angleDeg === undefined)
    throw wrongInput(`needed where sharp_diameter names no screw: ISO heads have 90°, ASME 82°, DIN 7982 ${DIN_7982_DEG}°`);
  return angleDeg;
}
