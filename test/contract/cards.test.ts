// Keystone: what Excel is told, what the cards say and what was released are one and the same.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test, vi } from 'vitest';
import type { Card, Param } from '../../src/core/card';
import { CARDS } from '../../src/registry';
import { ASSOCIATED, ERRORS, METADATA, type FunctionText } from '../../src/tools/metadata';
import { SIGNATURES } from './released';

vi.mock('../../functions/cell', () => {
  const noted = (id: string, args: readonly unknown[]): unknown[] => [id, ...args];
  const later = async (id: string, args: readonly unknown[]): Promise<unknown[]> => noted(id, args);
  return { cell: noted, printed: later, studied: later };
});

const src = path.join(import.meta.dirname, '../../src');
const cardSources = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter(name => name.endsWith('.cards.ts'))
  .map(name => readFileSync(path.join(src, name), 'utf8'));

const told = METADATA.functions;
const idsOf = (list: Iterable<{ readonly id: string }>): string[] => [...list].map(({ id }) => id).sort();
/** Those of a that b has not. */
const missing = (a: readonly string[], b: readonly string[]): string[] => a.filter(id => !b.includes(id));
const byId = new Map(told.map(text => [text.id, text]));
const firstSentence = (text: string): string => text.split(/(?<=\.)\s+(?=[A-Z])/)[0] ?? '';
const isMatrix = (x: { readonly dimensionality?: string } | undefined): boolean => x?.dimensionality === 'matrix';

describe('ids', () => {
  test('the generator of the build finds no fault in the wrappers', () => expect(ERRORS).toEqual([]));

  test('each once over all wrappers', () => expect(new Set(idsOf(told)).size).toBe(told.length));

  test('wrappers and cards', () => {
    const [wrapped, cards] = [idsOf(told), [...CARDS.keys()]];
    expect({ withoutWrapper: missing(cards, wrapped), withoutCard: missing(wrapped, cards) }).toEqual({
      withoutWrapper: [],
      withoutCard: [],
    });
  });

  test('cards and released signatures', () => {
    const [released, cards] = [idsOf(SIGNATURES), [...CARDS.keys()]];
    expect(released.length).toBeGreaterThanOrEqual(126);
    expect({ gone: missing(released, cards), notReleased: missing(cards, released) }, 'add what is new: npm run generate').toEqual({
      gone: [],
      notReleased: [],
    });
  });

  test('no id is given to two cards', () => {
    const ids = cardSources.flatMap(text =>
      [...text.matchAll(/\b(?:card|lookUp)(?:<[^(]*>)?\(\s*'([A-Z][A-Z0-9.]+)'/g)].map(([, id]) => id ?? ''),
    );
    expect(ids.sort()).toEqual([...CARDS.keys()].sort());
  });

  test.each(told.map(text => [text.id, text] as const))('%s is a name that a cell can hold', (id, { name }) => {
    expect(name).toBe(id);
    expect(id).toMatch(/^[A-Z][A-Z0-9]*(\.[A-Z][A-Z0-9]*)*$/);
    expect(id.length).toBeGreaterThanOrEqual(3);
    expect(id.length).toBeLessThanOrEqual(64);
    for (const part of [id, ...id.split('.')]) expect(part, 'looks like a cell').not.toMatch(/^([A-Z]{1,3}\d+|R\d*C\d*|R\d+|C\d+)$/);
  });
});

describe.each(SIGNATURES.map(released => [released.id, released] as const))('%s as released', (id, released) => {
  test('wrapper: arguments in order, the optional ones last, spill', () => {
    const text = byId.get(id);
    expect(text?.parameters.map(p => ({ name: p.name, optional: p.optional === true }))).toEqual(
      released.args.map(({ name, optional }) => ({ name, optional })),
    );
    expect(isMatrix(text?.result)).toBe(released.spills);
    expect(text?.parameters.every(p => p.type === 'any' && p.repeating === undefined)).toBe(true);
    const flags = released.args.map(({ optional }) => optional);
    expect(flags).toEqual([...flags].sort((a, b) => Number(a) - Number(b)));
  });

  test('card: arguments, ranges, spill', () => {
    const card = CARDS.get(id) as Card;
    expect(card.params.map(({ name, optional, kind }) => ({ name, optional, isRange: kind.shape !== 'one' }))).toEqual(released.args);
    expect(!['number', 'text'].includes(card.result.shape)).toBe(released.spills);
  });

  test('wrapper and card: ranges are matrices, single values are not', () => {
    const card = CARDS.get(id) as Card;
    const ranges = (list: readonly { readonly name: string }[], isRange: (i: number) => boolean): string[] =>
      list.filter((_, i) => isRange(i)).map(({ name }) => name);
    const parameters = byId.get(id)?.parameters ?? [];
    expect(ranges(parameters, i => isMatrix(parameters[i]))).toEqual(ranges(card.params, i => card.params[i]?.kind.shape !== 'one'));
  });
});

/** The words of a default in the text of its argument; none where the text says in its own what is taken. */
function defaultOf({ blank }: Param): string | undefined {
  if (blank === 'zero') return '0';
  if (typeof blank !== 'object') return undefined;
  if ('default' in blank) return String(blank.default);
  // what another argument brings along has no name of its own
  return blank.take === undefined ? blank.sameAs : undefined;
}

/** Units of the numbers that come out; a table has a header with its own. */
function unitsOf({ result }: Card): string[] {
  const units =
    result.shape === 'number' || result.shape === 'column'
      ? [result.unit]
      : result.shape === 'row'
        ? result.columns.map(({ unit }) => unit)
        : [];
  return [...new Set(units)].filter(unit => unit !== '');
}

/** Zero is read and then not in the table. */
const NO_ZERO = ['TOL.IT grade'];

const UNIT_WORDS: Readonly<Record<string, string>> = {
  mm: 'mm',
  '°': 'degrees',
  N: 'N',
  'N·m': 'N·m',
  MPa: 'MPa',
  g: 'g',
  s: 's',
  Hz: 'Hz',
  '1e-6': '1e-6',
};

describe.each(told.map(text => [text.id, text] as const))('%s in words', (id, text: FunctionText) => {
  test('the description fits the boxes of Excel', () => {
    expect(text.description).toMatch(/^[A-Z].*\.$/s);
    expect(text.description.length).toBeLessThanOrEqual(1024);
    expect(firstSentence(text.description).length).toBeLessThanOrEqual(120);
    expect(text.description).not.toMatch(/\[object|\b(mold|center|gage|aluminum)\b/);
  });

  test('every argument has a text that fits, with its default', () => {
    const { params } = CARDS.get(id) as Card;
    expect(text.parameters.length).toBe(params.length);
    text.parameters.forEach(({ name, description }, i) => {
      expect(description, name).toMatch(/\S{1,}.{3,}/);
      expect(description.length, name).toBeLessThanOrEqual(100);
      expect(name).toMatch(/^[a-z][a-z0-9_]*$/);
      const param = params[i] as Param;
      const fallback = defaultOf(param);
      if (!param.optional) return expect(description, name).not.toContain('if omitted');
      if (fallback === undefined) return expect(description, name).toContain('if omitted');
      const other = params.some(one => one.name === fallback);
      expect(
        description.endsWith(other ? `the same as ${fallback} if omitted` : `${fallback} if omitted`) ||
          description.endsWith(`"${fallback}" if omitted`),
        `${name}: ${description}`,
      ).toBe(true);
    });
  });

  test('a text says what a blank of a required argument means', () => {
    text.parameters.forEach(({ name, description }, i) => {
      const { blank } = (CARDS.get(id) as Card).params[i] as Param;
      expect(description.includes('a blank is 0'), `${name}: ${description}`).toBe(
        blank === 'zero' && !NO_ZERO.includes(`${id} ${name}`) && CARDS.get(id)?.params[i]?.optional === false,
      );
      if (blank === 'explicit') expect(description, name).toMatch(/"0°"/);
    });
  });

  test('the first sentence names the unit of the result', () => {
    const units = unitsOf(CARDS.get(id) as Card);
    const named = Object.keys(UNIT_WORDS).filter(
      unit => ` ${firstSentence(text.description)} `.match(new RegExp(`[\\s(±]${UNIT_WORDS[unit]}[\\s,:;.)]`)) !== null,
    );
    expect(missing(units, named), firstSentence(text.description)).toEqual([]);
    if (['number', 'row', 'column'].includes((CARDS.get(id) as Card).result.shape))
      expect(missing(named, units), firstSentence(text.description)).toEqual([]);
  });
});

describe('every wrapper hands its arguments on', () => {
  test.each(ASSOCIATED.map(a => [a.id, a] as const))('%s', async (id, { functionName, sourceFileName }) => {
    const module = (await import(sourceFileName)) as Record<string, (...args: unknown[]) => unknown>;
    const args = byId.get(id)?.parameters.map(({ name }) => name) ?? [];
    expect(await module[functionName]?.(...args)).toEqual([id, ...args]);
  });
});
