// Someone who follows DEVELOPERS.md literally adds a function, an output and a rule, on a copy; and whoever leaves out a step is told.
import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { textOf } from './documents';

interface Step {
  readonly file: string;
  /** The line before whose last occurrence the step stands; none: at the end of the file. */
  readonly before: string | undefined;
  readonly lines: string;
}

const STEPS: readonly Step[] = [...textOf('DEVELOPERS.md').matchAll(/^```ts (\S+)(?: before ([^\n]+))?\n([^]*?)^```$/gm)].map(
  ([, file = '', before, lines = '']) => ({ file, before, lines }),
);

/** Those that meet every function, output and rule, but the slow ones. */
const TESTS = [
  'test/architecture/docstrings',
  'test/contract',
  'test/core/examples',
  'test/evidence/evidence',
  'test/joint/limits',
  'test/joint/joint',
  'test/joint/rules',
  'test/joint/wiring',
  'test/handover/joint-follows',
  'test/plain/forms',
  'test/help',
];

const COPY = mkdtempSync(path.join(tmpdir(), 'adding-'));
afterAll(() => rmSync(COPY, { recursive: true }));

function take({ file, before, lines }: Step): void {
  const place = path.join(COPY, file);
  const text = readFileSync(place, 'utf8');
  const at = before === undefined ? text.length : text.lastIndexOf(`\n${before}`) + 1;
  if (at === 0) throw new Error(`${file} has no line that begins with ${before}`);
  writeFileSync(place, text.slice(0, at) + lines + text.slice(at));
}

/** What a command of the copy says, and whether it ended well. */
interface Said {
  readonly ok: boolean;
  readonly said: string;
}

function run(command: string): Said {
  const [program = '', ...args] = command.split(' ');
  try {
    return {
      ok: true,
      said: execFileSync(program, args, { cwd: COPY, encoding: 'utf8', stdio: 'pipe', env: { ...process.env, NO_COLOR: '1' } }),
    };
  } catch (fault) {
    const { stdout = '', stderr = '' } = fault as { stdout?: string; stderr?: string };
    return { ok: false, said: stdout + stderr };
  }
}

const vitest = (...files: readonly string[]): Said => run(`npx vitest run --project plain ${files.join(' ')}`);
const generate = (): Said => run('npm run generate');

/** As it was before `change`. */
function undone<T>(files: readonly string[], change: () => T): T {
  const kept = files.map(file => [path.join(COPY, file), readFileSync(path.join(COPY, file), 'utf8')] as const);
  try {
    return change();
  } finally {
    for (const [place, text] of kept) writeFileSync(place, text);
  }
}

beforeAll(() => {
  const files = execFileSync('git', ['ls-files', '--cached', '--others', '--exclude-standard', '--deduplicate'], { encoding: 'utf8' });
  for (const file of files.trim().split('\n')) cpSync(file, path.join(COPY, file), { recursive: true });
  symlinkSync(path.resolve('node_modules'), path.join(COPY, 'node_modules'));
  STEPS.forEach(take);
});

it('the steps are in the document: the places of a function, an output, a rule and its limits, each with its German', () => {
  expect(STEPS.map(({ file }) => file.split('/')[0])).toEqual([
    'src',
    'src',
    'src',
    'functions',
    'test',
    'src',
    'src',
    'src',
    'src',
    'src',
    'src',
    'src',
    'src',
    'src',
    'test',
    'test',
  ]);
});

it('before generate was run, the tests name it', () => {
  const { ok, said } = vitest('test/contract/signatures.test.ts');
  expect([ok, said.includes('npm run generate')]).toEqual([false, true]);
});

describe('after it', () => {
  beforeAll(() => {
    const { ok, said } = generate();
    if (!ok) throw new Error(said);
  });

  it('the function, the output and the rule are there', () => {
    const has = (file: string, text: string): boolean => readFileSync(path.join(COPY, file), 'utf8').includes(text);
    expect(has('src/release/signatures.json', '"BOSS.FOOT": "root, [fillet]"')).toBe(true);
    expect(has('src/docs/functions.md', '`ENCL.BOSS.FOOT(root, [fillet])`')).toBe(true);
    expect(has('test/contract/pinned.json', '"room for the foot"')).toBe(true);
  });

  it('it compiles', () => {
    expect(run('npx tsc -p tsconfig.json').said).toBe('');
  });

  it('the tests concerned pass', () => {
    const { ok, said } = vitest(...TESTS);
    expect(ok, said).toBe(true);
    expect(Number(/Tests +(\d+) passed/.exec(said)?.[1])).toBeGreaterThan(2500);
  });

  const without = (numbers: readonly number[], by: () => Said): Said => {
    const left = numbers.map(number => STEPS[number] as Step);
    return undone([...left.map(({ file }) => file), 'src/plain/forms.json'], () => {
      for (const { file, lines } of left) {
        const place = path.join(COPY, file);
        const text = readFileSync(place, 'utf8');
        expect(text).toContain(lines);
        writeFileSync(place, text.replace(lines, ''));
      }
      return by();
    });
  };

  /** Two that do not hide each other are left out at once, for the time it takes. */
  it.each<[what: string, steps: readonly number[], told: readonly RegExp[], by: () => Said]>([
    ['formula', [0], [/BOSS\.FOOT: .*bossFootMm: not an exported function/], generate],
    ['words', [2], [/BOSS\.FOOT has no words/], generate],
    ['card', [1], [/BOSS\.FOOT has words, but no card/], generate],
    ['wrapper', [3], [/BOSS\.FOOT is gone/], generate],
    [
      'entry of the output, or the place of the rule',
      [7, 10],
      [/"boss foot"/, /findings\.ts.*'room for the foot'|'"room for the foot"'/],
      () => run('npx tsc -p src/tsconfig.pure.json'),
    ],
    [
      'row of the arguments, or the joint of a limit',
      [4, 15],
      [/- +"BOSS\.FOOT"/, /- +"room for the foot: review 0"/],
      () => vitest('test/contract/arguments.test.ts', 'test/joint/limits.test.ts'),
    ],
    [
      'card and words, or the rows of the limits',
      [1, 2, 14, 15],
      [/withoutCard[^]*BOSS\.FOOT/, /\+ +"room for the foot"/],
      () => {
        generate();
        return vitest('test/contract/cards.test.ts', 'test/joint/limits.test.ts');
      },
    ],
  ])('without the %s it is told', (_, steps, told, by) => {
    const { ok, said } = without(steps, by);
    expect(ok, said).toBe(false);
    for (const words of told) expect(said).toMatch(words);
  });
});
