// The joint against hand-worked figures, and what a row of inputs may contain.
import { describe, expect, test } from 'vitest';
import { call } from '../../src/registry';
import { value } from '../kit/ask';
import { expectPrinted } from '../kit/near';

type Inputs = Readonly<Record<string, unknown>>;

const LOGGER: Inputs = {
  screw: 'ST2.9',
  head: 'ISO 7049',
  length: 16,
  material: 'ABS',
  wall: 2.5,
  'board plane': 5.5,
  seat: 2.5,
  board: 1.6,
  hole: 3.4,
  relief: 0.8,
  pilot: 2.4,
  'pilot held at': 'mouth',
  'boss OD': 6.4,
  'boss height': 14,
  'hole depth': 14.75,
  'bottom gap': 1,
};

function outcome(inputs: Inputs, outputs: readonly string[]): ReturnType<typeof call> {
  return call('JOINT.TABLE', [[Object.keys(inputs), Object.values(inputs)], [outputs]]);
}

function values(inputs: Inputs, ...outputs: string[]): unknown[] {
  const answer = outcome(inputs, outputs);
  if (!answer.ok) throw new Error(answer.message);
  return (answer.value as unknown[][])[1] as unknown[];
}

const refusal = (inputs: Inputs): string => {
  const answer = outcome(inputs, ['state']);
  return answer.ok ? 'not refused' : `${answer.code} ${answer.message}`;
};

describe('bee-hive display: the screw goes through the board, the head lies on it', () => {
  const DISPLAY: Inputs = {
    screw: 'ST2.9',
    head: 'ISO 7049',
    end: 'flat',
    length: 9.5,
    material: 'PP',
    wall: 2.6,
    'board plane': null,
    seat: '0 mm',
    board: 1.6,
    'board hole': 3.2,
    relief: 0.6,
    pilot: 2.4,
    'pilot held at': 'mouth',
    'boss OD': 5.8,
    'boss height': 12,
    'hole depth': 12.4,
    'bottom gap': 1,
  };
  test.each([
    ['ST2.9', 9.5, 2.4, 5.8, 4.14, 9.16],
    ['ST2.9', 13, 2.4, 5.8, 7.64, 12.66],
    ['ST3.5', 13, 2.9, 7.1, 7.24, 12.66],
    ['ST2.2', 9.5, 1.8, 4.5, 4.64, 9.16],
  ])('%s × %s', (screw, length, pilot, bossOd, worst, holeNeeded) => {
    expectPrinted(values({ ...DISPLAY, screw, length, pilot, 'boss OD': bossOd }, 'engagement min', 'hole depth needed'), [
      worst,
      holeNeeded,
    ]);
  });
  test('recess outputs say why they are missing, and the rules about the recess are left out', () => {
    const [diameter, depth, allComputed, state] = values(
      { ...DISPLAY, screw: 'ST2.2', pilot: 1.8, 'boss OD': 4.5, 'board hole': 2.6 },
      'recess diameter',
      'recess depth',
      'all computed',
      'state',
    );
    expect(diameter).toBe('no value: does not apply: the head lies on the board (seat "0 mm")');
    expect(depth).toBe(diameter);
    expect([allComputed, state]).toEqual([true, 'pass']);
  });
  test('the first choice fails on engagement, 1.43 d', () => {
    expect(values(DISPLAY, 'state', 'reason')).toEqual(['fail', 'too little full thread: needs engagement ratio at least 2, has 1.428']);
  });
});

describe('no point length is held for # AB screws', () => {
  const AB: Inputs = { ...LOGGER, screw: '#4 AB', head: 'pan', length: 15.875 };
  const PILOT = ['pilot mouth', 'pilot bottom', 'boss wall root', 'sink ratio', 'boss mass'];
  test('a pilot held at the mouth needs none', () => {
    expect(values(AB, ...PILOT).filter(value => typeof value !== 'number')).toEqual([]);
    expectPrinted(values(AB, 'pilot mouth', 'pilot bottom'), [2.4, 2.4 - 2 * 14.75 * Math.tan((0.25 * Math.PI) / 180)]);
    for (const output of ['engagement', 'pilot at tip']) expect(values(AB, output)[0]).toMatch(/^no value: /);
  });
  test('a point of its own is all that is missing', () => {
    // 15.875 − 4.1 − 0.8 − 3
    expectPrinted(values({ ...AB, point: 3 }, 'engagement'), [7.975]);
  });
  test('one held half way along the full thread does', () => {
    expect(values({ ...AB, 'pilot held at': 'mid' }, ...PILOT).filter(value => typeof value === 'number')).toEqual([]);
  });
  test('the card shows it', () => {
    const answer = call('JOINT.CARD', [[Object.keys(AB), Object.values(AB)]]);
    if (!answer.ok) throw new Error(answer.message);
    expect((answer.value as unknown[][]).find(([name]) => name === 'pilot mouth')?.[1]).toBe(2.4);
  });
});

describe('geometry of the parts', () => {
  test('recess floor 6.2 and mouth 6.30 with 0.6 on diameter, 3 deep, 1°', () => {
    expectPrinted(values({ ...LOGGER, allowance: 0.6 }, 'recess diameter', 'recess depth', 'recess mouth', 'subflush'), [
      6.2,
      3,
      '6.3047',
      0.6,
    ]);
  });
  test('default allowance: hole max − screw major min + 0.2', () => {
    expectPrinted(values(LOGGER, 'recess diameter'), [5.6 + 3.5 - 2.76 + 0.2]);
  });
  test('default seat: the largest of 0.8·wall, 0.6·d and 1.5', () => {
    const { seat: _, ...rest } = LOGGER;
    expectPrinted(values(rest, 'grip'), [2 + 1.6]);
  });
  test('wrong-way draft would show: the boss grows to its root, the pilot shrinks to its bottom', () => {
    const [bossOd, root, mouth, bottom] = values(LOGGER, 'boss OD', 'boss OD root', 'pilot mouth', 'pilot bottom') as number[];
    expect(root).toBeGreaterThan(bossOd ?? 0);
    expect(bottom).toBeLessThan(mouth ?? 0);
    expectPrinted([root, bottom], ['6.644', '2.271']);
  });
  test('the tip of the thread is where the point begins: 12.96 − 2.6 deep', () => {
    expectPrinted(values({ ...LOGGER, 'hole draft': 0.5 }, 'pilot bottom', 'pilot at tip'), ['2.143', '2.219']);
  });
  test('a hole that stops above the root leaves a solid root', () => {
    expectPrinted(values({ ...LOGGER, 'hole depth': 13.99 }, 'boss wall root'), ['6.644']);
  });
  test('a sleeve through the board takes its place in the grip', () => {
    const sleeved = { ...LOGGER, sleeve: 2, 'board hole': 6 };
    expectPrinted(values(sleeved, 'sleeve OD', 'grip', 'board play', 'landing ring'), [3.4 + 2 * 1, 4.5, '0.1817', 0.95]);
  });
  test('a countersunk head is at best to be reviewed, and needs 1 mm under its cone', () => {
    const cone = { ...LOGGER, head: 'countersunk', seat: 2.7 };
    // ISO 7050 sharp 6.3, smallest hole 3.3, 90°: cone 1.5, left 2.6 − 1.5
    expect(values(cone, 'state')).toEqual(['review']);
    // flush with the recess floor, 2.8 below the outer face
    expectPrinted(values(cone, 'subflush'), [2.8]);
    expect(values({ ...cone, seat: 2.5 }, 'reason')).toEqual([
      'countersunk head wedges its seat: needs seat under the cone at least 1 mm, has 0.9 mm',
    ]);
  });
});

describe('what a row may contain', () => {
  test('lengths with units, in inches too', () => {
    expectPrinted(values({ ...LOGGER, length: '16 mm', seat: '2.5 mm', board: '0.0629921259842520 in' }, 'engagement min'), [7.34]);
  });
  test.each([0, null, ''])('a blank (%j) under an input with a default takes the default', blank => {
    expect(values({ ...LOGGER, length: blank }, 'screw length')).toEqual([16]);
    expectPrinted(values({ ...LOGGER, pilot: blank }, 'pilot hole'), [2.9 - 0.8 * 0.72]);
  });
  test.each([
    ...['seat', 'seat tolerance', 'relief', 'relief tolerance', 'allowance', 'bottom gap', 'hole tolerance', 'board tolerance'],
    ...['board plane tolerance', 'board hole tolerance', 'pilot tolerance', 'hole depth tolerance', 'length tolerance', 'point'],
    ...['outside draft', 'hole draft', 'recess draft', 'post draft', 'subflush limit', 'bearing limit', 'thread limit', 'hold limit'],
  ])('a bare 0 or a blank under "%s" is refused, never guessed', name => {
    const joint = { ...LOGGER, 'board hole': 3.4 };
    const zero = name.includes('draft') ? '0°' : name === 'thread limit' ? '0 %' : '0 mm';
    for (const blank of [0, null, ''])
      expect(JSON.stringify(value('CHECK.JOINT', Object.entries({ ...joint, [name]: blank })))).toContain(
        `${name}: 0 or blank? write \\"${zero}\\" for zero, or default`,
      );
    expect(values({ ...joint, [name]: zero }, 'all computed')).toEqual([true]);
    expect(values({ ...joint, [name]: 'default' }, 'all computed')).toEqual([true]);
  });
  test('a required input that is missing takes only what depends on it', () => {
    const { 'boss height': _, ...rest } = LOGGER;
    const [worst, slender, state] = values(rest, 'engagement min', 'slenderness', 'state');
    expectPrinted(worst, 7.34);
    expect(slender).toMatch(/^no value: boss height is blank; give/);
    expect(state).toBe('not checked');
  });
  test('an error in a cell is not checked, and named', () => {
    const [engagement, state] = values({ ...LOGGER, length: { cellError: '#DIV/0!' } }, 'engagement', 'state');
    expect(engagement).toBe('no value: length is #DIV/0!');
    expect(state).toBe('not checked');
  });
  test('an unquoted M3 arrives as a number', () => {
    expect(values({ ...LOGGER, screw: 5 }, 'grip', 'pilot at tip')[1]).toBe('no value: screw is 5: put the name in quotes, "M3"');
  });
  test('ST screws have no standard clearance hole', () => {
    const { hole: _, ...rest } = LOGGER;
    expect(values(rest, 'hole')).toEqual([
      'no value: hole must be given for ST2.9: no standard clearance hole is available; "ST2.9 DIN 74-1" reads a form C through hole',
    ]);
    expect(values({ ...LOGGER, screw: 'M3', head: 'pan', hole: null, length: 16 }, 'hole')).toEqual([3.4]);
  });
  test('no standard length: that is an answer, not a slip', () => {
    const [length, state, reason] = values({ ...LOGGER, length: 'default', 'hole depth': 8 }, 'screw length', 'state', 'reason');
    expect(length).toMatch(/^no value: no standard length of ST2.9 passes/);
    expect(state).toBe('fail');
    expect(reason).toMatch(/^no standard length of /);
  });
  test('a length of one’s own is not looked for in the list', () => {
    expectPrinted(values({ ...LOGGER, length: 15 }, 'engagement min'), [6.34]);
    expect(values({ ...LOGGER, length: 15 }, 'state', 'reason')).toEqual(['pass', '–']);
  });
  test('an own material card as text', () => {
    expectPrinted(values({ ...LOGGER, material: 'thread share 0.5; strength 30 MPa; density 1 ', pilot: null }, 'pilot hole'), [2.54]);
  });
});

describe('the block as a whole', () => {
  const table = (...args: unknown[]): string => {
    const answer = call('JOINT.TABLE', args);
    return answer.ok ? 'accepted' : `${answer.code} ${answer.message}`;
  };
  test('an unknown name is refused with the nearest', () => {
    expect(refusal({ ...LOGGER, 'bord plane': 1 })).toBe(
      '#VALUE! inputs: "bord plane" is not a name of a joint input; did you mean "board plane"? JOINT.INPUTS() lists them',
    );
    expect(table([Object.keys(LOGGER), Object.values(LOGGER)], [['engagment min']])).toContain(
      'did you mean "engagement min"? JOINT.OUTPUTS() lists them',
    );
  });
  test('blank rows and columns at the end are left out, names in any case', () => {
    const rows = [
      [...Object.keys(LOGGER).map(name => name.toUpperCase()), 0, ''],
      [...Object.values(LOGGER), 0, null],
      Array.from({ length: 18 }, () => 0),
      Array.from({ length: 18 }, () => null),
    ];
    const answer = call('JOINT.TABLE', [rows, [['state'], [0], ['']]]);
    expect(answer.ok && answer.value).toEqual([['state'], ['pass']]);
  });
  test('a name twice, a hole in the names, no variant', () => {
    expect(
      table([
        ['wall', 'wall'],
        [1, 2],
      ]),
    ).toContain('"wall" twice');
    expect(
      table([
        ['wall', 0, 'screw'],
        [1, 2, 3],
      ]),
    ).toContain('no name above column 2');
    expect(
      table([
        ['wall', 'screw'],
        [0, 0],
      ]),
    ).toContain('no row of values');
  });
  test('header cells carry units', () => {
    const answer = call('JOINT.TABLE', [
      [Object.keys(LOGGER), Object.values(LOGGER)],
      [['engagement min', 'engagement ratio', 'pull-out']],
    ]);
    expect(answer.ok && (answer.value as unknown[][])[0]).toEqual(['engagement min (mm)', 'engagement ratio', 'pull-out (N)']);
  });
  test('one value for a table row of a spreadsheet', () => {
    const answer = call('JOINT.VALUE', [[Object.keys(LOGGER)], [Object.values(LOGGER)], 'state']);
    expect(answer).toEqual({ ok: true, value: 'pass' });
  });
});

describe('remedies are tried before they are said', () => {
  const remedies = (inputs: Inputs): Map<unknown, unknown> => {
    const answer = call('CHECK.JOINT', [Object.entries(inputs)]);
    if (!answer.ok) throw new Error(answer.message);
    return new Map((answer.value as unknown[][]).map(row => [row[0], row[6]]));
  };
  const stateOf = (inputs: Inputs, rule: string): unknown => {
    const answer = call('CHECK.JOINT', [Object.entries(inputs)]);
    return answer.ok && (answer.value as unknown[][]).find(row => row[0] === rule)?.[4];
  };
  test.each([
    ['engagement', { ...LOGGER, length: 13 }],
    ['screw clears the bottom', { ...LOGGER, length: 19 }],
    ['sink, thread half', { ...LOGGER, face: 'show' }],
    ['core pin', { ...LOGGER, 'pin limit': 6 }],
    ['head hidden', { ...LOGGER, 'board plane': 4.8 }],
    ['pilot not too tight', { ...LOGGER, 'hole draft': 0.8 }],
  ] as const)('%s', (rule, inputs) => {
    expect(stateOf(inputs, rule)).not.toBe('pass');
    for (const said of String(remedies(inputs).get(rule)).split('; or ')) {
      const changes = said
        .replace(' (steel-safe)', '')
        .split(' with ')
        .map(change => /^(.+?) ([\d.]+)(?: \S+)?$/.exec(change) ?? expect.fail(said));
      const mended = Object.fromEntries(changes.map(([, name = '', number]) => [name, Number(number)]));
      expect(stateOf({ ...inputs, ...mended }, rule), said).toBe('pass');
    }
  });
  test('where nothing helps, it says what was tried', () => {
    expect(remedies({ ...LOGGER, length: 13, 'hole depth': 11.5, 'boss height': 11 }).get('engagement')).toBe(
      'no change of length, relief, length with hole depth, screw, seat with board plane, seat passes',
    );
  });
});
