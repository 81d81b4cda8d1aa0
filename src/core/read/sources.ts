// Arguments that read their source themselves: "M3 pan" for a head diameter, "ST2.9 ABS" for a hole, "ABS" for a strength.
// Which column is meant is fixed by the argument: the one on the safe side.
import { type Kind, NOTHING_READ, type TextSource } from '../card';
import type { Reading, TableValue } from '../../standards/table';
import { pilotHoleMm } from '../hole/hole';
import { clearanceHoleMm, FITS, type Fit, type HoleLimit } from '../screw/clearance';
import { headBehind, headDiameterReadings, headHeightReadings, parseHead, type Head, type HeadLimit } from '../screw/head';
import { lengthDeviation } from '../screw/length';
import { leadingSize, parseSize, type Size } from '../screw/size';
import { type End, majorReadings, pointMm, pointReadings, screwOf, type Screw } from '../screw/thread';
import { isMaterial, materialValue, ownCard, parseMaterial, safeValue, strengthWords, type Material } from '../material/material';
import { wrongInput } from '../refuse';
import { worthOf } from '../table';
import type { Deviation } from './deviation';
import { choice, deviation, named, numeric, ONE, putInQuotes } from './params';
import * as Q from './quantity';
import { readQuantity } from './read-quantity';

export const SIZE: Kind<Size> = named('screw size', 'M3', parseSize);
export const SCREW: Kind<Screw> = named('screw', 'M3', text => screwOf(parseSize(text)));
export const HEAD: Kind<Head> = named('head', 'pan', (text, preceding) => parseHead(text, preceding.get('size') as Size));
export const END: Kind<End> = choice('screw end', { cone: ['c', 'type c', 'pointed'], flat: ['f', 'type f', 'blunt'] });
export const FIT: Kind<Fit> = choice('fit', FITS);

const MATERIAL_EXAMPLE = '"ABS"';
export const MATERIAL: Kind<Material> = {
  ...ONE,
  is: 'material',
  example: 'ABS',
  noun: 'material',
  inQuotes: MATERIAL_EXAMPLE,
  shape: 'block',
  read(raw) {
    if (typeof raw === 'string') return parseMaterial(raw);
    if (Array.isArray(raw)) return twoColumns(raw as unknown[][]);
    throw wrongInput(putInQuotes(MATERIAL_EXAMPLE));
  },
};

function twoColumns(rows: readonly (readonly unknown[])[]): Material {
  if (rows[0]?.length !== 2) throw wrongInput('a material card is two columns: quantity and value');
  return ownCard(rows);
}

/** What was read, where it is one value as it stands in its table. */
const asItStands = ([first, ...more]: readonly Reading[]): TableValue | undefined =>
  more.length > 0 || first?.times !== undefined || first?.over !== undefined ? undefined : first;

const headed = (text: string, what: string): { size: Size; head: Head } | undefined => {
  const found = leadingSize(text);
  if (found === undefined) return undefined;
  const head = headBehind(found);
  if (head === undefined) throw wrongInput(`say the head too, "${found.size.text} pan", for its ${what}`);
  return { size: found.size, head };
};

/** A sum of table values that the text names, and which one where it is one. */
const fromTable = (words: string, readings: (text: string) => readonly Reading[] | undefined): TextSource<number> => ({
  words,
  read: text => {
    const found = readings(text);
    return found && worthOf(found);
  },
  tableValue: text => {
    const found = readings(text);
    return found && asItStands(found);
  },
});

export const headDiameter = (limit: HeadLimit): Kind<number> =>
  numeric(
    Q.LENGTH,
    fromTable(`screw and head, "M3 ${limit === 'sharp' ? 'countersunk' : 'pan'}": its ${limit} diameter`, text => {
      const found = headed(text, 'head diameter');
      return found && headDiameterReadings(found.size, found.head, limit);
    }),
  );

export const headHeight = (limit: HeadLimit): Kind<number> =>
  numeric(
    Q.LENGTH,
    fromTable(`screw and head, "M3 pan": its ${limit} height`, text => {
      const found = headed(text, 'head height');
      return found && headHeightReadings(found.size, found.head, limit);
    }),
  );

export type ScrewColumn = 'nominal' | 'max' | 'min';

export const screwDiameter = (column: ScrewColumn): Kind<number> =>
  numeric(
    Q.LENGTH,
    fromTable(`a screw, "M3": its ${column === 'nominal' ? 'nominal diameter' : `major ${column}`}`, text => {
      const found = leadingSize(text);
      if (found === undefined) return undefined;
      if (found.rest !== '') throw wrongInput(`give the screw alone, "${found.size.text}"`);
      screwOf(found.size);
      return majorReadings(found.size, column);
    }),
  );

/** A screw with a fit is a clearance hole; with a thread share or a material it is a pilot hole. */
export const hole = (limit: HoleLimit = 'nominal'): Kind<number> =>
  numeric(Q.LENGTH, {
    words:
      `a screw with a fit, "M3 ` +
      `medium"${limit === 'max' ? ' (largest hole)' : ''}, or with a thread share or material, "ST2.9 75 %", "ST2.9 ABS"`,
    read: (text, preceding) => {
      const found = leadingSize(text);
      if (found === undefined) return undefined;
      const { size, rest } = found;
      if (rest === '') throw wrongInput(`say the fit, "${size.text} medium", or the thread share, "${size.text} 75 %"`);
      if (isMaterial(rest)) return pilotHoleMm(screwOf(size), materialValue(parseMaterial(rest), 'thread share'));
      if (rest.endsWith('%')) return pilotHoleMm(screwOf(size), readQuantity(rest, Q.SHARE));
      return clearanceHoleMm(size, FIT.read(rest, preceding), limit);
    },
  });

export const point: Kind<number> = numeric(
  Q.LENGTH,
  fromTable('the screw with its end, "ST2.9 cone"', text => {
    const found = leadingSize(text);
    return found && pointReadings(found.size, endOf(found.rest));
  }),
);

const endOf = (text: string): End => (text === '' ? 'cone' : END.read(text, NOTHING_READ));

/** A length tolerance, and the screw that was named for it. */
export interface LengthDeviation extends Deviation {
  readonly named?: { readonly size: Size; readonly end: End };
}

/** A length tolerance; the screw with its end takes it from the table for the length given before. */
export const lengthTolerance: Kind<LengthDeviation> = deviation<LengthDeviation>({
  words: 'the screw with its end, "ST2.9 cone"',
  read: (text, preceding) => {
    const found = leadingSize(text);
    if (found === undefined) return undefined;
    const end = endOf(found.rest);
    return { ...lengthDeviation(found.size, preceding.get('length') as number, end), named: { size: found.size, end } };
  },
});

/** The point of the screw that the length tolerance names; none is counted where it names none. */
export const pointOfNamedMm = ({ named }: LengthDeviation): number => (named === undefined ? 0 : pointMm(named.size, named.end));

/** A number, or the value of a material for it. */
export const ofMaterial = (quantity: Q.Quantity, word: string): Kind<number> =>
  numeric(quantity, {
    words:
      `a material, "ABS" or your own two-column card: its ` +
      `${word}${word === 'strength' ? ' at yield, the low end of the family, conditioned where it takes up water' : ''}`,
    read: text => (isMaterial(text) ? safeValue(parseMaterial(text), word) : undefined),
    which: text => (word === 'strength' ? strengthWords(parseMaterial(text)) : undefined),
    range: rows => safeValue(twoColumns(rows), word),
  });
