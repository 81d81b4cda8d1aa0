// The last look at a copy: no formula of ours may be left in it, in cells or elsewhere.
import { listedBy } from './draft';
import { PackageParts } from './parts';
import { attribute, walk } from './xml';

/** Elements and attributes whose text is a text, whatever stands in it. */
const TEXTS: ReadonlySet<string> = new Set(
  (
    't v text author prompt error promptTitle errorTitle display tooltip caption descr title altText altTextSummary comment name ' +
    'uniqueName displayName totalsRowLabel headerRowLabel lpstr lpwstr oddHeader oddFooter evenHeader evenFooter firstHeader firstFooter'
  ).split(' '),
);

export interface CallLeft {
  readonly part: string;
  readonly element: string;
  readonly text: string;
}

/**
 * Every text and every attribute of a workbook file that is a formula of ours, wherever it may stand.
 * @param mentions what stands in every part that has one.
 * @param quiet parts that were found to have nothing of it when they were written.
 */
export function callsLeft(
  file: Uint8Array,
  isOurs: (formula: string) => boolean,
  mentions: RegExp,
  quiet: ReadonlySet<string> = new Set(),
): CallLeft[] {
  const parts = new PackageParts(file, 'us');
  const found: CallLeft[] = [];
  for (const part of parts.packed.keys()) {
    if (!/\.xml$/i.test(part) || listedBy(part) !== undefined || quiet.has(part)) continue;
    const { text: whole } = parts.decoded(part);
    if (!mentions.test(whole)) continue;
    const open: { readonly local: string; text: string }[] = [];
    const judge = (element: string, text: string): void => {
      if (isOurs(text)) found.push({ part, element, text });
    };
    walk(whole, part, {
      open({ local, attributes }) {
        open.push({ local, text: '' });
        for (const { local: name, value } of Object.values(attributes)) if (!TEXTS.has(name)) judge(`${local} ${name}`, value);
        const name = attribute({ attributes }, 'name') ?? '';
        if (local === 'definedName' && /^_xldudf_/i.test(name)) judge(local, `${name}()`);
      },
      text(piece) {
        const element = open[open.length - 1];
        if (element !== undefined) element.text += piece;
      },
      close() {
        const element = open.pop();
        if (element !== undefined && !TEXTS.has(element.local) && element.text.trim() !== '') judge(element.local, element.text);
      },
    });
  }
  return found;
}
