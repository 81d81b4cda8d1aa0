// functions.json as the build makes it: the published schema, and what Excel refuses without a word.
import { createRequire } from 'node:module';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { RELEASED } from '../../src/release/signatures';
import { METADATA } from '../../src/tools/metadata';

const { definitions } = createRequire(import.meta.url)(
  '@microsoft/app-manifest/build/json-schemas/teams/v1.30/MicrosoftTeams.schema.json',
) as { definitions: object };
// The schema was written for another dialect of JSON Schema and names formats of its own.
const fits = new Ajv({ strict: false, validateFormats: false, allErrors: true }).compile({
  definitions,
  $ref: '#/definitions/extensionCustomFunctions',
});

interface Function {
  id: string;
  name: string;
  description: string;
  parameters: { name: string; description: string; type?: string; optional?: boolean; repeating?: boolean }[];
  result: { dimensionality?: string };
  options?: Record<string, boolean>;
}
interface Metadata {
  /** For functions.json alone: the schema, which was written for another manifest, does not know it. */
  allowErrorForDataTypeAny?: boolean;
  functions: Function[];
}

const MEGABYTE = 1_000_000;
/** Calls that Excel makes more often, or that wait, or that see the sheet: ours depend on their arguments only. */
const OPTIONS = /^(stream|volatile|cancelable|requires|capturesCallingObject)/;

const columnNumber = (letters: string): number => [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);

/** A1 to XFD1048576, and R1C1 with or without its numbers. */
function looksLikeCell(name: string): boolean {
  const [, letters, row] = /^([A-Z]{1,3})([1-9]\d*)$/.exec(name) ?? [];
  return /^R\d*C\d*$|^[RC]\d*$/.test(name) || (letters !== undefined && columnNumber(letters) <= 16_384 && Number(row) <= 1_048_576);
}

const repeated = (list: readonly string[]): string[] => list.filter((one, i) => list.indexOf(one) !== i);

function faults(metadata: Metadata): string[] {
  const { allowErrorForDataTypeAny: _errorsToo, ...known } = metadata;
  const { functions } = metadata;
  const flat = { ...known, functions: functions.map(({ options, ...rest }) => ({ ...rest, ...options })) };
  const found = fits(flat) ? [] : (fits.errors ?? []).map(({ instancePath, message = '' }) => `${instancePath} ${message}`);
  const bytes = new TextEncoder().encode(JSON.stringify(metadata, null, 4)).length;
  if (bytes > MEGABYTE) found.push(`${bytes} bytes; desktop Excel refuses more than ${MEGABYTE}`);
  for (const { id, name, parameters, options = {} } of functions) {
    if (name !== id) found.push(`${id} is called ${name}`);
    if (!/^[A-Z][A-Z0-9]*([.][A-Z][A-Z0-9]*)*$/.test(id)) found.push(`${id}: letters, digits and single dots only`);
    if ([id, ...id.split('.')].some(looksLikeCell)) found.push(`${id} looks like a cell`);
    if (parameters.some(({ repeating }) => repeating !== undefined)) found.push(`${id} has a repeating parameter`);
    if (parameters.some(({ optional }, i) => optional !== true && parameters[i - 1]?.optional === true))
      found.push(`${id}: optional before required`);
    for (const twice of repeated(parameters.map(parameter => parameter.name))) found.push(`${id} has two parameters ${twice}`);
    for (const option of Object.keys(options).filter(key => OPTIONS.test(key))) found.push(`${id} is marked ${option}`);
  }
  // a saved workbook writes dots as underscores
  for (const twice of repeated(functions.map(({ id }) => id.toUpperCase().replaceAll('.', '_'))))
    found.push(`${twice} is stored for two functions`);
  return found;
}

const metadata = METADATA as unknown as Metadata;

test('functions.json has no fault', () => {
  expect(metadata.functions.map(({ id }) => id).sort()).toEqual(Object.keys(RELEASED).sort());
  expect(faults(metadata)).toEqual([]);
});

describe('a fault is found', () => {
  const long = (length: number): string => 'x'.repeat(length);
  const parameter = (fun: Function): Function['parameters'][number] => fun.parameters[0] as Function['parameters'][number];
  const spoilt = (spoil: (first: Function, all: Metadata) => void): string[] => {
    const copy = structuredClone(metadata);
    const isFirst = ({ id }: Function): boolean => id === 'LENGTH.MM';
    copy.functions = [...copy.functions.filter(isFirst), ...copy.functions.filter(fun => !isFirst(fun))];
    spoil(copy.functions[0] as Function, copy);
    return faults(copy);
  };
  const rename =
    (id: string) =>
    (first: Function): void =>
      void Object.assign(first, { id, name: id });

  test.each<[string, (first: Function, all: Metadata) => void, string]>([
    ['an id of two letters', rename('AB'), '/functions/0/id must NOT have fewer than 3 characters'],
    ['an id of 65', rename('X'.repeat(65)), '/functions/0/id must NOT have more than 64 characters'],
    ['a name of 65', first => (first.name = 'X'.repeat(65)), '/functions/0/name must NOT have more than 64 characters'],
    [
      'a description of 1,025',
      first => (first.description = long(1025)),
      '/functions/0/description must NOT have more than 1024 characters',
    ],
    ['no description', first => (first.description = ''), '/functions/0/description must NOT have fewer than 1 characters'],
    [
      'a parameter name of 65',
      first => (parameter(first).name = long(65)),
      '/functions/0/parameters/0/name must NOT have more than 64 characters',
    ],
    [
      'a parameter text of 513',
      first => (parameter(first).description = long(513)),
      '/functions/0/parameters/0/description must NOT have more than 512 characters',
    ],
    [
      'a parameter without a text',
      first => (parameter(first).description = ''),
      '/functions/0/parameters/0/description must NOT have fewer than 1 characters',
    ],
    [
      '129 parameters',
      first => (first.parameters = Array.from({ length: 129 }, (_, i) => ({ name: `a${i}`, description: 'x' }))),
      '/functions/0/parameters must NOT have more than 128 items',
    ],
    [
      'a result of another form',
      first => (first.result.dimensionality = 'cube'),
      '/functions/0/result/dimensionality must be equal to one of the allowed values',
    ],
    ['no function', (_, all) => (all.functions = []), '/functions must NOT have fewer than 1 items'],
    [
      'a megabyte of text',
      (_, all) =>
        (all.functions = Array.from({ length: 900 }, (__, i) => ({
          ...(all.functions[0] as Function),
          id: `F.X${i}X`,
          name: `F.X${i}X`,
          description: long(1000),
        }))),
      'desktop Excel refuses more than 1000000',
    ],
    ['another name than id', first => (first.name = 'LENGTHS'), 'LENGTH.MM is called LENGTHS'],
    ['an underscore', rename('LENGTH_MM'), 'LENGTH_MM: letters, digits and single dots only'],
    ['two dots', rename('LENGTH..MM'), 'LENGTH..MM: letters, digits and single dots only'],
    ['a digit in front', rename('LENGTH.2D'), 'LENGTH.2D: letters, digits and single dots only'],
    ['a cell', rename('RIB1'), 'RIB1 looks like a cell'],
    ['the last cell', rename('XFD1048576'), 'XFD1048576 looks like a cell'],
    ['a cell in other words', rename('R1C1'), 'R1C1 looks like a cell'],
    ['a part that is a row', rename('BOSS.R2'), 'BOSS.R2 looks like a cell'],
    ['a repeating parameter', first => (parameter(first).repeating = true), 'LENGTH.MM has a repeating parameter'],
    [
      'optional before required',
      first =>
        (first.parameters = [
          { name: 'a', description: 'x', optional: true },
          { name: 'b', description: 'x' },
        ]),
      'LENGTH.MM: optional before required',
    ],
    ['a parameter twice', first => first.parameters.push(parameter(first)), 'LENGTH.MM has two parameters length'],
    ['a volatile function', first => (first.options = { volatile: true }), 'LENGTH.MM is marked volatile'],
    ['a streaming one', first => (first.options = { stream: true }), 'LENGTH.MM is marked stream'],
    ['an id twice', (first, all) => all.functions.push(first), 'LENGTH_MM is stored for two functions'],
  ])('%s', (_, spoil, fault) => {
    expect(
      spoilt(spoil).some(found => found.includes(fault)),
      spoilt(spoil).join('\n'),
    ).toBe(true);
  });

  test.each(['XFE1', 'XFD1048577', 'AAAA1', 'A0', 'RACE', 'CORE', 'RIB.HEIGHT'])('but %s is no cell', name =>
    expect(looksLikeCell(name)).toBe(false),
  );
});
