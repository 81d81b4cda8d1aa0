// A hand-over of 2,000 variants: time and memory.
import { address } from '../../src/sheet/addresses';
import { sourceOfFile } from '../../src/handover/read/from-file';
import { copyOf } from '../../src/handover/write/copy';
import { workbookIn } from '../../src/hosts/xlsx/read';
import { writeOwnSheets, writeWorkbook } from '../../src/hosts/xlsx/write';
import { readPackage } from '../../src/package/read';
import type { PlanCell, SheetPlan } from '../../src/sheet/plan';
import { processorMs, type Figure } from './figure';
import { inputsOf } from './variants';

const OUTPUTS = [
  'state',
  'reason',
  'engagement min',
  'engagement ratio',
  'hole depth needed',
  'pilot at tip',
  'boss OD root',
  'sink ratio',
  'pull-out',
];
const ROWS = 2000;
const TITLE = { part: 'Many', number: '', revision: '', date: '', status: 'for information', madeBy: '', checkedBy: '' } as const;

function sheet(): SheetPlan {
  const inputs = inputsOf(ROWS);
  const cells: PlanCell[] = [];
  inputs.forEach((line, r) => line.forEach((value, c) => cells.push({ at: address(r, c), role: 'input', value })));
  const right = (inputs[0]?.length ?? 0) - 1;
  OUTPUTS.forEach((name, c) => cells.push({ at: address(0, 30 + c), role: 'header', value: name }));
  cells.push({
    at: address(1, 30),
    role: 'result',
    formula: `=ENCL.JOINT.TABLE(${address(0, 0)}:${address(ROWS, right)},${address(0, 30)}:${address(0, 30 + OUTPUTS.length - 1)})`,
  });
  return { name: 'Variants', widths: [], cells };
}

export async function handOver(): Promise<Figure[]> {
  const file = readPackage(await writeWorkbook({ name: 'Many', sheets: [sheet()] }));
  const start = processorMs();
  const source = sourceOfFile('Many', workbookIn(file));
  const { live, plan, bytes } = await copyOf(file, source, TITLE, { write: writeOwnSheets });
  const written = processorMs();
  const cells = plan.sheets.reduce((sum, one) => sum + one.cells.length, 0);
  const mb = (amount: number): string => (amount / 1024 / 1024).toFixed(0);
  return [
    {
      what: `hand-over of ${ROWS} variants, ${OUTPUTS.length} outputs`,
      measured: `written in ${((written - start) / 1000).toFixed(1)} s, at most ${mb(process.resourceUsage().maxRSS * 1024)} MB in use, file ${(bytes.length / 1024 / 1024).toFixed(1)} MB`,
      how: `${live} values live in ${cells} cells; once, processor time with the collection of memory`,
    },
  ];
}
