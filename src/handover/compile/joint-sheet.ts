// A variant table as a sheet of its own: one row a variant, one column a step, the rules and their verdict at the end.
import { type State, WORST_FIRST } from '../../core/check/check';
import type { Cell } from '../../core/kinds';
import { withUnit } from '../../core/call';
import type { Deviation } from '../../core/read/deviation';
import { limitWords } from '../../core/read/params';
import { Refused } from '../../core/refuse';
import { type LegendEntry, section, type Section } from '../../figure/section';
import { isVerdict, outputCell, unitOf, type Variant } from '../../joint/evaluate';
import { INPUTS } from '../../joint/inputs';
import { RULES } from '../../joint/rules';
import { askedOutputs, variantBlock } from '../../joint/table';
import type { PlanCell, SheetPlan, Validation } from '../../sheet/plan';
import { asSent, type Desk } from './bind';
import { stepDigits } from './digits';
import { address, columnName, fixedCell, sheetPrefix } from '../../sheet/addresses';
import { areaOf, type FormulaNode } from '../../sheet/formula';
import { allOf, choicesOf, isQuantity, quoted } from './inputs';
import { JointRow, type RowInput } from './joint-row';
import { labelBeside } from './labels';
import { ruleState, verdictFormulas } from './joint-verdict';
import type { SheetNames } from '../../sheet/sheet-names';
import { isRows } from '../../sheet/workbook-values';

const HEAD = 3;
const FIRST = 5;
/** Width of a figure on its sheet. */
const FIGURE_PX = 700;

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

/** A variant as a section with letters, and what the letters stand for as values that stay live. */
export interface JointFigure extends Omit<Section, 'legend'> {
  /** What the variant is called beside its inputs. */
  readonly label: string;
  /** The cell with the call: `Variants B18`. */
  readonly from: string;
  readonly state: TableCell;
  readonly reason: TableCell;
  /** Without a cell where there is no value. */
  readonly legend: readonly (LegendEntry & { readonly cell?: TableCell })[];
}

export interface Figures {
  readonly shown: readonly JointFigure[];
  /** Variants that found no room. */
  readonly left: number;
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

/** One variant in its cells: names, and where the value of each stands. */
interface Given {
  readonly names: readonly string[];
  readonly label: Cell;
  at(i: number): Spot;
}

interface Spot {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

/** What was asked of which variants, and where they were written down. */
interface Written {
  readonly sheet: string;
  readonly variants: readonly Variant[];
  readonly outputs: readonly string[];
  readonly heads: ReadonlyMap<string, number>;
  /** By row and title. */
  readonly values: ReadonlyMap<string, Cell>;
  /** Rows with inputs that are not followed. */
  readonly holding: readonly boolean[];
}

/** What stands where a number is none any more. */
const NO_VALUE = quoted('no value');
const NONE = 'NA()';

export class JointSheets {
  private readonly made: SheetPlan[] = [];
  private readonly drawn = new Map<string, JointFigure>();
  private left = 0;

  /** @param mostFigures so many variants are drawn. */
  constructor(
    private readonly desk: Omit<Desk, 'inner' | 'steps'>,
    private readonly names: SheetNames,
    private readonly mostFigures: number,
  ) {}

  figures(): Figures {
    return { shown: [...this.drawn.values()], left: this.left };
  }

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
    const written = orNothing(() => {
      const { names, variants } = variantBlock(rows);
      const outputs = askedOutputs(asked === null ? undefined : isRows(asked) ? asked : [[asked]]);
      const given = variants.map((_, v): Given => {
        const row = inputs.top + 1 + v;
        return {
          names,
          label: labelBeside(source, inputs.sheet, address(row, inputs.left)) ?? v + 1,
          at: i => ({ sheet: inputs.sheet, row, column: inputs.left + i }),
        };
      });
      return this.write(`${sheet} ${at}`, variants, outputs, given);
    });
    return written === undefined ? undefined : { sheet: written.sheet, cell: (r, c) => tableCell(written, r, c, NO_VALUE) };
  }

  /** One output of a variant whose names and values stand in two lists. */
  value({ sheet, at, node }: Place): TableCell | undefined {
    const { source } = this.desk;
    const [namesNode = null, valuesNode = null, outputNode = null] = node.arguments ?? [];
    const [names, values] = [namesNode, valuesNode].map(one => (one === null ? undefined : areaOf(one, sheet)));
    const [titles, cells] = [names, values].map(area => (area === undefined ? undefined : source.area(area)?.flat()));
    const asked = source.evaluate(outputNode, sheet);
    if (values === undefined || titles === undefined || cells === undefined || asked === undefined) return undefined;
    const written = orNothing(() => {
      const block = variantBlock([titles, cells]);
      const isColumn = values.bottom > values.top;
      const given: Given = {
        names: block.names,
        label: labelBeside(source, sheet, at) ?? 1,
        at: i => ({ sheet: values.sheet, row: values.top + (isColumn ? i : 0), column: values.left + (isColumn ? 0 : i) }),
      };
      return this.write(`${sheet} ${at}`, block.variants, askedOutputs(isRows(asked) ? asked : [[asked]]), [given]);
    });
    const isAsked = asSent(this.desk, { node: outputNode, sheet });
    const cell = written === undefined || isAsked === undefined ? undefined : tableCell(written, 1, 0, NONE);
    return cell?.formula === undefined || isAsked === undefined || isAsked.length === 0
      ? cell
      : { ...cell, formula: `IF(${allOf(isAsked)},${cell.formula},${NONE})` };
  }

  /** The inputs of one variant as cells. A text with a unit becomes a number there. */
  private given({ names, at: spotOf }: Given, variant: Variant): ReadonlyMap<string, RowInput> {
    return new Map(
      names.map((name, i): [string, RowInput] => {
        const { sheet, row, column } = spotOf(i);
        const at = address(row, column);
        const typed = this.desk.source.value(sheet, at);
        this.validate(sheet, at, name);
        return [name, { cell: fixedCell(sheet, row, column), typed: this.asNumber(sheet, at, name, typed, variant) ?? typed }];
      }),
    );
  }

  private validate(sheet: string, at: string, name: string): void {
    const param = INPUTS.get(name)?.param;
    if (param === undefined || this.desk.source.cell(sheet, at)?.formula !== undefined) return;
    const words = choicesOf(param);
    const limits = limitWords(param.limits, param.kind.unit);
    const shown = [
      name,
      param.kind.unit,
      limits,
      INPUTS.get(name)?.defaultWords === 'required' ? 'required' : `blank: ${INPUTS.get(name)?.defaultWords}`,
    ]
      .filter(word => word !== '')
      .join(', ');
    const isNumber = param.kind.unit !== '' || param.limits !== undefined;
    const validation: Validation | undefined =
      words.length > 0
        ? { range: at, words: shown, list: this.desk.data.choices(name, words) }
        : isNumber
          ? { range: at, words: shown, ...param.limits }
          : undefined;
    if (validation !== undefined) this.desk.validations.set(`${sheet}!${at}`, validation);
  }

  private asNumber(sheet: string, at: string, name: string, typed: unknown, variant: Variant): number | undefined {
    if (typeof typed !== 'string' || !isQuantity(typed) || this.desk.source.cell(sheet, at)?.formula !== undefined) return undefined;
    const value = orNothing(() => variant.value(name));
    const { upperMm, lowerMm } = typeof value === 'object' && value !== null ? (value as Partial<Deviation>) : {};
    const worth = upperMm !== undefined && lowerMm !== undefined && upperMm + lowerMm === 0 ? upperMm : value;
    if (typeof worth !== 'number') return undefined;
    const key = `${sheet}!${at}`;
    const known = this.desk.converted.get(key);
    if (known !== undefined && known.value !== worth) return undefined;
    this.desk.converted.set(key, { value: worth, unit: unitOf(name), typed });
    return worth;
  }

  private write(from: string, variants: readonly Variant[], outputs: readonly string[], given: readonly Given[]): Written {
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
    const drawn = this.toDraw(variants, given);
    const drawings: (Section & { readonly v: number })[] = [];
    const holding = variants.map((variant, v) => {
      const r = FIRST + v;
      const mine = given[v] as Given;
      cells.push({ at: address(r, 0), role: 'label', value: mine.label });
      const put = (
        title: string,
        words: string,
        formula: string | undefined,
        value: Cell | undefined,
        role: PlanCell['role'] = 'text',
      ): string => {
        const c = column(title, words);
        cells.push({
          at: address(r, c),
          role,
          ...stepDigits(value),
          ...(formula === undefined ? {} : { formula: `=${formula}` }),
          ...(value === undefined ? {} : { value }),
        });
        if (value !== undefined) values.set(`${v} ${title}`, value);
        return `$${columnName(c)}${r + 1}`;
      };
      const row = new JointRow(variant, this.given(mine, variant), this.desk.data, put);
      for (const output of outputs) if (!isVerdict(output)) row.cellOf(output);
      const states = RULES.map(rule => ({ rule, ...ruleState(row, variant, rule) }));
      const figure = drawn.has(v) ? section(variant, { print: true, widthPx: FIGURE_PX }) : undefined;
      for (const { of, value } of figure?.legend ?? []) if (value !== undefined) row.cellOf(of);
      const holds = row.holds();
      if (outputs.includes(ALL_COMPUTED))
        put(
          ALL_COMPUTED,
          'value, not live',
          `IF(${row.asSent()},${String(variant.verdict(ALL_COMPUTED)).toUpperCase()},${NO_VALUE})`,
          variant.verdict(ALL_COMPUTED),
        );
      const verdict = verdictFormulas(states, holds);
      const state = variant.verdict('state');
      const first = state === 'pass' ? undefined : variant.findings().find(finding => finding.state === state);
      const stateCell = put('state', 'worst of all rules', verdict.state, state, 'result');
      put('rule', 'first rule of that state', verdict.rule(stateCell), first?.rule.name ?? '–', 'result');
      put('its value', 'what that rule judges', verdict.value(stateCell), first?.value ?? '–', 'result');
      put('its limit', 'what that rule asks', verdict.limit(stateCell), first?.limit ?? '–', 'result');
      if (figure !== undefined) drawings.push({ v, ...figure });
      return holds !== undefined;
    });
    this.made.push({
      name,
      widths: [34, ...[...heads.keys()].map(title => (title === 'rule' ? 30 : Math.max(12, Math.min(16, title.length + 2))))],
      frozenRows: FIRST,
      cells,
      print: { landscape: true, repeatRows: FIRST },
    });
    const written: Written = { sheet: name, variants, outputs, heads, values, holding };
    for (const { v, legend, ...drawing } of drawings) {
      const { label } = given[v] as Given;
      const at = (title: string): TableCell => named(written, v, title, NO_VALUE);
      this.drawn.set(keyOf(given[v] as Given), {
        ...drawing,
        label: typeof label === 'number' ? `variant ${label}` : String(label),
        from,
        state: at('state'),
        reason: at('reason'),
        legend: legend.map(entry => ({ ...entry, ...(entry.value === undefined ? {} : { cell: at(entry.of) }) })),
      });
    }
    return written;
  }

  /** Which variants get a figure: each once, however often it is asked for. */
  private toDraw(variants: readonly Variant[], given: readonly Given[]): ReadonlySet<number> {
    if (this.mostFigures === 0) return new Set();
    const undrawn = variants.flatMap((variant, v) =>
      this.drawn.has(keyOf(given[v] as Given)) ? [] : [{ v, state: variant.verdict('state') as State }],
    );
    const chosen = worthDrawing(undrawn, this.mostFigures - this.drawn.size);
    this.left += undrawn.length - chosen.length;
    return new Set(chosen.map(({ v }) => v));
  }
}

/** The best of many, in the order of the sheet: what fails is not what will be tooled. */
function worthDrawing<T extends { readonly state: State }>(variants: readonly T[], most: number): readonly T[] {
  const ranked = [...variants].sort((a, b) => WORST_FIRST.indexOf(b.state) - WORST_FIRST.indexOf(a.state));
  const chosen = new Set(ranked.slice(0, Math.max(0, most)));
  return variants.filter(variant => chosen.has(variant));
}

/** The cells of a variant. */
const keyOf = ({ names, at }: Given): string => names.map((_, i) => Object.values(at(i)).join(' ')).join();

const ALL_COMPUTED = 'all computed';

/** Row r of the table, column c; row 0 is its header. `otherwise` stands where a number is none any more. */
function tableCell(written: Written, r: number, c: number, otherwise: string): TableCell {
  const name = written.outputs[c] ?? '';
  return r === 0 ? { name, value: withUnit(name, unitOf(name)), unit: '' } : named(written, r - 1, name, otherwise);
}

/** A value of variant v. */
function named({ sheet, variants, heads, values, holding }: Written, v: number, name: string, otherwise: string): TableCell {
  const unit = unitOf(name);
  const cellOf = (title: string): string => `${sheetPrefix(sheet)}$${columnName(heads.get(title) ?? 0)}$${FIRST + v + 1}`;
  const valueOf = (title: string): Cell | undefined => values.get(`${v} ${title}`);
  if (name === 'state' || name === 'reason' || name === ALL_COMPUTED) {
    const title = name === 'reason' ? 'rule' : name;
    return { name, formula: cellOf(title), value: valueOf(title) ?? '', unit };
  }
  const value = outputCell(variants[v] as Variant, name);
  const title = withUnit(name, unit);
  if (valueOf(title) === undefined) return { name, value, unit };
  const isThere = typeof value === 'number' ? [`ISNUMBER(${cellOf(title)})`] : [];
  const conditions = [...(holding[v] === true ? [cellOf('fixed inputs as sent')] : []), ...isThere];
  const formula = conditions.length === 0 ? cellOf(title) : `IF(AND(${conditions.join(',')}),${cellOf(title)},${otherwise})`;
  return { name, formula, value, unit, ...limitsOf(name, of => limitAt(cellOf(of), valueOf(of))) };
}

function orNothing<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}

const limitAt = (formula: string, value: Cell | undefined): Limit | undefined => (value === undefined ? undefined : { formula, value });

/** What the first rule that judges this output asks of it. */
function limitsOf(output: string, cellOf: (title: string) => Limit | undefined): { readonly lower?: Limit; readonly upper?: Limit } {
  const [bound] = RULES.filter(({ value, when }) => value === output && when === undefined).flatMap(({ fail, look }) => fail ?? look ?? []);
  const limit =
    bound === undefined
      ? undefined
      : typeof bound.limit === 'number'
        ? { formula: String(bound.limit), value: bound.limit }
        : cellOf(withUnit(bound.limit, unitOf(bound.limit)));
  if (bound === undefined || limit === undefined) return {};
  return bound.side === 'below' || bound.side === 'at most' ? { lower: limit } : { upper: limit };
}
