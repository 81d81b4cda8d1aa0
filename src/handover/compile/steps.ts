// Where the steps of a call stand: in a table with others of its shape, or alone as a block.
import type { SheetPlan } from '../../sheet/plan';
import type { SheetNames } from '../../sheet/sheet-names';
import type { SourceWorkbook, WorkbookValues } from '../../sheet/workbook-values';
import type { PageWords } from '../words/words';
import { CallShapes, shapeOf } from './call-shapes';
import type { CallSite } from './calls/call-site';
import { blockTitle, labelBeside } from './labels';
import type { Placed, StepBlock } from './step-block';
import { StepTables, type TableCall } from './step-tables';
import { StepsSheet } from './steps-sheet';

/** Fewer cells of one shape are read more easily one below the other. */
const FEWEST = 3;

export class Steps {
  private readonly blocks: StepsSheet;
  private readonly shapes: CallShapes;
  private tables: StepTables | undefined;

  constructor(
    private readonly names: SheetNames,
    workbook: SourceWorkbook,
    private readonly words: PageWords,
  ) {
    this.blocks = new StepsSheet(names.free(words.sheets.steps), words.steps);
    this.shapes = new CallShapes(workbook);
  }

  /** Undefined where a formula is longer than a cell takes. */
  place(source: WorkbookValues, { card, node, formula, sheet, at }: CallSite, block: StepBlock): Placed | undefined {
    const { key, count } = this.shapes.of(sheet, at);
    const inTable = (): Placed | undefined => {
      const call = { sheet, at, what: card.id, label: labelBeside(source, sheet, at) };
      // a formula may hold the same call twice
      return this.inTable(`${key} ${shapeOf(formula.slice(0, node.loc[0]), at)}`, count, call, block);
    };
    return (count < FEWEST ? undefined : inTable()) ?? this.write(blockTitle(source, sheet, at, card.id), block);
  }

  write(title: string, block: StepBlock): Placed | undefined {
    return this.blocks.write(title, block);
  }

  private inTable(shape: string, count: number, call: TableCall, block: StepBlock): Placed | undefined {
    this.tables ??= new StepTables(this.names.free(this.words.sheets.stepRows), this.words.stepRows, this.words.steps.said);
    return this.tables.write(shape, count, call, block);
  }

  plans(): SheetPlan[] {
    const { tables } = this;
    return [...(tables === undefined || tables.isEmpty ? [] : [tables.plan()]), this.blocks.plan()];
  }
}
