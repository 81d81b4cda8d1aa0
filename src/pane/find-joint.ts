// Which joint the selected cell is about: through the call that reads it or spills over it, or a list of joint inputs beside it.
import type { CellRange } from '../core/kinds';
import { Refused } from '../core/refuse';
import type { Variant } from '../joint/variant';
import { baseOf, variantsOf } from '../joint/table';
import { inputNamed, isHeading } from '../joint/headings';
import { cellPosition } from '../sheet/addresses';
import type { Selection } from '../sheet/port';
import { jointCallsAt, jointSitesOn, maySpill, type JointCall } from './joint-calls';
import type { JointInputs } from './joint-inputs';
import { jointListsOn } from './joint-lists';
import { holdsCell, holdsRow, nearest, type PaneValues, type FormulaSite, sourceOf, type Grid } from './workbook';

export interface LocatedJoint {
  readonly variant: Variant;
  /** A row of names and a row of values, as the checks of a joint take them. */
  readonly rows: readonly [names: readonly unknown[], values: readonly unknown[]];
  /** What replaces the defaults, as they take it. */
  readonly base: CellRange | undefined;
  /** Where the inputs stand, by name. */
  readonly cells: ReadonlyMap<string, Selection>;
  /** Each input has its column, its row, or a place of another kind. */
  readonly form: JointInputs['form'];
  /** What the user calls it: its first label, or the text left of its row. */
  readonly label: string;
  /** Its first input; undefined where the inputs are not cells. */
  readonly place: Selection | undefined;
  /** From 1, of so many that stand together. */
  readonly number: number;
  readonly of: number;
  /** All of those, this one among them. */
  readonly together: () => readonly LocatedJoint[];
}

export type FoundJoint =
  { readonly is: 'joint'; readonly joint: LocatedJoint } | { readonly is: 'refused'; readonly message: string; readonly place: Selection };

/** `undefined` while nothing has been read, null where the workbook has no joint. */
export type JointHere = FoundJoint | null | undefined;

function first<T, U>(all: readonly T[], of: (one: T) => U | undefined): U | undefined {
  for (const one of all) {
    const found = of(one);
    if (found !== undefined) return found;
  }
  return undefined;
}

export class Joints {
  private readonly sites: readonly FormulaSite[];
  private readonly calls = new Map<FormulaSite, readonly JointCall[]>();
  private lists: readonly JointInputs[] | undefined;

  constructor(
    private readonly grids: ReadonlyMap<string, Grid>,
    private readonly source: PaneValues = sourceOf(grids),
  ) {
    this.sites = [...grids].flatMap(([sheetName, grid]) => jointSitesOn(sheetName, grid));
  }

  private callsAt(site: FormulaSite, near?: Selection): readonly JointCall[] {
    const known = this.calls.get(site);
    if (known !== undefined) return known;
    const { missing } = this.source;
    const before = missing.length;
    const calls = jointCallsAt(site, this.grids.get(site.sheetName) ?? [], this.source, near);
    // What asks for cells that were not read is read again when they were.
    if (missing.length === before) this.calls.set(site, calls);
    return calls;
  }

  /** Lists that no call needs to read. */
  private listed(): readonly JointInputs[] {
    this.lists ??= [...this.grids].flatMap(([sheetName, grid]) => jointListsOn(sheetName, grid, this.source));
    return this.lists;
  }

  /** The joint of the cell, of its row, or the only one that stands as a list on its sheet. */
  at(selection: Selection): FoundJoint | undefined {
    const { row, column } = cellPosition(selection.at);
    const near = nearest(this.sites, selection);
    const filling = near.filter(
      site =>
        site.sheetName === selection.sheetName && ((site.row === row && site.column === column) || (maySpill(site) && site.row <= row)),
    );
    for (const isHit of [holdsCell, holdsRow]) {
      const places = isHit === holdsCell ? filling : near;
      const call = first(places, site => this.callsAt(site, selection).find(({ filled }) => isHit(filled, selection)));
      if (call !== undefined) return this.found(call.inputs, call.variantAt(row));
      const inputs =
        first(near, site => this.callsAt(site, selection).find(one => isHit(one.inputs.area, selection)))?.inputs ??
        this.listed().find(({ area }) => isHit(area, selection));
      if (inputs !== undefined) return this.found(inputs, inputs.form === 'below' ? row - (inputs.area?.top ?? 0) - 1 : 0);
    }
    const isList = ({ form, area }: JointInputs): boolean => form !== 'below' && area?.sheet === selection.sheetName;
    const list =
      first(near, site => this.callsAt(site, selection).find(({ inputs }) => isList(inputs)))?.inputs ?? this.listed().find(isList);
    return list && this.found(list, 0);
  }

  /** Whether the cell itself is an input or a result of a joint. */
  holds(selection: Selection): boolean {
    return (
      nearest(this.sites, selection).some(site =>
        this.callsAt(site, selection).some(({ filled, inputs }) => holdsCell(filled, selection) || holdsCell(inputs.area, selection)),
      ) || this.listed().some(({ area }) => holdsCell(area, selection))
    );
  }

  /** The inputs of every joint, those that calls read and those that none does. */
  private *inputs(): Generator<JointInputs> {
    const calls: JointCall[] = [];
    for (const site of this.sites) {
      for (const call of this.callsAt(site)) {
        calls.push(call);
        yield call.inputs;
      }
    }
    const isTaken = (place: Selection | undefined): boolean =>
      place !== undefined && calls.some(({ inputs, filled }) => holdsCell(inputs.area, place) || holdsCell(filled, place));
    for (const list of this.listed()) if (!isTaken(list.names[0]?.place)) yield list;
  }

  /** The joint to begin with. */
  first(): FoundJoint | undefined {
    const { value: inputs } = this.inputs().next() as { value?: JointInputs };
    return inputs && this.found(inputs, 0);
  }

  /** Every joint of the workbook, once. */
  all(): FoundJoint[] {
    const seen = new Set<string>();
    return [...this.inputs()].flatMap(inputs => {
      const key = JSON.stringify(inputs.area ?? inputs.variants.map(cells => cells.map(({ value }) => value)));
      if (seen.has(key)) return [];
      seen.add(key);
      return inputs.variants.flatMap((_, index) => this.found(inputs, index) ?? []);
    });
  }

  private found(inputs: JointInputs, wanted: number): FoundJoint | undefined {
    const { names, variants } = inputs;
    const index = Math.min(Math.max(wanted, 0), variants.length - 1);
    // a row of a long table that was not read
    if (variants[index]?.length === 0) return undefined;
    const place = variants[index]?.[0]?.place;
    try {
      return { is: 'joint', joint: this.joint(inputs, index) };
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
      return { is: 'refused', message: fault.message, place: names[0]?.place ?? place ?? { sheetName: '', at: '' } };
    }
  }

  private joint(inputs: JointInputs, index: number): LocatedJoint {
    const { names, variants, form, base } = inputs;
    const values = variants[index] ?? [];
    const rows = [names.map(({ value }) => value), values.map(({ value }) => value)] as const;
    const [variant] = variants.length === 0 ? [] : variantsOf(rows, baseOf(base));
    if (variant === undefined) throw new Refused('#VALUE!', 'there is no variant below the names');
    const cells = names.flatMap(({ value }, i): [string, Selection][] => {
      const [name, cell] = [inputNamed(value), values[i]?.place];
      return name === undefined || cell === undefined ? [] : [[name, cell]];
    });
    return {
      variant,
      rows,
      base,
      cells: new Map(cells),
      form,
      label: form === 'below' ? this.labelOf(inputs, index) : '',
      place: values[0]?.place,
      number: index + 1,
      of: variants.length,
      together: () =>
        variants.flatMap((_, i) => {
          const other = this.found(inputs, i);
          return other?.is === 'joint' ? [other.joint] : [];
        }),
    };
  }

  private labelOf({ names, variants }: JointInputs, index: number): string {
    const values = variants[index] ?? [];
    const label = names.findIndex(({ value }) => isHeading(value) && inputNamed(value) === undefined);
    const value = label < 0 ? this.leftOf(values[0]?.place) : values[label]?.value;
    return typeof value === 'string' ? value : '';
  }

  private leftOf(place: Selection | undefined): unknown {
    if (place === undefined) return undefined;
    const { row, column } = cellPosition(place.at);
    return this.grids.get(place.sheetName)?.[row]?.[column - 1]?.value;
  }
}
