// Tables and defined names of a workbook.
import { fromStored } from './rich-text';
import { UnreadableFile } from './unreadable';
import { attribute, childOf, childrenOf, isSet, type XmlElement } from './xml';

export interface StoredTableColumn {
  readonly name: string;
  /** What the program puts into a new row. */
  readonly formula?: string;
  readonly totalsFormula?: string;
  /** `sum`, where the last row works something out. */
  readonly totals?: string;
}

export interface StoredTable {
  readonly part: string;
  /** As formulas name it. */
  readonly name: string;
  readonly sheet: string;
  readonly area: string;
  readonly headerRows: number;
  readonly totalsRows: number;
  readonly columns: readonly StoredTableColumn[];
}

export interface StoredName {
  readonly name: string;
  /** As stored: `Sheet1!$B$4`, `1.5`. */
  readonly meaning: string;
  /** The sheet on which alone it holds. */
  readonly sheet?: string;
  readonly isHidden: boolean;
}

const present = <K extends string>(key: K, value: string | undefined): Partial<Record<K, string>> =>
  value === undefined ? {} : ({ [key]: value } as Record<K, string>);

export function tableOf(root: XmlElement, part: string, sheet: string): StoredTable {
  const area = attribute(root, 'ref') ?? '';
  if (!/^[A-Z]{1,3}[1-9]\d{0,6}(:[A-Z]{1,3}[1-9]\d{0,6})?$/.test(area))
    throw new UnreadableFile('inside', `the part "${part}" is a table without cells`);
  return {
    part,
    sheet,
    area,
    name: fromStored(attribute(root, 'displayName') ?? attribute(root, 'name') ?? ''),
    headerRows: Number(attribute(root, 'headerRowCount') ?? 1),
    totalsRows: Number(attribute(root, 'totalsRowCount') ?? 0),
    columns: childrenOf(childOf(root, 'tableColumns'), 'tableColumn').map(column => ({
      name: fromStored(attribute(column, 'name') ?? ''),
      ...present('formula', childOf(column, 'calculatedColumnFormula')?.text),
      ...present('totalsFormula', childOf(column, 'totalsRowFormula')?.text),
      ...present('totals', attribute(column, 'totalsRowFunction')),
    })),
  };
}

const nowhere = (on: string): never => {
  throw new UnreadableFile('inside', `a name belongs to the sheet ${on.slice(0, 20)}, which the workbook has not`);
};

/** `sheets` are the names of all sheets, those with charts alone too: a name counts through them. */
export const namesOf = (book: XmlElement, sheets: readonly string[]): StoredName[] =>
  childrenOf(childOf(book, 'definedNames'), 'definedName').map(name => {
    const on = attribute(name, 'localSheetId');
    return {
      name: attribute(name, 'name') ?? '',
      meaning: name.text,
      ...present('sheet', on === undefined ? undefined : (sheets[Number(on)] ?? nowhere(on))),
      isHidden: isSet(name, 'hidden'),
    };
  });
