// Where everything comes from: the functions with their sources, the rules of the joint, the tables, the versions.
import type { Card } from '../core/card';
import type { Table } from '../core/kinds';
import { DATA_VERSION, FUNCTIONS_VERSION } from '../core/version';
import { RULES } from '../joint/rules';
import { whatOf } from '../plain/forms';
import { CARDS } from '../registry';
import type { SheetPlan } from '../sheet/plan';
import { Rows } from './rows';

const WIDTHS = [26, 38, 18, 46, 32, 46];

export function sourcesSheet(name: string, used: ReadonlySet<string>, tables: readonly Table[]): SheetPlan {
  const rows = new Rows();
  rows.add({ from: 0, to: 0, role: 'title', value: 'Sources' });
  rows.add({ from: 0, to: 5, role: 'note', value: `Functions of version ${FUNCTIONS_VERSION}, data of ${DATA_VERSION}. The standard itself and the drawing govern.` });
  rows.gap();
  const table = (titles: readonly string[], lines: readonly (readonly string[])[]): void => {
    rows.add(...titles.map((value, c) => ({ from: c, to: c, role: 'header' as const, value })));
    for (const line of lines) rows.add(...line.map((value, c) => ({ from: c, to: c, role: c === 0 ? ('label' as const) : ('text' as const), value })));
    rows.gap();
  };
  const cards = [...used].flatMap(id => CARDS.get(id) ?? []).sort((a, b) => a.id.localeCompare(b.id, 'en'));
  table(['function', 'what it gives', 'kind', 'source', 'how held', 'caution'], cards.flatMap(lines));
  if (cards.some(({ id }) => id.startsWith('JOINT') || id.startsWith('CHECK.JOINT') || id.startsWith('CHECK.BOSS'))) {
    table(['rule of the joint', 'what is compared', '', 'source'], RULES.map(rule => [rule.name, rule.basis, '', rule.source]));
  }
  if (tables.length > 0) table(['standard', 'subject', 'edition', 'table', 'how held'], tables.map(one => [one.standard, one.subject, one.edition, one.table, [...new Set(one.columns.map(({ held }) => held))].join('; ')]));
  return { name, widths: WIDTHS, frozenRows: 2, cells: rows.cells, merged: rows.merged, print: { paper: 'A4', landscape: true, repeatRows: 2 } };
}

function lines({ id, kind, sources, caution = '' }: Card): string[][] {
  return sources.map(({ title, held }, i) => (i === 0 ? [id, whatOf(id), kind, title, held, caution] : ['', '', '', title, held, '']));
}
