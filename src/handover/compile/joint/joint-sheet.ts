// A variant table as a sheet of its own: one row a variant, one column a step, the rules and their verdict at the end.
import type { Cell } from '../../../core/kinds';
import { isVerdict } from '../../../joint/outputs';
import { RULES } from '../../../joint/rules';
import { askedColumns, labelCell, variantBlock } from '../../../joint/table';
import { address, columnName, fixedCell, sheetPrefix } from '../../../sheet/addresses';
import { areaOf } from '../../../sheet/formula';
import type { PlanCell, SheetPlan } from '../../../sheet/plan';
import { inRow, ROW, RowForms } from '../../../sheet/row-forms';
import type { SheetNames } from '../../../sheet/sheet-names';
import { isRows } from '../../../sheet/workbook-values';
import type { SharedContext } from '../context';
import { allOf } from '../inputs';
import type { PageWords } from '../../words/words';
import { stepWords } from '../../words/step-words';
import { AskedVariant, askedInputs, keyOfInputs } from './asked-variant';
import { JointRow } from './joint-row';
import { type PrintedCell, Questions, type OneRow, RowPrint, RowPrints, type WriteCell } from './row-print';
import { isInUnits, oneVariant } from './one-variant';
import type { JudgedRow } from './row-margin';
import { variantInputs, orNothing } from './variant-inputs';
import { ruleState } from './joint-verdict';
import { NONE } from './row-refs';
import { putVerdict } from './row-verdict';
import { type RowSize, measuredSizes } from './measured-sizes';
import { labelBeside } from '../labels';
import { stepCell } from '../step-cell';
import { unchanged } from '../unchanged';
import type { VariantChoice } from './chosen-variants';
import type { TableCell, JointTable } from './joint-cells';
import type { CallCell, SheetPlace, WantedVariant } from './variant-cells';
import { isGiven, ValueCalls } from './value-calls';
import { FIRST, fixedIn, HEAD, NO_VALUE, named, tableCell, type WrittenVariants } from './written-variants';

export class JointSheets {
  private readonly made: SheetPlan[] = [];
  private readonly valueCalls: ValueCalls;
  private readonly ofNames = new Map<string, WrittenVariants>();

  /**
   * @param untrue rows that stay values: `Variants_1!7`.
   */
  constructor(
    private readonly context: SharedContext,
    private readonly names: SheetNames,
    private readonly choice: VariantChoice,
    private readonly untrue: ReadonlySet<string>,
    private readonly words: PageWords,
  ) {
    this.valueCalls = new ValueCalls(context.source);
  }

  plans(): readonly SheetPlan[] {
    return this.made;
  }

  /** Undefined where the inputs are not a plain range, cannot be read, or come with a base or with units in their headings. */
  table({ sheet, at, node }: CallCell): JointTable | undefined {
    const { source } = this.context;
    const [inputsNode, outputsNode, baseNode] = node.arguments ?? [];
    const inputs = inputsNode === null || inputsNode === undefined ? undefined : areaOf(inputsNode, sheet);
    const rows = inputs === undefined ? undefined : source.area(inputs);
    const asked = outputsNode === null || outputsNode === undefined ? null : source.evaluate(outputsNode, sheet);
    if (inputs === undefined || rows === undefined || asked === undefined || isGiven(baseNode)) return undefined;
    return orNothing(() => {
      const { header, names, variants } = variantBlock(rows);
      if (isInUnits(header)) return undefined;
      const columns = askedColumns(asked === null ? undefined : isRows(asked) ? asked : [[asked]], header.labels);
      const outputs = columns.filter(column => typeof column === 'string');
      const place = (v: number, column: number): SheetPlace => ({
        sheet: inputs.sheet,
        row: inputs.top + 1 + v,
        column: inputs.left + column,
      });
      const label = (v: number, column: number): Cell => labelCell(rows[1 + v]?.[column]);
      const [firstLabel] = header.labels;
      const from = `${sheet} ${at}`;
      const given = variants.map((variant, v): WantedVariant => {
        const beside = labelBeside(source, inputs.sheet, address(inputs.top + 1 + v, inputs.left));
        return {
          names,
          variant,
          outputs,
          judgedWith: outputs,
          from,
          label: firstLabel === undefined ? (beside ?? v + 1) : label(v, firstLabel.column),
          at: i => place(v, header.columns[i] ?? 0),
        };
      });
      const written = this.write(given, from);
      const cell = (r: number, c: number): TableCell => {
        const column = columns[c];
        if (column === undefined || typeof column === 'string') return tableCell(written, r, column ?? '', NO_VALUE);
        const value = r === 0 ? column.heading : label(r - 1, column.column);
        const from = place(r - 1, column.column);
        const formula = r === 0 || rows[r]?.[column.column] !== value ? {} : { formula: fixedCell(from.sheet, from.row, from.column) };
        return { name: column.heading, value, unit: '', ...formula };
      };
      return { sheet: written.sheet, cell, sentIf: r => written.fixedRows.get(r - 1) };
    });
  }

  /** One output of a variant whose names and values stand in two lists; all variants of one list of names stand on one sheet. */
  value(call: CallCell): TableCell | undefined {
    const found = this.valueCalls.of(call);
    if (found === undefined) return undefined;
    const { key, rows, v, output } = found;
    const written =
      this.ofNames.get(key) ??
      this.write(rows, rows.length > 1 ? this.words.variantSteps.andOthers(rows[0]?.from ?? '') : `${rows[0]?.from}`);
    this.ofNames.set(key, written);
    if (written.fixedRows.has(v)) return undefined;
    const isAsked = unchanged(this.context, { node: call.node.arguments?.[2] ?? null, sheet: call.sheet });
    if (isAsked === undefined) return undefined;
    const cell = named(written, v, output, NONE);
    return cell.formula === undefined || isAsked.length === 0
      ? cell
      : { ...cell, formula: `IF(${allOf(isAsked)},${cell.formula},${NONE})` };
  }

  /** One variant with its rules, and what `more` writes behind them. */
  check({ sheet, at, node }: CallCell, more: (row: JudgedRow, put: WriteCell) => void): WrittenVariants | undefined {
    const { source } = this.context;
    const [inputsNode = null, baseNode] = node.arguments ?? [];
    const inputs = inputsNode === null ? undefined : areaOf(inputsNode, sheet);
    const rows = inputs === undefined ? undefined : source.area(inputs);
    if (inputs === undefined || rows === undefined || isGiven(baseNode)) return undefined;
    const from = `${sheet} ${at}`;
    const one = orNothing(() => oneVariant(inputs, rows, labelBeside(source, sheet, at) ?? from));
    return one && this.write([{ ...one.cells, variant: one.variant, outputs: [], judgedWith: [], from }], from, more);
  }

  private write(given: readonly WantedVariant[], from: string, more?: (row: JudgedRow, put: WriteCell) => void): WrittenVariants {
    const variants = given.map(({ variant }) => variant);
    const { sheets, variantSteps: words, steps } = this.words;
    const name = this.names.numbered(sheets.variantSteps);
    const heads = new Map<string, number>();
    const forms = new RowForms();
    const cells: PlanCell[] = [
      { at: 'A1', role: 'title', value: words.title },
      { at: 'A2', role: 'note', value: words.from(from) },
      { at: 'B2', role: 'note', value: words.note },
      { at: address(HEAD, 0), role: 'header', value: words.variant },
      { at: address(HEAD + 1, 0), role: 'note', value: words.how },
    ];
    const column = (title: string, words: string): number => {
      const known = heads.get(title);
      if (known !== undefined) return known;
      const c = heads.size + 1;
      heads.set(title, c);
      cells.push(
        { at: address(HEAD, c), role: 'header', value: title },
        { at: address(HEAD + 1, c), role: 'note', value: stepWords(words, steps.said) },
      );
      return c;
    };
    const values: Cell[][] = variants.map(() => []);
    const isLive = (v: number): boolean => !this.untrue.has(`${name}!${FIRST + v + 1}`);
    const fixedRows = new Map<number, string>();
    const { pages, lines } = this.choice.among(variants, given, isLive);
    const sizes = new Map<number, readonly RowSize[]>();
    const judged = RULES.filter(rule => variants.some(variant => variant.finding(rule) !== undefined));
    const prints = new RowPrints();
    const holding = variants.map((variant, v) => {
      const r = FIRST + v;
      const mine = given[v] as WantedVariant;
      cells.push({ at: address(r, 0), role: 'label', value: mine.label });
      const row: OneRow = { variant, given: variantInputs(this.context, mine, variant) };
      const print = (questions: Questions): RowPrint => {
        const printed: PrintedCell[] = [];
        const put: WriteCell = (title, words, formula, value, role = 'text') => {
          const c = column(title, words);
          printed.push({ column: c, form: formula && `=${formula}`, value, role });
          return `$${columnName(c)}${ROW}`;
        };
        const asked = new AskedVariant(questions);
        const made = new JointRow(asked, askedInputs(row.given, questions), this.context.data, put);
        if (!isLive(v)) {
          fixedRows.set(v, `${sheetPrefix(name)}${inRow(made.guards.unchanged(), r)}`);
          return new RowPrint(printed, questions.texts, true);
        }
        for (const output of mine.outputs) if (!isVerdict(output)) made.cellOf(output);
        const states = RULES.map(rule => ({ rule, ...ruleState(made, asked, rule) }));
        if (pages.has(v))
          sizes.set(
            v,
            measuredSizes(made, variant, cell => fixedIn(name, cell, r), put),
          );
        const all: JudgedRow = { row: made, variant: asked, outputs: mine.judgedWith, states, judged };
        putVerdict(all, put, column, lines.has(v));
        more?.(all, put);
        return new RowPrint(printed, questions.texts, made.guards.hasFixed());
      };
      const isAlone = !isLive(v) || pages.has(v) || more !== undefined;
      const key = (): string => JSON.stringify([keyOfInputs(row.given), mine.outputs, mine.judgedWith, lines.has(v)]);
      const printed = isAlone ? print(new Questions(row)) : prints.of(key(), row, print);
      printed.write(row, ({ column: c, value, role }, form) => {
        const worth = value(row);
        cells.push(stepCell(address(r, c), role, form === undefined ? undefined : forms.cell(form, r), worth));
        if (worth !== undefined) (values[v] as Cell[])[c] = worth;
      });
      return printed.isHolding;
    });
    this.made.push({
      name,
      widths: [34, ...[...heads.keys()].map(title => (title === 'rule' ? 30 : Math.max(12, Math.min(16, title.length + 2))))],
      frozenRows: FIRST,
      cells,
      print: { landscape: true, repeatRows: FIRST },
    });
    const written: WrittenVariants = { sheet: name, variants, heads, values, holding, fixedRows };
    for (const [v, variant] of variants.entries())
      if (isLive(v) && !this.choice.has(given[v] as WantedVariant))
        this.choice.add(given[v] as WantedVariant, variant, written, v, lines.has(v), sizes.get(v));
    return written;
  }
}
