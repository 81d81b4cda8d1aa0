// What holds for every hand-over: units and rules, assumptions, cautions.
import type { SheetPlan } from '../../sheet/plan';
import { COVER_WIDTHS, heading, line } from './cover';
import { RowWriter, type Span } from './rows';
import type { PageWords } from '../words/words';

export function cautionsSheet(name: string, { cautions }: PageWords): SheetPlan {
  const rows = new RowWriter();
  rows.add({ from: 0, to: COVER_WIDTHS.length - 1, role: 'title', value: cautions.title });
  const section = (text: string, lines: readonly string[], role: Span['role'] = 'text'): void => {
    heading(rows, text);
    for (const one of lines) line(rows, one, role);
  };
  section(cautions.cautionsTitle, cautions.cautions, 'caution');
  section(cautions.rulesTitle, cautions.rules);
  section(cautions.assumptionsTitle, cautions.assumptions);
  return { name, widths: COVER_WIDTHS, cells: rows.cells, merged: rows.merged, print: { isScaled: true } };
}
