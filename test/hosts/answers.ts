// What the formulas of a made-up Excel give, worked out by the core.
import { call } from '../../src/registry';
import { isFault, isRows, type One, WorkbookValues } from '../../src/sheet/workbook-values';
import type { FakeExcel } from './excel-fake';

const shown = (value: One): string | number | boolean => (isFault(value) ? value.cellError : (value ?? ''));

export const answers: Required<FakeExcel>['answers'] = sheets => {
  const source = new WorkbookValues(
    {
      name: '',
      sheets: sheets.map(({ name, cells, spilled }) => {
        const filled = new Set([...spilled.values()].flat());
        return {
          name,
          cells: new Map(
            [...cells]
              .filter(([at]) => !filled.has(at))
              .map(([at, { formula, value }]) => [at, formula === undefined ? { value } : { value: null, formula }]),
          ),
        };
      }),
    },
    call,
  );
  return (sheetName, at) => {
    const result = source.result(sheetName, at);
    return isRows(result) ? result.map(line => line.map(shown)) : [[shown(result)]];
  };
};
