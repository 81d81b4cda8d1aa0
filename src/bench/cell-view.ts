// Beside the sheet: what the selected cell holds. What it means is said beneath, by the pane.
import type { BenchWorkbook, Selected } from '../hosts/univer/bench-workbook';
import { samples } from '../hosts/univer/looks';
import type { Words } from '../words/english';
import { byId, element } from './dom';
import { rounded, tsv } from './tsv';

/** A text of more characters is set smaller. */
const longFrom = 16;

function legend({ meanings }: Words['bench']): void {
  const of: Readonly<Record<string, string>> = meanings;
  const entries = samples.map(({ word, ink, fill }) => {
    const sample = element('span', word);
    sample.style.color = ink;
    sample.style.background = fill;
    return element('li', sample, of[word] ?? '');
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

function showSelected({ sheetName, at, cell, range }: Selected, W: Words['bench']): void {
  const errorWords: Readonly<Record<string, string>> = W.errors;
  const where = `${sheetName} ${at}`;
  const formula = cell.formula ?? '';
  const value = cell.value === null ? W.blank : rounded(cell.value);
  const message = cell.message ?? errorWords[value] ?? '';
  const origin = cell.spilledFrom === undefined ? '' : W.partOf(cell.spilledFrom);
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
  show('copy', range === at ? W.copyValue : W.copyValuesOf(range));
  show('spoken', [where, value, message, formula, origin, cell.note ?? ''].filter(part => part !== '').join('. '));
}

export function cellView(workbook: BenchWorkbook, W: Words['bench']): void {
  const refresh = () => {
    const selected = workbook.selected();
    if (selected !== null) showSelected(selected, W);
  };

  async function copy(): Promise<void> {
    try {
      await navigator.clipboard.writeText(tsv(workbook.selectedValues()));
      show('copied', W.copied);
    } catch {
      show('copied', W.notCopied);
    }
  }

  legend(W);
  byId('copy').addEventListener('click', () => void copy());
  workbook.onChange(refresh);
  refresh();
}
