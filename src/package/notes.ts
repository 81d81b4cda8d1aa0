// Words at cells, as every program shows them: a comment with its box. Comments of before stay, also those that are threads.
import type { Draft } from './draft';
import { cellPosition } from '../sheet/addresses';
import { freePart, linked, relationNamespace, typed } from './additions';
import { LONGEST_TEXT } from './cell-splices';
import { addedBoxes, type BoxNumbers, NO_BOXES, takesBoxes } from './note-boxes';
import type { PartLink } from './parts';
import { toStored } from './rich-text';
import { isMain, scanSheet } from './scan';
import { atEnd, attribute, attributeIn, childOf, childrenOf, escapedText, nameOf, type Splice, tree, walk, type XmlElement } from './xml';

const NOTE_AUTHOR = 'Bosswright';

/** What stands before the drawing of notes on a sheet, from the rows on, in the order of the format. */
const BEFORE_DRAWING: ReadonlySet<string> = new Set(
  (
    'sheetData sheetCalcPr sheetProtection protectedRanges scenarios autoFilter sortState dataConsolidate customSheetViews mergeCells ' +
    'phoneticPr conditionalFormatting dataValidations hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks ' +
    'customProperties cellWatches ignoredErrors smartTags drawing'
  ).split(' '),
);

interface DrawingPlace {
  readonly main: string;
  readonly prefix: string;
  /** Where in the sheet the drawing of notes is named. */
  readonly at: number;
  /** The relation to the one that there is. */
  readonly id?: string;
}

function drawingPlace(text: string, part: string): DrawingPlace {
  let place: DrawingPlace = { main: '', prefix: '', at: 0 };
  scanSheet(text, part, {
    data: ({ uri, prefix }, _, end) => (place = { main: uri, prefix, at: end }),
    beside: (tag, end) => {
      if (isMain(tag) && BEFORE_DRAWING.has(tag.local)) place = { ...place, at: Math.max(place.at, end) };
      const id = isMain(tag) && tag.local === 'legacyDrawing' ? attributeIn(tag, /\/relationships$/, 'id') : undefined;
      if (id !== undefined) place = { ...place, id };
    },
  });
  return place;
}

/** Cells that have words already. */
function commentedCells(of: Draft, links: readonly PartLink[]): Set<string> {
  const cells = new Set<string>();
  for (const { type, target, isOutside } of links) {
    if (isOutside || !/^(comments|threadedComment)$/.test(type) || of.named(target) === undefined) continue;
    walk(of.text(target), target, {
      open: tag => {
        if (/^(comment|threadedComment)$/.test(tag.local)) cells.add((attribute(tag, 'ref') ?? '').replaceAll('$', ''));
      },
    });
  }
  return cells;
}

const DECLARATION = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

function takesComments(of: Draft, part: string): boolean {
  const root = tree(of.text(part), part);
  return childOf(root, 'authors') !== undefined && childOf(root, 'commentList') !== undefined;
}

function written(words: string, at: string, author: number, prefix: string): string {
  if (words.length > LONGEST_TEXT) throw new RangeError(`${at}: the note has ${words.length} characters; a cell holds ${LONGEST_TEXT}`);
  const [comment, rich, t] = ['comment', 'text', 't'].map(local => nameOf({ prefix, local }));
  const text = `<${rich}><${t} xml:space="preserve">${escapedText(toStored(words))}</${t}></${rich}>`;
  return `<${comment} ref="${at}" authorId="${author}">${text}</${comment}>`;
}

function addedComments(text: string, root: XmlElement, notes: ReadonlyMap<string, string>): Splice[] {
  const [authors, list] = [childOf(root, 'authors'), childOf(root, 'commentList')];
  if (authors === undefined || list === undefined) return [];
  const known = childrenOf(authors, 'author');
  const own = known.findIndex(author => author.text === NOTE_AUTHOR);
  const author = nameOf({ prefix: root.prefix, local: 'author' });
  const comments = [...notes].map(([at, words]) => written(words, at, own < 0 ? known.length : own, root.prefix));
  return [...(own < 0 ? atEnd(text, authors, `<${author}>${NOTE_AUTHOR}</${author}>`) : []), ...atEnd(text, list, comments.join(''))];
}

/** Writes words at cells of a sheet; gives the cells at which there is no room for them. */
export function noted(of: Draft, sheetPart: string, wanted: ReadonlyMap<string, string>, numbers: BoxNumbers): string[] {
  const links = of.links(sheetPart);
  const part = (link: PartLink | undefined): string | undefined =>
    link === undefined || link.isOutside ? undefined : of.named(link.target);
  const taken = commentedCells(of, links);
  const notes = new Map([...wanted].filter(([at]) => !taken.has(at)));
  const unwritten = [...wanted.keys()].filter(at => taken.has(at));
  if (notes.size === 0) return unwritten;
  const place = drawingPlace(of.text(sheetPart), sheetPart);
  const drawing = part(links.find(({ id }) => id === place.id));
  const comments = part(links.find(({ type }) => type === 'comments'));
  const isBroken = place.id !== undefined && (drawing === undefined || !takesBoxes(of.text(drawing)));
  if (isBroken || (comments !== undefined && !takesComments(of, comments))) return [...wanted.keys()];

  const { main } = place;
  const commentsPart = comments ?? freePart(of, 'xl/comments', '.xml');
  if (comments === undefined) {
    of.add(commentsPart, `${DECLARATION}<comments xmlns="${main}"><authors/><commentList/></comments>`);
    linked(of, sheetPart, 'comments', commentsPart, main);
    typed(of, commentsPart, 'comments');
  }
  of.change(commentsPart, text => addedComments(text, tree(text, commentsPart), notes));

  const drawingPart = drawing ?? freePart(of, 'xl/drawings/vmlDrawing', '.vml');
  if (drawing === undefined) {
    of.add(drawingPart, NO_BOXES);
    typed(of, drawingPart, 'vmlDrawing');
    const id = linked(of, sheetPart, 'vmlDrawing', drawingPart, main);
    const name = nameOf({ prefix: place.prefix, local: 'legacyDrawing' });
    const text = `<${name} xmlns:r="${relationNamespace(main)}" r:id="${id}"/>`;
    of.change(sheetPart, () => [{ from: place.at, to: place.at, text }]);
  }
  const boxes = [...notes].map(([at, words]) => ({ ...cellPosition(at), words, number: numbers.next() }));
  of.change(drawingPart, text => addedBoxes(text, boxes));
  return unwritten;
}
