// What functions.js would register and say of its version: read from its text by a parser, never run.
import { type AnyNode, type Expression, type Node, parse } from 'acorn';

export interface Registered {
  readonly ids: readonly string[];
  readonly versions: readonly string[];
}

/** A text where the script cannot be read. */
export function registered(script: string): Registered | string {
  const ids: string[] = [];
  const versions: string[] = [];
  const unread: string[] = [];
  const visit = (node: AnyNode): void => {
    if (node.type === 'CallExpression' && isAssociate(node.callee)) {
      const [id] = node.arguments;
      const name = id && plainText(id);
      if (name !== undefined) ids.push(name);
      else unread.push(id === undefined ? 'nothing' : script.slice(id.start, id.end));
    }
    const [, version] = /^Bosswright (\S+), data /.exec(plainText(node) ?? '') ?? [];
    if (version !== undefined) versions.push(version);
    for (const part of Object.values(node).flat() as unknown[]) if (isNode(part)) visit(part);
  };
  try {
    visit(parse(script, { ecmaVersion: 'latest' }));
  } catch (fault) {
    return `functions.js ${fault instanceof SyntaxError ? 'is no script' : 'cannot be read'}: ${String(fault)}`;
  }
  return unread.length === 0
    ? { ids, versions }
    : `functions.js registers what is no plain name: ${unread.map(text => text.slice(0, 60)).join(', ')}`;
}

const isNode = (part: unknown): part is AnyNode => typeof (part as Node | null)?.type === 'string';

/** Of a text in quotes, or between backticks with nothing put in. */
function plainText(node: AnyNode): string | undefined {
  if (node.type === 'Literal') return typeof node.value === 'string' ? node.value : undefined;
  return node.type === 'TemplateLiteral' && node.expressions.length === 0 ? (node.quasis[0]?.value.cooked ?? undefined) : undefined;
}

const isAssociate = (callee: Expression | AnyNode): boolean =>
  callee.type === 'MemberExpression' &&
  !callee.computed &&
  callee.property.type === 'Identifier' &&
  callee.property.name === 'associate' &&
  callee.object.type === 'Identifier' &&
  callee.object.name === 'CustomFunctions';
