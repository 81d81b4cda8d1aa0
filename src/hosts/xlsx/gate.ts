// What comes out of a file that anybody may have made: only the parts that hold cells go on, and nothing that runs.
import { strFromU8 } from 'fflate';
import { UnreadableFile } from '../../package/unreadable';
import { openZip, unpacked } from '../../package/zip';

/** Parts that can run something. */
const RUNS = /(^|\/)(vbaProject[^/]*\.bin|activeX\/.*|macrosheets\/.*|dialogsheets\/.*)$/i;
/** Parts that fetch something or carry another file, besides links to workbooks. */
const OUTSIDE = /^xl\/(connections\.xml|queryTables\/.+\.xml|embeddings\/.+)$/i;
/** Parts with cells, and what leads to them. */
const READ = [
  /^(\[Content_Types\]\.xml|_rels\/\.rels)$/i,
  /^xl\/(workbook\.xml|_rels\/workbook\.xml\.rels|sharedStrings\.xml|metadata\.xml|worksheets\/[^/]+\.xml)$/i,
  /^xl\/(tables\/[^/]+\.xml|worksheets\/_rels\/[^/]+\.rels)$/i,
  /^xl\/externalLinks\/([^/]+\.xml|_rels\/[^/]+\.rels)$/i,
];

export interface Package {
  readonly parts: ReadonlyMap<string, Uint8Array>;
  /** Names of parts that fetch something or carry another file. They are told and not read. */
  readonly outside: readonly string[];
}

export function opened(bytes: Uint8Array): Package {
  const entries = openZip(bytes);
  const running = [...entries.keys()].find(name => RUNS.test(name));
  if (running !== undefined)
    throw new UnreadableFile(`the file can run something by itself ("${running}"): save it as .xlsx without macros`);
  const parts = new Map(
    [...entries].flatMap(([name, part]) => (READ.some(read => read.test(name)) ? [[name, unpacked(part)] as const] : [])),
  );
  for (const [name, part] of parts) {
    if (strFromU8(part).includes('<!DOCTYPE'))
      throw new UnreadableFile(`the part "${name}" declares a document type, which no workbook needs`);
  }
  return { parts, outside: [...entries.keys()].filter(name => OUTSIDE.test(name)) };
}
