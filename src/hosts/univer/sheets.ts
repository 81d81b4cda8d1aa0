// The running sheet engine, as the files of this host share it.
import type { ICommandService, Injector } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import type { FormulaDataModel } from '@univerjs/preset-sheets-core';

export const workbookId = 'bosswright';

export type OpenSheet = ReturnType<NonNullable<ReturnType<FUniver['getWorkbook']>>['getSheets']>[number];

export interface Sheets {
  readonly api: FUniver;
  readonly injector: Injector;
  readonly commands: ICommandService;
  readonly formulas: FormulaDataModel;
}
