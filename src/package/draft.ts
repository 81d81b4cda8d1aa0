// A package as it becomes: texts of parts, one change after another, parts that are left out, parts that are new. What is not
// named keeps the bytes in which it was packed.
import { CONTENT_TYPES, linksIn, type PackageParts, type PartLink, relationsPart } from './parts';
import { decoded, encoded } from './text';
import { attribute, childrenOf, type Splice, spliced, tree, type XmlElement } from './xml';
import { packed, type PackedPart, unpacked } from './zip';

/** Long lists in which nothing is looked for by place. */
const LONG: ReadonlySet<string> = new Set(
  'sheetData mergeCells sharedItems groupItems numCache strCache multiLvlStrCache numLit strLit si commentList'.split(' '),
);

/** The part whose relations a part lists, or undefined where it lists none. */
export const listedBy = (part: string): string | undefined =>
  /(^|\/)_rels\/[^/]*\.rels$/i.test(part) ? part.replace(/(^|\/)_rels\/([^/]*)\.rels$/i, '$1$2') : undefined;

export class Draft {
  private readonly changed = new Map<string, string>();
  private readonly left = new Set<string>();
  /** A part that is new, as text while it may still change. */
  private readonly new = new Map<string, string | PackedPart>();
  private readonly related = new Map<string, { readonly text: string; readonly links: readonly PartLink[] }>();

  constructor(readonly before: PackageParts) {}

  get touched(): readonly string[] {
    return [...this.changed.keys()].filter(part => !this.left.has(part));
  }

  get gone(): readonly string[] {
    return [...this.before.packed.keys()].filter(part => this.left.has(part));
  }

  get added(): readonly string[] {
    return [...this.new.keys()];
  }

  get parts(): readonly string[] {
    return [...this.before.packed.keys(), ...this.new.keys()].filter(part => !this.left.has(part));
  }

  has(part: string): boolean {
    return (this.before.packed.has(part) || this.new.has(part)) && !this.left.has(part);
  }

  /** The name of a part as it is written, if it is there. */
  named(part: string): string | undefined {
    const name = this.known(part);
    return name !== undefined && this.has(name) ? name : undefined;
  }

  /** Whether there is or was a part of the name: what is left out leaves no name behind for another. */
  isTaken(part: string): boolean {
    return this.known(part) !== undefined;
  }

  /** The same, though it may have been left out. */
  private known(part: string): string | undefined {
    return this.before.named(part) ?? [...this.new.keys()].find(added => added.toLowerCase() === part.toLowerCase());
  }

  text(part: string): string {
    const added = this.new.get(part);
    if (typeof added === 'string') return added;
    if (added !== undefined) return decoded(unpacked(added), part).text;
    return this.changed.get(part) ?? this.before.decoded(part).text;
  }

  add(part: string, content: string | PackedPart): void {
    this.new.set(part, content);
  }

  /** The elements of a part as it is now, long lists left out. */
  tree(part: string): XmlElement {
    return tree(this.text(part), part, LONG);
  }

  /** Writes a part anew, if it becomes another. */
  change(part: string, splicesOf: (text: string) => readonly Splice[]): void {
    const text = this.text(part);
    const next = spliced(text, splicesOf(text));
    if (next !== text) (this.new.has(part) ? this.new : this.changed).set(part, next);
  }

  private listOf(part: string): string | undefined {
    return this.named(relationsPart(part));
  }

  /** What a part leads to now; with '' what the package does. */
  links(part: string): readonly PartLink[] {
    const list = this.listOf(part);
    if (list === undefined) return [];
    if (!this.changed.has(list) && !this.new.has(list)) return this.before.relations(part);
    const text = this.text(list);
    const known = this.related.get(part);
    if (known?.text === text) return known.links;
    const links = linksIn(this.tree(list), part, name => this.named(name));
    this.related.set(part, { text, links });
    return links;
  }

  unlink(part: string, links: readonly PartLink[]): void {
    const list = this.listOf(part);
    if (list !== undefined) this.change(list, () => links.map(({ from, end }) => ({ from, to: end, text: '' })));
  }

  /** The parts to which the package leads, but for some and what only they lead to. */
  reached(past: ReadonlySet<string> = new Set()): ReadonlySet<string> {
    const found = new Set<string>();
    const open = [''];
    for (let part = open.pop(); part !== undefined; part = open.pop())
      for (const { target, isOutside } of this.links(part))
        if (!isOutside && this.has(target) && !found.has(target) && !past.has(target)) {
          found.add(target);
          open.push(target);
        }
    return found;
  }

  /** The parts that lead to one, with '' for the package. */
  leadingTo(part: string): string[] {
    return ['', ...this.parts].filter(from => this.links(from).some(({ target, isOutside }) => !isOutside && target === part));
  }

  /** With their relations and their types. */
  leaveOut(parts: ReadonlySet<string>): void {
    if (parts.size === 0) return;
    for (const part of parts) {
      if (!this.has(part)) continue;
      const list = this.listOf(part);
      this.left.add(part);
      if (list !== undefined) this.left.add(list);
    }
    this.types(override => (parts.has(override.part) ? undefined : override.type));
  }

  /** The types of parts that are named one by one, changed or taken out. */
  types(of: (override: { readonly part: string; readonly type: string }) => string | undefined): void {
    const types = this.before.named(CONTENT_TYPES);
    if (types === undefined) return;
    this.change(types, text =>
      childrenOf(this.tree(types), 'Override').flatMap(({ from, end, ...override }): Splice[] => {
        const [name, type] = [attribute(override, 'PartName') ?? '', attribute(override, 'ContentType') ?? ''];
        const next = of({ part: this.known(name.replace(/^\//, '')) ?? '', type });
        if (next === type) return [];
        return [{ from, to: end, text: next === undefined ? '' : text.slice(from, end).replace(type, next) }];
      }),
    );
  }

  packed(): PackedPart[] {
    return this.parts.flatMap(name => {
      const added = this.new.get(name);
      if (added !== undefined) return [typeof added === 'string' ? packed(name, [encoded({ text: added, encoding: 'utf-8' })]) : added];
      const [part, text] = [this.before.packed.get(name), this.changed.get(name)];
      if (part === undefined) return [];
      return [text === undefined ? part : packed(name, [encoded({ text, encoding: this.before.decoded(name).encoding })])];
    });
  }
}
