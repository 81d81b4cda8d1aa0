// A variant table as a sheet of its own: one row a variant, one column a step, the rules and their verdict at the end.
import type { Cell } from '../core/kinds';
import { withUnit } from '../core/call';
import { Refused } from '../core/refuse';
import { isVerdict, unitOf, type Variant } from '../joint/evaluate';
import { RULES } from '../joint/rules';
import { askedOutputs, outputCell, variantBlock } from '../joint/table';
import type { PlanCell, SheetPlan } from '../sheet/plan';
import type { DataSheet } from './data-sheet';
import { address, areaOf, columnName, fixedCell, type FormulaNode, sheetPrefix } from './formula';
import { JointRow, type RowInput } from './joint-row';
import { ruleState, verdictFormulas } from './joint-verdict';
import type { Source } from './source';

const HEAD = 3;
const FIRST = 5;

export interface JointTable {
  readonly sheet: string;
  /** What stands in row r, column c of the spilled table, as a formula without the equals sign. */
  cell(r: number, c: number): string;
}

interface Place {
  readonly sheet: string;
  readonly at: string;
  readonly node: FormulaNode;
  readonly formula: string;
}

export class JointSheets {
  private readonly made: SheetPlan[] = [];

  constructor(
    private readonly source: Source,
    private readonly data: DataSheet,
    private readonly taken: readonly string[],
  ) {}

  plans(): readonly SheetPlan[] {
    return this.made;
  }

  /** Nothing where the inputs are not a plain range, or cannot be read. */
  table({ sheet, at, node }: Place): JointTable | undefined {
    const [inputsNode, outputsNode] = node.arguments ?? [];
    const inputs = inputsNode === null || inputsNode === undefined ? undefined : areaOf(inputsNode, sheet);
    if (inputs === undefined) return undefined;
    try {
      const { names, variants } = variantBlock(this.source.area(inputs));
      const outputsArea = outputsNode === null || outputsNode === undefined ? undefined : areaOf(outputsNode, sheet);
      const outputs = askedOutputs(outputsArea === undefined ? undefined : this.source.area(outputsArea));
      const given = (row: number): ReadonlyMap<string, RowInput> => new Map(names.map((name, i) => [name, { cell: fixedCell(inputs.sheet, inputs.top + 1 + row, inputs.left + i), typed: this.source.value(inputs.sheet, address(inputs.top + 1 + row, inputs.left + i)) }]));
      return this.write(this.freeName(), `${sheet} ${at}`, variants, outputs, given);
    } catch (fault) {
      if (fault instanceof Refused) return undefined;
      throw fault;
    }
  }

  private freeName(): string {
    for (let n = 1; ; n++) {
      const name = `Variants ${n}`.replace(' ', '_');
      if (![...this.taken, ...this.made.map(({ name: used }) => used)].includes(name)) return name;
    }
  }

  private write(name: string, from: string, variants: readonly Variant[], outputs: readonly string[], given: (row: number) => ReadonlyMap<string, RowInput>): JointTable {
    const columns: string[] = [];
    const cells: PlanCell[] = [
      { at: 'A1', role: 'title', value: `Variants of ${from}, step by step` },
      { at: 'A2', role: 'note', value: 'One row a variant, one column a step; the inputs are the cells of that sheet. Change them there.' },
      { at: address(HEAD, 0), role: 'header', value: 'variant' },
    ];
    const heads = new Map<string, { readonly column: number }>();
    const column = (title: string, words: string): number => {
      const known = heads.get(title);
      if (known !== undefined) return known.column;
      const c = columns.length + 1;
      columns.push(title);
      heads.set(title, { column: c });
      cells.push({ at: address(HEAD, c), role: 'header', value: title }, { at: address(HEAD + 1, c), role: 'note', value: words });
      return c;
    };
    variants.forEach((variant, v) => {
      const r = FIRST + v;
      cells.push({ at: address(r, 0), role: 'label', value: v + 1 });
      const row = new JointRow(variant, given(v), this.data, (title, words, formula, value) => {
        const c = column(title, words);
        cells.push({ at: address(r, c), role: 'text', format: 'General', ...(formula === undefined ? {} : { formula: `=${formula}` }), ...(value === undefined ? {} : { value }) });
        return `$${columnName(c)}${r + 1}`;
      });
      for (const output of outputs) if (!isVerdict(output)) row.cellOf(output);
      const states = RULES.map(rule => ({ rule, ...ruleState(row, variant, rule) }));
      const verdict = verdictFormulas(states);
      const put = (title: string, formula: string, value: Cell | undefined): void => {
        cells.push({ at: address(r, column(title, title === 'state' ? 'worst of all rules' : 'first rule of that state')), role: 'result', formula: `=${formula}`, ...(value === undefined ? {} : { value }) });
      };
      const state = variant.verdict('state');
      const first = variant.findings().find(finding => finding.state === state);
      put('state', verdict.state, state);
      put('rule', verdict.rule(`$${columnName(heads.get('state')?.column ?? 0)}${r + 1}`), state === 'pass' ? '–' : (first?.rule.name ?? '–'));
      put('its value', verdict.value(`$${columnName(heads.get('state')?.column ?? 0)}${r + 1}`), state === 'pass' ? '–' : (first?.value ?? '–'));
      put('its limit', verdict.limit(`$${columnName(heads.get('state')?.column ?? 0)}${r + 1}`), state === 'pass' ? '–' : (first?.limit ?? '–'));
    });
    this.made.push({ name, widths: [9, ...columns.map(title => Math.max(13, Math.min(24, title.length + 2)))], frozenRows: FIRST, cells, print: { paper: 'A4', landscape: true, repeatRows: FIRST } });
    const sheetName = sheetPrefix(name);
    const cellOf = (title: string, r: number): string => `${sheetName}$${columnName(heads.get(title)?.column ?? 0)}$${FIRST + r}`;
    return {
      sheet: name,
      cell: (r, c) => {
        const output = outputs[c] ?? '';
        if (output === 'state') return cellOf('state', r);
        if (output === 'reason') return cellOf('rule', r);
        const value = outputCell(variants[r - 1] as Variant, output);
        if (output === 'all computed') return value === true ? 'TRUE' : 'FALSE';
        const title = withUnit(output, unitOf(output));
        if (!heads.has(title)) return typeof value === 'number' ? String(value) : `"${String(value).replace(/"/g, '""')}"`;
        const cell = cellOf(title, r);
        // a word is what it is; a number that has no value any more says so
        return typeof value === 'number' ? `IF(ISNUMBER(${cell}),${cell},"no value")` : cell;
      },
    };
  }
}
