// The front page is short, and what it says of the functions is what they answer.
import { describe, expect, it } from 'vitest';
import { call } from '../../src/registry';
import { textOf } from './documents';

const README = textOf('README.md');

it('has at most 6,000 bytes', () => expect(new TextEncoder().encode(README).length).toBeLessThanOrEqual(6000));

it('speaks to you', () => expect(README).not.toMatch(/\b(he|him|his|himself)\b/i));

it('one length in two units', () => {
  const [, first = '', second = '', said = ''] = /`=ENCL\.BOSS\.OD\("([^"]+)", ([\d.]+)\)` is ([\d.]+) mm/.exec(README) ?? [];
  expect(call('BOSS.OD', [first, Number(second)])).toEqual({ ok: true, value: Number(said) });
});

describe('your part in five lines', () => {
  const [, block = ''] = /```text\n([^]*?)```/.exec(README) ?? [];
  const lines = block.trim().split('\n');
  const rows = lines.slice(0, 4).map(line => line.split(/ {2,}/).map(cell => (/^[\d.]+$/.test(cell) ? Number(cell) : cell)));
  const [, range = '', outputs = ''] = /^=ENCL\.JOINT\.TABLE\(([A-Z]\d:[A-Z]\d),\{(.*)\}\)$/.exec(lines[4] ?? '') ?? [];
  const asked = outputs.split(',').map(name => name.replace(/"/g, ''));
  const answer = call('JOINT.TABLE', [rows, [asked]]);
  const results = answer.ok ? (answer.value as unknown[][]) : expect.fail(answer.message);

  it('are five, and the range is the table', () => {
    expect(lines.length).toBe(5);
    expect(range).toBe(`A1:${String.fromCharCode(64 + (rows[0]?.length ?? 0))}4`);
    expect(rows.map(row => row.length)).toEqual([11, 11, 11, 11]);
  });

  it('give what the page says', () => {
    const [, a = [], b = [], c = []] = results;
    expect([a[1], b[1], c[1]]).toEqual(['fail', 'pass', 'fail']);
    const said = /A fails with ([\d.]+) d of full thread where (\d) d are required, and says that (\d+) mm would do\./.exec(README) ?? [];
    expect(a[2]).toBeCloseTo(Number(said[1]), 9);
    expect(String(a[3])).toContain(`needs engagement ratio at least ${said[2]}`);
    expect(a[4]).toBe(`length ${said[3]} mm`);
    const bottoms = /C bottoms: it needs a hole ([\d.]+) mm deep and has (\d+) mm/.exec(README) ?? [];
    expect(c[3]).toBe(`screw bottoms: needs a hole ${bottoms[1]} mm deep, has ${bottoms[2]} mm`);
  });
});

describe('what is in it', () => {
  it.each<[words: string, ends: readonly string[], beyond: readonly string[]]>([
    ['metric M1.6 to M6', ['M1.6', 'M6'], ['M1.4', 'M8']],
    ['tapping ST1.5 to ST4.8', ['ST1.5', 'ST4.8'], ['ST1', 'ST5.5']],
    ['unified #0-80 to 1/4-28', ['#0-80', '1/4-28'], ['#00-90', '#12-24']],
    ['types AB and B #0 to 1/4', ['#0 AB', '1/4 AB', '#0 B', '1/4 B'], ['#12 AB', '#14 B']],
  ])('%s', (words, ends, beyond) => {
    expect(README).toContain(words);
    expect(ends.map(size => call('SCREW.MAJOR', [size]).ok)).toEqual(ends.map(() => true));
    for (const size of beyond) expect(call('SCREW.MAJOR', [size]), size).toMatchObject({ ok: false, code: '#N/A' });
  });
});
