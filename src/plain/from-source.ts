// One formula from its syntax tree to its plain form.
// The subset: named steps, one return, arithmetic, choices, parts of records, other formulas.
import ts from 'typescript';
import type { Form, Tree } from './tree';

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

/** The first name of a kind; later ones are marks such as FirstStatement. */
const KIND_NAMES = new Map<unknown, string>(
  Object.entries(ts.SyntaxKind)
    .reverse()
    .map(([name, kind]) => [kind, name]),
);

export class OutsideSubset extends Error {
  constructor(node: ts.Node) {
    const { line } = node.getSourceFile().getLineAndCharacterOfPosition(node.getStart());
    super(`${KIND_NAMES.get(node.kind)} in line ${line + 1}`);
  }
}

export const asNamed = (name: string): string => name;
/** The forms go into every page, and only the arguments of a formula that others call are said by name: a step of the caller. */
export const asPlace = (_: string, i: number): string => `$${i}`;

export const textOf = (name: ts.Node): string => (name as ts.Identifier).text;

export const hasBody = (declaration: ts.FunctionDeclaration): declaration is ts.FunctionDeclaration & { readonly body: ts.Block } =>
  declaration.body !== undefined;

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

export type Declaration = ts.FunctionDeclaration & { readonly body: ts.Block };

export function form({ parameters, body }: Declaration, nameOfParam: (name: string, i: number) => string): Form {
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
export function called(tree: unknown, names = new Set<string>()): Set<string> {
  if (Array.isArray(tree)) {
    if (tree[0] === 'call') names.add(tree[1]);
    tree.forEach(part => called(part, names));
  } else if (typeof tree === 'object' && tree !== null) Object.values(tree).forEach(part => called(part, names));
  return names;
}
