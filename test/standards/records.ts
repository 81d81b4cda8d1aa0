// What the collected records say of every table, put together without the project's tables: numbers, units, limits, the order of the rows,
// and in how many copies each was read. The tables were copied from the same records, so this finds a slip of copying and every later
// change, and is no second look at a standard. Typed by hand here, from the notes of the records and the reference beside them: how editions
// and numbers of tables are worded, "read under …" and "computed from …", and what has no record (each named where it stands).
import type { Table } from '../../src/standards/table';
import { linesOf, materialLines, type MaterialLine } from './lines';

type Side = 'max' | 'min' | 'nominal';
type Limit = Side | 'sharp' | 'approx' | undefined;

interface RecordOfValue {
  readonly standard: string;
  readonly edition: string;
  readonly table: string;
  readonly size: string;
  readonly quantity: string;
  readonly unit: string;
  readonly max?: number;
  readonly min?: number;
  readonly nominal?: number;
  readonly independent_texts: number;
  readonly confirmation: 'direct' | 'equivalent_standard' | 'computed' | 'memory_crosschecked' | 'none';
  readonly table_from_memory: boolean;
  readonly edition_from_memory: boolean;
  readonly note?: string;
}

type Band = readonly [over: number, upTo: number];
type Row = readonly (number | null)[];
interface Range {
  readonly min: number;
  readonly max: number;
  readonly typ: number;
}
interface MaterialRecord {
  readonly strength_kind: string;
  readonly density_g_cm3: Range;
  readonly mould_shrinkage_pct: Range;
  readonly melt_temp_C: Range;
  readonly mould_temp_C: Range;
  readonly ejection_temp_C: Range;
  readonly eff_thermal_diffusivity_mm2_s: Range;
  readonly tensile_strength_MPa: Range;
  readonly tensile_modulus_GPa: Range;
  readonly strain_at_yield_or_break_pct: Range;
  readonly 'clte_1e-6_per_K': Range;
}

export interface Records {
  readonly fasteners: readonly RecordOfValue[];
  readonly nuts: {
    readonly standard: string;
    readonly edition: string;
    readonly unit: string;
    readonly columns: readonly string[];
    readonly 'how held': string;
    readonly rows: Readonly<Record<string, readonly number[]>>;
  };
  readonly tolerance: {
    readonly iso286_1: { readonly ranges_over_upto_mm: readonly Band[]; readonly grades: Readonly<Record<string, Row>> };
    readonly iso2768_1_linear: { readonly ranges: readonly Band[]; readonly f: Row; readonly m: Row; readonly c: Row; readonly v: Row };
    readonly din16742_iso20457: { readonly ranges_over_upto_mm: readonly Band[]; readonly TG6_W: Row; readonly TG6_NW: Row };
    readonly din16901_general: { readonly ranges_over_upto_mm: readonly Band[]; readonly '130_A': Row; readonly '130_B': Row };
    readonly materials: Readonly<Record<string, MaterialRecord>>;
  };
}

const MEMORY = 'from memory';
const CHECKED = 'from memory, cross-checked';
const copies = (count: number): string => (count === 1 ? 'read in 1 secondary copy' : `read in ${count} secondary copies`);

/** How a record is held; what it was read under, or computed from, stands in its note. */
function heldBy({ confirmation, independent_texts, quantity, standard }: RecordOfValue, words?: string): string {
  if (confirmation === 'direct') return copies(independent_texts);
  if (confirmation === 'none') return MEMORY;
  if (confirmation === 'memory_crosschecked') return CHECKED;
  if (words === undefined) throw new Error(`${standard} ${quantity}: ${confirmation} without words`);
  return words;
}

interface Value {
  readonly value: number | null;
  readonly held: string;
}
interface Wanted {
  readonly key: string;
  readonly limit: Limit;
  readonly unit: string;
  readonly rows: ReadonlyMap<string, Value>;
}
interface Head {
  readonly standard: string;
  readonly edition: string;
  readonly table: string;
}

/** Rows in the order of the first column; a row without a value in a column is a gap. */
function put(head: Head, columns: readonly Wanted[]): Table {
  const rows = [...(columns[0]?.rows.keys() ?? [])];
  for (const { key, rows: own } of columns)
    for (const row of own.keys()) if (!rows.includes(row)) throw new Error(`${head.standard}: ${row} is in ${key} only`);
  return {
    ...head,
    subject: '',
    columns: columns.map(({ key, limit, unit }) => ({ key, title: '', unit, held: '', ...(limit === undefined ? {} : { limit }) })),
    rows: rows.map(row => [row, ...columns.map(({ rows: own }) => own.get(row)?.value ?? null)]),
    exceptions: columns.flatMap(({ key, rows: own }) => [...own].map(([row, { held }]) => ({ row, key, held }))),
  };
}

const years = (text: string): string[] => text.match(/(?<!ISO |\d)(19|20)\d\d/g) ?? [];

function reader(all: readonly RecordOfValue[]) {
  const find = (standard: string, quantity: string): readonly RecordOfValue[] => {
    const found = all.filter(record => record.standard === standard && record.quantity === quantity);
    if (found.length === 0) throw new Error(`no record of ${standard}: ${quantity}`);
    return found;
  };

  /** A column of the records: key, quantity, side, and the words for what was not read directly. */
  const column = (
    standard: string,
    key: string,
    quantity: string,
    side: Side,
    { words, held }: { readonly words?: string | undefined; readonly held?: string } = {},
  ): Wanted => {
    const found = find(standard, quantity);
    const limit = quantity.includes('(sharp)') || quantity.includes('max sharp') ? 'sharp' : quantity.includes('approx') ? 'approx' : side;
    return {
      key,
      limit,
      unit: (found[0] as RecordOfValue).unit.replace('in2', 'in²'),
      rows: new Map(
        found.map(record => [record.size.replace(/ UN[CF]$/, ''), { value: record[side] ?? null, held: held ?? heldBy(record, words) }]),
      ),
    };
  };

  /** The words for edition and table, held against the records: the same years, and from memory where they say so. */
  const head = (standard: string, edition: string, table: string, from: RecordOfValue): Head => {
    const [worded, recorded, noted] = [edition + table, from.edition + from.table, from.edition + from.table + (from.note ?? '')].map(
      years,
    ) as [string[], string[], string[]];
    if (recorded.some(year => !worded.includes(year)) || worded.some(year => !noted.includes(year)))
      throw new Error(`${standard}: edition "${edition}", recorded "${from.edition}"`);
    if (from.edition_from_memory && !/from memory|list was not read|former|\(R2017\)/.test(edition))
      throw new Error(`${standard}: the edition is from memory`);
    if (from.table_from_memory !== /from memory|not read|not numbered|types I|edition\)$/.test(table))
      throw new Error(`${standard}: where the table label comes from`);
    return { standard, edition, table };
  };

  return { find, column, head };
}

const TABLE_1 = 'Table 1 (from memory)';
const DK = 'head diameter dk';
const K = 'head height k';
type Quantity = readonly [key: string, quantity: string, side: Side, words?: string];

const PAN: readonly Quantity[] = [
  ['dkMax', DK, 'max'],
  ['dkMin', DK, 'min'],
  ['kMax', K, 'max'],
  ['kMin', K, 'min'],
];
const worded = (quantities: readonly Quantity[], words: string): readonly Quantity[] =>
  quantities.map(([key, quantity, side]) => [key, quantity, side, words]);
const ISO_7047_WORDS = 'read under ISO 7047';
const COUNTERSUNK: readonly Quantity[] = [
  ['dkSharp', 'head diameter dk theoretical max (sharp)', 'max', ISO_7047_WORDS],
  ['dkMax', 'head diameter dk actual max', 'max'],
  ['dkMin', 'head diameter dk actual min', 'min'],
  ['kMax', 'head height k max', 'max'],
];
const RAISED: readonly Quantity[] = [
  ['dkSharp', 'head diameter dk theoretical max (sharp)', 'max'],
  ['dkMax', 'head diameter dk actual', 'max'],
  ['dkMin', 'head diameter dk actual', 'min'],
];
const inchThread = (type: string): readonly Quantity[] => [
  ['tpi', `${type} threads per inch`, 'nominal'],
  ['majorMax', `${type} major diameter D`, 'max'],
  ['majorMin', `${type} major diameter D`, 'min'],
  ['rootMax', `${type} minor diameter d`, 'max'],
  ['rootMin', `${type} minor diameter d`, 'min'],
];

/** Name of the table: the standard in the records, words for edition and table, columns in the order of the source. */
const PLAIN: Readonly<
  Record<string, readonly [standard: string, edition: string, table: string, columns: readonly Quantity[], named?: string]>
> = {
  ISO_7045_PAN_HEADS: ['ISO 7045', '1994 / 2011 (not shown in the copy read)', TABLE_1, PAN],
  ISO_14583_PAN_HEADS: [
    'ISO 14583',
    'not shown; the text read is GB/T 2672-2017, its equivalent',
    TABLE_1,
    worded(PAN, 'read under GB/T 2672-2017'),
  ],
  ISO_1580_SLOTTED_PAN_HEADS: [
    'ISO 1580',
    'not shown in the copy read',
    TABLE_1,
    PAN.map(([key, quantity, side]) => [key, `${quantity} (slotted pan)`, side]),
  ],
  ISO_1207_CHEESE_HEADS: [
    'ISO 1207',
    'not shown in the copies read',
    TABLE_1,
    PAN.map(([key, quantity, side]) => [key, `${quantity} ${side}`, side]),
  ],
  ISO_7047_RAISED_COUNTERSUNK_HEADS: [
    'ISO 7047',
    '1994 / 2011 (edition from memory)',
    TABLE_1,
    [
      ...RAISED,
      ['kMax', 'head height k max (below raised part)', 'max'],
      ['fApprox', 'raised part height f approx', 'nominal'],
      ['rfApprox', 'raised part radius rf approx', 'nominal'],
    ],
  ],
  ISO_7046_2_COUNTERSUNK_HEADS: ['ISO 7046-2', '1990; 2011 as DIN EN ISO 7046-2:2011-12', TABLE_1, COUNTERSUNK.slice(1)],
  ISO_4762_SOCKET_HEADS: [
    'ISO 4762',
    '2004',
    TABLE_1,
    [
      ['dkMax', 'head diameter dk max, knurled head', 'max'],
      ['dkPlainMax', 'head diameter dk max, plain head', 'max'],
      ['dkMin', 'head diameter dk min', 'min'],
      ['kMax', 'head height k max', 'max'],
      ['kMin', 'head height k min', 'min'],
    ],
  ],
  ISO_7380_1_BUTTON_HEADS: [
    'ISO 7380-1',
    '2011 (the copy read is headed ISO 7380)',
    TABLE_1,
    PAN.map(([key, quantity, side]) => [key, `${quantity} ${side}`, side]),
  ],
  ISO_10642_COUNTERSUNK_HEADS: [
    'ISO 10642',
    '2004 (edition from memory)',
    TABLE_1,
    [COUNTERSUNK[0] as Quantity, COUNTERSUNK[2] as Quantity, COUNTERSUNK[3] as Quantity],
  ],
  DIN_7991_COUNTERSUNK_HEADS: [
    'DIN 7991',
    'withdrawn, replaced by ISO 10642 (edition from memory)',
    'not numbered in the copies read',
    [
      ['dkMax', 'head diameter dk max', 'max'],
      ['dkMin', 'head diameter dk min', 'min'],
      ['kMax', 'head height k max', 'max'],
    ],
  ],
  ISO_7049_PAN_HEADS: ['ISO 7049', '2011 (DIN EN ISO 7049:2011-11)', TABLE_1, PAN],
  ISO_14585_PAN_HEADS: ['ISO 14585', '2011 (edition from memory)', TABLE_1, worded(PAN, 'read under ISO 7049')],
  DIN_7981_PAN_HEADS: ['DIN 7981', 'withdrawn, replaced by ISO 7049 (edition from memory)', 'not numbered in the copy read', PAN],
  ISO_7051_RAISED_COUNTERSUNK_HEADS: [
    'ISO 7051',
    '1983 and its successors (edition from memory)',
    TABLE_1,
    worded([...RAISED, ['kMax', 'head height k max', 'max']], 'read under GB 847-85 (ISO 7051:1983)'),
  ],
  ISO_7050_COUNTERSUNK_HEADS: [
    'ISO 7050',
    '1983 and its successors (edition from memory)',
    TABLE_1,
    worded([...RAISED, ['kMax', 'head height k max', 'max']], 'read under GB 847-85 (ISO 7051:1983)'),
  ],
  ISO_1478_TAPPING_SCREW_THREADS: [
    'ISO 1478',
    '1999',
    TABLE_1,
    [
      ['pitch', 'thread pitch P approx', 'nominal'],
      ['majorMax', 'major diameter d1 max', 'max'],
      ['majorMin', 'major diameter d1 min', 'min'],
      ['rootMax', 'core diameter d2 max', 'max'],
      ['rootMin', 'core diameter d2 min', 'min'],
      ['pointDiaMax', 'flat-end diameter d3 (type F)', 'max'],
      ['pointDiaMin', 'flat-end diameter d3 (type F)', 'min'],
      ['pointCone', 'incomplete thread length y, type C (cone)', 'max'],
      ['pointFlat', 'incomplete thread length y, type F (flat)', 'max'],
    ],
  ],
  ASME_B18_6_3_TYPE_AB_THREADS: [
    'ASME B18.6.3',
    '2013 (read under the former number B18.6.4)',
    'type AB (table number not read)',
    inchThread('type AB'),
  ],
  ASME_B18_6_3_TYPE_B_THREADS: [
    'ASME B18.6.3',
    '2013',
    "Table 5, by way of Machinery's Handbook, 31st edition",
    [
      ...inchThread('type B/BP'),
      ['pointDiaMax', 'type B point diameter', 'max'],
      ['pointDiaMin', 'type B point diameter', 'min'],
      ['pointTaperMax', 'type B point taper length L', 'max'],
      ['pointTaperMin', 'type B point taper length L', 'min'],
    ],
  ],
  ASME_B18_6_3_PAN_HEADS: [
    'ASME B18.6.3',
    '2010 / 2013 (not shown in the copies read)',
    'pan heads, recess types I, IA and II (table number not read)',
    [
      ['dkMax', 'pan head diameter A, cross recess', 'max'],
      ['dkMin', 'pan head diameter A, cross recess', 'min'],
      ['kMax', 'pan head height H, cross recess', 'max'],
      ['kMin', 'pan head height H, cross recess', 'min'],
    ],
  ],
  ASME_B18_6_3_FILLISTER_HEADS: [
    'ASME B18.6.3',
    '2010 / 2013 (not shown in the copies read)',
    'fillister heads (table number not read)',
    [
      ['dkMax', 'fillister head diameter A', 'max'],
      ['dkMin', 'fillister head diameter A', 'min'],
      ['kMax', 'fillister total head height O', 'max'],
      ['kMin', 'fillister total head height O', 'min'],
      ['sideMax', 'fillister head side height H', 'max'],
      ['sideMin', 'fillister head side height H', 'min'],
    ],
  ],
  ASME_B18_6_3_ROUND_HEADS: [
    'ASME B18.6.3 (round head)',
    'an earlier ASA edition (edition from memory)',
    'Table A26 of a handbook of 1956',
    [
      ['dkMax', 'round head diameter A', 'max'],
      ['dkMin', 'round head diameter A', 'min'],
      ['kMax', 'round head height H', 'max'],
      ['kMin', 'round head height H', 'min'],
    ],
    'ASME B18.6.3',
  ],
  ISO_273_CLEARANCE_HOLES: [
    'ISO 273',
    '1979 (edition from memory; one copy calls itself 2017, with the same values)',
    TABLE_1,
    [
      ...(['fine (H12)', 'medium (H13)', 'coarse (H14)'] as const).map((fit): Quantity => [
        fit.split(' ')[0] as string,
        `clearance hole dh, ${fit}`,
        'nominal',
      ]),
      ...(
        [
          ['fine (H12)', 12],
          ['medium (H13)', 13],
          ['coarse (H14)', 14],
        ] as const
      ).map(([fit, grade]): Quantity => [
        `${fit.split(' ')[0]}Max`,
        `clearance hole upper limit, ${fit}`,
        'max',
        `computed from the nominal hole and IT${grade} of ISO 286-1`,
      ]),
    ],
  ],
  ASME_B18_2_8_CLEARANCE_HOLES: [
    'ASME B18.2.8',
    '1999 (R2017)',
    "Tables 1a and 3a, by way of Machinery's Handbook, 31st edition",
    [
      ...['close', 'normal', 'loose'].flatMap((fit): Quantity[] => [
        [`${fit}Max`, `clearance hole ${fit} fit`, 'max'],
        [`${fit}Min`, `clearance hole ${fit} fit`, 'min'],
      ]),
      ...['close', 'normal', 'loose'].map((fit): Quantity => [fit, `nominal metric drill, ${fit} fit`, 'nominal']),
    ],
  ],
  DIN_74_1_FORM_C_HOLES: [
    'DIN 74-1',
    'withdrawn; an older edition (edition from memory)',
    'form C (table number not read)',
    [
      ['hole', 'countersink through hole d1, form C (DIN 7982/7983 tapping heads)', 'nominal'],
      ['countersinkDia', 'countersink diameter d2, form C (DIN 7982/7983 tapping heads)', 'min'],
      ['countersinkDepth', 'countersink depth t1 approx, form C (DIN 7982/7983 tapping heads)', 'nominal'],
    ],
  ],
};

/** "1-1/4" is "1 1/4" in the names of rows; what follows "up to" begins at 0. */
const inchRow = (text: string): string => text.replace(/(\d)-(\d+\/)/, '$1 $2');
const inches = (text: string): number =>
  text.split(' ').reduce((sum, part) => sum + Number(part.split('/')[0]) / Number(part.split('/')[1] ?? 1), 0);
/** Records give limits of size, the tables deviations. */
const less = (limit: number | undefined, nominal: number | undefined): number =>
  Math.round(((limit as number) - (nominal as number)) * 1e6) / 1e6;

/** Lines of every table by its name, and of the materials, as `linesOf` gives them of the project's tables. */
export function linesOfRecords({ fasteners, nuts, tolerance }: Records): Record<string, readonly string[]> {
  const { find, column, head } = reader(fasteners);
  const tables: Record<string, Table> = {};

  for (const [name, [standard, edition, table, quantities, named = standard]] of Object.entries(PLAIN)) {
    const columns = quantities.map(([key, quantity, side, words]) => column(standard, key, quantity, side, { words }));
    tables[name] = put(
      { ...head(standard, edition, table, find(standard, (quantities[0] as Quantity)[1])[0] as RecordOfValue), standard: named },
      columns,
    );
  }

  // Of a slotted and a cross recessed countersunk head some rows were read under two sister standards, others under one.
  for (const [name, standard] of [
    ['ISO_2009_COUNTERSUNK_HEADS', 'ISO 2009'],
    ['ISO_7046_1_COUNTERSUNK_HEADS', 'ISO 7046-1'],
  ] as const) {
    const columns = COUNTERSUNK.map(([key, quantity, side]) => {
      const plain = column(standard, key, quantity, side, { words: ISO_7047_WORDS });
      const two = new Set(
        find(standard, quantity)
          .filter(record => record.independent_texts === 2)
          .map(record => record.size),
      );
      return {
        ...plain,
        rows: new Map(
          [...plain.rows].map(([row, value]) => [row, two.has(row) ? { ...value, held: `${ISO_7047_WORDS} and ISO 7046-2` } : value]),
        ),
      };
    });
    tables[name] = put(
      head(standard, '1994 / 2011 (edition from memory)', TABLE_1, find(standard, (COUNTERSUNK[0] as Quantity)[1])[0] as RecordOfValue),
      columns,
    );
  }

  // Of the flat head the sharp diameter is of an older edition; oval and slotted pan heads share what the notes say.
  const inchHeads = 'ASME B18.6.3';
  const recent = '2010 / 2013 (not shown in the copies read)';
  const flat = 'flat 82 deg head';
  const sharp = (held: string): Wanted => ({
    ...column('ASME B18.6.4 / B18.6.3 (older editions)', 'dkSharp', `${flat} diameter A, max sharp / min`, 'max', { held }),
  });
  /** The sharp diameters stand in fewer rows than the table has. */
  const putFlat = (table: string, columns: readonly Wanted[]): Table => {
    const rows = [...(columns[1] as Wanted).rows.keys()];
    const first = columns[0] as Wanted;
    return put({ standard: inchHeads, edition: recent, table }, [
      { ...first, rows: new Map(rows.map(row => [row, first.rows.get(row) ?? { value: null, held: '' }])) },
      ...columns.slice(1),
    ]);
  };
  tables['ASME_B18_6_3_FLAT_HEADS'] = putFlat('flat countersunk heads (table number not read)', [
    sharp('read in 1 secondary copy of an older edition; that it is the sharp diameter is from memory'),
    column(inchHeads, 'dkMax', `${flat} diameter A`, 'max'),
    column(inchHeads, 'dkMin', `${flat} diameter A`, 'min'),
    column(inchHeads, 'kMax', `${flat} height H max (ref)`, 'max'),
    column(inchHeads, 'kMin', `${flat} height H min`, 'min'),
  ]);
  const sameA = 'from memory: same A as the flat head';
  tables['ASME_B18_6_3_OVAL_HEADS'] = putFlat('slotted oval heads (table number not read)', [
    sharp(sameA),
    column(inchHeads, 'dkMax', `${flat} diameter A`, 'max', { held: sameA }),
    column(inchHeads, 'dkMin', `${flat} diameter A`, 'min', { held: sameA }),
    column(inchHeads, 'kMax', 'oval head total height O max', 'max'),
    column(inchHeads, 'coneMax', `${flat} height H max (ref)`, 'max', { held: 'from memory: same H as the flat head' }),
  ]);
  const oneA = 'from memory: the standard gives one A for slotted and recessed pan heads';
  tables['ASME_B18_6_3_SLOTTED_PAN_HEADS'] = put(
    { standard: inchHeads, edition: recent, table: 'slotted pan heads (table number not read)' },
    [
      column(inchHeads, 'dkMax', 'pan head diameter A, cross recess', 'max', { held: oneA }),
      column(inchHeads, 'dkMin', 'pan head diameter A, cross recess', 'min', { held: oneA }),
      column(inchHeads, 'kMax', 'pan head height H, slotted', 'max'),
      column(inchHeads, 'kMin', 'pan head height H, slotted', 'min'),
    ],
  );

  // Threads whose columns come from several standards.
  const basic = column('ISO 724', 'pitchDiaBasic', 'basic pitch diameter d2', 'nominal');
  const designated = (key: string, unit: string, rows: Iterable<string>, value: (row: string) => number): Wanted => ({
    key,
    limit: 'nominal',
    unit,
    rows: new Map([...rows].map(row => [row, { value: value(row), held: 'by designation' }])),
  });
  const minor6g = 'minor diameter 6g (max flat form d1; min rounded form d3)';
  tables['ISO_965_2_METRIC_THREADS_6G'] = put(
    head(
      'ISO 965-2',
      '1998 (edition from memory)',
      'limits of size, medium quality (table number not read)',
      find('ISO 965-2', 'major diameter d, 6g')[0] as RecordOfValue,
    ),
    [
      designated('nominal', 'mm', basic.rows.keys(), row => Number(row.slice(1))),
      column('ISO 261 / ISO 262', 'pitch', 'coarse pitch P', 'nominal'),
      column('ISO 965-2', 'majorMax', 'major diameter d, 6g', 'max'),
      column('ISO 965-2', 'majorMin', 'major diameter d, 6g', 'min'),
      column('ISO 965-2', 'pitchDiaMax', 'pitch diameter d2, 6g', 'max'),
      column('ISO 965-2', 'pitchDiaMin', 'pitch diameter d2, 6g', 'min'),
      column('ASME B1.13M / ISO 965', 'rootMax', minor6g, 'max'),
      column('ASME B1.13M / ISO 965', 'rootMin', minor6g, 'min'),
      basic,
      column('ISO 724', 'd1Basic', 'basic minor diameter D1 (internal)', 'nominal'),
      column('ISO 68-1 / ISO 724', 'd3Basic', 'core diameter d3 (external, rounded root)', 'nominal'),
    ],
  );
  const unified = column('ASME B1.1', 'nominal', 'basic major diameter', 'nominal');
  tables['ASME_B1_1_UNIFIED_THREADS_2A'] = put(
    head('ASME B1.1', '2008', 'Table 2A (from memory)', find('ASME B1.1', 'major diameter 2A')[0] as RecordOfValue),
    [
      unified,
      designated('tpi', '1/in', unified.rows.keys(), row => Number(row.split('-')[1])),
      column('ASME B1.1', 'majorMax', 'major diameter 2A', 'max'),
      column('ASME B1.1', 'majorMin', 'major diameter 2A', 'min'),
      column('ASME B1.1', 'pitchDiaMax', 'pitch diameter 2A', 'max'),
      column('ASME B1.1', 'pitchDiaMin', 'pitch diameter 2A', 'min'),
      column('ASME B1.1', 'rootMax', 'minor diameter UNR max (ref), 2A', 'max', {
        words: 'computed from major max − 1.190786/threads per inch',
      }),
      column('ASME B1.1', 'stressArea', 'tensile stress area', 'nominal'),
    ],
  );

  // Lengths and their limits: the length is part of the name of the record.
  const named = (
    standard: string,
    start: string,
    row: (rest: string) => string,
    value: (record: RecordOfValue, row: string) => number,
    key: string,
    limit: Limit,
    held = (record: RecordOfValue): string => heldBy(record),
  ): Wanted => {
    const found = fasteners.filter(record => record.standard === standard && record.quantity.startsWith(start));
    return {
      key,
      limit,
      unit: found[0]?.unit ?? '',
      rows: new Map(
        found
          .map(record => [row(record.quantity.slice(start.length)), record] as const)
          .map(([name, record]) => [name, { value: value(record, name), held: held(record) }]),
      ),
    };
  };
  const itself = (text: string): string => text;
  tables['ISO_888_LENGTHS'] = put(
    { standard: 'ISO 888', edition: '2012 (its own list was not read)', table: 'nominal lengths (table number not read)' },
    [
      named(
        'ISO 888',
        'nominal length l = ',
        itself,
        record => record.nominal as number,
        'length',
        'nominal',
        record => heldBy(record, `read under product standards in ${copies(record.independent_texts).slice('read in '.length)}`),
      ),
    ],
  );
  tables['ISO_7049_TAPPING_SCREW_LENGTHS'] = put(
    { standard: 'ISO 7049', edition: '2011 (DIN EN ISO 7049:2011-11)', table: 'commercial lengths (table number not read)' },
    [named('ISO 7049', 'nominal length l = ', itself, record => record.nominal as number, 'length', 'nominal')],
  );
  tables['ASME_B18_6_3_LENGTHS'] = put(
    { standard: inchHeads, edition: 'any recent edition (edition from memory)', table: 'nominal lengths (table number not read)' },
    [
      named(
        inchHeads,
        'nominal length ',
        text => inchRow(text.replace(' in', '')),
        record => record.nominal as number,
        'length',
        'nominal',
      ),
    ],
  );
  tables['ISO_4759_1_LENGTH_LIMITS'] = put(
    { standard: 'ISO 4759-1', edition: '2000 (edition from memory)', table: 'length limits (table number not read)' },
    [
      named('ISO 4759-1', 'length limits at l = ', itself, record => less(record.max, record.nominal), 'upper', 'max'),
      named('ISO 4759-1', 'length limits at l = ', itself, record => less(record.min, record.nominal), 'lower', 'min'),
    ],
  );

  // Read from 4.5 to 13 mm (type F to 9.5 mm), and the same in each: one band. The bands to 19, 38 and 50 mm are from memory and have no record.
  const point = (type: string, key: string, limit: 'max' | 'min', read: number, rest: readonly number[]): Wanted => {
    const found = named(
      'ISO 7051 (tapping screws)',
      `tapping screw length limits, type ${type}, l = `,
      itself,
      record => less(record[limit], record.nominal),
      key,
      limit,
      record => heldBy(record, 'read'),
    );
    const values = new Set([...found.rows.values()].map(({ value }) => value));
    const lengths = [...found.rows].filter(([, { held }]) => held === 'read').map(([row]) => Number(row));
    if (values.size !== 1 || Math.max(...lengths) !== read) throw new Error(`type ${type}: more than one band, or read to another length`);
    const first = { value: [...values][0] as number, held: `read under GB 847-85 (ISO 7051:1983) to ${read} mm, from memory to 19 mm` };
    return {
      ...found,
      rows: new Map([
        ['19', first],
        ...(['38', '50'] as const).map((row, i) => [row, { value: rest[i] as number, held: MEMORY }] as const),
      ]),
    };
  };
  tables['ISO_7049_LENGTH_TOLERANCES'] = put(
    { standard: 'ISO 7049', edition: '2011 (DIN EN ISO 7049:2011-11)', table: 'length tolerances (table number not read)' },
    [
      { key: 'upTo', limit: 'nominal', unit: 'mm', rows: new Map([19, 38, 50].map(upTo => [String(upTo), { value: upTo, held: MEMORY }])) },
      point('C', 'coneUpper', 'max', 13, [1.3, 1.5]),
      point('C', 'coneLower', 'min', 13, [-1.3, -1.5]),
      point('F', 'flatUpper', 'max', 9.5, [0, 0]),
      point('F', 'flatLower', 'min', 9.5, [-1.3, -1.5]),
    ],
  );

  const bandRow = (text: string): string => {
    const [, over = '0', upTo] = /^(?:over (\S+))?(?: to |up to )?(\S+)? in$/.exec(text) ?? [];
    return upTo === undefined ? `over ${inchRow(over)}` : `${inchRow(over)}-${inchRow(upTo)}`;
  };
  const start = 'length tolerance, nominal length ';
  const ends = (row: string): readonly [number, number | null] =>
    row.startsWith('over ') ? [inches(row.slice(5)), null] : (row.split('-').map(inches) as [number, number]);
  const endsOf = (of: Wanted, held: string): Wanted[] =>
    (['over', 'upTo'] as const).map((key, i) => ({
      key,
      limit: 'nominal',
      unit: 'in',
      rows: new Map([...of.rows.keys()].map(row => [row, { value: ends(row)[i] as number | null, held }])),
    }));
  const machine = (size: string, key: string, limit: 'max' | 'min'): Wanted => {
    const found = fasteners.filter(record => record.standard === inchHeads && record.size === size && record.quantity.startsWith(start));
    // the copy prints the minus side only
    return {
      key,
      limit,
      unit: 'in',
      rows: new Map(
        found.map(record => [
          bandRow(record.quantity.slice(start.length)),
          { value: record[limit] as number, held: limit === 'max' ? MEMORY : heldBy(record) },
        ]),
      ),
    };
  };
  const lower = machine('#0-#12', 'lower', 'min');
  tables['ASME_B18_6_3_LENGTH_TOLERANCES'] = put(
    { standard: inchHeads, edition: 'not shown in the copy read', table: 'length tolerances (table number not read)' },
    [
      ...endsOf(lower, copies(1)),
      machine('#0-#12', 'upper', 'max'),
      lower,
      machine('1/4-3/4', 'upperLarge', 'max'),
      machine('1/4-3/4', 'lowerLarge', 'min'),
    ],
  );
  const tapping = (key: string, limit: 'max' | 'min'): Wanted =>
    named('ASME B18.6.3 (tapping)', `tapping screw ${start}`, bandRow, record => record[limit] as number, key, limit);
  tables['ASME_B18_6_3_TAPPING_LENGTH_TOLERANCES'] = put(
    { standard: inchHeads, edition: 'former B18.6.4 (edition from memory)', table: 'length tolerances (table number not read)' },
    [...endsOf(tapping('upper', 'max'), MEMORY), tapping('upper', 'max'), tapping('lower', 'min')],
  );

  // Angles: the +2° was read in one of the two copies, the 80° of ASME is from memory, that of DIN 7982 stands under the countersink for it.
  const figure = 'figure (from memory)';
  const angle = (standard: string, quantity: string, limits: string, most?: string): Wanted[] => [
    column(standard, 'angle', quantity, 'nominal'),
    column(standard, 'angleMax', quantity, 'max', most === undefined ? {} : { held: most }),
    column(standard, 'angleMin', quantity, 'min', { held: limits }),
  ];
  tables['ISO_7721_1_HEAD_ANGLE'] = put(
    { standard: 'ISO 7721-1', edition: 'not shown in the copies read (edition from memory)', table: figure },
    angle('ISO 7721 / ISO 7047', 'countersunk head angle (ISO heads)', 'read under DIN 7991', 'read under DIN 7991'),
  );
  tables['ASME_B18_6_3_HEAD_ANGLE'] = put(
    { standard: inchHeads, edition: 'any recent edition (edition from memory)', table: figure },
    angle(inchHeads, 'flat countersunk head angle', MEMORY),
  );
  tables['DIN_7982_HEAD_ANGLE'] = put({ standard: 'DIN 7982', edition: 'withdrawn (edition from memory)', table: figure }, [
    column('DIN 74-1', 'angle', 'countersink angle, form C (DIN 7982/7983 tapping heads)', 'nominal', {
      held: 'read under DIN 74-1, form C',
    }),
  ]);

  // Tolerances: the records give the numbers; the copies are counted in the reference beside them, sections 1.1 to 1.6.
  const banded = (bands: readonly Band[], key: string, unit: string, values: Row, held: (i: number) => string): Wanted => ({
    key,
    limit: undefined,
    unit,
    rows: new Map(bands.map(([over, upTo], i) => [`${over}-${upTo}`, { value: values[i] ?? null, held: held(i) }])),
  });
  const sizes = (bands: readonly Band[], held: (i: number) => string): Wanted[] =>
    (['over', 'upTo'] as const).map((key, side) => ({
      ...banded(
        bands,
        key,
        'mm',
        bands.map(band => band[side] as number),
        held,
      ),
      limit: 'nominal',
    }));

  const [, ...texts] = /^M3 to M6 read in (\d) secondary copies, M1\.6 to M2\.5 in (\d), M3\.5 in (\d);/.exec(nuts['how held']) ?? [];
  const nutCopies = (row: string): string => copies(Number(texts[row === 'M3.5' ? 2 : Number(row.slice(1)) < 3 ? 1 : 0]));
  const nut = (key: string, limit: 'max' | 'min', quantity: string): Wanted => ({
    key,
    limit,
    unit: nuts.unit,
    rows: new Map(
      Object.entries(nuts.rows).map(([row, values]) => [
        row,
        { value: values[nuts.columns.indexOf(quantity)] ?? null, held: nutCopies(row) },
      ]),
    ),
  });
  tables['ISO_4032_NUTS'] = put(
    {
      standard: nuts.standard,
      edition: '2012 (one copy names BS EN ISO 4032:2001, with the same digits)',
      table: 'not numbered in the copies read',
    },
    [
      nut('flatsMax', 'max', 's max (across flats)'),
      nut('flatsMin', 'min', 's min'),
      nut('cornersMin', 'min', 'e min (across corners)'),
      nut('heightMax', 'max', 'm max (height)'),
      nut('heightMin', 'min', 'm min'),
    ],
  );

  const { ranges_over_upto_mm: grades, grades: widths } = tolerance.iso286_1;
  const read = (i: number): string => ((grades[i] as Band)[1] <= 315 ? copies(1) : CHECKED);
  const spot = (i: number): boolean => [10, 100].some(size => size > (grades[i] as Band)[0] && size <= (grades[i] as Band)[1]);
  tables['ISO_286_1_IT_GRADES'] = put(
    { standard: 'ISO 286-1', edition: 'not shown in the copies read', table: 'standard tolerance grades (table number not read)' },
    [
      ...sizes(grades, read),
      ...Object.entries(widths).map(([grade, values]) =>
        banded(grades, grade, 'µm', values, i =>
          ['IT15', 'IT16'].includes(grade) ? CHECKED : grade === 'IT14' && spot(i) ? copies(2) : read(i),
        ),
      ),
    ],
  );

  const { ranges: general, ...classes } = tolerance.iso2768_1_linear;
  tables['ISO_2768_1_LINEAR'] = put({ standard: 'ISO 2768-1', edition: '1989', table: 'linear sizes (table number not read)' }, [
    ...sizes(general, () => copies(3)),
    // two copies print other figures in the first two bands of class c
    ...(['f', 'm', 'c', 'v'] as const).map(key => banded(general, key, 'mm', classes[key], i => copies(key === 'c' && i < 2 ? 2 : 3))),
  ]);

  const { ranges_over_upto_mm: moulded, TG6_W, TG6_NW } = tolerance.din16742_iso20457;
  const twice = (i: number): string => copies((moulded[i] as Band)[1] <= 250 ? 2 : 1);
  tables['DIN_16742_TG6'] = put(
    {
      standard: 'DIN 16742',
      edition: '2013 (not shown in the copies read); ISO 20457:2018 has the same row',
      table: 'tolerance group TG6 (table number not read)',
    },
    [...sizes(moulded, twice), banded(moulded, 'same', 'mm', TG6_W, () => copies(1)), banded(moulded, 'across', 'mm', TG6_NW, twice)],
  );

  const { ranges_over_upto_mm: older, '130_A': a, '130_B': b } = tolerance.din16901_general;
  const related = (): string => 'read in 3 secondary copies, two of them related';
  tables['DIN_16901_130'] = put(
    { standard: 'DIN 16901', edition: '1982, withdrawn 2009', table: 'general tolerances, group 130 (table number not read)' },
    [...sizes(older, related), banded(older, 'across', 'mm', a, related), banded(older, 'same', 'mm', b, related)],
  );

  return {
    ...Object.fromEntries(
      Object.entries(tables)
        .sort(([x], [y]) => (x < y ? -1 : 1))
        .map(([name, table]) => [name, linesOf(table)]),
    ),
    MATERIAL_RANGES: materialLines(materials(tolerance.materials)),
  };
}

const MERGED = 'range merged from secondary tables and memory, typical value from memory';
const PRACTICE = 'common practice, from memory';

/** Materials for which the reference, section 3, names a secondary table of the quantity; all else of it is from memory. */
const IN_A_TABLE: Readonly<Record<string, readonly string[]>> = {
  density: ['ABS', 'POM', 'PMMA', 'PA66', 'PA66-GF30', 'PC', 'PP', 'PS', 'PE-HD'],
  shrinkage: ['ABS', 'PC+ABS', 'PP', 'PS', 'PE-HD', 'PMMA', 'PA6', 'PA66', 'POM', 'PBT', 'PBT-GF30', 'PC'],
  strength: ['ABS', 'POM', 'PMMA', 'PA66', 'PA66-GF30', 'PE-HD', 'PP', 'PS', 'PC', 'PC+ABS'],
  modulus: ['ABS', 'POM', 'PMMA', 'PA66', 'PA66-GF30', 'PC+ABS'],
  strain: ['PC+ABS'],
  expansion: ['ABS', 'POM', 'PMMA', 'PA66', 'PA66-GF30', 'PC', 'PP', 'PS', 'PE-HD', 'PC+ABS', 'PA6'],
  diffusivity: ['ABS', 'POM', 'PMMA', 'PA66-GF30', 'PC', 'PP', 'PS', 'PE-HD'],
  melt: ['ABS', 'PC+ABS', 'POM', 'PMMA', 'PE-HD', 'PA6', 'PA66', 'PA66-GF30', 'PC', 'PBT', 'PP', 'PS'],
  mould: ['ABS', 'PC+ABS', 'POM', 'PMMA', 'PE-HD', 'PA6', 'PA66', 'PA66-GF30', 'PC', 'PBT', 'PP', 'PS'],
  eject: [],
};

/** Start values of thread share and outside diameter over d, typed from the table of the reference on joints; PP and PE-HD, 1 there, are 0.95 by the contract. */
const START: readonly (readonly [symbols: readonly string[], share: number, ratio: number, from: number | null, to: number | null])[] = [
  [['PP', 'PE-HD'], 0.95, 2, 1.8, 2.5],
  [['PA6 conditioned', 'PA66 conditioned'], 0.95, 2, 1.8, 2.5],
  [['PA6', 'PA66'], 0.9, 2, null, null],
  [['POM'], 0.9, 2, 1.9, 2.5],
  [['PBT'], 0.9, 2, 1.8, 2.2],
  [['ABS'], 0.8, 2.2, 2, 2.5],
  [['PC+ABS'], 0.75, 2.3, 2, 2.5],
  [['PS'], 0.75, 2.3, 2, 2.5],
  [['PC', 'PMMA'], 0.6, 2.5, 2.2, 3],
  [['PBT-GF30', 'PA66-GF30', 'PA66-GF30 conditioned'], 0.7, 2, 1.8, 2.5],
];

function materials(records: Records['tolerance']['materials']): MaterialLine[] {
  const of = (symbol: string, quantity: string, range: Range, unit: string, digits = 0, kind = ''): MaterialLine => {
    const moved = (value: number): number => Number(`${value}e${digits}`);
    return {
      symbol,
      quantity,
      low: moved(range.min),
      typ: moved(range.typ),
      high: moved(range.max),
      unit,
      kind,
      held: IN_A_TABLE[quantity]?.includes(symbol) ? MERGED : MEMORY,
    };
  };
  const started = (symbol: string): MaterialLine[] => {
    const [, share, ratio, from, to] = START.find(([symbols]) => symbols.includes(symbol)) ?? [[], NaN, NaN, null, null];
    const both = { symbol, unit: '1', kind: '', held: PRACTICE };
    return [
      { ...both, quantity: 'threadShare', low: null, typ: share, high: null },
      { ...both, quantity: 'odRatio', low: from, typ: ratio, high: to },
    ];
  };
  return Object.entries(records).flatMap(([symbol, record]) => {
    const kind = record.strength_kind.startsWith('break') ? 'break' : 'yield';
    const dry = [
      of(symbol, 'density', record.density_g_cm3, 'g/cm³'),
      of(symbol, 'shrinkage', record.mould_shrinkage_pct, '1', -2),
      of(symbol, 'strength', record.tensile_strength_MPa, 'MPa', 0, kind),
      of(symbol, 'modulus', record.tensile_modulus_GPa, 'MPa', 3),
      of(symbol, 'strain', record.strain_at_yield_or_break_pct, '1', -2),
      of(symbol, 'expansion', record['clte_1e-6_per_K'], '1e-6/K'),
      of(symbol, 'diffusivity', record.eff_thermal_diffusivity_mm2_s, 'mm²/s'),
      of(symbol, 'melt', record.melt_temp_C, '°C'),
      of(symbol, 'mould', record.mould_temp_C, '°C'),
      of(symbol, 'eject', record.ejection_temp_C, '°C'),
      ...started(symbol),
    ];
    const [, conditioned] = /conditioned ~(\d+)/.exec(record.strength_kind) ?? [];
    if (conditioned === undefined) return dry;
    const wet = { symbol: `${symbol} conditioned`, unit: 'MPa', low: null, high: null, held: MEMORY };
    return [
      ...dry,
      { ...wet, quantity: 'strength', typ: Number(conditioned), kind },
      // half of the dry modulus, roughly; of the filled one nothing is said
      ...(symbol === 'PA66-GF30' ? [] : [{ ...wet, quantity: 'modulus', typ: record.tensile_modulus_GPa.typ * 500, kind: '' }]),
      ...started(wet.symbol),
    ];
  });
}
