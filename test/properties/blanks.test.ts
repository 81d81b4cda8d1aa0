// A blank cell reaches a function as 0, as null or as "", a left-out argument as null; they never differ in meaning, and the card says
// which it is.
import { describe, expect, test } from 'vitest';
import { readArguments, type Outcome } from '../../src/core/call';
import type { Card, Param } from '../../src/core/card';
import { CARDS, call } from '../../src/registry';
import { exampleWith } from '../kit/arguments';

/** Arguments of a call that is only quoted: there a 0 is shown as it was given. */
const QUOTED = ['REASON', 'WORKING'];

const all = [...CARDS.values()]
  .filter(({ id }) => !QUOTED.includes(id))
  .flatMap(card => card.params.map((param, i) => ({ id: card.id, name: param.name, card, param, i })));

/** Text names something: there a 0 is a wrong name, and as wrong as a blank. */
const BLANKS: readonly unknown[] = [null, undefined, '', '   ', '\u00a0', 0, -0];

const ask = (card: Card, i: number, value: unknown): Outcome => call(card.id, exampleWith(card, i, value));
const ofRange = (value: unknown): unknown => [[value]];

/** The wording may say `blank` or `0 or blank`; the meaning may not differ. */
function meaning(answer: Outcome): unknown {
  return answer.ok ? answer.value : { code: answer.code, argument: answer.argument };
}

describe('0, blank, "" and left out mean the same', () => {
  test('count', () => expect(all.length).toBeGreaterThan(350));

  test.each(all)('$id $name', ({ card, i }) => {
    const first = meaning(ask(card, i, null));
    for (const blank of BLANKS) {
      expect(meaning(ask(card, i, blank)), `as ${String(blank)}`).toEqual(first);
      expect(meaning(ask(card, i, ofRange(blank))), `as a cell with ${String(blank)}`).toEqual(first);
    }
  });
});

/** What the card says a blank stands for, written so that it cannot be one. */
function written({ kind }: Param, value: number | string): unknown {
  if (typeof value === 'string' || value !== 0) return value;
  return { mm: '0 mm', '°': '0°', N: '0 N', 'N·m': '0 N·m', MPa: '0 MPa' }[kind.unit] ?? '0';
}

describe('a blank is what the card says', () => {
  test.each(all.filter(({ param }) => !param.kind.takesEverything))('$id $name', ({ id, card, param, i }) => {
    const answer = ask(card, i, null);
    const { blank, name } = param;
    if (blank === 'absent' || (typeof blank === 'object' && 'take' in blank))
      return expect(answer.ok || answer.argument !== undefined).toBe(true);
    if (blank === 'refused' || blank === 'explicit') {
      expect(answer).toMatchObject({ ok: false, code: '#VALUE!', argument: name });
      if (blank === 'explicit') expect(ask(card, i, written(param, 0))).toMatchObject({ ok: true });
      return;
    }
    if (blank === 'zero') return expect(meaning(answer)).toEqual(meaning(ask(card, i, written(param, 0))));
    if ('default' in blank) return expect(meaning(answer)).toEqual(meaning(ask(card, i, written(param, blank.default))));
    const same = card.params.findIndex(p => p.name === blank.sameAs);
    expect(same, `${id} has no ${blank.sameAs}`).toBeGreaterThanOrEqual(0);
    const stand =
      blank.take === undefined ? card.example.args[same] : blank.take(readArguments(card, exampleWith(card, i, null))[same] as never);
    expect(meaning(answer)).toEqual(meaning(ask(card, i, stand)));
  });
});

/** A zero of these is written with its unit; a bare 0 is the default, and their help says so. */
const ZERO_BY_UNIT = [
  'HOLE.RELIEF play',
  'RECESS.TOOL margin',
  'TORQUE.SET share',
  'TORQUE.WINDOW scatter',
  'POSITION.ZONE dy',
  'NUT.POCKET allowance',
  'NUT.POCKET.CORNER allowance',
  'INSERT.HOLE.DEPTH margin',
];

describe('what a blank may be', () => {
  // a bare 0 inside a range is refused, so only single values can be mistaken
  test.each(all.filter(({ param }) => param.kind.shape !== 'list'))(
    '$id $name: optional with a default or none, never 0 with another meaning',
    ({ id, card, param, i }) => {
      const { blank, optional, limits } = param;
      if (ZERO_BY_UNIT.includes(`${id} ${param.name}`)) {
        const zero = ask(card, i, param.kind.unit === 'mm' ? '0 mm' : '0 %');
        expect(zero).toMatchObject({ ok: true });
        return expect(meaning(zero)).not.toEqual(meaning(ask(card, i, 0)));
      }
      if (typeof blank === 'object') {
        expect(optional).toBe(true);
        if ('default' in blank && typeof blank.default === 'number' && blank.default !== 0) {
          const { above = -Infinity, atLeast = -Infinity, below = Infinity, atMost = Infinity } = limits ?? {};
          const zeroFits = 0 > above && 0 >= atLeast && 0 < below && 0 <= atMost;
          expect(zeroFits, 'a 0 that could be meant would be read as the default').toBe(false);
        }
      } else if (blank !== 'absent') expect(optional).toBe(false);
    },
  );
});

describe('rows at the end that are empty in every range are ignored', () => {
  /** Lists of one group belong together; a card whose other ranges are rectangles counts their rows as well. */
  const lists = [...CARDS.values()].filter(
    ({ params, example }) =>
      params.some((p, i) => p.kind.shape === 'list' && Array.isArray(example.args[i])) &&
      !params.some((p, i) => p.kind.shape === 'block' && Array.isArray(example.args[i])),
  );
  test('count', () => expect(lists.length).toBeGreaterThan(8));

  test.each(lists.map(card => [card.id, card] as const))('%s', (id, card) => {
    const plain = call(id, card.example.args);
    expect(plain.ok).toBe(true);
    for (const blank of [0, null, '']) {
      const longer = card.example.args.map((arg, i) =>
        card.params[i]?.kind.shape === 'list' && Array.isArray(arg) ? [...(arg as unknown[][]), [blank], [blank]] : arg,
      );
      expect(call(id, longer)).toEqual(plain);
    }
  });
});
