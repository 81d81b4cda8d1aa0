// Which formula each card, joint node and joint default calls, as their declarations say.
import ts from 'typescript';
import { textOf } from './from-source';

/** What `card`, `lookUp`, `node` and `input` calls say. */
export interface Declared {
  readonly cards: Record<string, string>;
  readonly lookUps: string[];
  readonly nodes: Record<string, string>;
  readonly defaults: Record<string, string>;
  readonly files: Record<string, string>;
  /** Cards that say that they are not live, or a table. */
  readonly withoutForm: Set<string>;
}

type Constants = ReadonlyMap<string, ts.Expression | undefined>;

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

/**
 * `card('ID', topic, [params], formula, …)`, `lookUp('ID', topic, [params], reads, …)`, `'ID': { kind, notLive, … }` among the words,
 * `name: mm(meaning, made(formula, …))`, `name: input(kind, meaning, { made: made(formula, …) })`.
 */
export function callSites(source: ts.SourceFile, declared: Declared): void {
  const constants = constantsOf(source);
  const visit = (node: ts.Node, outerName: string | undefined, outerPlace: 'nodes' | 'defaults'): void => {
    let [name, place] = [outerName, outerPlace];
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const [first] = node.arguments;
      const text = first !== undefined && ts.isStringLiteral(first) ? first.text : undefined;
      const formula = node.arguments[3] === undefined ? undefined : nameOf(node.arguments[3]);
      if (node.expression.text === 'card' && text !== undefined) {
        declared.cards[text] = formula ?? 'its formula';
        declared.files[text] = source.fileName;
      }
      if (node.expression.text === 'lookUp' && text !== undefined) declared.lookUps.push(text);
      if (node.expression.text === 'made' && name !== undefined) declared[place][name] = nameOf(first as ts.Node) as string;
    } else if (ts.isPropertyAssignment(node) && source.fileName.endsWith('.words.ts')) {
      if (
        hasProperty(node.initializer, 'notLive', () => true, constants) ||
        hasProperty(node.initializer, 'kind', value => textOf(value) === 'standard table', constants)
      )
        declared.withoutForm.add(textOf(node.name));
    } else if (ts.isPropertyAssignment(node) && name === undefined && ts.isCallExpression(node.initializer)) {
      // an input, whose default is made, or a node
      name = textOf(node.name);
      place = nameOf(node.initializer.expression) === 'input' ? 'defaults' : 'nodes';
    }
    ts.forEachChild(node, child => visit(child, name, place));
  };
  visit(source, undefined, 'nodes');
}
