// The sheets that a hand-over adds, what it counts, and what never leaves.
import { describe, expect, it } from 'vitest';
import { demoWorkbook } from '../../src/demo/demo';
import { WORDS } from '../../src/handover/words/words';
import { sourceOf } from '../kit/source-of-plan';
import { assertPlain, handover } from '../../src/handover/handover';
import { bytesOf, fnv1a64 } from '../../src/handover/hash';
import { RULES } from '../../src/joint/rules';
import { CARDS } from '../../src/registry';
import type { PlanCell, WorkbookPlan } from '../../src/sheet/plan';
import { handed, sheetNamed, TITLE, told, workbookOf } from './kit';

const demo = handover(sourceOf(demoWorkbook), TITLE);
const textsOf = (name: string): string[] => sheetNamed(demo, name).cells.map(({ value }) => String(value ?? ''));
const rowWith = (name: string, text: string): readonly PlanCell[] => {
  const { cells } = sheetNamed(demo, name);
  const row = cells.find(({ value }) => value === text)?.at.replace(/\D/g, '');
  return cells.filter(({ at }) => at.replace(/\D/g, '') === row);
};

describe('the demo', () => {
  it('has its sheets between ours', () => {
    expect(demo.plan.sheets.map(({ name }) => name)).toEqual([
      'Hand-over',
      'Characteristics',
      'Variant table',
      'Cautions',
      ...demoWorkbook.sheets.map(({ name }) => name),
      'Calculated',
      'Variants_1',
      'Variants_2',
      'Variants_3',
      'Tables',
      'Steps',
      'Data',
      'Sources',
      'Conversion',
    ]);
  });

  it('has no cell twice', () => {
    for (const { name, cells } of demo.plan.sheets) expect([name, cells.length]).toEqual([name, new Set(cells.map(({ at }) => at)).size]);
  });

  it('has a value beside every formula', () => {
    for (const { name, cells } of demo.plan.sheets)
      for (const { at, formula, value } of cells) if (formula !== undefined) expect([name, at, value]).not.toContain(undefined);
  });

  it('is live but for what has no plain formula', () => {
    const dead = new Set(demo.findings.filter(({ what }) => what !== 'live').map(({ words }) => words.split(':')[0]));
    expect([...dead].every(id => CARDS.get(id ?? '')?.result.shape !== 'number' || CARDS.get(id ?? '')?.notLive !== undefined)).toBe(true);
    expect(demo.findings.filter(({ what }) => what === 'error' || what === 'not in every program')).toEqual([]);
  });
});

it('four of five values of the demo are live', () => {
  expect(demo.live).toBeGreaterThanOrEqual(430);
  expect(demo.live / (demo.live + demo.asValues)).toBeGreaterThan(0.78);
});

it('nine of ten functions that give a number are live', () => {
  const numeric = [...CARDS.values()].filter(({ result }) => result.shape === 'number');
  const live = numeric.filter(({ id, example }) => {
    const cells = Object.fromEntries(
      example.args.flatMap((arg, i) =>
        Array.isArray(arg)
          ? (arg as unknown[][]).flat().map((item, j) => [`${String.fromCharCode(67 + i)}${j + 2}`, item])
          : [[`${String.fromCharCode(67 + i)}2`, arg]],
      ),
    );
    const references = example.args.map((arg, i) =>
      Array.isArray(arg)
        ? `${String.fromCharCode(67 + i)}2:${String.fromCharCode(67 + i)}${(arg as unknown[][]).flat().length + 1}`
        : `${String.fromCharCode(67 + i)}2`,
    );
    return handed(workbookOf({ ...(cells as Record<string, number>), A1: `=ENCL.${id}(${references.join(',')})` })).live === 1;
  });
  expect(live.length / numeric.length).toBeGreaterThanOrEqual(0.9);
  console.log(
    `${live.length} of ${numeric.length} functions that give a number are live; not: ${numeric
      .filter(one => !live.includes(one))
      .map(({ id }) => id)
      .join(', ')}`,
  );
});

describe('the cover', () => {
  it('has the title block', () => {
    expect(textsOf('Hand-over')[0]).toBe('Hand-over: Logger');
    for (const [label, value] of [
      ['part', 'Logger'],
      ['part number', 'L-1'],
      ['revision', 'A'],
      ['date', '2026-11-25'],
      ['status', 'for tooling'],
      ['made by', 'M'],
      ['checked by', 'C'],
    ]) {
      const row = rowWith('Hand-over', label ?? '');
      const at = row.findIndex(({ value: text }) => text === label);
      expect(row[at + 1]).toMatchObject({ value, role: 'text' });
    }
  });

  it('leaves what is not known to be filled in', () => {
    const copy = handover(sourceOf(demoWorkbook), { ...TITLE, checkedBy: '', number: '' });
    const cells = sheetNamed(copy, 'Hand-over').cells;
    const index = cells.findIndex(({ value }) => value === 'checked by');
    expect(cells[index + 1]).toMatchObject({ role: 'input', value: '' });
  });

  it('counts values live and not', () => {
    expect(textsOf('Conversion').some(text => text.startsWith(`${demo.live} values live, ${demo.asValues} as values.`))).toBe(true);
    const values = (what: string): number =>
      demo.findings
        .filter(finding => (what === 'live') === (finding.what === 'live'))
        .reduce((sum, finding) => sum + (finding.values ?? 0), 0);
    expect([demo.live, demo.asValues]).toEqual([values('live'), values('not')]);
  });

  it('lists every finding that is not live, with sheet, cell, what and why', () => {
    for (const { sheet, at, what, words } of demo.findings.filter(finding => finding.what !== 'live')) {
      const { cells } = sheetNamed(demo, 'Conversion');
      const rows = new Set(cells.filter(({ value }) => value === words).map(({ at: place }) => place.replace(/\D/g, '')));
      expect(
        [...rows].some(row =>
          [sheet, at, what].every(text => cells.some(cell => cell.value === text && cell.at.replace(/\D/g, '') === row)),
        ),
      ).toBe(true);
    }
  });

  it('asks the supplier, takes the answers from lists, and names the material', () => {
    const { validations = [] } = sheetNamed(demo, 'Hand-over');
    expect(new Set(validations.map(({ words }) => words))).toEqual(
      new Set(['open, agreed or rejected', 'reviewed, feasible; reviewed, feasible with changes; not feasible']),
    );
    expect(rowWith('Hand-over', 'material family').some(({ value }) => value === 'ABS')).toBe(true);
  });

  it('never speaks of a part as safe or compliant', () => {
    for (const { name, cells } of demo.plan.sheets)
      for (const { value } of cells)
        expect([name, /\b(safe|compliant)\b/i.test(String(value))]).toEqual([name, String(value).includes('steel-safe')]);
  });
});

describe('characteristics', () => {
  const JOINT = {
    A1: 'screw',
    B1: 'head',
    C1: 'wall',
    D1: 'board plane',
    E1: 'boss height',
    F1: 'hole',
    G1: 'material',
    H1: 'pilot',
    I1: 'pilot tolerance',
    A2: 'ST2.9',
    B2: 'pan',
    C2: 2.5,
    D2: 5.5,
    E2: 14,
    F2: 3.4,
    G2: 'ABS',
    H2: 2.4,
    I2: 0.04,
    L1: '=ENCL.JOINT.TABLE(A1:I2,{"state","engagement ratio"})',
  };
  const cellsOf = (copy: ReturnType<typeof handed>, name: string): Readonly<Record<string, PlanCell>> => {
    const { cells } = sheetNamed(copy, 'Characteristics');
    const row = cells.find(({ value }) => value === name)?.at.slice(1);
    return Object.fromEntries(cells.filter(({ at }) => at.replace(/\D/g, '') === row).map(cell => [cell.at.replace(/\d/g, ''), cell]));
  };

  it('have a size that follows, limits from the tolerance of the joint, method, room for five results and a judgement', () => {
    const copy = handed(workbookOf(JOINT));
    const row = cellsOf(copy, 'pilot mouth');
    const mouth = row['C']?.value as number;
    expect(row).toMatchObject({
      A: { format: '0" C"' },
      C: { formula: expect.stringMatching(/^=IF\(.*Variants_1!/), format: '0.00' },
      D: { formula: expect.stringMatching(/^=Variants_1!/), value: expect.closeTo(mouth - 0.04, 9) },
      E: { formula: expect.stringMatching(/^=Variants_1!/), value: expect.closeTo(mouth + 0.04, 9) },
      F: { value: 'mm' },
      G: { role: 'input', value: 'pin gauge' },
      H: { role: 'input', value: '' },
      L: { role: 'input', value: '' },
      M: { formula: expect.stringMatching(/^=IF\(COUNTA\(H\d+:L\d+\)=0,"",/), value: '' },
      N: { role: 'input' },
    });
    // without a tolerance of its own the limits are agreed, and nothing marks it
    expect(cellsOf(copy, 'boss height')).toMatchObject({
      A: { value: expect.any(Number) },
      D: { role: 'input', value: '' },
      E: { role: 'input' },
    });
    expect(cellsOf(copy, 'boss height')['A']?.format).toBeUndefined();
  });

  it('hold sizes of the part alone: no state, no estimate, no ratio, no size of the screw', () => {
    const { cells } = sheetNamed(demo, 'Characteristics');
    const names = cells.filter(({ at }) => /^B\d+$/.test(at) && Number(at.slice(1)) > 4).map(({ value }) => String(value));
    expect(names.length).toBeGreaterThan(12);
    expect(names.filter(name => /state|ratio|pull|strip|engagement|screw|margin|head/.test(name))).toEqual([]);
    for (const { at, value } of cells.filter(({ at: place }) => /^F\d+$/.test(place) && Number(place.slice(1)) > 4))
      expect([at, value]).toEqual([at, expect.stringMatching(/^(mm|°)$/)]);
  });

  it('are those of the variant that passes, or of the one that is named; another name is refused', () => {
    const label = (variants?: readonly string[]): string =>
      String(
        sheetNamed(
          handover(sourceOf(demoWorkbook), TITLE, { choice: { paper: 'A4', language: 'English', ...(variants && { variants }) } }),
          'Characteristics',
        ).cells.find(({ at }) => at === 'A2')?.value,
      );
    expect(label()).toContain('F  thicker wall, slimmer boss');
    expect(label(['D'])).toContain('D  longer');
    expect(() => label(['X'])).toThrow('no variant is called X; there are A  first choice; B  shorter');
  });

  it('of single calls are named by row and column, with the tolerance of the same call', () => {
    const copy = handed(
      workbookOf({
        A1: 'part',
        B1: 'penetration',
        C1: 'tolerance',
        D1: 'hole depth',
        E1: 'OD',
        A2: 'lid',
        B2: 8,
        C2: 0.2,
        D2: '=ENCL.HOLE.DEPTH(B2,1,C2)',
        E2: '=ENCL.BOSS.OD(2.4,1.2)',
      }),
    );
    expect(cellsOf(copy, 'hole depth of lid')).toMatchObject({
      C: { formula: '=S!$D$2', value: 9.2 },
      D: { formula: '=S!$D$2-S!$C$2', value: 9 },
      E: { formula: '=S!$D$2+S!$C$2', value: expect.closeTo(9.4, 9) },
    });
    expect(cellsOf(copy, 'OD of lid')).toMatchObject({ C: { value: expect.closeTo(4.8, 9) }, G: { value: 'calliper' } });
  });

  it('leave what is calculated to a list for the screen', () => {
    const { cells, print } = sheetNamed(demo, 'Calculated');
    expect(print?.screenOnly).toBe('Calculated: for the screen, not for paper');
    expect(cells.length).toBeGreaterThan(400);
    expect(cells.some(({ value }) => /state$/.test(String(value)))).toBe(true);
  });

  it('are written in German with the same values', () => {
    const copy = handover(sourceOf(demoWorkbook), TITLE, { choice: { paper: 'A4', language: 'German' } });
    const german = sheetNamed(copy, 'Merkmale').cells;
    expect(german[0]?.value).toBe(WORDS.German.measured.title);
    expect(
      german.filter(({ role, formula }) => role === 'result' && formula?.includes('Varianten_1') === true).map(({ value }) => value),
    ).toEqual(
      sheetNamed(demo, 'Characteristics')
        .cells.filter(({ role, formula }) => role === 'result' && formula?.includes('Variants_1') === true)
        .map(({ value }) => value),
    );
  });
});

describe('sources', () => {
  it('name every function that is called, with source, how it is held and caution', () => {
    const called = new Set(
      demoWorkbook.sheets.flatMap(({ cells }) =>
        cells.flatMap(({ formula = '' }) => [...formula.matchAll(/ENCL\.([A-Z.]+)\(/g)].map(([, id]) => id ?? '')),
      ),
    );
    for (const id of called) {
      const card = CARDS.get(id);
      const row = rowWith('Sources', id).map(({ value }) => value);
      expect(row).toEqual(expect.arrayContaining([card?.kind, card?.sources[0]?.title, card?.sources[0]?.held]));
      if (card?.caution !== undefined) expect(row).toContain(card.caution);
    }
  });

  it('name the rules of the joint and every table with its edition', () => {
    for (const { name, source } of RULES) expect(rowWith('Sources', name).map(({ value }) => value)).toContain(source);
    const tables = sheetNamed(demo, 'Data').cells.filter(({ role, value }) => role === 'heading' && !String(value).startsWith('choices'));
    expect(tables.length).toBeGreaterThan(3);
    for (const { value } of tables) expect(textsOf('Sources')).toContain(String(value).split(', ')[0]);
  });
});

describe('fingerprint', () => {
  it('is FNV-1a: published values of the 64-bit hash', () => {
    const ascii = (text: string): number[] => [...text].map(letter => letter.charCodeAt(0));
    expect(fnv1a64([])).toBe('cbf29ce484222325');
    expect(fnv1a64(ascii('a'))).toBe('af63dc4c8601ec8c');
    expect(fnv1a64(ascii('foobar'))).toBe('85944171f73967e8');
    expect([...bytesOf('aΩ')]).toEqual([0x61, 0, 0xa9, 0x03]);
  });

  it('changes with an input and with nothing else', () => {
    const hash = (wall: number): string | undefined =>
      sheetNamed(handed(workbookOf({ A1: 2.4, A2: wall, B1: '=ENCL.BOSS.OD(A1,A2)' })), 'Conversion')
        .cells.map(({ value }) => String(value))
        .find(text => text.includes('FNV-1a'));
    expect(hash(1.2)).toBe(hash(1.2));
    expect(hash(1.2)).not.toBe(hash(1.3));
  });
});

describe('nothing leaves', () => {
  const plan = (formula: string): WorkbookPlan => ({
    name: 'P',
    sheets: [{ name: 'Steps', widths: [], cells: [{ at: 'B2', role: 'text', formula }] }],
  });
  it.each([
    ['=ENCL.BOSS.OD(1,2)', 'Steps!B2: a call of the add-in'],
    ['=1+encl.boss.od(1,2)', 'a call of the add-in'],
    ['=_xldudf_ENCL_BOSS_OD(1,2)', 'a call of the add-in'],
    ['=[Book]S!A1', 'a link to another workbook'],
    ['=XLOOKUP(1,A1:A2,A1:A2)', 'XLOOKUP is not in every program'],
    ['=VALUE("1")', 'VALUE is not in every program'],
    ['=LET(x,1,x)', 'not in every program'],
    ['=SUM(', 'a formula that cannot be read'],
    [`=1${'+1'.repeat(4100)}`, 'a formula of 8202 characters'],
  ])('with %s', (formula, why) => {
    expect(() => assertPlain(plan(formula), new Set(['Steps']), new Set())).toThrow(why);
  });

  it('but the formulas of the user may call what they like', () => {
    expect(() => assertPlain(plan('=XLOOKUP(1,A1:A2,A1:A2)&"[mm]"'), new Set(), new Set())).not.toThrow();
  });
});

it('says of what it converted where that is', () => {
  expect(told(handed(workbookOf({ A1: 2.4, B1: '=ENCL.BOSS.OD(A1,1.2)' })).findings)).toEqual(['live S!B1: BOSS.OD']);
});
