// What runs a command: a fault that the user can put right is a message, any other is shown as it is, and both end with 1.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';

const folder = mkdtempSync(path.join(tmpdir(), 'run-'));
afterAll(() => rmSync(folder, { recursive: true }));

function ended(body: string, ...args: readonly string[]) {
  const file = path.join(folder, 'command.mts');
  writeFileSync(
    file,
    `import { UserFault } from '${path.resolve('src/cli/user-fault.ts')}';\nexport const main = async (args: readonly string[], print: (line: string) => void): Promise<void> => { ${body} };\n`,
  );
  const { status, stdout, stderr } = spawnSync('npx', ['tsx', 'src/cli/run.ts', file, ...args], { encoding: 'utf8' });
  return { status, stdout, stderr };
}

test.each([
  ['a command', 'print(args.join());', { status: 0, stdout: 'a,--b\n', stderr: '' }],
  ['a fault of the user', "print('begun'); throw new UserFault('a message');", { status: 1, stdout: 'begun\n', stderr: 'a message\n' }],
  [
    'another fault',
    "throw new Error('a defect');",
    { status: 1, stdout: '', stderr: expect.stringMatching(/Error: a defect\n +at main /) },
  ],
])('%s', (_, body, expected) => expect(ended(body, 'a', '--b')).toEqual(expected));
