// The workbook of the bench as its page uses it: open, keep, look at the selection.
import { CommandType, type IExecutionOptions } from '@univerjs/core';
import { IDescriptionService } from '@univerjs/preset-sheets-core';
import type { Cell } from '../../core/kinds';
import { address } from '../../sheet/addresses';
import type { Selection, SheetPort } from '../../sheet/port';
import type { WorkbookPlan } from '../../sheet/plan';
import { nameOf, rectangleOf } from './addresses';
import { benchPort, type SheetRefusals } from './bench-port';
import { sheetReader, type BenchCell } from './cells';
import { onChange } from './changes';
import type { SheetFunction, SheetLanguage } from './metadata';
import { workbookId } from './sheets';
import { outlineOf, type Snapshot } from './snapshot';
import { startUniver } from './univer';
import { description } from './univer-adapter';
import { answersInTheirCells, typingInTheFormulaBar } from './univer-repairs';
import { workbookData } from './workbook-data';
import { workbookPlan } from './workbook-plan';

export interface Selected {
  readonly sheetName: string;
  readonly at: string;
  readonly cell: BenchCell;
  /** The whole selection: `B4:D9`. */
  readonly range: string;
}

export interface BenchWorkbook {
  readonly port: SheetPort;
  /** The first workbook is drawn, and takes what is typed. */
  readonly stands: Promise<void>;
  /** @param start the cell that is selected; the first one if left out. */
  openPlan(plan: WorkbookPlan, start?: Selection): void;
  name(): string;
  rename(name: string): void;
  /** An entry is open that is not taken in yet. */
  isTyping(): boolean;
  /** Takes in an entry that is being typed. */
  endTyping(): Promise<void>;
  /** What is open, calculated; an entry that is being typed is taken in. */
  contents(): Promise<WorkbookPlan>;
  /** Throws if what is open then is not what was given. */
  open(snapshot: Snapshot): void;
  snapshot(): Snapshot;
  /** Told of each change by the user, not of answers of formulas. */
  onEdit(listener: () => void): void;
  /** Told of everything that may change what the selected cell shows. */
  onChange(listener: () => void): void;
  selected(): Selected | null;
  /** Arguments of the examples by the id of the function, for the help at the cell. */
  showExamples(examples: ReadonlyMap<string, readonly string[]>): void;
  /** Values of the selection, spilled ones included; whole rows and columns end where the sheet is empty. */
  selectedValues(): readonly (readonly (Cell | null)[])[];
}

/** Not an answer of a formula, nor something that the engine does to its own working copy. */
function isEdit(id: string, type: CommandType | undefined, options: IExecutionOptions | undefined): boolean {
  return (
    type === CommandType.MUTATION &&
    options?.onlyLocal !== true &&
    options?.fromFormula !== true &&
    (id.startsWith('sheet.mutation.') || id.startsWith('formula.mutation.set-defined-name'))
  );
}

export function startBenchWorkbook(
  container: HTMLElement,
  functions: readonly SheetFunction[],
  language: SheetLanguage,
  W: SheetRefusals,
): BenchWorkbook {
  const sheets = startUniver(container, functions, language);
  answersInTheirCells(sheets);
  typingInTheFormulaBar(sheets);
  const dark = matchMedia('(prefers-color-scheme: dark)');
  const light = () => sheets.api.toggleDarkMode(dark.matches);
  dark.addEventListener('change', light);
  light();
  let opening = false;

  function snapshot(): Snapshot {
    const workbook = sheets.api.getWorkbook(workbookId);
    if (workbook === null) throw new Error('no workbook is open');
    return workbook.save();
  }

  function show(given: Snapshot): void {
    opening = true;
    try {
      sheets.show(given);
    } finally {
      opening = false;
    }
  }

  function selection() {
    const sheet = sheets.api.getWorkbook(workbookId)?.getActiveSheet();
    const selected = sheet?.getSelection();
    const cell = selected?.getCurrentCell();
    const range = selected?.getActiveRange()?.getRange();
    return sheet && cell && range ? { sheet, cell, range } : null;
  }

  async function endTyping(): Promise<void> {
    await sheets.api.getWorkbook(workbookId)?.endEditingAsync(true);
  }

  return {
    port: benchPort(sheets, W),
    stands: sheets.stands,
    openPlan(plan, start) {
      show(workbookData(plan));
      const workbook = sheets.api.getWorkbook(workbookId);
      const sheet = start && workbook?.getSheetByName(start.sheetName);
      if (!sheet) return;
      workbook?.setActiveSheet(sheet);
      sheet.getRange(start.at).activate();
    },
    name: () => sheets.api.getWorkbook(workbookId)?.getName() ?? '',
    isTyping: () => sheets.api.getWorkbook(workbookId)?.isCellEditing() ?? false,
    rename: name => void sheets.api.getWorkbook(workbookId)?.setName(name),
    endTyping,
    async contents() {
      await endTyping();
      await sheets.api.getFormula().onCalculationResultApplied();
      return workbookPlan(sheets);
    },
    open(given) {
      const wanted = outlineOf(given);
      show(given);
      if (outlineOf(snapshot()) !== wanted) throw new Error(W.notWhole);
    },
    snapshot,
    onEdit(listener) {
      sheets.commands.onCommandExecuted(({ id, type }, options) => {
        if (!opening && isEdit(id, type, options)) listener();
      });
    },
    onChange: listener => void onChange(sheets, listener),
    selected() {
      const now = selection();
      if (now === null) return null;
      const {
        sheet,
        cell: { actualRow, actualColumn },
        range,
      } = now;
      return {
        sheetName: sheet.getSheetName(),
        at: address(actualRow, actualColumn),
        cell: sheetReader(sheets, sheet.getSheetId()).at(actualRow, actualColumn),
        range: nameOf(range),
      };
    },
    showExamples(examples) {
      sheets.injector.get(IDescriptionService).registerDescriptions(functions.map(each => description(each, examples.get(each.id))));
    },
    selectedValues() {
      const now = selection();
      if (now === null) return [];
      const reader = sheetReader(sheets, now.sheet.getSheetId());
      const used = reader.used();
      if (used === null) return [];
      const { top, left, bottom, right } = rectangleOf(now.range);
      const filled = { top, left, bottom: Math.min(bottom, used.bottom), right: Math.min(right, used.right) };
      return reader.rectangle(filled).map(row => row.map(({ value }) => value));
    },
  };
}
