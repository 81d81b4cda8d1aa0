// The hand-over copy: every call of ours becomes plain formulas on the same cells, or a value that says so.
import { call } from '../../registry';
import { cellText } from '../../sheet/cell-text';
import type { PlanCell, SheetPlan } from '../../sheet/plan';
import { withStates } from '../../sheet/ranges';
import { SheetNames } from '../../sheet/sheet-names';
import { WorkbookValues, type SourceWorkbook } from '../../sheet/workbook-values';
import type { HandoverFinding } from '../read/finding';
import { prepared } from '../read/prepared';
import { unspaced } from '../read/spaces';
import { ENGLISH, type PageWords } from '../words/english';
import type { FindingWords } from '../words/finding-words';
import { convertedCell } from './cells/cell';
import type { Converted } from './context';
import type { LiveResult, Conversion } from './conversion';
import { DataSheet } from './data-sheet';
import { VariantChoice } from './joint/chosen-variants';
import { JointSheets } from './joint/joint-sheet';
import { spillAll } from './spilled-tables';
import { Steps } from './steps';
import { TablesSheet } from './tables-sheet';

export interface HandoverCopy {
  /** The converted sheets, then the variants, then the steps. */
  readonly sheets: readonly SheetPlan[];
  /** Sheet of the tables and choices; its plan is made last. */
  readonly data: DataSheet;
  readonly findings: readonly HandoverFinding[];
  readonly results: readonly LiveResult[];
  /** Ids of the functions that the workbook calls. */
  readonly used: ReadonlySet<string>;
  /** The values as the converted sheets have them. */
  readonly source: WorkbookValues;
  /** Sheets that we wrote ourselves. */
  readonly own: ReadonlySet<string>;
  readonly names: SheetNames;
  /** Cells of the user whose formula stays as it is, by `Sheet!B4`. */
  readonly keptFormulas: ReadonlySet<string>;
  /** Texts of the user that became numbers, by `Sheet!B4`. */
  readonly converted: ReadonlyMap<string, Converted>;
  readonly variants: VariantChoice;
}

export interface Converting {
  /** Of the variants, those that the part is made by. */
  readonly variants?: readonly string[] | undefined;
  /** Rows of variants that stay values: `Variants_1!7`. */
  readonly untrue?: ReadonlySet<string>;
  readonly keepsLinks?: boolean;
  readonly words?: PageWords;
}

export function convert(home: SourceWorkbook, converting: Converting = {}): HandoverCopy {
  const converted = new Map<string, Converted>();
  const copy = copied(home, converted, converting);
  // texts that became numbers on the way are numbers from the start the second time
  return converted.size === 0 ? copy : copied(home, converted, converting);
}

function copied(
  home: SourceWorkbook,
  converted: Map<string, Converted>,
  { variants, untrue = new Set(), keepsLinks = false, words = ENGLISH }: Converting,
): HandoverCopy {
  const { said } = words.conversion;
  const names = new SheetNames();
  for (const { name } of home.sheets) names.free(name);
  for (const name of home.otherSheets ?? []) names.free(name);
  const { workbook: spaced, refused } = prepared(home, keepsLinks);
  const { workbook, blanked } = unspaced(spaced);
  const source = new WorkbookValues(workbook, call);
  const data = new DataSheet(names.free(words.sheets.data), words.data);
  const steps = new Steps(names, workbook, words);
  const tables = new TablesSheet(names.free(words.sheets.tables), words.tables, words.steps.said);
  const context = { source, data, tables, converted, sourceWords: words.sources.said };
  const choice = new VariantChoice(variants);
  const conversion: Conversion = {
    ...context,
    steps,
    joints: new JointSheets(context, names, choice, untrue, words),
    findings: [],
    said,
    results: [],
    refused,
    kept: new Set(),
    crowded: spillAll(source, workbook),
    used: new Set(),
  };
  const sheets = workbook.sheets.map(({ name, cells }): SheetPlan => ({
    name,
    widths: [],
    cells: onceEach([...cells].flatMap(([at]) => convertedCell(conversion, name, at))).map(cell =>
      withNumber(cell, converted.get(`${name}!${cell.at}`), said),
    ),
  }));
  for (const { sheet, at } of blanked) conversion.findings.push({ sheet, at, what: 'changed', words: said.spacesBlanked });
  for (const [key, { typed, value, unit }] of context.converted) {
    const [sheet = '', at = ''] = key.split('!');
    conversion.findings.push({ sheet, at, what: 'changed', words: said.became(typed, `${value}${unit === '' ? '' : ` ${unit}`}`) });
  }
  const own = [...conversion.joints.plans(), ...(tables.isEmpty ? [] : [tables.plan()]), ...steps.plans()];
  return {
    sheets: [...sheets, ...own.map(withStates)],
    data,
    findings: conversion.findings,
    results: conversion.results,
    used: conversion.used,
    source,
    names,
    keptFormulas: conversion.kept,
    converted,
    variants: choice,
    own: new Set([...own.map(({ name }) => name), data.name]),
  };
}

/** A table spills over blank cells: what it puts there wins. */
function onceEach(cells: readonly PlanCell[]): PlanCell[] {
  const byAddress = new Map<string, PlanCell>();
  for (const cell of cells) if (cell.value !== '' || cell.formula !== undefined || !byAddress.has(cell.at)) byAddress.set(cell.at, cell);
  return [...byAddress.values()];
}

const withNumber = (cell: PlanCell, number: Converted | undefined, said: FindingWords): PlanCell =>
  number === undefined ? cell : { ...cell, value: number.value, note: said.nowNumber(cellText(number.typed), number.unit) };
