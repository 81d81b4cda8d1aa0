// Build step: reads the syntax tree of every formula into its plain form, so that each formula is written once.
// Writes forms.json: the forms by function name, and which function each card, joint node and joint default calls.
// A function outside the subset (named steps, one return, arithmetic, choices, look-ups on records, other formulas)
// has no form. A card without one is a look-up in a standard's table or says why it is not live; else the build stops.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
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

/** Cards that come to the hand-over in another way than by a form of their formula. */
const ELSEWHERE = {
  'CHECK.MAX': 'handover/checks.ts',
  'CHECK.MIN': 'handover/checks.ts',
  'CHECK.WORST': 'handover/checks.ts',
  'JOINT.TABLE': 'handover/joint-sheet.ts',
};

/** The first name of a kind; later ones are marks such as FirstStatement. */
const KIND_NAMES = new Map(
  Object.entries(ts.SyntaxKind)
    .reverse()
    .map(([name, kind]) => [kind, name]),
);

class OutsideSubset extends Error {
  constructor(node) {
    const { line } = node.getSourceFile().getLineAndCharacterOfPosition(node.getStart());
    super(`${KIND_NAMES.get(node.kind)} in line ${line + 1}`);
  }
}

/** Variables are strings, numbers are numbers, everything else is [operator, …operands]. */
function expression(node) {
  if (ts.isParenthesizedExpression(node) || ts.isAsExpression(node)) return expression(node.expression);
  if (ts.isNumericLiteral(node)) return Number(node.text);
  if (ts.isStringLiteral(node)) return ['text', node.text];
  if (ts.isIdentifier(node)) return node.text;
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) return ['neg', expression(node.operand)];
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.ExclamationToken) return ['not', expression(node.operand)];
  if (ts.isBinaryExpression(node) && BINARY[node.operatorToken.kind] !== undefined)
    return [BINARY[node.operatorToken.kind], expression(node.left), expression(node.right)];
  if (ts.isConditionalExpression(node)) return ['if', expression(node.condition), expression(node.whenTrue), expression(node.whenFalse)];
  if (ts.isPropertyAccessExpression(node)) return ['of', expression(node.expression), node.name.text];
  if (ts.isCallExpression(node) && ts.isIdentifier(node.expression))
    return ['call', node.expression.text, ...node.arguments.map(expression)];
  if (ts.isArrayLiteralExpression(node)) return ['list', ...node.elements.map(expression)];
  if (ts.isObjectLiteralExpression(node) && node.properties.every(ts.isPropertyAssignment))
    return ['record', Object.fromEntries(node.properties.map(p => [p.name.text, expression(p.initializer)]))];
  throw new OutsideSubset(node);
}

function form(declaration) {
  const steps = [];
  let result;
  for (const statement of declaration.body.statements) {
    if (ts.isVariableStatement(statement) && statement.declarationList.flags & ts.NodeFlags.Const) {
      for (const d of statement.declarationList.declarations) steps.push([d.name.text, expression(d.initializer)]);
    } else if (ts.isReturnStatement(statement) && statement === declaration.body.statements.at(-1)) {
      result = expression(statement.expression);
    } else throw new OutsideSubset(statement);
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

/** Whether an object literal has a property of that text: itself, or spread from a constant of its file. */
function hasProperty(object, name, isSought, constants) {
  if (object === undefined) return false;
  if (ts.isAsExpression(object)) return hasProperty(object.expression, name, isSought, constants);
  if (ts.isIdentifier(object)) return hasProperty(constants.get(object.text), name, isSought, constants);
  if (!ts.isObjectLiteralExpression(object)) return false;
  return object.properties.some(part =>
    ts.isSpreadAssignment(part)
      ? hasProperty(part.expression, name, isSought, constants)
      : ts.isPropertyAssignment(part) && part.name.text === name && isSought(part.initializer),
  );
}

const constantsOf = source =>
  new Map(
    source.statements
      .filter(ts.isVariableStatement)
      .flatMap(({ declarationList }) => declarationList.declarations.map(({ name, initializer }) => [name.text, initializer])),
  );

/** `card('ID', topic, [params], formula, …)`, `lookUp('ID', topic, [params], reads, …)`, `node('name', unit, meaning, formula, …)`, `input('name', …, made(formula, …))`. */
function callSites(source, found) {
  const constants = constantsOf(source);
  const visit = (node, inputName) => {
    let name = inputName;
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
          hasProperty(rest, 'kind', value => value.text === 'standard table', constants)
        )
          found.declared.add(text);
      }
      if (node.expression.text === 'lookUp' && text !== undefined) found.lookUps.push(text);
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
  const found = { cards: {}, lookUps: [], nodes: {}, defaults: {}, files: {}, declared: new Set() };
  const place = file => relative(root, file).split(sep).join('/');
  const maths = new Set();
  /** Where each formula stands, and why it is outside the subset. */
  const home = new Map();
  const outside = new Map();
  for (const file of ['core', 'joint', 'trace'].flatMap(folder => sources(join(root, folder)))) {
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2021, true);
    callSites(source, found);
    for (const statement of source.statements) {
      const isExported = ts.canHaveModifiers(statement) && ts.getModifiers(statement)?.some(m => m.kind === ts.SyntaxKind.ExportKeyword);
      if (file.endsWith(join('core', 'maths.ts')) && ts.isVariableStatement(statement))
        statement.declarationList.declarations.forEach(d => maths.add(d.name.text));
      if (!ts.isFunctionDeclaration(statement) || !isExported || statement.body === undefined) continue;
      const name = statement.name.text;
      home.set(name, place(file));
      try {
        if (formulas[name] !== undefined) throw new Error(`two formulas are called ${name}; the second is in ${file}`);
        formulas[name] = form(statement);
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
  const used = new Set();
  const use = name => {
    if (used.has(name) || formulas[name] === undefined) return;
    used.add(name);
    called([formulas[name].steps ?? [], formulas[name].result]).forEach(use);
  };
  [found.cards, found.nodes, found.defaults].forEach(names => Object.values(names).forEach(use));
  const why = (id, name) => `${home.get(name) ?? place(found.files[id])}: ${name}: ${outside.get(name) ?? 'not an exported function'}`;
  const formless = Object.entries(found.cards)
    .filter(([, name]) => !used.has(name))
    .map(([id, name]) => [id, why(id, name)]);
  const undeclared = formless.filter(([id]) => !found.declared.has(id) && ELSEWHERE[id] === undefined);
  if (undeclared.length > 0)
    throw new Error(`no plain form, and no notLive in the card:\n${undeclared.map(([id, reason]) => `${id}: ${reason}`).join('\n')}`);
  const without = Object.fromEntries([...formless, ...found.lookUps.map(id => [id, 'a look-up'])]);
  const keep = names => Object.fromEntries(Object.entries(names).filter(([, name]) => used.has(name)));
  return {
    without,
    formulas: Object.fromEntries([...used].sort().map(name => [name, formulas[name]])),
    cards: keep(found.cards),
    nodes: keep(found.nodes),
    defaults: keep(found.defaults),
    what: sentences(join(root, '..', 'functions')),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { without, ...forms } = readForms();
  writeFileSync(join(here, 'forms.json'), `${JSON.stringify(forms)}\n`);
  process.stdout.write(
    `plain forms of ${Object.keys(forms.formulas).length} formulas; ${Object.keys(without).length} functions without one\n`,
  );
}
