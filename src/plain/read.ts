// Build step: reads the syntax tree of every formula into its plain form, so that each formula is written once.
// Writes forms.json: the forms by function name, and which function each card, joint node and joint default calls.
// A function outside the subset (named steps, one return, arithmetic, choices, look-ups on records, other formulas)
// has no form. A card without one is a look-up in a standard's table or says why it is not live, and what the joint declares
// as made by a formula has one; else the build stops.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import ts from 'typescript';
import type { Form, Tree } from './tree';

const ROOT = join(import.meta.dirname, '..');
const BINARY = {
  [ts.SyntaxKind.PlusToken]: '+',
  [ts.SyntaxKind.MinusToken]: '-',
  [ts.SyntaxKind.AsteriskToken]: '*',
  [ts.SyntaxKind.SlashToken]: '/',
  [ts.SyntaxKind.AsteriskAsteriskToken]: '^',
  [ts.SyntaxKind.LessThanToken]: '<',
  [ts.SyntaxKind.LessThanEqualsToken]: '<=',
  [ts.SyntaxKind.GreaterThanToken]: '>',
  [ts.SyntaxKind.GreaterThanEqualsToken]: '>=',
  [ts.SyntaxKind.EqualsEqualsEqualsToken]: '=',
  [ts.SyntaxKind.ExclamationEqualsEqualsToken]: '<>',
  [ts.SyntaxKind.AmpersandAmpersandToken]: 'and',
  [ts.SyntaxKind.BarBarToken]: 'or',
} as const;
const isBinary = (kind: ts.SyntaxKind): kind is keyof typeof BINARY => kind in BINARY;

/** Cards that come to the hand-over in another way than by a form of their formula. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'CHECK.MAX': 'handover/checks.ts',
  'CHECK.MIN': 'handover/checks.ts',
  'CHECK.WORST': 'handover/checks.ts',
  'JOINT.TABLE': 'handover/joint-sheet.ts',
};

/** The first name of a kind; later ones are marks such as FirstStatement. */
const KIND_NAMES = new Map<unknown, string>(
  Object.entries(ts.SyntaxKind)
    .reverse()
    .map(([name, kind]) => [kind, name]),
);

class OutsideSubset extends Error {
  constructor(node: ts.Node) {
    const { line } = node.getSourceFile().getLineAndCharacterOfPosition(node.getStart());
    super(`${KIND_NAMES.get(node.kind)} in line ${line + 1}`);
  }
}

/** What `card`, `lookUp`, `node` and `input` calls say. */
interface Found {
  readonly cards: Record<string, string>;
  readonly lookUps: string[];
  readonly nodes: Record<string, string>;
  readonly defaults: Record<string, string>;
  readonly files: Record<string, string>;
  readonly declared: Set<string>;
}

type Constants = ReadonlyMap<string, ts.Expression | undefined>;

const asNamed = (name: string): string => name;
/** The forms go into every page, and only the arguments of a formula that others call are said by name: a step of the caller. */
const asPlace = (_: string, i: number): string => `$${i}`;

export interface Read {
  /** Functions without a form, by id: file, formula, and what in it is outside the subset. */
  readonly without: Readonly<Record<string, string>>;
  readonly formulas: Readonly<Record<string, Form>>;
  readonly cards: Readonly<Record<string, string>>;
  readonly nodes: Readonly<Record<string, string>>;
  readonly defaults: Readonly<Record<string, string>>;
  readonly what: Readonly<Record<string, string>>;
}

const hasBody = (declaration: ts.FunctionDeclaration): declaration is ts.FunctionDeclaration & { readonly body: ts.Block } =>
  declaration.body !== undefined;

const textOf = (name: ts.Node): string => (name as ts.Identifier).text;

/** The name of a parameter, or the place of its argument. */
type Places = ReadonlyMap<string, string>;

/** Variables are strings, numbers are numbers, everything else is [operator, …operands]. */
function expression(node: ts.Expression, places: Places): Tree {
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node)) return expression(node.expression, places);
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isStringLiteral(node)) return ['text', node.text];
  if (ts.isIdentifier(node)) return places.get(node.text) ?? node.text;
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) return ['neg', expression(node.operand, places)];
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken)
    return ['not', expression(node.operand, places)];
  if (ts.isBinaryExpression(node) && isBinary(node.operatorToken.kind))
    return [BINARY[node.operatorToken.kind], expression(node.left, places), expression(node.right, places)];
  if (ts.isConditionalExpression(node))
    return ['if', expression(node.condition, places), expression(node.whenTrue, places), expression(node.whenFalse, places)];
  if (ts.isPropertyAccessExpression(node)) return ['of', expression(node.expression, places), node.name.text];
  if (ts.isCallExpression(node) && ts.isIdentifier(node.expression))
    return ['call', node.expression.text, ...node.arguments.map(part => expression(part, places))];
  if (ts.isArrayLiteralExpression(node)) return ['list', ...node.elements.map(part => expression(part, places))];
  if (ts.isObjectLiteralExpression(node) && node.properties.every(ts.isPropertyAssignment))
    return [
      'record',
      Object.fromEntries(node.properties.filter(ts.isPropertyAssignment).map(p => [textOf(p.name), expression(p.initializer, places)])),
    ];
  throw new OutsideSubset(node);
}

type Declaration = ts.FunctionDeclaration & { readonly body: ts.Block };

function form({ parameters, body }: Declaration, nameOfParam: (name: string, i: number) => string): Form {
  const places = new Map(parameters.map((p, i) => [textOf(p.name), nameOfParam(textOf(p.name), i)]));
  const steps: [string, Tree][] = [];
  let result: Tree | undefined;
  for (const statement of body.statements) {
    if (ts.isVariableStatement(statement) && statement.declarationList.flags & ts.NodeFlags.Const) {
      for (const d of statement.declarationList.declarations)
        steps.push([textOf(d.name), expression(d.initializer as ts.Expression, places)]);
    } else if (ts.isReturnStatement(statement) && statement === body.statements.at(-1)) {
      result = expression(statement.expression as ts.Expression, places);
    } else throw new OutsideSubset(statement);
  }
  return { params: [...places.values()], ...(steps.length === 0 ? {} : { steps }), result: result as Tree };
}

/** The names a formula calls, to see whether all of them have a form. */
function called(tree: unknown, names = new Set<string>()): Set<string> {
  if (Array.isArray(tree)) {
    if (tree[0] === 'call') names.add(tree[1]);
    tree.forEach(part => called(part, names));
  } else if (typeof tree === 'object' && tree !== null) Object.values(tree).forEach(part => called(part, names));
  return names;
}

const nameOf = (node: ts.Node): string | undefined =>
  ts.isPropertyAccessExpression(node) ? node.name.text : ts.isIdentifier(node) ? node.text : undefined;

/** Whether an object literal has a property of that text: itself, or spread from a constant of its file. */
function hasProperty(
  object: ts.Expression | undefined,
  name: string,
  isSought: (value: ts.Expression) => boolean,
  constants: Constants,
): boolean {
  if (object === undefined) return false;
  if (ts.isAsExpression(object)) return hasProperty(object.expression, name, isSought, constants);
  if (ts.isIdentifier(object)) return hasProperty(constants.get(object.text), name, isSought, constants);
  if (!ts.isObjectLiteralExpression(object)) return false;
  return object.properties.some(part =>
    ts.isSpreadAssignment(part)
      ? hasProperty(part.expression, name, isSought, constants)
      : ts.isPropertyAssignment(part) && textOf(part.name) === name && isSought(part.initializer),
  );
}

const constantsOf = (source: ts.SourceFile): Constants =>
  new Map(
    source.statements
      .filter(ts.isVariableStatement)
      .flatMap(({ declarationList }) => declarationList.declarations.map(({ name, initializer }) => [textOf(name), initializer] as const)),
  );

/** `card('ID', topic, [params], formula, …)`, `lookUp('ID', topic, [params], reads, …)`, `name: mm(meaning, made(formula, …))`, `name: input(kind, meaning, { made: made(formula, …) })`. */
function callSites(source: ts.SourceFile, found: Found): void {
  const constants = constantsOf(source);
  const visit = (node: ts.Node, outerName: string | undefined, outerPlace: 'nodes' | 'defaults'): void => {
    let [name, place] = [outerName, outerPlace];
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const [first] = node.arguments;
      const text = first !== undefined && ts.isStringLiteral(first) ? first.text : undefined;
      const formula = node.arguments[3] === undefined ? undefined : nameOf(node.arguments[3]);
      if (node.expression.text === 'card' && text !== undefined) {
        const rest = node.arguments[4];
        found.cards[text] = formula ?? 'its formula';
        found.files[text] = source.fileName;
        if (
          hasProperty(rest, 'notLive', () => true, constants) ||
          hasProperty(rest, 'kind', value => textOf(value) === 'standard table', constants)
        )
          found.declared.add(text);
      }
      if (node.expression.text === 'lookUp' && text !== undefined) found.lookUps.push(text);
      if (node.expression.text === 'made' && name !== undefined) found[place][name] = nameOf(first as ts.Node) as string;
    } else if (ts.isPropertyAssignment(node) && name === undefined && ts.isCallExpression(node.initializer)) {
      // an input, whose default is made, or a node
      name = textOf(node.name);
      place = nameOf(node.initializer.expression) === 'input' ? 'defaults' : 'nodes';
    }
    ts.forEachChild(node, child => visit(child, name, place));
  };
  visit(source, undefined, 'nodes');
}

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter(entry => entry.isFile() && entry.name.endsWith('.ts'))
    .map(entry => join(entry.parentPath, entry.name))
    .sort();
}

/** The sentence above each wrapper, by function id: ABOUT says it in a cell. */
function sentences(folder: string): Record<string, string> {
  const what: Record<string, string> = {};
  for (const file of sources(folder)) {
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2021, true);
    for (const statement of source.statements) {
      const doc = ts.getJSDocCommentsAndTags(statement).find(ts.isJSDoc);
      const id = ts.getTextOfJSDocComment(doc?.tags?.find(tag => tag.tagName.text === 'customfunction')?.comment);
      const [sentence = ''] = String(ts.getTextOfJSDocComment(doc?.comment)).split('\n\n');
      if (id !== undefined) what[id.trim()] = sentence.replace(/\s+/g, ' ');
    }
  }
  return what;
}

export function readForms(root = ROOT): Read {
  const formulas = Object.create(null) as Record<string, Form>;
  const found: Found = { cards: {}, lookUps: [], nodes: {}, defaults: {}, files: {}, declared: new Set() };
  const place = (file: string): string => relative(root, file).split(sep).join('/');
  const maths = new Set<string>();
  /** Where each formula stands, and why it is outside the subset. */
  const home = new Map<string, string>();
  const outside = new Map<string, string>();
  const declarations = new Map<string, Declaration>();
  for (const file of ['core', 'joint', 'about'].flatMap(folder => sources(join(root, folder)))) {
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2021, true);
    callSites(source, found);
    for (const statement of source.statements) {
      const isExported = ts.canHaveModifiers(statement) && ts.getModifiers(statement)?.some(m => m.kind === ts.SyntaxKind.ExportKeyword);
      if (file.endsWith(join('core', 'maths.ts')) && ts.isVariableStatement(statement))
        statement.declarationList.declarations.forEach(d => maths.add(textOf(d.name)));
      if (!ts.isFunctionDeclaration(statement) || !isExported || !hasBody(statement)) continue;
      const name = textOf(statement.name as ts.Identifier);
      home.set(name, place(file));
      try {
        if (formulas[name] !== undefined) throw new Error(`two formulas are called ${name}; the second is in ${file}`);
        formulas[name] = form(statement, asNamed);
        declarations.set(name, statement);
      } catch (fault) {
        if (!(fault instanceof OutsideSubset)) throw fault;
        outside.set(name, fault.message);
      }
    }
  }
  // a formula that calls something without a form has none itself
  for (let changed = true; changed;) {
    changed = false;
    for (const [name, { steps, result }] of Object.entries(formulas)) {
      const missing = [...called([steps ?? [], result])].find(other => !maths.has(other) && formulas[other] === undefined);
      if (missing === undefined) continue;
      delete formulas[name];
      outside.set(
        name,
        `calls ${missing}, ${outside.get(missing) === undefined ? 'not an exported function' : `${home.get(missing)}: ${outside.get(missing)}`}`,
      );
      changed = true;
    }
  }
  const used = new Set<string>();
  const isCalled = new Set<string>();
  const use = (name: string): void => {
    const known = formulas[name];
    if (used.has(name) || known === undefined) return;
    used.add(name);
    called([known.steps ?? [], known.result]).forEach(other => {
      isCalled.add(other);
      use(other);
    });
  };
  [found.cards, found.nodes, found.defaults].forEach(names => Object.values(names).forEach(use));
  const why = (id: string, name: string): string =>
    `${home.get(name) ?? place(found.files[id] as string)}: ${name}: ${outside.get(name) ?? 'not an exported function'}`;
  const formless = Object.entries(found.cards)
    .filter(([, name]) => !used.has(name))
    .map(([id, name]) => [id, why(id, name)] as const);
  const undeclared = formless.filter(([id]) => !found.declared.has(id) && ELSEWHERE[id] === undefined);
  if (undeclared.length > 0)
    throw new Error(`no plain form, and no notLive in the card:\n${undeclared.map(([id, reason]) => `${id}: ${reason}`).join('\n')}`);
  const unprinted = Object.entries({ ...found.nodes, ...found.defaults }).filter(([, name]) => !used.has(name));
  if (unprinted.length > 0)
    throw new Error(
      `made by a formula without a plain form:\n${unprinted.map(([name, formula]) => `${name}: ${formula}: ${outside.get(formula) ?? 'not an exported function'}`).join('\n')}`,
    );
  const without = Object.fromEntries([...formless, ...found.lookUps.map(id => [id, 'a look-up'])]);
  const keep = (names: Record<string, string>): Record<string, string> =>
    Object.fromEntries(Object.entries(names).filter(([, name]) => used.has(name)));
  return {
    without,
    formulas: Object.fromEntries(
      [...used]
        .sort()
        .map(name => [name, isCalled.has(name) ? (formulas[name] as Form) : form(declarations.get(name) as Declaration, asPlace)]),
    ),
    cards: keep(found.cards),
    nodes: keep(found.nodes),
    defaults: keep(found.defaults),
    what: sentences(join(root, '..', 'functions')),
  };
}

const fileIn = (root: string): string => join(root, 'plain/forms.json');

/** A line a name, so that a change of a formula is a change of its line. */
function textOfForms({ without: _, ...forms }: Read): string {
  const lines = (part: object): string =>
    Object.entries(part)
      .map(([name, value]) => `${JSON.stringify(name)}:${JSON.stringify(value)}`)
      .join(',\n');
  const parts = Object.entries(forms).map(([name, part]) => `${JSON.stringify(name)}:{\n${lines(part)}\n}`);
  return `{\n"generated":"by npm run generate",\n${parts.join(',\n')}\n}\n`;
}

export const writeForms = (read: Read, root = ROOT): void => writeFileSync(fileIn(root), textOfForms(read));

/** Whoever builds or tests from the forms stops at those of other formulas. */
export function checkForms(root = ROOT): void {
  if (readFileSync(fileIn(root), 'utf8') !== textOfForms(readForms(root)))
    throw new Error('src/plain/forms.json is not what the formulas say: npm run generate');
}
