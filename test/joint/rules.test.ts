// What is said of the rules of the joint (their limits: limits.test.ts), the forms in which a joint may be given, and what its card says.
import { describe, expect, test } from 'vitest';
import { jointCells, jointTable, variantBlock, variantsOf } from '../../src/joint/table';
import { refusal, value } from '../kit/ask';
import { type Inputs, SOUND } from '../kit/sound-joint';

type Rows = unknown[][];

const block = (inputs: Inputs): Rows => [Object.keys(inputs), Object.values(inputs)];
const beside = (inputs: Inputs): Rows => Object.entries(inputs);
const cells = (inputs: Inputs, ...outputs: string[]): unknown[] => (value('JOINT.TABLE', block(inputs), [outputs]) as Rows)[1] as unknown[];
const ruleOf = (inputs: Inputs, name: string): unknown[] | undefined =>
  (value('CHECK.JOINT', beside(inputs)) as Rows).find(row => row[0] === name);
const state = (inputs: Inputs, name: string): unknown => ruleOf(inputs, name)?.[4] ?? 'left out';

test('the sound joint passes, and has no reason to give', () => {
  expect(cells(SOUND, 'state', 'reason', 'all computed')).toEqual(['pass', '–', true]);
  for (const row of (value('CHECK.JOINT', beside(SOUND)) as Rows).slice(1)) expect([row[4], row[6]]).toEqual(['pass', '–']);
});

describe('what is said of a rule', () => {
  test('a rule says value, limit and basis, and an unchecked one why', () => {
    expect(ruleOf({ ...SOUND, ratio: 2.6 }, 'engagement')?.slice(1, 6)).toEqual([
      expect.closeTo(7.34 / 2.9, 9),
      2.6,
      'worst-case full thread ÷ d',
      'fail',
      'common practice',
    ]);
    expect(ruleOf(SOUND, 'slenderness')?.slice(1, 3)).toEqual([14 / 6, 5]);
    expect(ruleOf({ ...SOUND, gap: 0.1 }, 'planned gap (boss hangs in tension)')?.slice(1, 3)).toEqual([0.1, 0]);
    expect(ruleOf(SOUND, 'core pin')?.[2]).toBe(10);
    expect(ruleOf({ ...SOUND, 'pin limit': 5 }, 'core pin')?.[2]).toBe(5);
    expect(ruleOf({ ...SOUND, 'boss height': null }, 'slenderness')?.slice(1)).toEqual([
      expect.stringMatching(/^no value: boss height is blank/),
      '–',
      'boss height ÷ outside diameter',
      'not checked',
      'common practice',
      'correct the input that is named',
    ]);
    expect(cells({ ...SOUND, 'boss height': null }, 'all computed', 'reason')).toEqual([
      false,
      expect.stringMatching(/: not checked: boss height is blank/),
    ]);
  });

  test('of a raised head only the raised part stands above the recess floor: O 0.104 − H 0.067 in (ASME B18.6.3, H from memory), f 0.7 (ISO 7047)', () => {
    const raised = (screw: string, length: number): unknown =>
      cells({ ...SOUND, screw, head: 'raised countersunk', length }, 'subflush')[0];
    expect(raised('#4 B', 15.875)).toBeCloseTo(3 - (0.104 - 0.067) * 25.4, 9);
    expect(raised('M3', 16)).toBeCloseTo(3 - 0.7, 9);
  });

  test('the reason is that of the first rule of the worst state', () => {
    expect(cells({ ...SOUND, gap: 0.1, ratio: 3 }, 'state', 'reason')).toEqual([
      'fail',
      'too little full thread: needs engagement ratio at least 3, has 2.462',
    ]);
    expect(cells({ ...SOUND, 'slender limit': 2, 'pin limit': 5 }, 'state', 'reason')).toEqual([
      'review',
      'boss is slender: needs slenderness at most 2, has 2.333',
    ]);
  });

  test('no stock length is an answer of the joint, any other missing length is not checked', () => {
    const joint = { ...SOUND, length: 'default' };
    expect(state({ ...joint, 'hole depth': 8 }, 'a standard length exists')).toBe('fail');
    expect(state({ ...joint, 'hole depth': { cellError: '#N/A' } }, 'a standard length exists')).toBe('not checked');
    expect(state({ ...joint, 'hole depth': 8 }, 'screw clears the bottom')).toBe('not checked');
  });

  test('base functions keep their limits: a screw that does not reach the boss has no pilot at its tip', () => {
    const short = { ...SOUND, length: 4.5, 'board plane': 8, seat: 5 };
    expect(cells({ ...short, 'pilot held at': 'mouth' }, 'pilot at tip')[0]).toMatch(
      /^no value: depth of HOLE\.AT is -\d\.\d+: must be at least 0 mm$/,
    );
    expect(cells(short, 'pilot mouth')[0]).toMatch(/^no value: depth of HOLE\.MOUTH is -\d\.\d+: must be at least 0 mm$/);
  });
});

describe('the forms in which a joint is given', () => {
  const card = (inputs: Rows, ...rest: unknown[]): Rows => value('JOINT.CARD', inputs, ...rest) as Rows;
  const engagementOf = (rows: Rows): unknown => rows.find(([name]) => name === 'engagement min')?.[1];

  test('two columns, or a header row with a row for each variant, are the same joint', () => {
    expect(card(beside(SOUND))).toEqual(card(block(SOUND)));
    expect(engagementOf(card([...block(SOUND), Object.values({ ...SOUND, length: 19 })], 2))).toBeCloseTo(7.34 + 3, 9);
    expect(refusal('JOINT.CARD', block(SOUND), 2)).toBe('#VALUE! variant is 2; inputs has 1');
  });

  test('blank rows between names do not count; a name twice or unknown does', () => {
    expect(card([['', ''], [0, 0], ...beside(SOUND), [null, null]])).toEqual(card(beside(SOUND)));
    expect(refusal('CHECK.JOINT', [...beside(SOUND), ['wall', 3]])).toBe('#VALUE! inputs has "wall" twice');
    expect(refusal('CHECK.JOINT', [...beside(SOUND), ['wal', 3]])).toBe(
      '#VALUE! inputs: "wal" is not a name of a joint input; did you mean "wall"? JOINT.INPUTS() lists them',
    );
  });

  test('two names in the first row of two columns are a header', () => {
    expect(
      engagementOf(
        card([
          ['screw', 'head'],
          ['ST2.9', 'pan'],
        ]),
      ),
    ).toMatch(/^no value: /);
    expect(
      (
        value(
          'JOINT.TABLE',
          [
            ['screw', 'Length'],
            ['ST2.9', 16],
          ],
          [['screw length']],
        ) as Rows
      )[1],
    ).toEqual([16]);
    expect(
      card(
        [
          ['screw', 'head'],
          ['ST2.9', 'pan'],
          ['M3', 'pan'],
        ],
        2,
      ).find(([name]) => name === 'weakest')?.[1],
    ).toMatch(/^no value: /);
  });

  test('a number may stand in the first of two columns of names and values', () => {
    const { wall, ...rest } = SOUND;
    expect(card([['wall', wall], ...beside(rest)])).toEqual(card(beside({ wall, ...rest })));
    expect(engagementOf(card([['wall', wall], ...beside(rest)]))).toBeCloseTo(7.34, 9);
  });

  test('a header row stays one with a blank or a wrong name in it, and a name beside its value alone is none', () => {
    const blankBehind = [
      [...Object.keys(SOUND), ''],
      [...Object.values(SOUND), null],
    ];
    expect(card(blankBehind)).toEqual(card(block(SOUND)));
    expect(
      refusal('CHECK.JOINT', [
        ['wall', 'seatt', 'screw'],
        [3, 2, 'ST2.9'],
      ]),
    ).toBe('#VALUE! inputs: "seatt" is not a name of a joint input; did you mean "seat"? JOINT.INPUTS() lists them');
    expect(refusal('CHECK.JOINT', [['wall', 3]])).toBe('#VALUE! inputs: 3 is not a name of a joint input; JOINT.INPUTS() lists them');
  });

  test('a range of no cells has no names', () => {
    for (const id of ['JOINT.TABLE', 'JOINT.CARD', 'CHECK.JOINT']) expect(refusal(id, [])).toMatch(/^#VALUE! inputs /);
    expect(() => variantBlock([])).toThrow('inputs has no names in its first row');
    expect(() => variantsOf([])).toThrow('inputs has no names in its first row');
  });

  test('20,000 cells with the row of names, and no more; the same rows without that limit', () => {
    const asked = [new Array<string>(40).fill('feature wall')];
    const rows = (n: number): Rows => [['wall'], ...Array.from({ length: n }, () => [2.5])];
    expect(value('JOINT.TABLE', rows(499), asked)).toHaveLength(500);
    expect(refusal('JOINT.TABLE', rows(500), asked)).toMatch(/20040 cells; at most 20000/);
    expect(() => jointCells(rows(500), asked, undefined)).toThrow('the result has 20040 cells; at most 20000 are given');
    expect(jointTable(rows(500), asked)[500]).toEqual(new Array<number>(40).fill(1.5));
  });

  test('names in any case, with spaces or underscores', () => {
    expect(value('JOINT.VALUE', [[' BOARD_PLANE', 'seat', 'Screw', 'wall']], [[5.5, 2.5, 'ST2.9', 2.5]], 'Recess  depth ')).toBe(3);
    expect(value('JOINT.VALUE', [['board\u00a0plane', 'seat', 'screw', 'wall']], [[5.5, 2.5, 'ST2.9', 2.5]], 'recess_depth')).toBe(3);
  });

  test('what is no name', () => {
    expect(refusal('JOINT.VALUE', [['wall', { cellError: '#REF!' }]], [[1, 2]], 'grip')).toBe('#REF! names has #REF! for a name');
    expect(refusal('JOINT.VALUE', [[5, 'wall']], [[1, 2]], 'grip')).toBe(
      '#VALUE! names: 5 is not a name of a joint input; JOINT.INPUTS() lists them',
    );
    expect(refusal('JOINT.VALUE', [['wall', 'screw']], [[1, 2, 3]], 'grip')).toBe(
      '#VALUE! names has 2 cells and values has 3; give equal counts',
    );
    expect(
      refusal(
        'JOINT.VALUE',
        [
          ['wall', 'screw'],
          ['seat', 'gap'],
        ],
        [[1, 2]],
        'grip',
      ),
    ).toBe('#VALUE! names: give one row or one column');
    expect(
      refusal('JOINT.TABLE', [
        [0, ''],
        [1, 2],
      ]),
    ).toBe('#VALUE! inputs has no names in its first row');
    expect(refusal('JOINT.TABLE', block(SOUND), [['grip', 0, 'state']])).toBe('#VALUE! outputs is blank at 2');
    const long = 'x'.repeat(80);
    expect(refusal('JOINT.TABLE', [[long], [1]])).toContain(`"${'x'.repeat(59)}…" is not a name`);
  });

  test('no outputs asked are all of them, in their order', () => {
    const names = (value('JOINT.OUTPUTS') as Rows).slice(1).map(([name]) => name);
    const header = (rows: unknown): unknown[] => ((rows as Rows)[0] as string[]).map(name => name.replace(/ \(.*\)$/, ''));
    const withoutRemedy = names.filter(name => name !== 'remedy');
    expect(header(value('JOINT.TABLE', block(SOUND)))).toEqual(withoutRemedy);
    expect(header(value('JOINT.TABLE', block(SOUND), [[0], ['']]))).toEqual(withoutRemedy);
  });

  test('more than one variant is too many for a check', () => {
    expect(refusal('CHECK.JOINT', [...block(SOUND), Object.values(SOUND)])).toBe(
      '#VALUE! inputs has 2 variants; give one: two columns name and value, or a header row and one row',
    );
  });
});

describe('lists of names', () => {
  test('inputs and outputs have unit, default and meaning; what has no unit has a dash', () => {
    const inputs = new Map((value('JOINT.INPUTS') as Rows).map(([name, ...rest]) => [name, rest]));
    expect(inputs.get('wall')).toEqual(['mm', 'required', 'nominal wall of the thread half']);
    expect(inputs.get('ratio')).toEqual(['–', '2; in an insert 1', 'full-thread engagement required at worst case, ÷ d']);
    expect(inputs.get('hole draft')?.slice(0, 2)).toEqual(['°', '0.25']);
    const outputs = new Map((value('JOINT.OUTPUTS') as Rows).map(([name, ...rest]) => [name, rest]));
    expect(outputs.get('pull-out')).toEqual([
      'N',
      'estimate: thread pulled out at worst-case engagement and thread share, or the insert out of its boss',
    ]);
    expect(outputs.get('state')).toEqual(['–', 'worst state of all rules']);
  });
});

describe('the card says where each value is from', () => {
  const rowOf = (inputs: Inputs, name: string): unknown[] =>
    (value('JOINT.CARD', beside(inputs)) as Rows).find(row => row[0] === name) ?? [];

  test('given, by default, or worked out', () => {
    expect(rowOf(SOUND, 'screw length').slice(1)).toEqual([16, 'mm', 'given', '–', 'given']);
    for (const length of [undefined, null, '', 0, ' Default ']) expect(rowOf({ ...SOUND, length }, 'screw length')[5]).not.toBe('given');
    expect(rowOf({ ...SOUND, length: null }, 'screw length')[1]).toBe(16);
    expect(rowOf({ ...SOUND, pilot: null }, 'pilot hole')[3]).toMatch(/= 2\.32\d*$/);
    expect(rowOf({ ...SOUND, 'hole depth': null }, 'hole depth').slice(3)).toEqual([
      expect.stringContaining('14'),
      '–',
      'default: boss height',
    ]);
    expect(rowOf(SOUND, 'hole depth')[5]).toBe('given');
    expect(rowOf(SOUND, 'recess depth').slice(1, 3)).toEqual([3, 'mm']);
    expect(rowOf(SOUND, 'recess depth')[3]).toMatch(/ = 3$/);
    expect(rowOf(SOUND, 'weakest').slice(2, 5)).toEqual(['–', '–', '–']);
  });

  test('the state stands at the output that a rule judges, the worst where there are more', () => {
    expect(rowOf({ ...SOUND, 'boss OD': 4.2 }, 'boss OD')[4]).toBe('fail');
    expect(rowOf({ ...SOUND, 'bottom gap': 2 }, 'bottom clearance')[4]).toBe('review');
    expect(rowOf(SOUND, 'boss mass')[4]).toBe('–');
  });

  test('an output without value says why', () => {
    expect(rowOf({ ...SOUND, 'boss height': null }, 'slenderness').slice(1)).toEqual([
      expect.stringMatching(/^no value: boss height is blank/),
      '–',
      '–',
      'not checked',
      '–',
    ]);
    expect(rowOf(SOUND, 'state').slice(1)).toEqual(['pass', '–', '–', '–', '–']);
  });
});

describe('CHECK.BOSS: the rules of the boss, and two that pull against each other', () => {
  const boss = (change: Inputs = {}): Map<unknown, unknown[]> =>
    new Map((value('CHECK.BOSS', beside({ ...SOUND, ...change })) as Rows).slice(1).map(([name, ...rest]) => [name, rest]));

  test('its rows', () => {
    expect([...boss().keys()]).toEqual([
      'thread bites at the mouth',
      'pilot not too tight',
      'floor under the hole',
      'boss wall carries the thread',
      'landing ring',
      'sink, thread half',
      'slenderness',
      'core pin',
      'outside diameter and sink agree',
      'engagement and core pin agree',
    ]);
  });

  test('its rows with an insert: those of the insert in place of those of a thread in plastic', () => {
    const inserted = { screw: 'M3', hole: null, relief: 'default', pilot: null, 'insert diameter': 4.6, 'insert length': 5.7 };
    expect([...boss(inserted).keys()]).toEqual([
      'floor under the hole',
      'insert held',
      'insert not drawn out',
      'landing ring',
      'sink, thread half',
      'slenderness',
      'core pin',
      'outside diameter and sink agree',
      'engagement and core pin agree',
    ]);
  });

  test('outside diameter: od ratio × d asked, pilot + 2 × sink limit × wall allowed', () => {
    const row = boss({ 'od ratio': 2 }).get('outside diameter and sink agree');
    expect(row?.slice(0, 2)).toEqual([expect.closeTo(5.8, 9), expect.closeTo(2.46 + 2 * 0.6 * 3, 9)]);
    expect([row?.[3], row?.[5]]).toEqual(['pass', '–']);
    const wide = boss({ 'od ratio': 2.2 }).get('outside diameter and sink agree');
    expect([wide?.[3], wide?.[5]]).toEqual(['review', 'both agree from a wall of 3.267 mm']);
    expect(boss({ 'od ratio': 2.2, wall: 3.267 }).get('outside diameter and sink agree')?.[3]).toBe('pass');
  });

  test('core pin: the depth that ratio × d needs at worst case, pin limit × pilot allowed', () => {
    // 16 + 0.8 − (4.1 − 0.26) + 1 + 0.1 is needed with 7.34 of engagement; 2 d are 5.8
    const row = boss().get('engagement and core pin agree');
    expect(row?.slice(0, 2)).toEqual([expect.closeTo(14.06 - 7.34 + 5.8, 9), expect.closeTo(7 * 2.46, 9)]);
    expect([row?.[3], row?.[5]]).toEqual(['pass', '–']);
    const deep = boss({ ratio: 3, 'pin limit': 6 }).get('engagement and core pin agree');
    expect([deep?.[3], deep?.[5]]).toEqual([
      'review',
      expect.stringMatching(/^a pin of 6\.\d+ times its diameter is needed; ask the moulder$/),
    ]);
  });

  test('what is missing is not checked', () => {
    const row = boss({ pilot: { cellError: '#N/A' } }).get('outside diameter and sink agree');
    expect(row).toEqual(['no value: pilot is #N/A', '–', expect.any(String), 'not checked', 'common practice', '–']);
  });
});
