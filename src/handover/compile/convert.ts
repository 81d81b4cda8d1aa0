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
import { Steps } from './steps';

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
  readonly figures: Figures;
}

/** @param untrue rows of variants that stay values: `Variants_1!7`. */
export function convert(
  home: SourceWorkbook,
  looks: Looks = () => ({}),
  mostFigures = 0,
  untrue: ReadonlySet<string> = new Set(),
): HandoverCopy {
  const converted = new Map<string, Converted>();
  const copy = copied(home, looks, converted, mostFigures, untrue);
  // texts that became numbers on the way are numbers from the start the second time
  return converted.size === 0 ? copy : copied(home, looks, converted, mostFigures, untrue);
}

function copied(
  home: SourceWorkbook,
  looks: Looks,
  converted: Map<string, Converted>,
  mostFigures: number,
  untrue: ReadonlySet<string>,
): HandoverCopy {
  const names = new SheetNames();
  const { workbook, homeNames, refused, findings: changes } = prepared(home, names);
  const source = new WorkbookValues(workbook, call);
  const data = new DataSheet(names.free('Data'));
  const steps = new Steps(names, workbook);
  const context = { source, data, converted, validations: new Map<string, Validation>() };
  const conversion: Conversion = {
    ...context,
    steps,
    joints: new JointSheets(context, names, mostFigures, untrue),
    findings: [...changes],
    results: [],
    refused,
    crowded: spillAll(source, workbook),
    used: new Set(),
  };
  const bodies = workbook.sheets.map(({ name, cells }) => ({
    name,
    cells: onceEach([...cells].flatMap(([at]) => convertedCell(conversion, name, at).map(cell => ({ ...cell, origin: at })))),
  }));
  const validations = bySheet(context.validations);
  const sheets = bodies.map(({ name, cells }): SheetPlan => {
    const { role, format, ...rest } = looks(homeNames.get(name) ?? name);
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
      validations: joinedValidations(validations.get(name) ?? []),
      print: { landscape: true },
    });
  });
  for (const [key, { typed, value, unit }] of context.converted) {
    const [sheet = '', at = ''] = key.split('!');
    conversion.findings.push({ sheet, at, what: 'changed', words: `"${typed}" became ${value}${unit === '' ? '' : ` ${unit}`}` });
  }
  const own = [...conversion.joints.plans(), ...steps.plans()];
  return {
    sheets: [...sheets, ...own.map(withStates)],
    data,
    findings: conversion.findings,
    results: conversion.results,
    used: conversion.used,
    source,
    names,
    figures: conversion.joints.figures(),
    own: new Set([...own.map(({ name }) => name), data.name]),
  };
}

/** By the sheet that the key begins with: `Sheet!B4`. */
function bySheet(validations: ReadonlyMap<string, Validation>): ReadonlyMap<string, readonly Validation[]> {
  const found = new Map<string, Validation[]>();
  for (const [key, validation] of validations) {
    const sheet = key.slice(0, -validation.range.length - 1);
    const known = found.get(sheet);
    if (known === undefined) found.set(sheet, [validation]);
    else known.push(validation);
  }
  return found;
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
