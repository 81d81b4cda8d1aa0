// Words to choose from below the name of an input, where the tables hold them; a card or a screw of one's own may be typed as well.
import { MATERIAL_SYMBOLS } from '../core/material/material';
import { choicesOf } from '../core/read/accepts';
import { HEAD_WORDS } from '../core/screw/head';
import { parseSize } from '../core/screw/size';
import { familySizes } from '../core/screw/thread';
import { INPUTS } from './inputs';

const LISTED: Readonly<Record<string, () => readonly string[]>> = {
  screw: () => ['M3', 'ST2.9', '#4-40'].flatMap(one => familySizes(parseSize(one))),
  head: () => HEAD_WORDS,
  material: () => MATERIAL_SYMBOLS,
};

export function inputChoices(name: string): readonly string[] {
  const input = INPUTS.get(name);
  return LISTED[name]?.() ?? (input === undefined ? [] : choicesOf(input.param));
}
