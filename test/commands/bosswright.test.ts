// The command line: what it writes is what the functions answer, whatever the file; what is wrong is told by row and column.
import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import Ajv from 'ajv';
import { build } from 'esbuild';
import { parseCsv } from 'hucre/csv';
import { readXlsx, writeXlsx } from 'hucre/xlsx';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { Job } from 'kubernetes-models/batch/v1';
import { parse } from 'yaml';
import { main } from '../../src/commands/bosswright';
import { UserFault } from '../../src/cli/user-fault';
import { jointSimulated } from '../../src/joint/study/simulate';
import { jointTable } from '../../src/joint/table';

const DOCUMENT = readFileSync('src/docs/command-line.md', 'utf8');
const fenced = (language: string): string[] =>
  [...DOCUMENT.matchAll(new RegExp(`^\`\`\`${language}\\n([^]*?)^\`\`\``, 'gm'))].map(([, text = '']) => text);

const folder = mkdtempSync(path.join(tmpdir(), 'bosswright-'));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => path.join(folder, name);
const kept = (name: string, text: string): string => (writeFileSync(at(name), text), at(name));
const textAt = (name: string): string => readFileSync(at(name), 'utf8');

const [JOINTS = '', CHECKED = ''] = fenced('text');
const rows = JOINTS.trim()
  .split('\n')
  .map((line, i) => line.split(',').map(cell => (i > 0 && /^[\d.]+$/.test(cell) ? Number(cell) : cell)));

async function run(...args: readonly string[]): Promise<string[]> {
  const lines: string[] = [];
  await main(args, line => lines.push(line));
  return lines;
}

const RESULTS = ['state', 'engagement ratio', 'reason', 'remedy'];
const answers = jointTable(rows, [RESULTS]);

beforeAll(() => void kept('joints.csv', JOINTS));

describe('a table', () => {
  const inCsv = (name: string): string[][] => parseCsv(textAt(name)) as string[][];
  const expected = rows.map((row, i) => [...row, ...(answers[i] ?? [])].map(String));

  it('holds the inputs as they stand, and what JOINT.TABLE answers', async () => {
    await run('table', at('joints.csv'), '--results', RESULTS.join(), '--out', at('out.csv'));
    expect(inCsv('out.csv')).toEqual(expected);
    expect(expected.length).toBe(4);
    expect(textAt('out.csv')).toMatch(/\r\n$/);
  });

  it.each([
    ['semicolons', JOINTS.replaceAll(',', ';')],
    ['tabs and a mark of order', `\uFEFF${JOINTS.replaceAll(',', '\t')}`],
    [
      'quoted cells, an empty line and none at the end',
      JOINTS.replace(/[^,\n]+/g, '"$&"')
        .replace('\n', '\n\n')
        .trimEnd(),
    ],
    ['JSON', JSON.stringify(rows.slice(1).map(row => Object.fromEntries((rows[0] ?? []).map((name, i) => [name, row[i]]))))],
  ])('from %s', async (name, text) => {
    await run('table', kept('other', text), '--results', RESULTS.join(), '--out', at('other.csv'));
    expect(inCsv('other.csv'), name).toEqual(expected);
  });

  it('keeps labels to the letter, reads an inch mark without quotes, and takes a line of commas for no joint', async () => {
    const text = JOINTS.replace('A,', '0012,')
      .replace('B,ST2.9,pan,16', 'B,ST2.9,pan,5/8"')
      .replace(/\nC.*\n/, '\n,,,,,,,,,,\n');
    await run('table', kept('labels.csv', text), '--results', 'state', '--out', at('labels-out.csv'));
    expect(inCsv('labels-out.csv').map(row => [row[0], row[3], row.at(-1)])).toEqual([
      ['variant', 'length', 'state'],
      ['0012', '13', 'fail'],
      ['B', '5/8"', 'pass'],
    ]);
  });

  it('tells what it reads of a workbook of several sheets, and which entry of JSON', async () => {
    const sheet = (name: string, value: string) => ({ name, rows: [[value], [1]] });
    writeFileSync(at('two.xlsx'), await writeXlsx({ sheets: [sheet('Notes', 'read on'), sheet('Joints', 'wall')] }));
    await expect(run('table', at('two.xlsx'))).rejects.toThrow(/two\.xlsx, sheet Notes, row 1, column A: "read on" is not a name/);
    const lines: string[] = [];
    await expect(
      Promise.resolve(main(['check', kept('j.json', '[{"screw":"M3"},{"screw":"ST9","head":"pan"}]')], line => lines.push(line))),
    ).rejects.toThrow('2 of 2 rows');
    // the head only hands on what is wrong with the screw
    expect(lines.filter(line => line.includes('ST9'))).toEqual([expect.stringMatching(/j\.json, entry 2: not checked: screw is "ST9"/)]);
  });

  it('as a workbook, and from one', async () => {
    await run('table', at('joints.csv'), '--results', RESULTS.join(), '--out', at('out.xlsx'));
    const { sheets } = await readXlsx(readFileSync(at('out.xlsx')));
    expect(sheets[0]?.rows.map(row => row.map(String))).toEqual(expected);
    await run('table', at('joints.csv'), '--results', 'state', '--out', at('states.xlsx'));
    await expect(run('table', at('states.xlsx'))).rejects.toThrow(/states\.xlsx, row 1, column L: "state" is not a name/);
  });

  it('as JSON with every digit, as Markdown with six', async () => {
    await run('table', at('joints.csv'), '--results', 'engagement ratio', '--out', at('out.json'));
    const read = JSON.parse(textAt('out.json')) as { inputs: object; results: object }[];
    expect(read.map(({ results }) => results)).toEqual(answers.slice(1).map(row => ({ 'engagement ratio': row[1] })));
    expect(read[1]?.inputs).toMatchObject({ variant: 'B', screw: 'ST2.9', length: 16 });
    await run('table', at('joints.csv'), '--results', 'engagement ratio', '--out', at('out.md'));
    expect(textAt('out.md').split('\n')[3]).toMatch(/^\| B \| ST2\.9 .* \| 2\.63448 \|$/);
  });

  it('over another base', async () => {
    await run('table', at('joints.csv'), '--base', kept('base.csv', 'engagement ratio required,3\n'), '--out', at('x.csv')).then(
      () => expect.fail('taken'),
      (fault: unknown) => expect(String(fault)).toMatch(/base\.csv: .*engagement ratio required/),
    );
    const base = [
      ['screw', 'head'],
      ['ST2.2', 'pan'],
    ];
    const short = 'length,seat,board\n13,2.5,1.6\n';
    await run(
      'table',
      kept('short.csv', short),
      '--base',
      kept('base.csv', 'screw,ST2.2\nhead,pan\n'),
      '--results',
      'engagement min',
      '--out',
      at('x.csv'),
    );
    const [, answer = []] = jointTable(
      [
        ['length', 'seat', 'board'],
        [13, 2.5, 1.6],
      ],
      [['engagement min']],
      base,
    );
    expect(inCsv('x.csv')[1]?.at(-1)).toBe(String(answer[0]));
  });
});

describe('check', () => {
  it('says what its document shows, and ends with a fault', async () => {
    const lines: string[] = [];
    const fault: unknown = await Promise.resolve(main(['check', at('joints.csv')], line => lines.push(line))).catch(
      (thrown: unknown) => thrown,
    );
    expect(fault).toBeInstanceOf(UserFault);
    expect(`${[...lines, (fault as UserFault).message].join('\n')}\n`.replaceAll(at('joints.csv'), 'joints.csv')).toBe(CHECKED);
  });

  it('lets a row that passes go, and one to review', async () => {
    expect(await run('check', at('joints.csv'), '--rows', '2')).toEqual(['1 pass']);
    await run('check', kept('m3.csv', JOINTS.replace('C,ST2.9,pan,19', 'C,M3,pan,16')), '--rows', '2-3').then(lines =>
      expect(lines).toEqual([expect.stringMatching(/row 4: review: machine thread/), '1 pass, 1 review']),
    );
  });

  it('tells the cell that is no value, and does not let it go', async () => {
    const lines: string[] = [];
    const file = kept('bad.csv', JOINTS.replace('B,ST2.9,pan,16,ABS,2.5', 'B,ST2.9,pan,16,ABS,two'));
    await expect(Promise.resolve(main(['check', file, '--rows', '2'], line => lines.push(line)))).rejects.toThrow(
      '1 of 1 rows fail or are not checked',
    );
    expect(lines[0]).toMatch(/bad\.csv, row 3, column F: not checked: wall is "two": not a length/);
  });
});

it('a figure is drawn to stand alone, and a card has every output', async () => {
  await run('figure', at('joints.csv'), at('a.svg'), '--row', '1');
  expect(textAt('a.svg')).toMatch(/^<svg [^]*too little full thread: needs engagement ratio at least 2, has 1\.6/);
  expect(textAt('a.svg')).not.toContain('var(');
  await run('figure', at('joints.csv'), at('a.png'));
  expect(readFileSync(at('a.png')).subarray(1, 4).toString()).toBe('PNG');
  await run('figure', at('joints.csv'), at('a.dxf'));
  expect(textAt('a.dxf')).toMatch(/^999\n.*millimetres[^]*AC1009[^]*\nEOF\n$/);
  await run('card', at('joints.csv'), '--row', '2', '--out', at('card.csv'));
  expect(textAt('card.csv').split('\r\n').length).toBeGreaterThan(50);
});

it('the parameters of a row bear its label', async () => {
  await run('parameters', at('joints.csv'), at('b.csv'), '--row', '2');
  expect(textAt('b.csv')).toMatch(/^name,value,unit,lower,upper,source\r\n[^]*joint_B_screw_length,16,mm,-0\.8,0\.8,given\r\n/);
  await run('parameters', at('joints.csv'), at('b.json'), '--row', '2');
  expect((JSON.parse(textAt('b.json')) as { name: string }[]).map(({ name }) => name)).toContain('joint_B_boss_OD');
});

describe('studies of one row', () => {
  const csvOf = (name: string): string[][] => parseCsv(textAt(name)) as string[][];
  const joint = [rows[0] ?? [], rows[2] ?? []];

  it('a map is JOINT.TABLE at each of its points', async () => {
    const asked = ['--x', 'wall', '--x-values', '2,2.5,3', '--y', 'boss OD', '--y-values', '6,6.5,7'];
    await run('map', at('joints.csv'), '--row', '2', ...asked, '--out', at('map.csv'));
    const [heading = [], ...lines] = csvOf('map.csv');
    expect(heading).toEqual(['wall (mm) \\ boss OD (mm)', '2', '2.5', '3']);
    const wallAt = joint[0]?.indexOf('wall') ?? -1;
    const expected = [6, 6.5, 7].map(od => [
      String(od),
      ...[2, 2.5, 3].map(wall => {
        const row = (joint[1] ?? []).map((cell, i) => (i === wallAt ? wall : cell));
        return String(
          jointTable(
            [
              [...(joint[0] ?? []), 'boss OD'],
              [...row, od],
            ],
            [['state']],
          )[1]?.[0],
        );
      }),
    ]);
    expect(lines).toEqual(expected);
    expect(new Set(expected.flatMap(line => line.slice(1))).size).toBeGreaterThan(1);
  });

  it('a map and what moves an output are drawn where the ending asks for it', async () => {
    const plane = ['--x', 'wall', '--x-values', '2,2.5,3', '--y', 'boss OD', '--y-values', '6,6.5,7'];
    await run('map', at('joints.csv'), '--row', '2', ...plane, '--out', at('map.svg'));
    await run('sensitivity', at('joints.csv'), '--row', '2', '--result', 'engagement min', '--out', at('bars.svg'));
    await run('sensitivity', at('joints.csv'), '--row', '2', '--result', 'engagement min', '--out', at('bars.csv'));
    expect(textAt('map.svg')).toMatch(/^<svg [^]*<title>wall and boss OD: where the joint is good</);
    expect(textAt('bars.svg')).toMatch(/^<svg [^]*<title>What moves engagement min</);
    for (const name of ['map.svg', 'bars.svg']) expect(textAt(name)).not.toContain('var(');
    const [, ...moves] = csvOf('bars.csv');
    const drawn = moves.filter(([, , , , , change]) => change !== '–' && Number(change) !== 0).map(([name = '']) => name);
    expect(drawn.length).toBeGreaterThan(3);
    for (const name of drawn) expect(textAt('bars.svg')).toContain(`>${name}<`);
    await expect(run('sensitivity', at('joints.csv'), '--result', 'state', '--out', at('no.svg'))).rejects.toThrow(/state is not a number/);
    await expect(run('sensitivity', at('joints.csv'))).rejects.toThrow(/^give --result\n\nbosswright sensitivity /);
  });

  it('a simulation counts as the function does, and refuses in its words', async () => {
    await run('simulate', at('joints.csv'), '--row', '2', '--samples', '2000', '--seed', '7', '--out', at('yield.csv'));
    const [heading, ...lines] = csvOf('yield.csv');
    expect(heading).toEqual(['rule', 'share that meets it', 'ppm outside', 'least', 'mean', 'largest']);
    expect(lines).toEqual(jointSimulated(joint, 2000, 7, undefined).map(row => row.map(String)));
    await expect(run('simulate', at('joints.csv'), '--samples', '10')).rejects.toThrow(/^--samples is 10: /);
    await expect(run('map', at('joints.csv'), '--x', 'wall')).rejects.toThrow(
      /^give --x, --x-values, --y and --y-values\n\nbosswright map /,
    );
  });
});

describe('refusals', () => {
  it.each<[string, readonly string[], RegExp]>([
    ['another command', ['tabel'], /there is no command tabel[^]*bosswright COMMAND/],
    ['no file', ['table'], /0 files given, takes 1\n\nbosswright table in\.csv/],
    ['an unknown option', ['check', 'a.csv', '--colour', 'x'], /--colour[^]*bosswright check/],
    ['a file that is not there', ['check', 'nowhere.csv'], /nowhere\.csv cannot be read/],
    ['another ending', ['table', 'a.csv', '--out', 'a.doc'], /--out a\.doc: give a name that ends in \.csv, \.xlsx, \.json, \.md/],
    ['a form beside a file', ['table', 'a.csv', '--out', 'a.csv', '--as', 'json'], /--as is for standard output/],
    ['no such rows', ['table', 'a.csv', '--rows', '0-4'], /--rows 0-4: give 7 or 1-500/],
  ])('%s', async (_, args, why) => {
    const fault = await run(...args).catch((thrown: unknown) => thrown);
    expect(String(fault)).toMatch(why);
  });

  it.each<[string, string | Buffer, RegExp]>([
    ['a quote without an end', JOINTS.replace('B,', '"B,'), /row 3: a quote begins here and does not end$/],
    ['another encoding', Buffer.from(JOINTS.replace('B,', 'Geh\u00e4use,'), 'latin1'), /is not text in UTF-8/],
    ['what is no JSON', '[{"screw": }]', /is not JSON: /],
  ])('%s, told by file', async (_, content, why) => {
    writeFileSync(at('wrong'), content);
    await expect(run('table', at('wrong'), '--out', at('x.csv'))).rejects.toThrow(why);
  });

  it('writes over nothing that it reads', async () => {
    const file = kept('mine.csv', JOINTS);
    const study = ['--x', 'wall', '--x-values', '2', '--y', 'seat', '--y-values', '2'];
    for (const args of [['table'], ['card'], ['simulate'], ['sensitivity', '--result', 'hole'], ['map', ...study]])
      await expect(run(...args, file, '--out', file), args[0]).rejects.toThrow(/mine\.csv is read: give what is written another name/);
    await expect(run('parameters', file, file)).rejects.toThrow(/mine\.csv is read/);
    await expect(run('table', at('joints.csv'), '--base', file, '--out', file)).rejects.toThrow();
    expect(textAt('mine.csv')).toBe(JOINTS);
  });

  it('an argument by its option', async () => {
    const plane = ['--x', 'wall', '--y', 'boss OD', '--y-values', '6'];
    for (const [args, why] of [
      [['card', '--row', '2-3'], /^--row 2-3: give one number/],
      [['simulate', '--samples', 'many'], /^--samples is "many": /],
      [['map', ...plane, '--x-values', ','], /^--x-values has no values/],
      [['sensitivity', '--result', 'stat'], /^--result: "stat" is not a name/],
      [['table', '--results', ' , '], /^--results names nothing/],
      [['check', '--rows', '9'], /joints\.csv has no such rows/],
      [['card', '--row'], /^--row needs a value\n\nbosswright card /],
    ] as const)
      await expect(run(...args, ...(args.at(-1) === '--row' ? [] : [at('joints.csv')])), args.join(' ')).rejects.toThrow(why);
  });

  it('a name that is none, with its column; a result that is none; a row beyond the end', async () => {
    await expect(run('table', kept('seet.csv', JOINTS.replace('seat', 'seet')))).rejects.toThrow(
      /seet\.csv, row 1, column H: "seet" is not a name of a joint input; did you mean "seat"/,
    );
    await expect(run('table', at('joints.csv'), '--results', 'stat')).rejects.toThrow(/^--results: "stat" is not a name of a joint output/);
    await expect(run('card', at('joints.csv'), '--row', '9')).rejects.toThrow(/has no row 9/);
  });

  it('every command says how it is used', async () => {
    const [help = ''] = await run('--help');
    const names = [...help.matchAll(/^ {2}(\w+)/gm)].map(([, name = '']) => name);
    expect(names.length).toBe(11);
    for (const name of names) {
      expect((await run(name, '--help'))[0], name).toMatch(new RegExp(`^bosswright ${name} `));
      expect(DOCUMENT).toContain(`\`bosswright ${name}\``);
    }
  });
});

it('the schema takes what the command takes', () => {
  const { generated: _, ...schema } = JSON.parse(readFileSync('src/docs/joint-inputs.schema.json', 'utf8')) as Record<string, unknown>;
  const valid = new Ajv({ strict: true, allowUnionTypes: true }).compile(schema);
  const joint = Object.fromEntries((rows[0] ?? []).map((name, i) => [name, rows[1]?.[i]]));
  expect(valid([joint, { ...joint, 'seat (in)': '3/32', '(mine)': true, wall: null }])).toBe(true);
  for (const wrong of [joint, [{ ...joint, seet: 2 }], [{ ...joint, seat: [2] }]]) expect(valid(wrong)).toBe(false);
});

describe('as a process', () => {
  /** The command as it is installed, by its name. */
  beforeAll(async () => {
    await build({
      entryPoints: ['src/commands/bin.ts'],
      bundle: true,
      platform: 'node',
      format: 'esm',
      packages: 'external',
      splitting: true,
      outdir: '.cache/commands',
      logLevel: 'error',
    });
    chmodSync(path.resolve('.cache/commands/bin.js'), 0o755);
    kept('bosswright', `#!/bin/sh\nexec "${process.execPath}" "${path.resolve('.cache/commands/bin.js')}" "$@"\n`);
    chmodSync(at('bosswright'), 0o755);
    const [heading = '', ...body] = JOINTS.trim().split('\n');
    kept('study.csv', [heading, ...Array.from({ length: 1000 }, (_, i) => (body[i % 3] ?? '').replace(/^./, String(i)))].join('\n'));
  }, 120_000);

  const env = { ...process.env, PATH: `${folder}:${process.env.PATH ?? ''}` };
  const shell = (script: string, more: Readonly<Record<string, string>> = {}, input = '') =>
    spawnSync('bash', ['--norc', '-euc', script], { cwd: folder, env: { ...env, ...more }, input, encoding: 'utf8' });

  it('reads standard input, writes standard output, and is quiet in a pipe', () => {
    const { status, stdout, stderr } = shell('bosswright table - --results state', {}, JOINTS);
    expect([status, stderr]).toEqual([0, '']);
    expect(stdout.split('\r\n').map(line => line.split(',').at(-1))).toEqual(['state', 'fail', 'pass', 'fail', '']);
  });

  it('tells without a stack what cannot be written or read', () => {
    for (const [script, why] of [
      ['bosswright table joints.csv --out nowhere/x.csv', 'nowhere/x.csv cannot be written: there is no such file or folder\n'],
      ['bosswright figure joints.csv nowhere/x.svg', 'nowhere/x.svg cannot be written: there is no such file or folder\n'],
      ['bosswright check .', '. cannot be read: it is a folder\n'],
      ['bosswright check nowhere.csv', 'nowhere.csv cannot be read: there is no such file or folder\n'],
      ['bosswright check joints.csv > /dev/full', 'the output cannot be written: the disk is full\n'],
      ['bosswright table joints.csv > /dev/full', 'the output cannot be written: the disk is full\n'],
    ] as const)
      expect([script, shell(script)]).toMatchObject([script, { stderr: why, status: 1 }]);
  });

  it('says how it is used for -h and help, and which release it is', () => {
    expect(shell('bosswright table -h').stdout).toBe(shell('bosswright help table').stdout);
    expect(shell('bosswright -h').stdout).toMatch(/^bosswright COMMAND/);
    expect(shell('bosswright --version').stdout).toMatch(/^Bosswright \d+\.\d+\.\d+, data /);
  });

  it('ends with 1 where a row fails, and quietly where nobody reads on', () => {
    expect(shell('bosswright check joints.csv').status).toBe(1);
    expect(shell('bosswright check joints.csv --rows 2').status).toBe(0);
    expect(shell('set -o pipefail; bosswright table study.csv | head -n 1')).toMatchObject({ status: 0, stderr: '' });
  });

  describe('on many machines', () => {
    const small = (script: string): string => script.replaceAll('25000', '250');
    const [parallel = '', slurm = ''] = fenced('bash');
    const job = /- \|\n([^]*?)\n {10}resources:/.exec(fenced('yaml')[0] ?? '')?.[1] ?? '';
    let one: Buffer;
    beforeAll(() => {
      shell('bosswright table study.csv --results state,reason --out one.csv');
      one = readFileSync(at('one.csv'));
    });
    const whole = (): boolean => one.length > 50_000 && readFileSync(at('results.csv')).equals(one);

    it.each([
      ['a Slurm array', slurm, 'SLURM_ARRAY_TASK_ID'],
      ['an indexed job', job, 'JOB_COMPLETION_INDEX'],
    ])('%s: slices put together are the whole, byte for byte', (_, script, index) => {
      kept('slice.sh', small(script));
      const { status, stderr } = shell(
        `rm -f part-* && printf '%s\\n' 0 1 2 3 | ${index}= xargs -P 3 -I % env ${index}=% bash -eu slice.sh && cat part-??.csv > results.csv`,
      );
      expect([status, stderr]).toEqual([0, '']);
      expect(whole()).toBe(true);
      // a slice that is left out is seen
      shell('cat part-0[013].csv > results.csv');
      expect(whole()).toBe(false);
    });

    it.runIf(spawnSync('shellcheck', ['--version']).status === 0)('nothing is found in either script by shellcheck', () => {
      const found = (script: string) => spawnSync('shellcheck', ['--shell=bash', '-'], { input: script, encoding: 'utf8' });
      expect([slurm, job, parallel].map(script => found(script).stdout)).toEqual(['', '', '']);
      // an unquoted name is seen
      expect(found(slurm.replaceAll('"$', '$')).stdout).toContain('SC');
    });

    it('the job is one by the schema of Kubernetes', () => {
      const [written = ''] = fenced('yaml');
      const valid = (manifest: string): boolean => {
        try {
          new Job(parse(manifest) as ConstructorParameters<typeof Job>[0]).validate();
          return true;
        } catch {
          return false;
        }
      };
      expect(valid(written)).toBe(true);
      const faults = [
        ['completions: 4', 'completions: "4"'],
        ['completionMode: Indexed', 'completionMode: 4'],
        ['- name: bosswright', '- image: bosswright'],
      ] as const;
      for (const [right, wrong] of faults) expect([right, valid(written.replace(right, wrong))]).toEqual([right, false]);
    });

    it.runIf(spawnSync('parallel', ['--version']).status === 0)('GNU parallel on three workers', () => {
      const { status, stderr } = shell(parallel.replace('-j 4', '-j 3').replace(/::: .* >/, '::: 1-250 251-500 501-750 751-1000 >'));
      expect([status, stderr]).toEqual([0, '']);
      expect(whole()).toBe(true);
    });
  });
});
