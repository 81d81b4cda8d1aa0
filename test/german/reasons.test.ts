// Findings in German beside the English: the same numbers, and no English word but names of the joint.
import { expect, it } from 'vitest';
import { CAUTIONS } from '../../src/german/cautions';
import { limitInGerman, reasonInGerman } from '../../src/german/reasons';
import type { Cell } from '../../src/core/kinds';
import { variantsOf } from '../../src/joint/table';
import { RULES } from '../../src/joint/rules';
import { sentence } from '../../src/joint/words';
import { CARDS } from '../../src/registry';
import { SOUND } from '../kit/sound-joint';

const ENGLISH = /\b(needs|has|the|too|is|not|passes|with|at least|at most|under|of a)\b/;
const numbers = (text: string): string[] => text.match(/\d+(?:[.]\d+)?/g) ?? [];

it('says every finding with the numbers of the English', () => {
  const changes = [
    { length: 12 },
    { length: 25 },
    { 'hole depth': 15.6 },
    { wall: 1.5 },
    { head: 'countersunk' },
    { screw: 'M3', pilot: 2.5 },
  ];
  const more = [{ 'boss OD': 4.2 }, { hole: 5 }, { pilot: 2.9 }, { seat: 0.6 }, { 'boss height': 30 }, { length: 18.6 }];
  const findings = [...changes, ...more].flatMap(change =>
    variantsOf(Object.entries({ ...SOUND, ...change }) as Cell[][]).flatMap(variant => variant.findings()),
  );
  const broken = findings.filter(({ state, refusal }) => (state === 'fail' || state === 'review') && refusal === undefined);
  expect(broken.length).toBeGreaterThan(8);
  for (const finding of broken) {
    const german = reasonInGerman(finding);
    expect([german, numbers(german)]).toEqual([german, numbers(sentence(finding))]);
    expect(german.replaceAll(finding.rule.value, '')).not.toMatch(ENGLISH);
  }
});

it('has German for what each rule says on a map', () => {
  for (const { broken, doubtful } of RULES)
    for (const words of [broken, ...(doubtful === undefined ? [] : [doubtful])]) expect(limitInGerman(words, RULES)).not.toBe(words);
});

it('has the numbers of each caution', () => {
  expect(Object.keys(CAUTIONS).length).toBeGreaterThan(60);
  for (const [id, german] of Object.entries(CAUTIONS)) {
    const english = (CARDS.get(id)?.caution ?? '').replaceAll(/20,000/g, '20000').replaceAll('3 standard', '3');
    const own = german
      .replaceAll('20.000', '20000')
      .replaceAll(/(\d),(\d)/g, '$1.$2')
      .replaceAll('1,8-Fachen', '1.8');
    const sorted = (text: string) => numbers(text).sort();
    expect([id, sorted(own)]).toEqual([id, sorted(english)]);
  }
});
