// What goes along and shall not: each kind is taken out with what only it leads to, or stays with a reason where something
// else would break.
import type { Carried, CarriedKind } from '../carried';
import type { Draft } from '../draft';
import type { UserPackage } from '../read';
import { dropComments, dropPersons, dropProperties, dropThreads } from './comments';
import { dropBook, dropConnections, dropCustomXml, dropModel, dropPivot, dropQuery } from './data';
import { dropMacros } from './macros';
import { dropObject, dropObjects } from './objects';
import { dropSheets, listedSheets } from './sheets';
import { cut, naming, needing, unlink, unlinkPart } from './unlink';

export interface KeptCarried {
  readonly carried: Carried;
  readonly why: string;
}

export interface Dropped {
  /** What went, what went with it too. */
  readonly dropped: readonly Carried[];
  /** What was to go and could not. */
  readonly kept: readonly KeptCarried[];
}

interface Asked {
  readonly draft: Draft;
  readonly from: UserPackage;
  readonly goes: (kind: CarriedKind) => boolean;
}

const only = 'it is only listed: what is hidden stays hidden';

/** Takes one out, or says why it stays. */
const BY_KIND: Readonly<Record<CarriedKind, ((asked: Asked, carried: Carried) => string | undefined) | 'as a sheet'>> = {
  sheet: 'as a sheet',
  'hidden sheet': 'as a sheet',
  'very hidden sheet': 'as a sheet',
  'hidden rows': () => only,
  'hidden columns': () => only,
  comments: ({ draft }, { part }) => dropComments(draft, part),
  'threaded comments': ({ draft }, { part }) => dropThreads(draft, part),
  persons: ({ draft }, { part }) => dropPersons(draft, part),
  path: ({ draft }, { part }) => {
    cut(draft, part, ({ local }) => local === 'absPath');
    return undefined;
  },
  'external link': ({ draft, from }, { part, words }) => {
    if (from.book.links.some(({ type, target }) => type === 'externalLink' && target === part)) return dropBook(draft, from, part);
    const needs = needing(draft, part, ({ isOutside, target }) => isOutside && target === words);
    if (needs === undefined)
      dropObjects(draft, part, ({ isOutside, target, type }) => isOutside && target === words && type !== 'hyperlink');
    return needs;
  },
  connections: ({ draft, from, goes }, { part }) => dropConnections(draft, from, part, goes('data model')),
  query: ({ draft }, { part }) => dropQuery(draft, part),
  'pivot cache': ({ draft, from }, { part }) => dropPivot(draft, from, part),
  'data model': ({ draft, from, goes }, { part }) => dropModel(draft, from, part, goes('connections')),
  macros: ({ draft, from }, { part }) => dropMacros(draft, from.book.part, part),
  controls: ({ draft }, { part }) => dropObject(draft, part),
  'embedded file': ({ draft }, { part }) => dropObject(draft, part),
  'custom XML': ({ draft }, { part }) => dropCustomXml(draft, part),
  properties: ({ draft }, { part }) => dropProperties(draft, part),
  'custom properties': ({ draft }, { part }) => unlinkPart(draft, part),
  labels: ({ draft }, { part }) => unlinkPart(draft, part),
  'preview picture': ({ draft }, { part }) => unlinkPart(draft, part),
  'task pane': ({ draft }, { part }) => unlinkPart(draft, part),
  'printer settings': ({ draft }, { part }) => unlinkPart(draft, part),
  changes: ({ draft, from }, { part }) => {
    unlink(draft, from.book.part, ({ type }) => type === 'usernames');
    return unlinkPart(draft, part);
  },
  'other part': ({ draft }, { part }) => {
    const leading = draft.leadingTo(part);
    if (leading.length === 0) draft.leaveOut(new Set([part]));
    const isNamed = leading.some(of => {
      const ids = draft.links(of).flatMap(({ id, target, isOutside }) => (!isOutside && target === part ? [id] : []));
      return naming(draft, of, new Set(ids)).length > 0;
    });
    return isNamed ? 'what it is for is not known, and something names it' : unlinkPart(draft, part);
  },
};

/** Parts to which nothing leads any more. */
function sweep(draft: Draft, before: ReadonlySet<string>): void {
  const now = draft.reached();
  draft.leaveOut(new Set([...before].filter(part => draft.has(part) && !now.has(part))));
}

export function drop(draft: Draft, from: UserPackage, asked: readonly Carried[]): Dropped {
  const before = draft.reached();
  const kinds = new Set(asked.map(({ kind }) => kind));
  const context: Asked = { draft, from, goes: kind => kinds.has(kind) };
  const gone = new Set<Carried>();
  const why = new Map<Carried, string>();
  const isSheet = (part: string): boolean => listedSheets(draft, from.book.part).some(sheet => sheet.part === part);
  // what one leaves behind may free another
  for (let left = asked, some = true; some; left = left.filter(carried => !gone.has(carried))) {
    const count = gone.size;
    const sheets = left.filter(({ kind, part }) => BY_KIND[kind] === 'as a sheet' || (kind === 'macros' && isSheet(part)));
    for (const carried of left) {
      const by = BY_KIND[carried.kind];
      if (by === 'as a sheet' || sheets.includes(carried)) continue;
      const stays = draft.has(carried.part) ? by(context, carried) : undefined;
      if (stays === undefined) gone.add(carried);
      else why.set(carried, stays);
      sweep(draft, before);
    }
    const keptSheets = dropSheets(draft, from, new Set(sheets.map(({ part }) => part)));
    for (const carried of sheets) {
      const stays = keptSheets.get(carried.part);
      if (stays === undefined) gone.add(carried);
      else why.set(carried, stays);
    }
    sweep(draft, before);
    some = gone.size > count;
  }
  return {
    dropped: from.carries.filter(carried => gone.has(carried) || !draft.has(carried.part)),
    kept: asked.flatMap(carried => (gone.has(carried) ? [] : [{ carried, why: why.get(carried) ?? '' }])),
  };
}
