// Heads: a standard or a trade word, resolved by the family of the size.
import { ASME_B18_6_3_FILLISTER_HEADS } from '../../standards/asme-b18-6-3-fillister-heads';
import { ASME_B18_6_3_FLAT_HEADS } from '../../standards/asme-b18-6-3-flat-heads';
import { ASME_B18_6_3_OVAL_HEADS } from '../../standards/asme-b18-6-3-oval-heads';
import { ASME_B18_6_3_PAN_HEADS } from '../../standards/asme-b18-6-3-pan-heads';
import { ASME_B18_6_3_ROUND_HEADS } from '../../standards/asme-b18-6-3-round-heads';
import { ASME_B18_6_3_SLOTTED_PAN_HEADS } from '../../standards/asme-b18-6-3-slotted-pan-heads';
import { ASME_B18_6_3_HEAD_ANGLE, ISO_7721_1_HEAD_ANGLE } from '../../standards/head-angles';
import { DIN_7981_PAN_HEADS } from '../../standards/din7981-pan-heads';
import { DIN_7991_COUNTERSUNK_HEADS } from '../../standards/din7991-countersunk-heads';
import { ISO_10642_COUNTERSUNK_HEADS } from '../../standards/iso10642-countersunk-heads';
import { ISO_1207_CHEESE_HEADS } from '../../standards/iso1207-cheese-heads';
import { ISO_14583_PAN_HEADS } from '../../standards/iso14583-pan-heads';
import { ISO_14585_PAN_HEADS } from '../../standards/iso14585-pan-heads';
import { ISO_1580_SLOTTED_PAN_HEADS } from '../../standards/iso1580-slotted-pan-heads';
import { ISO_2009_COUNTERSUNK_HEADS } from '../../standards/iso2009-countersunk-heads';
import { ISO_4762_SOCKET_HEADS } from '../../standards/iso4762-socket-heads';
import { ISO_7045_PAN_HEADS } from '../../standards/iso7045-pan-heads';
import { ISO_7046_1_COUNTERSUNK_HEADS } from '../../standards/iso7046-1-countersunk-heads';
import { ISO_7046_2_COUNTERSUNK_HEADS } from '../../standards/iso7046-2-countersunk-heads';
import { ISO_7047_RAISED_COUNTERSUNK_HEADS } from '../../standards/iso7047-raised-countersunk-heads';
import { ISO_7049_PAN_HEADS } from '../../standards/iso7049-pan-heads';
import { ISO_7050_COUNTERSUNK_HEADS } from '../../standards/iso7050-countersunk-heads';
import { ISO_7051_RAISED_COUNTERSUNK_HEADS } from '../../standards/iso7051-raised-countersunk-heads';
import { ISO_7380_1_BUTTON_HEADS } from '../../standards/iso7380-1-button-heads';
import type { Reading, Table } from '../../standards/table';
import { notInTable, quoted, wrongInput } from '../refuse';
import { columnOf, valueOf, valueOrNone, worthOf } from '../table';
import { GIVEN, OWN, ownReading, sharpReadings, type OwnScrew } from './own';
import type { Leading, Size } from './size';

type SizeFamily = 'M' | 'ST' | '#';
type Style = 'flat-seated' | 'countersunk' | 'raised countersunk';

export interface Head {
  readonly table: Table;
  readonly style: Style;
  /** Included angle of a countersunk head. */
  readonly angleDeg?: number;
  /** The table's head height has the raised part in it. */
  readonly heightIsTotal?: boolean;
  /** How an own screw's head is drawn. */
  readonly word?: string;
}

const ISO_DEG = valueOf(ISO_7721_1_HEAD_ANGLE, 'all', 'angle');
const ASME_DEG = valueOf(ASME_B18_6_3_HEAD_ANGLE, 'all', 'angle');

const HEADS: readonly (Head & { readonly family: SizeFamily; readonly words?: readonly string[] })[] = [
  { family: 'M', table: ISO_7045_PAN_HEADS, style: 'flat-seated', words: ['pan'] },
  { family: 'M', table: ISO_1580_SLOTTED_PAN_HEADS, style: 'flat-seated', words: ['slotted pan'] },
  { family: 'M', table: ISO_14583_PAN_HEADS, style: 'flat-seated', words: ['hexalobular pan'] },
  { family: 'M', table: ISO_1207_CHEESE_HEADS, style: 'flat-seated', words: ['cheese'] },
  { family: 'M', table: ISO_4762_SOCKET_HEADS, style: 'flat-seated', words: ['socket cap'] },
  { family: 'M', table: ISO_7380_1_BUTTON_HEADS, style: 'flat-seated', words: ['button'] },
  { family: 'M', table: ISO_7046_1_COUNTERSUNK_HEADS, style: 'countersunk', angleDeg: ISO_DEG, words: ['countersunk', 'flat'] },
  { family: 'M', table: ISO_7046_2_COUNTERSUNK_HEADS, style: 'countersunk', angleDeg: ISO_DEG },
  { family: 'M', table: ISO_2009_COUNTERSUNK_HEADS, style: 'countersunk', angleDeg: ISO_DEG },
  { family: 'M', table: ISO_10642_COUNTERSUNK_HEADS, style: 'countersunk', angleDeg: ISO_DEG },
  { family: 'M', table: DIN_7991_COUNTERSUNK_HEADS, style: 'countersunk', angleDeg: ISO_DEG },
  {
    family: 'M',
    table: ISO_7047_RAISED_COUNTERSUNK_HEADS,
    style: 'raised countersunk',
    angleDeg: ISO_DEG,
    words: ['raised countersunk', 'oval'],
  },
  { family: 'ST', table: ISO_7049_PAN_HEADS, style: 'flat-seated', words: ['pan'] },
  { family: 'ST', table: ISO_14585_PAN_HEADS, style: 'flat-seated', words: ['hexalobular pan'] },
  { family: 'ST', table: DIN_7981_PAN_HEADS, style: 'flat-seated' },
  { family: 'ST', table: ISO_7050_COUNTERSUNK_HEADS, style: 'countersunk', angleDeg: ISO_DEG, words: ['countersunk', 'flat'] },
  {
    family: 'ST',
    table: ISO_7051_RAISED_COUNTERSUNK_HEADS,
    style: 'raised countersunk',
    angleDeg: ISO_DEG,
    words: ['raised countersunk', 'oval'],
  },
  { family: '#', table: ASME_B18_6_3_PAN_HEADS, style: 'flat-seated', words: ['pan'] },
  { family: '#', table: ASME_B18_6_3_SLOTTED_PAN_HEADS, style: 'flat-seated', words: ['slotted pan'] },
  { family: '#', table: ASME_B18_6_3_FILLISTER_HEADS, style: 'flat-seated', words: ['fillister'] },
  { family: '#', table: ASME_B18_6_3_ROUND_HEADS, style: 'flat-seated', words: ['round'] },
  { family: '#', table: ASME_B18_6_3_FLAT_HEADS, style: 'countersunk', angleDeg: ASME_DEG, words: ['countersunk', 'flat'] },
  {
    family: '#',
    table: ASME_B18_6_3_OVAL_HEADS,
    style: 'raised countersunk',
    angleDeg: ASME_DEG,
    heightIsTotal: true,
    words: ['raised countersunk', 'oval'],
  },
];

const headFamily = (size: Size): SizeFamily => (size.family === 'M' || size.family === 'ST' ? size.family : '#');

const plainText = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/[\s\u00a0]+/g, ' ')
    .replace(/ ?head$/, '');
const tight = (text: string): string => text.toLowerCase().replace(' ', '');
const isCalled = (head: (typeof HEADS)[number], word: string): boolean =>
  head.words?.includes(word) === true || tight(head.table.standard) === tight(word);

/** The head that an own screw brings itself. */
const ownHead = ({ table, headAngleDeg }: OwnScrew, word = ''): Head =>
  headAngleDeg === undefined ? { table, style: 'flat-seated', word } : { table, style: 'countersunk', angleDeg: headAngleDeg, word };

/** Any trade word that fits the head angle, or the lack of one. */
function parseOwnHead(own: OwnScrew, word: string, given: string): Head {
  const head = ownHead(own, word);
  const styles = HEADS.filter(({ words }) => words?.includes(word)).map(({ style }) => style);
  if (styles.includes(head.style)) return head;
  const offered = HEADS.filter(({ style }) => style === head.style).flatMap(({ words }) => words ?? []);
  throw wrongInput(
    `${quoted(given)} is not a head for an own screw with${own.headAngleDeg === undefined ? 'out' : ''} a head angle; say ` +
      [...new Set(offered)].join(', '),
  );
}

/** The head behind a size; of an own screw alone its own. */
export const headBehind = ({ size, rest }: Leading): Head | undefined =>
  rest !== '' ? parseHead(rest, size) : size.own && ownHead(size.own);

/** Of a joint whose head is left out. */
export function headOfOwn({ own }: Size): Head {
  if (own === undefined) throw wrongInput('put the name in quotes, "pan"');
  ownReading(own, 'dkMax');
  ownReading(own, 'kMax');
  return ownHead(own);
}

/** One name of each head, whatever the screw. */
export const HEAD_WORDS: readonly string[] = [...new Set(HEADS.map(head => head.words?.[0] ?? head.table.standard))];

export function parseHead(text: string, size: Size): Head {
  const word = plainText(text);
  if (size.own !== undefined) return parseOwnHead(size.own, word, text);
  const mine = HEADS.filter(head => head.family === headFamily(size));
  const found = mine.find(head => isCalled(head, word));
  if (found !== undefined) return found;
  const offered = mine.map(head => head.words?.[0] ?? head.table.standard).join(', ');
  if (HEADS.some(head => isCalled(head, word))) {
    throw notInTable(`head ${quoted(text)} is not held for ${size.text}; held are ${offered}`);
  }
  throw wrongInput(`${quoted(text)} is not a head for ${size.text}; say ${offered}`);
}

export const HEAD_LIMITS = ['max', 'min', 'nominal', 'sharp'] as const;
export type HeadLimit = (typeof HEAD_LIMITS)[number];

export const DIAMETER_KEYS: Readonly<Record<HeadLimit, string>> = { max: 'dkMax', min: 'dkMin', nominal: 'dkNominal', sharp: 'dkSharp' };
export const HEIGHT_KEYS: Readonly<Record<HeadLimit, string>> = { max: 'kMax', min: 'kMin', nominal: 'kNominal', sharp: 'kSharp' };

function reading(head: Head, size: Size, keys: Readonly<Record<HeadLimit, string>>, limit: HeadLimit, what: string): Reading {
  if (size.own !== undefined) {
    if (limit === 'max' || limit === 'min') return ownReading(size.own, keys[limit]);
    throw notInTable(`an ${OWN} has no ${limit} ${what}; ${GIVEN} are max and min`);
  }
  if (columnOf(head.table, keys[limit]) === undefined) {
    const held = HEAD_LIMITS.filter(other => columnOf(head.table, keys[other]) !== undefined);
    throw notInTable(`${head.table.standard} has no ${limit} ${what} here; held are ${held.join(', ')}`);
  }
  return { table: head.table, row: size.gauge, key: keys[limit] };
}

/**
 * Where the head diameter d_k is read, mm.
 * size of the screw by name; head standard or trade word; limit max, min, nominal or sharp.
 * SCREW.HEAD.DIAMETER: a head that is not held for the size, or a limit that its table has not, is refused.
 * Source: ISO 7045, 14583, 1580, 1207, 4762, 7380-1, 7046, 7047, 7049, 14585, 7050, 7051; DIN 7981;
 * ASME B18.6.3 (read in secondary copies; each value says how in SCREW.CARD).
 */
export function headDiameterReadings(size: Size, head: Head, limit: HeadLimit): Reading[] {
  if (size.own !== undefined && limit === 'sharp') return sharpReadings(size.own);
  return [reading(head, size, DIAMETER_KEYS, limit, 'head diameter')];
}

/**
 * Where the head height k is read, mm; of a raised countersunk head the whole of it, with the raised part where that stands apart.
 * size of the screw by name; head standard or trade word; limit max, min, nominal or sharp.
 * SCREW.HEAD.HEIGHT: a head that is not held for the size, or a limit that its table has not, is refused.
 * Source: ISO 7045, 14583, 1580, 1207, 4762, 7380-1, 7046, 7047, 7049, 14585, 7050, 7051; DIN 7981;
 * ASME B18.6.3 (read in secondary copies; each value says how in SCREW.CARD).
 */
export function headHeightReadings(size: Size, head: Head, limit: HeadLimit): Reading[] {
  const height = reading(head, size, HEIGHT_KEYS, limit, 'head height');
  if (head.style !== 'raised countersunk' || head.heightIsTotal === true) return [height];
  raisedPartReadings(size, head);
  return [height, { ...height, key: 'fApprox' }];
}

export const headDiameterMm = (size: Size, head: Head, limit: HeadLimit): number => worthOf(headDiameterReadings(size, head, limit));
export const headHeightMm = (size: Size, head: Head, limit: HeadLimit): number => worthOf(headHeightReadings(size, head, limit));

/** What a raised countersunk head has above its edge. */
export function raisedPartReadings(size: Size, head: Head): Reading[] {
  const of = (key: string): Reading => ({ table: head.table, row: size.gauge, key });
  if (valueOrNone(head.table, size.gauge, 'coneMax') !== undefined) return [of('kMax'), { ...of('coneMax'), times: -1 }];
  if (valueOrNone(head.table, size.gauge, 'fApprox') !== undefined) return [of('fApprox')];
  throw notInTable(`the raised part of the head is not held for ${head.table.standard}; give the whole head height in mm`);
}

export const isFlatSeated = (head: Head): boolean => head.style === 'flat-seated';
export const isCountersunk = (head: Head): boolean => !isFlatSeated(head);
export const isRaised = (head: Head): boolean => head.style === 'raised countersunk';
