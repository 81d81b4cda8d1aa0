// Every import rule is shown to let the intended tree pass and to refuse a planted fault.
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import extractDepcruiseOptions from 'dependency-cruiser/config-utl/extract-depcruise-options';
import { afterEach, expect, it } from 'vitest';
import { loaded } from '../../src/help/plugin';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const CONFIG = join(ROOT, '.dependency-cruiser.cjs');

/** The smallest tree with every import that the rules allow. */
const SOUND: Readonly<Record<string, string>> = {
  'src/core/kinds.ts': 'import type { Table } from "../standards/table"; export interface Kind { readonly kind: Table }',
  'src/core/call.ts': 'import { tableA } from "../standards/a"; export const call = [tableA];',
  'src/standards/table.ts': 'export interface Table { readonly rows: string }',
  'src/standards/a.ts': 'import type { Table } from "./table"; export const tableA: Table = { rows: "a" };',
  'src/plain/forms.json': '{}',
  'src/core/maths.ts':
    'import erfc from "@stdlib/math-base-special-erfc"; import { xoroshiro128plus } from "pure-rand"; export const maths = [erfc, ' +
    'xoroshiro128plus];',
  'src/plain/digits.ts': 'export const digits = 6;',
  'src/plain/print.ts': 'import { maths } from "../core/maths"; import forms from "./forms.json"; export const print = [maths, forms];',
  'src/about/about.ts':
    'import { print } from "../plain/print"; import { call } from "../core/call"; import type { Table } from "../standards/table"; export const about = (table: Table) => [print, call, table];',
  'src/joint/joint.ts':
    'import { call } from "../core/call"; import { tableA } from "../standards/a"; import { print } from "../plain/print"; import ' +
    '{ closest } from "fastest-levenshtein"; export const joint = [call, tableA, print, closest];',
  'src/figure/section.ts':
    'import { call } from "../core/call"; import { joint } from "../joint/joint"; import { print } from "../plain/print"; export ' +
    'const section = [call, joint, print];',
  'src/sheet/plan.ts': 'import type { Kind } from "../core/kinds"; export type Plan = Kind;',
  'src/demo/demo.ts':
    'import { call } from "../core/call"; import { joint } from "../joint/joint"; import type { Plan } from "../sheet/plan"; ' +
    'export const demo = (plan: Plan) => [call, joint, plan];',
  'src/hosts/excel/host.ts': 'import type { Plan } from "../../sheet/plan"; export const excel = (plan: Plan) => plan;',
  'src/hosts/univer/host.ts':
    'import type { Plan } from "../../sheet/plan"; import { Univer } from "@univerjs/core"; export const bench = (plan: Plan) => ' +
    '[plan, Univer];',
  'src/hosts/xlsx/host.ts':
    'import type { Plan } from "../../sheet/plan"; import { writeXlsx } from "hucre/xlsx"; import { zipSync } from "fflate"; ' +
    'import { tokenize } from "@borgar/fx/xlsx"; export const file = (plan: Plan) => [plan, writeXlsx, zipSync, tokenize];',
  'src/core/card.ts': 'import type { Kind } from "./kinds"; export const topics: Kind[] = [];',
  'src/sheet/formula.ts': 'import type { Kind } from "../core/kinds"; export const parse = (kind: Kind) => kind;',
  'src/pane/view.tsx':
    'import { render } from "preact"; import { topics } from "../core/card"; import { section } from "../figure/section"; import { ' +
    'parse } from "../sheet/formula"; import { joint } from "../joint/joint"; import { digits } from "../plain/digits"; import { ' +
    'cards } from "../registry"; export const view = [render, topics, section, parse, joint, digits, cards];',
  'src/pane/pane.ts':
    'import { Storage } from "@microsoft/office-js-helpers"; import type { Kind } from "../core/kinds"; import { demo } from ' +
    '"../demo/demo"; import { excel } from "../hosts/excel/host"; import { view } from "./view"; export const pane = (kind: Kind) ' +
    '=> [Storage, kind, demo, excel, view];',
  'src/pane/globals.d.ts': 'declare const A: string;',
  'src/package/zip.ts': 'import { Inflate } from "fflate"; import { SaxesParser } from "saxes"; export const zip = [Inflate, SaxesParser];',
  'src/hosts/xlsx/read.ts':
    'import { readXlsx } from "hucre/xlsx"; import { zip } from "../../package/zip"; export const read = [readXlsx, zip];',
  'src/handover/handover.ts':
    'import { parse } from "@borgar/fx"; import { call } from "../core/call"; import { joint } from "../joint/joint"; import { ' +
    'print } from "../plain/print"; import { cards } from "../registry"; import type { Plan } from "../sheet/plan"; import { ' +
    'tableA } from "../standards/a"; export const handover = (plan: Plan) => [parse, call, joint, print, cards, plan, tableA];',
  'src/handover/read/prepared.ts': 'import type { Plan } from "../../sheet/plan"; export type Prepared = Plan;',
  'src/handover/compile/convert.ts': 'import type { Prepared } from "../read/prepared"; export type Copy = Prepared;',
  'src/handover/pages/cover.ts': 'import type { Copy } from "../compile/convert"; export type Cover = Copy;',
  'src/handover/compare.ts': 'import type { Cover } from "./pages/cover"; export const compare = (cover: Cover) => cover;',
  'src/handover/cli.ts':
    'import { readFile } from "node:fs/promises"; import { demo } from "../demo/demo"; import { read } from "../hosts/xlsx/read"; ' +
    'import { UserFault } from "../cli/user-fault"; import { handover } from "./handover"; export const main = [readFile, demo, ' +
    'read, handover, UserFault];',
  'src/cli/user-fault.ts': 'export class UserFault extends Error {}',
  'src/cli/run.ts': 'import path from "node:path"; import { UserFault } from "./user-fault"; export const faults = [path, UserFault];',
  'src/release/package.ts':
    'import { createHash } from "node:crypto"; import { zipSync } from "fflate"; import { UserFault } from "../cli/user-fault"; ' +
    'export const main = [createHash, zipSync, UserFault];',
  'src/evidence/list.ts': 'import type { topics } from "../core/card"; export const evidence: typeof topics = [];',
  'src/help/pages.ts':
    'import { renderToStaticMarkup } from "preact-render-to-string"; import { evidence } from "../evidence/list"; export const ' +
    'helpPages = [renderToStaticMarkup, evidence];',
  'src/help/plugin.ts':
    'import type { Compiler } from "webpack"; import type * as Pages from "./pages"; export const plugin = (c: Compiler, p: typeof ' +
    'Pages) => [c, p];',
  'src/tools/generate.ts':
    'import { writeFileSync } from "node:fs"; import { generateCustomFunctionsMetadata } from "custom-functions-metadata"; import ' +
    '{ lines } from "../../test/standards/records"; import { UserFault } from "../cli/user-fault"; import { evidence } from ' +
    '"../evidence/list"; import { plugin } from "../help/plugin"; import { joint } from "../joint/joint"; import { print } from ' +
    '"../plain/print"; import { cards } from "../registry"; import { main as packed } from "../release/package"; export const main ' +
    '= [writeFileSync, generateCustomFunctionsMetadata, lines, UserFault, evidence, plugin, joint, print, cards, packed];',
  'src/library/index.ts':
    'export { call } from "../core/call"; export { joint } from "../joint/joint"; export { cards } from "../registry";',
  'src/pane/mount.ts': 'import { pane } from "./pane"; export const mount = pane;',
  'src/files/worker.ts':
    'import { read } from "../hosts/xlsx/read"; import { handover } from "../handover/handover"; export const worker = [read, handover];',
  'src/bench/bench.ts':
    'import { boss } from "../../functions/boss"; import type { Kind } from "../core/kinds"; import { demo } from "../demo/demo"; ' +
    'import { worker } from "../files/worker"; import { bench } from "../hosts/univer/host"; import { mount } from "../pane/mount"; ' +
    'export const page = (kind: Kind) => [boss, kind, demo, worker, bench, mount];',
  'src/calculations.ts': 'import { call } from "./core/call"; export const calculations = call;',
  'src/joint/joint.words.ts': 'import { call } from "../core/call"; export const words = call;',
  'src/registry.ts':
    'import { calculations } from "./calculations"; import { joint } from "./joint/joint"; import { words } from ' +
    '"./joint/joint.words"; import { about } from "./about/about"; export const cards = [calculations, joint, words, about];',
  'functions/cell.ts':
    'import { calculations } from "../src/calculations"; import type { Kind } from "../src/core/kinds"; export const cell = (kind: ' +
    'Kind) => [calculations, kind, import("../src/registry")];',
  'functions/boss.ts': 'import { cell } from "./cell"; export const boss = cell;',
  'test/standards/records.ts': 'import { tableA } from "../../src/standards/a"; export const lines = [tableA];',
  'test/kit.ts': 'import { call } from "../src/core/call"; export const kit = call;',
};

const made: string[] = [];
afterEach(() => {
  for (const folder of made.splice(0)) rmSync(folder, { recursive: true });
});

async function cruised(root: string): Promise<ICruiseResult> {
  const options = await extractDepcruiseOptions(CONFIG);
  const { output } = await cruise(['src', 'functions'], { ...options, baseDir: root });
  if (typeof output === 'string') throw new TypeError('a result is asked for, not a report');
  return output;
}

function planted(tree: Readonly<Record<string, string>>): string {
  const root = mkdtempSync(join(tmpdir(), 'imports-'));
  made.push(root);
  for (const [path, text] of Object.entries(tree)) {
    mkdirSync(dirname(join(root, path)), { recursive: true });
    writeFileSync(join(root, path), text);
  }
  return root;
}

/** `rule: from -> to` for everything the rules refuse in the tree. */
async function refused(tree: Readonly<Record<string, string>>): Promise<string[]> {
  const { summary } = await cruised(planted(tree));
  return summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`).sort();
}

const HOME = fileURLToPath(new URL('../..', import.meta.url));

/** A folder of src or of src/hosts, a file beside them, the wrappers. */
const roomOf = (path: string): string | undefined => /^src\/(hosts\/[^/]+|[^/]+)|^functions/.exec(path)?.[0];

/** The rooms by what they import, and those that come back to themselves. */
async function rooms(root: string): Promise<{ readonly count: number; readonly inCircles: readonly string[] }> {
  const imports = new Map<string, Set<string>>();
  for (const { source, dependencies } of (await cruised(root)).modules) {
    const from = roomOf(source);
    if (from === undefined) continue;
    const to = imports.get(from) ?? new Set();
    imports.set(from, to);
    for (const room of dependencies.flatMap(({ resolved }) => roomOf(resolved) ?? [])) if (room !== from) to.add(room);
  }
  const reached = (from: string, met = new Set<string>()): Set<string> => {
    for (const room of imports.get(from) ?? []) if (!met.has(room)) reached(room, met.add(room));
    return met;
  };
  return { count: imports.size, inCircles: [...imports.keys()].filter(room => reached(room).has(room)).sort() };
}

it('lets the intended tree pass', async () => {
  expect(await refused(SOUND)).toEqual([]);
});

it.each<[rule: string, file: string, imported: string, to: string]>([
  ['standards-are-data', 'src/standards/b.ts', '../core/call', 'src/core/call.ts'],
  ['standards-are-data', 'src/standards/b.ts', '../core/kinds', 'src/core/kinds.ts'],
  ['core-is-pure', 'src/core/boss/boss.ts', '../../sheet/plan', 'src/sheet/plan.ts'],
  ['core-is-pure', 'src/core/boss/boss.ts', '../../joint/joint', 'src/joint/joint.ts'],
  ['core-is-pure', 'src/core/boss/boss.ts', 'node:fs', 'fs'],
  ['core-is-pure', 'src/core/boss/boss.ts', 'js-quantities', 'js-quantities'],
  ['joint-on-core', 'src/joint/rules.ts', '../sheet/plan', 'src/sheet/plan.ts'],
  ['plain-on-maths', 'src/plain/b.ts', '../core/call', 'src/core/call.ts'],
  ['about-on-cards', 'src/about/b.ts', '../joint/joint', 'src/joint/joint.ts'],
  ['about-on-cards', 'src/about/b.ts', '../standards/a', 'src/standards/a.ts'],
  ['figure-is-pure', 'src/figure/b.ts', '../sheet/plan', 'src/sheet/plan.ts'],
  ['figure-is-pure', 'src/figure/b.ts', '../standards/a', 'src/standards/a.ts'],
  ['figure-is-pure', 'src/figure/b.ts', '../bench/bench', 'src/bench/bench.ts'],
  ['figure-is-pure', 'src/figure/b.ts', 'node:fs', 'fs'],
  ['sheet-calls-nothing', 'src/sheet/draw.ts', '../core/call', 'src/core/call.ts'],
  ['sheet-calls-nothing', 'src/sheet/evaluator.ts', '../registry', 'src/registry.ts'],
  ['sheet-calls-nothing', 'src/sheet/theme.ts', '../hosts/excel/host', 'src/hosts/excel/host.ts'],
  ['handover-makes-plans', 'src/handover/b.ts', '../hosts/xlsx/read', 'src/hosts/xlsx/read.ts'],
  ['handover-makes-plans', 'src/handover/b.ts', '../demo/demo', 'src/demo/demo.ts'],
  ['handover-makes-plans', 'src/handover/b.ts', 'node:fs', 'fs'],
  ['handover-one-way', 'src/handover/read/b.ts', '../compile/convert', 'src/handover/compile/convert.ts'],
  ['handover-one-way', 'src/handover/read/b.ts', '../pages/cover', 'src/handover/pages/cover.ts'],
  ['handover-one-way', 'src/handover/compile/joint/b.ts', '../../pages/cover', 'src/handover/pages/cover.ts'],
  ['handover-one-way', 'src/handover/compile/b.ts', '../compare', 'src/handover/compare.ts'],
  ['handover-one-way', 'src/handover/pages/b.ts', '../compare', 'src/handover/compare.ts'],
  ['commands-join', 'src/commands/b.ts', '../registry', 'src/registry.ts'],
  ['release-packs-files', 'src/release/b.ts', '../registry', 'src/registry.ts'],
  ['demo-on-sheet', 'src/demo/b.ts', '../hosts/univer/host', 'src/hosts/univer/host.ts'],
  ['evidence-is-a-list', 'src/evidence/b.ts', '../registry', 'src/registry.ts'],
  ['help-is-printed', 'src/help/b.ts', '../hosts/univer/host', 'src/hosts/univer/host.ts'],
  ['help-is-built', 'src/help/plugin.ts', '../evidence/list', 'src/evidence/list.ts'],
  ['tools-write-files', 'src/tools/b.ts', '../pane/pane', 'src/pane/pane.ts'],
  ['tools-write-files', 'src/tools/b.ts', '../../test/kit', 'test/kit.ts'],
  ['wrappers-only-wrap', 'functions/rib.ts', './boss', 'functions/boss.ts'],
  ['wrappers-only-wrap', 'functions/rib.ts', '../src/core/kinds', 'src/core/kinds.ts'],
  ['excel-draws-plans', 'src/hosts/excel/b.ts', '../univer/host', 'src/hosts/univer/host.ts'],
  ['excel-draws-plans', 'src/hosts/excel.ts', '@univerjs/core', '@univerjs/core'],
  ['excel-draws-plans', 'src/hosts/excel/b.ts', '../../../functions/boss', 'functions/boss.ts'],
  ['excel-draws-plans', 'src/hosts/excel/b.ts', '../../registry', 'src/registry.ts'],
  ['excel-draws-plans', 'src/hosts/excel/b.ts', '@microsoft/office-js-helpers', '@microsoft/office-js-helpers'],
  ['univer-draws-plans', 'src/hosts/univer/b.ts', '../excel/host', 'src/hosts/excel/host.ts'],
  ['univer-draws-plans', 'src/hosts/univer/b.ts', '../../bench/bench', 'src/bench/bench.ts'],
  ['univer-draws-plans', 'src/hosts/univer/b.ts', '../../pane/pane', 'src/pane/pane.ts'],
  ['univer-draws-plans', 'src/hosts/univer/b.ts', 'node:path', 'path'],
  ['package-is-its-own', 'src/package/b.ts', '../core/call', 'src/core/call.ts'],
  ['package-is-its-own', 'src/package/b.ts', '../handover/handover', 'src/handover/handover.ts'],
  ['package-is-its-own', 'src/package/b.ts', '../hosts/xlsx/host', 'src/hosts/xlsx/host.ts'],
  ['package-is-its-own', 'src/package/b.ts', '../sheet/plan', 'src/sheet/plan.ts'],
  ['package-is-its-own', 'src/package/b.ts', 'hucre/xlsx', 'hucre/xlsx'],
  ['package-is-its-own', 'src/package/b.ts', 'node:zlib', 'zlib'],
  ['file-holds-plans', 'src/hosts/xlsx/b.ts', '../univer/host', 'src/hosts/univer/host.ts'],
  ['file-holds-plans', 'src/hosts/xlsx/b.ts', '../../registry', 'src/registry.ts'],
  ['file-holds-plans', 'src/hosts/xlsx/b.ts', 'node:fs', 'fs'],
  ['file-holds-plans', 'src/hosts/xlsx/b.ts', '@univerjs/core', '@univerjs/core'],
  ['pane-is-a-page', 'src/pane/b.ts', '../../functions/boss', 'functions/boss.ts'],
  ['pane-is-a-page', 'src/pane/b.ts', '../hosts/univer/host', 'src/hosts/univer/host.ts'],
  ['pane-is-a-page', 'src/pane/b.ts', '../handover/handover', 'src/handover/handover.ts'],
  ['pane-is-a-page', 'src/pane/b.tsx', '../standards/a', 'src/standards/a.ts'],
  ['pane-is-a-page', 'src/pane/b.tsx', '@univerjs/core', '@univerjs/core'],
  ['bench-is-a-page', 'src/bench/b.ts', '../hosts/excel/host', 'src/hosts/excel/host.ts'],
  ['bench-is-a-page', 'src/bench/b.ts', '@univerjs/core', '@univerjs/core'],
  ['bench-is-a-page', 'src/bench/b.ts', 'hucre', 'hucre'],
  ['bench-is-a-page', 'src/bench/b.ts', 'fflate', 'fflate'],
  ['bench-is-a-page', 'src/bench/b.ts', '../handover/handover', 'src/handover/handover.ts'],
  ['files-beside-the-page', 'src/files/b.ts', '../bench/bench', 'src/bench/bench.ts'],
  ['files-beside-the-page', 'src/files/b.ts', '../hosts/excel/host', 'src/hosts/excel/host.ts'],
  ['bench-is-a-page', 'src/bench/b.ts', '../pane/pane', 'src/pane/pane.ts'],
  ['bench-is-a-page', 'src/bench/b.ts', '../figure/section', 'src/figure/section.ts'],
  ['bench-is-a-page', 'src/bench/b.ts', '../joint/joint', 'src/joint/joint.ts'],
  ['bench-is-a-page', 'src/bench/b.ts', '../standards/a', 'src/standards/a.ts'],
  ['pages-know-core-types', 'src/pane/b.ts', '../core/call', 'src/core/call.ts'],
  ['pages-know-core-types', 'src/bench/b.ts', '../core/call', 'src/core/call.ts'],
])('%s refuses %s with %s', async (rule, file, imported, to) => {
  expect(await refused({ ...SOUND, [file]: `import { a } from "${imported}"; export const b = a;` })).toEqual([
    `${rule}: ${file} -> ${to}`,
  ]);
});

it('counts an import of a type alone', async () => {
  const tree = { ...SOUND, 'src/core/boss/boss.ts': 'import type { Plan } from "../../sheet/plan"; export type Boss = Plan;' };
  expect(await refused(tree)).toEqual(['core-is-pure: src/core/boss/boss.ts -> src/sheet/plan.ts']);
});

it.each<[rule: string, file: string, imported: string, to: string]>([
  ['cell-calls-by-id', 'functions/cell.ts', '../src/core/call', 'src/core/call.ts'],
  ['cell-calls-by-id', 'functions/cell.ts', '../src/joint/joint', 'src/joint/joint.ts'],
  ['handover-command', 'src/handover/cli.ts', '../registry', 'src/registry.ts'],
  ['registry-lists', 'src/registry.ts', './standards/a', 'src/standards/a.ts'],
  ['calculations-are-silent', 'src/calculations.ts', './joint/joint.words', 'src/joint/joint.words.ts'],
  ['library-names', 'src/library/index.ts', '../standards/a', 'src/standards/a.ts'],
])('%s refuses %s as it is with %s added', async (rule, file, imported, to) => {
  const tree = { ...SOUND, [file]: `import { a } from "${imported}"; ${SOUND[file]} export const b = a;` };
  expect(await refused(tree)).toEqual([`${rule}: ${file} -> ${to}`]);
});

it('keeps what is loaded on demand out of the calculations, however far away', async () => {
  const tree = { ...SOUND, 'src/calculations.ts': 'import { joint } from "./joint/joint"; export const calculations = joint;' };
  expect(await refused(tree)).toEqual([
    'calculations-are-silent: src/calculations.ts -> src/plain/forms.json',
    'calculations-are-silent: src/calculations.ts -> src/plain/print.ts',
  ]);
});

it('lets nobody import a test', async () => {
  const tree = { ...SOUND, 'src/demo/b.ts': 'import { kit } from "../../test/kit"; export const b = kit;' };
  expect(await refused(tree)).toEqual([
    'demo-on-sheet: src/demo/b.ts -> test/kit.ts',
    'nobody-imports-tests: src/demo/b.ts -> test/kit.ts',
  ]);
});

it('lets nobody import a tool', async () => {
  const tree = { ...SOUND, 'src/release/b.ts': 'import { main } from "../tools/generate"; export const b = main;' };
  expect(await refused(tree)).toEqual([
    'nobody-imports-tools: src/release/b.ts -> src/tools/generate.ts',
    'release-packs-files: src/release/b.ts -> src/tools/generate.ts',
  ]);
});

it('refuses a circle, of types too', async () => {
  const tree = {
    ...SOUND,
    'src/core/a.ts': 'import type { B } from "./b"; export interface A { b: B }',
    'src/core/b.ts': 'import type { A } from "./a"; export interface B { a: A }',
  };
  expect(await refused(tree)).toEqual(['no-circular: src/core/a.ts -> src/core/b.ts']);
});

it('has no room in a circle: the rooms stand on floors', async () => {
  const { count, inCircles } = await rooms(HOME);
  expect(inCircles).toEqual([]);
  expect(count).toBeGreaterThan(15);
});

it('sees two rooms that need each other by different files', async () => {
  const tree = { ...SOUND, 'src/plain/values.ts': 'import type { Plan } from "../sheet/plan"; export type Value = Plan;' };
  const { inCircles } = await rooms(
    planted({ ...tree, 'src/sheet/b.ts': 'import { print } from "../plain/print"; export const b = print;' }),
  );
  expect(inCircles).toEqual(['src/plain', 'src/sheet']);
});

it('refuses a file that nothing uses', async () => {
  expect(await refused({ ...SOUND, 'src/core/old.ts': 'export const old = 1;' })).toEqual([
    'no-orphans: src/core/old.ts -> src/core/old.ts',
  ]);
});

it('the help that is built loads no test, by a name in a text either', async () => {
  const { files, helpPages } = await loaded();
  const names = [...files].map(file => relative(ROOT, file));
  expect(helpPages).toBeInstanceOf(Function);
  expect(names).toContain('src/evidence/list.ts');
  expect(names.length).toBeGreaterThan(100);
  expect(names.filter(name => /^(test|src\/tools)\//.test(name))).toEqual([]);
});
