// Drawings as DXF text of release 12 (AC1009), the oldest that is still read everywhere: lines, arcs, circles and texts on named layers.
import { fixedText } from '../core/decimal';
import type { Point } from './svg';

export interface LayerLook {
  /** Number of the colour index. */
  readonly colour: number;
  readonly lines: 'CONTINUOUS' | 'CENTER' | 'DASHED';
}

export type Align = 'left' | 'centre' | 'right';

/** Places in mm, y upwards; angles anticlockwise from x. */
export type Entity<Layer extends string> = { readonly layer: Layer } & (
  | { readonly is: 'LINE'; readonly from: Point; readonly to: Point }
  | { readonly is: 'CIRCLE'; readonly centre: Point; readonly radiusMm: number }
  | { readonly is: 'ARC'; readonly centre: Point; readonly radiusMm: number; readonly fromDeg: number; readonly toDeg: number }
  | {
      readonly is: 'TEXT';
      readonly at: Point;
      readonly heightMm: number;
      readonly content: string;
      readonly align: Align;
    }
);

/** A group: a code, and its value on the next line. */
type DxfGroup = readonly [code: number, value: string | number];

/** Lengths of dash and gap, mm. */
const PATTERNS: Readonly<Record<LayerLook['lines'], readonly number[]>> = {
  CONTINUOUS: [],
  CENTER: [3, -0.5, 0.5, -0.5],
  DASHED: [0.8, -0.4],
};
const ALIGNED: Readonly<Record<Align, number>> = { left: 0, centre: 1, right: 2 };

/** Twelve decimals, so that ends that meet still meet when they are read. */
const decimal = (value: number): string => {
  return fixedText(value, 12).replace(/0+$/, '0');
};

const IN_ASCII: Readonly<Record<string, string>> = {
  Ø: 'dia ',
  '°': ' deg',
  '−': '-',
  '–': '-',
  '×': 'x',
  '÷': '/',
  '·': '.',
  µ: 'u',
  ß: 'ss',
  '↑': '',
};
const LONGEST = 255;

/** Printable ASCII: accents off, what has no likeness a question mark; nothing that a reader takes for a sign of its own. */
export const ascii = (text: string): string =>
  Array.from(
    text.replaceAll('^', ' ').replaceAll('%%', '%'),
    character => IN_ASCII[character] ?? character.normalize('NFKD').replace(/\p{M}/gu, ''),
  )
    .join('')
    .replace(/\s+/g, ' ')
    .replace(/[^ -~]/g, '?')
    .trim()
    .slice(0, LONGEST);

const place = (x: DxfGroup[0], [px, py]: Point): DxfGroup[] => [
  [x, decimal(px)],
  [x + 10, decimal(py)],
  [x + 20, decimal(0)],
];

function entityGroups(entity: Entity<string>): DxfGroup[] {
  const head: DxfGroup[] = [
    [0, entity.is],
    [8, entity.layer],
  ];
  switch (entity.is) {
    case 'LINE':
      return [...head, ...place(10, entity.from), ...place(11, entity.to)];
    case 'CIRCLE':
      return [...head, ...place(10, entity.centre), [40, decimal(entity.radiusMm)]];
    case 'ARC':
      return [
        ...head,
        ...place(10, entity.centre),
        [40, decimal(entity.radiusMm)],
        [50, decimal(entity.fromDeg)],
        [51, decimal(entity.toDeg)],
      ];
    case 'TEXT': {
      const { at, heightMm, content, align } = entity;
      return [
        ...head,
        ...place(10, at),
        [40, decimal(heightMm)],
        [1, ascii(content)],
        ...(align === 'left' ? [] : [[72, ALIGNED[align]] as const, ...place(11, at)]),
      ];
    }
  }
}

const section = (name: string, groups: readonly DxfGroup[]): DxfGroup[] => [[0, 'SECTION'], [2, name], ...groups, [0, 'ENDSEC']];
const table = (name: string, rows: readonly (readonly DxfGroup[])[]): DxfGroup[] => [
  [0, 'TABLE'],
  [2, name],
  [70, rows.length],
  ...rows.flat(),
  [0, 'ENDTAB'],
];

const lineType = ([name, pattern]: readonly [string, readonly number[]]): DxfGroup[] => [
  [0, 'LTYPE'],
  [2, name],
  [70, 0],
  [3, ''],
  [72, 65],
  [73, pattern.length],
  [40, decimal(pattern.reduce((sum, length) => sum + Math.abs(length), 0))],
  ...pattern.map((length): DxfGroup => [49, decimal(length)]),
];
const layerRow = ([name, { colour, lines }]: readonly [string, LayerLook]): DxfGroup[] => [
  [0, 'LAYER'],
  [2, name],
  [70, 0],
  [62, colour],
  [6, lines],
];
const STYLE: readonly DxfGroup[] = [
  [0, 'STYLE'],
  [2, 'STANDARD'],
  [70, 0],
  [40, decimal(0)],
  [41, decimal(1)],
  [50, decimal(0)],
  [71, 0],
  [42, decimal(1)],
  [3, 'txt'],
  [4, ''],
];

/** What an entity surely covers, but the length of a text. */
function corners(entity: Entity<string>): Point[] {
  if (entity.is === 'LINE') return [entity.from, entity.to];
  if (entity.is === 'TEXT') return [entity.at];
  const {
    centre: [x, y],
    radiusMm: r,
  } = entity;
  return [
    [x - r, y - r],
    [x + r, y + r],
  ];
}

export function dxf<Layer extends string>(
  layers: Readonly<Record<Layer, LayerLook>>,
  entities: readonly Entity<Layer>[],
  comment: string,
): string {
  const points = entities.flatMap(corners);
  const bound = (of: (...values: number[]) => number): Point => [of(...points.map(([x]) => x)), of(...points.map(([, y]) => y))];
  const groups: DxfGroup[] = [
    [999, ascii(comment)],
    ...section('HEADER', [
      [9, '$ACADVER'],
      [1, 'AC1009'],
      [9, '$EXTMIN'],
      ...place(10, bound(Math.min)),
      [9, '$EXTMAX'],
      ...place(10, bound(Math.max)),
    ]),
    ...section('TABLES', [
      ...table('LTYPE', Object.entries(PATTERNS).map(lineType)),
      ...table('LAYER', Object.entries<LayerLook>(layers).map(layerRow)),
      ...table('STYLE', [STYLE]),
    ]),
    ...section('ENTITIES', entities.flatMap(entityGroups)),
    [0, 'EOF'],
  ];
  return groups.map(([code, value]) => `${String(code).padStart(3)}\n${value}\n`).join('');
}
