// Build step: reads the syntax tree of every formula into its plain form, so that each formula is written once.
// Writes forms.json: the forms by function name, and which function each card, joint node and joint default calls.
// A function outside the subset has no form. A card without one is a look-up in a standard's table or says why it is not live, and what
// the joint declares
// as made by a formula has one; else the build stops.
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import ts from 'typescript';
import { callSites, type Declared } from './declared';
import { asNamed, asPlace, called, type Declaration, form, hasBody, OutsideSubset, textOf } from './from-source';
import type { Form } from './tree';

const ROOT = join(import.meta.dirname, '..');

/** Cards that come to the hand-over in another way than by a form of their formula. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'CHECK.MAX': 'handover/compile/checks.ts',
  'CHECK.MIN': 'handover/compile/checks.ts',
  'CHECK.CLEAR': 'handover/compile/checks.ts',
  'CHECK.WORST': 'handover/compile/checks.ts',
  'JOINT.TABLE': 'handover/compile/joint/joint-sheet.ts',
  'CHECK.JOINT': 'handover/compile/joint/joint-check.ts',
  'CHECK.BOSS': 'handover/compile/joint/joint-check.ts',
  'STACK.SHARE': 'handover/compile/calls/tables/stack.ts',
  'STACK.TABLE': 'handover/compile/calls/tables/stack.ts',
  'SCREW.LENGTH.TABLE': 'handover/compile/calls/tables/lengths.ts',
  'SCREW.LENGTH.PICK': 'handover/compile/calls/tables/lengths.ts',
  'SCREW.LENGTH.COMMON': 'handover/compile/calls/tables/lengths.ts',
};

/** Formulas of one row of a table whose formula has no form: the hand-over writes the table row by row. */
const OF_ROWS: readonly string[] = [
  'linkHalfMm',
  'linkShare',
  'stackLink',
  'stackShiftMm',
  'stackTotal',
  'lengthState',
  'odAllowedByWallMm',
  'depthAskedByRatioMm',
  'depthAllowedByPinMm',
];

export interface PlainForms {
  /** Functions without a form, by id: file, formula, and what in it is outside the subset. */
  readonly without: Readonly<Record<string, string>>;
  readonly formulas: Readonly<Record<string, Form>>;
  readonly cards: Readonly<Record<string, string>>;
  readonly nodes: Readonly<Record<string, string>>;
  readonly defaults: Readonly<Record<string, string>>;
  readonly what: Readonly<Record<string, string>>;
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

export function readForms(root = ROOT): PlainForms {
  const formulas = Object.create(null) as Record<string, Form>;
  const declared: Declared = { cards: {}, lookUps: [], nodes: {}, defaults: {}, files: {}, withoutForm: new Set() };
  const place = (file: string): string => relative(root, file).split(sep).join('/');
  const maths = new Set<string>();
  /** Where each formula stands, and why it is outside the subset. */
  const home = new Map<string, string>();
  const outside = new Map<string, string>();
  const declarations = new Map<string, Declaration>();
  for (const file of ['core', 'joint', 'about'].flatMap(folder => sources(join(root, folder)))) {
    const source = ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.ES2021, true);
    callSites(source, declared);
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
        `calls ${missing}, ` +
          `${outside.get(missing) === undefined ? 'not an exported function' : `${home.get(missing)}: ${outside.get(missing)}`}`,
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
  [declared.cards, declared.nodes, declared.defaults].forEach(names => Object.values(names).forEach(use));
  OF_ROWS.forEach(use);
  const why = (id: string, name: string): string =>
    `${home.get(name) ?? place(declared.files[id] as string)}: ${name}: ${outside.get(name) ?? 'not an exported function'}`;
  const formless = Object.entries(declared.cards)
    .filter(([, name]) => !used.has(name))
    .map(([id, name]) => [id, why(id, name)] as const);
  const undeclared = formless.filter(([id]) => !declared.withoutForm.has(id) && ELSEWHERE[id] === undefined);
  if (undeclared.length > 0)
    throw new Error(`no plain form, and no notLive in the card:\n${undeclared.map(([id, reason]) => `${id}: ${reason}`).join('\n')}`);
  const unprinted = Object.entries({ ...declared.nodes, ...declared.defaults }).filter(([, name]) => !used.has(name));
  if (unprinted.length > 0)
    throw new Error(
      `made by a formula without a plain ` +
        'form:\n' +
        unprinted.map(([name, formula]) => `${name}: ${formula}: ${outside.get(formula) ?? 'not an exported function'}`).join('\n'),
    );
  const without = Object.fromEntries([...formless, ...declared.lookUps.map(id => [id, 'a look-up'])]);
  const keep = (names: Record<string, string>): Record<string, string> =>
    Object.fromEntries(Object.entries(names).filter(([, name]) => used.has(name)));
  return {
    without,
    formulas: Object.fromEntries(
      [...used]
        .sort()
        .map(name => [name, isCalled.has(name) ? (formulas[name] as Form) : form(declarations.get(name) as Declaration, asPlace)]),
    ),
    cards: keep(declared.cards),
    nodes: keep(declared.nodes),
    defaults: keep(declared.defaults),
    what: sentences(join(root, '..', 'functions')),
  };
}

const fileIn = (root: string): string => join(root, 'plain/forms.json');

/** A line a name, so that a change of a formula is a change of its line. */
function textOfForms({ without: _, ...forms }: PlainForms): string {
  const lines = (part: object): string =>
    Object.entries(part)
      .map(([name, value]) => `${JSON.stringify(name)}:${JSON.stringify(value)}`)
      .join(',\n');
  const parts = Object.entries(forms).map(([name, part]) => `${JSON.stringify(name)}:{\n${lines(part)}\n}`);
  return `{\n"generated":"by npm run generate",\n${parts.join(',\n')}\n}\n`;
}

export const writeForms = (read: PlainForms, root = ROOT): void => writeFileSync(fileIn(root), textOfForms(read));

/** Whoever builds or tests from the forms stops at those of other formulas. */
export function checkForms(root = ROOT): void {
  if (readFileSync(fileIn(root), 'utf8') !== textOfForms(readForms(root)))
    throw new Error('src/plain/forms.json is not what the formulas say: npm run generate');
}
