// A variant table as a sheet of its own: one row a variant, one column a step, the rules and their verdict at the end.
import { stateOf, verdict } from '../../../joint/verdict';
import { stepDigits } from '../digits';
import { type State, WORST_FIRST } from '../../../core/check/check';
import type { Cell } from '../../../core/kinds';
import { section, type Section } from '../../../figure/section';
import { type Finding, NotApplicable, type Rule } from '../../../joint/graph';
import { isVerdict, type Output, type VerdictName } from '../../../joint/outputs';
import { Refused } from '../../../core/refuse';
import { type Variant } from '../../../joint/variant';
import { RULES } from '../../../joint/rules';
import { askedColumns, askedOutputs, labelCell, variantBlock } from '../../../joint/table';
import { type Header } from '../../../joint/headings';
import { address, columnName, fixedCell } from '../../../sheet/addresses';
import { areaOf, type FormulaNode } from '../../../sheet/formula';
import type { PlanCell, SheetPlan } from '../../../sheet/plan';
import type { SheetNames } from '../../../sheet/sheet-names';
import { isRows } from '../../../sheet/workbook-values';
import type { ConversionContext } from '../context';
import { allOf, quoted } from '../inputs';
import { JointRow } from './joint-row';
import type { WriteCell } from './row-input';
import { variantInputs, orNothing } from './variant-inputs';
import { countFormula, marginFormula, marginValue, verdictFormulas, ruleState } from './joint-verdict';
import { labelBeside } from '../labels';
import { unchanged } from '../unchanged';
import type { TableCell, JointFigure, Figures, JointTable } from './joint-cells';
import { type SheetPlace, type VariantCells, keyOf } from './variant-cells';
import { FIRST, type WrittenVariants, ALL_COMPUTED, tableCell, named } from './written-variants';

const HEAD = 3;

/** Width of a figure on its sheet. */
const FIGURE_PX = 700;

interface CallCell {
  readonly sheet: string;
  readonly at: string;
  readonly node: FormulaNode;
}

const MARGIN = 'margin: ';

/** Verdicts that no formula follows. */
const NOT_LIVE: readonly VerdictName[] = [ALL_COMPUTED, 'reasons', 'remedy'];

const COUNTS: readonly (readonly [VerdictName, State])[] = [
  ['fails', 'fail'],
  ['reviews', 'review'],
];

/** What stands where a number is none any more. */
const NO_VALUE = quoted('no value');

const NONE = 'NA()';

export class JointSheets {
  private readonly made: SheetPlan[] = [];
  private readonly drawn = new Map<string, JointFigure>();
  private left = 0;

  /** @param mostFigures so many variants are drawn. */
  constructor(
    private readonly context: Omit<ConversionContext, 'inner' | 'steps'>,
    private readonly names: SheetNames,
    private readonly mostFigures: number,
  ) {}

  figures(): Figures {
    return { shown: [...this.drawn.values()], left: this.left };
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
      const given = variants.map((_, v): VariantCells => {
        const beside = labelBeside(source, inputs.sheet, address(inputs.top + 1 + v, inputs.left));
        return {
          names,
          label: firstLabel === undefined ? (beside ?? v + 1) : label(v, firstLabel.column),
          at: i => place(v, header.columns[i] ?? 0),
        };
      });
      const written = this.write(`${sheet} ${at}`, variants, outputs, given);
      const cell = (r: number, c: number): TableCell => {
        const column = columns[c];
        if (column === undefined || typeof column === 'string')
          return tableCell(written, r, columns.slice(0, c).filter(before => typeof before === 'string').length, NO_VALUE);
        const value = r === 0 ? column.heading : label(r - 1, column.column);
        const from = place(r - 1, column.column);
        const formula = r === 0 || rows[r]?.[column.column] !== value ? {} : { formula: fixedCell(from.sheet, from.row, from.column) };
        return { name: column.heading, value, unit: '', ...formula };
      };
      return { sheet: written.sheet, cell };
    });
  }

  /** One output of a variant whose names and values stand in two lists. */
  value({ sheet, at, node }: CallCell): TableCell | undefined {
    const { source } = this.context;
    const [namesNode = null, valuesNode = null, outputNode = null, baseNode] = node.arguments ?? [];
    const [names, values] = [namesNode, valuesNode].map(one => (one === null ? undefined : areaOf(one, sheet)));
    const [titles, cells] = [names, values].map(area => (area === undefined ? undefined : source.area(area)?.flat()));
    const asked = source.evaluate(outputNode, sheet);
    if (values === undefined || titles === undefined || cells === undefined || asked === undefined || isGiven(baseNode)) return undefined;
    const written = orNothing(() => {
      const block = variantBlock([titles, cells]);
      if (isInUnits(block.header)) return undefined;
      const isColumn = values.bottom > values.top;
      const given: VariantCells = {
        names: block.names,
        label: labelBeside(source, sheet, at) ?? 1,
        at: i => {
          const place = block.header.columns[i] ?? 0;
          return { sheet: values.sheet, row: values.top + (isColumn ? place : 0), column: values.left + (isColumn ? 0 : place) };
        },
      };
      return this.write(`${sheet} ${at}`, block.variants, askedOutputs(isRows(asked) ? asked : [[asked]]), [given]);
    });
    const isAsked = unchanged(this.context, { node: outputNode, sheet });
    const cell = written === undefined || isAsked === undefined ? undefined : tableCell(written, 1, 0, NONE);
    return cell?.formula === undefined || isAsked === undefined || isAsked.length === 0
      ? cell
      : { ...cell, formula: `IF(${allOf(isAsked)},${cell.formula},${NONE})` };
  }

  private write(from: string, variants: readonly Variant[], outputs: readonly Output[], given: readonly VariantCells[]): WrittenVariants {
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
      const mine = given[v] as VariantCells;
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
      const row = new JointRow(variant, variantInputs(this.context, mine, variant), this.context.data, put);
      for (const output of outputs) if (!isVerdict(output)) row.cellOf(output);
      const states = RULES.map(rule => ({ rule, ...ruleState(row, variant, rule) }));
      const figure = drawn.has(v) ? section(variant, { print: true, widthPx: FIGURE_PX }) : undefined;
      for (const { of, value } of figure?.legend ?? []) if (value !== undefined) row.cellOf(of);
      const asked = (name: VerdictName): boolean => outputs.includes(name);
      // what has no formula is kept as it was sent, and shown while nothing has changed
      for (const name of NOT_LIVE.filter(asked)) {
        const value = verdict(variant, name, outputs);
        const kept =
          typeof value === 'boolean' ? String(value).toUpperCase() : put(`${name}, as sent`, 'value, not live', undefined, value);
        put(name, 'value, not live', `IF(${row.guards.unchanged()},${kept},${NO_VALUE})`, value);
      }
      const lacking = lackingOutput(row, variant, outputs, put);
      const holds = row.guards.cell();
      // a rule that this row cannot judge may fail or be the nearest
      const unjudged = states.filter(({ rule }) => variant.finding(rule)?.state === 'not checked').length > 0;
      const isWhole = [
        ...(holds === undefined ? [] : [holds]),
        ...states.flatMap(({ rule, state: cell }) =>
          cell === undefined || variant.finding(rule)?.state === 'not checked' ? [] : `${cell}<>"not checked"`,
        ),
        ...(unjudged ? [row.guards.unchanged()] : []),
      ];
      const whole =
        asked('fails') || asked('reviews') || asked('margin') || asked('margin rule')
          ? put('all rules judged', 'counts and margin hold for all rules', allOf(isWhole), true)
          : '';
      const while_ = (formula: string): string => `IF(${whole},${formula},${NO_VALUE})`;
      for (const [name, word] of COUNTS)
        if (asked(name)) put(name, `rules with the state ${word}`, while_(countFormula(states, word)), verdict(variant, name));
      const formulas = verdictFormulas(states, lacking, holds);
      const state = stateOf(variant, outputs);
      const first = state === 'pass' ? undefined : variant.findings().find(finding => finding.state === state);
      const stateCell = put('state', 'worst of all rules', formulas.state, state, 'result');
      put(
        'rule',
        'what is wrong with the first rule of that state',
        formulas.rule(stateCell),
        reasonOf(first, lackingIn(variant, outputs)),
        'result',
      );
      put('its value', 'what that rule judges', formulas.value(stateCell), first?.value ?? '–', 'result');
      put('its limit', 'what that rule asks', formulas.limit(stateCell), first?.limit ?? '–', 'result');
      if (asked('margin') || asked('margin rule')) {
        const nominal = row.nominal();
        const marginTitle = ({ name: rule }: Rule): string => `${MARGIN}${rule}`;
        const judgedRules = RULES.filter(rule => variants.some(one => one.finding(rule) !== undefined));
        const columns = judgedRules.map(rule => column(marginTitle(rule), 'distance to its fail limit, as a share of it'));
        for (const entry of states) {
          const formula = marginFormula(entry, nominal);
          if (formula === undefined) continue;
          const state_ = variant.finding(entry.rule)?.state ?? 'not checked';
          put(marginTitle(entry.rule), 'distance to its fail limit, as a share of it', formula, marginValue(variant, entry.rule, state_));
        }
        const [from = 0, to = from] = [columns[0], columns[columns.length - 1]];
        const all = `$${columnName(from)}${r + 1}:$${columnName(to)}${r + 1}`;
        const some = (formula: string): string => while_(`IF(IFERROR(MATCH(MIN(${all}),${all},0),0)=0,"–",${formula})`);
        const least = put('margin', 'least of these distances', some(`MIN(${all})`), verdict(variant, 'margin'), 'result');
        const heads_ = `$${columnName(from)}$${HEAD + 1}:$${columnName(to)}$${HEAD + 1}`;
        put(
          'margin rule',
          'the rule of that distance',
          some(`MID(INDEX(${heads_},MATCH(${least},${all},0)),${MARGIN.length + 1},99)`),
          verdict(variant, 'margin rule'),
          'result',
        );
      }
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
    const written: WrittenVariants = { sheet: name, variants, outputs, heads, values, holding };
    for (const { v, legend, ...drawing } of drawings) {
      const { label } = given[v] as VariantCells;
      const at = (title: string): TableCell => named(written, v, title, NO_VALUE);
      this.drawn.set(keyOf(given[v] as VariantCells), {
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
  private toDraw(variants: readonly Variant[], given: readonly VariantCells[]): ReadonlySet<number> {
    if (this.mostFigures === 0) return new Set();
    const undrawn = variants.flatMap((variant, v) =>
      this.drawn.has(keyOf(given[v] as VariantCells)) ? [] : [{ v, state: stateOf(variant) }],
    );
    const chosen = worthDrawing(undrawn, this.mostFigures - this.drawn.size);
    this.left += undrawn.length - chosen.length;
    return new Set(chosen.map(({ v }) => v));
  }
}

const isGiven = (node: FormulaNode | null | undefined): boolean => node !== null && node !== undefined;

/** Bare numbers under such a heading are no numbers of the joint. */
const isInUnits = ({ headings }: Header): boolean => headings.some(({ unit }) => unit !== undefined);

const isLacking = (outcome: unknown): boolean => outcome instanceof Refused && !(outcome instanceof NotApplicable);

/** The first output that was asked for, applies and has no value. */
const lackingIn = (variant: Variant, outputs: readonly Output[]): string | undefined =>
  outputs.find(output => !isVerdict(output) && isLacking(variant.outcome(output)));

/** The cell that names it, or has a dash. */
function lackingOutput(row: JointRow, variant: Variant, outputs: readonly Output[], put: WriteCell): string | undefined {
  const tests = outputs.flatMap((output): (readonly [string, string])[] => {
    if (isVerdict(output)) return [];
    const outcome = variant.outcome(output);
    if (outcome instanceof Refused) return outcome instanceof NotApplicable ? [] : [[output, 'FALSE']];
    const cell = row.cellOf(output) ?? NONE;
    return [[output, typeof outcome === 'number' ? `ISNUMBER(${cell})` : `IFERROR(LEN(${cell})>0,FALSE)`]];
  });
  if (tests.length === 0) return undefined;
  const formula = tests.reduceRight((otherwise, [output, isThere]) => `IF(${isThere},${otherwise},"${output}")`, '"–"');
  return put('asked, without a value', 'first output that was asked for and has none', formula, lackingIn(variant, outputs) ?? '–');
}

function reasonOf(first: Finding | undefined, lacking: string | undefined): string {
  if (first === undefined) return lacking ?? '–';
  return first.state === 'not checked' ? first.rule.name : first.rule.broken;
}

/** The best of many, in the order of the sheet: what fails is not what will be tooled. */
function worthDrawing<T extends { readonly state: State }>(variants: readonly T[], most: number): readonly T[] {
  const ranked = [...variants].sort((a, b) => WORST_FIRST.indexOf(b.state) - WORST_FIRST.indexOf(a.state));
  const chosen = new Set(ranked.slice(0, Math.max(0, most)));
  return variants.filter(variant => chosen.has(variant));
}
