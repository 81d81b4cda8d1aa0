// Beside the sheet: the selected cell in full, and the functions that its formula calls.
import type { BenchWorkbook, Selected } from '../hosts/univer/bench-workbook';
import { samples } from '../hosts/univer/looks';
import { detail, signature, type SheetFunction } from '../hosts/univer/metadata';
import { byId, element } from './dom';
import { shown, tsv } from './tsv';

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

function callsIn(formula: string, functions: readonly SheetFunction[]): SheetFunction[] {
  const outsideTexts = formula.replaceAll(/"[^"]*"/g, '""').toUpperCase();
  return functions.filter(({ name }) => outsideTexts.includes(`${name}(`));
}

function callHelp(called: SheetFunction): HTMLElement {
  const terms = called.parameters.flatMap(parameter => [
    element('dt', parameter.name, ...(parameter.optional === true ? [element('small', ' optional')] : [])),
    element('dd', detail(parameter)),
  ]);
  return element(
    'section',
    element('h2', called.name),
    element('p', called.description),
    element('p', element('code', signature(called))),
    element('dl', ...terms),
  );
}

/** Sets only what changes: a live region speaks at every set. */
function show(id: string, text: string): void {
  const target = byId(id);
  if (target.textContent !== text) target.textContent = text;
  target.hidden = text === '';
}

function showSelected({ sheetName, at, cell, range }: Selected, functions: readonly SheetFunction[]): void {
  const where = `${sheetName} ${at}`;
  const formula = cell.formula ?? '';
  const value = cell.value === null ? 'blank' : shown(cell.value);
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
  byId('calls').replaceChildren(...callsIn(formula, functions).map(callHelp));
  show('spoken', [where, value, message, formula, origin, cell.note ?? ''].filter(part => part !== '').join('. '));
}

export function cellView(workbook: BenchWorkbook, functions: readonly SheetFunction[]): void {
  const refresh = () => {
    const selected = workbook.selected();
    if (selected !== null) showSelected(selected, functions);
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
