// An installation gives the same files everywhere: each package is pinned by its content, wherever it comes from.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

interface Locked {
  readonly version?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly link?: boolean;
}

const lockText = readFileSync('package-lock.json', 'utf8');
const { packages } = JSON.parse(lockText) as { readonly packages: Readonly<Record<string, Locked>> };
const installed = Object.entries(packages).filter(([place]) => place !== '');

test('every package of the lock file is held by its content', () => {
  expect(installed.length).toBeGreaterThan(300);
  expect(installed.filter(([, { integrity = '' }]) => !/^sha(512|256)-/.test(integrity)).map(([place]) => place)).toEqual([]);
});

test('the lock file names no registry', () => {
  expect(installed.filter(([, { resolved }]) => resolved !== undefined).map(([place]) => place)).toEqual([]);
  expect(lockText).not.toMatch(/https?:\/\/[^"]*registry/);
});

test('what we ask for ourselves is one version each, and the one that is locked', () => {
  const { dependencies, devDependencies } = JSON.parse(readFileSync('package.json', 'utf8')) as Readonly<
    Record<'dependencies' | 'devDependencies', Readonly<Record<string, string>>>
  >;
  for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies }))
    expect(packages[`node_modules/${name}`]?.version, name).toBe(version);
});
