// Every file that follows from others, from its text as it is to its text as it should be. npm run generate writes them; a test compares.
import { existsSync, readFileSync } from 'node:fs';
import { type Figures, populationFigures } from '../../test/evidence/verdicts/figures';
import { TABLES } from '../../test/standards/tables';
import { linesOfRecords, type Records } from '../../test/standards/records';
import { UserFault } from '../cli/user-fault';
import { EVIDENCE } from '../evidence/list';
import { CARDS } from '../registry';
import { changedSince, MUTANTS, sinceWords } from '../release/measured';
import { broken, RELEASED, signaturesOf } from '../release/signatures';
import { englishTexts } from './english-texts';
import { evidenceTable } from './evidence-table';
import { figuresPage, type Results } from './figures-page';
import { functionTable } from './function-table';
import { inputsSchema } from './inputs-schema';
import { METADATA } from './metadata';
import { pinnedWords } from './pinned-words';
import { proofPage } from './proof-page';
import { verdictsPage } from './verdicts-page';

const ROOT = new URL('../../', import.meta.url);
/** The collected records, which lie beside the checkout where there are any. */
export const RECORDS = new URL('../shared/data/', ROOT);

export const BY = 'by npm run generate';

const read = (file: string, from = ROOT): string => readFileSync(new URL(file, from), 'utf8');
const parsed = <T>(file: string, from = ROOT): T => JSON.parse(read(file, from)) as T;
const json = (facts: object): string => `${JSON.stringify({ generated: BY, ...facts }, null, 2)}\n`;

/** A document that is written whole. */
const page = (title: string, ...parts: readonly string[]): string => `<!-- generated ${BY} -->\n# ${title}\n\n${parts.join('\n\n')}\n`;

function proof(): string {
  const inProject = (file: string): URL => new URL(file, ROOT);
  const since = changedSince(read(MUTANTS), file => (existsSync(inProject(file)) ? readFileSync(inProject(file)) : undefined));
  return page(
    'What is proven, and what only Excel can show',
    proofPage(sinceWords(since.changed.length, since.of)),
    '## How the verdict tells joints apart',
    verdictsPage(parsed<Figures>(VERDICTS)),
  );
}

/** The list grows; what is in it stays. */
function signatures(): string {
  const now = signaturesOf(METADATA.functions);
  const faults = broken(RELEASED, now);
  if (faults.length > 0) throw new UserFault(`released signatures do not change:\n${faults.join('\n')}`);
  return json(now);
}

const records = (): string =>
  json(
    linesOfRecords({
      fasteners: parsed<Records['fasteners']>('fasteners.json', RECORDS),
      nuts: parsed<Records['nuts']>('nuts.json', RECORDS),
      tolerance: parsed<Records['tolerance']>('tolerance.json', RECORDS),
    }),
  );

const germanTexts = (): string => englishTexts(METADATA.functions, [...CARDS.values()], Object.values(TABLES));

const VERDICTS = 'test/evidence/verdicts/figures.json';

/** In this order: what stands last reads those before it. */
const FILES: Readonly<Record<string, (text: string) => string>> = {
  'src/release/signatures.json': signatures,
  'src/german/english.ts': () => `// Texts that are translated, as types; generated ${BY}.\n\n${germanTexts()}`,
  'test/contract/pinned.json': () => json(pinnedWords()),
  ...(existsSync(RECORDS) ? { 'test/standards/records.json': records } : {}),
  [VERDICTS]: () => json(populationFigures()),
  'src/docs/functions.md': () => page('The functions', functionTable(CARDS.values())),
  'src/docs/evidence.md': () => page('What each function is checked against', evidenceTable(CARDS.values(), EVIDENCE)),
  'src/docs/proof.md': proof,
  'src/docs/joint-inputs.schema.json': () => json(inputsSchema()),
  'src/docs/speed.md': () => page('How fast and how large', figuresPage(parsed<Results>('test/bench/results.json'))),
};

interface Generated {
  readonly file: string;
  readonly path: URL;
  readonly is: string;
  /** The text that should be, from one that is. */
  readonly from: (text: string) => string;
}

export const GENERATED: readonly Generated[] = Object.entries(FILES).map(([file, from]) => ({
  file,
  path: new URL(file, ROOT),
  is: read(file),
  from,
}));
