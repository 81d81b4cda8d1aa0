// The example of a large study, on a slice: its files hold what the joint answers, in order, and a slice is a part of the whole.
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseCsv } from 'hucre/csv';
import { readXlsx } from 'hucre/xlsx';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { call } from '../../src/registry';

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'batch-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const run = (...args: readonly string[]): string =>
  execFileSync(process.execPath, ['src/library/batch.mjs', ...args], { encoding: 'utf8' });
const csv = (name: string): string[] => readFileSync(path.join(folder, name), 'utf8').trimEnd().split(/\r?\n/);

it('CSV and workbook agree with the joint and with each other', async () => {
  const said = run('--from', '42000', '--to', '42700', '--csv', path.join(folder, 'a.csv'), '--xlsx', path.join(folder, 'a.xlsx'));
  expect(said).toMatch(/^700 variants, \d+ pass: /);
  const rows = parseCsv(readFileSync(path.join(folder, 'a.csv'), 'utf8'));
  const { sheets } = await readXlsx(readFileSync(path.join(folder, 'a.xlsx')));
  expect(sheets[0]?.rows.map(row => row.map(String))).toEqual(rows);
  const [header = []] = rows;
  expect(rows.length).toBe(701);
  // the first and the last of a piece, and one that passes
  const passing = rows.findIndex(row => row[header.indexOf('state')] === 'pass');
  for (const i of [1, 500, 501, 700, passing]) {
    const row = rows[i] ?? [];
    const value = (name: string): number => Number(row[header.indexOf(name)]);
    const names = [
      'screw',
      'head',
      'material',
      'board plane',
      'board',
      'hole',
      'relief',
      'pilot held at',
      'boss height',
      'hole depth',
      'bottom gap',
      'length',
      'seat',
      'wall',
      'pilot',
      'boss OD',
    ];
    const answer = call('JOINT.TABLE', [
      [
        names,
        [
          'ST2.9',
          'ISO 7049',
          'ABS',
          5.5,
          1.6,
          3.4,
          0.8,
          'mouth',
          14,
          14.75,
          1,
          value('length'),
          value('seat'),
          value('wall'),
          value('pilot'),
          value('boss OD'),
        ],
      ],
      [header.slice(5)],
    ]);
    expect(answer.ok && (answer.value as unknown[][])[1]?.map(String), `row ${i}`).toEqual(row.slice(5));
  }
});

it('slices put together are the whole', () => {
  for (const [name, from, to] of [
    ['one', '0', '20'],
    ['two', '20', '50'],
    ['all', '0', '50'],
  ] as const)
    run('--from', from, '--to', to, '--csv', path.join(folder, name));
  expect([...csv('one'), ...csv('two').slice(1)]).toEqual(csv('all'));
});
