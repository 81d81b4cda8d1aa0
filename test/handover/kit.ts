// Small workbooks written down as cells, and their hand-over as cells again.
import { CHOSEN_BY_ITSELF } from '../../src/handover/pages/choice';
import type { Language } from '../../src/handover/words/language';
import type { Cell } from '../../src/core/kinds';
import type { HandoverFinding } from '../../src/handover/read/finding';
import { handover, type Handover } from '../../src/handover/handover';
import type { SourceCell, SourceSheet, SourceWorkbook } from '../../src/sheet/workbook-values';
import type { TitleBlock } from '../../src/handover/pages/title-block';
import type { PlanCell, SheetPlan } from '../../src/sheet/plan';

/** A value; a text that begins with = is a formula; a pair is a formula with the value that a program kept for it. */
export type Typed = Cell | null | readonly [formula: string, kept: Cell];

const cellOf = (typed: Typed): SourceCell => {
  if (typeof typed === 'string' && typed.startsWith('=')) return { value: null, formula: typed };
  return typeof typed === 'object' && typed !== null ? { value: typed[1], formula: typed[0] } : { value: typed };
};

export const sheetOf = (name: string, cells: Readonly<Record<string, Typed>>, more: Partial<SourceSheet> = {}): SourceSheet => ({
  name,
  cells: new Map(Object.entries(cells).map(([at, typed]) => [at, cellOf(typed)])),
  ...more,
});
export const workbookOf = (cells: Readonly<Record<string, Typed>>, more: Partial<SourceWorkbook> = {}): SourceWorkbook => ({
  name: 'Mine',
  sheets: [sheetOf('S', cells)],
  ...more,
});

export const TITLE: TitleBlock = {
  part: 'Logger',
  number: 'L-1',
  revision: 'A',
  date: '2026-11-25',
  status: 'for tooling',
  madeBy: 'M',
  checkedBy: 'C',
};
export const handed = (workbook: SourceWorkbook, language: Language = 'English'): Handover =>
  handover(workbook, TITLE, { choice: { ...CHOSEN_BY_ITSELF, language } });

export function sheetNamed({ plan }: Handover, name: string): SheetPlan {
  const sheet = plan.sheets.find(one => one.name === name);
  if (sheet === undefined) throw new Error(`no sheet ${name} among ${plan.sheets.map(one => one.name).join(', ')}`);
  return sheet;
}

export function cellAt(copy: Handover, sheet: string, at: string): PlanCell {
  const cell = sheetNamed(copy, sheet).cells.find(one => one.at === at);
  if (cell === undefined) throw new Error(`${sheet} has no cell ${at}`);
  return cell;
}

/** `live S!B1: BOSS.OD`. */
export const told = (findings: readonly HandoverFinding[]): string[] =>
  findings.map(({ sheet, at, what, words }) => `${what} ${sheet}${at === '' ? '' : `!${at}`}: ${words}`);

/** The formula of a cell followed to its end: `Steps!$B$10` is replaced by what stands there, and so on. */
export function followed(copy: Handover, sheet: string, at: string): string {
  let formula = cellAt(copy, sheet, at).formula ?? '';
  for (let n = 0; n < 50; n++) {
    const next = formula.replace(/Steps!\$B\$(\d+)/g, (_, row: string) => {
      const step = cellAt(copy, 'Steps', `B${row}`);
      return step.formula === undefined ? JSON.stringify(step.value) : `(${step.formula.slice(1)})`;
    });
    if (next === formula) return formula;
    formula = next;
  }
  return formula;
}
