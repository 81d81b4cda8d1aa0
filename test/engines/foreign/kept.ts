// What of the user's workbook is in its copy: parts, looks, rules and contents as another reader finds them, and the published schemas.
import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { callsOurs, fromFile } from '../../../src/sheet/stored-formulas';
import { cellPosition, holds, rectangleOf } from '../../../src/sheet/addresses';
import { type HandedOver, placesOf } from './handed';
import { FOLDER, PYTHON } from './inputs';

const run = promisify(execFile);
const ROOM = 64 * 1024 * 1024;

/** What was read of a pair of files. */
export interface Kept {
  /** Why the reader could not read one of them. */
  readonly unread?: string;
  readonly counts: { readonly cells: number; readonly contents: number; readonly facts: number };
  readonly lost: readonly string[];
  readonly parts: number;
  /** Parts that the copy has not, and those that it has with other bytes. */
  readonly gone: readonly string[];
  readonly other: readonly string[];
}

/** Facts of a sheet that go with what is left out, as they begin. */
const GOES: Readonly<Record<string, string>> = { comments: 'remark ', 'external link': 'name price' };

/** Cells whose content has to change, and facts that were left out with a word. */
function sparedOf(handed: HandedOver): Record<'sheets' | 'looks' | 'contents' | 'facts', readonly string[]> {
  const { copy, file, callers } = handed;
  const fixed = placesOf(handed, what => what === 'value, not live' || what === 'error');
  const areas = file.sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ formula }) =>
      formula?.area !== undefined && formula.kind !== 'shared' && callsOurs(`=${fromFile(formula.text)}`)
        ? [{ name, area: rectangleOf(formula.area) }]
        : [],
    ),
  );
  const filled = file.sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ at, formula }) =>
      areas.some(one => one.name === name && holds(one.area, cellPosition(at))) || /ANCHORARRAY|#/i.test(formula?.text ?? '')
        ? [`${name}!${at}`]
        : [],
    ),
  );
  const marked = copy.plan.sheets.flatMap(({ name, cells }) => cells.flatMap(({ at, isFixed }) => (isFixed ? [`${name}!${at}`] : [])));
  const changed = [...callers, ...fixed, ...filled, ...copy.converted.keys()];
  return {
    sheets: copy.dropped.flatMap(({ kind, words }) => (/hidden sheet/.test(kind) && words !== undefined ? [words] : [])),
    looks: [...fixed, ...filled, ...marked, ...copy.converted.keys()],
    contents: changed,
    facts: copy.dropped.flatMap(({ kind }) => GOES[kind] ?? []),
  };
}

interface Pair {
  readonly before: string;
  readonly after: string;
}

async function inFiles<T>(handed: readonly HandedOver[], use: (pairs: readonly Pair[]) => Promise<T>): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'kept-'));
  try {
    const pairs = handed.map((_, i) => ({ before: join(folder, `in${i}.xlsx`), after: join(folder, `out${i}.xlsx`) }));
    for (const [i, { bytes, copy }] of handed.entries()) {
      await writeFile(pairs[i]?.before ?? '', bytes);
      await writeFile(pairs[i]?.after ?? '', copy.bytes);
    }
    return await use(pairs);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** In their order. */
export async function keptIn(handed: readonly HandedOver[]): Promise<readonly Kept[]> {
  return inFiles(handed, async pairs => {
    const lines = handed.map((one, i) => JSON.stringify({ ...pairs[i], spared: sparedOf(one) }));
    const reading = run(PYTHON, ['-B', join(FOLDER, 'looks.py')], { maxBuffer: ROOM });
    reading.child.stdin?.end(lines.join('\n'));
    const { stdout } = await reading;
    const none = { counts: { cells: 0, contents: 0, facts: 0 }, lost: [] };
    return stdout
      .trim()
      .split('\n')
      .map(line => ({ ...none, ...(JSON.parse(line) as Partial<Kept>) }) as Kept);
  });
}

/** Beside the clone, as the gate finds it; another place by the name of its folder. */
const SCHEMAS = process.env.SHARED_DATA ?? new URL('../../../../shared/data', import.meta.url).pathname;
const VALIDATE = join(SCHEMAS, 'ooxml-xsd', 'validate');
export const HAS_SCHEMAS = existsSync(VALIDATE);

export interface Fitting {
  /** Parts of the copy that a schema describes. */
  readonly parts: number;
  /** Faults that the input has not. */
  readonly faults: readonly string[];
}

async function validated(args: readonly string[]): Promise<Fitting> {
  const { stdout } = await run(PYTHON, [VALIDATE, ...args], { maxBuffer: ROOM }).catch((fault: { stdout?: string; stderr?: string }) => {
    if (!/parts checked/.test(fault.stdout ?? '')) throw new Error(`the schemas cannot be asked: ${fault.stderr ?? ''}`);
    return { stdout: fault.stdout ?? '' };
  });
  const lines = stdout.trim().split('\n');
  return { parts: Number(/^(\d+) parts checked/.exec(lines[lines.length - 1] ?? '')?.[1] ?? 0), faults: lines.slice(0, -1) };
}

/** The input is asked only where the copy has a fault. */
async function fitting({ before, after }: Pair): Promise<Fitting> {
  const alone = await validated([after]);
  return alone.faults.length === 0 ? alone : validated(['--against', before, after]);
}

/** How each copy fits the published schemas, as far as its input does; in their order. */
export async function fittingOf(handed: readonly HandedOver[]): Promise<readonly Fitting[]> {
  return inFiles(handed, async pairs => {
    const found: Fitting[] = [];
    for (const pair of pairs) found.push(await fitting(pair));
    return found;
  });
}
