// The hand-over copy: every call of ours becomes plain formulas on the same cells, or a value that says so.
import { cellText } from './text';
import { CARDS } from '../registry';
import type { Cell } from '../core/kinds';
import type { PlanCell, Role, SheetPlan, Validation } from '../sheet/plan';
import { block, type Block } from './block';
import type { Converted, Desk } from './bind';
import { DataSheet } from './data-sheet';
import { address, cellPosition, type FormulaNode, ownFunction, parseFormula, type Replacement, rewritten, walk } from './formula';
import { isPlain } from './allowed';
import { JointSheets } from './joint-sheet';
import { Source, type SourceWorkbook } from './source';
import { StepsSheet } from './steps-sheet';

/** What happened to one cell with a call of ours, or a formula that not every program reads. */
export interface Finding {
  readonly sheet: string;
  readonly at: string;
  readonly what: 'live' | 'value, not live' | 'not in every program' | 'error';
  readonly words: string;
}

export interface HandoverCopy {
  readonly sheets: readonly SheetPlan[];
  readonly findings: readonly Finding[];
}

/** How a sheet looked at home: roles, formats, widths. What is not said is plain text. */
export type Looks = (sheet: string) => Partial<Pick<SheetPlan, 'widths' | 'frozenRows' | 'merged' | 'stateRanges'>> & { readonly role?: (at: string) => Role | undefined; readonly format?: (at: string) => string | undefined };

export function convert(workbook: SourceWorkbook, looks: Looks = () => ({})): HandoverCopy {
  const source = new Source(workbook);
  const steps = new StepsSheet();
  const data = new DataSheet();
  const joints = new JointSheets(source, data, workbook.sheets.map(({ name }) => name));
  const converted = new Map<string, Converted>();
  const validations = new Map<string, Validation>();
  const findings: Finding[] = [];
  spillAll(source, workbook);
  const bodies = workbook.sheets.map(sheet => ({ sheet, cells: [...sheet.cells].flatMap(([at]) => convertedCell({ source, steps, data, converted, validations, joints, findings }, sheet.name, at)) }));
  const sheets = bodies.map(({ sheet, cells }): SheetPlan => {
    const { role, format, ...rest } = looks(sheet.name);
    return {
      name: sheet.name,
      widths: rest.widths ?? [],
      ...rest,
      cells: cells.map(cell => withLooks(cell, role?.(cell.at), format?.(cell.at), converted.get(`${sheet.name}!${cell.at}`))),
      validations: [...validations].filter(([key]) => key.startsWith(`${sheet.name}!`)).map(([, validation]) => validation),
      print: { paper: 'A4', landscape: true },
    };
  });
  return { sheets: [...sheets, ...joints.plans(), steps.plan(), ...(data.isEmpty ? [] : [data.plan()])], findings };
}

/** Tables spill first: other cells may point at their neighbours. */
function spillAll(source: Source, workbook: SourceWorkbook): void {
  for (const sheet of workbook.sheets) {
    for (const [at, cell] of sheet.cells) {
      if (cell.formula?.toUpperCase().includes('ENCL.') !== true) continue;
      const result = source.result(sheet.name, at);
      const { row, column } = cellPosition(at);
      if (Array.isArray(result)) source.spill(sheet.name, row, column, result as Cell[][]);
    }
  }
}

interface Work extends Omit<Desk, 'inner'> {
  readonly joints: JointSheets;
  readonly findings: Finding[];
}

function withLooks(cell: PlanCell, role: Role | undefined, format: string | undefined, number: Converted | undefined): PlanCell {
  const looked = { ...cell, role: role ?? cell.role, ...(format === undefined ? {} : { format }) };
  return number === undefined ? looked : { ...looked, value: number.value, note: `typed as "${number.typed}"; now a number in ${number.unit}` };
}

function convertedCell(work: Work, sheet: string, at: string): PlanCell[] {
  const cell = work.source.cell(sheet, at);
  if (cell === undefined) return [];
  if (cell.formula === undefined) return cell.value === null || cell.value === '' ? [{ at, role: 'text', value: '' }] : [{ at, role: 'text', value: typeof cell.value === 'string' ? cellText(cell.value) : cell.value }];
  const tree = parseFormula(cell.formula);
  const worth = work.source.value(sheet, at);
  const value = typeof worth === 'object' || worth === undefined ? undefined : worth;
  const valued = value === undefined ? {} : { value };
  if (tree === undefined) {
    work.findings.push({ sheet, at, what: 'error', words: `this formula cannot be read: ${cell.formula.slice(0, 80)}` });
    return [{ at, role: 'text', ...valued }];
  }
  const calls = outermostCalls(tree);
  const foreign = [...walk(tree)].flatMap(node => (node.type === 'CallExpression' && ownFunction(node) === undefined && !isPlain(node.callee?.name ?? '') ? [node.callee?.name ?? ''] : []));
  for (const name of new Set(foreign)) work.findings.push({ sheet, at, what: 'not in every program', words: `${name} stays as typed` });
  if (calls.length === 0) return [{ at, role: 'text', formula: cell.formula, ...valued }];
  if (calls[0] === tree && calls.length === 1) return wholeCell(work, sheet, at, cell.formula, tree);
  return [partOfCell(work, sheet, at, cell.formula, tree, calls, valued)];
}

/** Calls of ours that do not stand inside another one. */
function outermostCalls(tree: FormulaNode): FormulaNode[] {
  if (ownFunction(tree) !== undefined) return [tree];
  return (tree.arguments ?? []).flatMap(part => (part === null ? [] : outermostCalls(part)));
}

/** Works out the calls inside the arguments first, so that the outer one can point at their results. */
function worked(work: Work, sheet: string, at: string, formula: string, node: FormulaNode): Block | undefined {
  const inner = new Map<FormulaNode, string>();
  for (const argument of node.arguments ?? []) {
    for (const call of argument === null ? [] : outermostCalls(argument)) {
      const result = worked(work, sheet, at, formula, call);
      if (result !== undefined) inner.set(call, asReference(result));
    }
  }
  const card = CARDS.get(ownFunction(node) ?? '');
  return card === undefined ? undefined : block({ ...work, inner }, { card, node, formula, sheet, at });
}

/** A row of results stands in one column on Steps, so it is named as a range only by one cell or all of them. */
const asReference = ({ cells }: Block): string => (cells.length === 1 ? (cells[0] as string) : `${cells[0]}:${(cells[cells.length - 1] as string).split('!')[1]}`);

function wholeCell(work: Work, sheet: string, at: string, formula: string, tree: FormulaNode): PlanCell[] {
  const id = ownFunction(tree) ?? '';
  const result = work.source.result(sheet, at);
  const rows = Array.isArray(result) ? (result as Cell[][]) : [[typeof result === 'object' || result === undefined ? '' : (result as Cell)]];
  const { row, column } = cellPosition(at);
  const place = (r: number, c: number): string => address(row + r, column + c);
  if (id === 'JOINT.TABLE') {
    const table = work.joints.table({ sheet, at, node: tree, formula });
    if (table !== undefined) {
      work.findings.push({ sheet, at, what: 'live', words: `${id}: see sheet ${table.sheet}` });
      return rows.flatMap((line, r) => line.map((value, c): PlanCell => (r === 0 ? { at: place(r, c), role: 'header', value } : { at: place(r, c), role: 'result', formula: `=${table.cell(r, c)}`, value })));
    }
  }
  const made = worked(work, sheet, at, formula, tree);
  if (made !== undefined && made.cells.length === rows.length * (rows[0]?.length ?? 0)) {
    work.findings.push({ sheet, at, what: made.live ? 'live' : 'value, not live', words: id });
    return made.cells.map((cell, c): PlanCell => ({ at: place(0, c), role: 'result', formula: `=${cell}`, value: rows[0]?.[c] ?? '' }));
  }
  const fault = typeof result === 'object' && result !== null && 'cellError' in result ? result.cellError : undefined;
  work.findings.push({ sheet, at, what: fault === undefined ? 'value, not live' : 'error', words: fault === undefined ? `${id}: ${CARDS.get(id)?.notLive ?? 'its inputs cannot be followed'}` : `${id} gave ${fault}` });
  return rows.flatMap((line, r) => line.map((value, c): PlanCell => ({ at: place(r, c), role: r === 0 && rows.length > 1 ? 'header' : 'result', value: fault ?? (typeof value === 'string' ? cellText(value) : value), ...(r === 0 && c === 0 ? { note: `value, not live: was ${cellText(formula)}` } : {}) })));
}

function partOfCell(work: Work, sheet: string, at: string, formula: string, tree: FormulaNode, calls: readonly FormulaNode[], valued: { readonly value?: Cell }): PlanCell {
  const replacements: Replacement[] = [];
  for (const call of calls) {
    const result = worked(work, sheet, at, formula, call);
    if (result === undefined) {
      work.findings.push({ sheet, at, what: 'value, not live', words: `${ownFunction(call)} inside another formula` });
      return { at, role: 'result', ...valued, note: `value, not live: was ${cellText(formula)}` };
    }
    replacements.push(replacement(tree, call, result));
  }
  work.findings.push({ sheet, at, what: 'live', words: calls.map(ownFunction).join(', ') });
  return { at, role: 'result', formula: rewritten(formula, [0, formula.length], replacements), ...valued };
}

/** A row of results stands in a column on Steps: INDEX(row, 1, n) around the call becomes the cell itself. */
function replacement(tree: FormulaNode, call: FormulaNode, result: Block): Replacement {
  const parent = [...walk(tree)].find(node => node.arguments?.includes(call));
  const [, row, column] = parent?.arguments ?? [];
  const wanted = (column ?? row)?.value;
  const cell = parent?.callee?.name.toUpperCase() === 'INDEX' && result.cells.length > 1 && typeof wanted === 'number' ? result.cells[wanted - 1] : undefined;
  return cell === undefined || parent === undefined ? { loc: call.loc, text: asReference(result) } : { loc: parent.loc, text: cell };
}
