// Numbers with the decimal sign of the host: what the pane shows beside the sheet reads as the sheet does.
import type { Cell } from '../core/kinds';
import { sentenceIn, shownCell } from '../help/shown-cell';
import { digits } from '../plain/digits';
import type { Signs } from '../sheet/signs';
import { lengthText } from './length-text';

export interface ShownNumbers {
  readonly digits: (value: number) => string;
  /** What a cell holds; a text as it stands there. */
  readonly cell: (value: Cell | null) => string;
  /** A sentence of ours with numbers in it. */
  readonly sentence: (text: string) => string;
  readonly length: (lengthMm: number, inch: boolean) => string;
}

export function numbersIn({ decimal }: Signs): ShownNumbers {
  const signed = (text: string): string => text.replaceAll('.', decimal);
  return {
    digits: value => signed(digits(value)),
    cell: value => (typeof value === 'number' ? signed(shownCell(value)) : shownCell(value)),
    sentence: text => sentenceIn(text, decimal),
    length: (lengthMm, inch) => signed(lengthText(lengthMm, inch)),
  };
}
