// The fixed words of the sheets of steps are German in a German copy, and nothing else of them is changed.
import { describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { handover } from '../../src/handover/handover';
import { STEP_PHRASES, stepWords } from '../../src/handover/words/step-words';
import { WORDS } from '../../src/handover/words/words';
import { sourceOf } from '../kit/source-of-plan';
import { TITLE } from './kit';

const { said } = WORDS.German.steps;

describe('words of a step', () => {
  it.each([
    ['input, above 0 mm', 'Eingabe, über 0 mm'],
    ['left out: the default, at least 0° and below 90°', 'weggelassen: Standardwert, mindestens 0° und unter 90°'],
    ['typed as "a, b and c", above 0', 'eingegeben als "a, b and c", über 0'],
    ['from the table on Daten, for "ST2.9 ISO 7049"', 'aus der Tabelle auf Daten, für "ST2.9 ISO 7049"'],
    ['± tolerance of the hole depth; default', '± tolerance of the hole depth; Standardwert'],
    ['max(sleeve; board)', 'max(sleeve; board)'],
    ['hole + 2·wall', 'hole + 2·wall'],
    ['cone, flat', 'cone, flat'],
  ])('%s', (english, german) => {
    expect(stepWords(english, said)).toBe(german);
    expect(stepWords(english, WORDS.English.steps.said)).toBe(english);
  });
});

/** Texts of a sheet of a German or an English copy of the demo. */
function textsOf(language: 'English' | 'German'): string[] {
  const { steps, stepRows, variantSteps, tables } = WORDS[language];
  const titles = new Set([steps.title, stepRows.title, variantSteps.title, tables.title]);
  const { sheets } = handover(sourceOf(demoWorkbook), TITLE, { choice: { paper: 'A4', language } }).plan;
  return sheets
    .filter(({ cells }) => cells.some(({ at, value }) => at === 'A1' && titles.has(String(value))))
    .flatMap(({ cells }) => cells.flatMap(({ value }) => (typeof value === 'string' ? [value] : [])));
}

/** Phrases that begin a text, without what fills their gaps. */
const begun = (texts: readonly string[]): number =>
  texts.filter(text => STEP_PHRASES.some(phrase => phrase.length > 12 && text.startsWith(phrase.replace(/ ?\{\}$/, '')))).length;

it('none is left in English', () => {
  expect(begun(textsOf('German'))).toBe(0);
  expect(begun(textsOf('English'))).toBeGreaterThan(200);
});
