// The call in which the caret stands while a formula is typed.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { callsAt, type TypedCall } from '../../src/sheet/typed-call';
import { SEED } from '../kit/seed';

/** The caret is where the bar is. */
const at = (marked: string): TypedCall[] => callsAt(marked.replace('|', ''), marked.indexOf('|'));

test.each<[marked: string, name: string | undefined, argument: number]>([
  ['=ENCL.BOSS.OD(|', 'ENCL.BOSS.OD', 0],
  ['=encl.boss.od(3|', 'ENCL.BOSS.OD', 0],
  ['=ENCL.BOSS.OD(3,|', 'ENCL.BOSS.OD', 1],
  ['=ENCL.BOSS.OD(|3,1.2)', 'ENCL.BOSS.OD', 0],
  ['=ENCL.BOSS.OD(3,1.2|)', 'ENCL.BOSS.OD', 1],
  ['=ENCL.BOSS.OD(3,1.2)|', undefined, 0],
  ['=ENCL.BOSS.O|D(3,1.2)', undefined, 0],
  ['=ENCL.GRIP({1,2,|', undefined, 0],
  ['=ENCL.HEAD("a, (b|', 'ENCL.HEAD', 0],
  ['=ENCL.HEAD("a, (b", |', 'ENCL.HEAD', 1],
  ["=ENCL.HEAD('my, sheet'!A1, |", 'ENCL.HEAD', 1],
  ['=1+(2+|', undefined, 0],
  ['=IF((A1>2,|', undefined, 0],
  ['ENCL.BOSS.OD(|', undefined, 0],
])('%s', (marked, name, argument) => {
  const [call] = at(marked).filter(each => each.name.startsWith('ENCL.') || name === undefined);
  if (name === undefined) expect(call?.name.startsWith('ENCL.') === true && !marked.includes('{')).toBe(false);
  else expect(call).toEqual({ name, argument });
});

test('the calls around it follow, the innermost first', () => {
  expect(at('=ROUND(ENCL.BOSS.OD(3,IF(A1,2,|')).toEqual([
    { name: 'IF', argument: 2 },
    { name: 'ENCL.BOSS.OD', argument: 1 },
    { name: 'ROUND', argument: 0 },
  ]);
});

interface Written {
  readonly text: string;
  /** Places of the caret in it, with the call and the argument there; undefined outside of calls. */
  readonly carets: readonly { readonly at: number; readonly call: TypedCall | undefined }[];
}

const atom = fc
  .constantFrom('', '3', '1.5', 'A1', '$B$4:C9', '"a, (b) ""c"" {"', "'Sheet, (1)'!A1", '-2', '{1,2;3,4}', '3 mm', 'TRUE', '(1+2)*3')
  .map((text): Written => ({ text, carets: [{ at: text.length, call: undefined }] }));

const { formula } = fc.letrec<{ formula: Written; call: Written }>(tie => ({
  formula: fc.oneof({ depthSize: 'small', withCrossShrink: true }, atom, tie('call')),
  call: fc
    .record({
      name: fc.constantFrom('ENCL.BOSS.OD', 'ENCL.JOINT.TABLE', 'IF', 'ROUND', 'encl.grip'),
      parts: fc.array(tie('formula'), { minLength: 1, maxLength: 4 }),
    })
    .map(({ name, parts }): Written => {
      let text = `${name}(`;
      const carets: Written['carets'][number][] = [];
      parts.forEach((part, argument) => {
        if (argument > 0) text += ',';
        for (const caret of part.carets)
          carets.push({ at: text.length + caret.at, call: caret.call ?? { name: name.toUpperCase(), argument } });
        text += part.text;
      });
      return { text: `${text})`, carets };
    }),
}));

test('wherever calls stand in one another, the call and the argument are the ones that were written there', () => {
  let compared = 0;
  fc.assert(
    fc.property(formula, ({ text, carets }) => {
      for (const { at: caret, call } of carets) {
        expect(callsAt(`=${text}`, caret + 1)[0], `=${text} at ${caret + 1}`).toEqual(call);
        // What is still to be typed changes nothing.
        expect(callsAt(`=${text.slice(0, caret)}`, caret + 1)[0]).toEqual(call);
        compared++;
      }
    }),
    { seed: SEED, numRuns: 500 },
  );
  expect(compared).toBeGreaterThan(1000);
});
