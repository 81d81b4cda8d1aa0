// What a workbook carries besides what is seen on its sheets: whoever gets the file gets it as well.
import type { SheetContent } from './cells';
import type { PackageParts, PartLink } from './parts';
import { attribute, descendants, walk, type XmlElement } from './xml';

export const CARRIED_KINDS = [
  'sheet',
  'hidden sheet',
  'very hidden sheet',
  'hidden rows',
  'hidden columns',
  'comments',
  'threaded comments',
  'persons',
  'path',
  'external link',
  'connections',
  'query',
  'pivot cache',
  'data model',
  'macros',
  'controls',
  'embedded file',
  'custom XML',
  'properties',
  'custom properties',
  'labels',
  'preview picture',
  'task pane',
  'printer settings',
  'changes',
  'other part',
] as const;
export type CarriedKind = (typeof CARRIED_KINDS)[number];

export interface Carried {
  readonly kind: CarriedKind;
  readonly part: string;
  /** Of comments, persons, rows, columns, records, fields: as many as there are; else 1. */
  readonly count: number;
  /** The sheet, the path, the address that it leads to. */
  readonly words?: string;
}

/** What is worth telling, by the kind of the relation that leads to it; the element that is counted. */
const TOLD: ReadonlyMap<string, readonly [CarriedKind, RegExp?]> = new Map([
  ['comments', ['comments', /^comment$/]],
  ['threadedComment', ['threaded comments', /^threadedComment$/]],
  ['person', ['persons', /^person$/]],
  ['externalLink', ['external link']],
  ['externalLinkPath', ['external link']],
  ['connections', ['connections', /^connection$/]],
  ['queryTable', ['query']],
  ['pivotCacheDefinition', ['pivot cache']],
  ['powerPivotData', ['data model']],
  ['vbaProject', ['macros']],
  ['xlMacrosheet', ['macros']],
  ['xlIntlMacrosheet', ['macros']],
  ['dialogsheet', ['macros']],
  ['ctrlProp', ['controls']],
  ['control', ['controls']],
  ['oleObject', ['embedded file']],
  ['package', ['embedded file']],
  ['customXml', ['custom XML']],
  ['xmlMaps', ['custom XML']],
  ['core-properties', ['properties', /^(creator|lastModifiedBy)$/]],
  ['extended-properties', ['properties', /^(Company|Manager|HyperlinkBase)$/]],
  ['custom-properties', ['custom properties', /^property$/]],
  ['customProperty', ['custom properties']],
  ['classificationlabels', ['labels', /^label$/]],
  ['thumbnail', ['preview picture']],
  ['webextensiontaskpanes', ['task pane', /^taskpane$/]],
  ['printerSettings', ['printer settings']],
  ['revisionHeaders', ['changes', /^header$/]],
] as const);

/** Kinds of relation to what is seen on a sheet or makes it look so, and to what only serves what is told by itself. */
const SEEN: ReadonlySet<string> = new Set(
  (
    'officeDocument worksheet chartsheet styles theme themeOverride sharedStrings calcChain sheetMetadata drawing ' +
    'vmlDrawing legacyDrawing image chart chartEx chartStyle chartColorStyle chartUserShapes table tableSingleCells ' +
    'hyperlink pivotTable slicer slicerCache timeline timelineCache diagramData diagramLayout diagramQuickStyle ' +
    'diagramColors diagramDrawing rdRichValue rdRichValueStructure rdRichValueTypes rdArray richValueRel richStyles ' +
    'rdSupportingPropertyBag rdSupportingPropertyBagStructure FeaturePropertyBag pivotCacheRecords customXmlProps ' +
    'wordVbaData vbaProjectSignature webextension usernames revisionLog externalLinkAlternateUrl'
  ).split(' '),
);

interface SheetSeen extends SheetContent {
  readonly name: string;
  readonly part: string;
  readonly state: 'visible' | 'hidden' | 'veryHidden';
}

const isXml = (part: string): boolean => /\.(xml|rels)$/i.test(part);

class Carries {
  readonly found: Carried[] = [];
  private readonly visited = new Set<string>();

  constructor(private readonly parts: PackageParts) {}

  /** Follows the relations from a part on, each part once. */
  follow(part: string, isLink = false): void {
    for (const relation of this.parts.relations(part)) {
      if (relation.isOutside) this.outside(part, relation, isLink);
      else if (this.parts.packed.has(relation.target) && !this.visited.has(relation.target)) {
        this.visited.add(relation.target);
        this.inside(relation);
        this.follow(relation.target, relation.type === 'externalLink');
      }
    }
  }

  /** What lies in the file though nothing leads to it. */
  astray(): void {
    for (const part of this.parts.packed.keys())
      if (!this.visited.has(part) && !/^\[Content_Types\]\.xml$|(^|\/)_rels\/|\/$/i.test(part))
        this.found.push({ kind: 'other part', part, count: 1, words: 'nothing leads to it' });
  }

  private inside({ type, target }: PartLink): void {
    const told = TOLD.get(type);
    if (told === undefined) {
      if (!SEEN.has(type)) this.found.push({ kind: 'other part', part: target, count: 1, words: type });
      return;
    }
    const [kind, counted] = told;
    if (kind === 'external link') {
      for (const { isOutside, target: words } of this.parts.relations(target))
        if (isOutside) this.found.push({ kind, part: target, count: 1, words });
      if (!this.parts.relations(target).some(({ isOutside }) => isOutside)) this.found.push({ kind, part: target, count: 1 });
      return;
    }
    const count = kind === 'pivot cache' ? this.records(target) : counted === undefined ? 1 : this.count(target, counted);
    if (count > 0) this.found.push({ kind, part: target, count });
  }

  /** Links that a reader follows are seen, and what an external link leads to is told with it. */
  private outside(part: string, { type, target: words }: PartLink, isLink: boolean): void {
    if (!isLink && !SEEN.has(type)) this.found.push({ kind: 'external link', part, count: 1, words });
  }

  /** Elements that say something. */
  private count(part: string, counted: RegExp): number {
    if (!isXml(part)) return 1;
    let count = 0;
    walk(this.parts.decoded(part).text, part, {
      close({ local, attributes, to }, inner) {
        if (counted.test(local) && (inner > to || Object.keys(attributes).length > 0)) count++;
      },
    });
    return count;
  }

  private records(part: string): number {
    let records = 1;
    walk(this.parts.decoded(part).text, part, {
      open(tag, depth) {
        if (depth === 0) records = Math.max(1, Number(attribute(tag, 'recordCount')) || 1);
      },
    });
    return records;
  }
}

/** Where the file lay on the computer that saved it. */
function path(book: XmlElement, part: string): Carried[] {
  const url = descendants(book).find(({ local }) => local === 'absPath');
  return url === undefined ? [] : [{ kind: 'path', part, count: 1, words: attribute(url, 'url') ?? '' }];
}

export function carriedBy(parts: PackageParts, bookPart: string, book: XmlElement, sheets: readonly SheetSeen[]): Carried[] {
  const carries = new Carries(parts);
  carries.follow('');
  carries.astray();
  const visible = sheets.flatMap(({ name: words, part, state, hiddenRows, hiddenColumns }): Carried[] => [
    ...(state === 'visible' ? [] : [{ kind: state === 'hidden' ? 'hidden sheet' : 'very hidden sheet', part, count: 1, words } as const]),
    ...(hiddenRows === 0 ? [] : [{ kind: 'hidden rows', part, count: hiddenRows, words } as const]),
    ...(hiddenColumns === 0 ? [] : [{ kind: 'hidden columns', part, count: hiddenColumns, words } as const]),
  ]);
  return [...visible, ...path(book, bookPart), ...carries.found];
}
