// Where everything comes from: the functions with their sources, the rules of the joint, the tables, the versions.
import type { Card } from '../../core/card';
import type { Table } from '../../standards/table';
import { DATA_VERSION, FUNCTIONS_VERSION } from '../../core/version';
import { RULES } from '../../joint/rules';
import { whatOf } from '../../plain/forms';
import { CARDS } from '../../registry';
import type { SheetPlan } from '../../sheet/plan';
import { RowWriter } from './rows';

const WIDTHS = [26, 40, 18, 46, 32, 46];
const HEADERS = ['', 'what it gives or holds', 'kind or edition', 'source', 'how held', 'caution'];

export function sourcesSheet(name: string, used: ReadonlySet<string>, tables: readonly Table[]): SheetPlan {
  const rows = new RowWriter();
  rows.add({ from: 0, to: 5, role: 'title', value: 'Sources' });
  rows.add({
    from: 0,
    to: 5,
    role: 'note',
    value: `Functions of version ${FUNCTIONS_VERSION}, data of ${DATA_VERSION}. The standard itself and the drawing govern.`,
  });
  rows.add(...HEADERS.map((value, c) => ({ from: c, to: c, role: 'header' as const, value })));
  const section = (title: string, lines: readonly (readonly string[])[]): void => {
    if (lines.length === 0) return;
    rows.add({ from: 0, to: 5, role: 'heading', value: title });
    for (const line of lines)
      rows.add(...line.map((value, c) => ({ from: c, to: c, role: c === 0 ? ('label' as const) : ('text' as const), value })));
  };
  const cards = [...used].flatMap(id => CARDS.get(id) ?? []).sort((a, b) => a.id.localeCompare(b.id, 'en'));
  section('Functions', cards.flatMap(lines));
  if (cards.some(({ topic }) => topic === 'The joint as one table'))
    section(
      'Rules of the joint',
      RULES.map(({ name: rule, basis, source }) => [rule, basis, 'rule', source]),
    );
  section(
    `Tables on the sheet of data`,
    tables.map(({ standard, subject, edition, table, columns }) => [
      standard,
      subject,
      edition,
      table,
      [...new Set(columns.map(({ held }) => held))].join('; '),
    ]),
  );
  return { name, widths: WIDTHS, frozenRows: 3, cells: rows.cells, merged: rows.merged, print: { landscape: true, repeatRows: 3 } };
}

function lines({ id, kind, sources, caution = '' }: Card): string[][] {
  return sources.map(({ title, held }, i) => (i === 0 ? [id, whatOf(id), kind, title, held, caution] : ['', '', '', title, held]));
}
