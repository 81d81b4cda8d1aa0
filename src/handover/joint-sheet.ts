// A variant table as a sheet of its own: one row a variant, one column a step, the rules and their verdict at the end.
import type { Cell } from '../core/kinds';
import { withUnit } from '../core/call';
import type { Deviation } from '../core/read/deviation';
import { limitWords } from '../core/read/params';
import { Refused } from '../core/refuse';
import { isVerdict, unitOf, type Variant } from '../joint/evaluate';
import { INPUTS } from '../joint/inputs';
import { RULES } from '../joint/rules';
import { askedOutputs, outputCell, variantBlock } from '../joint/table';
import type { PlanCell, SheetPlan, Validation } from '../sheet/plan';
import type { Desk } from './bind';
import { stepDigits } from './digits';
import { address, areaOf, columnName, fixedCell, type FormulaNode, sheetPrefix } from './formula';
import { choicesOf, isQuantity, quoted } from './inputs';
import { JointRow, type RowInput } from './joint-row';
import { labelBeside } from './labels';
import { ruleState, verdictFormulas } from './joint-verdict';
import type { SheetNames } from './names';

const HEAD = 3;
const FIRST = 5;

/** A formula without the equals sign, and what it is worth. */
export interface Limit {
  readonly formula: string;
  readonly value: Cell;
}

/** One cell of the spilled table: what stands there on the hand-over. */
export interface TableCell {
  /** The output. */
  readonly name: string;
  /** Without the equals sign; nothing where the value does not follow. */
  readonly formula?: string;
  readonly value: Cell;
  readonly unit: string;
  /** What a rule asks of this output. */
  readonly lower?: Limit;
  readonly upper?: Limit;
}

export interface JointTable {
  readonly sheet: string;
  /** Row r, column c of the spilled table; row 0 is its header. */
  cell(r: number, c: number): TableCell;
}

interface Place {
  readonly sheet: string;
  readonly at: string;
  readonly node: FormulaNode;
}

/** A range of inputs: its place, the input names of its columns. */
interface InputBlock {
  readonly sheet: string;
  readonly top: number;
  readonly left: number;
  readonly names: readonly string[];
}

export class JointSheets {
  private readonly made: SheetPlan[] = [];

  constructor(
    private readonly desk: Omit<Desk, 'inner' | 'steps'>,
    private readonly names: SheetNames,
  ) {}

  plans(): readonly SheetPlan[] {
    return this.made;
  }

  /** Nothing where the inputs are not a plain range, or cannot be read. */
  table({ sheet, at, node }: Place): JointTable | undefined {
    const { source } = this.desk;
    const [inputsNode, outputsNode] = node.arguments ?? [];
    const inputs = inputsNode === null || inputsNode === undefined ? undefined : areaOf(inputsNode, sheet);
    const rows = inputs === undefined ? undefined : source.area(inputs);
    const asked = outputsNode === null || outputsNode === undefined ? null : source.evaluate(outputsNode, sheet);
    if (inputs === undefined || rows === undefined || asked === undefined) return undefined;
    try {
      const { names, variants } = variantBlock(rows);
      const outputs = askedOutputs(asked === null ? undefined : Array.isArray(asked) ? asked : [[asked]]);
      const block: InputBlock = { sheet: inputs.sheet, top: inputs.top + 1, left: inputs.left, names };
      const label = (row: number): Cell => labelBeside(source, inputs.sheet, address(inputs.top + 1 + row, inputs.left)) ?? row + 1;
      return this.write(`${sheet} ${at}`, variants, outputs, label, (variant, row) => this.given(block, variant, row));
    } catch (fault) {
      if (fault instanceof Refused) return undefined;
      throw fault;
    }
  }

  /** The inputs of one variant as cells. A text with a unit becomes a number there. */
  private given({ sheet, top, left, names }: InputBlock, variant: Variant, row: number): ReadonlyMap<string, RowInput> {
    return new Map(
      names.map((name, i): [string, RowInput] => {
        const at = address(top + row, left + i);
        const cell = fixedCell(sheet, top + row, left + i);
        const typed = this.desk.source.value(sheet, at);
        this.validate(sheet, at, name);
        return [name, { cell, typed: this.asNumber(sheet, at, name, typed, variant) ?? typed }];
      }),
    );
  }

  private validate(sheet: string, at: string, name: string): void {
    const param = INPUTS.get(name)?.param;
    if (param === undefined || this.desk.source.cell(sheet, at)?.formula !== undefined) return;
    const words = choicesOf(param);
    const limits = limitWords(param.limits, param.kind.unit);
    const shown = [name, param.kind.unit, limits, INPUTS.get(name)?.defaultWords === 'required' ? 'required' : `blank: ${INPUTS.get(name)?.defaultWords}`].filter(word => word !== '').join(', ');
    const isNumber = param.kind.unit !== '' || param.limits !== undefined;
    const validation: Validation | undefined = words.length > 0 ? { range: at, words: shown, list: this.desk.data.choices(name, words) } : isNumber ? { range: at, words: shown, ...param.limits } : undefined;
    if (validation !== undefined) this.desk.validations.set(`${sheet}!${at}`, validation);
  }

  private asNumber(sheet: string, at: string, name: string, typed: unknown, variant: Variant): number | undefined {
    if (typeof typed !== 'string' || !isQuantity(typed) || this.desk.source.cell(sheet, at)?.formula !== undefined) return undefined;
    const value = valueOrNothing(variant, name);
    const { upperMm, lowerMm } = typeof value === 'object' && value !== null ? (value as Partial<Deviation>) : {};
    const worth = upperMm !== undefined && lowerMm !== undefined && upperMm + lowerMm === 0 ? upperMm : value;
    if (typeof worth !== 'number') return undefined;
    const key = `${sheet}!${at}`;
    const known = this.desk.converted.get(key);
    if (known !== undefined && known.value !== worth) return undefined;
    this.desk.converted.set(key, { value: worth, unit: unitOf(name), typed });
    return worth;
  }

  private write(from: string, variants: readonly Variant[], outputs: readonly string[], labels: (row: number) => Cell, given: (variant: Variant, row: number) => ReadonlyMap<string, RowInput>): JointTable {
    const name = this.names.numbered('Variants');
    const heads = new Map<string, number>();
    const cells: PlanCell[] = [
      { at: 'A1', role: 'title', value: 'Variants, step by step' },
      { at: 'A2', role: 'note', value: `of ${from}` },
      { at: 'B2', role: 'note', value: 'One row a variant, one column a step; the inputs are the cells of that sheet. Change them there.' },
      { at: address(HEAD, 0), role: 'header', value: 'variant' },
      { at: address(HEAD + 1, 0), role: 'note', value: 'how it is worked out' },
    ];
    const column = (title: string, words: string): number => {
      const known = heads.get(title);
      if (known !== undefined) return known;
      const c = heads.size + 1;
      heads.set(title, c);
      cells.push({ at: address(HEAD, c), role: 'header', value: title }, { at: address(HEAD + 1, c), role: 'note', value: words });
      return c;
    };
    const values = new Map<string, Cell>();
    const holding = variants.map((variant, v) => {
      const r = FIRST + v;
      cells.push({ at: address(r, 0), role: 'label', value: labels(v) });
      const put = (title: string, words: string, formula: string | undefined, value: Cell | undefined, role: PlanCell['role'] = 'text'): string => {
        const c = column(title, words);
        cells.push({ at: address(r, c), role, ...stepDigits(value), ...(formula === undefined ? {} : { formula: `=${formula}` }), ...(value === undefined ? {} : { value }) });
        if (value !== undefined) values.set(`${v} ${title}`, value);
        return `$${columnName(c)}${r + 1}`;
      };
      const row = new JointRow(variant, given(variant, v), this.desk.data, put);
      for (const output of outputs) if (!isVerdict(output)) row.cellOf(output);
      const states = RULES.map(rule => ({ rule, ...ruleState(row, variant, rule) }));
      const holds = row.holds();
      const verdict = verdictFormulas(states, holds);
      const state = variant.verdict('state');
      const first = state === 'pass' ? undefined : variant.findings().find(finding => finding.state === state);
      const stateCell = put('state', 'worst of all rules', verdict.state, state, 'result');
      put('rule', 'first rule of that state', verdict.rule(stateCell), first?.rule.name ?? '–', 'result');
      put('its value', 'what that rule judges', verdict.value(stateCell), first?.value ?? '–', 'result');
      put('its limit', 'what that rule asks', verdict.limit(stateCell), first?.limit ?? '–', 'result');
      return holds !== undefined;
    });
    this.made.push({ name, widths: [34, ...[...heads.keys()].map(title => (title === 'rule' ? 30 : Math.max(12, Math.min(16, title.length + 2))))], frozenRows: FIRST, cells, print: { paper: 'A4', landscape: true, repeatRows: FIRST } });
    return { sheet: name, cell: (r, c) => this.tableCell(variants, outputs, r, c, name, heads, values, holding) };
  }

  private tableCell(variants: readonly Variant[], outputs: readonly string[], r: number, c: number, sheet: string, heads: ReadonlyMap<string, number>, values: ReadonlyMap<string, Cell>, holding: readonly boolean[]): TableCell {
    const output = outputs[c] ?? '';
    const unit = unitOf(output);
    if (r === 0) return { name: output, value: withUnit(output, unit), unit: '' };
    const cellOf = (title: string): string => `${sheetPrefix(sheet)}$${columnName(heads.get(title) ?? 0)}$${FIRST + r}`;
    if (output === 'state') return { name: output, formula: cellOf('state'), value: values.get(`${r - 1} state`) ?? '', unit };
    if (output === 'reason') return { name: output, formula: cellOf('rule'), value: values.get(`${r - 1} rule`) ?? '', unit };
    const value = outputCell(variants[r - 1] as Variant, output);
    const title = withUnit(output, unit);
    if (!values.has(`${r - 1} ${title}`)) return { name: output, value, unit };
    const isThere = typeof value === 'number' ? `ISNUMBER(${cellOf(title)})` : undefined;
    const conditions = [...(holding[r - 1] === true ? [cellOf('fixed inputs as sent')] : []), ...(isThere === undefined ? [] : [isThere])];
    const formula = conditions.length === 0 ? cellOf(title) : `IF(AND(${conditions.join(',')}),${cellOf(title)},${quoted('no value')})`;
    return { name: output, formula, value, unit, ...limitsOf(output, title => limitAt(cellOf(title), values.get(`${r - 1} ${title}`))) };
  }
}

const limitAt = (formula: string, value: Cell | undefined): Limit | undefined => (value === undefined ? undefined : { formula, value });

/** What the first rule that judges this output asks of it. */
function limitsOf(output: string, cellOf: (title: string) => Limit | undefined): { readonly lower?: Limit; readonly upper?: Limit } {
  const [bound] = RULES.filter(({ value, when }) => value === output && when === undefined).flatMap(({ fail, look }) => fail ?? look ?? []);
  const limit = bound === undefined ? undefined : typeof bound.limit === 'number' ? { formula: String(bound.limit), value: bound.limit } : cellOf(withUnit(bound.limit, unitOf(bound.limit)));
  if (bound === undefined || limit === undefined) return {};
  return bound.side === 'below' || bound.side === 'at most' ? { lower: limit } : { upper: limit };
}

function valueOrNothing(variant: Variant, name: string): unknown {
  try {
    return variant.value(name);
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}
