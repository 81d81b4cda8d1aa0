// What brings data in from outside or keeps it beside the sheets: queries, connections, pivot tables with their records, the
// data model, custom XML, links to other workbooks.
import type { Draft } from '../draft';
import type { UserPackage } from '../read';
import { attribute, attributeIn, childOf, childrenOf, descendants, type Splice, withAttributes, type XmlElement } from '../xml';
import { formulasIn, mentioning, referredBy, type Referred } from './references';
import { listedSheets, slicerCaches } from './sheets';
import { cut, unlink, unlinkPart } from './unlink';

const RELATIONSHIPS = /\/relationships$/;

/** Where a formula that stays refers to something. */
function referring(draft: Draft, from: UserPackage, word: string, refers: (referred: Referred) => boolean): string | undefined {
  for (const { at, text } of formulasIn(draft, from, draft.reached(), mentioning([word])))
    if (refers(referredBy(text))) return `${at} reads it`;
  return undefined;
}

/** Parts with links of a kind, and what they lead to. */
const linked = (draft: Draft, type: string): string[] => [
  ...new Set(
    ['', ...draft.parts].flatMap(part =>
      draft.links(part).flatMap(link => (link.type === type && !link.isOutside && draft.has(link.target) ? [link.target] : [])),
    ),
  ),
];

/** Attributes of elements taken away. */
function bare(draft: Draft, part: string, names: readonly string[]): void {
  draft.change(part, text => {
    const root = draft.tree(part);
    return [root, ...descendants(root)].flatMap((element): Splice[] => {
      const had = names.filter(name => attribute(element, name) !== undefined);
      if (had.length === 0) return [];
      const { from, to } = element;
      return [{ from, to, text: withAttributes(text.slice(from, to), Object.fromEntries(had.map(name => [name, undefined]))) }];
    });
  });
}

export function dropQuery(draft: Draft, query: string): string | undefined {
  for (const part of draft.leadingTo(query))
    if (linked(draft, 'table').includes(part)) bare(draft, part, ['tableType', 'queryTableFieldId', 'connectionId']);
  return unlinkPart(draft, query);
}

interface PivotTable {
  readonly part: string;
  readonly sheets: readonly string[];
  readonly name: string;
}

export function dropPivot(draft: Draft, from: UserPackage, cache: string): string | undefined {
  const book = from.book.part;
  const sheetIds = new Map(listedSheets(draft, book).map(({ part, sheetId }) => [part, sheetId]));
  const tables = draft
    .leadingTo(cache)
    .filter(part => part !== book)
    .map((part): PivotTable => ({ part, sheets: draft.leadingTo(part), name: attribute(draft.tree(part), 'name') ?? '' }));
  const link = draft.links(book).find(({ target }) => target === cache)?.id;
  const ids = [
    ...descendants(draft.tree(book)).filter(
      element => element.local === 'pivotCache' && attributeIn(element, RELATIONSHIPS, 'id') === link,
    ),
    ...descendants(draft.tree(cache)).filter(({ local }) => local === 'pivotCacheDefinition'),
  ].map(element => attribute(element, 'cacheId') ?? attribute(element, 'pivotCacheId'));
  const isChosen = (element: XmlElement): boolean =>
    element.local === 'pivotTable'
      ? tables.some(
          ({ name, sheets }) =>
            name === attribute(element, 'name') && sheets.some(sheet => sheetIds.get(sheet) === attribute(element, 'tabId')),
        )
      : ids.includes(attribute(element, 'pivotCacheId') ?? '');
  if (slicerCaches(draft, book).some(part => descendants(draft.tree(part)).some(isChosen))) return 'slicers choose among its records';
  const chart = linked(draft, 'chart').find(part => childOf(draft.tree(part), 'pivotSource') !== undefined);
  if (chart !== undefined && tables.length > 0) return `the chart ${chart} shows a pivot table`;
  const reads = referring(draft, from, 'GETPIVOTDATA', ({ functions }) => functions.includes('GETPIVOTDATA'));
  if (reads !== undefined) return reads;
  for (const { part, sheets } of tables) {
    for (const sheet of sheets) {
      unlink(draft, sheet, ({ target, isOutside }) => !isOutside && target === part);
      if (!draft.links(sheet).some(({ type }) => type === 'pivotTable')) bare(draft, sheet, ['pivot']);
    }
  }
  return unlinkPart(draft, cache);
}

/** Pivot tables whose records come from outside or from the data model. */
const fromOutside = (draft: Draft): boolean =>
  linked(draft, 'pivotCacheDefinition').some(
    part => attribute(childOf(draft.tree(part), 'cacheSource') ?? draft.tree(part), 'type') === 'external',
  );

const inCubes = (draft: Draft, from: UserPackage): string | undefined =>
  referring(draft, from, 'CUBE', ({ functions }) => functions.some(name => name.startsWith('CUBE')));

export function dropModel(draft: Draft, from: UserPackage, model: string, connectionsGo: boolean): string | undefined {
  if (fromOutside(draft)) return 'pivot tables that stay may show it';
  const isOfModel = (element: XmlElement): boolean =>
    attribute(element, 'model') === '1' || attribute(element, 'name') === 'ThisWorkbookDataModel';
  if (!connectionsGo && linked(draft, 'connections').some(part => descendants(draft.tree(part)).some(isOfModel)))
    return 'connections that stay belong to it';
  const cubes = inCubes(draft, from);
  if (cubes !== undefined) return cubes;
  cut(draft, from.book.part, ({ local }) => local === 'dataModel');
  return unlinkPart(draft, model);
}

export function dropConnections(draft: Draft, from: UserPackage, part: string, modelGoes: boolean): string | undefined {
  if (linked(draft, 'queryTable').length > 0) return 'queries that stay use them';
  if (fromOutside(draft)) return 'pivot tables that stay use them';
  if (!modelGoes && linked(draft, 'powerPivotData').length > 0) return 'the data model that stays uses them';
  const isBound = ({ local, ...element }: XmlElement): boolean =>
    local === 'DataBinding' && attribute(element, 'ConnectionID') !== undefined;
  if (linked(draft, 'xmlMaps').some(maps => descendants(draft.tree(maps)).some(isBound)))
    return 'the map of custom XML that stays uses them';
  return inCubes(draft, from) ?? unlinkPart(draft, part);
}

export function dropCustomXml(draft: Draft, part: string): string | undefined {
  if (linked(draft, 'xmlMaps').includes(part)) {
    for (const table of linked(draft, 'table')) {
      if (!descendants(draft.tree(table)).some(({ local }) => local === 'xmlColumnPr')) continue;
      cut(draft, table, ({ local }) => local === 'xmlColumnPr');
      if (attribute(draft.tree(table), 'tableType') === 'xml') bare(draft, table, ['tableType']);
    }
    for (const cells of linked(draft, 'tableSingleCells')) unlinkPart(draft, cells);
  }
  return unlinkPart(draft, part);
}

/** Formulas count other workbooks from the first: one that stands before another that is read has to stay. */
export function dropBook(draft: Draft, from: UserPackage, link: string): string | undefined {
  const books = childrenOf(childOf(draft.tree(from.book.part), 'externalReferences'), 'externalReference').map(element =>
    attributeIn(element, RELATIONSHIPS, 'id'),
  );
  const number = books.indexOf(draft.links(from.book.part).find(({ target }) => target === link)?.id) + 1;
  const reads = referring(draft, from, '[', referred => number > 0 && referred.books.includes(number));
  if (reads !== undefined) return reads;
  const later = referring(draft, from, '[', referred => number > 0 && referred.books.some(book => book > number));
  return later === undefined ? unlinkPart(draft, link) : `${later.replace(/ reads it$/, '')} reads a workbook that is counted behind it`;
}
