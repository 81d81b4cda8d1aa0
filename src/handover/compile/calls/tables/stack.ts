// STACK.TABLE and STACK.SHARE: a line a link, then a line a method, each printed from its formula.
import { rootSumSquareMm, stackModifiedMm, stackNominalMm, stackRssMm, stackShiftMm, stackWorstMm } from '../../../../core/tolerance/stack';
import type { Deviations } from '../../../../core/read/deviation';
import { atom, number, type Ref, type Scalar } from '../../../../plain/spreadsheet';
import { address, fixedCell } from '../../../../sheet/addresses';
import { areaOf } from '../../../../sheet/formula';
import type { Cell } from '../../../../core/kinds';
import type { BoundArgument } from '../../arguments/argument';
import { rowsOf, spareRows } from '../../arguments/argument';
import { bind } from '../../arguments/bind';
import { quoted } from '../../inputs';
import { unchanged } from '../../unchanged';
import type { CallBlock } from '../call-site';
import { type BoundTable, boundTable, entryOf, printedRef, printedRow, type TableSite } from './table-site';

const NONE: ReadonlySet<string> = new Set();

/** The names beside the links: a text is followed, a number or a blank stays as it was sent. */
function boundLabels({ context, args, values }: TableSite, i: number): BoundArgument | undefined {
  const argument = args[i];
  const labels = values[i] as readonly string[];
  if (argument === undefined) return undefined;
  const area = argument.node === null ? undefined : areaOf(argument.node, argument.sheet);
  const areas = rowsOf(area) ?? [];
  if (areas.length < labels.length) {
    const conditions = unchanged(context, argument);
    return conditions && { ref: { items: labels.map(label => atom(quoted(label), label)) }, conditions, live: false };
  }
  const conditions: string[] = spareRows(areas.slice(labels.length));
  const items = labels.map((label, row): Ref => {
    const { sheet, top, left } = areas[row] as (typeof areas)[number];
    const cell = fixedCell(sheet, top, left);
    const typed = context.source.value(sheet, address(top, left));
    if (typeof typed === 'number' && typed !== 0) {
      conditions.push(`${cell}=${number(typed).text}`);
      return atom(quoted(label), label);
    }
    return atom(`IF(OR(${cell}="",${cell}=0),"–",${cell})`, label);
  });
  return { ref: { items }, conditions, live: false };
}

/** Columns of the table as lists, from that of the values on; each is worth what was sent. */
function lists(
  [values = number(0), tolerances = number(0), sensitivities = number(0)]: readonly Ref[],
  range: (c: number) => string,
): { readonly values: Ref; readonly tolerances: Ref; readonly sensitivities: Ref } {
  const worth = (list: Ref): readonly number[] => ('items' in list ? list.items.map(item => (item as Scalar).value as number) : []);
  const side = (key: string): Ref => ('parts' in tolerances ? (tolerances.parts[key] as Ref) : tolerances);
  return {
    values: { range: range(0), values: worth(values) },
    tolerances: {
      parts: {
        upperMm: { range: range(1), values: worth(side('upperMm')) },
        lowerMm: { range: range(2), values: worth(side('lowerMm')) },
      },
    },
    sensitivities: { range: range(3), values: worth(sensitivities) },
  };
}

export function stackTableBlock(site: TableSite): CallBlock | undefined {
  const { context, card, title, values, body, header } = site;
  const bound = boundTable(site, NONE, (param, i) => {
    const argument = site.args[i];
    if (i === 0) return boundLabels(site, i);
    return argument && bind(context, param, argument, values[i], NONE);
  });
  if (bound === undefined) return undefined;
  const [labels = number(0), ...numbers] = bound.refs;
  const links = (values[1] as readonly number[]).length;
  const lines = context.tables.begin(
    title,
    header.map((head, c) => ({ title: head, ...(c === 0 ? { words: context.sourceWords.kind(card.kind) } : {}) })),
    body.length,
  );
  const list = lists(numbers, c => lines.column(1 + c, links));
  const step = (label: string, ref: Scalar, value: number): Scalar =>
    atom(context.steps.row({ label, formula: ref.text, value, unit: 'mm', words: context.sourceWords.kind(card.kind) }), value);
  const [valuesMm, tolerances, sensitivities] = values.slice(1) as [readonly number[], Deviations, readonly number[]];
  const stack = [list.tolerances, list.sensitivities] as const;
  const rss = step('root sum square, unbounded, ±', printedRef('rootSumSquareMm', ...stack), rootSumSquareMm(tolerances, sensitivities));
  const nominal = step('nominal', printedRef('stackNominalMm', list.values, list.sensitivities), stackNominalMm(valuesMm, sensitivities));
  const shift = step('middle, from the nominal', printedRef('stackShiftMm', ...stack), stackShiftMm(tolerances, sensitivities));
  const halves = [
    step('worst case, ±', printedRef('stackWorstMm', ...stack), stackWorstMm(tolerances, sensitivities)),
    step('root sum square, ±', printedRef('stackRssMm', ...stack, number(1)), stackRssMm(tolerances, sensitivities, 1)),
    step('modified root sum square, ±', printedRef('stackModifiedMm', ...stack), stackModifiedMm(tolerances, sensitivities)),
  ];
  const cells = body.flatMap((line, r): readonly string[] => {
    const isLink = r < links;
    const formulas = isLink
      ? printedRow('stackLink', ...numbers.map(ref => entryOf(ref, r)), rss)
      : printedRow('stackTotal', nominal, shift, halves[r - links] as Scalar);
    const [first = ''] = line;
    const name = isLink ? bound.guarded((entryOf(labels, r) as Scalar).text, first) : quoted(String(first));
    return [name, ...formulas.map(({ formula }, c) => guardedWord(bound, formula, line[c + 1] ?? ''))].map((formula, c) =>
      written(formula, lines.put(r, c, isConstant(formula) ? undefined : formula, line[c] ?? '')),
    );
  });
  return { cells, live: bound.live, range: lines.shown(0, body.length) };
}

const isConstant = (formula: string): boolean => formula.startsWith('"');
/** A word that never changes stands in quotes. */
const written = (formula: string, cell: string): string => (isConstant(formula) ? formula : cell);
const guardedWord = ({ guarded }: BoundTable, formula: string, value: Cell): string =>
  isConstant(formula) ? formula : guarded(formula, value);

export function stackShareBlock(site: TableSite): CallBlock | undefined {
  const { context, card, title, values, body } = site;
  const bound = boundTable(site, NONE);
  if (bound === undefined) return undefined;
  const [tolerancesRef = number(0), sensitivitiesRef = number(0)] = bound.refs;
  const [tolerances, sensitivities] = values as [Deviations, readonly number[]];
  const { result } = card;
  const lines = context.tables.begin(
    title,
    [
      { title: 'link' },
      { title: 'upper deviation (mm)' },
      { title: 'lower deviation (mm)' },
      { title: 'sensitivity' },
      { title: 'sensitivity × half width (mm)' },
      { title: 'name' in result ? result.name : '', words: context.sourceWords.kind(card.kind) },
    ],
    body.length,
  );
  const list = lists([number(0), tolerancesRef, sensitivitiesRef], c => lines.column(c, body.length));
  const rssMm = rootSumSquareMm(tolerances, sensitivities);
  const rss = atom(
    context.steps.row({
      label: 'root sum square, unbounded, ±',
      formula: printedRef('rootSumSquareMm', list.tolerances, list.sensitivities).text,
      value: rssMm,
      unit: 'mm',
      words: context.sourceWords.kind(card.kind),
    }),
    rssMm,
  );
  const cells = body.map(([share = 0], r) => {
    const [tolerance, sensitivity] = [entryOf(tolerancesRef, r), entryOf(sensitivitiesRef, r) as Scalar];
    const half = printedRef('linkHalfMm', tolerance, sensitivity);
    const sides = tolerance as { readonly parts: Readonly<Record<string, Scalar>> };
    lines.put(r, 0, undefined, r + 1, 'label');
    [sides.parts['upperMm'], sides.parts['lowerMm'], sensitivity].forEach((ref, c) => {
      if (ref !== undefined) lines.put(r, 1 + c, bound.guarded(ref.text, 0), ref.value as number);
    });
    const halfCell = atom(lines.put(r, 4, bound.guarded(half.text, 0), half.value as number), half.value as number);
    return lines.put(r, 5, bound.guarded(printedRef('linkShare', halfCell, rss).text, 0), share);
  });
  return { cells, live: bound.live, range: lines.column(5, body.length) };
}
