// What a program may use says what it is: every formula what it gives, its symbols with their units, its limits and its source, as its card
// has them; everything else that the library exports has a sentence.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { type Card, described, type Param } from '../../src/core/card';
import { CORE_CARDS } from '../../src/core/cards';
import { CORE_WORDS } from '../../src/core/words';
import { limitWords } from '../../src/core/read/limits';

const ROOT = path.join(import.meta.dirname, '../..');
const INDEX = 'src/library/index.ts';
const MOST_LINES = 6;
/** The words after the names of a formula's arguments and of the formula itself, longest first. */
const UNITS = Object.entries({
  ...{ NPerMm: 'N/mm', GPerCm3: 'g/cm³', Mm2PerS: 'mm²/s', PpmPerK: '1e-6/K', Mm4: 'mm⁴', Mm3: 'mm³', Mm: 'mm', Deg: '°' },
  ...{ Mpa: 'MPa', Nm: 'N·m', N: 'N', C: '°C', K: 'K', G: 'g', S: 's' },
});

interface Documented {
  readonly file: string;
  readonly name: string;
  readonly params: readonly string[];
  readonly lines: readonly string[];
}

const unitIn = (name: string): string | undefined => UNITS.find(([word]) => new RegExp(`[a-zA-Z]${word}$`).test(name))?.[1];

const sourceOf = (file: string): ts.SourceFile =>
  ts.createSourceFile(file, readFileSync(path.join(ROOT, file), 'utf8'), ts.ScriptTarget.ES2021, true);

/** The last docstring before a statement, a line each. */
function linesOf(node: ts.Node): string[] {
  const doc = ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc).at(-1);
  return (doc?.getText() ?? '')
    .replace(/^\/\*\*|\*\/$/g, '')
    .split('\n')
    .map(line => line.replace(/^ *\*/, '').trim())
    .filter(line => line !== '');
}

const isExported = (node: ts.Statement): boolean =>
  ts.canHaveModifiers(node) && ts.getModifiers(node)?.some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword) === true;

/** Everything that a file exports under its own name. */
const exportsOf = (file: string): Documented[] =>
  sourceOf(file)
    .statements.filter(isExported)
    .flatMap((node): Documented[] => {
      const lines = linesOf(node);
      if (ts.isFunctionDeclaration(node))
        return [{ file, name: node.name?.text ?? '', params: node.parameters.map(({ name }) => name.getText()), lines }];
      if (ts.isVariableStatement(node))
        return node.declarationList.declarations.map(({ name }) => ({ file, name: name.getText(), params: [], lines }));
      return ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)
        ? [{ file, name: node.name.text, params: [], lines }]
        : [{ file, name: node.getText(), params: [], lines: [] }];
    });

/** What the library exports, with where it is declared. */
const IN_LIBRARY = sourceOf(INDEX)
  .statements.filter(ts.isExportDeclaration)
  .flatMap(({ moduleSpecifier, exportClause }) => {
    const all = exportsOf(path.join('src/library', `${(moduleSpecifier as ts.StringLiteral).text}.ts`));
    if (exportClause === undefined) return all;
    return (exportClause as ts.NamedExports).elements.map(({ name: { text } }) => all.find(({ name }) => name === text) ?? text);
  });

const formulaOf = ({ reads, formula }: Card): string => (reads ?? formula).name;
const CARD_OF = new Map(described(CORE_CARDS, CORE_WORDS).map(card => [formulaOf(card), card]));

const TOPIC_FILES = readdirSync(path.join(ROOT, 'src/core'), { recursive: true, encoding: 'utf8' })
  .filter(file => file.includes(path.sep) && file.endsWith('.ts'))
  .map(file => path.join('src/core', file));

/** Formulas that a card calls, and those that the library exports besides. */
const FORMULAS = (() => {
  const found = new Map<string, Documented>();
  const isFunction = (entry: Documented | string): entry is Documented =>
    typeof entry !== 'string' && entry.file.startsWith('src/core/') && entry.params.length > 0;
  for (const one of [...IN_LIBRARY, ...TOPIC_FILES.flatMap(exportsOf)].filter(isFunction))
    if (CARD_OF.has(one.name) || IN_LIBRARY.some(other => isFunction(other) && other.name === one.name))
      found.set(`${one.file} ${one.name}`, one);
  return [...found.values()];
})();

/** `… N·m …`, as a word. */
const says = (text: string, unit: string): boolean => text.split(/[\s,.:;()]+/).includes(unit);

const symbolOf = ({ symbol, name }: Param): string => symbol ?? name;

/** `D outside diameter, mm`: its symbol where a card has one, its unit where card or name has one. */
function itemFaults(item: string, name: string, param: Param | undefined): string[] {
  const units = [...new Set([unitIn(name), param?.kind.unit])].filter(unit => unit !== undefined && unit !== '');
  return [
    ...(item === '' ? [`${name} is not said`] : []),
    ...units.filter(unit => !item.endsWith(`, ${unit}`)).map(unit => `${name} is without ${unit}: ${item}`),
    ...(param !== undefined && !item.startsWith(`${symbolOf(param)} `) ? [`${name} is not ${symbolOf(param)}: ${item}`] : []),
  ];
}

function limitFaults(text: string, { id, params }: Card): string[] {
  const [, said] = new RegExp(`\\b${id.replaceAll('.', '\\.')}(?: accepts|:| sets) (.*?)\\. ?Source: `).exec(text) ?? [];
  if (said === undefined) return [`the limits of ${id} are not said`];
  const clauses = said.split('; ');
  const nameless = (words: string): string =>
    words.replace(/(above|below|at least|at most) (\w+)(\.\w+)?/, (whole, than: string, name: string) => {
      const other = params.find(param => param.name === name);
      return other === undefined ? whole : `${than} ${symbolOf(other)}`;
    });
  const refuses = params.some(({ relation }) => relation !== undefined && 'refusal' in relation);
  const unsaid = refuses && !clauses.some(clause => / (is|are) refused$/.test(clause)) ? [`what ${id} refuses is not said`] : [];
  const unlimited = params.flatMap(param => {
    const { kind, limits, relation, blank } = param;
    const wanted = [
      limitWords(limits ?? (kind.is === 'list' ? kind.limits : undefined), kind.unit),
      relation !== undefined && 'words' in relation ? nameless(relation.words) : '',
      blank === 'explicit' ? 'a bare 0 or a blank refused' : '',
    ].filter(words => words !== '');
    const isSaid = clauses.some(clause => {
      const whose = clause.slice(0, clause.indexOf(` ${wanted[0]}`)).split(', ');
      return clause === `${whose.join(', ')} ${wanted.join(', ')}` && whose.includes(symbolOf(param));
    });
    return wanted.length === 0 || isSaid ? [] : [`${symbolOf(param)} ${wanted.join(', ')}: not said of ${param.name}`];
  });
  return [...unlimited, ...unsaid];
}

function cardFaults(text: string, summary: string, card: Card): string[] {
  const { result, sources } = card;
  const units = 'columns' in result ? result.columns.map(({ unit }) => unit) : 'unit' in result ? [result.unit] : [];
  return [
    ...[...new Set(units)].filter(unit => unit !== '' && !says(summary, unit)).map(unit => `the result is without ${unit}`),
    ...limitFaults(text, card),
    ...sources
      .map(({ title, held }) => (title === held ? title : `${title} (${held})`))
      .filter(source => !text.slice(text.indexOf(' Source: ')).includes(source))
      .map(source => `without its source: ${source}`),
  ];
}

interface Parts {
  readonly summary: readonly string[];
  readonly items: readonly string[];
  readonly rest: readonly string[];
  readonly faults: readonly string[];
}

/** Summary, items, and what comes after; the items begin a line of their own, where they fit the arguments best. */
function partsOf({ name, params, lines }: Documented): Parts | undefined {
  const card = CARD_OF.get(name);
  const end = lines.findIndex(line => (card === undefined ? /^Limits: as [A-Z.]+ has/ : new RegExp(`^${card.id}[: ]`)).test(line));
  const readings = Array.from({ length: Math.max(end - 1, 0) }, (_, i): Parts => {
    const items = lines
      .slice(i + 1, end)
      .join(' ')
      .replace(/\.$/, '')
      .split('; ');
    const faults = [
      ...(items.length === params.length ? [] : [`${items.length} items for ${params.length} arguments`]),
      ...params.flatMap((param, j) => itemFaults(items[j] ?? '', param, card?.params[j])),
    ];
    return { summary: lines.slice(0, i + 1), items, rest: lines.slice(end), faults };
  });
  return readings.sort((one, other) => one.faults.length - other.faults.length)[0];
}

/** What is missing of summary, items, limits and source. */
function faultsOf(one: Documented): string[] {
  const parts = partsOf(one);
  if (parts === undefined) return ['no docstring of summary, items, limits and source'];
  const card = CARD_OF.get(one.name);
  const text = one.lines.join(' ');
  const summary = parts.summary.join(' ');
  const unit = unitIn(one.name);
  return [
    ...parts.faults,
    ...(unit !== undefined && !says(summary, unit) ? [`${one.name} is without ${unit}`] : []),
    ...(card === undefined ? [] : cardFaults(text, summary, card)),
    ...(/ Source: ./.test(text) ? [] : ['no source']),
    ...(/ has them/.test(parts.rest.join(' ')) && !CORE_CARDS.some(({ id }) => parts.rest[0]?.includes(` ${id} has`))
      ? ['no such card']
      : []),
    ...(one.lines.length > MOST_LINES ? [`${one.lines.length} lines`] : []),
  ];
}

test('every formula says what it gives, its symbols with units, its limits and its source, as its card has them', () => {
  const carded = FORMULAS.filter(({ name }) => CARD_OF.has(name));
  // the version of functions and data is no formula of a topic
  expect([...CARD_OF.keys()].filter(name => carded.every(one => one.name !== name))).toEqual(['versionText']);
  expect(carded.length).toBe(CARD_OF.size - 1);
  expect(FORMULAS.length).toBeGreaterThan(110);
  expect(FORMULAS.flatMap(({ params }) => params.filter(name => unitIn(name) !== undefined)).length).toBeGreaterThan(250);
  expect(FORMULAS.flatMap(one => faultsOf(one).map(fault => `${one.file} ${one.name}: ${fault}`))).toEqual([]);
});

test('everything else that the library exports has a sentence', () => {
  expect(IN_LIBRARY.length).toBeGreaterThan(85);
  expect(IN_LIBRARY.filter(one => typeof one === 'string' || one.lines.length === 0)).toEqual([]);
});

test('what is left out or wrong is found, in every docstring', () => {
  let planted = 0;
  const unseen: string[] = [];
  for (const one of FORMULAS) {
    const { summary = [], items = [], rest = [] } = partsOf(one) ?? {};
    const plant = (what: string, lines: readonly string[]): void => {
      if (lines.join(' ') === one.lines.join(' ')) return;
      planted++;
      if (faultsOf({ ...one, lines }).length === 0) unseen.push(`${one.name}: ${what}`);
    };
    const withItems = (changed: readonly string[]): string[] => [...summary, `${changed.join('; ')}.`, ...rest];
    const withRest = (from: string | RegExp, to: string): string[] => [
      ...summary,
      `${items.join('; ')}.`,
      rest.join(' ').replace(from, to),
    ];
    const card = CARD_OF.get(one.name);
    plant('no docstring', []);
    plant('too many lines', [...one.lines, ...Array<string>(MOST_LINES).fill('more')]);
    plant('no limits and no source', withItems(items).slice(0, -rest.length));
    plant('no source', withRest(/ Source: .*/, ''));
    plant('an item less', withItems(items.slice(1)));
    for (const [i, name] of one.params.entries()) {
      if (unitIn(name) !== undefined)
        plant(`${name} without its unit`, withItems(items.map((item, j) => (i === j ? item.replace(/, [^,]*$/, '') : item))));
      if (card !== undefined) plant(`${name} with another symbol`, withItems(items.map((item, j) => (i === j ? `x${item}` : item))));
    }
    if (unitIn(one.name) !== undefined)
      plant('no unit of the result', [
        ...summary.map(line => line.replaceAll(`, ${unitIn(one.name)}`, '')),
        ...one.lines.slice(summary.length),
      ]);
    if (card === undefined) {
      plant('limits of no card', withRest(' has', '.X has'));
      continue;
    }
    for (const [limit] of rest
      .join(' ')
      .split(' Source: ')[0]
      ?.matchAll(/ (above|below|at least|at most) -?[0-9]+/g) ?? [])
      plant(`another limit than${limit}`, withRest(limit, `${limit}1`));
    if (card.params.some(({ relation }) => relation !== undefined && 'refusal' in relation))
      plant('no refusal', withRest(/; [^;]* refused(?=\. ?Source: )/, ''));
    for (const { title } of card.sources) plant(`${title} reworded`, withRest(title, title.slice(1)));
  }
  expect(unseen).toEqual([]);
  expect(planted).toBeGreaterThan(1500);
});
