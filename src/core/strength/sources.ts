// What the estimates of strength may read: tapping threads, heads with a flat seat.
import type { Kind, TextSource } from '../card';
import { named, numeric } from '../read/params';
import { LENGTH } from '../read/quantity';
import { headDiameter } from '../read/sources';
import { wrongInput } from '../refuse';
import { headBehind, isCountersunk } from '../screw/head';
import { leadingSize, parseSize } from '../screw/size';
import { screwOf, type Screw } from '../screw/thread';

/** Refuses a machine thread: its V-flanks leave far less plastic in shear than the cylinder of the estimate. */
export function tappingScrew(screw: Screw): Screw {
  if (!screw.isTapping) {
    throw wrongInput(
      `${screw.size.text} is a machine thread; the sheared cylinder overstates what its V-thread holds in ` +
        `plastic (1.7 times for M3), so no estimate is given; test it, or use an insert with its maker's figure`,
    );
  }
  return screw;
}

export const TAPPING_SCREW: Kind<Screw> = named('screw', 'ST2.9', text => tappingScrew(screwOf(parseSize(text))));

const LEAST = headDiameter('min').from as TextSource<number>;

/** The smallest head diameter of the table; a countersunk head has no flat seat to press on. */
export const FLAT_HEAD_DIAMETER: Kind<number> = numeric(LENGTH, {
  ...LEAST,
  words: `${LEAST.words}; flat-seated heads only`,
  read(text, earlier) {
    const found = leadingSize(text);
    const head = found && headBehind(found);
    if (head !== undefined && isCountersunk(head)) {
      throw wrongInput('a countersunk head wedges its seat open; this holds for flat-seated heads only');
    }
    return LEAST.read(text, earlier);
  },
});
