// How a sheet is printed: its width on one page where that can be read, page numbers, headings repeated.
import type { WriteOptions, WriteSheet } from 'hucre/xlsx';
import type { Print, SheetPlan } from '../../sheet/plan';
import { address, cellPosition } from '../../sheet/addresses';
import { heightsPt as heightsOf, placed, PLAIN_ROW_PT, PT_PER_PX, columnPx } from './layout';
import { escaped } from './text';

const PLAIN: Print = { landscape: true };
const MARGINS_IN = { top: 0.6, right: 0.35, bottom: 0.7, left: 0.35, header: 0.3, footer: 0.35 };
const PT_PER_IN = 72;
const PAPERS_PT = { A4: [595, 842], Letter: [612, 792] } as const;

/** What would be printed smaller than this goes on several pages side by side. */
const LEAST_SCALE = 0.35;
/** Rows that would stand alone on a last page are drawn up to the page before when they take less than this share of it. */
const ORPHANS = 0.2;

interface SetUp extends Required<Omit<Print, 'screenOnly' | 'isScaled' | 'pageWords'>> {
  /** Width and height of a page between the margins. */
  readonly roomPt: readonly [width: number, height: number];
}

function setUpOf({ print = PLAIN, frozenRows = 0 }: SheetPlan): SetUp {
  const { paper = 'A4', landscape = false, repeatRows = frozenRows, breakAfter = [] } = print;
  const [short, long] = PAPERS_PT[paper];
  const [width, height] = landscape ? [long, short] : [short, long];
  return {
    paper,
    landscape,
    repeatRows,
    breakAfter,
    roomPt: [width - (MARGINS_IN.left + MARGINS_IN.right) * PT_PER_IN, height - (MARGINS_IN.top + MARGINS_IN.bottom) * PT_PER_IN],
  };
}

const widthPt = (plan: SheetPlan): number => plan.widths.reduce((sum, _, col) => sum + columnPx(plan, col) * PT_PER_PX, 0);

const pagesWide = (plan: SheetPlan): number => Math.max(1, Math.ceil((widthPt(plan) * LEAST_SCALE) / setUpOf(plan).roomPt[0]));

function rowsOf(heightsPt: ReadonlyMap<number, number>): number {
  let last = 0;
  for (const row of heightsPt.keys()) last = Math.max(last, row);
  return last + 1;
}

/** Of the rows from the first on, before the last. */
const heightOf = (heightsPt: ReadonlyMap<number, number>, first: number, last: number): number =>
  Array.from({ length: last - first }, (_, i) => heightsPt.get(first + i) ?? PLAIN_ROW_PT).reduce((sum, height) => sum + height, 0);

/** Programs round widths and heights, and columns grow where the font is replaced by a wider one: a page is filled to these shares only. */
const FILL_WIDTH = 0.9;
/** Columns grow by so much where a wide font takes the place of the sender's, by which they are measured. */
const GROWTH = 1.34;
const FILL_HEIGHT = 0.96;

/** In percent, so that what stands between two breaks has room on a page. */
function scaleOf(plan: SheetPlan, heightsPt: ReadonlyMap<number, number>): number {
  const {
    breakAfter,
    repeatRows,
    roomPt: [roomWidthPt, roomHeightPt],
  } = setUpOf(plan);
  const ends = [...breakAfter, rowsOf(heightsPt)];
  const tallestPt = Math.max(
    ...ends.map((end, i) => (i === 0 ? 0 : heightOf(heightsPt, 0, repeatRows)) + heightOf(heightsPt, ends[i - 1] ?? 0, end)),
  );
  return Math.floor(100 * Math.min(1, (FILL_WIDTH * roomWidthPt) / widthPt(plan), (FILL_HEIGHT * roomHeightPt) / tallestPt));
}

/** Type of 10 points stays above 8. */
const LEAST_OWN_SCALE = 0.82;

/** In percent, so that its height has room on a page where that can still be read, and its width whatever the font; undefined where it is
 * fitted to the width alone. Some programs fit by the paper of another sheet: a page that lies is never fitted, none to its height,
 * and one that stands has room on one that lies where it can. */
function ownScale(plan: SheetPlan, heightsPt: ReadonlyMap<number, number>): number | undefined {
  const { paper, landscape, roomPt } = setUpOf(plan);
  const [roomWidthPt, roomHeightPt] = roomPt;
  const lyingPt = PAPERS_PT[paper][0] - (MARGINS_IN.top + MARGINS_IN.bottom) * PT_PER_IN;
  const heightPt = heightOf(heightsPt, 0, rowsOf(heightsPt));
  const tall = [lyingPt, roomHeightPt].map(roomPt => (FILL_HEIGHT * roomPt) / heightPt).find(scale => scale >= LEAST_OWN_SCALE);
  const height = Math.min(1, tall ?? 1);
  return height === 1 && !landscape ? undefined : Math.floor(100 * Math.min(height, roomWidthPt / (GROWTH * widthPt(plan))));
}

/** Pages to fit the height on; 0 lets it run. */
function pagesTall(plan: SheetPlan, heightsPt: ReadonlyMap<number, number>): number {
  const [roomWidthPt, roomHeightPt] = setUpOf(plan).roomPt;
  const heightPt = heightOf(heightsPt, 0, rowsOf(heightsPt));
  const scale = Math.min(1, (roomWidthPt * pagesWide(plan)) / widthPt(plan));
  const pages = (heightPt * scale) / roomHeightPt;
  const whole = Math.floor(pages);
  return whole >= 1 && pages - whole <= ORPHANS ? whole : 0;
}

export function printOf(
  plan: SheetPlan,
  workbookName: string,
  heightsPt: ReadonlyMap<number, number>,
): Pick<WriteSheet, 'pageSetup' | 'headerFooter' | 'rowBreaks'> {
  const { paper, landscape, breakAfter } = setUpOf(plan);
  const { screenOnly, isScaled, pageWords: [page, of] = ['Page', 'of'] } = plan.print ?? {};
  const own = isScaled === true ? ownScale(plan, heightsPt) : undefined;
  const footer = `&L${escaped(workbookName).replaceAll('&', '&&')} – &A&R${page} &P ${of} &N`;
  if (screenOnly !== undefined)
    return {
      // a cell beside all that is filled: what leaves out empty pages leaves it out
      pageSetup: { paperSize: paper === 'A4' ? 'a4' : 'letter', printArea: blankCell(plan), margins: MARGINS_IN },
      headerFooter: { oddHeader: `&C${escaped(screenOnly).replaceAll('&', '&&')}`, oddFooter: footer },
    };
  return {
    pageSetup: {
      paperSize: paper === 'A4' ? 'a4' : 'letter',
      orientation: landscape ? 'landscape' : 'portrait',
      // a program that fits pages takes no notice of breaks
      ...(breakAfter.length > 0
        ? { scale: scaleOf(plan, heightsPt) }
        : own !== undefined
          ? // what is left for a wider font lies on both sides
            { scale: own, horizontalCentered: true }
          : { fitToPage: true, fitToWidth: pagesWide(plan), fitToHeight: isScaled === true ? 0 : pagesTall(plan, heightsPt) }),
      margins: MARGINS_IN,
    },
    rowBreaks: breakAfter.map(row => row - 1),
    headerFooter: { oddFooter: footer },
  };
}

function blankCell({ widths, cells }: SheetPlan): string {
  const columns = cells.reduce((most, { at }) => Math.max(most, cellPosition(at).column + 1), widths.length);
  return address(0, columns + 1).replace(/[A-Z]+|\d+/g, '$$$&');
}

/** Pages that it is printed on. */
export function pagesOf(plan: SheetPlan): number {
  if (plan.print?.screenOnly !== undefined) return 0;
  const heightsPt = heightsOf(placed(plan), plan);
  const {
    breakAfter,
    repeatRows,
    roomPt: [roomWidthPt, roomHeightPt],
  } = setUpOf(plan);
  if (breakAfter.length > 0) return breakAfter.length + 1;
  const isScaled = plan.print?.isScaled === true;
  const fitted = isScaled ? 0 : pagesTall(plan, heightsPt);
  if (fitted > 0) return fitted * pagesWide(plan);
  const own = isScaled ? ownScale(plan, heightsPt) : undefined;
  const roomPt = roomHeightPt / (own === undefined ? Math.min(1, (roomWidthPt * pagesWide(plan)) / widthPt(plan)) : own / 100);
  const headPt = heightOf(heightsPt, 0, repeatRows);
  let [pages, usedPt] = [1, 0];
  for (let row = 0; row < rowsOf(heightsPt); row++) {
    const rowPt = heightsPt.get(row) ?? PLAIN_ROW_PT;
    if (usedPt + rowPt > roomPt) [pages, usedPt] = [pages + 1, headPt];
    usedPt += rowPt;
  }
  return pages * pagesWide(plan);
}

/**
 * Rows at the top of every page, and the first column where pages stand side by side.
 * The library would write them with a sheet name that is not quoted; as a name of its own it can be.
 */
export function repeated(plan: SheetPlan): NonNullable<WriteOptions['namedRanges']> {
  if (plan.print?.screenOnly !== undefined) return [];
  const { repeatRows } = setUpOf(plan);
  const parts = [...(pagesWide(plan) > 1 ? ['$A:$A'] : []), ...(repeatRows > 0 ? [`$1:$${repeatRows}`] : [])];
  return parts.length === 0
    ? []
    : [
        {
          name: '_xlnm.Print_Titles',
          range: parts.map(part => `'${plan.name.replaceAll("'", "''")}'!${part}`).join(','),
          scope: plan.name,
        },
      ];
}
