// Every single thing that can be changed in the tables, by its kind: found in the syntax tree, so that nothing else of the file moves.
// What changes no value is not offered.
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';

export const KINDS = ['digit', 'swap of neighbours', '±1 in two rows', 'unit', 'edition', 'how held', 'limit'] as const;
export type Kind = (typeof KINDS)[number];

export interface Corruption {
  readonly kind: Kind;
  readonly file: string;
  readonly line: number;
  readonly said: string;
  readonly text: string;
  readonly changed: string;
}

/** A number below the bound. */
type Draw = (bound: number) => number;

const MATERIALS = 'src/standards/material-ranges.ts';
const QUANTITIES = 'src/core/material/material.ts';
export const FILES: readonly string[] = [
  ...readdirSync('src/standards')
    .filter(name => name !== 'table.ts')
    .sort()
    .map(name => `src/standards/${name}`),
  QUANTITIES,
];

interface Source {
  readonly file: string;
  readonly text: string;
  readonly tree: ts.SourceFile;
  readonly nodes: readonly ts.Node[];
}

const SOURCES: readonly Source[] = FILES.map(file => {
  const text = readFileSync(file, 'utf8');
  const tree = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const nodes: ts.Node[] = [];
  const visit = (node: ts.Node): void => void (nodes.push(node), ts.forEachChild(node, visit));
  visit(tree);
  return { file, text, tree, nodes };
});

type Edit = readonly [node: ts.Node, by: string];

function corruption(kind: Kind, { file, text, tree }: Source, edits: readonly Edit[]): Corruption {
  const changed = [...edits]
    .sort(([a], [b]) => b.getStart() - a.getStart())
    .reduce((whole, [node, by]) => whole.slice(0, node.getStart()) + by + whole.slice(node.end), text);
  const said = edits.map(([node, by]) => `${node.getText()} → ${by}`).join(', ');
  return { kind, file, line: tree.getLineAndCharacterOfPosition((edits[0] as Edit)[0].getStart()).line + 1, said, text, changed };
}

const propertyOf = (node: ts.Node): string => (ts.isPropertyAssignment(node.parent) ? node.parent.name.getText() : '');
const isMinus = (node: ts.Node): node is ts.PrefixUnaryExpression => ts.isPrefixUnaryExpression(node) && ts.isNumericLiteral(node.operand);
const isValue = (node: ts.Node): boolean => ts.isNumericLiteral(node) || isMinus(node) || node.kind === ts.SyntaxKind.NullKeyword;
const isName = (node: ts.Node): node is ts.StringLiteral => ts.isStringLiteral(node) && ts.isArrayLiteralExpression(node.parent);

/** Columns of a file as lists of values: of a table down its rows, of the materials one quantity through them all. */
function columns({ file, nodes }: Source): readonly (readonly ts.Node[])[] {
  const lists = new Map<string, ts.Node[]>();
  const add = (name: string, values: readonly ts.Node[]): void =>
    values.forEach((value, i) => isValue(value) && lists.set(`${name} ${i}`, [...(lists.get(`${name} ${i}`) ?? []), value]));
  for (const node of nodes) {
    if (file === MATERIALS && ts.isPropertyAssignment(node) && ts.isCallExpression(node.initializer)) {
      const array = node.initializer.arguments.find(ts.isArrayLiteralExpression);
      add(node.name.getText(), array?.elements ?? node.initializer.arguments);
    }
    if (ts.isArrayLiteralExpression(node) && propertyOf(node) === 'rows')
      for (const row of node.elements) if (ts.isArrayLiteralExpression(row)) add(String(node.pos), row.elements.slice(1));
  }
  return [...lists.values()];
}

const NUMBER = /^(0|[1-9]\d*)(\.\d+)?$/;

/** One digit of a number, or of the name of a row, is another. */
function digits(source: Source, draw: Draw): Corruption[] {
  const numbers = columns(source)
    .flat()
    .filter(node => node.kind !== ts.SyntaxKind.NullKeyword);
  const names = source.nodes.filter(
    node => isName(node) && ts.isArrayLiteralExpression(node.parent.parent) && propertyOf(node.parent.parent) === 'rows',
  );
  return [...numbers, ...names].flatMap(node => {
    const before = node.getText();
    const places = [...before].flatMap((sign, i) => (/\d/.test(sign) ? [i] : []));
    if (places.length === 0) return [];
    const place = places[draw(places.length)] as number;
    const by = before.slice(0, place) + ((Number(before[place]) + 1 + draw(9)) % 10) + before.slice(place + 1);
    if (!ts.isStringLiteral(node) && (!NUMBER.test(by.replace('-', '')) || Number(by) === Number(before))) return [];
    return [corruption('digit', source, [[node, by]])];
  });
}

const pairs = (list: readonly ts.Node[]): readonly (readonly [ts.Node, ts.Node])[] =>
  list.slice(1).map((node, i) => [list[i] as ts.Node, node]);

const swaps = (source: Source): Corruption[] =>
  columns(source)
    .flatMap(pairs)
    .filter(([a, b]) => a.getText() !== b.getText())
    .map(([a, b]) =>
      corruption('swap of neighbours', source, [
        [a, b.getText()],
        [b, a.getText()],
      ]),
    );

/** The last digit of two neighbours, up and down, so that their sum stays. */
const sums = (source: Source, draw: Draw): Corruption[] =>
  columns(source)
    .flatMap(pairs)
    .filter(both => both.every(node => node.kind !== ts.SyntaxKind.NullKeyword))
    .map(([a, b]) => {
      const places = Math.max(...[a, b].map(node => node.getText().split('.')[1]?.length ?? 0));
      const up = draw(2) === 0 ? 1 : -1;
      const moved = (node: ts.Node, by: number): string => String(Number((Number(node.getText()) + by * 10 ** -places).toFixed(places)));
      return corruption('±1 in two rows', source, [
        [a, moved(a, up)],
        [b, moved(b, -up)],
      ]);
    });

/** Texts of one property in all tables, each for another of them. */
const texts = (property: string): readonly string[] => [
  ...new Set(
    SOURCES.flatMap(({ nodes }) =>
      nodes.filter(node => ts.isStringLiteral(node) && propertyOf(node) === property).map(node => node.getText()),
    ),
  ),
];
const other = (all: readonly string[], text: string, draw: Draw): string => {
  const rest = all.filter(one => one !== text);
  return rest[draw(rest.length)] as string;
};
const replaced = (kind: Kind, source: Source, nodes: readonly ts.Node[], all: readonly string[], draw: Draw): Corruption[] =>
  nodes.map(node => corruption(kind, source, [[node, other(all, node.getText(), draw)]]));

function units(source: Source, draw: Draw): Corruption[] {
  const strings = source.nodes.filter(
    node =>
      ts.isStringLiteral(node) &&
      (propertyOf(node) === 'unit' || (ts.isCallExpression(node.parent) && node.parent.expression.getText() === 'range')),
  );
  const quantities =
    source.file === QUANTITIES
      ? source.nodes.filter(node => ts.isPropertyAccessExpression(node) && node.expression.getText() === 'Q' && propertyOf(node) !== '')
      : [];
  const quantityNames = quantities.map(node => node.getText());
  return [
    ...replaced(
      'unit',
      source,
      strings,
      source.file === MATERIALS ? ["'mm²/s'", "'MPa'", "'1'", "'°C'", "'g/cm³'", "'1e-6/K'"] : texts('unit'),
      draw,
    ),
    ...replaced('unit', source, quantities, [...new Set(quantityNames)], draw),
  ];
}

const editions = (source: Source, draw: Draw): Corruption[] =>
  source.nodes
    .filter(node => ts.isStringLiteral(node) && propertyOf(node) === 'edition')
    .map(node => {
      const years = [...node.getText().matchAll(/\d{4}/g)];
      const year = years[draw(Math.max(years.length, 1))];
      const by =
        year === undefined
          ? other(texts('edition'), node.getText(), draw)
          : node.getText().slice(0, year.index) + (Number(year[0]) + 1 + draw(9)) + node.getText().slice(year.index + 4);
      return corruption('edition', source, [[node, by]]);
    });

function held(source: Source, draw: Draw): Corruption[] {
  if (source.file === MATERIALS) {
    const words = source.nodes.filter(
      node => ts.isIdentifier(node) && ['MEMORY', 'MERGED', 'PRACTICE'].includes(node.text) && ts.isCallExpression(node.parent),
    );
    const left = source.nodes.filter(
      node => ts.isArrayLiteralExpression(node) && ts.isCallExpression(node.parent) && node.parent.arguments.at(-1) === node,
    );
    return [
      ...replaced('how held', source, words, ['MEMORY', 'MERGED', 'PRACTICE'], draw),
      ...left.map(node => corruption('how held', source, [[node, `${node.getText()}, ${draw(2) === 0 ? 'MEMORY' : 'PRACTICE'}`]])),
    ];
  }
  return replaced(
    'how held',
    source,
    source.nodes.filter(node => ts.isStringLiteral(node) && propertyOf(node) === 'held'),
    texts('held'),
    draw,
  );
}

function limits(source: Source, draw: Draw): Corruption[] {
  if (source.file === MATERIALS)
    return replaced(
      'limit',
      source,
      source.nodes.filter(
        node => ts.isStringLiteral(node) && ts.isCallExpression(node.parent) && node.parent.expression.getText() === 'strength',
      ),
      ["'yield'", "'break'"],
      draw,
    );
  return replaced(
    'limit',
    source,
    source.nodes.filter(node => ts.isStringLiteral(node) && propertyOf(node) === 'limit'),
    texts('limit'),
    draw,
  );
}

const MADE: Readonly<Record<Kind, (source: Source, draw: Draw) => Corruption[]>> = {
  digit: digits,
  'swap of neighbours': swaps,
  '±1 in two rows': sums,
  unit: units,
  edition: editions,
  'how held': held,
  limit: limits,
};

export const corruptions = (kind: Kind, draw: Draw): Corruption[] => SOURCES.flatMap(source => MADE[kind](source, draw));
