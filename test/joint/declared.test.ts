// A node or a rule that is declared wrongly does not compile: npm run types fails where one of these does.
import { expect, test } from 'vitest';
import { sinkRatio } from '../../src/core/boss/boss';
import { made, nodesOn, type NamesOf, type Rule, type Values } from '../../src/joint/graph';
import type { INPUT, InputName } from '../../src/joint/inputs';
import type { NODE } from '../../src/joint/nodes';

const declared = nodesOn<typeof INPUT>();
const about = { unit: '', meaning: 'boss wall at the root ÷ wall' };
type All = Values<typeof INPUT, typeof NODE>;
type AnyRule = Rule<NamesOf<All, number>, NamesOf<All, boolean>, InputName>;
const rule = {
  name: 'no sink',
  broken: 'sink',
  value: 'sink ratio',
  basis: 'wall',
  source: 'common practice',
  moves: ['wall'],
} as const satisfies AnyRule;

test('what is right compiles', () => {
  expect(declared({ sink: { ...about, ...made(sinkRatio, 'boss height', 'wall') } }).sink.args).toEqual(['boss height', 'wall']);
  expect(rule.moves).toEqual(['wall']);
});

test('a misspelt name, a value of another type and an argument too many do not', () => {
  // @ts-expect-error no such name
  declared({ sink: { ...about, ...made(sinkRatio, 'boss hight', 'wall') } });
  // @ts-expect-error a head is no length
  declared({ sink: { ...about, ...made(sinkRatio, 'head', 'wall') } });
  // @ts-expect-error it takes two
  declared({ sink: { ...about, ...made(sinkRatio, 'boss height', 'wall', 'seat') } });
  // @ts-expect-error there may be no board hole
  declared({ sink: { ...about, ...made(sinkRatio, 'board hole', 'wall') } });
  // @ts-expect-error no such condition
  declared({ sink: { ...about, ...made(sinkRatio, 'boss height', 'wall'), where: ['has seat'] } });
});

test('a rule about what is no size, under what is no condition, or mended by what is no input does not', () => {
  // @ts-expect-error a head has no limit
  expect({ ...rule, value: 'head' } satisfies AnyRule).toBeDefined();
  // @ts-expect-error a size is no condition
  expect({ ...rule, when: ['seat'] } satisfies AnyRule).toBeDefined();
  // @ts-expect-error a result is not moved
  expect({ ...rule, moves: ['sink ratio'] } satisfies AnyRule).toBeDefined();
});
