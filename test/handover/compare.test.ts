// What came back is laid beside what was sent.
import { describe, expect, it } from 'vitest';
import { compare } from '../../src/handover/compare';
import { sourceOf } from '../kit/source-of-plan';
import type { SourceCell, SourceWorkbook } from '../../src/sheet/workbook-values';
import type { Cell } from '../../src/core/kinds';
import { handed, sheetNamed, workbookOf } from './kit';

const copy = handed(
  workbookOf({ A1: 'pilot', B1: 2.4, A2: 'wall', B2: 1.2, A3: 'outside diameter', B3: '=ENCL.BOSS.OD(B1,B2)', A4: 'note', B4: 'as drawn' }),
);
const sent = sourceOf(copy.plan);

/** The sent workbook with some cells changed; nothing takes a cell away. */
function returned(changes: Readonly<Record<string, Cell | { readonly formula: string } | undefined>>, drop?: string): SourceWorkbook {
  return {
    ...sent,
    sheets: sent.sheets
      .filter(({ name }) => name !== drop)
      .map(sheet => {
        const cells = new Map(sheet.cells);
        for (const [place, change] of Object.entries(changes)) {
          const [name, at = ''] = place.split('!');
          if (name !== sheet.name) continue;
          if (change === undefined) cells.delete(at);
          else
            cells.set(at, typeof change === 'object' ? ({ value: null, formula: change.formula } satisfies SourceCell) : { value: change });
        }
        return { ...sheet, cells };
      }),
  };
}

const NOTHING = { changedInputs: [], changedFormulas: [], answers: [], results: [], missing: [], added: [] };
const measuredRow =
  sheetNamed(copy, 'Characteristics')
    .cells.find(({ value }) => value === 'outside diameter')
    ?.at.slice(1) ?? '';

it('finds nothing where nothing was changed', () => {
  expect(compare(sent, returned({}))).toEqual(NOTHING);
});

it('lists a changed input with its label', () => {
  expect(compare(sent, returned({ 'S!B2': 1.5 })).changedInputs).toEqual([
    { sheet: 'S', at: 'B2', label: 'wall', sent: '1.2', returned: '1.5' },
  ]);
});

it('lists an added input and one that is gone', () => {
  const { changedInputs, missing } = compare(sent, returned({ 'S!B9': 7, 'S!B4': undefined }));
  expect(changedInputs).toEqual([{ sheet: 'S', at: 'B9', label: 'as drawn', sent: '', returned: '7' }]);
  expect(missing).toEqual([{ sheet: 'S', at: 'B4', label: 'note', sent: 'as drawn' }]);
});

describe('formulas', () => {
  it('are compared as text', () => {
    const { changedFormulas } = compare(sent, returned({ 'S!B3': { formula: '=Steps!$B$10+0.2' } }));
    expect(changedFormulas).toEqual([
      { sheet: 'S', at: 'B3', label: 'outside diameter', sent: '=Steps!$B$10', returned: '=Steps!$B$10+0.2' },
    ]);
  });

  it('that became values, and values that became formulas, are changed formulas', () => {
    expect(
      compare(sent, returned({ 'S!B3': 4.8, 'S!B1': { formula: '=WEBSERVICE("x")' } })).changedFormulas.map(({ at, returned: now }) => [
        at,
        now,
      ]),
    ).toEqual([
      ['B1', '=WEBSERVICE("x")'],
      ['B3', '4.8'],
    ]);
  });

  it('are the same with other blanks and capitals, but not with other texts', () => {
    expect(compare(sent, returned({ 'S!B3': { formula: '= steps!$b$10' } }))).toEqual(NOTHING);
    const texts = (formula: string): SourceWorkbook => ({
      name: 'T',
      sheets: [{ name: 'S', cells: new Map([['A1', { value: null, formula }]]) }],
    });
    expect(compare(texts('=IF(A2="a b",1,2)'), texts('=IF( A2 = "A b",1,2)')).changedFormulas).toHaveLength(1);
  });
});

describe('what was filled in', () => {
  const question =
    sheetNamed(copy, 'Handover')
      .cells.find(({ value }) => String(value).startsWith('Shrinkage of the grade'))
      ?.at.slice(1) ?? '';

  it('on the cover are answers', () => {
    const { answers, changedInputs } = compare(
      sent,
      returned({ [`Handover!E${question}`]: '0.6 along, 0.7 across', [`Handover!H${question}`]: 'agreed' }),
    );
    expect(answers).toEqual([
      { sheet: 'Handover', at: `E${question}`, label: expect.stringContaining('Shrinkage'), sent: '', returned: '0.6 along, 0.7 across' },
      { sheet: 'Handover', at: `H${question}`, label: expect.stringContaining('Shrinkage'), sent: 'open', returned: 'agreed' },
    ]);
    expect(changedInputs).toEqual([]);
  });

  it('as a result stands beside requirement and limits', () => {
    const { results, answers } = compare(
      sent,
      returned({
        [`Characteristics!I${measuredRow}`]: 4.83,
        [`Characteristics!E${measuredRow}`]: 4.7,
        [`Characteristics!H${measuredRow}`]: 'calliper',
        [`Characteristics!K${measuredRow}`]: 'cavity 1',
      }),
    );
    expect(results).toEqual([
      {
        sheet: 'Characteristics',
        at: `I${measuredRow}`,
        characteristic: 'outside diameter',
        requirement: '4.8',
        lower: '4.7',
        upper: '',
        method: 'calliper',
        result: '4.83',
        judged: '',
        remark: 'cavity 1',
      },
    ]);
    expect(answers.map(({ at }) => at[0])).toEqual(['E', 'H', 'K']);
  });
});

it('lists sheets that are gone and sheets that came along, and cleans their texts', () => {
  const back = returned({ 'S!B4': '\u202eas drawn' }, 'Sources');
  const result = compare(sent, { ...back, sheets: [...back.sheets, { name: 'Extra\u0007', cells: new Map() }] });
  expect(result.missing).toEqual([{ sheet: 'Sources', at: '', label: 'the whole sheet', sent: '' }]);
  expect(result.added).toEqual(['Extra']);
  expect(result.changedInputs).toEqual([{ sheet: 'S', at: 'B4', label: 'note', sent: 'as drawn', returned: 'as drawn' }]);
});
