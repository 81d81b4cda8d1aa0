// Accessibility by axe, put into the page.
import { readFile } from 'node:fs/promises';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

declare global {
  interface Window {
    /** As far as it is used here: the whole type is too deep for the compiler. */
    axe: { run(context: Places, options: { readonly resultTypes: readonly string[] }): Promise<AxeResults> };
  }
}

export interface Places {
  readonly include: readonly string[];
  readonly exclude: readonly string[];
}

const source = readFile('node_modules/axe-core/axe.min.js', 'utf8');

/** What axe finds, a line each: rule, place, what it asks for. */
export async function faults(page: Page, places: Places): Promise<string[]> {
  await page.evaluate(`${await source};0`);
  return page.evaluate(async given => {
    const { violations } = await window.axe.run(given, { resultTypes: ['violations'] });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} ${target.join(' ')}: ${failureSummary?.replaceAll(/\s+/g, ' ')}`),
    );
  }, places);
}
