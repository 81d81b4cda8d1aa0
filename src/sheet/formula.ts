// Formulas as trees with positions, and rewriting by position. The parser is a library; pieces without a tree are in
// formula-tokens.ts.
import { parse, parseA1Ref, tokenize } from '@borgar/fx';
import { type Area, columnName, fixedArea, fixedCell, isOneCell, LAST_PLACE, sheetPrefix } from './addresses';

/** As long as a cell of any program takes. */
export const LONGEST_FORMULA = 8192;

export interface FormulaNode {
  readonly type: string;
  readonly loc: readonly [from: number, to: number];
  readonly value?: unknown;
  /** Of a reference: `range`, whole rows or columns (`beam`), `name` or `table`. */
  readonly kind?: string;
  readonly operator?: string;
  /** A name, or a function written in place. */
  readonly callee?: Partial<FormulaNode> & { readonly name?: string };
  readonly arguments?: readonly (FormulaNode | null)[];
  readonly elements?: readonly (readonly FormulaNode[])[];
  readonly declarations?: readonly { readonly id: { readonly name: string }; readonly init: FormulaNode }[];
  readonly params?: readonly { readonly name: string }[];
  readonly body?: FormulaNode;
}

/** So many trees are kept; a sheet is read several times, and its formulas repeat. */
const MOST_KEPT = 20_000;
const kept = new Map<string, FormulaNode | undefined>();

export function parseFormula(formula: string): FormulaNode | undefined {
  if (kept.has(formula)) return kept.get(formula);
  if (kept.size >= MOST_KEPT) kept.clear();
  const tree = parsed(formula);
  kept.set(formula, tree);
  return tree;
}

function parsed(formula: string): FormulaNode | undefined {
  try {
    return parse(tokenize(formula, { withLocation: true, mergeRefs: true })) as unknown as FormulaNode;
  } catch {
    return undefined;
  }
}

/** The cells a reference names, or undefined where it is a name, a table or another workbook. */
export function areaOf(node: FormulaNode, homeSheet: string): Area | undefined {
  if (node.type !== 'ReferenceIdentifier' || typeof node.value !== 'string') return undefined;
  const { context = [], range } = partsOf(node.value);
  const [sheet = homeSheet] = context;
  if (range === undefined || context.length > 1 || sheet.includes(':')) return undefined;
  const { top, left, bottom, right } = range;
  if (typeof top !== 'number' || typeof left !== 'number' || typeof bottom !== 'number' || typeof right !== 'number') return undefined;
  return { sheet, top, left, bottom, right };
}

/** Whole columns or rows: `C:C`. */
export function beamOf(node: FormulaNode, homeSheet: string): Area | undefined {
  if (node.type !== 'ReferenceIdentifier' || node.kind !== 'beam' || typeof node.value !== 'string') return undefined;
  const { context = [], range = {} } = partsOf(node.value);
  const [sheet = homeSheet] = context;
  if (context.length > 1 || sheet.includes(':')) return undefined;
  const { top, left, bottom, right } = range;
  return { sheet, top: top ?? 0, left: left ?? 0, bottom: bottom ?? LAST_PLACE.row, right: right ?? LAST_PLACE.column };
}

/** `Sheet!$C:$C`, of whole columns or rows. */
export const fixedBeam = ({ sheet, top, left, bottom, right }: Area): string =>
  top === 0 && bottom === LAST_PLACE.row
    ? `${sheetPrefix(sheet)}$${columnName(left)}:$${columnName(right)}`
    : `${sheetPrefix(sheet)}$${top + 1}:$${bottom + 1}`;

type Side = 'top' | 'left' | 'bottom' | 'right';

interface RefParts {
  /** Sheet, or workbook and sheet, or two sheets with all between them as `first:last`. */
  readonly context?: readonly string[];
  readonly range?: Readonly<Partial<Record<Side, number | null> & Record<`$${Side}`, boolean>>>;
}

export const partsOf = (reference: string): RefParts => (parseA1Ref(reference) as RefParts | undefined) ?? {};

const TEXTS = /"(?:[^"]|"")*"/g;

/** The formula without the texts in it, which may hold anything. */
export const withoutTexts = (formula: string): string => formula.replace(TEXTS, '""');

/** What a file puts before functions that came after the first programs. */
const NEWER = /^(_XLFN\.|_XLWS\.)+/;

/** Name of a function in capitals, as it is typed: `XLOOKUP` of `_xlfn.XLOOKUP`. */
export const typedName = (name: string): string => name.toUpperCase().replace(NEWER, '');

export const calledName = (node: FormulaNode): string | undefined =>
  node.type === 'CallExpression' && node.callee?.name !== undefined ? typedName(node.callee.name) : undefined;

/** Function id of an ENCL call: `BOSS.OD`. */
export function ownFunction(node: FormulaNode): string | undefined {
  const name = calledName(node);
  return name?.startsWith('ENCL.') === true ? name.slice(5) : undefined;
}

/** Whether the whole formula is one call of ours. */
export function isOwnCall(formula: string): boolean {
  const tree = /ENCL\./i.test(formula) ? parseFormula(formula) : undefined;
  return tree !== undefined && ownFunction(tree) !== undefined;
}

/** Whether a formula does more with ranges and lists than to hand them to a call of ours. */
export function worksOnRanges(formula: string): boolean {
  const tree = parseFormula(formula);
  const handed = new Set(outermostCalls(tree ?? null).flatMap(call => [...walk(call)]));
  return [...walk(tree ?? null)].some(node => {
    if (handed.has(node)) return false;
    const area = areaOf(node, '');
    return node.type === 'ArrayExpression' || node.kind === 'beam' || (area !== undefined && !isOneCell(area));
  });
}

/** The parts of a node, in the order of the formula. */
export function partsIn({ callee, arguments: args = [], elements = [], declarations = [], body }: FormulaNode): (FormulaNode | null)[] {
  return [
    ...(callee?.type === undefined || callee.type === 'Identifier' ? [] : [callee as FormulaNode]),
    ...declarations.map(({ init }) => init),
    ...args,
    ...elements.flat(),
    ...(body === undefined ? [] : [body]),
  ];
}

/** The node and everything in it; formulas of strangers nest deeper than calls can. */
export function* walk(node: FormulaNode | null): Generator<FormulaNode> {
  const open = [node];
  while (open.length > 0) {
    const part = open.pop() ?? null;
    if (part === null) continue;
    yield part;
    open.push(...partsIn(part).reverse());
  }
}

/** Calls of ours that do not stand inside another one. */
export function outermostCalls(tree: FormulaNode | null): FormulaNode[] {
  const found: FormulaNode[] = [];
  const open = [tree];
  while (open.length > 0) {
    const part = open.pop() ?? null;
    if (part === null) continue;
    if (ownFunction(part) !== undefined) found.push(part);
    else open.push(...partsIn(part).reverse());
  }
  return found;
}

export function depthOf(tree: FormulaNode): number {
  let depth = 0;
  for (let level: (FormulaNode | null)[] = [tree]; level.length > 0; level = level.flatMap(part => (part === null ? [] : partsIn(part))))
    depth += 1;
  return depth;
}

export interface Replacement {
  readonly loc: readonly [number, number];
  readonly text: string;
}

/** The text of a part of the formula with replacements put in, last first so that positions stay true. */
export function rewritten(formula: string, [from, to]: readonly [number, number], replacements: readonly Replacement[]): string {
  return [...replacements]
    .filter(({ loc }) => loc[0] >= from && loc[1] <= to)
    .sort((a, b) => b.loc[0] - a.loc[0])
    .reduce((text, { loc, text: part }) => text.slice(0, loc[0] - from) + part + text.slice(loc[1] - from), formula.slice(from, to));
}

/** References without a sheet get the sheet on which they were typed, fixed in place. */
export function qualified(node: FormulaNode, homeSheet: string): Replacement[] {
  return [...walk(node)].flatMap(part => {
    const area = areaOf(part, homeSheet);
    if (area === undefined) return [];
    return [{ loc: part.loc, text: isOneCell(area) ? fixedCell(area.sheet, area.top, area.left) : fixedArea(area) }];
  });
}

/** 1E-9 and 0.000000001; the last of 16 digits is not kept by all. */
const plainNumber = (value: string): string => String(Number(Number(value).toPrecision(14)));

const PLAIN_TOKEN: Readonly<Record<string, (value: string) => string>> = {
  whitespace: () => '',
  newline: () => '',
  string: value => value,
  number: plainNumber,
};

/** A formula without what programs write in different ways: blanks, capitals of names and functions, digits of numbers. */
export const plainText = (formula: string): string =>
  respelled(formula, (type, value) => (PLAIN_TOKEN[type] ?? (text => text.toUpperCase()))(value)).replace(/\b(TRUE|FALSE)\(\)/g, '$1');

/** More digits than anybody types: some programs write all that a number has in them. */
const WRITTEN_OUT = /\d[\d.]{15}/;

/** A formula with its numbers as they were typed. */
export const typedText = (formula: string): string =>
  respelled(formula, (type, value) => (type === 'number' && WRITTEN_OUT.test(value) ? plainNumber(value) : value));

function respelled(formula: string, spell: (type: string, value: string) => string): string {
  try {
    return tokenize(formula)
      .map(({ type, value }) => spell(type, value))
      .join('');
  } catch {
    return formula;
  }
}
