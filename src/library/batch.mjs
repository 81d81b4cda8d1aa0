// An example for programmers: a study of many variants over all processors, as CSV and as a workbook.
//   node src/library/batch.mjs --to 100000 --csv study.csv --xlsx study.xlsx
// A slice of it, for a runner with many machines: --from 25000 --to 50000 --csv part-2.csv
import { createWriteStream } from 'node:fs';
import { availableParallelism } from 'node:os';
import { pipeline } from 'node:stream/promises';
import { parseArgs } from 'node:util';
import { isMainThread, parentPort, Worker } from 'node:worker_threads';
import { jointTable } from 'bosswright';
import { writeCsvStream } from 'hucre/csv';
import { writeXlsxStream } from 'hucre/xlsx';

/** @typedef {{ from: number, to: number }} Slice */
/** @typedef {ReturnType<typeof jointTable>[number]} Row */

// ---- the study: invented, a boss for one screw in a box of ABS -----------------------------------------------------

const FIXED = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  material: 'ABS',
  'board plane': 5.5,
  board: 1.6,
  hole: 3.4,
  relief: 0.8,
  'pilot held at': 'mouth',
  'boss height': 14,
  'hole depth': 14.75,
  'bottom gap': 1,
};
/** @type {(from: number, step: number, count: number) => number[]} */
const steps = (from, step, count) => Array.from({ length: count }, (_, i) => Math.round((from + i * step) * 1000) / 1000);
const VARIED = {
  length: [9.5, 13, 16, 19],
  seat: [2, 2.5],
  wall: steps(2, 0.1, 20),
  pilot: steps(2.2, 0.02, 25),
  'boss OD': steps(5.4, 0.1, 25),
};
const RESULTS = ['engagement min', 'boss wall', 'sink ratio', 'pull-out', 'state', 'reason'];

const names = Object.keys(VARIED);
const header = [...names, ...RESULTS];

/**
 * Every variant follows from its number alone, so that any slice can be worked out anywhere.
 * @param {number} number
 */
function variant(number) {
  let rest = number;
  return Object.values(VARIED).map(values => {
    const value = values[rest % values.length] ?? 0;
    rest = Math.floor(rest / values.length);
    return value;
  });
}

/**
 * One row a variant: what was varied, then the results.
 * @param {Slice} slice
 */
function rowsOf({ from, to }) {
  const variants = Array.from({ length: to - from }, (_, i) => variant(from + i));
  const [, ...results] = jointTable(
    [[...names, ...Object.keys(FIXED)], ...variants.map(values => [...values, ...Object.values(FIXED)])],
    [RESULTS],
  );
  return variants.map((values, i) => [...values, ...(results[i] ?? [])]);
}

// ---- over the processors -------------------------------------------------------------------------------------------

const PIECE = 500;

/**
 * Each worker takes the next piece when it is done with one; the rows come back in order.
 * @param {number} from
 * @param {number} to
 * @param {number} workers
 */
async function study(from, to, workers) {
  const pieces = Array.from({ length: Math.ceil((to - from) / PIECE) }, (_, i) => ({
    from: from + i * PIECE,
    to: Math.min(to, from + (i + 1) * PIECE),
  }));
  /** @type {Row[][]} */
  const done = [];
  let next = 0;
  const work = () =>
    new Promise((resolve, reject) => {
      const worker = new Worker(new URL(import.meta.url));
      const give = () => (next < pieces.length ? worker.postMessage({ piece: next, ...pieces[next++] }) : resolve(worker.terminate()));
      worker.on('message', ({ piece, rows }) => {
        done[piece] = rows;
        give();
      });
      worker.on('error', reject);
      give();
    });
  await Promise.all(Array.from({ length: Math.min(workers, pieces.length) }, work));
  return done.flat();
}

async function main() {
  const { values } = parseArgs({
    options: {
      from: { type: 'string', default: '0' },
      to: { type: 'string', default: '100000' },
      csv: { type: 'string' },
      xlsx: { type: 'string' },
    },
  });
  const from = Number(values.from);
  const to = Number(values.to);
  const workers = availableParallelism();
  const start = performance.now();
  const before = process.cpuUsage();
  const rows = await study(from, to, workers);
  const seconds = (performance.now() - start) / 1000;
  const { user, system } = process.cpuUsage(before);
  if (values.csv !== undefined) await pipeline(writeCsvStream([header, ...rows]), createWriteStream(values.csv));
  if (values.xlsx !== undefined)
    await pipeline(
      writeXlsxStream(rows, { name: 'Study', columns: header.map(name => ({ header: name })), freezePane: { rows: 1 } }),
      createWriteStream(values.xlsx),
    );
  const passed = rows.filter(row => row[header.indexOf('state')] === 'pass').length;
  console.log(
    `${rows.length} variants, ${passed} pass: ${seconds.toFixed(1)} s on ${workers} processors, ${((user + system) / rows.length).toFixed(0)} µs of processor time each`,
  );
}

if (isMainThread) await main();
else parentPort?.on('message', ({ piece, ...slice }) => parentPort?.postMessage({ piece, rows: rowsOf(slice) }));
