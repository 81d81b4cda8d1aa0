// A hand-over of 2,000 variants: time and memory.
import { address } from '../../src/sheet/addresses';
import { handover } from '../../src/handover/handover';
import type { SourceCell, SourceSheet } from '../../src/sheet/workbook-values';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
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

function sheet(): SourceSheet {
  const inputs = inputsOf(ROWS);
  const cells = new Map<string, SourceCell>();
  inputs.forEach((line, r) => line.forEach((value, c) => cells.set(address(r, c), { value })));
  const right = (inputs[0]?.length ?? 0) - 1;
  OUTPUTS.forEach((name, c) => cells.set(address(0, 30 + c), { value: name }));
  cells.set(address(1, 30), {
    value: null,
    formula: `=ENCL.JOINT.TABLE(${address(0, 0)}:${address(ROWS, right)},${address(0, 30)}:${address(0, 30 + OUTPUTS.length - 1)})`,
  });
  return { name: 'Variants', cells };
}

export async function handOver(): Promise<Figure[]> {
  const start = processorMs();
  const { live, plan } = handover({ name: 'Many', sheets: [sheet()] }, TITLE);
  const converted = processorMs();
  const bytes = await writeWorkbook(plan);
  const written = processorMs();
  const cells = plan.sheets.reduce((sum, one) => sum + one.cells.length, 0);
  const mb = (amount: number): string => (amount / 1024 / 1024).toFixed(0);
  const seconds = (from: number, to: number): string => ((to - from) / 1000).toFixed(1);
  return [
    {
      what: `hand-over of ${ROWS} variants, ${OUTPUTS.length} outputs`,
      measured: `converted in ${seconds(start, converted)} s, written in ${seconds(converted, written)} s, at most ${mb(process.resourceUsage().maxRSS * 1024)} MB in use, file ${(bytes.length / 1024 / 1024).toFixed(1)} MB`,
      how: `${live} values live in ${cells} cells; once, processor time with the collection of memory`,
    },
  ];
}
