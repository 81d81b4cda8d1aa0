// The page of proof: claims with their tests, and the list for someone who has Excel.
import { CLAIMS } from './claims';
import { EXCEL_CHECKS, type ExcelCheck } from './excel-checks';
import { inTable } from './markdown';

const asText = (shows: ExcelCheck['shows']): string =>
  typeof shows !== 'object' ? `\`${String(shows)}\`` : `\`${shows.code}\`; where a message is shown, \`${shows.message} …\``;

function checkRow({ about, formula, shows, note }: ExcelCheck): string {
  const typed = formula === undefined ? '–' : `\`${formula}\``;
  const seen = formula === undefined ? String(shows) : asText(shows);
  return `| ${[about, typed, note === undefined ? seen : `${seen}; ${note}`].map(inTable).join(' | ')} |`;
}

/** As Markdown; `since`: how many of the files of results.md have changed since. */
export function proofPage(since: string): string {
  return [
    'Real Excel was not at hand, and nobody outside the project has reviewed it. For each claim: what stands in for Excel, the ' +
      'test that fails when it is not so, and what only Excel can show. `npm test` runs the tests on plain Node; those of ' +
      '`test/runtime`, `test/browser` and `test/engines` need Chromium, LibreOffice and Gnumeric: `npm run test:runtime`, ' +
      '`test:browser`, `test:engines`.',
    '',
    '| claim | stand-in | test | left to Excel |',
    '|---|---|---|---|',
    ...CLAIMS.map(
      ({ claim, standIn, test, open }) =>
        `| ${[claim, standIn, `[${test.split('/').pop()}](../../${test})`, open].map(inTable).join(' | ')} |`,
    ),
    '',
    `Mutants: ${since} test/mutants/results.md was measured, as this page was written.`,
    '',
    '## Ten minutes in real Excel',
    '',
    'For someone with real Excel, ten minutes a platform once `manifest.xml` is installed: on the desktop, on the web and on a Mac ' +
      'type each formula into an empty sheet and compare. Where the list separator is a semicolon, type semicolons.',
    '',
    '| about | type | must show |',
    '|---|---|---|',
    ...EXCEL_CHECKS.map(checkRow),
  ].join('\n');
}
