// Build step: reads the syntax tree of every formula into its plain form, so that each formula is written once.
// Writes forms.json: the forms by function name, and which function each card, joint node and joint default calls.
// A function outside the subset (named steps, one return, arithmetic, choices, look-ups on records, other formulas)
// has no form; the contract test demands a reason of every card without one.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

const here = dirname(fileURLToPath(import.meta.url));
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
};

class OutsideSubset extends Error {}

/** Variables are strings, numbers are numbers, everything else is [operator, …operands]. */
function expression(node) {
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node)) return expression(node.expression);
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isStringLiteral(node)) return ['text', node.text];
  if (ts.isIdentifier(node)) return node.text;
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) return ['neg', expression(node.operand)];
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken) return ['not', expression(node.operand)];
  if (ts.isBinaryExpression(node) && BINARY[node.operatorToken.kind] !== undefined) return [BINARY[node.operatorToken.kind], expression(node.left), expression(node.right)];
  if (ts.isConditionalExpression(node)) return ['if', expression(node.condition), expression(node.whenTrue), expression(node.whenFalse)];
  if (ts.isPropertyAccessExpression(node)) return ['of', expression(node.expression), node.name.text];
  if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) return ['call', node.expression.text, ...node.arguments.map(expression)];
  if (ts.isArrayLiteralExpression(node)) return ['list', ...node.elements.map(expression)];
  if (ts.isObjectLiteralExpression(node) && node.properties.every(ts.isPropertyAssignment)) return ['record', Object.fromEntries(node.properties.map(p => [p.name.text, expression(p.initializer)]))];
  throw new OutsideSubset(ts.SyntaxKind[node.kind]);
}

function form(declaration) {
  const steps = [];
  let result;
  for (const statement of declaration.body.statements) {
    if (ts.isVariableStatement(statement) && statement.declarationList.flags & ts.NodeFlags.Const) {
      for (const d of statement.declarationList.declarations) steps.push([d.name.text, expression(d.initializer)]);
    } else if (ts.isReturnStatement(statement) && statement === declaration.body.statements.at(-1)) {
      result = expression(statement.expression);
    } else throw new OutsideSubset(ts.SyntaxKind[statement.kind]);
  }
  return { params: declaration.parameters.map(p => p.name.text), ...(steps.length === 0 ? {} : { steps }), result };
}

/** The names a formula calls, to see whether all of them have a form. */
function called(tree, names = new Set()) {
  if (Array.isArray(tree)) {
    if (tree[0] === 'call') names.add(tree[1]);
    tree.forEach(part => called(part, names));
  } else if (typeof tree === 'object' && tree !== null) Object.values(tree).forEach(part => called(part, names));
  return names;
}

const nameOf = node => (ts.isPropertyAccessExpression(node) ? node.name.text : ts.isIdentifier(node) ? node.text : undefined);

/** `card('ID', topic, [params], formula, …)`, `node('name', unit, meaning, formula, …)`, `input('name', …, made(formula, …))`. */
function callSites(source, found) {
  const visit = (node, inputName) => {
    let name = inputName;
    if (ts.isCallExpression(node) && ts.isIdentifier(node.expression)) {
      const [first] = node.arguments;
      const text = first !== undefined && ts.isStringLiteral(first) ? first.text : undefined;
      const formula = node.arguments[3] === undefined ? undefined : nameOf(node.arguments[3]);
      if (node.expression.text === 'card' && text !== undefined && formula !== undefined) found.cards[text] = formula;
      if (node.expression.text === 'node' && text !== undefined && formula !== undefined) found.nodes[text] = formula;
      if (node.expression.text === 'input') name = text;
      if (node.expression.text === 'made' && name !== undefined) found.defaults[name] = nameOf(first);
    }
    ts.forEachChild(node, child => visit(child, name));
  };
  visit(source, undefined);
}

function sources(folder) {
  return readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter(entry => entry.isFile() && entry.name.endsWith('.ts'))
    .map(entry => join(entry.parentPath ?? entry.path, entry.name))
    .sort();
}

/** The sentence above each wrapper, by function id: ABOUT says it in a cell. */
function sentences(folder) {
  const what = {};
  for (const file of sources(folder)) {
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2021, true);
    for (const statement of source.statements) {
      const [doc] = statement.jsDoc ?? [];
      const id = doc?.tags?.find(tag => tag.tagName.text === 'customfunction')?.comment;
      if (id !== undefined) what[id.trim()] = String(doc.comment).split('\n\n')[0].replace(/\s+/g, ' ');
    }
  }
  return what;
}

export function readForms(root = join(here, '..')) {
  const formulas = Object.create(null);
  const found = { cards: {}, nodes: {}, defaults: {} };
  const maths = new Set();
  for (const file of [...sources(join(root, 'core')), ...sources(join(root, 'joint'))]) {
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2021, true);
    callSites(source, found);
    for (const statement of source.statements) {
      const isExported = ts.canHaveModifiers(statement) && ts.getModifiers(statement)?.some(m => m.kind === ts.SyntaxKind.ExportKeyword);
      if (file.endsWith(join('core', 'maths.ts')) && ts.isVariableStatement(statement)) statement.declarationList.declarations.forEach(d => maths.add(d.name.text));
      if (!ts.isFunctionDeclaration(statement) || !isExported || statement.body === undefined) continue;
      const name = statement.name.text;
      try {
        if (formulas[name] !== undefined) throw new Error(`two formulas are called ${name}; the second is in ${file}`);
        formulas[name] = form(statement);
      } catch (fault) {
        if (!(fault instanceof OutsideSubset)) throw fault;
      }
    }
  }
  // a formula that calls something without a form has none itself
  for (let changed = true; changed; ) {
    changed = false;
    for (const [name, { steps, result }] of Object.entries(formulas)) {
      if ([...called([steps ?? [], result])].every(other => maths.has(other) || formulas[other] !== undefined)) continue;
      delete formulas[name];
      changed = true;
    }
  }
  const used = new Set();
  const use = name => {
    if (used.has(name) || formulas[name] === undefined) return;
    used.add(name);
    called([formulas[name].steps ?? [], formulas[name].result]).forEach(use);
  };
  Object.values(found).forEach(names => Object.values(names).forEach(use));
  const keep = names => Object.fromEntries(Object.entries(names).filter(([, name]) => used.has(name)));
  return { formulas: Object.fromEntries([...used].sort().map(name => [name, formulas[name]])), cards: keep(found.cards), nodes: keep(found.nodes), defaults: keep(found.defaults), what: sentences(join(root, '..', 'functions')) };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const forms = readForms();
  writeFileSync(join(here, 'forms.json'), `${JSON.stringify(forms)}\n`);
  process.stdout.write(`plain forms of ${Object.keys(forms.formulas).length} formulas\n`);
}
