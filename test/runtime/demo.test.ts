// The demo workbook in the runtime: every call as the core answers it, and how long a sheet takes to settle.
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { sourceOf } from '../kit/source-of-plan';
import type { SourceWorkbook } from '../../src/sheet/workbook-values';
import { OUTPUTS } from '../../src/joint/outputs';
import { call } from '../../src/registry';
import { excel, type Call, type Excel } from './excel';
import { levels, type Blank } from './workbook';

let host: Excel;
beforeAll(async () => {
  host = await excel();
});
afterAll(() => host.close());

const printed = (what: string, calls: number, links: number, { batches, ms }: { readonly batches: number; readonly ms: number }): void =>
  console.log(`${what}: ${calls} calls, ${links} deep, ${batches} batches, settled after ${(ms / 1000).toFixed(2)} s`);

describe.each<[string, Blank]>([
  ['desktop', 0],
  ['web', null],
])('demo workbook, blank cells as on the %s', (platform, blank) => {
  const order = levels(sourceOf(demoWorkbook), blank);
  const calls = order.flat();

  test('every call answers as the core does', async () => {
    expect(calls.length).toBeGreaterThan(30);
    const workedOut = (): ReturnType<Excel['calculate']> => host.calculate(order.map(level => level.map(({ id, args }) => ({ id, args }))));
    const settled = await workedOut();
    calls.forEach(({ id, args, where }, i) => {
      const answer = call(id, args);
      if (!answer.ok) expect.fail(`${where}: ${answer.message}`);
      expect(settled.results[i], where).toEqual({ ok: true, value: answer.value });
    });
    printed(`demo workbook, ${platform}`, calls.length, order.length, settled);
    // what is fetched when it is first asked for is handed over after the rest, once
    expect(settled.batches).toBeLessThanOrEqual(order.length + 1);
    expect((await workedOut()).batches).toBeLessThanOrEqual(order.length);
  });
});

test('depth is counted through nested calls, references and spilled cells', () => {
  const cells = {
    A1: 3,
    A2: '=ENCL.BOSS.OD(A1,1.2)',
    A3: '=ENCL.BOSS.OD(A2,ENCL.WALL.FEATURE(2))',
    A4: '=ENCL.LIMITS("3 ±10%")',
    A5: '=ENCL.BOSS.OD(B4+A3,1)',
    A6: '=A5*2',
  };
  const workbook: SourceWorkbook = {
    name: 'Depth',
    sheets: [
      {
        name: 'S',
        cells: new Map(
          Object.entries(cells).map(([at, text]) => [
            at,
            String(text).startsWith('=') ? { value: null, formula: String(text) } : { value: text },
          ]),
        ),
      },
    ],
  };
  expect(levels(workbook, 0).map(level => level.map(({ where, id }) => `${where} ${id}`))).toEqual([
    ['S!A2 BOSS.OD', 'S!A3 WALL.FEATURE', 'S!A4 LIMITS'],
    ['S!A3 BOSS.OD'],
    ['S!A5 BOSS.OD'],
  ]);
});

describe('one table against the same as single cells, 100 variants', () => {
  const NAMES = [
    'screw',
    'head',
    'length',
    'material',
    'wall',
    'board plane',
    'seat',
    'board',
    'hole',
    'relief',
    'pilot',
    'pilot held at',
    'boss OD',
    'boss height',
    'hole depth',
    'bottom gap',
  ];
  const rows = Array.from({ length: 100 }, (_, i) => [
    'ST2.9',
    'ISO 7049',
    [9.5, 13, 16, 19][i % 4],
    'ABS',
    2.5 + (i % 7) / 10,
    5.5,
    2.5,
    1.6,
    3.4,
    0.8,
    2.4,
    'mouth',
    6.4,
    14,
    14.75,
    1,
  ]);
  const asked = OUTPUTS.slice(0, 20);

  test('JOINT.TABLE', async () => {
    const table = await host.calculate([[{ id: 'JOINT.TABLE', args: [[NAMES, ...rows], [asked]] }]]);
    printed('JOINT.TABLE', 1, 1, table);
    expect(table.batches).toBe(1);
    const cells = await host.calculate([
      rows.flatMap(row => asked.map((name): Call => ({ id: 'JOINT.VALUE', args: [[NAMES], [row], name] }))),
    ]);
    printed('JOINT.VALUE in every cell', rows.length * asked.length, 1, cells);
    const body = (table.results[0]?.value as unknown[][]).slice(1).flat();
    expect(body.length).toBe(rows.length * asked.length);
    // where there is no value, the table says so in its cell and the single call is refused, for the same reason
    expect(cells.results.map(({ value }) => value)).toEqual(
      body.map(value => (typeof value === 'string' ? value.replace(/^no value: /, '') : value)),
    );
  });

  test('a chain of single functions', async () => {
    const step = (id: string, args: (row: number) => readonly unknown[]): Call[] => rows.map((_, row) => ({ id, args: args(row) }));
    const chain = [
      step('HOLE.PILOT', () => ['ST2.9', 'ABS']),
      step('HOLE.MOUTH', row => [2.4 + row / 1000, 7, 0.25]),
      step('BOSS.WALL', row => [6.4, 2.5 + row / 1000, 14, 0.5, 0.25, 14.75]),
      step('BOSS.SINK', row => [1.9 + row / 1000, 2.5]),
      step('CHECK.MAX', row => [0.5 + row / 1000, 0.6]),
      [{ id: 'CHECK.WORST', args: [rows.map(() => ['pass'])] }],
    ];
    const settled = await host.calculate(chain);
    printed('a chain of single functions', chain.flat().length, chain.length, settled);
    expect(settled.results.every(({ ok }) => ok)).toBe(true);
    expect(settled.batches).toBe(chain.length);
  });
});
