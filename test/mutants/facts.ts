// The mutator of facts: numbers, texts, signs, limits and entries of declarations, which Stryker leaves alone.
// All mutants of a file are written into one copy of it; which one is live is asked where the code runs.
import path from 'node:path';
import ts from 'typescript';
import { FILES } from './files';

export interface Mutant {
  readonly file: string;
  readonly line: number;
  readonly was: string;
  readonly now: string;
}

interface Change {
  readonly number: number;
  readonly now: string;
}

/** Where a change may stand: in place of an expression, or in place of a property or an element, which may also be gone. */
type Form = 'expression' | 'property' | 'element';

interface Place {
  readonly form: Form;
  readonly changes: Change[];
}

const LIMITS: Readonly<Record<string, string>> = { above: 'atLeast', atLeast: 'above', below: 'atMost', atMost: 'below' };
const COMPARED: Readonly<Record<string, string>> = { '<': '<=', '<=': '<', '>': '>=', '>=': '>', '===': '!==', '!==': '===' };
const OTHER_SIDE: Readonly<Record<string, string>> = { above: 'below', below: 'above' };
const SIZE_LIMIT: Readonly<Record<string, string>> = { max: 'min', min: 'max', nominal: 'max' };

const quoted = (text: string): string => `'${text.replace(/[\\']/g, '\\$&')}'`;
const isText = (node: ts.Node): node is ts.StringLiteral | ts.NoSubstitutionTemplateLiteral =>
  ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node);
const nextOf = <T>(list: readonly T[], one: T): T | undefined =>
  list.length < 2 ? undefined : list[(list.indexOf(one) + 1) % list.length];

/** What a text is said of: the property, or the place in a call. */
function roleOf(node: ts.Node): string {
  const { parent } = node;
  if (ts.isPropertyAssignment(parent)) return parent.name.getText();
  if (ts.isCallExpression(parent)) return `${parent.expression.getText()} ${parent.arguments.indexOf(node as ts.Expression)}`;
  if (ts.isArrayLiteralExpression(parent) || ts.isParenthesizedExpression(parent) || ts.isAsExpression(parent))
    return `${roleOf(parent)}[]`;
  return ts.SyntaxKind[parent.kind];
}

function each(node: ts.Node, visit: (node: ts.Node) => void): void {
  if (ts.isImportDeclaration(node) || ts.isInterfaceDeclaration(node) || ts.isTypeNode(node)) return;
  if (!ts.isSourceFile(node)) visit(node);
  node.forEachChild(child => each(child, visit));
}

export class Facts {
  readonly mutants: Mutant[] = [];
  readonly #places = new Map<ts.Node, Place[]>();
  readonly #checker: ts.TypeChecker;
  readonly #sources: readonly ts.SourceFile[];

  constructor(files: readonly string[] = FILES) {
    const { config } = ts.readConfigFile('tsconfig.json', name => ts.sys.readFile(name)) as { config: { compilerOptions: object } };
    const { options } = ts.convertCompilerOptionsFromJson(config.compilerOptions, '.');
    const program = ts.createProgram(files, options);
    this.#checker = program.getTypeChecker();
    this.#sources = files.map(file => program.getSourceFile(file) as ts.SourceFile);
    const roles = new Map<string, string[]>();
    for (const source of this.#sources) {
      each(source, node => {
        if (!isText(node)) return;
        const known = roles.get(roleOf(node)) ?? [];
        roles.set(roleOf(node), known.includes(node.text) ? known : [...known, node.text]);
      });
    }
    for (const source of this.#sources) each(source, node => this.#mutate(source, node, roles));
  }

  /** The file with all its mutants in it. */
  written(file: string): string | undefined {
    const source = this.#sources.find(({ fileName }) => path.resolve(fileName) === path.resolve(file));
    return source === undefined ? undefined : this.#write(source, source);
  }

  #add(source: ts.SourceFile, node: ts.Node, form: Form, now: string): void {
    const places = this.#places.get(node) ?? [];
    this.#places.set(node, places);
    const place = places.find(one => one.form === form) ?? { form, changes: [] };
    if (!places.includes(place)) places.push(place);
    place.changes.push({ number: this.mutants.length, now });
    const { line } = source.getLineAndCharacterOfPosition(node.getStart(source));
    this.mutants.push({ file: source.fileName, line: line + 1, was: node.getText(source), now });
  }

  #mutate(source: ts.SourceFile, node: ts.Node, roles: ReadonlyMap<string, readonly string[]>): void {
    const { parent } = node;
    const add = (now: string, form: Form = 'expression'): void => this.#add(source, node, form, now);
    const number = (value: number): void => {
      add(String(value === 0 ? 0.01 : Number((value * 1.01).toPrecision(12))));
      if (Number.isInteger(value)) add(String(value + 1));
    };
    if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken && ts.isNumericLiteral(node.operand)) {
      number(-Number(node.operand.text));
      add(node.operand.text);
    } else if (ts.isNumericLiteral(node) && !ts.isPrefixUnaryExpression(parent)) number(Number(node.text));
    else if (isText(node) && !(ts.isPropertyAssignment(parent) && parent.name === node)) {
      for (const now of this.#otherTexts(node, roles)) add(quoted(now));
    } else if (ts.isTemplateExpression(node)) add("'x'");
    else if (node.kind === ts.SyntaxKind.TrueKeyword) add('false');
    else if (node.kind === ts.SyntaxKind.FalseKeyword) add('true');
    else if (ts.isBinaryExpression(node)) {
      const now = COMPARED[node.operatorToken.getText(source)];
      if (now !== undefined) add(`${node.left.getText(source)} ${now} ${node.right.getText(source)}`);
    } else if (ts.isIdentifier(node) && ts.isCallExpression(parent)) {
      const now = this.#otherName(source, node, parent);
      if (now !== undefined) add(now);
    } else if (ts.isPropertyAssignment(node)) {
      const { name, initializer } = node;
      const flipped = LIMITS[name.getText(source)];
      if (flipped !== undefined) add(`{ ${flipped}: ${initializer.getText(source)} }`, 'property');
      if (this.#mayBeGone(node)) add('{}', 'property');
      const choice = parent.parent;
      if (ts.isCallExpression(choice) && choice.expression.getText(source) === 'choice') {
        const word = isText(name) ? name.text : name.getText(source);
        add(`{ ${quoted(`${word}x`)}: ${initializer.getText(source)} }`, 'property');
      }
    }
    if (ts.isArrayLiteralExpression(parent) && !ts.isSpreadElement(node) && !this.#isTuple(parent)) add('[]', 'element');
  }

  /** Another text that the type or the place allows; and the same text with another number. */
  #otherTexts(node: ts.StringLiteral | ts.NoSubstitutionTemplateLiteral, roles: ReadonlyMap<string, readonly string[]>): string[] {
    const { text } = node;
    const type = this.#checker.getContextualType(node);
    const allowed =
      type?.isUnion() === true && type.types.every(one => one.isStringLiteral())
        ? type.types.map(one => (one as ts.StringLiteralType).value)
        : [];
    const other = nextOf(allowed, text) ?? SIZE_LIMIT[text] ?? nextOf(roles.get(roleOf(node)) ?? [], text) ?? `${text}x`;
    const renumbered = text.replace(/\d+/, digits => String(Number(digits) + 1));
    return allowed.length > 1 || renumbered === text || renumbered === other ? [other] : [other, renumbered];
  }

  /** Another quantity, or the other side of what a value is compared with, where the file has it. */
  #otherName(source: ts.SourceFile, node: ts.Identifier, call: ts.CallExpression): string | undefined {
    const imported = source.statements.filter(ts.isImportDeclaration).map(({ importClause, moduleSpecifier }) => {
      const bindings = importClause?.namedBindings;
      return {
        from: (moduleSpecifier as ts.StringLiteral).text,
        names:
          bindings !== undefined && ts.isNamedImports(bindings)
            ? bindings.elements.filter(one => !one.isTypeOnly).map(one => one.name.text)
            : [],
      };
    });
    const opposite = OTHER_SIDE[node.text];
    if (call.expression === node)
      return opposite !== undefined && imported.some(({ names }) => names.includes(opposite)) ? opposite : undefined;
    const quantities = imported.find(({ from }) => from.endsWith('read/quantity'))?.names.filter(name => /^[A-Z_]+$/.test(name)) ?? [];
    return quantities.includes(node.text) ? nextOf(quantities, node.text) : undefined;
  }

  #mayBeGone(node: ts.PropertyAssignment): boolean {
    const property = this.#checker.getContextualType(node.parent)?.getProperty(node.name.getText());
    return property !== undefined && (property.flags & ts.SymbolFlags.Optional) !== 0;
  }

  /** Of fixed length, or taken apart again. */
  #isTuple(list: ts.ArrayLiteralExpression): boolean {
    const type = this.#checker.getContextualType(list);
    if (type !== undefined) return this.#checker.isTupleType(type);
    return (
      ts.isAsExpression(list.parent) ||
      (ts.isVariableDeclaration(list.parent) && ts.isArrayBindingPattern(list.parent.name)) ||
      ts.isArrowFunction(list.parent)
    );
  }

  #write(source: ts.SourceFile, node: ts.Node): string {
    let text = '';
    let at = node.getStart(source);
    // everything before the first statement stays
    if (node === source) at = 0;
    const children: ts.Node[] = [];
    node.forEachChild(child => void children.push(child));
    for (const child of children) {
      text += source.text.slice(at, child.getStart(source)) + this.#write(source, child);
      at = child.end;
    }
    text += source.text.slice(at, node.end);
    for (const { form, changes } of this.#places.get(node) ?? []) {
      const [open, close, own] =
        form === 'property' ? ['...(', ')', `{ ${text} }`] : form === 'element' ? ['...(', ')', `[${text}]`] : ['(', ')', text];
      text = `${open}${changes.map(({ number, now }) => `globalThis.mutant === ${number} ? ${now} : `).join('')}${own}${close}`;
    }
    return text;
  }
}
