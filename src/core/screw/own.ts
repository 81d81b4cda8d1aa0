// A screw of the user's own as text: "major 3.0/2.9; root 2.1/2.0; pitch 1.34; forming". Its numbers are a table of one row: what
// reads the tables of standards reads them too.
import type { Column, Reading, Table } from '../../standards/table';
import { tanDeg } from '../maths';
import { readDeviation, withUnitOf } from '../read/deviation';
import { ANGLE, LENGTH, type Quantity } from '../read/quantity';
import { readQuantity } from '../read/read-quantity';
import { type Refused, notInTable, quoted, wrongInput } from '../refuse';
import { columnOf, valueOrNone } from '../table';

export interface OwnScrew {
  readonly table: Table;
  readonly lengths: Table | undefined;
  /** Included angle; only a countersunk head has one. */
  readonly headAngleDeg: number | undefined;
  readonly kind: (typeof KINDS)[number] | undefined;
}

export const OWN = 'own screw';
export const GIVEN = 'given by you';

const KINDS = ['forming', 'cutting', 'machine'] as const;

interface OwnQuantity {
  readonly title: string;
  /** Columns: the largest and the least, the upper and the lower, or one. */
  readonly keys: readonly string[];
  readonly quantity: Quantity;
  readonly example: string;
}

const own = (title: string, keys: string, example: string, quantity: Quantity = LENGTH): OwnQuantity => ({
  title,
  keys: keys.split(' '),
  quantity,
  example,
});

const QUANTITIES: Readonly<Record<string, OwnQuantity>> = {
  major: own('major diameter d1', 'majorMax majorMin', '3.0/2.9'),
  root: own('root diameter d2', 'rootMax rootMin', '2.1/2.0'),
  pitch: own('pitch P', 'pitch', '1.34'),
  point: own('length without full thread y', 'point', '2'),
  flank: own('flank angle, half the thread angle', 'flank', '15', ANGLE),
  'head diameter': own('head diameter dk', 'dkMax dkMin', '5.6/5.3'),
  'head height': own('head height k', 'kMax kMin', '2.4/2.2'),
  'head angle': own('head angle (included)', 'headAngle', '90', ANGLE),
  lengths: own('lengths', 'lengths', '8 10 12 16'),
  'length tolerance': own('deviation of the length', 'lengthUpper lengthLower', '0.5'),
};
const WORDS = Object.keys(QUANTITIES);

/** How one is typed, with every quantity that a flat-seated head has. */
export const ownExample = (): string =>
  [...WORDS.filter(word => word !== 'head angle').map(word => `${word} ${QUANTITIES[word]?.example}`), KINDS[0]].join('; ');

const CARD = new RegExp(`^(?:${[...WORDS, ...KINDS].join('|')})(?![a-z])`, 'i');
/** What stands behind a whole card, a head or a fit, follows its kind: "… ; forming pan". */
const KIND = new RegExp(`^(${KINDS.join('|')})(?: (.+))?$`, 'i');

export const notOwn = (part: string): Refused =>
  wrongInput(
    `${quoted(part)} is not a quantity of an own screw; give ${WORDS.join(', ')}, and as the last word forming, cutting or machine`,
  );

const missing = (word: string, which = ''): Refused =>
  notInTable(`this own screw has no ${which}${word.replace(/^(major|root)$/, '$1 diameter')}: add ${word} ${QUANTITIES[word]?.example}`);

/** Where one of its numbers is read. Throws what to add where it was left out. */
export function ownReading({ table }: OwnScrew, key: string): Reading {
  if (columnOf(table, key) === undefined) {
    const word = WORDS.find(name => QUANTITIES[name]?.keys.includes(key)) ?? key;
    const hasOther = QUANTITIES[word]?.keys.some(other => columnOf(table, other) !== undefined);
    throw missing(word, hasOther === true ? 'least ' : '');
  }
  return { table, row: OWN, key };
}

export function ownLengths({ lengths }: OwnScrew): Table {
  if (lengths === undefined) throw missing('lengths');
  return lengths;
}

/** Of a countersunk head: its cone drawn on to the top face, from the major diameter, with the height that the standards give too. */
export function sharpReadings(screw: OwnScrew): Reading[] {
  if (screw.headAngleDeg === undefined) throw missing('head angle');
  return [ownReading(screw, 'majorMax'), { ...ownReading(screw, 'kMax'), times: 2 * tanDeg(screw.headAngleDeg / 2) }];
}

export function isOwnTapping({ kind }: OwnScrew): boolean {
  if (kind === undefined)
    throw notInTable('this own screw does not say how its thread is made: add forming, cutting or machine, as last word');
  return kind !== 'machine';
}

/** The flanks of M, UN, ST and # threads stand at 60°. */
export const flankDegOf = (screw: OwnScrew | undefined): number => (screw && valueOrNone(screw.table, OWN, 'flank')) ?? 30;

/** One value, or the largest and the least, from the text behind its word. */
function numbersOf(word: string, text: string): number[] {
  const { keys, quantity, example } = QUANTITIES[word] as OwnQuantity;
  const parts = text.split('/').map(part => part.trim());
  if (text === '' || parts.length > keys.length || parts.includes(''))
    throw wrongInput(`${word} is ${quoted(text)}; give ${word} ${example}${keys.length > 1 ? ', the largest first' : '; no fraction'}`);
  const last = parts[parts.length - 1] ?? '';
  const numbers = parts.map(part => readQuantity(withUnitOf(part, last), quantity));
  const [largest = 0, least = largest] = numbers;
  if (least > largest) throw wrongInput(`${word} is ${quoted(text)}; the largest comes first: ${word} ${last}/${parts[0]}`);
  if (least < 0 || (least === 0 && word !== 'point')) throw wrongInput(`${word} is ${quoted(text)}; it must be above 0`);
  return numbers;
}

function lengthsOf(text: string): number[] {
  // "8 10 12 mm" and "8 mm 10 mm"; a comma before a space parts too
  const parts = text
    .replace(/(\d)\s+(?=[^\d\s,])/g, '$1')
    .split(/,?\s+/)
    .filter(part => part !== '');
  const lengths = parts.map(part => readQuantity(part.includes('/') ? '' : withUnitOf(part, parts[parts.length - 1] ?? ''), LENGTH));
  if (lengths.length === 0 || Math.min(...lengths) <= 0)
    throw wrongInput(`lengths is ${quoted(text)}; give lengths 8 10 12 16, each above 0`);
  return [...new Set(lengths)].sort((a, b) => a - b);
}

const valuesOf = (word: string, text: string): number[] => {
  if (word === 'lengths') return lengthsOf(text);
  if (word !== 'length tolerance') return numbersOf(word, text);
  const { upperMm, lowerMm } = readDeviation(text);
  return [upperMm, lowerMm];
};

const tableOf = (text: string, columns: readonly Omit<Column, 'held'>[], rows: Table['rows']): Table => ({
  standard: OWN,
  edition: GIVEN,
  subject: text,
  table: 'its own numbers',
  columns: columns.map(column => ({ ...column, held: GIVEN })),
  rows,
});

const LIMITS = ['max', 'min'] as const;

/** An own screw and what stands behind it; nothing where the text does not begin like one. Throws Refused. */
export function ownScrew(text: string): { readonly own: OwnScrew; readonly rest: string } | undefined {
  if (!CARD.test(text)) return undefined;
  const parts = text
    .split(';')
    .map(part => part.trim())
    .filter(part => part !== '');
  const values = new Map<string, number[]>();
  const said: string[] = [];
  let kind: OwnScrew['kind'];
  let rest = '';
  parts.forEach((part, i) => {
    const isLast = i === parts.length - 1;
    const [, kindWord, behind = ''] = KIND.exec(part) ?? [];
    const lower = part.toLowerCase();
    const word = WORDS.find(name => lower === name || lower.startsWith(`${name} `));
    if (kindWord !== undefined && (isLast || behind === '')) {
      if (kind !== undefined) throw wrongInput('an own screw is forming, cutting or machine: give one of these words');
      kind = KINDS.find(name => name === kindWord.toLowerCase());
      rest = behind;
    } else if (word !== undefined) {
      if (values.has(word)) throw wrongInput(`${word} is given twice in an own screw`);
      values.set(word, valuesOf(word, part.slice(word.length).trim()));
    } else if (isLast) rest = part;
    else throw notOwn(part);
    if (part !== rest) said.push(behind === '' ? part : part.slice(0, -behind.length).trim());
  });
  const canonical = said.join('; ');
  const columns = [...values].flatMap(([word, numbers]) => {
    const { title, keys, quantity } = QUANTITIES[word] as OwnQuantity;
    const unit = quantity === ANGLE ? 'deg' : 'mm';
    const one = (key: string, i: number): Omit<Column, 'held'> =>
      keys.length === 1 ? { key, title, unit } : { key, title, unit, limit: LIMITS[i] ?? 'max' };
    return word === 'lengths' || word === 'head angle'
      ? []
      : keys.slice(0, numbers.length).map((key, i) => [one(key, i), numbers[i] ?? 0] as const);
  });
  const table = tableOf(
    canonical,
    columns.map(([column]) => column),
    [[OWN, ...columns.map(([, value]) => value)]],
  );
  const lengths = values.get('lengths');
  const found: OwnScrew = {
    table,
    lengths:
      lengths &&
      tableOf(
        `lengths of ${canonical}`,
        [{ key: 'length', title: 'length', unit: 'mm' }],
        lengths.map(length => [String(length), length]),
      ),
    headAngleDeg: values.get('head angle')?.[0],
    kind,
  };
  refuseImpossible(found);
  return { own: found, rest };
}

function refuseImpossible(screw: OwnScrew): void {
  const { table, headAngleDeg } = screw;
  const at = (key: string): number | undefined => valueOrNone(table, OWN, key);
  const refuse = (word: string, why: string): void => {
    throw wrongInput(`${word} of an own screw ${why}`);
  };
  const { majorMax, rootMax, dkMax, kMax } = { majorMax: at('majorMax'), rootMax: at('rootMax'), dkMax: at('dkMax'), kMax: at('kMax') };
  const crest = at('majorMin') ?? majorMax;
  if (rootMax !== undefined && crest !== undefined && rootMax >= crest)
    refuse('root', `is ${rootMax} mm; it must be below major, ${crest} mm`);
  if (dkMax !== undefined && majorMax !== undefined && dkMax <= majorMax)
    refuse('head diameter', `is ${dkMax} mm; it must be above major, ${majorMax} mm`);
  if ((at('flank') ?? 1) >= 90) refuse('flank', 'must be below 90°');
  if (headAngleDeg === undefined) return;
  if (headAngleDeg >= 180) refuse('head angle', 'must be below 180°');
  if (dkMax === undefined || majorMax === undefined || kMax === undefined) return;
  const sharp = majorMax + 2 * kMax * tanDeg(headAngleDeg / 2);
  if (dkMax > sharp + 1e-6)
    refuse(
      'head height',
      `is ${kMax} mm; its cone of ${headAngleDeg}° then ends at ${Math.round(100 * sharp) / 100} mm, below the head diameter`,
    );
}
