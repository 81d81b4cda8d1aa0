// What functions.js would register and say of its version: read from its text by a parser, never run.
import ts from 'typescript';

export interface Registered {
  readonly ids: readonly string[];
  readonly versions: readonly string[];
}

/** A text where the script cannot be read. */
export function registered(script: string): Registered | string {
  const ids: string[] = [];
  const versions: string[] = [];
  const unread: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && isAssociate(node.expression)) {
      const [id] = node.arguments;
      if (id !== undefined && ts.isStringLiteralLike(id)) ids.push(id.text);
      else unread.push(id?.getText() ?? 'nothing');
    }
    const [, version] = (ts.isStringLiteralLike(node) && /^Bosswright (\S+), data /.exec(node.text)) || [];
    if (version !== undefined) versions.push(version);
    ts.forEachChild(node, visit);
  };
  try {
    const [fault] =
      ts.transpileModule(script, {
        fileName: 'functions.js',
        reportDiagnostics: true,
        compilerOptions: { allowJs: true, target: ts.ScriptTarget.ESNext },
      }).diagnostics ?? [];
    if (fault !== undefined) return `functions.js is no script: ${ts.flattenDiagnosticMessageText(fault.messageText, ' ')}`;
    visit(ts.createSourceFile('functions.js', script, ts.ScriptTarget.ESNext, true));
  } catch (fault) {
    return `functions.js cannot be read: ${String(fault)}`;
  }
  return unread.length === 0
    ? { ids, versions }
    : `functions.js registers what is no plain name: ${unread.map(text => text.slice(0, 60)).join(', ')}`;
}

const isAssociate = (node: ts.Expression): boolean =>
  ts.isPropertyAccessExpression(node) &&
  node.name.text === 'associate' &&
  ts.isIdentifier(node.expression) &&
  node.expression.text === 'CustomFunctions';
