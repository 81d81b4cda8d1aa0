// Every member of Excel that the host uses, with the requirement set that its declaration names.
import { readdirSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { NEEDED } from '../../src/hosts/excel/excel-port';

const HOST = path.join(import.meta.dirname, '../../src/hosts/excel');
const OFFICE = /@types[\\/]office-js[\\/]/;

interface Use {
  readonly name: string;
  /** Minor version of ExcelApi; nothing where the declaration names no set. */
  readonly minor: number | undefined;
}

function usesIn(files: readonly string[], extra?: { readonly name: string; readonly text: string }): Use[] {
  const options: ts.CompilerOptions = {
    target: ts.ScriptTarget.ES2021,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    module: ts.ModuleKind.ESNext,
    strict: true,
    noEmit: true,
    types: ['office-js'],
    lib: ['lib.es2021.d.ts', 'lib.dom.d.ts'],
    skipLibCheck: true,
  };
  const host = ts.createCompilerHost(options);
  const read = host.getSourceFile.bind(host);
  host.getSourceFile = (name, ...rest) =>
    name === extra?.name ? ts.createSourceFile(name, extra.text, ts.ScriptTarget.ES2021, true) : read(name, ...rest);
  const program = ts.createProgram([...files], options, host);
  const checker = program.getTypeChecker();
  const found = new Map<string, Use>();
  const note = (symbol: ts.Symbol | undefined) => {
    const declaration = symbol?.declarations?.find(one => OFFICE.test(one.getSourceFile().fileName));
    if (symbol === undefined || declaration === undefined || ts.isModuleDeclaration(declaration)) return;
    const owner = (declaration.parent as { name?: ts.Identifier }).name?.text ?? '';
    const text = ts
      .getJSDocCommentsAndTags(declaration)
      .map(comment => comment.getText())
      .join('\n');
    const [, minor] = /Api set: ExcelApi 1\.(\d+)/.exec(text) ?? [];
    found.set(`${owner}.${symbol.name}`, { name: `${owner}.${symbol.name}`, minor: minor === undefined ? undefined : Number(minor) });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node)) note(checker.getSymbolAtLocation(node.name));
    if (ts.isObjectBindingPattern(node)) {
      const type = checker.getTypeAtLocation(node);
      for (const { propertyName, name } of node.elements) note(type.getProperty((propertyName ?? name).getText()));
    }
    ts.forEachChild(node, visit);
  };
  for (const file of files) visit(program.getSourceFile(file) as ts.SourceFile);
  return [...found.values()];
}

const files = readdirSync(HOST).map(name => path.join(HOST, name));
const minorNeeded = Number(NEEDED.split('.')[1]);

describe('the members of Excel that the host uses', () => {
  const uses = usesIn(files);

  it('are seen', () => {
    expect(uses.length).toBeGreaterThan(60);
    expect(uses).toEqual(
      expect.arrayContaining([
        { name: 'WorksheetCollection.add', minor: 1 },
        { name: 'Workbook.getActiveCell', minor: 7 },
        { name: 'Range.left', minor: 10 },
        { name: 'ShapeCollection.addImage', minor: 9 },
      ]),
    );
  });

  it('are of the set that is asked for at the start, and one of them needs it', () => {
    const minors = uses.flatMap(({ minor }) => minor ?? []);
    // asked for by itself, where it is there
    expect(uses.filter(({ minor = 0 }) => minor > minorNeeded)).toEqual([{ name: 'Application.decimalSeparator', minor: 11 }]);
    expect(minors).toContain(minorNeeded);
    expect(minorNeeded).toBeLessThanOrEqual(12);
  });

  it('without a set are those of the runtime that all of Excel has', () => {
    expect(
      uses
        .filter(({ minor }) => minor === undefined)
        .map(({ name }) => name)
        .sort(),
    ).toEqual([
      '.AsyncResultStatus',
      '.FileType',
      '.VisibilityMode',
      '.addin',
      '.context',
      '.run',
      'Addin.onVisibilityModeChanged',
      'Application.load',
      'AsyncResult.error',
      'AsyncResult.status',
      'AsyncResult.value',
      'AsyncResultStatus.Succeeded',
      'ClientObject.isNullObject',
      'ClientRequestContext.sync',
      'ClientResult.value',
      'ConditionalFormat.load',
      'Context.document',
      'Context.requirements',
      'DataValidation.load',
      'Document.getFileAsync',
      'Document.url',
      'Error.message',
      'EventHandlerResult.remove',
      'EventHandlers.add',
      'File.closeAsync',
      'File.getSliceAsync',
      'File.size',
      'File.sliceCount',
      'FileType.Compressed',
      'NamedItem.load',
      'Range.load',
      'RangeFormat.load',
      'RequestContext.application',
      'RequestContext.workbook',
      'RequirementSetSupport.isSetSupported',
      'Slice.data',
      'TableScopedCollection.items',
      'TableScopedCollection.load',
      'VisibilityMode.taskpane',
      'VisibilityModeChangedMessage.visibilityMode',
      'Worksheet.load',
      'WorksheetCollection.items',
      'WorksheetCollection.load',
    ]);
  });

  it('are none that takes a list of areas, which each country parts by another sign', () => {
    expect(uses.map(({ name }) => name)).not.toContain('Worksheet.getRanges');
    const name = path.join(HOST, 'planted.ts');
    expect(
      usesIn([name], { name, text: "export const a = (sheet: Excel.Worksheet) => sheet.getRanges('A1,B2');" }).map(use => use.name),
    ).toContain('Worksheet.getRanges');
  });

  it('would show a newer one', () => {
    const name = path.join(HOST, 'planted.ts');
    expect(usesIn([name], { name, text: "export const a = (sheet: Excel.Worksheet) => sheet.notes.add('A1', 'x');" })).toContainEqual({
      name: 'Worksheet.notes',
      minor: 18,
    });
  });
});
