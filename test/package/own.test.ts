// Sheets of ours stand behind the user's as they were written, and nothing of theirs moves for them.
import { readXlsx } from 'hucre/xlsx';
import { beforeAll, describe, expect, it } from 'vitest';
import { writeWorkbook } from '../../src/hosts/xlsx/write';
import { edited, type EditedPackage } from '../../src/package/edit';
import { readPackage, type StoredSheet } from '../../src/package/read';
import { CONTENT_TYPES, FOREIGN, FOREIGN_NAMES } from './foreign';
import { BOOK, BOOK_LINKS, rawEntries, SHEET } from './made';
import { allUnder, child, children, FileParts, Looks, OWN_PLAN, sheetPart } from './own-plan';
import { STYLED, STYLES } from './styled';

const ALL = { ...FOREIGN, ...STYLED };
const NAMES = [...FOREIGN_NAMES, ...Object.keys(STYLED)];
let own = new Uint8Array();
beforeAll(async () => {
  own = new Uint8Array(await writeWorkbook(OWN_PLAN));
}, 60_000);
const contents = (sheets: readonly StoredSheet[]) => sheets.map(({ name, state, cells }) => ({ name, state, cells }));
const ourNames = OWN_PLAN.sheets.map(({ name }) => name);
/** Cells of ours that hold something; with those that only have looks there are more. */
const FILLED = OWN_PLAN.sheets.reduce((sum, { cells }) => sum + cells.length, 0);

describe.each(NAMES)('behind %s', name => {
  let file: Uint8Array;
  let copy: EditedPackage;
  beforeAll(async () => {
    file = (await ALL[name]?.()) ?? new Uint8Array();
    copy = edited(readPackage(file), { cells: new Map(), own });
  }, 60_000);

  it('every other part has its bytes and its place', () => {
    const [before, after] = [rawEntries(file), rawEntries(copy.bytes)];
    const touchable = [BOOK, BOOK_LINKS, CONTENT_TYPES, STYLES];
    expect(copy.touched.filter(part => !touchable.includes(part))).toEqual([]);
    expect([...after.keys()]).toEqual([...[...before.keys()].filter(part => !copy.gone.includes(part)), ...copy.added]);
    const untouched = [...before].filter(([part]) => !copy.touched.includes(part) && !copy.gone.includes(part));
    for (const [part, entry] of untouched) expect(after.get(part), part).toEqual(entry);
    expect(untouched.map(([part]) => part)).toContain(SHEET);
    const capitals = [...after.keys()].map(part => part.toLowerCase());
    expect(new Set(capitals).size).toBe(capitals.length);
  });

  it('sheets, names and cells are read as the user’s and then ours', () => {
    const [before, after, ours] = [file, copy.bytes, own].map(readPackage);
    if (before === undefined || after === undefined || ours === undefined) throw new Error(name);
    expect(after.sheetNames).toEqual([...before.sheetNames, ...ourNames]);
    expect(contents(after.sheets)).toEqual([...contents(before.sheets), ...contents(ours.sheets)]);
    expect(ours.sheets.reduce((sum, { cells }) => sum + cells.length, 0)).toBe(FILLED);
    expect(after.names).toEqual([...before.names, ...ours.names]);
    expect(ours.names.map(({ sheet, meaning }) => [sheet, meaning])).toEqual([
      ['Handover', "'Handover'!$1:$2"],
      ['Data', "'Data'!$1:$2"],
    ]);
    expect([after.tables, after.is1904]).toEqual([before.tables, before.is1904]);
  });

  it('the library reads them as it reads them from a file of their own', async () => {
    const cellsIn = async (bytes: Uint8Array) =>
      (await readXlsx(bytes, { sheets: ({ name: sheet }) => ourNames.includes(sheet) })).sheets.map(
        ({ name: sheet, rows, cells = [] }) => ({
          sheet,
          values: rows.map(row => row.map(value => value ?? '')),
          formulas: [...cells].flatMap(([at, { formula }]) => (formula === undefined ? [] : [[at, formula]])),
        }),
      );
    const [after, ours] = [await cellsIn(copy.bytes), await cellsIn(own)];
    expect(after).toEqual(ours);
    expect(ours.flatMap(({ values }) => values.flat()).filter(value => value !== '').length).toBeGreaterThan(FILLED / 2);
  });

  it('every cell, column and condition of ours looks as in the file of its own, and the user’s formats are what they were', () => {
    const [before, after, ours] = [file, copy.bytes, own].map(bytes => new FileParts(bytes));
    if (before === undefined || after === undefined || ours === undefined) throw new Error(name);
    const [then, now, small] = [new Looks(before), new Looks(after), new Looks(ours)];
    expect(now.cells.slice(0, then.cells.length)).toEqual(then.cells);
    expect(now.conditional.slice(0, then.conditional.length)).toEqual(then.conditional);
    let compared = 0;
    for (const sheet of ourNames) {
      const [moved, first] = [after.nodes(sheetPart(after, sheet)), ours.nodes(sheetPart(ours, sheet))].map(allUnder);
      expect(moved?.length).toBeGreaterThanOrEqual(first?.length ?? Infinity);
      for (const [local, index] of [
        ['c', 's'],
        ['col', 'style'],
        ['cfRule', 'dxfId'],
      ] as const) {
        const [is, was] = [moved, first].map(nodes => nodes?.filter(node => node.local === local) ?? []);
        const list = (looks: Looks) => (local === 'cfRule' ? looks.conditional : looks.cells);
        expect(is?.length).toBe(was?.length);
        for (const [i, node] of (was ?? []).entries()) {
          if (local === 'col' && node.at[index] === undefined) continue;
          const here = list(now)[Number(is?.[i]?.at[index] ?? 0)];
          expect(here, JSON.stringify(node.at)).toBeDefined();
          expect(here, JSON.stringify(node.at)).toEqual(list(small)[Number(node.at[index] ?? 0)]);
          compared++;
        }
      }
    }
    expect(compared).toBeGreaterThanOrEqual(FILLED + 12);
    const counted = after.target(BOOK, 'styles');
    for (const list of after.nodes(counted ?? '').nodes)
      if (['numFmts', 'fonts', 'fills', 'borders', 'cellXfs', 'dxfs'].includes(list.local))
        expect(list.at['count'], list.local).toBe(String(list.nodes.length));
    const ids = children(child(after.nodes(counted ?? ''), 'numFmts'), 'numFmt').map(({ at }) => at['numFmtId']);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('pictures, notes, set-up, conditions, validations and protection are those of the file of their own', () => {
    const [after, ours] = [new FileParts(copy.bytes), new FileParts(own)];
    const rest = (file: FileParts, part: string): unknown[] =>
      file
        .nodes(part)
        .nodes.filter(({ local }) => local !== 'sheetData' && local !== 'cols')
        .map(function plain({ local, at, nodes, text }): unknown {
          const { dxfId: _, ...said } = at;
          return [local, said, text, nodes.map(plain)];
        });
    for (const sheet of ourNames) {
      const [moved, first] = [sheetPart(after, sheet), sheetPart(ours, sheet)];
      expect(rest(after, moved)).toEqual(rest(ours, first));
      expect(rest(ours, first).length).toBeGreaterThanOrEqual(10);
      const kinds = ['drawing', 'vmlDrawing', 'comments'] as const;
      expect([...after.links(moved)].map(([id, [kind]]) => [id, kind])).toEqual([...ours.links(first)].map(([id, [kind]]) => [id, kind]));
      for (const kind of kinds) {
        const [there, here] = [ours.target(first, kind), after.target(moved, kind)];
        if (there === undefined || here === undefined) throw new Error(kind);
        if (kind === 'vmlDrawing') expect(after.bytes[here]).toEqual(ours.bytes[there]);
        else expect(after.nodes(here).nodes).toEqual(ours.nodes(there).nodes);
        if (kind === 'drawing') {
          const [was, is] = [ours.target(there, 'image'), after.target(here, 'image')];
          expect(after.bytes[is ?? '']).toEqual(ours.bytes[was ?? '']);
          expect(after.bytes[is ?? '']?.length).toBeGreaterThan(50);
        }
      }
    }
  });

  it('every link leads to a part with a type of its own kind, and ids are there once', () => {
    const [after, ours] = [new FileParts(copy.bytes), new FileParts(own)];
    const types = after.nodes(CONTENT_TYPES).nodes;
    const typeOf = (part: string, list = types): string | undefined =>
      (
        list.find(({ at }) => at['PartName']?.toLowerCase() === `/${part}`.toLowerCase()) ??
        list.find(({ at }) => at['Extension']?.toLowerCase() === part.replace(/.*\./, '').toLowerCase())
      )?.at['ContentType'];
    const [names, extensions] = ['PartName', 'Extension'].map(key => types.flatMap(({ at }) => at[key]?.toLowerCase() ?? []));
    expect(new Set(names).size).toBe(names?.length);
    expect(new Set(extensions).size).toBe(extensions?.length);
    const ownTypes = new Set(ours.nodes(CONTENT_TYPES).nodes.map(({ at }) => at['ContentType']));
    for (const part of copy.added) {
      expect(ownTypes.has(typeOf(part)), `${part} is ${typeOf(part)}`).toBe(true);
      for (const [kind, target] of after.links(part).values())
        expect(after.bytes[target], `${part} to its ${kind} ${target}`).toBeDefined();
    }
    for (const sheet of ourNames)
      expect(typeOf(sheetPart(after, sheet))).toBe(typeOf(sheetPart(ours, sheet), ours.nodes(CONTENT_TYPES).nodes));
    const linkIds = children(after.nodes(BOOK_LINKS), 'Relationship').map(({ at }) => at['Id']?.toLowerCase());
    expect(new Set(linkIds).size).toBe(linkIds.length);
    const sheetIds = children(child(after.nodes(BOOK), 'sheets'), 'sheet').map(({ at }) => at['sheetId']);
    expect(new Set(sheetIds).size).toBe(sheetIds.length);
  });
});
