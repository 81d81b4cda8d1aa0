// What the page of the pane loads, and from where.
import { readdirSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const PANE = new URL('../../src/pane/', import.meta.url);
const text = (file: string) => readFileSync(new URL(file, PANE), 'utf8');
const page = text('pane.html');

it('names no other origin than that of Office.js', () => {
  const files = readdirSync(PANE).filter(file => /[.](html|css|tsx?)$/.test(file));
  expect(files.length).toBeGreaterThan(10);
  const origins = files.flatMap(file =>
    [...text(file).matchAll(/(?:https?:)?\/\/[\w.-]+\.[a-z]+/g)].map(([origin]) => `${file} ${origin}`),
  );
  expect(new Set(origins)).toEqual(new Set(['pane.html https://appsforoffice.microsoft.com']));
});

it('allows no script but its own and Office.js, no eval, and no other origin', () => {
  const [, policy = ''] = /Content-Security-Policy"\s+content="([^"]*)"/.exec(page) ?? [];
  const rules = new Map(policy.split('; ').map(rule => [rule.split(' ')[0], rule]));
  expect(rules.get('default-src')).toBe("default-src 'self'");
  expect(rules.get('script-src')).toBe("script-src 'self' https://appsforoffice.microsoft.com");
  expect(policy).not.toContain('unsafe-eval');
  expect(page).not.toMatch(/<script(?![^>]* src=)|\son\w+=/);
});

it('loads Office.js first, then the functions, so that cells have their answers before there is a pane', () => {
  const scripts = [...page.matchAll(/<script([^>]*)>/g)].map(([, attributes]) => attributes);
  expect(scripts).toEqual([
    ' src="https://appsforoffice.microsoft.com/lib/1/hosted/office.js"',
    ' src="start.js"',
    ' src="functions.js"',
    ' src="pane.js"',
  ]);
});
