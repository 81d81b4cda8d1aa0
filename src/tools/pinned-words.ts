// Words, symbols and the arguments of examples, which no outside source fixes, as they are: pinned, so that a change of one is seen and
// meant. They say nothing of what is right.
import { INPUTS } from '../joint/inputs';
import { NODES } from '../joint/nodes';
import { RULES } from '../joint/rules';
import { CARDS } from '../registry';

/** Function, input, node or rule -> its words. */
export type PinnedWords = Readonly<Record<string, unknown>>;

export const pinnedWords = (): Readonly<Record<'functions' | 'inputs' | 'nodes' | 'rules', PinnedWords>> => ({
  functions: Object.fromEntries(
    [...CARDS.values()].map(({ id, params, result, kind, sources, example, notLive, caution }) => [
      id,
      {
        symbols: params.map(({ symbol }) => symbol ?? '–').join(', '),
        result: JSON.stringify(result),
        example: JSON.stringify(example.args),
        kind,
        sources: sources.map(({ title, held }) => `${title} | ${held}`),
        ...(notLive === undefined ? {} : { notLive }),
        ...(caution === undefined ? {} : { caution }),
      },
    ]),
  ),
  inputs: Object.fromEntries([...INPUTS].map(([name, { meaning, defaultWords }]) => [name, `${defaultWords} | ${meaning}`])),
  nodes: Object.fromEntries([...NODES].map(([name, { unit, meaning }]) => [name, `${unit} | ${meaning}`])),
  rules: Object.fromEntries(
    RULES.map(({ name, broken, basis, reviewWhere }) => [
      name,
      [broken, basis, ...(reviewWhere === undefined ? [] : [reviewWhere.words])].join(' | '),
    ]),
  ),
});
