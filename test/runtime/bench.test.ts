// The built bench shows in every cell of the demo workbook what the core answers.
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { cellPosition } from '../../src/sheet/addresses';
import { ownFunction, parseFormula, walk } from '../../src/sheet/formula';
import { sourceOf } from '../kit/source-of-plan';
import { WorkbookValues } from '../../src/sheet/workbook-values';
import { call } from '../../src/registry';
import { benchPage, type BenchPage } from '../browser/bench-page';

let bench: BenchPage;
beforeAll(async () => {
  bench = await benchPage();
  await bench.open();
});
afterAll(() => bench.close());

test('every demo cell with a call of ours', async () => {
  const source = new WorkbookValues(sourceOf(demoWorkbook), call);
  let compared = 0;
  for (const { name, cells } of demoWorkbook.sheets) {
    const ours = cells.filter(({ formula = '' }) => [...walk(parseFormula(formula) ?? null)].some(node => ownFunction(node) !== undefined));
    const expected = ours.map(({ at }) => {
      const result: unknown = source.result(name, at);
      return { at, rows: (Array.isArray(result) ? result : [[result]]) as unknown[][] };
    });
    const shown = async (): Promise<typeof expected> => {
      const sheet = await bench.read(name);
      return expected.map(({ at, rows }) => {
        const { row, column } = cellPosition(at);
        return { at, rows: rows.map((line, r) => line.map((_, c) => sheet[row + r]?.[column + c]?.value)) };
      });
    };
    await expect.poll(shown).toEqual(expected);
    compared += expected.flatMap(({ rows }) => rows.flat()).length;
  }
  console.log(`demo workbook in the bench: ${compared} cells as the core answers them`);
  expect(compared).toBeGreaterThan(200);
});
