// How long a hand-over of 2,000 variants takes, and how much memory; printed, never asserted. npm run bench:core
import { bench, describe } from 'vitest';
import { handover } from '../../src/handover/handover';
import type { SourceCell, SourceSheet } from '../../src/handover/source';
import { address } from '../../src/handover/formula';
import { writeWorkbook } from '../../src/hosts/xlsx/write';

const NAMES = ['screw', 'head', 'end', 'length', 'material', 'wall', 'board plane', 'seat', 'board', 'hole', 'relief', 'pilot', 'pilot held at', 'boss OD', 'boss height', 'hole depth', 'bottom gap'];
const OUTPUTS = ['state', 'reason', 'engagement min', 'engagement ratio', 'hole depth needed', 'pilot at tip', 'boss OD root', 'sink ratio', 'pull-out'];
const ROWS = 2000;
const row = (i: number): (string | number)[] => ['ST2.9', 'ISO 7049', 'cone', [9.5, 13, 16, 19][i % 4] ?? 13, 'ABS', 2.5 + (i % 7) / 10, 5.5, 2.5, 1.6, 3.4, 0.8, 2.4, 'mouth', 6.4, 14, 14.75, 1];

const cells = new Map<string, SourceCell>();
[NAMES, ...Array.from({ length: ROWS }, (_, i) => row(i))].forEach((line, r) => line.forEach((value, c) => cells.set(address(r, c), { value })));
OUTPUTS.forEach((name, c) => cells.set(address(0, 30 + c), { value: name }));
cells.set(address(1, 30), { value: null, formula: `=ENCL.JOINT.TABLE(${address(0, 0)}:${address(ROWS, NAMES.length - 1)},${address(0, 30)}:${address(0, 30 + OUTPUTS.length - 1)})` });
const sheet: SourceSheet = { name: 'Variants', cells };
const TITLE = { part: 'Many', number: '', revision: '', date: '', status: 'for information', madeBy: '', checkedBy: '' } as const;

const copy = () => handover({ name: 'Many', sheets: [sheet] }, () => ({}), TITLE);
/** Seconds of processor time since the last call: another load on the machine does not count. */
let before = process.cpuUsage();
function processorSeconds(): string {
  const { user, system } = process.cpuUsage(before);
  before = process.cpuUsage();
  return ((user + system) / 1e6).toFixed(1);
}

const ONCE = { iterations: 1, warmupIterations: 0, time: 0, warmupTime: 0 };

describe(`${ROWS} variants, ${OUTPUTS.length} outputs`, () => {
  bench('converted', () => {
    processorSeconds();
    const { live, plan } = copy();
    console.log(`${live} values live, ${plan.sheets.reduce((sum, one) => sum + one.cells.length, 0)} cells, ${Math.round(process.memoryUsage().rss / 1024 / 1024)} MB in use, ${processorSeconds()} s of processor time`);
  }, ONCE);
  bench('converted and written', async () => {
    processorSeconds();
    const bytes = await writeWorkbook(copy().plan);
    console.log(`${(bytes.length / 1024 / 1024).toFixed(1)} MB file, ${Math.round(process.memoryUsage().rss / 1024 / 1024)} MB in use, ${processorSeconds()} s of processor time`);
  }, ONCE);
});
