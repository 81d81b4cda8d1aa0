// The cover of a hand-over: what it is, by whom, under which rules; open questions, changes and the signature of the supplier.
import { MATERIAL_SYMBOLS } from '../../core/material/material';
import { DATA_VERSION, FUNCTIONS_VERSION } from '../../core/version';
import { cellText } from '../../sheet/cell-text';
import type { SheetPlan } from '../../sheet/plan';
import type { DataSheet } from '../compile/data-sheet';
import type { HandoverFinding } from '../read/finding';
import { RULES, ASSUMPTIONS, CAUTIONS, QUESTIONS, SIGN_OFF, QUESTION_STATES } from './cover-words';
import { RowWriter, type Span } from './rows';
import type { TitleBlock } from './title-block';

export const COVER_TITLE = 'Hand-over';

/** Columns of the sheet, counted from 0. */
const LAST = 7;

const WIDTHS = [6, 18, 17, 16, 17, 16, 16, 16];

const MOST_FINDINGS = 150;

const FREE_QUESTIONS = 3;

const FREE_CHANGES = 4;

export interface Summary {
  readonly workbook: string;
  readonly hash: string;
  readonly live: number;
  readonly asValues: number;
  readonly findings: readonly HandoverFinding[];
  readonly materials: readonly string[];
  /** Sheet with the characteristics, how many it has and how many found no room there. */
  readonly measured: { readonly sheet: string; readonly count: number; readonly left: number };
  /** Sheet with the figures, where there is one. */
  readonly figures: string | undefined;
}

export function coverSheet(name: string, title: TitleBlock, summary: Summary, data: DataSheet): SheetPlan {
  const clean = Object.fromEntries(Object.entries(title).map(([key, text]) => [key, cellText(String(text))])) as unknown as TitleBlock;
  const rows = new RowWriter();
  rows.add({ from: 0, to: LAST, role: 'title', value: `${COVER_TITLE}: ${clean.part}` });
  rows.add({
    from: 0,
    to: LAST,
    role: 'note',
    value: [clean.number, clean.revision === '' ? '' : `revision ${clean.revision}`, clean.date, clean.status, 'uncontrolled when printed']
      .filter(text => text !== '')
      .join(' · '),
  });
  titleBlock(rows, clean, summary);
  section(rows, 'Units and rules', RULES);
  material(rows, summary.materials);
  rows.gap();
  heading(rows, 'Characteristics');
  line(
    rows,
    `${summary.measured.count} characteristics with requirement, limits, method and room for the result stand on the sheet ` +
      `${summary.measured.sheet}.` +
      (summary.measured.left === 0 ? '' : ` ${summary.measured.left} more values stand on the sheets themselves.`),
  );
  if (summary.figures !== undefined)
    line(rows, `The joint in section, its letters and their live values stand on the sheet ${summary.figures}.`);
  rows.gap();
  heading(rows, 'Assumptions');
  ASSUMPTIONS.forEach((text, i) =>
    rows.add({ from: 0, to: 0, role: 'label', value: i + 1 }, { from: 1, to: LAST, role: 'text', value: text }),
  );
  questions(rows, summary.findings, data);
  changes(rows, clean);
  signOff(rows, data);
  section(rows, 'Cautions', CAUTIONS, 'caution');
  findings(rows, summary.findings);
  return {
    name,
    widths: WIDTHS,
    frozenRows: 2,
    cells: rows.cells,
    merged: rows.merged,
    validations: rows.validations,
    print: { repeatRows: 2 },
  };
}

const heading = (rows: RowWriter, text: string): void => rows.add({ from: 0, to: LAST, role: 'heading', value: text });

export const line = (rows: RowWriter, text: string, role: Span['role'] = 'text'): void =>
  rows.add({ from: 0, to: LAST, role, value: text });

function section(rows: RowWriter, title: string, lines: readonly string[], role: Span['role'] = 'text'): void {
  rows.gap();
  heading(rows, title);
  for (const text of lines) line(rows, text, role);
}

/** Two labelled fields side by side; what is not known is to be filled in. */
function pair(rows: RowWriter, ...fields: readonly (readonly [label: string, value: string | undefined])[]): void {
  rows.add(
    ...fields.flatMap(([label, value], i): Span[] => [
      { from: 4 * i, to: 4 * i + 1, role: 'label', value: label },
      { from: 4 * i + 2, to: 4 * i + 3, role: value === undefined || value === '' ? 'input' : 'text', value: value ?? '' },
    ]),
  );
}

function titleBlock(rows: RowWriter, title: TitleBlock, { workbook, hash, live, asValues }: Summary): void {
  rows.gap();
  heading(rows, 'Title block');
  pair(rows, ['part', title.part], ['part number', title.number]);
  pair(rows, ['revision', title.revision], ['date', title.date]);
  pair(rows, ['status', title.status], ['workbook', cellText(workbook)]);
  pair(rows, ['made by', title.madeBy], ['checked by', title.checkedBy]);
  pair(rows, ['supplier', undefined], ['drawing and model, revision', undefined]);
  pair(rows, ['functions', `version ${FUNCTIONS_VERSION}`], ['data of standards', `version of ${DATA_VERSION}`]);
  rows.add(
    { from: 0, to: 1, role: 'label', value: 'content' },
    { from: 2, to: LAST, role: 'text', value: `${hash} (FNV-1a, 64 bit, of all inputs and formulas as they were handed over)` },
  );
  rows.gap();
  heading(rows, 'What this file does');
  line(
    rows,
    `${live} values live, ${asValues} as values. A live value follows its inputs by plain formulas, in any spreadsheet ` +
      'program and without an add-in: change an input on its sheet and everything that depends on it follows. A value that is ' +
      'not live is marked in its cell (italic on a light ground) and has a line below; where its inputs can be watched it shows ' +
      '"inputs changed" when they are.',
  );
}

function material(rows: RowWriter, materials: readonly string[]): void {
  rows.gap();
  heading(rows, 'Material');
  pair(rows, ['family on the sheets', materials.length === 0 ? undefined : materials.join(', ')], ['grade', undefined]);
  pair(rows, ['colour, additives', undefined], ['flame class', undefined]);
  pair(rows, ['shrinkage along the flow, %', undefined], ['shrinkage across the flow, %', undefined]);
  line(rows, 'Shrinkage is to be confirmed by the supplier for the grade and the wall thickness of this part.', 'note');
}

function questions(rows: RowWriter, found: readonly HandoverFinding[], data: DataSheet): void {
  const list = data.choices('question', QUESTION_STATES);
  rows.gap();
  heading(rows, 'Open questions');
  rows.add(head(0, 0, 'No.'), head(1, 3, 'question'), head(4, 5, "supplier's answer"), head(6, 6, 'decision'), head(7, 7, 'status'));
  const unread = found.some(({ what }) => what === 'not in every program')
    ? ['Do the formulas that are named "not in every program" work in your program?']
    : [];
  [...QUESTIONS, ...unread, ...Array.from({ length: FREE_QUESTIONS }, () => undefined)].forEach((text, i) =>
    rows.add(
      { from: 0, to: 0, role: 'label', value: i + 1 },
      { from: 1, to: 3, role: text === undefined ? 'input' : 'text', value: text ?? '' },
      { from: 4, to: 5, role: 'input' },
      { from: 6, to: 6, role: 'input' },
      { from: 7, to: 7, role: 'input', value: text === undefined ? '' : 'open', list, words: 'open, agreed or rejected' },
    ),
  );
}

const head = (from: number, to: number, value: string): Span => ({ from, to, role: 'header', value });

export function changes(rows: RowWriter, title: TitleBlock): void {
  rows.gap();
  heading(rows, 'Change log');
  rows.add(
    head(0, 1, 'revision, date'),
    head(2, 3, 'what'),
    head(4, 4, 'old value'),
    head(5, 5, 'new value'),
    head(6, 6, 'reason'),
    head(7, 7, 'by'),
  );
  const columns = [
    [0, 1],
    [2, 3],
    [4, 4],
    [5, 5],
    [6, 6],
    [7, 7],
  ] as const;
  const first = [[title.revision, title.date].filter(text => text !== '').join(', '), 'handed over', '', '', '', title.madeBy];
  for (let i = 0; i <= FREE_CHANGES; i++)
    rows.add(
      ...columns.map(([from, to], c): Span => ({ from, to, role: i === 0 ? 'text' : 'input', value: i === 0 ? (first[c] ?? '') : '' })),
    );
}

function signOff(rows: RowWriter, data: DataSheet): void {
  rows.gap();
  heading(rows, 'Sign-off by the supplier');
  rows.add(
    { from: 0, to: 1, role: 'label', value: 'name' },
    { from: 2, to: 3, role: 'input' },
    { from: 4, to: 5, role: 'label', value: 'date' },
    { from: 6, to: 7, role: 'input' },
  );
  rows.add(
    { from: 0, to: 1, role: 'label', value: 'review' },
    { from: 2, to: LAST, role: 'input', list: data.choices('review', SIGN_OFF), words: SIGN_OFF.join('; ') },
  );
  rows.add({ from: 0, to: 1, role: 'label', value: 'changes asked' }, { from: 2, to: LAST, role: 'input' });
}

function findings(rows: RowWriter, found: readonly HandoverFinding[]): void {
  rows.gap();
  heading(rows, 'What was converted');
  const live = new Map<string, number>();
  for (const { sheet, what, values = 0 } of found) if (what === 'live') live.set(sheet, (live.get(sheet) ?? 0) + values);
  for (const [sheet, count] of live) line(rows, `${sheet}: ${count} values live.`);
  const other = found.filter(({ what }) => what !== 'live');
  if (other.length === 0) return;
  rows.add(head(0, 1, 'sheet'), head(2, 2, 'cell'), head(3, 4, 'what'), head(5, LAST, 'why'));
  for (const { sheet, at, what, words } of other.slice(0, MOST_FINDINGS)) {
    rows.add(
      { from: 0, to: 1, role: 'text', value: sheet },
      { from: 2, to: 2, role: 'text', value: at },
      { from: 3, to: 4, role: 'text', value: what },
      { from: 5, to: LAST, role: 'text', value: cellText(words) },
    );
  }
  if (other.length > MOST_FINDINGS) line(rows, `… and ${other.length - MOST_FINDINGS} more`, 'note');
}

/** Names of resin families among the texts of a workbook. */
export const materialsIn = (texts: Iterable<string>): string[] => {
  const found = new Set<string>();
  for (const text of texts) if (MATERIAL_SYMBOLS.includes(text)) found.add(text);
  return [...found].sort();
};
