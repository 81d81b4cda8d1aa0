// Which variants the part is made by, and which stand in the table on paper.
import { section, type Section } from '../../../figure/section';
import { type State, WORST_FIRST } from '../../../core/check/check';
import { stateOf } from '../../../joint/verdict';
import type { Variant } from '../../../joint/variant';
import type { ChosenVariant, TableCell, VariantLine } from './joint-cells';
import type { RowSize } from './measured-sizes';
import { keyOf, type WantedVariant } from './variant-cells';
import { named, NO_VALUE, type WrittenVariants } from './written-variants';

/** Width of a figure on its sheet. */
const FIGURE_PX = 600;
/** So many stand in the table with all their reasons. */
const MOST_WITH_REASONS = 12;

interface KnownVariant {
  readonly state: State;
  readonly of: Omit<VariantLine, 'isChosen'>;
  readonly page: Omit<ChosenVariant, keyof VariantLine> | undefined;
}

/** Without another reason to choose: the best, in the order of the sheet. What fails is not what will be tooled. */
export const bestFirst = <T extends { readonly state: State }>(variants: readonly T[]): T[] =>
  [...variants].sort((a, b) => WORST_FIRST.indexOf(b.state) - WORST_FIRST.indexOf(a.state));

const spelled = (label: string): string => label.trim().replace(/\s+/g, ' ').toLowerCase();

/** `F`, or all of `F  thicker wall`. */
const isCalled = (label: string, name: string): boolean =>
  spelled(label) === spelled(name) || spelled(label).startsWith(`${spelled(name)} `);

export const labelOf = ({ label }: WantedVariant): string => (typeof label === 'number' ? `variant ${label}` : String(label));

export class VariantChoice {
  private readonly known: KnownVariant[] = [];
  private readonly keys = new Set<string>();
  private withReasons = 0;

  /** @param names what the sender chose; without them it is the best one. */
  constructor(private readonly names: readonly string[] | undefined) {}

  /** Of variants about to be written, those that may be chosen, and those that have a line with reasons. */
  among(
    variants: readonly Variant[],
    given: readonly WantedVariant[],
    isLive: (v: number) => boolean,
  ): { readonly pages: ReadonlySet<number>; readonly lines: ReadonlySet<number> } {
    const fresh = variants.flatMap((variant, v) =>
      !isLive(v) || this.has(given[v] as WantedVariant) ? [] : [{ v, state: stateOf(variant) }],
    );
    const isNamed = ({ v }: { v: number }): boolean =>
      this.names?.some(name => isCalled(labelOf(given[v] as WantedVariant), name)) === true;
    const pages = this.names === undefined ? bestFirst(fresh).slice(0, 1) : fresh.filter(isNamed);
    const others = fresh.filter(one => !pages.includes(one)).slice(0, Math.max(0, MOST_WITH_REASONS - this.withReasons - pages.length));
    this.withReasons += pages.length + others.length;
    return { pages: new Set(pages.map(({ v }) => v)), lines: new Set([...pages, ...others].map(({ v }) => v)) };
  }

  add(
    given: WantedVariant,
    variant: Variant,
    written: WrittenVariants,
    v: number,
    hasReasons: boolean,
    sizes: readonly RowSize[] | undefined,
  ): void {
    const at = (title: string): TableCell => named(written, v, title, NO_VALUE);
    const of = { label: labelOf(given), from: given.from, state: at('state'), ...(hasReasons && { reasons: at('reasons') }) };
    const drawn = (numbers: ReadonlyMap<string, string>): Section => section(variant, { print: true, widthPx: FIGURE_PX, numbers });
    const page = sizes && { measured: sizes.map(({ name, ...more }) => ({ ...at(name), ...more, name })), drawn };
    this.keys.add(keyOf(given));
    this.known.push({ state: stateOf(variant), of, page });
  }

  has(given: WantedVariant): boolean {
    return this.keys.has(keyOf(given));
  }

  private get chosen(): readonly KnownVariant[] {
    const pages = this.known.filter(({ page }) => page !== undefined);
    return this.names === undefined ? bestFirst(pages).slice(0, 1) : pages;
  }

  pages(): readonly ChosenVariant[] {
    return this.chosen.flatMap(({ of, page }) => (page === undefined ? [] : [{ ...of, ...page, isChosen: true }]));
  }

  lines(): readonly VariantLine[] {
    const { chosen } = this;
    return this.known.map(one => ({ ...one.of, isChosen: chosen.includes(one) }));
  }

  /** What the sender named and no variant is called. */
  unknown(): readonly string[] {
    return (this.names ?? []).filter(name => !this.known.some(({ of }) => isCalled(of.label, name)));
  }
}
