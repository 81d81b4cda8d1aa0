// A countersunk screw as text brings its theoretical sharp diameter and its included angle.
import { DIN_7982_HEAD_ANGLE } from '../../standards/head-angles';
import type { Kind } from '../card';
import { fitting } from '../read/fitting';
import { headDiameter } from '../read/sources';
import { notInTable, wrongInput } from '../refuse';
import { parseHead } from '../screw/head';
import { leadingSize } from '../screw/size';
import { valueOf } from '../table';

export interface Cone {
  readonly sharpMm: number;
  /** Refused where the diameter is a number: it brings no angle. */
  readonly angleDeg: number;
}

const DIN_7982_DEG = valueOf(DIN_7982_HEAD_ANGLE, 'all', 'angle');
const sharpDiameter = headDiameter('sharp');

function angleOf(text: string): number | undefined {
  const found = leadingSize(text);
  if (found === undefined || found.rest === '') return undefined;
  if (/^din ?7982$/i.test(found.rest)) throw notInTable(`no head diameters of DIN 7982 are held; give the sharp diameter in mm and the angle, ${DIN_7982_DEG}`);
  const { angleDeg } = parseHead(found.rest, found.size);
  if (angleDeg === undefined) throw wrongInput('not a countersunk head');
  return angleDeg;
}

const cone: Kind<Cone> = {
  ...sharpDiameter,
  read(raw, place) {
    const own = typeof raw === 'string' ? angleOf(raw) : undefined;
    return {
      sharpMm: sharpDiameter.read(raw, place),
      get angleDeg() {
        if (own === undefined) throw wrongInput(`angle is needed where sharp_diameter names no screw: ISO heads have 90°, ASME 82°, DIN 7982 ${DIN_7982_DEG}°`, 'angle');
        return own;
      },
    };
  },
};

export const CONE: Kind<Cone> = fitting(cone, 'above 0 mm', ({ sharpMm }) => sharpMm > 0);
