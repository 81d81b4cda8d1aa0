// A workbook of the user as the copy that goes to a supplier: plain formulas only, with our pages, steps, data and sources.
import { DATA_VERSION, FUNCTIONS_VERSION } from '../core/version';
import type { SheetPlan, WorkbookPlan } from '../sheet/plan';
import { isPlain } from './compile/allowed';
import type { Converted } from './compile/context';
import { convert } from './compile/convert';
import { type Choosable, ownPages } from './own-pages';
import { CHOSEN_BY_ITSELF, type HandoverChoice } from './pages/choice';
import { conversionSheet } from './pages/conversion-sheet';
import { coverSheet, materialsIn } from './pages/cover';
import type { SvgToPng } from './pages/figure';
import type { HandoverFinding } from './read/finding';
import { LONGEST_FORMULA, parseFormula, walk, withoutTexts } from '../sheet/formula';
import { bytesOf, fnv1a64 } from './hash';
import type { SourceWorkbook } from '../sheet/workbook-values';
import { cellText } from '../sheet/cell-text';
import type { TitleBlock } from './pages/title-block';
import { WORDS } from './words/words';
import { UntrueCopy, verified } from './verified';

export interface Handover {
  /** The user's sheets as they become, and ours. */
  readonly plan: WorkbookPlan;
  /** Names of our sheets. */
  readonly own: ReadonlySet<string>;
  /** Cells of the user whose formula stays as it is, by `Sheet!B4`. */
  readonly keptFormulas: ReadonlySet<string>;
  /** Texts of the user that became numbers, by `Sheet!B4`. */
  readonly converted: ReadonlyMap<string, Converted>;
  readonly findings: readonly HandoverFinding[];
  /** Values of ours that follow their inputs, and that do not. */
  readonly live: number;
  readonly asValues: number;
  readonly choosable: Choosable;
}

export interface Making {
  readonly choice?: HandoverChoice;
  /** Without it there are no figures. */
  readonly pngOf?: SvgToPng;
  /** What was found in the workbook outside its cells. */
  readonly found?: readonly HandoverFinding[];
  /** The sheet of the workbook that is ours: what names and rules called, as it is handed over. */
  readonly outside?: { readonly name: string; dressed(plan: SheetPlan): SheetPlan };
  /** Formulas that read other workbooks go along. */
  readonly keepsLinks?: boolean;
}

/** A variant whose formulas would not be true stays behind as values, alone; anything else untrue stops the copy. */
export function handover(workbook: SourceWorkbook, title: TitleBlock, making: Making = {}): Handover {
  const untrue = new Set<string>();
  for (;;) {
    try {
      return handedOver(workbook, title, making, untrue);
    } catch (fault) {
      const rows = fault instanceof UntrueCopy ? fault.rows.filter(row => !untrue.has(row)) : [];
      if (!(fault instanceof UntrueCopy) || rows.length === 0 || !fault.rows.every(row => isVariant(row, making.choice))) throw fault;
      rows.forEach(row => untrue.add(row));
    }
  }
}

const isVariant = (row: string, { language } = CHOSEN_BY_ITSELF): boolean => {
  const name = WORDS[language].sheets.variantSteps;
  return row.startsWith(name) && /^(_\d+)+!/.test(row.slice(name.length));
};

function handedOver(
  workbook: SourceWorkbook,
  title: TitleBlock,
  { choice = CHOSEN_BY_ITSELF, pngOf, keepsLinks = false, found: foundBefore = [], outside }: Making,
  untrue: ReadonlySet<string>,
): Handover {
  const words = WORDS[choice.language];
  const converted = convert(workbook, { variants: choice.variants, untrue, keepsLinks, words });
  const copy = { ...converted, results: converted.results.filter(({ sheet }) => sheet !== outside?.name) };
  const { data, source } = copy;
  const pages = ownPages(copy, title, choice, pngOf);
  const { cover: coverName, conversion: conversionName } = pages.names;
  const withFormulas = [...pages.onPaper, pages.calculated, ...copy.sheets];
  const own = new Set([
    ...copy.own,
    coverName,
    conversionName,
    ...[...pages.onPaper, pages.calculated, pages.cautions, pages.sources].map(({ name }) => name),
  ]);
  const { sheets, findings: found } = verified(withFormulas, own, [data.plan()], words.conversion.said);
  // of what stands there the place is told from which it comes
  const findings = [...foundBefore, ...copy.findings, ...found].filter(({ sheet, what }) => sheet !== outside?.name || what === 'live');
  const count = (kind: (finding: HandoverFinding) => boolean): number =>
    findings.filter(kind).reduce((sum, { values = 0 }) => sum + values, 0);
  // a formula that was taken out was counted as live
  const live = count(({ what }) => what === 'live') - found.reduce((sum, { values = 0 }) => sum + values, 0);
  const asValues = count(({ what }) => what !== 'live');
  const [paper, rest] = [sheets.slice(0, pages.onPaper.length), sheets.slice(pages.onPaper.length + 1)];
  const calculated = sheets[pages.onPaper.length] as SheetPlan;
  // until here it was worked out as what the user wrote
  if (outside !== undefined) own.add(outside.name);
  const [theirs, ours] = [rest.filter(({ name }) => !own.has(name)), rest.filter(({ name }) => own.has(name))];
  const steps = ours.map(sheet => (sheet.name === outside?.name ? outside.dressed(sheet) : sheet));
  const conversion = conversionSheet(conversionName, { workbook: workbook.name, hash: hashOf(workbook), live, asValues, findings }, words);
  const screen = (): SheetPlan[] => [calculated, ...steps, data.plan(), pages.sources, conversion];
  const cover = coverSheet(
    coverName,
    title,
    {
      materials: materialsIn(
        source.workbook.sheets.flatMap(({ cells }) =>
          [...cells.values()].flatMap(({ value }) => (typeof value === 'string' ? [value] : [])),
        ),
      ),
      toCorrect: toCorrect(findings),
      onPaper: [...paper, pages.cautions].map(({ name }) => name),
      onScreen: screen().map(({ name }) => name),
    },
    data,
    words,
  );
  const pageWords = [words.page, words.of] as const;
  const printed = (sheet: SheetPlan): SheetPlan => ({
    ...sheet,
    isLocked: true,
    print: { ...sheet.print, paper: choice.paper, pageWords },
  });
  const shown = (sheet: SheetPlan): SheetPlan => ({
    ...sheet,
    isLocked: true,
    print: { paper: choice.paper, pageWords, screenOnly: words.forScreen(sheet.name) },
  });
  const plan: WorkbookPlan = {
    name: `${cellText(title.part)}, ${words.handOver}`,
    sheets: [...[cover, ...paper, pages.cautions].map(printed), ...theirs, ...screen().map(shown)],
  };
  assertPlain(plan, own, copy.keptFormulas);
  return {
    plan,
    own: new Set([...own, data.name]),
    keptFormulas: copy.keptFormulas,
    converted: copy.converted,
    findings,
    live,
    asValues,
    choosable: pages.choosable,
  };
}

/** Cells of the sender that show an error, by sheet. */
function toCorrect(findings: readonly HandoverFinding[]): ReadonlyMap<string, number> {
  const found = new Map<string, number>();
  for (const { sheet, what } of findings) if (what === 'error' && sheet !== '') found.set(sheet, (found.get(sheet) ?? 0) + 1);
  return found;
}

/** All that decides the content: sheets, cells, values, formulas, versions. */
export function hashOf({ sheets }: Pick<SourceWorkbook, 'sheets'>): string {
  const lines = sheets.flatMap(({ name, cells }) =>
    [...cells].map(([at, { value, formula }]) => JSON.stringify([name, at, formula ?? value])),
  );
  return fnv1a64(bytesOf([FUNCTIONS_VERSION, DATA_VERSION, ...lines].join('\n')));
}

/** Formulas of a column differ in their row numbers only: one of them is looked at. `LOG10(` keeps its number. */
const shapeOf = (formula: string): string => formula.replace(/\d+(?![\d(])/g, '0');

/** Nothing leaves that a supplier without the add-in could not work out. */
export function assertPlain({ sheets }: WorkbookPlan, own: ReadonlySet<string>, kept: ReadonlySet<string>): void {
  for (const { name, cells } of sheets) {
    const seen = new Set<string>();
    for (const { at, formula, rowForm } of cells) {
      if (formula === undefined || (!own.has(name) && kept.has(`${name}!${at}`))) continue;
      if (formula.length > LONGEST_FORMULA) throw new Error(`${name}!${at}: a formula of ${formula.length} characters`);
      const shape = rowForm ?? shapeOf(formula);
      if (seen.has(shape)) continue;
      seen.add(shape);
      const fault = faultOf(formula, own.has(name));
      if (fault !== undefined) throw new Error(`${name}!${at}: ${fault}: ${formula.slice(0, 120)}`);
    }
  }
}

function faultOf(formula: string, isOwn: boolean): string | undefined {
  const bare = withoutTexts(formula);
  if (/ENCL\.|_xldudf_ENCL_/i.test(bare)) return 'a call of the add-in';
  if (bare.includes('[')) return 'a link to another workbook';
  if (!isOwn) return undefined;
  const tree = parseFormula(formula);
  if (tree === undefined) return 'a formula that cannot be read';
  for (const node of walk(tree)) {
    if (node.type === 'CallExpression' && !isPlain(node.callee?.name ?? ''))
      return `${node.callee?.name ?? 'a function'} is not in every program`;
    if (node.type === 'LetExpression' || node.type === 'LambdaExpression' || node.operator === '#') return 'not in every program';
  }
  return undefined;
}
