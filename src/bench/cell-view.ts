// Beside the sheet: what the selected cell holds. What it means is said beneath, by the pane.
import type { BenchWorkbook, Selected } from '../hosts/univer/bench-workbook';
import { samples } from '../hosts/univer/looks';
import { byId, element } from './dom';
import { rounded, tsv } from './tsv';

/** A text of more characters is set smaller. */
const longFrom = 16;

/** The sheet's own error values, in words. */
const errorWords: Record<string, string> = {
  '#NAME?': 'There is no function of that name, or a text without quotes.',
  '#SPILL!': 'The table has no room: a cell below or to the right is not empty.',
  '#DIV/0!': 'Division by zero, here or in a cell that this formula reads.',
  '#VALUE!': 'A value of the wrong kind, here or in a cell that this formula reads.',
  '#N/A': 'No value: not found, here or in a cell that this formula reads.',
  '#REF!': 'A cell that this formula reads is gone.',
  '#NUM!': 'A number that cannot be computed.',
  '#CALC!': 'This cannot be calculated.',
  '#CYCLE!': 'The formula reads its own cell.',
};

const meanings: Record<string, string> = {
  input: 'yours to change',
  result: 'computed',
  pass: 'meets the limit',
  review: 'to be reviewed',
  fail: 'does not meet the limit',
  'not checked': 'an input is missing',
};

function legend(): void {
  const entries = samples.map(({ word, ink, fill }) => {
    const sample = element('span', word);
    sample.style.color = ink;
    sample.style.background = fill;
    return element('li', sample, meanings[word] ?? '');
  });
  byId('legend')
    .querySelector('ul')
    ?.append(...entries);
}

/** Sets only what changes: a live region speaks at every set. */
function show(id: string, text: string): void {
  const target = byId(id);
  if (target.textContent !== text) target.textContent = text;
  target.hidden = text === '';
}

function showSelected({ sheetName, at, cell, range }: Selected): void {
  const where = `${sheetName} ${at}`;
  const formula = cell.formula ?? '';
  const value = cell.value === null ? 'blank' : rounded(cell.value);
  const message = cell.message ?? errorWords[value] ?? '';
  const origin = cell.spilledFrom === undefined ? '' : `Part of the table that starts in ${cell.spilledFrom}`;
  show('where', where);
  show('value', value);
  byId('value').classList.toggle('error', message !== '');
  byId('value').classList.toggle('blank', cell.value === null);
  byId('value').classList.toggle('long', value.length > longFrom);
  show('message', message);
  show('formula', formula);
  show('origin', origin);
  show('note', cell.note ?? '');
  show('copied', '');
  show('copy', range === at ? 'Copy value' : `Copy values of ${range}`);
  show('spoken', [where, value, message, formula, origin, cell.note ?? ''].filter(part => part !== '').join('. '));
}

export function cellView(workbook: BenchWorkbook): void {
  const refresh = () => {
    const selected = workbook.selected();
    if (selected !== null) showSelected(selected);
  };

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(tsv(workbook.selectedValues()));
      show('copied', 'Copied');
    } catch {
      show('copied', 'The browser did not allow it');
    }
  }

  legend();
  byId('copy').addEventListener('click', () => void copy());
  workbook.onChange(refresh);
  refresh();
}
