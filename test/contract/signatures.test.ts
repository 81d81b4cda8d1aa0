// Workbooks store the id of a function and the places of its arguments. What was released stays; arguments are appended, and are optional.
// The list grows by UPDATE_SIGNATURES=1 npx vitest run test/contract/signatures.test.ts, which refuses to change what is in it.
import { readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { METADATA } from './metadata';

const FILE = new URL('signatures.json', import.meta.url);

/** Id -> arguments in order, `[optional]`, `range…`; `-> table` where the result spills. */
type Signatures = Readonly<Record<string, string>>;

const SPILLS = ' -> range';
const isMatrix = ({ dimensionality }: { readonly dimensionality?: string }): boolean => dimensionality === 'matrix';

const current: Signatures = Object.fromEntries(
  METADATA.functions.map(({ id, parameters, result }) => {
    const args = parameters.map(parameter => `${parameter.name}${isMatrix(parameter) ? '…' : ''}`).map((name, i) => (parameters[i]?.optional === true ? `[${name}]` : name));
    return [id, `${args.join(', ')}${isMatrix(result) ? SPILLS : ''}`];
  }),
);

const bare = (arg: string): string => arg.replace(/[[\]]/g, '');
const isOptional = (arg: string): boolean => arg.startsWith('[');

function parts(signature: string): { readonly args: readonly string[]; readonly spills: boolean } {
  const [args = '', ...rest] = signature.split(SPILLS);
  return { args: args.split(', ').filter(arg => arg !== ''), spills: rest.length > 0 };
}

/** Why workbooks made with the released signatures would not calculate as before. */
function broken(released: Signatures, now: Signatures): string[] {
  return Object.entries(released).flatMap(([id, before]) => {
    const after = now[id];
    if (after === undefined) return [`${id} is gone; workbooks call it, so it must stay`];
    const [was, is] = [parts(before), parts(after)];
    const faults = was.args.flatMap((arg, i) => {
      const other = is.args[i];
      if (other === undefined) return [`${id} has lost its argument ${bare(arg)}`];
      if (bare(other) !== bare(arg)) return [`${id}: argument ${i + 1} was ${bare(arg)} and is ${bare(other)}; arguments keep their place`];
      return isOptional(arg) && !isOptional(other) ? [`${id}: ${bare(arg)} was optional`] : [];
    });
    const appended = is.args.slice(was.args.length).filter(arg => !isOptional(arg)).map(arg => `${id}: ${arg} is new, so it must be optional`);
    return [...faults, ...appended, ...(was.spills === is.spills ? [] : [`${id}: its result ${was.spills ? 'spilled' : 'was one value'}`])];
  });
}

describe('released signatures', () => {
  const released = JSON.parse(readFileSync(FILE, 'utf8')) as Signatures;

  test('still hold', () => expect(broken(released, current)).toEqual([]));

  test('are all in the list', () => {
    if (process.env['UPDATE_SIGNATURES'] === '1' && broken(released, current).length === 0) return writeFileSync(FILE, `${JSON.stringify(current, null, 2)}\n`);
    expect(released, 'add what is new: UPDATE_SIGNATURES=1 npx vitest run test/contract/signatures.test.ts').toEqual(current);
  });
});

describe('a change that would break a workbook is found', () => {
  const BOSS = { 'BOSS.OD': 'hole, wall, [distance]', 'LIMITS': 'text -> range', 'GRIP': 'layers…' };
  test.each<[Signatures, string[]]>([
    [BOSS, []],
    [{ ...BOSS, 'BOSS.OD': 'hole, wall, [distance], [draft]', 'BOSS.NEW': 'wall' }, []],
    [{ ...BOSS, 'BOSS.OD': 'hole, [wall], [distance]' }, []],
    [{ 'LIMITS': 'text -> range', 'GRIP': 'layers…' }, ['BOSS.OD is gone; workbooks call it, so it must stay']],
    [{ ...BOSS, 'BOSS.OD': 'hole, wall' }, ['BOSS.OD has lost its argument distance']],
    [{ ...BOSS, 'BOSS.OD': 'wall, hole, [distance]' }, ['BOSS.OD: argument 1 was hole and is wall; arguments keep their place', 'BOSS.OD: argument 2 was wall and is hole; arguments keep their place']],
    [{ ...BOSS, 'BOSS.OD': 'hole, wall, distance' }, ['BOSS.OD: distance was optional']],
    [{ ...BOSS, 'BOSS.OD': 'hole, wall, [distance], draft' }, ['BOSS.OD: draft is new, so it must be optional']],
    [{ ...BOSS, 'GRIP': 'layers' }, ['GRIP: argument 1 was layers… and is layers; arguments keep their place']],
    [{ ...BOSS, 'LIMITS': 'text' }, ['LIMITS: its result spilled']],
    [{ ...BOSS, 'GRIP': 'layers… -> range' }, ['GRIP: its result was one value']],
  ])('%j', (now, faults) => expect(broken(BOSS, now)).toEqual(faults));
});
