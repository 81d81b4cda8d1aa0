// The parts of a package by name, with their text and what they lead to.
import { decoded, type PartText } from './text';
import { attribute, childrenOf, tree, type XmlElement } from './xml';
import { UnreadableFile } from './unreadable';
import { type WrittenBy, openZip, type PackedPart, unpacked } from './zip';

export const CONTENT_TYPES = '[Content_Types].xml';

/** What one part says of another: `type` is the last word of the relation's kind, `worksheet`. */
export interface PartLink {
  readonly id: string;
  readonly type: string;
  /** The part, or the address outside the package. */
  readonly target: string;
  readonly isOutside: boolean;
  readonly from: number;
  readonly end: number;
}

const folderOf = (part: string): string => part.slice(0, part.lastIndexOf('/') + 1);
/** `xl/_rels/workbook.xml.rels`; of the package itself, `_rels/.rels`. */
export const relationsPart = (part: string): string => `${folderOf(part)}_rels/${part.slice(folderOf(part).length)}.rels`;

/** `../tables/table1.xml` as seen from a part; a target that leads out ends at the top. */
function targetOf(part: string, target: string): string {
  const path: string[] = [];
  const whole = target.startsWith('/') ? target : folderOf(part) + target;
  for (const step of whole.split('/')) {
    if (step === '..') path.pop();
    else if (step !== '' && step !== '.') path.push(step);
  }
  try {
    return decodeURIComponent(path.join('/'));
  } catch {
    return path.join('/');
  }
}

/** Characters of texts that are kept: most parts are asked for more than once. */
const MOST_KEPT = 20_000_000;

export class PackageParts {
  readonly packed: ReadonlyMap<string, PackedPart>;
  private readonly names: ReadonlyMap<string, string>;
  private readonly related = new Map<string, readonly PartLink[]>();
  private readonly texts = new Map<string, PartText>();
  private keptCharacters = 0;

  constructor(file: Uint8Array, by?: WrittenBy) {
    this.packed = openZip(file, by);
    this.names = new Map([...this.packed.keys()].map(name => [name.toLowerCase(), name]));
  }

  /** The name as it is written in the package: capitals do not tell parts apart. */
  named(part: string): string | undefined {
    return this.names.get(part.toLowerCase());
  }

  decoded(part: string): PartText {
    const known = this.texts.get(part);
    if (known !== undefined) return known;
    const found = this.packed.get(part);
    if (found === undefined) throw new UnreadableFile('noWorkbook');
    const text = decoded(unpacked(found), part);
    if (this.keptCharacters + text.text.length > MOST_KEPT) return text;
    this.keptCharacters += text.text.length;
    this.texts.set(part, text);
    return text;
  }

  tree(part: string): XmlElement {
    return tree(this.decoded(part).text, part);
  }

  /** What a part leads to, or with '' what the package does. */
  relations(part: string): readonly PartLink[] {
    const known = this.related.get(part);
    if (known !== undefined) return known;
    const list = this.named(relationsPart(part));
    const found = list === undefined ? [] : linksIn(this.tree(list), part, name => this.named(name));
    this.related.set(part, found);
    return found;
  }
}

/** The relations that a list names, seen from the part to which it belongs. */
export function linksIn(list: XmlElement, part: string, named: (part: string) => string | undefined): PartLink[] {
  return childrenOf(list, 'Relationship').map(link => {
    const type = attribute(link, 'Type') ?? '';
    const target = attribute(link, 'Target') ?? '';
    const isOutside = attribute(link, 'TargetMode') === 'External';
    const inside = isOutside ? target : targetOf(part, target);
    return {
      id: attribute(link, 'Id') ?? '',
      type: type.slice(type.lastIndexOf('/') + 1),
      target: isOutside ? target : (named(inside) ?? inside),
      isOutside,
      from: link.from,
      end: link.end,
    };
  });
}
