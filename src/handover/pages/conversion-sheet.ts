// What became of the functions: for the sender, and for whoever wonders about a value.
import { DATA_VERSION, FUNCTIONS_VERSION } from '../../core/version';
import { cellText } from '../../sheet/cell-text';
import type { SheetPlan } from '../../sheet/plan';
import type { HandoverFinding } from '../read/finding';
import { RowWriter } from './rows';
import type { PageWords } from '../words/words';

const WIDTHS = [24, 10, 22, 70];
const LAST = WIDTHS.length - 1;
const MOST_FINDINGS = 150;

export interface ConversionSummary {
  readonly workbook: string;
  readonly hash: string;
  readonly live: number;
  readonly asValues: number;
  readonly findings: readonly HandoverFinding[];
}

export function conversionSheet(name: string, summary: ConversionSummary, { conversion }: PageWords): SheetPlan {
  const rows = new RowWriter();
  rows.add({ from: 0, to: LAST, role: 'title', value: conversion.title });
  rows.add({ from: 0, to: LAST, role: 'note', value: conversion.live(summary.live, summary.asValues) });
  rows.gap();
  for (const [label, text] of [
    [conversion.workbook, cellText(summary.workbook)],
    [conversion.functions, FUNCTIONS_VERSION],
    [conversion.data, DATA_VERSION],
    [conversion.content, conversion.contentWords(summary.hash)],
  ] as const)
    rows.add({ from: 0, to: 0, role: 'label', value: label }, { from: 1, to: LAST, role: 'text', value: text });
  rows.gap();
  const live = new Map<string, number>();
  for (const { sheet, what, values = 0 } of summary.findings) if (what === 'live') live.set(sheet, (live.get(sheet) ?? 0) + values);
  for (const [sheet, count] of live) rows.add({ from: 0, to: LAST, role: 'text', value: conversion.liveOn(sheet, count) });
  const other = summary.findings.flatMap(({ what, ...one }) => (what === 'live' ? [] : [{ ...one, what: conversion.kinds[what] }]));
  if (other.length > 0) rows.add(...conversion.headers.map((value, c) => ({ from: c, to: c, role: 'header' as const, value })));
  for (const { sheet, at, what, words } of other.slice(0, MOST_FINDINGS))
    rows.add(...[sheet, at, what, cellText(words)].map((value, c) => ({ from: c, to: c, role: 'text' as const, value })));
  if (other.length > MOST_FINDINGS) rows.add({ from: 0, to: LAST, role: 'note', value: conversion.more(other.length - MOST_FINDINGS) });
  return { name, widths: WIDTHS, frozenRows: 2, cells: rows.cells, merged: rows.merged };
}
