// Which way a result moves when one argument grows, as the trade expects it. A lost or turned sign fails here.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { CARDS, call } from '../../src/registry';
import { SEED } from '../kit/seed';

/** `+` rises, `-` falls, `=` stays, ` ` is not asked. */
type Signs = string;

const B = 'ST2.9';
/** Arguments about which the test varies, and the sign of each; of a row of results, its first. */
const EXPECTED: readonly (readonly [id: string, args: readonly (number | string)[], signs: Signs, why: string])[] = [
  ['HOLE.PILOT', [B, 0.75], ' -', 'a higher share asks for a smaller hole'],
  ['HOLE.THREAD.SHARE', [B, 2.5], ' -', 'a bigger hole leaves less thread'],
  ['HOLE.AT', [3, 10, 0.5], '+--', 'it narrows with depth and draft'],
  ['HOLE.MOUTH', [3, 10, 0.5], '+++', 'held below, the mouth is wider'],
  ['HOLE.TIGHT', [B, 2.4, 10, 0.5], ' +--', 'deeper and more draft is tighter'],
  ['HOLE.DEPTH', [10, 1, 0.1], '+++', 'everything asks for more depth'],
  ['HOLE.FLOOR', [2.5, 12, 10], '++-', 'a deeper hole leaves less floor'],
  ['HOLE.RELIEF', [B, 0.2], ' +', 'more play, wider relief'],
  ['HOLE.FLOATING', [3, 0.2], '++', 'a larger zone asks for a larger hole'],
  ['HOLE.FIXED', [3, 0.2, 0.1], '+++', 'both zones do'],
  ['POSITION.ZONE', [0.1, 0.2], '++', 'further off centre, larger zone'],
  ['PIN.RATIO', [10, 2.4], '+-', 'long and thin is slender'],
  ['PIN.DEFLECTION', [10, 2.4, 10, 210000], '+-+-', 'long, thin, soft and loaded bends'],
  ['DRAFT.OFFSET', [10, 1], '++', 'more draft, more offset'],
  ['DRAFT.ANGLE', [0.2, 10], '+-', 'the same offset over more height is less draft'],
  ['DRAFT.HEIGHT', [0.2, 1], '+-', 'more draft uses the offset up sooner'],
  ['DRAFT.SIZE', [6, 10, 1, 'grows'], '+++ ', 'away from the free end'],
  ['DRAFT.SIZE', [6, 10, 1, 'shrinks'], '+-- ', 'away from the floor'],
  ['DRAFT.TEXTURE', [1, 0.05, 1.5], '+++', 'a deeper texture asks for more draft'],
  ['WALL.FEATURE', [2.5, 0.6], '++', 'a share of the wall'],
  ['BOSS.OD', [2.4, 1.5, 10, 0.5], '++++', 'more draft, wider root'],
  ['BOSS.OD.RULE', [B, 2], ' +', 'ratio times d'],
  ['BOSS.WALL', [6, 2.4, 8, 0.5, 0.25, 20], '+-+++=', 'thicker towards the root'],
  ['BOSS.SLENDER', [12, 6], '+-', 'tall and thin is slender'],
  ['BOSS.SINK', [1.5, 2.5], '+-', 'a thick boss on a thin wall sinks'],
  ['BOSS.STEEL', [3, 12, 0.5, 1], '+---', 'height and draft eat the steel'],
  ['BOSS.FLAT', [2, 0.5, 0.6], '+--', 'fillets eat the flat'],
  ['BOSS.MASS', [6, 2.4, 12, 1.05, 0.5, 0.25, 10], '+-++++-', 'more plastic is heavier'],
  ['BOSS.TORSION', [0.6, 6, 2.4], '+-+', 'a thinner tube is stressed more'],
  ['RECESS.DIAMETER', [5.6, 0.6, 3, 1], '++++', 'wider at the outer face'],
  ['RECESS.DEPTH', [5.5, 2.5], '+-', 'more seat, less recess'],
  ['RECESS.SEAT', [5.5, 3], '+-', 'more recess, less seat'],
  ['RECESS.DEPTH.MIN', [2.4, 0.2], '++', 'a taller head lies deeper'],
  ['RECESS.FLUSH', [3, 2.4], '+-', 'a taller head stands out'],
  ['RECESS.FLOAT', [5.6, 3.5, 2.76, 0.1], '++-+', 'more play, wider recess'],
  ['RECESS.CONE', [6.3, 3.4, 90], ' --', 'a blunt cone is shallow'],
  ['RECESS.TOOL', [8, 6, 0.5], '+--', 'a thicker tool has less room'],
  ['GRIP', [4.1], '+', 'a sum'],
  ['GRIP.LIMITS', [4.1, 0.2], '+-', 'the least grip'],
  ['PENETRATION', [13, 4.1], '+-', 'a longer screw goes deeper'],
  ['ENGAGEMENT', [13, 4.1, 0.8, 2.6], '+---', 'a longer screw holds more; grip, relief and point hold less'],
  ['ENGAGEMENT.LIMITS', [13, 0.8, 4.1, 0.2, 0.8, 0.1, 2.6], '+------', 'the worst engagement'],
  ['ENGAGEMENT.RATIO', [7, B], '+ ', 'per d'],
  ['SCREW.BOTTOM', [14, 0.1, 16, 0.8, 4.1, 0.2], '+---+-', 'a longer screw leaves less room'],
  ['PULLOUT', [B, 6, 40, 1.5], ' ++-', 'more thread and strength hold more'],
  ['PULLOUT.BOSS', [6, B, 40, 1.5], '+ +-', 'a thicker boss holds more'],
  ['PULLOUT.SEAT', [5.3, 2, 40, 1.5], '+++-', 'a thicker seat holds more'],
  ['TORQUE.STRIP', [1100, B, 0.2], '+ +', 'more friction strips later'],
  ['TORQUE.SET', [0.15, 0.5, 0.5], '+++', 'between drive and strip'],
  ['TORQUE.CLAMP', [200, B, 0.2, 0.25, 5.6, 3.4, 30], '+ +++++', 'friction takes torque'],
  ['BEARING', [200, 5.6, 3.4], '+-+', 'a wider head presses less, a wider hole more'],
  ['HOOP.STRESS', [0.04, 4, 8, 2600, 0.4], '+ -+-', 'a thicker ring is stressed less at its bore'],
  ['HOOP.LIMIT', [60, 4, 8, 2400, 0.38], '+ +-+', 'a thicker ring bears more interference'],
  ['HOOP.PUSH', [0.04, 4, 8, 6, 2600, 0.4, 0.2], '+ +++-+', 'a longer pin holds more'],
  ['BOARD.GAP', [60, 0.2, 63, 0.3, 5, 1], '--+-++', 'a larger board has less gap'],
  ['BOARD.CLAMP', [1.9, 0.1, 1.6, 0.1], '+---', 'the least gap'],
  ['BOARD.REACH', [5.6, 3.5, 2.76, 0.1], '++-+', 'play lets metal reach further'],
  ['BOARD.MARGIN', [6, 3, 2], '+--', 'what is left'],
  ['BOARD.KEEPOUT', [5.6, 1.25], '++', 'a factor'],
  ['BOARD.SLEEVE', [6, 5.6, 0.05], '+--', 'play'],
  ['BOARD.HOLD', [8, 6, 5.6, 0.05], '+-+-', 'a wider board hole leaves less ring'],
  ['BOARD.SAG', [10, 60, 20, 1.6, 20000, 'clamped'], '++--- ', 'a longer, thinner, softer strip sags'],
  ['BOARD.STRAIN', [10, 60, 20, 1.6, 20000, 'simple'], '++--- ', 'a longer, thinner, softer strip is strained'],
  ['BOARD.FREQUENCY', [100, 80, 1.6, 60, 20000, 0.2, 'simple'], '  +-++ ', 'thick, stiff and light swings fast'],
  ['BOARD.FREQUENCY', [120, 80, 1.6, 60, 20000, 0.2, 'corners'], '- +-++ ', 'a longer board on its corners swings slower'],
  ['THERMAL.GAP', [100, 80, 15, 40], '++-+', 'further apart, more gap'],
  ['SNAP.STRAIN', [2, 15, 2, 0.7], '+-+ ', 'a long, thin hook is strained little'],
  ['SNAP.STRAIN', [2, 15, 2, 1.5], '+-++', 'a thinner tip takes the strain off the root'],
  ['SNAP.DEFLECTION', ['2 %', 15, 2, 1.5], ' +--', 'a long, thin hook reaches far'],
  ['SNAP.FORCE', [2, 15, 5, 2, 2400, 1.5], '+-++++', 'thick, wide and stiff pushes back'],
  ['SNAP.MATING', [14, 30, 0.3], '+++', 'a steep, rough ramp pushes back'],
  ['RIB.TIP', [2, 10, 0.5], '+--', 'more draft, thinner tip'],
  ['RIB.BASE', [1, 10, 0.5], '+++', 'more draft, thicker base'],
  ['LIP.SKIN', [2.5, 1, 0.15], '+--', 'the lip takes from the wall'],
  ['LIP.FIT', [0.3, 0.05, 0.05, 0.08], '+---', 'the least clearance'],
  ['RIM.GAP', [25.5, 25], '+-', 'taller bosses open the rim'],
  ['RIM.GAP.LIMITS', [25.5, 0.1, 25, 0.1], '+---', 'the least gap'],
  ['RIM.SAG', [40, 0.5, 2400, 80], '++--', 'a long, loaded, soft rim opens'],
  ['RIM.PITCH', [0.05, 0.5, 2400, 80], '+-++', 'a stiff rim takes a wider pitch'],
  ['SEAL.SQUEEZE', [2, 0.08, 1.5, 0.05, 0.1, 0.05, 0.02], '+------', 'the least squeeze'],
  ['SEAL.FILL', [2, 2.8, 1.5, 0.08, 0.05, 0.05], '+--+++', 'a thick cord fills a small groove'],
  ['SEAL.STRETCH', [50, 53], '-+', 'a larger groove stretches more'],
  ['JUNCTION.CIRCLE', [2.5, 1.5, 0.5], '+++', 'more plastic, larger circle'],
  ['JUNCTION.RATIO', [2.5, 1.5, 0.5], '-++', 'a thicker wall bears a thicker rib'],
  ['COOLING.TIME', [2, 0.085, 240, 60, 90], '+-++-', 'thick and hot takes long'],
  ['CAVITY.SIZE', [100, 0.02], '++', 'more shrinkage, larger cavity'],
  ['STACK.NOMINAL', [5, 2], '++', 'a sum'],
  ['STACK.WORST', [0.2, 1], '++', 'a sum'],
  ['STACK.PPM', [2, 0.3, 0.5, 3.2], ' ++-', 'wider limits leave fewer outside'],
  ['STACK.CPK', [2, 0.3, 0.5, 2.6], '--=+', 'nearer to the upper limit, less capable'],
];

function resultOf(id: string, args: readonly (number | string)[]): number | undefined {
  const answer = call(id, args);
  return answer.ok ? ([answer.value].flat(2)[0] as number) : undefined;
}

const cases = EXPECTED.flatMap(([id, args, signs, why]) =>
  [...signs].flatMap((sign, i) => (sign === ' ' ? [] : [{ id, args, i, sign, why, name: CARDS.get(id)?.params[i]?.name ?? '?' }])),
);

describe(`one argument grows (seed ${SEED})`, () => {
  test('count: functions, arguments', () => {
    expect(new Set(EXPECTED.map(([id]) => id)).size).toBeGreaterThanOrEqual(75);
    expect(cases.length).toBeGreaterThanOrEqual(210);
    for (const [id, args, signs] of EXPECTED) {
      expect(CARDS.has(id), id).toBe(true);
      expect(signs.length, id).toBe(args.length);
    }
  });

  test.each(cases)('$id $name $sign: $why', ({ id, args, i, sign }) => {
    let compared = 0;
    const nudge = fc.integer({ min: -30, max: 30 }).map(thousandths => 1 + thousandths / 1000);
    fc.assert(
      fc.property(fc.tuple(...args.map(() => nudge)), fc.integer({ min: 5, max: 60 }), (nudges, grown) => {
        const from = args.map((arg, j) => (typeof arg === 'number' ? arg * (nudges[j] ?? 1) : arg));
        const to = from.map((arg, j) => (j === i ? (arg as number) * (1 + grown / 1000) : arg));
        const [before, after] = [resultOf(id, from), resultOf(id, to)];
        if (before === undefined || after === undefined) return;
        compared++;
        if (sign === '+') expect(after).toBeGreaterThan(before);
        else if (sign === '-') expect(after).toBeLessThan(before);
        else expect(after).toBe(before);
      }),
      { seed: SEED, numRuns: 40 },
    );
    expect(compared).toBeGreaterThan(20);
  });

  test.each([
    ['SCREW.COUNT', [2000, 1105.7, 2], 0, 1],
    ['SCREW.COUNT', [2000, 1105.7, 2], 1, -1],
    ['SCREW.COUNT', [2000, 1105.7, 2], 2, 1],
    ['STACK.RSS', [0.2, 1, 1.5], 2, 1],
  ] as const)('%s %j argument %d never moves the other way (%d)', (id, args, i, direction) => {
    let last = direction * -Infinity;
    for (let factor = 0.2; factor < 6; factor *= 1.05) {
      const result = resultOf(
        id,
        args.map((arg, j) => (j === i ? arg * factor : arg)),
      );
      if (result === undefined) continue;
      expect(direction * result).toBeGreaterThanOrEqual(direction * last - 1e-12);
      last = result;
    }
    expect(Number.isFinite(last)).toBe(true);
  });
});
