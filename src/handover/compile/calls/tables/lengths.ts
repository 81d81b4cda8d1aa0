// SCREW.LENGTH.TABLE, PICK and COMMON, a line a standard length.
import { BOTTOMS, LITTLE_ROOM, tooDeep, tooLittleThread } from '../../../../core/engagement/length-words';
import type { Cell } from '../../../../core/kinds';
import type { Deviation } from '../../../../core/read/deviation';
import { placesThatDiffer } from '../../../../core/decimal';
import { lengthDeviation, lengthTable, standardLengthsMm } from '../../../../core/screw/length';
import { type End, pointMm, pointReadings, type Screw, threadRow } from '../../../../core/screw/thread';
import type { Size } from '../../../../core/screw/size';
import { atom, MATHS, number, type Ref, type Scalar } from '../../../../plain/spreadsheet';
import type { Param } from '../../../../core/card';
import { sizeKey } from '../../arguments/screw';
import { comparedFormula, placesFormula } from '../../compared-formula';
import { choicesOf, quoted } from '../../inputs';
import { lengthToleranceFormulas } from '../../length-tolerance';
import { readingsRef } from '../../lookups';
import { unchanged } from '../../unchanged';
import type { CallBlock } from '../call-site';
import type { TableLines } from '../../tables-sheet';
import { cellIn } from './standard-lengths';
import { type BoundTable, boundTable, entryOf, printedRef, type TableSite } from './table-site';

const NOMINAL: ReadonlySet<string> = new Set(['nominalMm']);
/** A column each. */
const MOST_JOINTS = 60;
const NO_TOLERANCE: Ref = { parts: { upperMm: number(0), lowerMm: number(0) } };

const textOf = (ref: Ref | undefined): string => (ref !== undefined && 'text' in ref ? ref.text : '');

/** What the lines of a screw read: its bound arguments by name, its lengths, its point. */
interface Lengths {
  readonly bound: BoundTable;
  readonly ref: (name: string) => Ref;
  readonly point: Scalar;
  readonly lengthsMm: readonly number[];
  readonly lengths: string;
  readonly end: string;
  readonly size: Size;
}

function lengthsOf(site: TableSite): Lengths | undefined {
  const { context, card, args, values } = site;
  const valueOf = (name: string): unknown => values[card.params.findIndex(param => param.name === name)];
  const { size } = valueOf('size') as Screw;
  const argument = args[0];
  const key = argument && sizeKey(context, argument, threadRow(size));
  // one of the unified sizes has tolerances of its own
  const fixed = argument && size.family === 'UN' ? unchanged(context, argument) : [];
  if (key === undefined || fixed === undefined) return undefined;
  const bound = boundTable({ ...site, fixed: [...fixed, ...key.conditions] }, NOMINAL);
  if (bound === undefined) return undefined;
  const ref = (name: string): Ref => bound.refs[card.params.findIndex(param => param.name === name)] ?? number(0);
  const end = textOf(ref('end'));
  const pointFor = (word: End): string =>
    readingsRef(
      {
        size: () => key.key,
        cell: () => 'NA()',
        lookup: (table, column, row) => context.data.lookup(table, column, row),
        band: (table, column, cell) => context.data.band(table, column, cell),
      },
      pointReadings(size, word),
    ).text;
  const words = choicesOf(card.params.find(({ name }) => name === 'end') as Param) as End[];
  const [first, ...others] = words.map(pointFor);
  const worthMm = pointMm(size, valueOf('end') as End);
  const point = context.steps.row({
    label: 'point without full thread',
    formula:
      others.every(other => other === first) || end.startsWith('"')
        ? pointFor(valueOf('end') as End)
        : words.reduceRight((otherwise, word) => `IF(${end}=${quoted(word)},${pointFor(word)},${otherwise})`, 'NA()'),
    value: worthMm,
    unit: 'mm',
    words: `from the table on ${context.data.name}`,
  });
  return {
    bound,
    ref,
    point: atom(point, worthMm),
    lengthsMm: standardLengthsMm(size),
    lengths: context.data.column(lengthTable(size), 'length'),
    end,
    size,
  };
}

const LENGTH_COLUMNS = [
  { title: 'standard length (mm)', words: 'from its table' },
  { title: 'length tolerance, lower (mm)', words: 'from its table' },
  { title: 'length tolerance, upper (mm)', words: 'from its table' },
] as const;

/** The length and its tolerance in one line. */
function putLength(site: TableSite, all: Lengths, lines: TableLines, r: number): { readonly length: Scalar; readonly tolerance: Ref } {
  const { card, values } = site;
  const lengthMm = all.lengthsMm[r] as number;
  const length = lines.put(r, 0, cellIn(all.lengths, r), lengthMm);
  const { upperMm, lowerMm }: Deviation = lengthDeviation(
    all.size,
    lengthMm,
    values[card.params.findIndex(({ name }) => name === 'end')] as End,
  );
  const { upper, lower } = lengthToleranceFormulas(site.context.data, all.size, length, all.end);
  return {
    length: atom(length, lengthMm),
    tolerance: {
      parts: { lowerMm: atom(lines.put(r, 1, lower, lowerMm), lowerMm), upperMm: atom(lines.put(r, 2, upper, upperMm), upperMm) },
    },
  };
}

/** Worst engagement, and the deepest reach with the hole that it needs, for one length and one joint. */
function judged(
  { ref, point }: Lengths,
  { length, tolerance }: ReturnType<typeof putLength>,
  layers: Ref,
  tolerances: Ref,
): { readonly engagement: Scalar; readonly reach: Scalar } {
  return {
    engagement: printedRef('engagementMinMm', length, tolerance, layers, tolerances, ref('relief'), ref('relief_tol'), point),
    reach: printedRef('penetrationMaxMm', length, tolerance, layers, tolerances),
  };
}

const holds = (ratio: Scalar, least: Ref): string => textOf(MATHS['atLeast']?.(ratio, least));
const keeps = (size: Scalar, most: Ref): string => textOf(MATHS['atMost']?.(size, most));

/** The lines of SCREW.LENGTH.TABLE; `shown` are its columns. */
function tableLines(
  site: TableSite,
  all: Lengths,
  header: readonly string[],
  isFull: boolean,
): { readonly lines: TableLines; readonly cells: string[][] } {
  const { context, title, card } = site;
  const helpers = [...LENGTH_COLUMNS, { title: 'deepest reach (mm)', words: 'longest screw, thinnest layers' }];
  const digits = isFull ? [{ title: 'digits shown, thread' }, { title: 'digits shown, hole' }] : [];
  const columns = [
    ...helpers,
    ...digits,
    ...header.map((head, c) => ({ title: head, ...(c === 0 ? { words: context.sourceWords.kind(card.kind) } : {}) })),
  ];
  const lines = context.tables.begin(title, columns, all.lengthsMm.length);
  const [depth, least] = [all.ref('hole_depth'), all.ref('ratio')] as [Scalar, Scalar];
  const from = helpers.length + digits.length;
  const cells = all.lengthsMm.map((lengthMm, r) => {
    const placed = putLength(site, all, lines, r);
    const { engagement, reach } = judged(all, placed, all.ref('layers'), all.ref('tolerances'));
    const put = (c: number, ref: Scalar): Scalar => atom(lines.put(r, c, ref.text, ref.value as Cell), ref.value);
    const shown = (c: number, ref: Scalar): Scalar =>
      atom(lines.put(r, from + c, all.bound.guarded(ref.text, ref.value as Cell), ref.value as Cell, 'result'), ref.value);
    const reached = put(3, reach);
    const length = shown(0, atom(placed.length.text, lengthMm));
    const held = shown(1, engagement);
    const ratio = shown(2, printedRef('engagementRatio', held, all.ref('size')));
    const needed = shown(3, printedRef('holeDepthNeededMm', reached, all.ref('bottom_gap'), NO_TOLERANCE));
    const state = shown(4, printedRef('lengthState', ratio, least, needed, depth));
    const row = [length, held, ratio, needed, state].map(textOf);
    if (!isFull) return row;
    const pair = (c: number, a: Scalar, b: Scalar): string =>
      lines.put(r, c, placesFormula(a.text, b.text), placesThatDiffer(a.value as number, b.value as number));
    const [threadPlaces, holePlaces] = [pair(4, least, ratio), pair(5, needed, depth)];
    const thread = comparedFormula(tooLittleThread(least.text, ratio.text), threadPlaces);
    const deep = (broken: string): string => comparedFormula(tooDeep(broken, needed.text, depth.text), holePlaces);
    const [isHeld, clears] = [holds(ratio, least), keeps(needed, depth)];
    const both = `IF(${isHeld},"",${thread})&IF(OR(${isHeld},${clears}),"","; ")`;
    const bottoms = `IF(${clears},"",IF(${keeps(reached, depth)},${deep(LITTLE_ROOM)},${deep(BOTTOMS)}))`;
    const reason = site.body[r]?.[5] ?? '–';
    return [...row, lines.put(r, from + 5, all.bound.guarded(`IF(${state.text}="pass","–",${both}&${bottoms})`, reason), reason, 'result')];
  });
  return { lines, cells };
}

export function lengthTableBlock(site: TableSite): CallBlock | undefined {
  const all = lengthsOf(site);
  if (all === undefined) return undefined;
  const { lines, cells } = tableLines(site, all, site.header, true);
  return { cells: cells.flat(), live: all.bound.live, range: lines.shown(6, cells.length) };
}

const OF_TABLE = ['length (mm)', 'worst engagement (mm)', 'worst engagement ÷ d', 'hole depth needed (mm)', 'state'] as const;

export function pickedLengthBlock(site: TableSite): CallBlock | undefined {
  const all = lengthsOf(site);
  if (all === undefined) return undefined;
  const { lines } = tableLines(site, all, OF_TABLE, false);
  const value = site.body[0]?.[0] ?? '';
  const [lengths, states] = [4, 8].map(c => lines.column(c, all.lengthsMm.length));
  const cell = site.context.steps.row(
    {
      label: 'screw length',
      formula: all.bound.guarded(`INDEX(${lengths},MATCH("pass",${states},0))`, value),
      value,
      unit: 'mm',
      words: `the first that passes, on ${site.context.tables.name}`,
    },
    'result',
  );
  return { cells: [cell], live: all.bound.live };
}

export function commonLengthsBlock(site: TableSite): CallBlock | undefined {
  const grips = site.values[1] as readonly number[];
  if (grips.length > MOST_JOINTS) return undefined;
  const all = lengthsOf(site);
  if (all === undefined) return undefined;
  const { context, title, header, card, body } = site;
  const states = grips.map((_, i) => ({ title: `state in joint ${i + 1}`, words: `as SCREW.LENGTH.TABLE` }));
  const shown = header.map((head, c) => ({ title: head, ...(c === 0 ? { words: context.sourceWords.kind(card.kind) } : {}) }));
  const lines = context.tables.begin(title, [...LENGTH_COLUMNS, ...states, ...shown], body.length);
  const from = LENGTH_COLUMNS.length + grips.length;
  const cells = body.flatMap((line, r) => {
    const placed = putLength(site, all, lines, r);
    const judgedCells = grips.map((_, i) => {
      const { engagement, reach } = judged(
        all,
        placed,
        { items: [entryOf(all.ref('grips'), i)] },
        listOf(entryOf(all.ref('grip_tolerances'), i)),
      );
      const state = printedRef(
        'lengthState',
        printedRef('engagementRatio', engagement, all.ref('size')),
        all.ref('ratio'),
        printedRef('holeDepthNeededMm', reach, all.ref('bottom_gap'), NO_TOLERANCE),
        entryOf(all.ref('hole_depths'), i),
      );
      return lines.put(r, LENGTH_COLUMNS.length + i, state.text, state.value as Cell);
    });
    const passed = judgedCells.map(cell => `(${cell}="pass")`).join('+');
    return [placed.length.text, `0+${passed}`, String(grips.length)].map((formula, c) =>
      lines.put(r, from + c, all.bound.guarded(formula, line[c] ?? 0), line[c] ?? 0, 'result'),
    );
  });
  return { cells, live: all.bound.live, range: lines.shown(from, body.length) };
}

/** One tolerance as a list of one. */
const listOf = (tolerance: Ref): Ref =>
  'parts' in tolerance
    ? { parts: Object.fromEntries(Object.entries(tolerance.parts).map(([key, part]) => [key, { items: [part] }])) }
    : tolerance;
