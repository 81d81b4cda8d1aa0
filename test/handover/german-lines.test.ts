// What a German copy says of its cells and sources, and what a comparison says in German: fixed words in German, contents as they are.
import { describe, expect, it } from 'vitest';
import { changeLists } from '../../src/handover/compare/change-lists';
import { compare } from '../../src/handover/compare/compare';
import type { ComparedWorkbook } from '../../src/handover/compare/seen';
import { DataSheet } from '../../src/handover/compile/data-sheet';
import { sourcesSheet } from '../../src/handover/pages/sources';
import { ownExample, ownLengths, ownScrew } from '../../src/core/screw/own';
import { RULES } from '../../src/joint/rules';
import { CARDS } from '../../src/registry';
import { CHOSEN_BY_ITSELF } from '../../src/handover/pages/choice';
import type { Language } from '../../src/handover/words/language';
import { WORDS } from '../../src/handover/words/words';
import { plannedCopy } from '../../src/handover/write/copy';
import { readPackage } from '../../src/package/read';
import type { SourceCell } from '../../src/sheet/workbook-values';
import { TABLES } from '../standards/tables';
import { links, made, MAIN } from '../package/made';
import { handed, TITLE, workbookOf } from './kit';

const { German } = WORDS;
const OURS = '_xldudf_ENCL_BOSS_OD(A1,1)';

describe('a comparison in German', () => {
  const workbook = (cells: Readonly<Record<string, SourceCell>>, more: readonly string[] = []): ComparedWorkbook => ({
    name: 'W',
    sheets: [{ name: 'Parts', cells: new Map(Object.entries(cells)) }, ...more.map(name => ({ name, cells: new Map() }))],
  });
  const sent: Readonly<Record<string, SourceCell>> = {
    A1: { value: 'part' },
    B1: { value: 'hole' },
    C1: { value: 'wall' },
    A2: { value: 'upper boss' },
    B2: { value: 2.4 },
    A3: { value: 'lower boss' },
    B3: { value: 2.9 },
    C3: { value: 1.4 },
  };
  const lines = (returned: ComparedWorkbook): string[] =>
    changeLists(compare(workbook(sent, ['Notes']), returned, German), German).flatMap(({ heading, lines: all }) =>
      all.map(line => `${heading}: ${line}`),
    );

  it('says it in German, with the contents of cells as they are', () => {
    expect(lines(workbook({ ...sent, B2: { value: 2.5 }, C2: { value: 1.2 } }, ['Extra']))).toEqual([
      'geänderte Eingaben: hole von upper boss, Parts B2: 2.4 -> 2.5',
      'geänderte Eingaben: wall von upper boss, Parts C2: leer -> 1.2',
      'Zeilen, Spalten und Blätter: Notes, Blatt fehlt: das ganze Blatt',
      'Zeilen, Spalten und Blätter: Extra, Blatt hinzugefügt: wurde nicht gesandt',
    ]);
    const { A3, B3, C3, ...rest } = sent;
    expect(lines(workbook({ ...rest, E3: A3 as SourceCell, F3: B3 as SourceCell, G3: C3 as SourceCell }, ['Notes']))).toEqual([
      'Zeilen, Spalten und Blätter: Parts, Zellen verschoben: A3:C3 nach E3:G3',
    ]);
  });
});

describe('what is said of cells', () => {
  const WILD = workbookOf({
    A1: 2.4,
    A2: '2,4 mm',
    A3: ' ',
    B1: '=ENCL.BOSS.OD(A1,1.2)',
    B2: '=ENCL.BOSS.OD(A2,1.2)',
    B3: '=ENCL.LIMITS("10 -0.2/-0.4")',
    B5: '=ENCL.BOSS.OD([1]Other!A1,1.2)',
    B6: '=ENCL.BOSS.OD(NOTHERE,1.2)',
    B7: '=WEBSERVICE("x")',
    B8: '=SORT(A1:A2)',
    B9: '=ENCL.BOSS.OD(Missing!A1,1.2)',
    B10: '=ENCL.BOSS.OD(A10,1.2)',
    B11: '=1+ENCL.BOSS.OD(A1,1.2)',
    B12: '=ENCL.UNIT.CHECK(A1,"wall")',
    B13: '=_xll.OTHER.FN(A1)',
    B14: '=ENCL.SCREW.CARD("M3","pan")',
  });

  it('each sentence has its German, and none is left half in English', () => {
    const [german, english] = [handed(WILD, 'German'), handed(WILD)].map(copy => copy.findings.filter(({ what }) => what !== 'live'));
    expect(english?.length).toBeGreaterThanOrEqual(9);
    expect(german?.length).toBe(english?.length);
    const ENGLISH_WORDS = /\b(the|its|it|is|are|not|formula|stays|value|became|points|inside|text|of)\b/;
    for (const [i, { words }] of (german ?? []).entries()) {
      expect(words).not.toBe(english?.[i]?.words);
      // what a function answers is the content of a cell
      expect(words.replace(/ ergab .*$/, '').replace(/\b(A1|of)\b/g, '')).not.toMatch(ENGLISH_WORDS);
    }
  });

  it('what each function gives, its caution and what each rule compares are German on the sheet of sources', () => {
    const all = new Set(CARDS.keys());
    const texts = (language: 'English' | 'German'): Map<string, unknown> =>
      new Map(sourcesSheet('Q', all, [], language, WORDS[language]).cells.map(({ at, value }) => [at, value]));
    const [german, english] = [texts('German'), texts('English')];
    let compared = 0;
    for (const [at, text] of english) {
      if (!/^[BF]\d/.test(at) || text === '' || Number(at.slice(1)) < 4) continue;
      expect([at, german.get(at)]).not.toEqual([at, text]);
      expect(String(german.get(at))).not.toMatch(/\b(the|is|with|of a|Spills|at its)\b/);
      compared++;
    }
    expect(compared).toBeGreaterThanOrEqual(CARDS.size + RULES.length + 60);
  });

  it('where each value comes from is German beside the titles of what was published', () => {
    const { cells } = sourcesSheet('Q', new Set(CARDS.keys()), Object.values(TABLES), 'German', German);
    const said = cells.flatMap(({ at, value }) => (/^[B-E]/.test(at) && typeof value === 'string' ? [value] : []));
    expect(said.length).toBeGreaterThan(500);
    expect(
      said.filter(text => /\b(the|from|read|copy|copies|memory|shown|where|withdrawn|edition from|screws?|heads?)\b/.test(text)),
    ).toEqual([]);
  });

  it('every title and note of a standard table is German on the sheet of data, and its rows are the same', () => {
    const own = ownScrew(ownExample())?.own;
    if (own === undefined) throw new Error('the example is no own screw');
    const tables = [...Object.values(TABLES), own.table, ownLengths(own)];
    const [german, english] = (['German', 'English'] as const).map(language => {
      const data = new DataSheet('Data', WORDS[language].data);
      return { ranges: tables.map(table => data.names(table)), cells: data.plan().cells };
    });
    expect(german?.ranges).toEqual(english?.ranges);
    let titles = 0;
    for (const [i, { at, role, value }] of (english?.cells ?? []).entries()) {
      const said = german?.cells[i];
      expect(said).toMatchObject({ at, role });
      if (role === 'header') {
        titles++;
        expect(said?.value).not.toBe(value);
      }
      if (['header', 'note', 'title'].includes(role))
        expect(said?.value).not.toMatch(
          /\b(the|is|are|of|from|to|read|by|with|head|copy|copies|memory|and|has|have|prints?|length|height|diameter|nominal|approx|sharp|max|min)\b(?![.])/,
        );
      else if (role !== 'heading') expect(said?.value).toBe(value);
    }
    expect(titles).toBeGreaterThan(200);
  });

  it('a call outside cells is told in either language, and left as it is where it cannot go', () => {
    const outside = readPackage(
      made({
        rows: '<row r="1"><c r="A1"><v>2</v></c></row>',
        afterData: `<conditionalFormatting sqref="A1:A9"><cfRule type="expression" priority="1"><formula>${OURS}&gt;4</formula></cfRule></conditionalFormatting><drawing r:id="d"/><tableParts count="1"><tablePart r:id="t"/></tableParts>`,
        book: `<definedNames><definedName name="od">${OURS}</definedName></definedNames>`,
        more: {
          'xl/worksheets/_rels/sheet1.xml.rels': links(
            ['t', 'table', '../tables/table1.xml'],
            ['d', 'drawing', '../drawings/drawing1.xml'],
          ),
          'xl/tables/table1.xml': `<table xmlns="${MAIN}" id="1" name="Parts" displayName="Parts" ref="A1:B3"><tableColumns count="2"><tableColumn id="1" name="od"><calculatedColumnFormula>${OURS}</calculatedColumnFormula></tableColumn><tableColumn id="2" name="b"/></tableColumns></table>`,
          'xl/drawings/drawing1.xml': '<wsDr xmlns="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"/>',
          'xl/drawings/_rels/drawing1.xml.rels': links(['c', 'chart', '../charts/chart1.xml']),
          'xl/charts/chart1.xml': `<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:f>${OURS}</c:f></c:chartSpace>`,
        },
      }),
    );
    const toldIn = (language: Language): string[] =>
      plannedCopy(outside, workbookOf({ A1: 2 }), TITLE, { choice: { ...CHOSEN_BY_ITSELF, language } })
        .copy.findings.filter(({ what }) => what !== 'live')
        .map(({ words }) => words)
        .sort();
    expect(toldIn('English')).toEqual([
      'chart xl/charts/chart1.xml on S: left as it is, without a value, since it calls BOSS.OD(A1,1)',
      'column od of Parts on S: taken out, since it calls BOSS.OD(A1,1)',
      'condition A1:A9 on S: BOSS.OD(A1,1)>4 is worked out on the sheet Outside_cells, and read there; where it gave an error or nothing, it goes on so',
      'name od: taken out, since it calls BOSS.OD(A1,1)',
    ]);
    expect(toldIn('German')).toEqual([
      'Diagramm xl/charts/chart1.xml auf S: bleibt, wie es ist, ohne Wert, weil der Aufruf BOSS.OD(A1,1) darin steht',
      'Name od: entfernt, weil der Aufruf BOSS.OD(A1,1) darin steht',
      'Spalte od von Parts auf S: entfernt, weil der Aufruf BOSS.OD(A1,1) darin steht',
      'bedingte Formatierung A1:A9 auf S: BOSS.OD(A1,1)>4 wird auf dem Blatt Ausserhalb berechnet und dort gelesen; wo ein Fehler oder nichts stand, bleibt es so',
    ]);
  });
});
