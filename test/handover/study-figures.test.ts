// Maps and bars go along as pictures, beside a cell that says when their inputs were changed.
import { describe, expect, it } from 'vitest';
import { compostGuide } from '../../src/demo/guide-compost';
import { handover } from '../../src/handover/handover';
import { address, cellPosition } from '../../src/sheet/addresses';
import { sourceOf, valuesOfPlan } from '../kit/source-of-plan';
import { workedOut } from '../kit/worked-out';
import { sheetNamed, TITLE } from './kit';

const MADE_BY_SEQUENCE = /"boss OD",E\d+:\w+,"wall",/;
const drawings: string[] = [];
const pngOf = (svg: string): Uint8Array => new Uint8Array([drawings.push(svg)]);
const copy = handover(sourceOf(compostGuide), TITLE, { pngOf });
const figure = sheetNamed(copy, 'Figure');
const headings = figure.cells.flatMap(({ role, value, at }) =>
  role === 'heading' ? [{ value: String(value), row: Number(at.slice(1)) }] : [],
);

describe('the studies of the guide', () => {
  it('are drawn behind the joint, the map once and the bars once, in fixed colours', () => {
    expect(headings.slice(-2).map(({ value }) => value)).toEqual([
      'Map of boss OD and wall, Plane!D10',
      'What moves engagement min, Window!A18',
    ]);
    expect(figure.pictures).toHaveLength(3);
    expect(drawings[1]).toContain('bw-map-now');
    for (const svg of drawings) expect(svg).not.toContain('var(');
    for (const { widthPx, heightPx } of figure.pictures ?? []) expect([widthPx > 200, heightPx > 100]).toEqual([true, true]);
    expect(figure.pictures?.[1]?.words).toContain('Map of boss OD and wall, drawn from the inputs of Plane!D10 as they were on');
  });

  it('say beside the picture that an input was changed', () => {
    const shown = (sheets: typeof copy.plan.sheets): unknown[] =>
      headings.slice(-2).map(({ row }) => workedOut([...sheets], 'Figure').values.get(`Figure!C${row}`));
    const changed = copy.plan.sheets.map(sheet =>
      sheet.name === 'Plane' ? { ...sheet, cells: sheet.cells.map(cell => (cell.at === 'B8' ? { ...cell, value: 13 } : cell)) } : sheet,
    );
    expect(shown(copy.plan.sheets)).toEqual(['as drawn', 'as drawn']);
    expect(shown(changed)).toEqual(['inputs changed', 'inputs changed']);
  });

  it('a map whose values another function makes is drawn over those that it shows', () => {
    const source = sourceOf(compostGuide);
    // as a file has it: the map's values stand in its cells
    const shown = valuesOfPlan(compostGuide);
    const sheets = source.sheets.map(sheet => {
      const cells = new Map(sheet.cells);
      const [at, map] = [...cells].find(([, { formula }]) => formula?.includes('JOINT.MAP')) ?? [];
      if (at === undefined) return sheet;
      const { row, column } = cellPosition(at);
      for (let i = 1; i <= 11; i++)
        for (const place of [address(row, column + i), address(row + i, column)])
          cells.set(place, { value: shown.value('Plane', place) as number });
      const formula = map?.formula?.replace(MADE_BY_SEQUENCE, '"boss OD",SEQUENCE(1,10,5,0.5),"wall",') ?? '';
      expect(formula).toContain('SEQUENCE');
      return { ...sheet, cells: cells.set(at, { value: shown.value(sheet.name, at) as string, formula }) };
    });
    const own: string[] = [];
    const made = handover({ ...source, sheets }, TITLE, { pngOf: svg => new Uint8Array([own.push(svg)]) });
    expect(sheetNamed(made, 'Figure').pictures).toHaveLength(3);
    expect(own[1]).toBe(drawings[1]);
  });
});
