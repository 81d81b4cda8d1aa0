// A second look at a package, with no line of the product: what leads nowhere, what nothing leads to, what is named and not there.
import { posix } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';

export interface PackageSeen {
  /** Every fault in words. */
  readonly faults: readonly string[];
  readonly parts: ReadonlySet<string>;
  readonly reached: ReadonlySet<string>;
  /** Relations, types and names of relations that were looked at. */
  readonly looked: number;
}

const attributesOf = (tag: string): Record<string, string> =>
  Object.fromEntries([...tag.matchAll(/([\w:]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [name, value]));

export function seen(zip: Uint8Array): PackageSeen {
  const files = unzipSync(zip);
  const parts = new Set(Object.keys(files));
  const text = (part: string): string => strFromU8(files[part] ?? new Uint8Array());
  const faults: string[] = [];
  let looked = 0;
  const led = new Map<string, string[]>();
  const ids = new Map<string, Set<string>>();
  for (const part of parts) {
    const [, folder = '', name = ''] = /^(.*?)_rels\/([^/]*)\.rels$/.exec(part) ?? [];
    if (!part.endsWith('.rels')) continue;
    const of = folder + name;
    if (of !== '' && !parts.has(of)) faults.push(`${part} belongs to no part`);
    for (const [tag] of text(part).matchAll(/<Relationship\s[^>]*>/g)) {
      const { Target = '', TargetMode, Id = '' } = attributesOf(tag);
      looked++;
      ids.set(of, new Set([...(ids.get(of) ?? []), Id]));
      if (TargetMode === 'External') continue;
      const target = Target.startsWith('/') ? Target.slice(1) : posix.normalize(folder + Target);
      if (!parts.has(target)) faults.push(`${of} leads to ${target}, which is not there`);
      led.set(of, [...(led.get(of) ?? []), target]);
    }
  }
  const reached = new Set<string>();
  for (const open = ['']; open.length > 0;)
    for (const target of led.get(open.pop() ?? '') ?? [])
      if (!reached.has(target)) {
        reached.add(target);
        open.push(target);
      }
  for (const [tag] of text('[Content_Types].xml').matchAll(/<Override\s[^>]*>/g)) {
    looked++;
    const part = (attributesOf(tag)['PartName'] ?? '').slice(1);
    if (!parts.has(part)) faults.push(`a type is given to ${part}, which is not there`);
  }
  for (const part of parts)
    if (/\.(xml|vml)$/.test(part))
      for (const [, , id = ''] of text(part).matchAll(/\s(?:r:(?:id|embed|link|pict)|o:relid)(=)"([^"]*)"/g)) {
        looked++;
        if (ids.get(part)?.has(id) !== true) faults.push(`${part} names the relation ${id}, which it has not`);
      }
  return { faults, parts, reached, looked };
}

/** Parts in which a word stands. */
export const standsIn = (zip: Uint8Array, word: string): string[] =>
  Object.entries(unzipSync(zip)).flatMap(([part, bytes]) => (Buffer.from(bytes).includes(word) ? [part] : []));
