// The hand-over copy: every call of ours becomes plain formulas on the same cells, or a value that says so.
import { call } from '../../registry';
import { cellText } from '../../sheet/cell-text';
import type { PlanCell, Role, SheetPlan, Validation } from '../../sheet/plan';
import { joinedValidations, withStates } from '../../sheet/ranges';
import { SheetNames } from '../../sheet/sheet-names';
import { WorkbookValues, type SourceWorkbook } from '../../sheet/workbook-values';
import type { HandoverFinding } from '../read/finding';
import type { Looks } from '../read/looks';
import { prepared } from '../read/prepared';
import { convertedCell } from './cells/cell';
import type { Converted } from './context';
import type { LiveResult, Conversion } from './conversion';
import { DataSheet } from './data-sheet';
import type { Figures } from './joint/joint-cells';
import { JointSheets } from './joint/joint-sheet';
import { spillAll } from './spilled-tables';
import { StepsSheet } from './steps-sheet';
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
  /** Cells of the user whose formula stays as he has it, by `Sheet!B4`. */
  readonly kept: ReadonlySet<string>;
  /** Texts of the user that became numbers, by `Sheet!B4`. */
  readonly converted: ReadonlyMap<string, Converted>;
  readonly figures: Figures;
}

/** @param untrue rows of variants that stay values: `Variants_1!7`. */
export function convert(
  home: SourceWorkbook,
  looks: Looks = () => ({}),
  mostFigures = 0,
  untrue: ReadonlySet<string> = new Set(),
  keepsLinks = false,
): HandoverCopy {
  const converted = new Map<string, Converted>();
  const copy = copied(home, looks, converted, mostFigures, untrue, keepsLinks);
  // texts that became numbers on the way are numbers from the start the second time
  return converted.size === 0 ? copy : copied(home, looks, converted, mostFigures, untrue, keepsLinks);
}

function copied(
  home: SourceWorkbook,
  looks: Looks,
  converted: Map<string, Converted>,
  mostFigures: number,
  untrue: ReadonlySet<string>,
  keepsLinks: boolean,
): HandoverCopy {
  const names = new SheetNames();
  for (const { name } of home.sheets) names.free(name);
  for (const name of home.otherSheets ?? []) names.free(name);
  const { workbook, refused } = prepared(home, keepsLinks);
  const source = new WorkbookValues(workbook, call);
  const data = new DataSheet(names.free('Data'));
  const steps = new StepsSheet(names.free('Steps'));
  const tables = new TablesSheet(names.free('Tables'));
  const context = { source, data, tables, converted, validations: new Map<string, Validation>() };
  const conversion: Conversion = {
    ...context,
    steps,
    joints: new JointSheets(context, names, mostFigures, untrue),
    findings: [],
    results: [],
    refused,
    kept: new Set(),
    crowded: spillAll(source, workbook),
    used: new Set(),
  };
  const bodies = workbook.sheets.map(({ name, cells }) => ({
    name,
    cells: onceEach([...cells].flatMap(([at]) => convertedCell(conversion, name, at).map(cell => ({ ...cell, origin: at })))),
  }));
  const sheets = bodies.map(({ name, cells }): SheetPlan => {
    const { role, format, ...rest } = looks(name);
    const isInput = (at: string): Role | undefined => (context.validations.has(`${name}!${at}`) ? 'input' : undefined);
    return withStates({
      name,
      widths: [],
      ...rest,
      cells: cells.map(({ origin, ...cell }) =>
        withLooks(
          cell,
          role?.(cell.at) ?? isInput(cell.at),
          format?.(cell.at) ?? (typeof cell.value === 'number' ? format?.(origin) : undefined),
          context.converted.get(`${name}!${cell.at}`),
        ),
      ),
      validations: joinedValidations(
        [...context.validations].flatMap(([key, validation]) => (key === `${name}!${validation.range}` ? [validation] : [])),
      ),
      print: { landscape: true },
    });
  });
  for (const [key, { typed, value, unit }] of context.converted) {
    const [sheet = '', at = ''] = key.split('!');
    conversion.findings.push({ sheet, at, what: 'changed', words: `"${typed}" became ${value}${unit === '' ? '' : ` ${unit}`}` });
  }
  const variants = conversion.joints.plans();
  return {
    sheets: [...sheets, ...[...variants, ...(tables.isEmpty ? [] : [tables.plan()]), steps.plan()].map(withStates)],
    data,
    findings: conversion.findings,
    results: conversion.results,
    used: conversion.used,
    source,
    names,
    kept: conversion.kept,
    converted,
    figures: conversion.joints.figures(),
    own: new Set([...variants.map(({ name }) => name), ...(tables.isEmpty ? [] : [tables.name]), steps.name, data.name]),
  };
}

/** A table spills over blank cells: what it puts there wins. */
function onceEach<C extends PlanCell>(cells: readonly C[]): C[] {
  const byAddress = new Map<string, C>();
  for (const cell of cells) if (cell.value !== '' || cell.formula !== undefined || !byAddress.has(cell.at)) byAddress.set(cell.at, cell);
  return [...byAddress.values()];
}

function withLooks(cell: PlanCell, role: Role | undefined, format: string | undefined, number: Converted | undefined): PlanCell {
  const looked = { ...cell, role: cell.role === 'header' ? cell.role : (role ?? cell.role), ...(format === undefined ? {} : { format }) };
  return number === undefined
    ? looked
    : {
        ...looked,
        value: number.value,
        note: `typed as "${cellText(number.typed)}"; now a number${number.unit === '' ? '' : ` in ${number.unit}`}`,
      };
}
