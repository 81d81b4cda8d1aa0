// The title block and the language of a hand-over, read from its cover.
import type { TitleBlock } from '../pages/title-block';
import { STATUSES } from '../words/status';
import { type Language, LANGUAGES } from '../words/language';
import { WORDS } from '../words/words';
import { formOf } from './forms';
import { type ComparedWorkbook, gridOf } from './seen';

/** Rows of the block, each with two fields: the label, and the value two columns behind it. */
const ROWS = 4;
const LABELS = [0, 4];
const BEHIND = 2;

interface Titled {
  readonly title: TitleBlock;
  readonly language?: Language;
}

export function titleIn({ sheets }: ComparedWorkbook): Titled {
  const grid = sheets.map(gridOf).find(one => formOf(one) === 'cover');
  const language = LANGUAGES.find(one => grid?.value(0, 0)?.toString().startsWith(`${WORDS[one].cover.title}:`));
  const fields = new Map<string, string>();
  if (grid !== undefined && language !== undefined) {
    const first = Array.from({ length: grid.rows }, (_, row) => row).find(row => grid.value(row, 0) === WORDS[language].cover.titleBlock);
    if (first !== undefined)
      for (let row = first + 1; row <= first + ROWS; row++)
        for (const column of LABELS) fields.set(String(grid.value(row, column)), String(grid.value(row, column + BEHIND) ?? ''));
  }
  const { cover } = WORDS[language ?? LANGUAGES[0]];
  const text = (label: string): string => fields.get(label) ?? '';
  return {
    title: {
      part: text(cover.part),
      number: text(cover.number),
      revision: text(cover.revision),
      date: text(cover.date),
      status: STATUSES.find(status => cover.statuses[status] === text(cover.status)) ?? STATUSES[0],
      madeBy: text(cover.madeBy),
      checkedBy: text(cover.checkedBy),
    },
    ...(language !== undefined && { language }),
  };
}
