// The hand-over copy: every call of ours becomes plain formulas on the same cells, or a value that says so.
import { call, CARDS } from '../../registry';
import type { Card } from '../../core/card';
import type { Cell } from '../../core/kinds';
import { formOfCard } from '../../plain/forms';
import type { PlanCell, Role, SheetPlan, Validation } from '../../sheet/plan';
import { isPlain } from './allowed';
import type { Converted, Desk } from './bind';
import { block, type Block } from './block';
import { DataSheet } from './data-sheet';
import { digitsOf } from './digits';
import type { Finding } from '../finding';
import { address, cellPosition } from '../../sheet/addresses';
import {
  areaOf,
  type FormulaNode,
  LONGEST_FORMULA,
  outermostCalls,
  ownFunction,
  parseFormula,
  type Replacement,
  rewritten,
  walk,
  withoutTexts,
} from '../../sheet/formula';
import { frozen } from './frozen';
import { LOOK_UPS } from './lookups';
import { type Figures, JointSheets, type Limit } from './joint-sheet';
import { SheetNames } from '../../sheet/sheet-names';
import { prepared } from '../read/prepared';
import { joinedValidations, withStates } from '../../sheet/ranges';
import { isFault, isRows, type Known, WorkbookValues, type SourceWorkbook } from '../../sheet/workbook-values';
import { StepsSheet } from './steps-sheet';
import { cellText } from '../../sheet/cell-text';

export type { Finding } from '../finding';

/** A value of ours on a converted sheet that follows its inputs. */
export interface LiveResult {
  readonly sheet: string;
  readonly at: string;
  readonly value: Cell;
  readonly unit: string;
  /** Which of several values of a call. */
  readonly name?: string;
  /** What a rule asks. */
  readonly lower?: Limit;
  readonly upper?: Limit;
}

export interface HandoverCopy {
  /** The converted sheets, then the variants, then the steps. */
  readonly sheets: readonly SheetPlan[];
  /** Sheet of the tables and choices; its plan is made last. */
  readonly data: DataSheet;
  readonly findings: readonly Finding[];
  readonly results: readonly LiveResult[];
  /** Ids of the functions that the workbook calls. */
  readonly used: ReadonlySet<string>;
  /** The values as the converted sheets have them. */
  readonly source: WorkbookValues;
  /** Sheets that we wrote ourselves. */
  readonly own: ReadonlySet<string>;
  readonly names: SheetNames;
  readonly figures: Figures;
}

/** How a sheet looked at home: roles, formats, widths. What is not said is plain text. */
export type Looks = (sheet: string) => Partial<Pick<SheetPlan, 'widths' | 'frozenRows' | 'merged' | 'stateRanges'>> & {
  readonly role?: (at: string) => Role | undefined;
  readonly format?: (at: string) => string | undefined;
};

interface Work extends Omit<Desk, 'inner'> {
  readonly joints: JointSheets;
  readonly findings: Finding[];
  readonly results: LiveResult[];
  /** Why a formula stays behind, by `Sheet!B4`. */
  readonly refused: ReadonlyMap<string, string>;
  /** Tables without room. */
  readonly crowded: ReadonlyMap<string, string>;
  readonly used: Set<string>;
}

export function convert(home: SourceWorkbook, looks: Looks = () => ({}), mostFigures = 0): HandoverCopy {
  const converted = new Map<string, Converted>();
  const copy = copied(home, looks, converted, mostFigures);
  // texts that became numbers on the way are numbers from the start the second time
  return converted.size === 0 ? copy : copied(home, looks, converted, mostFigures);
}

function copied(home: SourceWorkbook, looks: Looks, converted: Map<string, Converted>, mostFigures: number): HandoverCopy {
  const names = new SheetNames();
  const { workbook, homeNames, refused, findings: changes } = prepared(home, names);
  const source = new WorkbookValues(workbook, call);
  const data = new DataSheet(names.free('Data'));
  const steps = new StepsSheet(names.free('Steps'));
  const desk = { source, data, converted, validations: new Map<string, Validation>() };
  const work: Work = {
    ...desk,
    steps,
    joints: new JointSheets(desk, names, mostFigures),
    findings: [...changes],
    results: [],
    refused,
    crowded: spillAll(source, workbook),
    used: new Set(),
  };
  const bodies = workbook.sheets.map(({ name, cells }) => ({
    name,
    cells: onceEach([...cells].flatMap(([at]) => convertedCell(work, name, at).map(cell => ({ ...cell, origin: at })))),
  }));
  const sheets = bodies.map(({ name, cells }): SheetPlan => {
    const { role, format, ...rest } = looks(homeNames.get(name) ?? name);
    const isInput = (at: string): Role | undefined => (desk.validations.has(`${name}!${at}`) ? 'input' : undefined);
    return withStates({
      name,
      widths: [],
      ...rest,
      cells: cells.map(({ origin, ...cell }) =>
        withLooks(
          cell,
          role?.(cell.at) ?? isInput(cell.at),
          format?.(cell.at) ?? (typeof cell.value === 'number' ? format?.(origin) : undefined),
          desk.converted.get(`${name}!${cell.at}`),
        ),
      ),
      validations: joinedValidations(
        [...desk.validations].flatMap(([key, validation]) => (key === `${name}!${validation.range}` ? [validation] : [])),
      ),
      print: { landscape: true },
    });
  });
  for (const [key, { typed, value, unit }] of desk.converted) {
    const [sheet = '', at = ''] = key.split('!');
    work.findings.push({ sheet, at, what: 'changed', words: `"${typed}" became ${value}${unit === '' ? '' : ` ${unit}`}` });
  }
  const variants = work.joints.plans();
  return {
    sheets: [...sheets, ...variants.map(withStates), withStates(steps.plan())],
    data,
    findings: work.findings,
    results: work.results,
    used: work.used,
    source,
    names,
    figures: work.joints.figures(),
    own: new Set([...variants.map(({ name }) => name), steps.name, data.name]),
  };
}

/** A table spills over blank cells: what it puts there wins. */
function onceEach<C extends PlanCell>(cells: readonly C[]): C[] {
  const byAddress = new Map<string, C>();
  for (const cell of cells) if (cell.value !== '' || cell.formula !== undefined || !byAddress.has(cell.at)) byAddress.set(cell.at, cell);
  return [...byAddress.values()];
}

/** So often a table may wait for another one. */
const MOST_ROUNDS = 20;

/** Tables spill first: other cells may point at their neighbours, those before them too. */
function spillAll(source: WorkbookValues, workbook: SourceWorkbook): Map<string, string> {
  for (let round = 1; ; round++) {
    const crowded = spilledOnce(source, workbook);
    if (!source.startAnew() || round === MOST_ROUNDS) return crowded;
  }
}

/** A table that meets a filled cell has no room. */
function spilledOnce(source: WorkbookValues, workbook: SourceWorkbook): Map<string, string> {
  const crowded = new Map<string, string>();
  for (const { name, cells } of workbook.sheets) {
    const filled = new Set(
      [...cells].flatMap(([at, { value, formula }]) => (formula !== undefined || (value !== null && value !== '') ? [at] : [])),
    );
    for (const [at, { formula }] of cells) {
      if (formula?.toUpperCase().includes('ENCL.') !== true) continue;
      const result = source.result(name, at);
      if (!isRows(result)) continue;
      const { row, column } = cellPosition(at);
      const places = result.flatMap((line, r) => line.map((_, c) => address(row + r, column + c))).slice(1);
      const taken = places.find(place => filled.has(place));
      if (taken !== undefined) crowded.set(`${name}!${at}`, `its table has no room: ${taken} is filled`);
      else {
        places.forEach(place => filled.add(place));
        source.spill(name, row, column, result);
      }
    }
  }
  return crowded;
}

function withLooks(cell: PlanCell, role: Role | undefined, format: string | undefined, number: Converted | undefined): PlanCell {
  const looked = { ...cell, role: cell.role === 'header' ? cell.role : (role ?? cell.role), ...(format === undefined ? {} : { format }) };
  return number === undefined
    ? looked
    : {
        ...looked,
        value: number.value,
        note: `typed as "${cellText(number.typed)}"; now a number${number.unit === '' ? '' : ` in ${number.unit}`}`,
      };
}

const cellOf = (known: Known): Cell | undefined => {
  const value = isRows(known) ? known[0]?.[0] : known;
  return value === undefined || value === null
    ? undefined
    : isFault(value)
      ? value.cellError
      : typeof value === 'string'
        ? cellText(value)
        : value;
};

/** A formula as it was typed, without the name of the add-in: nothing in the file should look as if it were needed. */
const typed = (formula: string): string => cellText(formula.replace(/ENCL\./gi, ''));

const valued = (value: Cell | undefined): { readonly value?: Cell } => (value === undefined ? {} : { value });

function convertedCell(work: Work, sheet: string, at: string): PlanCell[] {
  const cell = work.source.cell(sheet, at);
  if (cell === undefined) return [];
  if (cell.formula === undefined) return [{ at, role: 'text', value: plainValue(work, sheet, at, cell.value) }];
  const { formula } = cell;
  const value = work.crowded.has(`${sheet}!${at}`) ? '#SPILL!' : cellOf(work.source.value(sheet, at));
  const tree = parseFormula(formula);
  const refusal =
    work.refused.get(`${sheet}!${at}`) ??
    work.crowded.get(`${sheet}!${at}`) ??
    (work.source.isCircular(sheet, at) ? 'it leads back to itself' : undefined);
  const calls = tree === undefined ? [] : outermostCalls(tree);
  for (const call of calls) for (const part of walk(call)) noteUse(work, part);
  if (tree === undefined || refusal !== undefined) {
    const cell = asValue(work, sheet, at, formula, value, refusal ?? 'the formula cannot be read');
    return [calls.length > 0 ? cell : { ...cell, role: 'text' }];
  }
  if (calls[0] === tree) return wholeCell(work, sheet, at, formula, tree);
  return [
    calls.length === 0 && !/ENCL\./i.test(withoutTexts(formula))
      ? nativeCell(work, sheet, at, formula, tree, value)
      : partOfCell(work, sheet, at, formula, tree, calls, value),
  ];
}

function plainValue({ findings }: Work, sheet: string, at: string, value: Cell | null): Cell {
  if (typeof value !== 'string') return value ?? '';
  const clean = cellText(value);
  if (clean !== value && clean !== value.replace(/\r\n?/g, '\n'))
    findings.push({
      sheet,
      at,
      what: 'changed',
      words: clean.endsWith('[cut]')
        ? `the text has ${value.length} characters and was cut`
        : 'characters that deceive or control were taken out of the text',
    });
  return clean;
}

function noteUse({ used }: Work, node: FormulaNode): void {
  const id = ownFunction(node);
  if (id !== undefined && CARDS.has(id)) used.add(id);
}

/** Names of functions and signs that not every program has. */
function foreign(tree: FormulaNode): string[] {
  return [...walk(tree)].flatMap(node => {
    if (node.type === 'UnaryExpression' && node.operator === '#') return ['#'];
    if (node.type === 'LetExpression') return ['LET'];
    if (node.type === 'LambdaExpression') return ['LAMBDA'];
    return node.type === 'CallExpression' &&
      node.callee?.name !== undefined &&
      ownFunction(node) === undefined &&
      !isPlain(node.callee.name)
      ? [node.callee.name]
      : [];
  });
}

function noteForeign({ findings }: Work, sheet: string, at: string, formula: string): void {
  const tree = parseFormula(formula);
  for (const name of new Set(tree === undefined ? [] : foreign(tree)))
    findings.push({ sheet, at, what: 'not in every program', words: `${name} stays as typed` });
}

function nativeCell(work: Work, sheet: string, at: string, formula: string, tree: FormulaNode, value: Cell | undefined): PlanCell {
  const spilled = spillReplacements(work, sheet, tree);
  if (spilled === undefined) return asValue(work, sheet, at, formula, value, 'it points at a table that other programs do not spill');
  const plain = rewritten(formula, [0, formula.length], spilled);
  noteForeign(work, sheet, at, plain);
  return { at, role: 'text', formula: plain, ...valued(value) };
}

function asValue({ findings }: Work, sheet: string, at: string, formula: string, value: Cell | undefined, why: string): PlanCell {
  findings.push(
    value === undefined
      ? { sheet, at, what: 'error', words: `${why}; its value is not known here`, values: 1 }
      : { sheet, at, what: 'value, not live', words: why, values: 1 },
  );
  return { at, role: 'result', value: value ?? '', note: `value, not live: was ${typed(formula)}` };
}

/** `B4#`, all that spilled from B4, becomes its range. Nothing where that is not known here. */
function spillReplacements({ source }: Work, sheet: string, tree: FormulaNode): Replacement[] | undefined {
  const replacements: Replacement[] = [];
  for (const node of walk(tree)) {
    const [argument] = node.arguments ?? [];
    if (node.operator !== '#' || argument === null || argument === undefined) continue;
    const area = areaOf(argument, sheet);
    const rows = area === undefined ? undefined : source.result(area.sheet, address(area.top, area.left));
    const isOurs =
      area !== undefined && source.cell(area.sheet, address(area.top, area.left))?.formula?.toUpperCase().startsWith('=ENCL.') === true;
    if (area === undefined || !isRows(rows) || !isOurs) return undefined;
    const name = String(argument.value);
    const prefix = name.slice(0, name.lastIndexOf('!') + 1);
    replacements.push({
      loc: [argument.loc[0], node.loc[1]],
      text: `${prefix}${address(area.top, area.left)}:${address(area.top + rows.length - 1, area.left + (rows[0]?.length ?? 1) - 1)}`,
    });
  }
  return replacements;
}

/** Works out the calls inside the arguments first, so that the outer one can point at their results. */
function worked(work: Work, sheet: string, at: string, formula: string, node: FormulaNode): Block | undefined {
  const inner = new Map<FormulaNode, string>();
  for (const argument of node.arguments ?? []) {
    for (const nested of outermostCalls(argument)) {
      const result = worked(work, sheet, at, formula, nested);
      if (result === undefined) return undefined;
      inner.set(nested, asReference(result));
    }
  }
  const card = CARDS.get(ownFunction(node) ?? '');
  if (card?.id === 'JOINT.VALUE') {
    const value = work.joints.value({ sheet, at, node });
    return value?.formula === undefined ? undefined : { cells: [value.formula], values: [value.value], live: true };
  }
  return card === undefined ? undefined : block({ ...work, inner }, { card, node, formula, sheet, at });
}

/** A row of results stands in one column on Steps, so it is named as a range only by one cell or all of them. */
const asReference = ({ cells }: Block): string =>
  cells.length === 1 ? (cells[0] as string) : `${cells[0]}:${(cells[cells.length - 1] as string).split('!')[1]}`;

/** The values that a call spills: which of them stand under its header, and where each goes. */
interface Spill {
  readonly header: readonly PlanCell[];
  readonly values: readonly Known[];
  readonly width: number;
  at(i: number): string;
}

function spillOf(id: string, result: Known, at: string): Spill {
  const { row, column } = cellPosition(at);
  const rows = isRows(result) ? result : [[result]];
  const hasHeader = rows.length > 1 && CARDS.get(id)?.result.shape === 'table';
  const body = (hasHeader ? rows.slice(1) : rows) as readonly (readonly Known[])[];
  const width = body[0]?.length ?? 1;
  return {
    header: hasHeader
      ? (rows[0] ?? []).map((value, c): PlanCell => ({ at: address(row, column + c), role: 'header', value: cellOf(value) ?? '' }))
      : [],
    values: body.flat(),
    width,
    at: i => address(row + Math.floor(i / width) + (hasHeader ? 1 : 0), column + (i % width)),
  };
}

function wholeCell(work: Work, sheet: string, at: string, formula: string, tree: FormulaNode): PlanCell[] {
  const id = ownFunction(tree) ?? '';
  const result = work.source.result(sheet, at);
  if (result === undefined || isFault(result)) return [faultyCell(work, sheet, at, formula, tree)];
  const table = isRows(result) && id === 'JOINT.TABLE' ? jointCells(work, sheet, at, tree, result) : undefined;
  return (
    table ??
    liveCells(work, sheet, at, formula, tree, spillOf(id, result, at)) ??
    fixedCells(work, sheet, at, formula, tree, spillOf(id, result, at))
  );
}

function faultyCell({ source, findings }: Work, sheet: string, at: string, formula: string, tree: FormulaNode): PlanCell {
  const id = ownFunction(tree) ?? '';
  const worth = source.value(sheet, at);
  const answer = call(
    id,
    (tree.arguments ?? []).map(part => source.evaluate(part, sheet)),
  );
  const words = isFault(worth)
    ? `${id} gave ${worth.cellError}${answer.ok ? '' : `: ${answer.message}`}`
    : `${id}: its inputs are not known here`;
  findings.push({ sheet, at, what: 'error', words, values: 1 });
  return { at, role: 'result', value: cellOf(worth) ?? '', note: `value, not live: was ${typed(formula)}` };
}

function liveCells(work: Work, sheet: string, at: string, formula: string, tree: FormulaNode, spill: Spill): PlanCell[] | undefined {
  const id = ownFunction(tree) ?? '';
  const made = worked(work, sheet, at, formula, tree);
  if (made === undefined || made.cells.length !== spill.values.length) return undefined;
  work.findings.push({
    sheet,
    at,
    what: made.live ? 'live' : 'value, not live',
    words: made.live ? id : `${id}: its inputs are texts that no formula follows`,
    values: spill.values.length,
  });
  const cells = made.cells.map((cell, i): PlanCell => {
    const value = made.values?.[i] ?? cellOf(spill.values[i]) ?? '';
    if (cell.startsWith('"')) return { at: spill.at(i), role: 'label', value };
    const { unit, name } = columnOf(id, i % spill.width);
    if (made.live) work.results.push({ sheet, at: spill.at(i), value, unit, ...(spill.values.length > 1 ? { name } : {}) });
    return { at: spill.at(i), role: 'result', formula: `=${cell}`, value, ...digitsOf(value) };
  });
  return [...spill.header, ...cells];
}

const whyFixed = (card: Card | undefined): string =>
  card?.notLive ??
  (card !== undefined && (formOfCard(card.id) !== undefined || card.id in LOOK_UPS) ? 'its inputs cannot be followed' : 'no plain formula');

function fixedCells(work: Work, sheet: string, at: string, formula: string, tree: FormulaNode, spill: Spill): PlanCell[] {
  const card = CARDS.get(ownFunction(tree) ?? '');
  work.findings.push({ sheet, at, what: 'value, not live', words: `${card?.id ?? ''}: ${whyFixed(card)}`, values: spill.values.length });
  const formulaOf = frozen(work, card, tree, sheet, at);
  const cells = spill.values.map((item, i): PlanCell => {
    const value = cellOf(item) ?? '';
    const shown = formulaOf(value);
    return { at: spill.at(i), role: 'result', value, ...digitsOf(value), ...(shown === undefined ? {} : { formula: `=${shown}` }) };
  });
  return [...spill.header, ...cells].map((cell, i) => (i === 0 ? { ...cell, note: `value, not live: was ${typed(formula)}` } : cell));
}

function columnOf(id: string, column: number): { readonly name: string; readonly unit: string } {
  const result = CARDS.get(id)?.result;
  if (result === undefined || result.shape === 'text') return { name: '', unit: '' };
  return 'columns' in result ? (result.columns[column] ?? { name: '', unit: '' }) : result;
}

function jointCells(
  work: Work,
  sheet: string,
  at: string,
  tree: FormulaNode,
  rows: readonly (readonly unknown[])[],
): PlanCell[] | undefined {
  const table = work.joints.table({ sheet, at, node: tree });
  if (table === undefined) return undefined;
  const { row, column } = cellPosition(at);
  let live = 0;
  let fixed = 0;
  const cells = rows.flatMap((line, r) =>
    line.map((_, c): PlanCell => {
      const place = address(row + r, column + c);
      const { name, formula, value, unit, lower, upper } = table.cell(r, c);
      if (r === 0) return { at: place, role: 'header', value };
      if (formula === undefined) {
        fixed += 1;
        return { at: place, role: 'result', value: typeof value === 'string' ? cellText(value) : value };
      }
      live += 1;
      work.results.push({
        sheet,
        at: place,
        value,
        unit,
        name,
        ...(lower === undefined ? {} : { lower }),
        ...(upper === undefined ? {} : { upper }),
      });
      return { at: place, role: 'result', formula: `=${formula}`, value, ...digitsOf(value) };
    }),
  );
  work.findings.push({ sheet, at, what: 'live', words: `JOINT.TABLE: see sheet ${table.sheet}`, values: live });
  if (fixed > 0)
    work.findings.push({
      sheet,
      at,
      what: 'value, not live',
      words: 'JOINT.TABLE: outputs without a value for these inputs',
      values: fixed,
    });
  return cells;
}

function partOfCell(
  work: Work,
  sheet: string,
  at: string,
  formula: string,
  tree: FormulaNode,
  calls: readonly FormulaNode[],
  value: Cell | undefined,
): PlanCell {
  const names = calls.map(ownFunction).join(', ');
  const fixed = (why: string): PlanCell => {
    const cell = asValue(work, sheet, at, formula, value, why);
    const shown = value === undefined ? undefined : frozen(work, undefined, tree, sheet, at)(value);
    return { ...cell, ...(shown === undefined ? {} : { formula: `=${shown}` }), ...(value === undefined ? {} : digitsOf(value)) };
  };
  const replacements = spillReplacements(work, sheet, tree);
  if (replacements === undefined || calls.length === 0) return fixed('a formula around a call of ours that cannot be taken apart');
  let isLive = false;
  for (const call of calls) {
    const result = isRows(work.source.evaluate(call, sheet)) && !isIndexed(tree, call) ? undefined : worked(work, sheet, at, formula, call);
    if (result === undefined) return fixed(`${names} inside another formula`);
    replacements.push(replacement(tree, call, result));
    isLive ||= result.live;
  }
  const plain = rewritten(formula, [0, formula.length], replacements);
  if (plain.length > LONGEST_FORMULA || /ENCL\./i.test(withoutTexts(plain))) return fixed(`${names} inside a formula that grows too long`);
  noteForeign(work, sheet, at, plain);
  work.findings.push({ sheet, at, what: isLive ? 'live' : 'value, not live', words: `${names} inside another formula`, values: 1 });
  if (isLive && value !== undefined) work.results.push({ sheet, at, value, unit: '' });
  return { at, role: 'result', formula: plain, ...valued(value), ...(value === undefined ? {} : digitsOf(value)) };
}

const parentOf = (tree: FormulaNode, call: FormulaNode): FormulaNode | undefined =>
  [...walk(tree)].find(node => node.arguments?.includes(call));

/** Functions that read a row of results whichever way it lies. */
const ANY_WAY = /^(MAX|MIN|SUM|SUMSQ|COUNT|AVERAGE)$/;

/** A table inside another formula stays whole where one value of it is asked for, or its order does not matter. */
function isIndexed(tree: FormulaNode, call: FormulaNode): boolean {
  const parent = parentOf(tree, call);
  const name = parent?.callee?.name?.toUpperCase() ?? '';
  const [rows, first, second] = parent?.arguments ?? [];
  return (name === 'INDEX' && rows === call && typeof (second ?? first)?.value === 'number') || ANY_WAY.test(name);
}

/** A row of results stands in a column on Steps: INDEX(row, 1, n) around the call becomes the cell itself. */
function replacement(tree: FormulaNode, call: FormulaNode, result: Block): Replacement {
  const parent = parentOf(tree, call);
  const [, row, column] = parent?.arguments ?? [];
  const wanted = (column ?? row)?.value;
  const cell =
    parent?.callee?.name?.toUpperCase() === 'INDEX' && result.cells.length > 1 && typeof wanted === 'number'
      ? result.cells[wanted - 1]
      : undefined;
  return cell === undefined || parent === undefined ? { loc: call.loc, text: asReference(result) } : { loc: parent.loc, text: cell };
}
