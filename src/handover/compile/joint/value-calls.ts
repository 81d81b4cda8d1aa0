// The calls of JOINT.VALUE of a workbook: those that read the names of their inputs in the same cells are variants of one sheet.
import { askedOutputs, variantBlock } from '../../../joint/table';
import type { Cell } from '../../../core/kinds';
import { isVerdict, type Output } from '../../../joint/outputs';
import type { Variant } from '../../../joint/variant';
import { fixedArea } from '../../../sheet/addresses';
import { areaOf, type FormulaNode, ownFunction, parseFormula, walk } from '../../../sheet/formula';
import { isRows, type WorkbookValues } from '../../../sheet/workbook-values';
import { labelBeside } from '../labels';
import { isInUnits } from './one-variant';
import type { CallCell, WantedVariant } from './variant-cells';
import { orNothing } from './variant-inputs';

/** One variant and all that is asked of it. */
class ValueRow implements WantedVariant {
  readonly outputs: Output[] = [];

  constructor(
    readonly variant: Variant,
    readonly names: readonly string[],
    readonly label: Cell,
    readonly from: string,
    readonly at: WantedVariant['at'],
  ) {}

  ask(output: Output): void {
    if (!this.outputs.includes(output)) this.outputs.push(output);
  }

  /** A state is that of its own call: the other values of the variant were not asked with it. */
  get judgedWith(): readonly Output[] {
    return this.outputs.some(isVerdict) ? this.outputs.filter(isVerdict) : this.outputs;
  }
}

interface ValueCall {
  readonly names: string;
  readonly values: string;
  readonly output: Output;
  row(no: number): ValueRow;
}

export const isGiven = (node: FormulaNode | null | undefined): boolean => node !== null && node !== undefined;

/** Undefined where names and values are no plain ranges, cannot be read, or come with a base or with units. */
function valueCall(source: WorkbookValues, { sheet, at, node }: CallCell): ValueCall | undefined {
  const [namesNode = null, valuesNode = null, outputNode = null, baseNode] = node.arguments ?? [];
  const [names, values] = [namesNode, valuesNode].map(one => (one === null ? undefined : areaOf(one, sheet)));
  const [titles, cells] = [names, values].map(area => (area === undefined ? undefined : source.area(area)?.flat()));
  const asked = source.evaluate(outputNode, sheet);
  if (names === undefined || values === undefined || titles === undefined || cells === undefined || asked === undefined) return undefined;
  if (isGiven(baseNode)) return undefined;
  return orNothing(() => {
    const { header, names: inputs, variants } = variantBlock([titles, cells]);
    const [output] = askedOutputs(isRows(asked) ? asked : [[asked]]);
    const [variant] = variants;
    if (isInUnits(header) || output === undefined || variant === undefined) return undefined;
    const isColumn = values.bottom > values.top;
    const placeOf: WantedVariant['at'] = i => {
      const place = header.columns[i] ?? 0;
      return { sheet: values.sheet, row: values.top + (isColumn ? place : 0), column: values.left + (isColumn ? 0 : place) };
    };
    const row = (no: number): ValueRow => new ValueRow(variant, inputs, labelBeside(source, sheet, at) ?? no, `${sheet} ${at}`, placeOf);
    return { names: fixedArea(names), values: fixedArea(values), output, row };
  });
}

/** A variant among those with which it shares a sheet. */
interface FoundVariant {
  readonly key: string;
  readonly rows: readonly WantedVariant[];
  readonly v: number;
  readonly output: Output;
}

interface ValueGroup {
  readonly rows: ValueRow[];
  /** Which row it is, by the cells of its values. */
  readonly places: Map<string, number>;
}

export class ValueCalls {
  private groups: ReadonlyMap<string, ValueGroup> | undefined;

  constructor(private readonly source: WorkbookValues) {}

  of(site: CallCell): FoundVariant | undefined {
    const call = valueCall(this.source, site);
    if (call === undefined) return undefined;
    this.groups ??= this.collected();
    const group = this.groups.get(call.names);
    const v = group?.places.get(call.values);
    return group === undefined || v === undefined ? undefined : { key: call.names, rows: group.rows, v, output: call.output };
  }

  private collected(): ReadonlyMap<string, ValueGroup> {
    const groups = new Map<string, ValueGroup>();
    for (const { name: sheet, cells } of this.source.workbook.sheets)
      for (const [at, { formula = '' }] of cells) {
        if (!/JOINT\.VALUE/i.test(formula)) continue;
        for (const node of walk(parseFormula(formula) ?? null)) {
          const call = ownFunction(node) === 'JOINT.VALUE' ? valueCall(this.source, { sheet, at, node }) : undefined;
          if (call === undefined) continue;
          const { rows, places }: ValueGroup = groups.get(call.names) ?? { rows: [], places: new Map() };
          groups.set(call.names, { rows, places });
          const v = places.get(call.values) ?? rows.push(call.row(rows.length + 1)) - 1;
          places.set(call.values, v);
          rows[v]?.ask(call.output);
        }
      }
    return groups;
  }
}
