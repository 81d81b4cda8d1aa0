// How fast, and how it grows: npm run bench prints it as Markdown. Bundled first, as the add-in is.
import { existsSync, readFileSync } from 'node:fs';
import { cpus, platform, release } from 'node:os';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { bossOutsideDiaMm } from '../../src/core/boss/boss';
import { draws } from '../../src/core/tolerance/draws';
import { OUTPUTS } from '../../src/joint/evaluate';
import { CARDS, call } from '../../src/registry';
import { figureTimes } from './figure';

const BUILT = process.env['BUILT'] ?? 'dist';
const RUNS = 30;

/** Nanoseconds a turn, the fastest of many runs: a busy machine slows some of them. */
function ns(turns: number, work: (turn: number) => unknown, runs = RUNS): number {
  let best = Infinity;
  for (let run = 0; run < runs; run++) {
    const start = performance.now();
    for (let turn = 0; turn < turns; turn++) work(turn);
    best = Math.min(best, performance.now() - start);
  }
  return (best / turns) * 1e6;
}

const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]): void => console.log(['', head, head.map(() => '---'), ...rows].map(row => (typeof row === 'string' ? row : `| ${row.join(' | ')} |`)).join('\n'));
const digits = (value: number): string => (value < 100 ? value.toPrecision(3) : value.toFixed(0));

function calls(): void {
  const hole = (turn: number): number => 2.4 + turn * 1e-4;
  let sum = 0;
  const bare = ns(20_000, turn => (sum += bossOutsideDiaMm(hole(turn), 1.2, 14, 0.5)));
  const kinds: readonly [string, (turn: number) => unknown][] = [
    ['call, four numbers', turn => call('BOSS.OD', [hole(turn), 1.2, 14, 0.5])],
    ['call, two numbers, two defaults', turn => call('BOSS.OD', [hole(turn), 1.2])],
    ['call, two texts with units', () => call('BOSS.OD', ['4.2 mm', 1.2, 14, '0.5°'])],
    ['call, a list of two', () => call('GRIP', [[[2.5], [1.6]]])],
  ];
  const first = kinds.map(([, work]) => ns(20_000, work));
  for (let round = 0; round < 300; round++) for (const { id, example } of CARDS.values()) if (id !== 'STACK.SIMULATE') call(id, example.args);
  const mixed = kinds.map(([, work]) => ns(20_000, work));
  table(['one scalar call', 'ns', 'to the bare formula', 'ns after calls of all functions'], [['bare formula', digits(bare), 1, ''], ...kinds.map(([name], i) => [name, digits(first[i] ?? 0), digits((first[i] ?? 0) / bare), digits(mixed[i] ?? 0)])]);
  if (Number.isNaN(sum)) throw new Error('no number');
}

function variants(): void {
  const names = ['screw', 'head', 'length', 'material', 'wall', 'board plane', 'seat', 'board', 'hole', 'relief', 'pilot', 'pilot held at', 'boss OD', 'boss height', 'hole depth', 'bottom gap'];
  const row = (i: number): unknown[] => ['ST2.9', 'ISO 7049', [9.5, 13, 16, 19][i % 4], 'ABS', 2.5 + (i % 7) / 10, 5.5, 2.5, 1.6, 3.4, 0.8, 2.4, 'mouth', 6.4, 14, 14.75, 1];
  const outputs: readonly (readonly string[])[] = [['engagement min'], ['state']];
  const counts = [10, 100, 1000, 10_000];
  const times = outputs.map(asked => counts.map(count => {
    const inputs = [names, ...Array.from({ length: count }, (_, i) => row(i))];
    const answer = call('JOINT.TABLE', [inputs, [asked]]);
    if (!answer.ok) throw new Error(answer.message);
    return ns(Math.max(1, 1000 / count), () => call('JOINT.TABLE', [inputs, [asked]]), 8) / count / 1000;
  }));
  table(['JOINT.TABLE, µs a variant', ...counts.map(count => `${count} variants`), '10,000 to 100'], outputs.map((asked, i) => [asked.join(', '), ...(times[i] ?? []).map(digits), digits((times[i]?.[3] ?? 0) / (times[i]?.[1] ?? 1))]));
  const inputs = [names, ...Array.from({ length: 500 }, (_, i) => row(i))];
  const twenty = [...OUTPUTS.slice(0, 18), 'state', 'reason'];
  table(['JOINT.TABLE, ms a call', '500 variants'], [['20 outputs, state and reason among them', digits(ns(2, () => call('JOINT.TABLE', [inputs, [twenty]]), 8) / 1e6)]]);
}

function simulation(): void {
  const samples = 100_000;
  const stack = (shape: string): unknown => call('STACK.SIMULATE', [[[5], [3], [2]], [[0.1], [0.1], [0.1]], 1, 9, 11, samples, 1, shape]);
  const next = draws(1, 'normal');
  table(['simulated stack', 'ns a draw'], [['normal draws alone', digits(ns(samples, next))], ...['normal', 'uniform', 'triangular'].map(shape => [`STACK.SIMULATE, ${shape}`, digits(ns(1, () => stack(shape), 8) / samples / 3)])]);
}

function sizes(): void {
  const files = ['functions.js', 'functions.json', 'pane.js', 'bench.js'].filter(name => existsSync(path.join(BUILT, name)));
  table(['built file', 'kB', 'kB gzip'], files.map(name => {
    const content = readFileSync(path.join(BUILT, name));
    return [name, digits(content.length / 1000), digits(gzipSync(content, { level: 9 }).length / 1000)];
  }));
}

console.log(`${cpus()[0]?.model.trim()}, ${cpus().length} cores, ${platform()} ${release()}, Node ${process.version}; ${new Date().toISOString().slice(0, 10)}; the fastest of many runs`);
calls();
variants();
simulation();
table(['figure', 'ms'], figureTimes().map(([what, ms]) => [what, digits(ms)]));
sizes();
