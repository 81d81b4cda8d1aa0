// The pane on a page of its own, over the made-up Excel and through its port: for random walks.
import { demoWorkbook } from '../../src/demo/demo';
import { excelPort } from '../../src/hosts/excel/excel-port';
import { onSeen } from '../../src/hosts/excel/visibility';
import type { ListedFunction } from '../../src/pane/function-list';
import { type MountedPane, mountPane } from '../../src/pane/mount';
import { cellPosition } from '../../src/sheet/addresses';
import { speech } from '../../src/words/speech';
import { answers } from '../hosts/answers';
import { fakeExcel, type FakeExcel, type FakeSheet } from '../hosts/excel-fake';

declare global {
  interface Window {
    excel: {
      readonly fake: FakeExcel;
      /** Excel shows the pane, or hides it. */
      show(isSeen: boolean): void;
      /** What was typed into cells, by `Part!A1`. */
      contents(): Record<string, string>;
    };
  }
}

const cellsOf = (sheet: (typeof demoWorkbook.sheets)[number]): FakeSheet['cells'] =>
  new Map(
    sheet.cells
      .filter(({ value = '', formula }) => formula !== undefined || value !== '')
      .map(({ at, value = '', formula }) => [at, { value, ...(formula !== undefined && { formula }) }]),
  );

const entered = (rows: readonly (readonly (string | number)[])[]): FakeSheet['cells'] =>
  new Map(rows.flatMap((row, r) => row.map((value, c) => [`${String.fromCharCode(65 + c)}${r + 1}`, { value }] as const)));

/** 2,000 rows of 50 columns that are made up when they are read. */
function large(): Partial<FakeSheet> {
  const cells: FakeSheet['cells'] = new Map();
  const own = cells.get.bind(cells);
  cells.get = at => {
    const { row, column } = cellPosition(at);
    return own(at) ?? (row < 2000 && column < 50 ? { value: row + column } : undefined);
  };
  return { name: 'Large', cells, used: { top: 0, left: 0, bottom: 1999, right: 49 } };
}

const fake = fakeExcel(
  ...demoWorkbook.sheets
    .filter(({ name }) => name === 'Joint' || name === 'Variants')
    .map(sheet => ({ name: sheet.name, cells: cellsOf(sheet) })),
  {
    name: 'Parts',
    cells: entered([['size', 'hole', 'wall'], ...[1, 2, 3, 4].map(row => [`part ${row}`, 2 + row / 10, 1 + row / 10])]),
    tables: [{ name: 'Sizes', body: 'A2:C5' }],
  },
  large(),
);
fake.answers = answers;
await fake.settle();

let told: (message: { visibilityMode: string }) => void = () => undefined;
Object.assign(Office, {
  VisibilityMode: { taskpane: 'Taskpane', hidden: 'Hidden' },
  addin: {
    onVisibilityModeChanged: async (tell: typeof told) => {
      told = tell;
      return async () => undefined;
    },
  },
});

window.excel = {
  fake,
  show: isSeen => told({ visibilityMode: isSeen ? 'Taskpane' : 'Hidden' }),
  contents: () =>
    Object.fromEntries(
      fake.sheets.flatMap(({ name, cells, spilled }) => {
        const filled = new Set([...spilled.values()].flat());
        return [...cells]
          .filter(([at]) => !filled.has(at))
          .map(([at, { formula, value }]) => [`${name}!${at}`, formula ?? String(value)] as const);
      }),
    ),
};

const { functions } = (await (await fetch('functions.json')).json()) as { functions: readonly ListedFunction[] };
const { words, later } = await speech('en');
let pane: MountedPane | undefined;
onSeen(isSeen => {
  if (isSeen)
    pane ??= mountPane(document.getElementById('pane') as HTMLElement, {
      port: excelPort(words.excel),
      functions,
      words,
      later,
      host: 'excel',
    });
  pane?.show(isSeen);
});
