// How a sheet is printed: its width on one page, page numbers, headings repeated.
import type { WriteOptions, WriteSheet } from 'hucre/xlsx';
import type { Print, SheetPlan } from '../../sheet/plan';
import { PLAIN_ROW_PT, columnPx } from './layout';
import { escaped } from './text';

const PLAIN: Print = { paper: 'A4', landscape: true };
const MARGINS_IN = { top: 0.6, right: 0.5, bottom: 0.7, left: 0.5, header: 0.3, footer: 0.35 };
const PT_PER_IN = 72;
const PT_PER_PX = 0.75;
const PAPERS_PT = { A4: [595, 842], Letter: [612, 792] } as const;

/** Rows that would stand alone on a last page are drawn up to the page before when they take less than this share of it. */
const ORPHANS = 0.2;

const setUpOf = ({ print = PLAIN, frozenRows = 0 }: SheetPlan): { paper: 'A4' | 'Letter'; landscape: boolean; repeatRows: number } =>
  ({ paper: print.paper, landscape: print.landscape ?? false, repeatRows: print.repeatRows ?? frozenRows });

/** Pages to fit the height on; 0 lets it run. */
function pagesTall(plan: SheetPlan, heightsPt: ReadonlyMap<number, number>): number {
  const { paper, landscape } = setUpOf(plan);
  const [short, long] = PAPERS_PT[paper];
  const roomWidthPt = (landscape ? long : short) - (MARGINS_IN.left + MARGINS_IN.right) * PT_PER_IN;
  const roomHeightPt = (landscape ? short : long) - (MARGINS_IN.top + MARGINS_IN.bottom) * PT_PER_IN;
  const widthPt = plan.widths.reduce((sum, _, col) => sum + columnPx(plan, col) * PT_PER_PX, 0);
  const rows = Math.max(0, ...heightsPt.keys()) + 1;
  const heightPt = Array.from({ length: rows }, (_, row) => heightsPt.get(row) ?? PLAIN_ROW_PT).reduce((sum, height) => sum + height, 0);
  const pages = (heightPt * Math.min(1, roomWidthPt / widthPt)) / roomHeightPt;
  const whole = Math.floor(pages);
  return whole >= 1 && pages - whole <= ORPHANS ? whole : 0;
}

export function printOf(plan: SheetPlan, workbookName: string, heightsPt: ReadonlyMap<number, number>): Pick<WriteSheet, 'pageSetup' | 'headerFooter'> {
  const { paper, landscape } = setUpOf(plan);
  return {
    pageSetup: {
      paperSize: paper === 'A4' ? 'a4' : 'letter',
      orientation: landscape ? 'landscape' : 'portrait',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: pagesTall(plan, heightsPt),
      margins: MARGINS_IN,
    },
    // A space ends the font size, so that a name may begin with a digit.
    headerFooter: { oddFooter: `&L&8 ${escaped(workbookName).replaceAll('&', '&&')} – &A&R&8 Page &P of &N` },
  };
}

/** The library writes the rows to repeat with a sheet name that is not quoted; as a name of its own they can be. */
export function repeatedRows(plan: SheetPlan): NonNullable<WriteOptions['namedRanges']> {
  const { repeatRows } = setUpOf(plan);
  return repeatRows > 0 ? [{ name: '_xlnm.Print_Titles', range: `'${plan.name}'!$1:$${repeatRows}`, scope: plan.name }] : [];
}
