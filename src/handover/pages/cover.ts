// The cover of a hand-over, one page: what it is, what is asked, by whom; open questions and the signature of the supplier.
import { MATERIAL_SYMBOLS } from '../../core/material/material';
import { cellText } from '../../sheet/cell-text';
import type { SheetPlan } from '../../sheet/plan';
import type { DataSheet } from '../compile/data-sheet';
import { RowWriter, type Span } from './rows';
import type { TitleBlock } from './title-block';
import type { PageWords } from '../words/words';

/** Columns of the sheet, counted from 0. */
const LAST = 7;
export const COVER_WIDTHS = [5, 15, 12, 12, 12, 11, 11, 9];
/** Links side by side. */
const LINKS = 3;

export interface CoverSummary {
  readonly materials: readonly string[];
  /** Cells of the sender without a value, by sheet. */
  readonly toCorrect: ReadonlyMap<string, number>;
  /** Names of our sheets. */
  readonly onPaper: readonly string[];
  readonly onScreen: readonly string[];
}

export const cleanTitle = (title: TitleBlock): TitleBlock =>
  Object.fromEntries(Object.entries(title).map(([key, text]) => [key, cellText(String(text))])) as unknown as TitleBlock;

export const heading = (rows: RowWriter, text: string): void => rows.add({ from: 0, to: LAST, role: 'heading', value: text });
export const line = (rows: RowWriter, text: string, role: Span['role'] = 'text'): void =>
  rows.add({ from: 0, to: LAST, role, value: text });
export const head = (from: number, to: number, value: string): Span => ({ from, to, role: 'header', value });

export function coverSheet(name: string, given: TitleBlock, summary: CoverSummary, data: DataSheet, words: PageWords): SheetPlan {
  const title = cleanTitle(given);
  const { cover } = words;
  const rows = new RowWriter();
  rows.add({ from: 0, to: LAST, role: 'title', value: `${cover.title}: ${title.part}` });
  line(
    rows,
    [
      title.number,
      title.revision === '' ? '' : `${cover.revision} ${title.revision}`,
      title.date,
      cover.statuses[given.status],
      cover.uncontrolled,
    ]
      .filter(text => text !== '')
      .join(' · '),
    'note',
  );
  line(rows, cover.what);
  cover.asked.forEach((text, i) =>
    rows.add({ from: 0, to: 0, role: 'label', value: i + 1 }, { from: 1, to: LAST, role: 'text', value: text }),
  );
  titleBlock(rows, title, summary.materials, words);
  questions(rows, summary.toCorrect, data, words);
  signOff(rows, data, words);
  links(rows, cover.onPaper, summary.onPaper);
  links(rows, cover.onScreen, summary.onScreen);
  return { name, widths: COVER_WIDTHS, cells: rows.cells, merged: rows.merged, validations: rows.validations, print: { isScaled: true } };
}

/** Two labelled fields side by side; what is not known is to be filled in. */
function pair(rows: RowWriter, ...fields: readonly (readonly [label: string, value: string])[]): void {
  rows.add(
    ...fields.flatMap(([label, value], i): Span[] => [
      { from: 4 * i, to: 4 * i + 1, role: 'label', value: label },
      { from: 4 * i + 2, to: 4 * i + 3, role: value === '' ? 'input' : 'text', value },
    ]),
  );
}

function titleBlock(rows: RowWriter, title: TitleBlock, materials: readonly string[], { cover }: PageWords): void {
  heading(rows, cover.titleBlock);
  pair(rows, [cover.part, title.part], [cover.number, title.number]);
  pair(rows, [cover.revision, title.revision], [cover.date, title.date]);
  pair(rows, [cover.status, cover.statuses[title.status]], [cover.madeBy, title.madeBy]);
  pair(rows, [cover.checkedBy, title.checkedBy], [cover.supplier, '']);
  pair(rows, [cover.drawing, ''], [cover.family, materials.join(', ')]);
  pair(rows, [cover.grade, ''], [cover.colour, '']);
  pair(rows, [cover.along, ''], [cover.across, '']);
}

function questions(rows: RowWriter, toCorrect: ReadonlyMap<string, number>, data: DataSheet, words: PageWords): void {
  const { cover } = words;
  const list = data.choices(cover.decided, cover.decisions);
  heading(rows, cover.questionsTitle);
  rows.add(head(0, 0, words.number), head(1, 4, cover.question), head(5, 6, cover.answer), head(7, 7, cover.decided));
  const count = [...toCorrect.values()].reduce((sum, cells) => sum + cells, 0);
  const all = [...(count === 0 ? [] : [cover.toCorrect(count, [...toCorrect.keys()].join(', '))]), ...cover.questions];
  all.forEach((text, i) =>
    rows.add(
      { from: 0, to: 0, role: 'label', value: i + 1 },
      { from: 1, to: 4, role: 'text', value: text },
      { from: 5, to: 6, role: 'input' },
      { from: 7, to: 7, role: 'input', value: cover.open, list, words: cover.decidedWords },
    ),
  );
}

function signOff(rows: RowWriter, data: DataSheet, { cover }: PageWords): void {
  heading(rows, cover.signTitle);
  pair(rows, [cover.name, ''], [cover.date, '']);
  rows.add(
    { from: 0, to: 1, role: 'label', value: cover.review },
    { from: 2, to: LAST, role: 'input', list: data.choices(cover.review, cover.reviews), words: cover.reviews.join('; ') },
  );
  rows.add({ from: 0, to: 1, role: 'label', value: cover.changesAsked }, { from: 2, to: LAST, role: 'input' });
}

function links(rows: RowWriter, label: string, sheets: readonly string[]): void {
  for (let i = 0; i < sheets.length; i += LINKS)
    rows.add(
      { from: 0, to: 1, role: 'label', value: i === 0 ? label : '' },
      ...sheets.slice(i, i + LINKS).map((sheet, c): Span => ({ from: 2 * c + 2, to: 2 * c + 3, role: 'note', value: sheet, link: sheet })),
    );
}

/** Names of resin families among the texts of a workbook. */
export const materialsIn = (texts: Iterable<string>): string[] => {
  const found = new Set<string>();
  for (const text of texts) if (MATERIAL_SYMBOLS.includes(text)) found.add(text);
  return [...found].sort();
};
