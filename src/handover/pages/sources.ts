// Where everything comes from: the functions with their sources, the rules of the joint, the tables, the versions.
import type { Card } from '../../core/card';
import { DATA_VERSION, FUNCTIONS_VERSION } from '../../core/version';
import { BASES } from '../../german/bases';
import { CAUTIONS } from '../../german/cautions';
import { FUNCTIONS } from '../../german/functions';
import { type RuleName, RULES } from '../../joint/rules';
import { whatOf } from '../../plain/forms';
import { CARDS } from '../../registry';
import type { SheetPlan } from '../../sheet/plan';
import type { Table } from '../../standards/table';
import type { SourceWords } from '../words/source-words';
import type { Language } from '../words/language';
import type { PageWords } from '../words/words';
import { RowWriter } from './rows';

const WIDTHS = [26, 40, 18, 46, 32, 46];

/** What a function gives, what to mind with it, and what a rule compares. */
interface SourceLines {
  readonly gives: (id: string) => string;
  readonly caution: (card: Card) => string;
  readonly basis: (rule: (typeof RULES)[number]) => string;
}

const SENTENCES: Readonly<Record<string, string>> = FUNCTIONS;
const GERMAN_CAUTIONS: Readonly<Record<string, string>> = CAUTIONS;

const DESCRIBED: Readonly<Record<Language, SourceLines>> = {
  English: { gives: whatOf, caution: ({ caution = '' }) => caution, basis: ({ basis }) => basis },
  German: {
    gives: id =>
      SENTENCES[whatOf(id)] ??
      whatOf(id)
        .split(/(?<=[.]) (?=[A-Z])/)
        .map(sentence => SENTENCES[sentence] ?? sentence)
        .join(' '),
    caution: ({ id, caution = '' }) => GERMAN_CAUTIONS[id] ?? caution,
    basis: ({ name }) => BASES[name as RuleName],
  },
};

export function sourcesSheet(
  name: string,
  used: ReadonlySet<string>,
  tables: readonly Table[],
  language: Language,
  { sources: words }: PageWords,
): SheetPlan {
  const described = DESCRIBED[language];
  const rows = new RowWriter();
  rows.add({ from: 0, to: 5, role: 'title', value: words.title });
  rows.add({
    from: 0,
    to: 5,
    role: 'note',
    value: words.note(FUNCTIONS_VERSION, DATA_VERSION),
  });
  rows.add(...words.headers.map((value, c) => ({ from: c, to: c, role: 'header' as const, value })));
  const section = (title: string, lines: readonly (readonly string[])[]): void => {
    if (lines.length === 0) return;
    rows.add({ from: 0, to: 5, role: 'heading', value: title });
    for (const line of lines)
      rows.add(...line.map((value, c) => ({ from: c, to: c, role: c === 0 ? ('label' as const) : ('text' as const), value })));
  };
  const cards = [...used].flatMap(id => CARDS.get(id) ?? []).sort((a, b) => a.id.localeCompare(b.id, 'en'));
  const { said } = words;
  section(
    words.functions,
    cards.flatMap(card => lines(card, described, said)),
  );
  if (cards.some(({ topic }) => topic === 'The joint as one table'))
    section(
      words.rules,
      RULES.map(rule => [rule.name, described.basis(rule), words.rule, said.title(rule.source)]),
    );
  section(
    words.tables,
    tables.map(({ standard, subject, edition, table, columns }) => [
      said.table(standard),
      said.table(subject),
      said.table(edition),
      said.table(table),
      [...new Set(columns.map(({ held }) => said.held(held)))].join('; '),
    ]),
  );
  return { name, widths: WIDTHS, frozenRows: 3, cells: rows.cells, merged: rows.merged, print: { landscape: true, repeatRows: 3 } };
}

function lines(card: Card, described: SourceLines, said: SourceWords): string[][] {
  const { id, kind, sources } = card;
  return sources.map(({ title, held }, i) => {
    const where = [said.title(title), said.held(held)];
    return i === 0 ? [id, described.gives(id), said.kind(kind), ...where, described.caution(card)] : ['', '', '', ...where];
  });
}
