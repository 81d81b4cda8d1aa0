// No word means two things: a type, an interface, a class or an enumeration of src and functions is declared in one file.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';

const ROOT = path.join(import.meta.dirname, '../..');

/** Types that a text declares, at the top or inside a function; parameters of a type are no words of the project. */
function typesIn(file: string, text: string): string[] {
  const names: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node) || ts.isClassDeclaration(node) || ts.isEnumDeclaration(node))
      if (node.name !== undefined) names.push(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, text, ts.ScriptTarget.ES2021, true, file.endsWith('x') ? ts.ScriptKind.TSX : ts.ScriptKind.TS));
  return names;
}

/** `Name: file, file` for each name that more than one file declares. */
function inTwo(files: ReadonlyMap<string, string>): string[] {
  const homes = new Map<string, Set<string>>();
  for (const [file, text] of files)
    for (const name of typesIn(file, text)) homes.set(name, (homes.get(name) ?? new Set<string>()).add(file));
  return [...homes].filter(([, home]) => home.size > 1).map(([name, home]) => `${name}: ${[...home].join(', ')}`);
}

const FILES = new Map(
  ['src', 'functions']
    .flatMap(folder => readdirSync(path.join(ROOT, folder), { recursive: true, encoding: 'utf8' }).map(file => `${folder}/${file}`))
    .filter(file => /\.tsx?$/.test(file))
    .map(file => [file, readFileSync(path.join(ROOT, file), 'utf8')]),
);

test('no type name is declared in two files', () => {
  expect(FILES.size).toBeGreaterThan(300);
  expect([...FILES].flatMap(([file, text]) => typesIn(file, text)).length).toBeGreaterThan(400);
  expect(inTwo(FILES)).toEqual([]);
});

test('one that is declared again is found: interface, alias, class or enumeration, in a function too, and not where it is only used', () => {
  const first = 'export interface Place { readonly x: number }';
  for (const second of [
    'interface Place { y: 1 }',
    'export type Place = 1;',
    'class Place {}',
    'enum Place { A }',
    'const f = () => { type Place = 1; return 1 as Place; };',
  ])
    expect(
      inTwo(
        new Map([
          ['a.ts', first],
          ['b.tsx', second],
        ]),
      ),
      second,
    ).toEqual(['Place: a.ts, b.tsx']);
  const using =
    'import type { Place } from "./a"; export type Other<Place> = Place; // interface Place\nexport const s = "class Place {}";';
  expect(
    inTwo(
      new Map([
        ['a.ts', first],
        ['b.ts', using],
      ]),
    ),
  ).toEqual([]);
});
