// A joint with an own screw: the numbers of ST2.9 typed as a card give what ST2.9 gives, in every output and every rule.
import { describe, expect, test } from 'vitest';
import { OUTPUTS as names } from '../../src/joint/outputs';
import { refusal, value } from '../kit/ask';
import { OF_THE_CONTRACT, OWN_M3, OWN_ST29, OWN_ST29_OTHERWISE } from '../kit/own-screw';

type Inputs = Readonly<Record<string, unknown>>;

const LOGGER: Inputs = {
  screw: 'ST2.9',
  head: 'pan',
  material: 'ABS',
  wall: 2.5,
  'board plane': 5.5,
  seat: 2.5,
  board: 1.6,
  hole: 3.4,
  'boss height': 14,
  load: 60,
  friction: 0.3,
  'drive torque': 0.1,
  'set torque': 0.3,
  'tool diameter': 5,
  'steel gap': 4,
};
const M3: Inputs = { ...LOGGER, screw: 'M3', hole: null, pilot: 2.5, 'thread share': 0.8, 'yield stress': 40, length: 10 };

const row = (inputs: Inputs, outputs: readonly string[] = names): unknown[] =>
  (value('JOINT.TABLE', [Object.keys(inputs), Object.values(inputs)], [outputs]) as unknown[][])[1] as unknown[];
const apart = (one: Inputs, other: Inputs): string[] => {
  const [a, b] = [row(one), row(other)];
  const same = (x: unknown, y: unknown): boolean => (typeof x === 'number' && typeof y === 'number' ? Math.abs(x - y) < 1e-9 : x === y);
  return names.flatMap((name, i) => (same(a[i], b[i]) ? [] : [`${name}: ${String(a[i])} and ${String(b[i])}`]));
};

describe('the same screw as a card', () => {
  const { head: _, ...headless } = LOGGER;
  test.each<[string, Inputs, Inputs]>([
    ['with its own head', LOGGER, { ...headless, screw: OWN_ST29 }],
    ['with its own head, blank cell', LOGGER, { ...LOGGER, screw: OWN_ST29, head: null }],
    ['in other units and order', LOGGER, { ...headless, screw: OWN_ST29_OTHERWISE }],
    ['with a word for its head', LOGGER, { ...LOGGER, screw: OWN_ST29 }],
    ['a length given', { ...LOGGER, length: 16 }, { ...headless, screw: OWN_ST29, length: 16 }],
    ['bottoming', { ...LOGGER, length: 19, 'hole depth': 12 }, { ...headless, screw: OWN_ST29, length: 19, 'hole depth': 12 }],
    [
      'head on the board',
      { ...LOGGER, seat: '0 mm', 'board hole': 3.4 },
      { ...headless, screw: OWN_ST29, seat: '0 mm', 'board hole': 3.4 },
    ],
    [
      'sizes from texts',
      {
        ...LOGGER,
        'board hole': 'ST2.9 75 %',
        'head diameter': 'ST2.9 pan',
        point: 'ST2.9 cone',
        length: 16,
      },
      {
        ...headless,
        screw: OWN_ST29,
        'board hole': `${OWN_ST29} 75 %`,
        'head diameter': OWN_ST29,
        point: OWN_ST29,
        length: 16,
      },
    ],
  ])('%s', (_name, standard, own) => {
    expect(apart(standard, own)).toEqual([]);
  });

  test('a machine thread stays one; only d, basic for M3 and major max here, is another', () => {
    const sized = { ...M3, hole: 3.4, 'boss OD': 6.6 };
    const found = apart(sized, { ...sized, screw: OWN_M3, head: null }).map(words => words.split(':')[0] ?? '');
    // the card has two lengths, so that reasons and remedies name others
    expect(found.filter(name => !/^(reasons?|remedy|margin)$/.test(name))).toEqual(['engagement ratio']);
    expect(String(row({ ...sized, screw: OWN_M3 }, ['pull-out'])[0])).toContain('overstates what a machine thread holds in plastic');
  });

  test('all outputs were compared, and nearly all had a value', () => {
    const values = row({ ...headless, screw: OWN_ST29, sleeve: 2, 'board hole': 6.8 });
    expect(names.length).toBeGreaterThanOrEqual(58);
    expect(values.filter(given => !String(given).startsWith('no value')).length).toBeGreaterThanOrEqual(names.length - 1);
  });

  test('CHECK.JOINT, rule by rule', () => {
    const findings = (inputs: Inputs): unknown =>
      (value('CHECK.JOINT', Object.entries(inputs)) as unknown[][]).map(found => found.slice(0, 5));
    const own = findings({ ...headless, screw: OWN_ST29 });
    expect(own).toEqual(findings(LOGGER));
    expect((own as unknown[]).length).toBeGreaterThanOrEqual(22);
  });
});

describe('what only a card can do', () => {
  const OWN: Inputs = { ...LOGGER, screw: OF_THE_CONTRACT, head: null, hole: 3.5 };

  test('lengths, pilot, recess by hand', () => {
    const [length, pilot, recess, deepest] = row(OWN, ['screw length', 'pilot hole', 'recess diameter', 'penetration max']) as number[];
    expect([8, 10, 12, 16]).toContain(length);
    // ABS: share 0.8, ratio 2; 3 − 0.8·0.9
    expect(pilot).toBeCloseTo(2.28, 9);
    // 5.6 + (3.6 − 2.9 + 0.2)
    expect(recess).toBeCloseTo(6.5, 9);
    // length + 0.5 − (2.5 − 0.1 + 1.6 − 0.16)
    expect(deepest).toBeCloseTo((length ?? 0) + 0.5 - 3.84, 9);
  });

  test('the clamp force takes the flank of the card', () => {
    const clamp = (screw: string): number => row({ ...OWN, screw }, ['clamp force'])[0] as number;
    const byHand = (flankDeg: number): number => {
      const dp = 2.55;
      const angle = Math.atan(1.34 / (Math.PI * dp)) + Math.atan(0.3 / Math.cos((flankDeg * Math.PI) / 180));
      return 200 / (((dp / 2) * Math.tan(angle) + (0.3 * (5.3 + 3.5)) / 4) / 1);
    };
    expect(clamp(OF_THE_CONTRACT)).toBeCloseTo(byHand(15), 6);
    expect(clamp(OF_THE_CONTRACT.replace('flank 15; ', ''))).toBeCloseTo(byHand(30), 6);
  });

  test.each([
    ['no major', 'root 2; forming', 'screw length', 'this own screw has no major diameter: add major 3.0/2.9'],
    ['no head', OF_THE_CONTRACT.replace('head diameter 5.6/5.3; ', ''), 'recess diameter', 'add head diameter 5.6/5.3'],
    ['no head height', OF_THE_CONTRACT.replace('head height 2.4/2.2; ', ''), 'subflush', 'add head height 2.4/2.2'],
    ['no lengths', OF_THE_CONTRACT.replace('lengths 8 10 12 16; ', ''), 'screw length', 'add lengths 8 10 12 16'],
    ['no length tolerance', OF_THE_CONTRACT.replace('length tolerance 0.5; ', ''), 'penetration max', 'add length tolerance 0.5'],
    ['no point', OF_THE_CONTRACT.replace('point 2; ', ''), 'engagement', 'add point 2'],
    ['no root', OF_THE_CONTRACT.replace('root 2.1/2.0; ', ''), 'pilot hole', 'add root 2.1/2.0'],
    ['no pitch', OF_THE_CONTRACT.replace('pitch 1.34; ', ''), 'strip torque', 'add pitch 1.34'],
    ['no kind', OF_THE_CONTRACT.replace('; forming', ''), 'pull-out', 'add forming, cutting or machine'],
    ['a hole', OF_THE_CONTRACT, 'hole', 'hole must be given for an own screw'],
  ])('%s: the message says what to add', (what, screw, output, words) => {
    const [said, state] = row({ ...OWN, screw, ...(what === 'a hole' && { hole: null }) }, [output, 'state']);
    expect(String(said)).toMatch(/^no value: /);
    expect(String(said)).toContain(words);
    expect(state).toBe('not checked');
  });

  test('what is given beside it makes up for it', () => {
    const bare = { ...OWN, screw: 'major 3.0/2.9; root 2.1/2.0; pitch 1.34; forming', head: 'cheese' };
    const given = { 'head diameter': 5.6, 'head height': 2.4, 'head diameter min': 5.3, length: 12, 'length tolerance': 0.5, point: 2 };
    expect(
      apart({ ...OWN, ...given, 'thread share': 0.8 }, { ...bare, ...given, 'thread share': 0.8 }).filter(
        name => !name.startsWith('clamp') && !name.startsWith('bearing p') && !name.startsWith('margin'),
      ),
    ).toEqual([]);
  });

  test('a standard screw still needs its head', () => {
    expect(String(row({ ...LOGGER, head: null }, ['recess diameter'])[0])).toContain('head is left out: put the name in quotes, "pan"');
  });

  test('remedies name no other screw, and only its lengths', () => {
    for (const screw of [OF_THE_CONTRACT, OF_THE_CONTRACT.replace('lengths 8 10 12 16; ', '')]) {
      const found = value('CHECK.JOINT', Object.entries({ ...OWN, screw, length: 16, 'hole depth': 9 })) as unknown[][];
      const remedies = found.map(line => String(line[6])).join('\n');
      expect(found.some(line => line[4] === 'fail')).toBe(true);
      expect(remedies).not.toMatch(/screw (M|ST|#)/);
      for (const [, length] of remedies.matchAll(/length ([\d.]+) mm/g)) expect([8, 10, 12]).toContain(Number(length));
    }
  });

  test('a card that cannot be is refused with the row', () => {
    expect(String(row({ ...OWN, screw: 'major 2/3' }, ['state'])[0])).toBe('not checked');
    expect(String(row({ ...OWN, screw: 'major 2/3' }, ['reason'])[0])).toContain('the largest comes first');
    expect(
      refusal('JOINT.VALUE', Object.keys(OWN), [OF_THE_CONTRACT.replace('pitch', 'pich'), ...Object.values(OWN).slice(1)], 'pilot hole'),
    ).toContain('give major');
  });
});
