// What arguments accept, in German: every phrase of every argument and input.
import { expect, it } from 'vitest';
import { acceptedBy } from '../../src/core/read/accepts';
import { acceptsInGerman } from '../../src/german/accepts';
import { INPUTS } from '../../src/joint/inputs';
import { CARDS } from '../../src/registry';

const params = [...[...INPUTS.values()].map(({ param }) => param), ...[...CARDS.values()].flatMap(card => card.params)];
const all = [...new Set(params.map(acceptedBy))];

/** Words that are English and no name of an argument or a quantity. */
const ENGLISH =
  /\b(a|an|the|or|of|and|its|with|such|as|for|at|most|least|below|above|units|row|value|values|one|number|text|own|is|to|only|taken)\b/;
const unquoted = (text: string): string => text.replaceAll(/"[^"]*"/g, '""');

it('leaves no English word, but names', () => {
  expect(all.length).toBeGreaterThan(80);
  const left = all.map(text => unquoted(acceptsInGerman(text))).filter(text => ENGLISH.test(text));
  expect(left).toEqual([]);
  // the words are looked for in what is English
  expect(all.filter(text => ENGLISH.test(unquoted(text))).length).toBeGreaterThan(60);
});

it('reads as German', () => {
  expect(acceptsInGerman('4.2, "4.2 mm" or "0.167 in" (units: mm, in); or screw and head, "M3 pan": its max diameter; below od')).toBe(
    '4.2, "4.2 mm" oder "0.167 in" (Einheiten: mm, in); oder Schraube und Kopf, "M3 pan": größter Durchmesser; unter od',
  );
});
