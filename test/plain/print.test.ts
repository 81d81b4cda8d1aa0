// Printed formulas can be read in one way only.
import { describe, expect, test } from 'vitest';
import { print, symbol } from '../../src/plain/print';
import { call, CARDS } from '../../src/registry';
import { value } from '../kit/ask';

describe('where a sum and a root end', () => {
  test('STACK.WORST and STACK.RSS: half the sum, half the root', () => {
    expect(value('ABOUT', 'STACK.WORST', 'formula')).toBe('t = (Σ |a_i|·(t_i⁺ − t_i⁻))/2');
    expect(value('ABOUT', 'STACK.RSS', 'formula')).toBe('t = min(k·(√(Σ (a_i·(t_i⁺ − t_i⁻))²)/2); (Σ |a_i|·(t_i⁺ − t_i⁻))/2)');
    expect(value('WORKING', 'STACK.RSS', [[0.3], [0.4]])).toBe(
      'root sum square, ± = min(1·(√((1·(0.3 + 0.3))² + (1·(0.4 + 0.4))²)/2); (1·(0.3 + 0.3) + 1·(0.4 + 0.4))/2) = 0.5 mm',
    );
  });

  test('a sum that is added or taken away needs no brackets', () => {
    expect(value('ABOUT', 'GRIP.LIMITS', 'formula')).toBe('min = Σ s_i + Σ t_i⁻; nominal = Σ s_i; max = Σ s_i + Σ t_i⁺');
    expect(value('ABOUT', 'PENETRATION', 'formula')).toBe('P = L − Σ G');
  });

  test('in every formula: no bare sum under a root, and nothing divides a sum without brackets', () => {
    const formulas = [...CARDS.keys()]
      .map(id => call('ABOUT', [id, 'formula']))
      .flatMap(answer => (answer.ok ? [String(answer.value)] : []));
    expect(formulas.length).toBe(CARDS.size);
    const sums = formulas.filter(text => text.includes('Σ'));
    expect(sums.length).toBeGreaterThanOrEqual(10);
    for (const text of sums) {
      expect(text).not.toContain('√Σ');
      expect(divided(text), text).toBe(false);
    }
  });
});

test('a choice inside a comparison stands in brackets', () => {
  const ratio = ['if', ['=', 'r', ['text', 'long']], ['/', 'a', 'b'], 1] as const;
  const shown = print({ params: ['r', 'a', 'b'], result: ['if', ['<', ratio, 2], 'a', 'b'] }, ['r', 'a', 'b'].map(symbol)).text;
  expect(shown).toBe('if (if r = long: a/b, else 1) < 2: a, else b');
  for (const id of CARDS.keys()) expect(value('ABOUT', id, 'formula')).not.toContain('if if');
});

/** Whether a stroke stands behind a sum sign before its sum has ended: at a bracket that encloses it, at +, − or a separator. */
function divided(text: string): boolean {
  return [...text.matchAll(/Σ/g)].some(({ index }) => {
    let depth = 0;
    for (const c of text.slice(index)) {
      if (c === '(') depth++;
      else if (c === ')' && --depth < 0) return false;
      else if (depth === 0 && /[+−;,:]/.test(c)) return false;
      else if (depth === 0 && c === '/') return true;
    }
    return false;
  });
}
