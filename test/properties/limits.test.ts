// At and beyond each limit of each argument the function refuses, names the argument and says the limit; inside it does not.
import { describe, expect, test } from 'vitest';
import { type Card, NOTHING_READ, type Param } from '../../src/core/card';
import type { Limits } from '../../src/core/kinds';
import { withinLimits } from '../../src/core/read/limits';
import { CARDS, call } from '../../src/registry';
import { exampleWith, isWhole, offered } from '../kit/arguments';

interface Case {
  readonly id: string;
  readonly card: Card;
  readonly param: Param;
  readonly i: number;
}

const all: readonly Case[] = [...CARDS.values()].flatMap(card => card.params.map((param, i) => ({ id: card.id, card, param, i })));

/** A bare 0 could be a blank; with its unit it is a zero. A ratio has no unit, but "0" is no blank. */
function written(value: number, { kind }: Param): (number | string)[] {
  const unit = { mm: ' mm', '°': '°', N: ' N', 'N·m': ' N·m', MPa: ' MPa', 'g/cm³': ' g/cm³', 'mm²/s': ' mm²/s' }[kind.unit] ?? '';
  return value === 0 ? [`0${unit}`] : [value, `${value}${unit}`];
}

/** A step that a length can show. */
const STEP = 1e-6;

interface Edge {
  readonly words: string;
  readonly inside: number;
  readonly refused: readonly number[];
}

function edges({ above, atLeast, below, atMost }: Limits, step: number): Edge[] {
  const far = 1e6;
  return [
    ...(above === undefined ? [] : [{ words: `above ${above}`, inside: above + step, refused: [above, above - step, above - far] }]),
    ...(atLeast === undefined ? [] : [{ words: `at least ${atLeast}`, inside: atLeast, refused: [atLeast - step, atLeast - far] }]),
    ...(below === undefined ? [] : [{ words: `below ${below}`, inside: below - step, refused: [below, below + step, below + far] }]),
    ...(atMost === undefined ? [] : [{ words: `at most ${atMost}`, inside: atMost, refused: [atMost + step, atMost + far] }]),
  ];
}

const limited = all
  .filter(({ param }) => param.limits !== undefined)
  .flatMap(one =>
    edges(one.param.limits as Limits, isWhole(one.param) ? 1 : STEP).map(edge => ({
      ...one,
      edge,
      name: one.param.name,
      words: edge.words,
    })),
  );

describe('limits', () => {
  test('count', () => expect(limited.length).toBeGreaterThan(250));

  test('what a message gives as an example is within them', () => {
    const shown = all.flatMap(({ id, param }) =>
      param.kind.is !== 'quantity' || param.limits === undefined
        ? []
        : param.kind.quantity.example
            .split(/, | or /)
            .filter(text => /\d/.test(text))
            .map(text => ({ id, param, text: text.replaceAll('"', '') })),
    );
    expect(shown.length).toBeGreaterThan(400);
    const outside = shown.filter(({ param: { kind, limits }, text }) => !withinLimits(kind.read(text, NOTHING_READ) as number, limits));
    expect(outside.map(({ id, param, text }) => `${id} ${param.name}: ${text}`)).toEqual([]);
  });

  test.each(limited)('$id $name $words', ({ id, card, param, i, edge }) => {
    for (const value of edge.refused.flatMap(v => written(v, param))) {
      const answer = call(id, exampleWith(card, i, value));
      expect(answer, String(value)).toMatchObject({ ok: false, code: '#VALUE!', argument: param.name });
      // an argument that must fit an earlier one may say that first
      if (!answer.ok)
        expect(answer.message).toMatch(
          new RegExp(`must be (.* and )?${edge.words}|, (.* and )?${edge.words}|must be (above|below) [a-z_]+$`),
        );
    }
    for (const value of written(edge.inside, param)) {
      const answer = call(id, exampleWith(card, i, value));
      if (!answer.ok) expect(answer.message, String(value)).not.toContain(`must be ${edge.words}`);
    }
  });
});

const related = all.flatMap(one => {
  const { relation } = one.param;
  const [, side, earlier] = /^(below|above) (\w+)$/.exec(relation !== undefined && 'words' in relation ? relation.words : '') ?? [];
  return side === undefined || earlier === undefined ? [] : [{ ...one, name: one.param.name, side, earlier }];
});

describe('an argument that must fit an earlier one', () => {
  test('count', () => expect(related.length).toBeGreaterThan(5));

  test.each(related)('$id $name $side $earlier', ({ id, card, param, i, side, earlier }) => {
    const j = card.params.findIndex(({ name }) => name === earlier);
    const limit = 10;
    const base = exampleWith(card, j, limit);
    for (const value of [limit, side === 'below' ? limit + STEP : limit - STEP]) {
      const answer = call(
        id,
        base.map((arg, k) => (k === i ? value : arg)),
      );
      expect(answer, String(value)).toMatchObject({ ok: false, code: '#VALUE!', argument: param.name });
      if (!answer.ok) expect(answer.message).toContain(`must be ${side} ${earlier}`);
    }
  });
});

const offers = all.flatMap(one => offered(one.param).map(text => ({ ...one, name: one.param.name, text })));

describe('what a message offers is accepted', () => {
  test('count', () => expect(offers.length).toBeGreaterThan(600));

  test.each(offers)('$id $name "$text"', ({ id, card, param, i, text }) => {
    const answer = call(id, exampleWith(card, i, text));
    // a sound text may still break a limit, a rule or a table
    if (!answer.ok && answer.argument === param.name) expect(answer.message).not.toMatch(/: (not an?|put the name|give one of)\b/);
  });
});

const lists = all.filter(({ param }) => param.kind.shape === 'list');

describe('a bare 0 in a list is refused, and what the message asks for is accepted', () => {
  test('count', () => expect(lists.length).toBeGreaterThan(30));

  test.each(lists.map(one => ({ ...one, name: one.param.name })))('$id $name', ({ id, card, param, i }) => {
    const rows = Math.max(2, ...card.example.args.map(arg => (Array.isArray(arg) ? arg.length : 0)));
    const headed = (first: unknown): unknown => Array.from({ length: rows }, (_, row) => [row === 0 ? first : 1]);
    for (const blank of [0, null, '']) {
      const answer = call(id, exampleWith(card, i, headed(blank)));
      if (answer.ok) continue;
      expect(answer).toMatchObject({ code: '#VALUE!', argument: param.name });
      const [, written] = /write "(.+?)" for a true zero/.exec(answer.message) ?? [];
      if (written === undefined) continue;
      const followed = call(id, exampleWith(card, i, headed(written)));
      if (!followed.ok) expect(followed.message).not.toMatch(/row 1/);
    }
  });
});

/** A layer may be none, written with its unit; a joint has a depth. */
const MAY_BE_NONE = ['layers', 'grip', 'grips', 'boss_layers', 'rim_layers'];

describe('lists of sizes hold nothing below zero', () => {
  const sizes = all.filter(({ param }) => ['layers', 'grip', 'grips', 'hole_depths', 'boss_layers', 'rim_layers'].includes(param.name));
  test('count', () => expect(sizes.length).toBe(13));

  test.each(sizes.map(one => ({ ...one, name: one.param.name })))('$id $name', ({ id, card, param, i }) => {
    const mayBeNone = MAY_BE_NONE.includes(param.name);
    if (mayBeNone) expect(call(id, exampleWith(card, i, [[1], ['0 mm']])), '0 mm').toMatchObject({ ok: true });
    for (const value of [...(mayBeNone ? [] : ['0 mm']), -1, '-0.1 mm']) {
      const answer = call(id, exampleWith(card, i, [[1], [value]]));
      expect(answer, String(value)).toMatchObject({ ok: false, code: '#VALUE!', argument: param.name });
      if (!answer.ok) expect(answer.message).toContain('row 2 is');
      if (!answer.ok) expect(answer.message).toContain(mayBeNone ? 'at least 0 mm' : 'above 0 mm');
    }
  });
});
