// Our pages, put together: six on paper for one chosen variant, all else for the screen.
import type { SheetPlan } from '../sheet/plan';
import { cellText } from '../sheet/cell-text';
import type { HandoverCopy } from './compile/convert';
import { calculatedSheet } from './pages/calculated';
import { cautionsSheet } from './pages/cautions';
import { characteristics } from './pages/characteristics';
import type { HandoverChoice } from './pages/choice';
import { figureSheet, type SvgToPng } from './pages/figure';
import { partSizes } from './pages/part-sizes';
import { drawnStudies } from './pages/study-figures';
import { sourcesSheet } from './pages/sources';
import type { TitleBlock } from './pages/title-block';
import { variantTable } from './pages/variant-table';
import { WORDS } from './words/words';

/** What the sender can choose among, and what is chosen. */
export interface Choosable {
  readonly variants: readonly { readonly label: string; readonly state: string; readonly isChosen: boolean }[];
  readonly characteristics: readonly { readonly name: string; readonly isChosen: boolean }[];
}

/** What can be chosen, marked where it is. */
export function chooseLines({ variants, characteristics }: Choosable): string[] {
  const mark = (isChosen: boolean): string => (isChosen ? 'x' : '-');
  return [
    ...variants.map(({ label, state, isChosen }) => `variant ${mark(isChosen)} ${label}: ${state}`),
    ...characteristics.map(({ name, isChosen }) => `characteristic ${mark(isChosen)} ${name}`),
  ];
}

export interface OwnPages {
  readonly names: Readonly<Record<'cover' | 'cautions' | 'conversion', string>>;
  /** Characteristics, figures and variants, in the order in which they are printed. */
  readonly onPaper: readonly SheetPlan[];
  readonly calculated: SheetPlan;
  readonly cautions: SheetPlan;
  readonly sources: SheetPlan;
  readonly choosable: Choosable;
}

/** What was asked for by name and is not there. */
export class NotThere extends Error {
  constructor(what: string, names: readonly string[], known: readonly string[]) {
    super(`no ${what} is called ${names.join(', ')}; there ${known.length === 1 ? 'is' : 'are'} ${known.join('; ') || 'none'}`);
  }
}

function assertThere(what: string, asked: readonly string[] | undefined, known: readonly string[]): void {
  const spelled = new Set(known.map(name => name.trim().toLowerCase()));
  const unknown = (asked ?? []).filter(name => !spelled.has(name.trim().toLowerCase()));
  if (unknown.length > 0) throw new NotThere(what, unknown, known);
}

export function ownPages(copy: HandoverCopy, title: TitleBlock, choice: HandoverChoice, pngOf: SvgToPng | undefined): OwnPages {
  const { names, source, data } = copy;
  const words = WORDS[choice.language];
  const lines = copy.variants.lines();
  const unknown = copy.variants.unknown();
  if (unknown.length > 0)
    throw new NotThere(
      'variant',
      unknown,
      lines.map(({ label }) => label),
    );
  const chosen = copy.variants.pages();
  const sizes = partSizes(source, copy.results, chosen, choice.characteristics, words.of);
  assertThere('characteristic', choice.characteristics, sizes.names);
  const free = (key: keyof typeof words.sheets): string => names.free(words.sheets[key]);
  const own = { cover: free('cover'), measured: free('measured'), cautions: free('cautions'), conversion: free('conversion') };
  const calculated = free('calculated');
  const of = [
    [title.part, title.number, title.revision === '' ? '' : `${words.cover.revision} ${title.revision}`],
    chosen.length === 1 ? chosen.map(({ label }) => label) : [],
  ]
    .flat()
    .filter(text => text !== '')
    .map(cellText)
    .join(', ');
  const more = sizes.left === 0 ? '' : words.measured.left(sizes.left, calculated);
  const measured = characteristics(own.measured, of, sizes.groups, more, data, words);
  const figures = sizes.ofVariants.map(({ variant, names: ofSizes }, i) => ({
    variant,
    numbers: new Map(ofSizes.map((name, s) => [name, String(measured.numbers[i]?.[s] ?? '')])),
  }));
  const studies = pngOf === undefined ? [] : drawnStudies(copy, words.figure.asDrawn);
  const shown = new Set(sizes.groups.flatMap(group => group.sizes.map(({ name }) => name)));
  return {
    names: own,
    onPaper: [
      measured.plan,
      ...(pngOf === undefined || figures.length + studies.length === 0
        ? []
        : [figureSheet(free('figure'), figures, studies, title.date, pngOf, words)]),
      ...(lines.length < 2 ? [] : [variantTable(free('variants'), lines, words)]),
    ],
    calculated: calculatedSheet(calculated, sizes.calculated, sizes.calculatedLeft, words),
    cautions: cautionsSheet(own.cautions, words),
    sources: sourcesSheet(free('sources'), copy.used, data.tables, choice.language, words),
    choosable: {
      variants: lines.map(({ label, state, isChosen }) => ({ label, state: String(state.value), isChosen })),
      characteristics: sizes.names.map(name => ({ name, isChosen: shown.has(name) })),
    },
  };
}
