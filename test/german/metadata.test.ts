// functions-de.json: what a workbook depends on is that of functions.json; the texts are German, fit, and say the same numbers.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ARGUMENTS } from '../../src/german/arguments';
import { FUNCTIONS } from '../../src/german/functions';
import { INPUT_MEANINGS, OUTPUT_MEANINGS, RULES } from '../../src/german/joint';
import { inGerman } from '../../src/german/metadata';
import { METADATA, type FunctionText } from '../../src/tools/metadata';

const GERMAN = METADATA.functions.map(inGerman);

/** Everything but the texts. */
const bare = ({ description: _, parameters, ...rest }: FunctionText) => ({
  ...rest,
  parameters: parameters.map(({ description: __, ...parameter }) => parameter),
});

const pairs: readonly (readonly [english: string, german: string])[] = [...Object.entries(FUNCTIONS), ...Object.entries(ARGUMENTS)];

/** What stands in quotes is typed into a cell as it stands. */
const quoted = (text: string): string[] => (text.match(/"[^"]*"/g) ?? []).sort();
/** Numbers outside quotes; German writes a decimal comma. */
const numbers = (text: string): string[] =>
  text
    .replace(/"[^"]*"/g, '')
    .replace(/(\d),(\d)/g, '$1.$2')
    .match(/\d+(\.\d+)?/g)
    ?.sort() ?? [];

const sameFacts = (english: string, german: string): boolean =>
  JSON.stringify([quoted(english), numbers(english)]) === JSON.stringify([quoted(german), numbers(german)]);

describe('functions-de.json', () => {
  it('holds ids, names, order, parameters, types, dimensions and options of functions.json', () => {
    expect(GERMAN.length).toBeGreaterThanOrEqual(160);
    expect(GERMAN.map(bare)).toEqual(METADATA.functions.map(bare));
    expect(GERMAN.flatMap(({ parameters }) => parameters).length).toBeGreaterThanOrEqual(500);
  });

  it('would see an argument that is another', () => {
    const [first, ...rest] = GERMAN as [FunctionText, ...FunctionText[]];
    const changed = { ...first, parameters: first.parameters.map(parameter => ({ ...parameter, optional: true })) };
    expect([changed, ...rest].map(bare)).not.toEqual(METADATA.functions.map(bare));
  });

  it('fits the boxes of Excel', () => {
    for (const { id, description, parameters } of GERMAN) {
      expect(description, id).toMatch(/^[A-ZÄÖÜ].*\.$/s);
      expect(description.length, id).toBeLessThanOrEqual(1024);
      expect(description.split('\n')[0]?.length, `${id}: ${description}`).toBeLessThanOrEqual(120);
      for (const parameter of parameters) expect(parameter.description.length, `${id} ${parameter.description}`).toBeLessThanOrEqual(100);
    }
  });

  it('says the same numbers and the same words in quotes', () => {
    expect(pairs.length).toBeGreaterThanOrEqual(600);
    for (const [english, german] of pairs) expect(sameFacts(english, german), `${english} | ${german}`).toBe(true);
    expect(sameFacts('0.2 if omitted', 'ohne Angabe 0,3')).toBe(false);
    expect(sameFacts('"cone" if omitted', 'ohne Angabe "Spitze"')).toBe(false);
  });

  it('speaks to nobody, and is German', () => {
    const all = [
      ...pairs.map(([, german]) => german),
      ...Object.values(INPUT_MEANINGS),
      ...Object.values(OUTPUT_MEANINGS),
      ...Object.values(RULES).flatMap(({ name, broken }) => [name, broken]),
    ];
    expect(all.length).toBeGreaterThanOrEqual(800);
    for (const german of all) expect(german).not.toMatch(/\b(Ihnen|you|your|the|with|if omitted|of)\b/);
    const others = pairs.filter(([english, german]) => english === german);
    expect(others.map(([english]) => english)).toEqual(
      ['ISO 4032', '"max" or "min"'].filter(text => others.some(([each]) => each === text)),
    );
  });
});

describe('the manifest', () => {
  it('names the German file beside the English one', () => {
    expect(readFileSync(new URL('../../manifest.xml', import.meta.url), 'utf8')).toMatch(
      /<bt:Url id="Functions\.Metadata\.Url" DefaultValue="([^"]*\/)functions\.json">\s*<bt:Override Locale="de-DE" Value="\1functions-de\.json"\/>/,
    );
  });
});
