// An own screw: read from its text, refused where it cannot be, and the same screw by its name gives the same numbers everywhere.
import { describe, expect, test } from 'vitest';
import { CARDS, call } from '../../src/registry';
import { number, refusal, value } from '../kit/ask';
import { OF_THE_CONTRACT, OWN_ST29, OWN_ST29_OTHERWISE } from '../kit/own-screw';

describe('the card of the contract', () => {
  test.each([
    ['SCREW.MAJOR', ['max'], 3],
    ['SCREW.MAJOR', ['min'], 2.9],
    ['SCREW.MAJOR', ['nominal'], 3],
    ['SCREW.ROOT', ['max'], 2.1],
    ['SCREW.ROOT', ['min'], 2],
    ['SCREW.PITCH', [], 1.34],
    ['SCREW.POINT', ['cone'], 2],
    ['SCREW.POINT', ['flat'], 2],
    ['SCREW.HEAD.DIAMETER', ['pan', 'max'], 5.6],
    ['SCREW.HEAD.DIAMETER', ['cheese', 'min'], 5.3],
    ['SCREW.HEAD.HEIGHT', ['pan', 'max'], 2.4],
    ['SCREW.HEAD.HEIGHT', ['pan', 'min'], 2.2],
    // d1 − e·(d1 − d2)
    ['HOLE.PILOT', ['70 %'], 3 - 0.7 * 0.9],
    ['ENGAGEMENT.RATIO', undefined, 2],
  ])('%s %j is %d', (id, more, expected) => {
    const args = more === undefined ? [6, OF_THE_CONTRACT] : [OF_THE_CONTRACT, ...more];
    expect(number(id, ...args)).toBeCloseTo(expected, 12);
  });

  test('lengths and their tolerance', () => {
    expect(value('SCREW.LENGTHS', OF_THE_CONTRACT)).toEqual([[8], [10], [12], [16]]);
    expect(value('SCREW.LENGTH.TOL', OF_THE_CONTRACT, 12)).toEqual([[-0.5, 0.5]]);
    expect(value('SCREW.LENGTH.TOL', OF_THE_CONTRACT.replace('tolerance 0.5', 'tolerance +0/-0.8'), 12)).toEqual([[-0.8, 0]]);
  });

  test('its flank, 15°, stands for the default of TORQUE.CLAMP, and one that is typed wins', () => {
    const clamp = (...flank: unknown[]): number => number('TORQUE.CLAMP', 200, OF_THE_CONTRACT, 0.2, 0.25, 5.6, 3.4, ...flank);
    const dp = 2.55;
    const byHand = (flankDeg: number): number => {
      const angle = Math.atan(1.34 / (Math.PI * dp)) + Math.atan(0.2 / Math.cos((flankDeg * Math.PI) / 180));
      return (200 * ((dp / 2) * Math.tan(angle) + (0.25 * (5.6 + 3.4)) / 4)) / 1000;
    };
    expect(clamp()).toBeCloseTo(byHand(15), 9);
    expect(clamp(0)).toBeCloseTo(byHand(15), 9);
    expect(clamp(30)).toBeCloseTo(byHand(30), 9);
    expect(number('TORQUE.CLAMP', 200, OF_THE_CONTRACT.replace(' flank 15;', ''), 0.2, 0.25, 5.6, 3.4)).toBeCloseTo(byHand(30), 9);
  });

  test('SCREW.CARD shows it as given', () => {
    const rows = value('SCREW.CARD', OF_THE_CONTRACT, 'pan') as unknown[][];
    const shown = rows.slice(1).map(([quantity, given, unit, limit]) => [quantity, given, unit, limit]);
    expect(shown).toEqual([
      ['size', 'own screw', '–', '–'],
      ['head', 'flat-seated', '–', '–'],
      ['major diameter d1', 3, 'mm', 'max'],
      ['major diameter d1', 2.9, 'mm', 'min'],
      ['root diameter d2', 2.1, 'mm', 'max'],
      ['root diameter d2', 2, 'mm', 'min'],
      ['pitch P', 1.34, 'mm', '–'],
      ['length without full thread y', 2, 'mm', '–'],
      ['flank angle, half the thread angle', 15, 'deg', '–'],
      ['head diameter dk', 5.6, 'mm', 'max'],
      ['head diameter dk', 5.3, 'mm', 'min'],
      ['head height k', 2.4, 'mm', 'max'],
      ['head height k', 2.2, 'mm', 'min'],
      ['deviation of the length', 0.5, 'mm', 'max'],
      ['deviation of the length', -0.5, 'mm', 'min'],
      ['lengths', '8 10 12 16', 'mm', '–'],
      ['thread', 'forming', '–', '–'],
    ]);
    expect(rows.slice(1).every(row => row[4] === 'given by you')).toBe(true);
    expect(rows.flat().join()).not.toMatch(/ISO|ASME|DIN|secondary/);
  });

  test('inches, one unit for both limits', () => {
    expect(number('SCREW.MAJOR', 'major 0.118/0.114 in; machine', 'min')).toBeCloseTo(0.114 * 25.4, 12);
    const lengths = (value('SCREW.LENGTHS', 'lengths 0.25 0.375 0.5 in') as number[][]).flat();
    [6.35, 9.525, 12.7].forEach((length, i) => expect(lengths[i]).toBeCloseTo(length, 12));
    expect(lengths).toHaveLength(3);
  });

  test('a countersunk head: its cone ends at major + 2·height·tan(angle/2) on the top face', () => {
    // ISO 7721: M3 has a theoretical diameter of 6.3 and a height of 1.65
    const own = 'major 3/2.874; head diameter 5.5/5.2; head height 1.65; head angle 90; machine';
    expect(number('RECESS.CONE', own, 3.4)).toBeCloseTo((6.3 - 3.4) / 2, 12);
    expect(number('RECESS.CONE', `${own} countersunk`, 3.4)).toBeCloseTo((6.3 - 3.4) / 2, 12);
    expect(refusal('SCREW.HEAD.DIAMETER', own, 'pan')).toMatch(
      /#VALUE! .*not a head for an own screw with a head angle; say countersunk, flat/,
    );
    expect(refusal('BEARING', 200, own, 3.4)).toContain('a countersunk head wedges its seat open');
    expect(refusal('SCREW.HEAD.DIAMETER', OF_THE_CONTRACT, 'countersunk')).toContain('without a head angle');
  });
});

describe('what is left out is named where it is asked for', () => {
  test.each([
    ['SCREW.ROOT', ['major 3; forming'], 'root diameter: add root 2.1/2.0'],
    ['SCREW.ROOT', ['root 2.1; forming', 'min'], 'least root diameter: add root 2.1/2.0'],
    ['SCREW.MAJOR', ['pitch 1; forming'], 'major diameter: add major 3.0/2.9'],
    ['SCREW.PITCH', ['major 3; forming'], 'pitch: add pitch 1.34'],
    ['SCREW.POINT', ['major 3; forming'], 'point: add point 2'],
    ['SCREW.HEAD.DIAMETER', ['major 3; forming', 'pan'], 'head diameter: add head diameter 5.6/5.3'],
    ['SCREW.HEAD.HEIGHT', ['major 3; head height 2; forming', 'pan', 'min'], 'least head height: add head height 2.4/2.2'],
    ['SCREW.LENGTHS', ['major 3; forming'], 'lengths: add lengths 8 10 12 16'],
    ['SCREW.LENGTH.TOL', ['major 3; forming', 12], 'length tolerance: add length tolerance 0.5'],
    ['HOLE.PILOT', ['major 3; forming', 0.7], 'root diameter: add root 2.1/2.0'],
    ['RECESS.FLOAT', [5.6, 3.4, 'major 3; forming', 0.1], 'least major diameter: add major 3.0/2.9'],
    ['BEARING', [200, 'head diameter 5.6; major 3', 3.4], 'least head diameter: add head diameter 5.6/5.3'],
    ['RECESS.CONE', ['major 3; head angle 90; machine', 3.4], 'head height: add head height 2.4/2.2'],
  ])('%s of %j', (id, args, words) => {
    expect(refusal(id, ...args)).toMatch(new RegExp(`^#N/A .*this own screw has no ${words.replace(/[.]/g, '\\.')}$`));
  });

  test('its kind', () => {
    expect(refusal('PULLOUT', 'major 3/2.9; root 2.1/2.0', 6, 38)).toContain('add forming, cutting or machine, as last word');
    expect(refusal('PULLOUT', 'major 3/2.9; root 2.1/2.0; machine', 6, 38)).toContain('own screw is a machine thread');
    expect(number('PULLOUT', 'major 3/2.9; root 2.1/2.0; cutting', 6, 38)).toBeCloseTo((38 / Math.sqrt(3)) * Math.PI * 2.55 * 6, 9);
  });

  test('what nobody asks for may be left out', () => {
    expect(number('RECESS.DIAMETER', 'head diameter 5.6', 0.5)).toBeCloseTo(6.1, 12);
    expect(number('ENGAGEMENT.RATIO', 6, 'major 3')).toBe(2);
    expect(number('HOLE.RELIEF', 'major 3')).toBeCloseTo(3.2, 12);
  });
});

describe('refused with what is known', () => {
  const known =
    'give major, root, pitch, point, flank, head diameter, head height, head angle, lengths, length tolerance, and as the last ' +
    'word forming, cutting or machine';
  test.each([
    ['major 3; rot 2', known],
    ['major 3; rot 2; forming', known],
    ['major 3; forming; steel', known],
    ['major 3; length 8', known],
    ['major 3; major 4', 'major is given twice'],
    ['forming; cutting', 'is forming, cutting or machine: give one of these words'],
    ['major 2.9/3.0', 'the largest comes first: major 3.0/2.9'],
    ['root 3; major 2.9', 'root of an own screw is 3 mm; it must be below major, 2.9 mm'],
    ['root 2.9; major 3/2.85', 'root of an own screw is 2.9 mm; it must be below major, 2.85 mm'],
    ['root 2; major 2', 'it must be below major'],
    ['pitch 0', 'must be above 0'],
    ['pitch -1', 'must be above 0'],
    ['pitch 1/16 in', 'no fraction'],
    ['pitch', 'give pitch 1.34'],
    ['major 3/2.9/2.8', 'give major 3.0/2.9'],
    ['major 3/', 'give major 3.0/2.9'],
    ['flank 0', 'must be above 0'],
    ['flank 90', 'flank of an own screw must be below 90°'],
    ['head angle 180', 'head angle of an own screw must be below 180°'],
    ['point -1', 'must be above 0'],
    ['head diameter 3; major 3', 'head diameter of an own screw is 3 mm; it must be above major, 3 mm'],
    ['major 3; head angle 90; head height 1; head diameter 6; machine', 'its cone of 90° then ends at 5 mm'],
    ['lengths', 'give lengths 8 10 12 16'],
    ['lengths 8 0', 'each above 0'],
    ['lengths 8/10', 'not a length'],
    ['length tolerance +0.1', 'one side only'],
    ['length tolerance -0.2/+0.1', 'the first deviation must be the upper one'],
    ['major 3 kg', 'units: mm'],
    ['flank 15 mm', '"mm" is not a unit of angle'],
    ['major 1,234', 'can be read two ways'],
  ])('"%s"', (text, words) => {
    const said = refusal('SCREW.PITCH', text);
    expect(said).toMatch(/^#VALUE! size is "/);
    expect(said).toContain(words);
  });

  test('a clearance hole of no standard', () => {
    for (const args of [[OF_THE_CONTRACT], [OF_THE_CONTRACT, 'DIN 74-1'], [OF_THE_CONTRACT, 'coarse']])
      expect(refusal('HOLE.CLEARANCE', ...args)).toBe(
        '#N/A size: no standard clearance hole is available for an own screw; give the hole in mm',
      );
  });
});

describe('ST2.9 as an own screw gives what ST2.9 gives', () => {
  const shares = ['75 %', 'ABS'];
  /** Every text of the card's example that names the screw, and every argument that a screw may stand for. */
  const variants = (args: readonly unknown[], screw: (rest: string) => string): unknown[] =>
    args.map(arg => (typeof arg === 'string' && arg.startsWith('ST2.9') ? screw(arg.slice(5).trim()) : arg));
  const FITS_A_SCREW: Readonly<Record<string, readonly string[]>> = {
    head_diameter: ['ST2.9 pan'],
    hardware_diameter: ['ST2.9 pan'],
    head_height: ['ST2.9 pan'],
    hole: shares.map(share => `ST2.9 ${share}`),
    point: ['ST2.9 cone', 'ST2.9'],
    screw: ['ST2.9'],
    pin: ['ST2.9'],
    length_tol: ['ST2.9 cone'],
  };
  const calls: (readonly [id: string, args: readonly unknown[]])[] = [...CARDS.values()].flatMap(card => {
    const { args } = card.example;
    const named = args.map(arg =>
      typeof arg === 'string' && /^(M3|ST2\.9)(?= |$)/.test(arg) ? arg.replace(/^(M3|ST2\.9)/, 'ST2.9') : arg,
    );
    const composite = card.params.flatMap((param, i) =>
      (FITS_A_SCREW[param.name] ?? []).map(text => Object.assign([...named], { [i]: text }) as readonly unknown[]),
    );
    return [named, ...composite]
      .filter(list => list.some(arg => typeof arg === 'string' && arg.startsWith('ST2.9')))
      .map(list => [card.id, list] as const);
  });
  const answered = calls.filter(
    ([id, args]) => call(id, args).ok && !/^(SCREW\.CARD|SCREW\.LENGTHS|SCREW\.LENGTH\.(TABLE|COMMON)|JOINT|CHECK)/.test(id),
  );

  test('in enough functions', () => {
    expect(new Set(answered.map(([id]) => id)).size).toBeGreaterThanOrEqual(30);
    expect(answered.length).toBeGreaterThanOrEqual(45);
  });

  test.each([
    ['as it is typed', OWN_ST29],
    ['in another order and other units', OWN_ST29_OTHERWISE],
  ])('%s', (_, own) => {
    // one card holds one end and one head: the flat end of ISO 1478 and 7049, the cone of ISO 7050 (6.3 at 90°, k 1.7)
    const asked = (args: readonly unknown[]): string => {
      const words = args.join(' ');
      const ended = words.includes('flat')
        ? own.replace(/point [\d.]+( m)?/, 'point 2.1').replace(/length tolerance [^;]+/, 'length tolerance +0/-0.8')
        : own;
      return words.includes('countersunk') ? ended.replace(/head height [^;]+/, 'head height 1.7; head angle 90') : ended;
    };
    const withOwn = (card: string, rest: string): string => {
      if (rest === '') return card;
      const word = rest.replace('ISO 7049', 'pan');
      return card.endsWith('forming') ? `${card} ${word}` : `${card}; ${word}`;
    };
    const twelveDigits = (outcome: unknown): string =>
      JSON.stringify(outcome, (_key, x: unknown) => (typeof x === 'number' ? Number(x.toPrecision(12)) : x));
    const apart = answered.flatMap(([id, args]) => {
      const [one, other] = [args, variants(args, rest => withOwn(asked(args), rest))].map(list => twelveDigits(call(id, list)));
      return one === other ? [] : [`${id}(${args.join(', ')}): ${one} and ${other}`];
    });
    expect(apart).toEqual([]);
  });

  test('in the tables of lengths, as far as its own lengths go', () => {
    for (const args of [
      ['SCREW.LENGTH.TABLE', 'ST2.9', [[5]], [[0.1]], 2, 12, 0.5, 0.5, 0.1],
      ['SCREW.LENGTH.COMMON', 'ST2.9', [[5], [8]], [[0.1], [0.1]], [[12], [9]], 2, 0.5, 0.5, 0.1],
    ] as const) {
      const [id, , ...more] = args;
      const all = value(id, 'ST2.9', ...more) as unknown[][];
      const mine = value(id, OWN_ST29, ...more) as unknown[][];
      expect(mine).toHaveLength(7);
      expect(mine).toEqual(all.slice(0, 7));
    }
    expect(refusal('SCREW.LENGTH.PICK', OWN_ST29, 5, 0.1, 2, 6, 0.5)).toContain('no standard length of own screw passes');
  });
});
