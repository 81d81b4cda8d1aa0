// A workbook of the user as the copy that goes to a supplier: plain formulas only, with cover, characteristics, steps, data and sources.
import { DATA_VERSION, FUNCTIONS_VERSION } from '../core/version';
import type { WorkbookPlan } from '../sheet/plan';
import { isPlain } from './compile/allowed';
import type { Converted } from './compile/context';
import { characteristics } from './pages/characteristics';
import { convert } from './compile/convert';
import { coverSheet, materialsIn } from './pages/cover';
import { figureSheet, MOST_FIGURES, type SvgToPng } from './pages/figure';
import type { HandoverFinding } from './read/finding';
import { LONGEST_FORMULA, parseFormula, walk, withoutTexts } from '../sheet/formula';
import { bytesOf, fnv1a64 } from './hash';
import type { SourceWorkbook } from '../sheet/workbook-values';
import { sourcesSheet } from './pages/sources';
import { cellText } from '../sheet/cell-text';
import type { Paper, TitleBlock } from './pages/title-block';
import { UntrueCopy, verified } from './verified';

export interface Handover {
  /** The user's sheets as they become, and ours. */
  readonly plan: WorkbookPlan;
  /** Names of our sheets. */
  readonly own: ReadonlySet<string>;
  /** Cells of the user whose formula stays as he has it, by `Sheet!B4`. */
  readonly keptFormulas: ReadonlySet<string>;
  /** Texts of the user that became numbers, by `Sheet!B4`. */
  readonly converted: ReadonlyMap<string, Converted>;
  readonly findings: readonly HandoverFinding[];
  /** Values of ours that follow their inputs, and that do not. */
  readonly live: number;
  readonly asValues: number;
}

export interface Making {
  readonly paper?: Paper;
  /** Without it there are no figures. */
  readonly pngOf?: SvgToPng;
  /** What was found in the workbook outside its cells. */
  readonly found?: readonly HandoverFinding[];
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
      if (!(fault instanceof UntrueCopy) || rows.length === 0 || !fault.rows.every(isVariant)) throw fault;
      rows.forEach(row => untrue.add(row));
    }
  }
}

const isVariant = (row: string): boolean => /^Variants(_\d+)+!/.test(row);

function handedOver(
  workbook: SourceWorkbook,
  title: TitleBlock,
  { paper = 'A4', pngOf, keepsLinks = false, found: outside = [] }: Making,
  untrue: ReadonlySet<string>,
): Handover {
  const copy = convert(workbook, pngOf === undefined ? 0 : MOST_FIGURES, untrue, keepsLinks);
  const { data, names, source } = copy;
  const [coverName, measuredName, sourcesName] = [names.free('Handover'), names.free('Characteristics'), names.free('Sources')];
  const line = [title.part, title.number, title.revision === '' ? '' : `revision ${title.revision}`]
    .filter(text => text !== '')
    .map(cellText)
    .join(', ');
  const measured = characteristics(measuredName, line, source, copy.results, data);
  const figures =
    pngOf === undefined || copy.figures.shown.length === 0 ? undefined : figureSheet(names.free('Figure'), copy.figures, title.date, pngOf);
  const materials = materialsIn(
    source.workbook.sheets.flatMap(({ cells }) => [...cells.values()].flatMap(({ value }) => (typeof value === 'string' ? [value] : []))),
  );
  const own = new Set([...copy.own, coverName, measuredName, sourcesName, ...(figures === undefined ? [] : [figures.name])]);
  const { sheets, findings: found } = verified([measured.plan, ...(figures === undefined ? [] : [figures]), ...copy.sheets], own, [
    data.plan(),
  ]);
  const findings = [...outside, ...copy.findings, ...found];
  const count = (kind: (finding: HandoverFinding) => boolean): number =>
    findings.filter(kind).reduce((sum, { values = 0 }) => sum + values, 0);
  // a formula that was taken out was counted as live
  const live = count(({ what }) => what === 'live') - found.reduce((sum, { values = 0 }) => sum + values, 0);
  const asValues = count(({ what }) => what !== 'live');
  const cover = coverSheet(
    coverName,
    title,
    {
      workbook: workbook.name,
      hash: hashOf(workbook),
      live,
      asValues,
      findings,
      materials,
      measured: { sheet: measuredName, count: measured.count, left: measured.left },
      figures: figures?.name,
    },
    data,
  );
  const sources = sourcesSheet(sourcesName, copy.used, data.tables);
  const all = [...verified([cover], own, sheets).sheets, ...sheets, data.plan(), sources];
  const plan: WorkbookPlan = {
    name: `${cellText(title.part)}, hand-over`,
    sheets: all.map(sheet => (own.has(sheet.name) ? { ...sheet, isLocked: true, print: { ...sheet.print, paper } } : sheet)),
  };
  assertPlain(plan, own, copy.keptFormulas);
  return { plan, own: new Set([...own, data.name]), keptFormulas: copy.keptFormulas, converted: copy.converted, findings, live, asValues };
}

/** All that decides the content: sheets, cells, values, formulas, versions. */
function hashOf({ sheets }: SourceWorkbook): string {
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
    for (const { at, formula } of cells) {
      if (formula === undefined || kept.has(`${name}!${at}`)) continue;
      if (formula.length > LONGEST_FORMULA) throw new Error(`${name}!${at}: a formula of ${formula.length} characters`);
      const shape = shapeOf(formula);
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
