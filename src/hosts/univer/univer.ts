// Starts the sheet engine with our functions and shows workbooks in it.
import {
  ICommandService,
  LifecycleService,
  LifecycleStages,
  LocaleType,
  LogLevel,
  mergeLocales,
  Univer,
  type IWorkbookData,
  type Plugin,
  type PluginCtor,
} from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { UniverSheetsConditionalFormattingPreset } from '@univerjs/preset-sheets-conditional-formatting';
import conditionalWords from '@univerjs/preset-sheets-conditional-formatting/locales/en-US';
import {
  CalculationMode,
  FormulaDataModel,
  IDescriptionService,
  IFunctionService,
  UniverSheetsCorePreset,
} from '@univerjs/preset-sheets-core';
import { UniverSheetsDrawingPreset } from '@univerjs/preset-sheets-drawing';
import drawingWords from '@univerjs/preset-sheets-drawing/locales/en-US';
import coreWords from '@univerjs/preset-sheets-core/locales/en-US';
import { defaultTheme } from '@univerjs/themes';
import '@univerjs/preset-sheets-core/lib/index.css';
import '@univerjs/preset-sheets-conditional-formatting/lib/index.css';
import '@univerjs/preset-sheets-drawing/lib/index.css';
import { cellBoxes, markNotes } from './cell-boxes';
import { loadSheetWords } from './sheet-words';
import { accents } from './looks';
import type { SheetFunction, SheetLanguage } from './metadata';
import { workbookId, type Sheets } from './sheets';
import { dressSpills } from './spills';
import { description, executor } from './univer-adapter';
import { onlyFittingSuggestions } from './univer-repairs';

/** Protection has no meaning in a workbook that lives in one browser. */
const uselessMenus = [
  'sheet.command.add-range-protection-from-toolbar',
  'sheet.contextMenu.permission',
  'sheet.command.add-range-protection-from-sheet-bar',
  'sheet.command.delete-worksheet-protection-from-sheet-bar',
  'sheet.command.change-sheet-protection-from-sheet-bar',
  'sheet.command.view-sheet-permission-from-sheet-bar',
];

export interface RunningSheets extends Sheets {
  /** Shows a workbook in place of the one that is open. */
  show(data: IWorkbookData): void;
  /** The first workbook is drawn, and takes what is typed. */
  readonly stands: Promise<void>;
}

export function startUniver(container: HTMLElement, functions: readonly SheetFunction[], language: SheetLanguage): RunningSheets {
  const univer = new Univer({
    theme: { ...defaultTheme, primary: accents },
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: mergeLocales(coreWords, conditionalWords, drawingWords) },
    logLevel: LogLevel.WARN,
  });
  const presets = [
    UniverSheetsCorePreset({
      container,
      ribbonType: 'simple',
      menu: Object.fromEntries(uselessMenus.map(id => [id, { hidden: true }])),
      // Answers of an older release of the functions must not survive a reload.
      formula: { initialFormulaComputing: CalculationMode.FORCED },
      sheets: { autoHeightForMergedCells: true, disableForceStringAlert: true, disableForceStringMark: true },
    }),
    UniverSheetsConditionalFormattingPreset(),
    UniverSheetsDrawingPreset(),
  ];
  for (const plugin of presets.flatMap(({ plugins }) => plugins)) {
    const [ctor, config] = (Array.isArray(plugin) ? plugin : [plugin, undefined]) as [PluginCtor<Plugin>, object | undefined];
    univer.registerPlugin(ctor, config);
  }
  const api = FUniver.newAPI(univer);
  const injector = univer.__getInjector();
  injector.get(IFunctionService).registerExecutors(...functions.map(executor));
  // The engine draws in the frame after it tells.
  const drawn = () => new Promise<void>(resolve => requestAnimationFrame(() => setTimeout(resolve)));
  const stands = injector.get(LifecycleService).onStage(LifecycleStages.Rendered).then(drawn);
  void stands.then(() => loadSheetWords(sheets, language));
  let isDressed = false;
  const sheets: RunningSheets = {
    api,
    injector,
    commands: injector.get(ICommandService),
    get formulas() {
      return injector.get(FormulaDataModel);
    },
    show(data) {
      if (api.getWorkbook(workbookId) !== null) api.disposeUnit(workbookId);
      api.createWorkbook(data);
      if (isDressed) return;
      isDressed = true;
      // These services exist only once a workbook is open.
      injector.get(IDescriptionService).registerDescriptions(functions.map(each => description(each)));
      markNotes(sheets);
      dressSpills(sheets);
      cellBoxes(sheets);
      onlyFittingSuggestions(sheets);
    },
    stands,
  };
  return sheets;
}
