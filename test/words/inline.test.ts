// The views and the bench say nothing in words of their own: what is read stands in the table of words.
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, it } from 'vitest';
import { TOPICS } from '../../src/core/card';
import { JOINT_INPUT_NAMES } from '../../src/joint/inputs';
import { OUTPUTS } from '../../src/joint/outputs';

/** What screen readers or the mouse find in an element. */
const READ_ATTRIBUTES = ['aria-label', 'aria-description', 'alt', 'label', 'placeholder', 'title'];
/** English in every language: what cells hold. */
const NAMES = new Set<string>([...JOINT_INPUT_NAMES, ...OUTPUTS, ...TOPICS, 'not checked', 'value, not live']);
/** Words that are looked for, and none that is said. */
const READS_QUESTIONS = /pane\/ask(-intents)?[.]ts$/;

interface Inline {
  readonly where: string;
  readonly text: string;
}

const hasLetter = (text: string): boolean => /\p{L}/u.test(text);
const isSentence = (text: string): boolean => /\p{L}{2,}[,:]? \p{L}+/u.test(text) && !/^bw-/.test(text);

/** Texts of a literal, or of the pieces of a template. */
function textOf(node: ts.Node): string | undefined {
  if (ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node)) return node.text;
  return undefined;
}

const isImport = ({ parent }: ts.Node): boolean =>
  ts.isImportDeclaration(parent) ||
  ts.isExportDeclaration(parent) ||
  (ts.isCallExpression(parent) && parent.expression.kind === ts.SyntaxKind.ImportKeyword);

/** Faults that no user comes to; what a joint refuses, as in a cell; a name that is compared. */
function isUnsaid(node: ts.Node): boolean {
  const literal = ts.isTemplateSpan(node.parent) ? node.parent.parent : ts.isTemplateExpression(node.parent) ? node.parent : node;
  const { parent } = literal;
  return ts.isCaseClause(parent) || (ts.isNewExpression(parent) && ts.isThrowStatement(parent.parent));
}

/** Nearest first, as far as the function that the node is in. */
function* around(node: ts.Node): Generator<ts.Node> {
  for (let at = node.parent; at !== undefined && !ts.isFunctionLike(at); at = at.parent) yield at;
}

/** Drawn as it stands: a child of an element, or an attribute that is read. */
function isShown(node: ts.Node): boolean {
  let below: ts.Node = node;
  for (const at of around(node)) {
    // what a function is given, or what is compared, is not what is shown
    if (ts.isCallExpression(at)) return false;
    if (ts.isBinaryExpression(at) && /^[!=]==$/.test(at.operatorToken.getText())) return false;
    if (ts.isElementAccessExpression(at)) return false;
    if (ts.isConditionalExpression(at) && at.condition === below) return false;
    if (ts.isJsxAttribute(at)) return READ_ATTRIBUTES.includes(at.name.getText());
    if (ts.isJsxExpression(at) && !ts.isJsxAttribute(at.parent)) return true;
    below = at;
  }
  return false;
}

function inlineIn(path: string, source: string): Inline[] {
  const file = ts.createSourceFile(path, source, ts.ScriptTarget.Latest, true, path.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS);
  const found: Inline[] = [];
  const add = (node: ts.Node, text: string) =>
    found.push({ where: `${path}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}`, text: text.trim() });
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node)) return;
    if (ts.isJsxText(node) && hasLetter(node.text)) add(node, node.text);
    const text = textOf(node);
    if (text !== undefined && !NAMES.has(text) && !isImport(node) && !isUnsaid(node))
      if ((hasLetter(text) && isShown(node)) || isSentence(text)) add(node, text);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

const paths = ['src/pane', 'src/bench'].flatMap(folder =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter(name => /(?<![.]d)[.]tsx?$/.test(name))
    .map(name => `${folder}/${name}`)
    .filter(path => !READS_QUESTIONS.test(path)),
);

/** A name of a sheet, keys and a selector. */
const NOT_READ = ['Read me', 'bosswright pane', 'name kept with', 'input, summary, details[open] .bw-entry, .bw-found .bw-entry'];

it('no view and no part of the bench has words of its own', () => {
  expect(paths.length).toBeGreaterThan(80);
  const found = paths.flatMap(path => inlineIn(path, readFileSync(path, 'utf8')));
  expect(found.filter(({ text }) => !NOT_READ.includes(text))).toEqual([]);
});

it.each([
  ['text', 'const x = <p>Try again</p>;', 'Try again'],
  ['one word', 'const x = <p>Stop</p>;', 'Stop'],
  ['a text in braces', "const x = <p>{isOpen ? 'Open' : y}</p>;", 'Open'],
  ['a template', 'const x = <p>{`Go to ${place}`}</p>;', 'Go to'],
  ['what a screen reader says', 'const x = <div aria-label="Views" />;', 'Views'],
  ['the same in braces', 'const x = <div title={`Cell ${at}`} />;', 'Cell'],
  ['what is in an empty field', "const x = <input placeholder={isOld ? 'core pin' : y} />;", 'core pin'],
  ['what is said', "say('Taken back: done');", 'Taken back: done'],
  ['what is asked', 'ask({ words: `Enter ${n} formulas again?`, yes });', 'formulas again?'],
])('finds %s', (_, source, text) => expect(inlineIn('x.tsx', source).map(one => one.text)).toContain(text));

it.each([
  ["import x from './a b';"],
  ['const x = <p class="bw-quiet bw-lines" role="status">{W.stop}</p>;'],
  ["const x = <p>{kind === 'broken' ? W.a : W.b}</p>;"],
  ["type Kind = 'in the way';"],
  ["const x = <Findings states={['fail', 'not checked']} />;"],
])('leaves %s alone', source => expect(inlineIn('x.tsx', source)).toEqual([]));
