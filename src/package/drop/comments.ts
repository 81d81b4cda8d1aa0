// Notes of cells, the threads that are shown in them, and the people who wrote them.
import { cellPosition } from '../../sheet/addresses';
import { takenOut } from '../cut';
import type { Draft } from '../draft';
import { attribute, childOf, childrenOf, type StartTag, walk } from '../xml';
import { dropShapes } from './shapes';
import { unlink, unlinkPart } from './unlink';

const partsOf = (draft: Draft, from: string, type: string): string[] =>
  draft.links(from).flatMap(link => (link.type === type && !link.isOutside && draft.has(link.target) ? [link.target] : []));

interface Note {
  readonly ref: string;
  readonly from: number;
  readonly end: number;
  /** The note that stands in for a thread in programs without threads. */
  readonly isThread: boolean;
}

function notesOf(draft: Draft, part: string): Note[] {
  const authors = childrenOf(childOf(draft.tree(part), 'authors'), 'author').map(({ text }) => text);
  const notes: Note[] = [];
  walk(draft.text(part), part, {
    close(tag: StartTag, _, end, depth) {
      if (tag.local === 'comment' && depth === 2)
        notes.push({
          ref: attribute(tag, 'ref') ?? '',
          from: tag.from,
          end,
          isThread: authors[Number(attribute(tag, 'authorId'))]?.startsWith('tc=') === true,
        });
    },
  });
  return notes;
}

export function dropComments(draft: Draft, part: string): string | undefined {
  const sheets = draft.leadingTo(part);
  if (sheets.some(sheet => partsOf(draft, sheet, 'threadedComment').length > 0) && notesOf(draft, part).some(({ isThread }) => isThread))
    return 'the threaded comments of the sheet need them';
  for (const sheet of sheets) {
    dropShapes(draft, sheet, ({ type }) => type === 'Note');
    unlink(draft, sheet, ({ target, isOutside }) => !isOutside && target === part);
  }
  return undefined;
}

export function dropThreads(draft: Draft, part: string): string | undefined {
  const sheets = draft.leadingTo(part);
  for (const sheet of sheets) unlink(draft, sheet, ({ target, isOutside }) => !isOutside && target === part);
  for (const sheet of sheets)
    for (const comments of partsOf(draft, sheet, 'comments')) {
      const notes = notesOf(draft, comments);
      const threads = notes.filter(({ isThread }) => isThread);
      if (threads.length === notes.length) dropComments(draft, comments);
      else if (threads.length > 0) {
        draft.change(comments, () => threads.map(({ from, end }) => ({ from, to: end, text: '' })));
        const places = new Set(threads.map(({ ref }) => ref).map(ref => `${cellPosition(ref).row} ${cellPosition(ref).column}`));
        dropShapes(draft, sheet, ({ type, row, column }) => type === 'Note' && places.has(`${row} ${column}`));
      }
    }
  return undefined;
}

export function dropPersons(draft: Draft, part: string): string | undefined {
  const isNamed = draft.parts.some(from => partsOf(draft, from, 'threadedComment').length > 0);
  return isNamed ? 'threaded comments that stay name them' : unlinkPart(draft, part);
}

/** The personal fields of what the file says of itself. */
export function dropProperties(draft: Draft, part: string): undefined {
  const personal = /^(creator|lastModifiedBy|Company|Manager|HyperlinkBase)$/;
  draft.change(part, () => takenOut(draft.tree(part).children.filter(({ local }) => personal.test(local))));
}
