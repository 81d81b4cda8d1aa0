// A test that is named as evidence is run again with a wrong answer in the place of the right one. If no run of it fails, it is no evidence.
import { afterAll, expect, test as vitestTest } from 'vitest';
import { isOutside } from '../../src/evidence/evidence';
import { EVIDENCE } from '../../src/evidence/list';
import { CARDS } from '../../src/registry';

/** Every number of an answer a twentieth too large, in tables and in texts too. */
function wrong(answer: unknown): unknown {
  if (Array.isArray(answer)) return answer.map(wrong);
  if (typeof answer === 'number') return answer * 1.05;
  return typeof answer === 'string'
    ? answer.replace(/\d+(?:\.(\d+))?/g, (digits, decimals: string | undefined) => (Number(digits) * 1.05).toFixed(decimals?.length ?? 0))
    : answer;
}

/** Whether this run fails while the function answers wrongly. */
export function notices(id: string, run: () => unknown): boolean {
  const card = CARDS.get(id) as unknown as { formula: (...args: unknown[]) => unknown };
  const right = card.formula;
  card.formula = (...args) => wrong(right(...args));
  try {
    run();
    return false;
  } catch {
    return true;
  } finally {
    card.formula = right;
  }
}

/** vitest's `test` for a file under test/ whose tests are named in evidence.ts. */
export function refereed(file: string): typeof vitestTest {
  const named = EVIDENCE.filter(one => one.test === `test/${file}` && isOutside(one));
  const ran = new Set<(typeof named)[number]>();
  const failed = new Set<(typeof named)[number]>();
  const watched =
    (title: string, body: (...args: unknown[]) => unknown) =>
    (...args: unknown[]): void => {
      const run = (): unknown => body(...args);
      if (run() instanceof Promise) throw new Error(`${title}: evidence is worked out at once`);
      for (const one of named.filter(each => title.includes(each.title) && !failed.has(each))) {
        ran.add(one);
        if (notices(one.id, run)) failed.add(one);
      }
    };
  afterAll(() => {
    expect([...ran].filter(one => !failed.has(one)).map(({ id, title }) => `"${title}" passes with 1.05 times what ${id} answers`)).toEqual(
      [],
    );
  });
  return new Proxy(vitestTest, {
    apply: (target, _, [title, body]: [string, () => void]) => target(title, watched(title, body)),
    get: (target, name) =>
      name === 'each'
        ? (rows: readonly unknown[]) => (title: string, body: () => void) => target.each(rows)(title, watched(title, body))
        : (Reflect.get(target, name) as unknown),
  });
}
