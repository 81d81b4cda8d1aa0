// Macros: the workbook becomes one without, and nothing on its sheets starts one.
import type { Draft } from '../draft';
import { attribute, descendants, type Splice, withAttributes } from '../xml';
import { unlinkPart } from './unlink';

const WITH_MACROS: ReadonlyMap<string, string> = new Map([
  ['application/vnd.ms-excel.sheet.macroEnabled.main+xml', 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml'],
  [
    'application/vnd.ms-excel.template.macroEnabled.main+xml',
    'application/vnd.openxmlformats-officedocument.spreadsheetml.template.main+xml',
  ],
]);

export type FileEnding = '.xlsx' | '.xlsm' | '.xltx' | '.xltm';

/** What a file with this workbook part has to be called. */
export function fileEnding(draft: Draft, book: string): FileEnding {
  let ending: FileEnding = '.xlsx';
  draft.types(({ part, type }) => {
    if (part === book)
      ending = type.includes('template') ? (WITH_MACROS.has(type) ? '.xltm' : '.xltx') : WITH_MACROS.has(type) ? '.xlsm' : '.xlsx';
    return type;
  });
  return ending;
}

function withoutStarts(draft: Draft, part: string): void {
  if (/\.vml$/i.test(part))
    draft.change(part, text =>
      [...text.matchAll(/<((?:\w+:)?FmlaMacro)>[^<]*<\/\1>/g)].map(({ index, 0: whole }) => ({
        from: index,
        to: index + whole.length,
        text: '',
      })),
    );
  else
    draft.change(part, text =>
      [draft.tree(part)]
        .flatMap(root => [root, ...descendants(root)])
        .flatMap(({ from, to, ...element }): Splice[] => {
          const start = text.slice(from, to);
          // a shape has the attribute, and empty it says that there is none
          if (attribute(element, 'macro'))
            return [{ from, to, text: withAttributes(start, { macro: element.local === 'controlPr' ? undefined : '' }) }];
          return attribute(element, 'fmlaMacro') === undefined ? [] : [{ from, to, text: withAttributes(start, { fmlaMacro: undefined }) }];
        }),
    );
}

export function dropMacros(draft: Draft, book: string, part: string): string | undefined {
  const why = unlinkPart(draft, part);
  if (why !== undefined) return why;
  draft.types(({ part: of, type }) => (of === book ? (WITH_MACROS.get(type) ?? type) : type));
  const sheets = draft.links(book).flatMap(({ type, target }) => (type === 'worksheet' || type === 'chartsheet' ? [target] : []));
  for (const sheet of sheets)
    for (const { type, target, isOutside } of [{ type: 'sheet', target: sheet, isOutside: false }, ...draft.links(sheet)])
      if (/^(sheet|drawing|vmlDrawing|ctrlProp)$/.test(type) && !isOutside && draft.has(target)) withoutStarts(draft, target);
  return undefined;
}
