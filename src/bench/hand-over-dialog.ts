// Hand over…: shows what stays live, asks for the title block, saves the copy.
import type { HandoverFinding } from '../handover/read/finding';
import { type HandoverChoice, readChoice } from '../handover/pages/choice';
import { PAPERS, STATUSES, type TitleBlock } from '../handover/pages/title-block';
import { LANGUAGES } from '../handover/words/words';
import type { BenchWorkbook } from '../hosts/univer/bench-workbook';
import type { WorkbookPlan } from '../sheet/plan';
import { withProgress } from './progress-dialog';
import { byId, count, element, messageOf, whenClosed } from './dom';
import { download } from './download';
import { startJob, type CopySummary, type Running } from './file-jobs';

const kinds: readonly { readonly what: HandoverFinding['what']; readonly words: string }[] = [
  { what: 'value, not live', words: 'Goes along as a value' },
  { what: 'error', words: 'Cannot go along' },
  { what: 'not in every program', words: 'Formulas of yours that not every program knows' },
  { what: 'another add-in', words: 'Formulas of yours that call another add-in' },
  { what: 'changed', words: 'Changed for the copy' },
];

/** More lines than anyone reads. */
const maxLines = 200;

function found(findings: readonly HandoverFinding[]): HTMLElement[] {
  return kinds.flatMap(({ what, words }) => {
    const lines = findings.filter(finding => finding.what === what);
    if (lines.length === 0) return [];
    const items = lines.slice(0, maxLines).map(line => element('li', `${line.sheet} ${line.at}: ${line.words}`));
    if (lines.length > maxLines) items.push(element('li', `and ${lines.length - maxLines} more`));
    const list = element('ul', ...items);
    list.tabIndex = 0;
    return [element('details', element('summary', `${words}: ${lines.length}`), list)];
  });
}

/** Where the choice of a workbook is kept, by its name. */
const keptAt = (name: string): string => `hand-over choice of ${name}`;

interface TickBox {
  readonly name: string;
  readonly isChosen: boolean;
}

function listed(id: string, choices: readonly TickBox[]): void {
  const group = byId(id);
  group.querySelectorAll('label').forEach(label => label.remove());
  for (const { name, isChosen } of choices) {
    const box = element('input');
    box.type = 'checkbox';
    box.name = id;
    box.value = name;
    box.checked = isChosen;
    group.append(element('label', box, ` ${name}`));
  }
  group.hidden = choices.length === 0;
}

/** What is ticked where some are not; without a list the hand-over chooses. */
const ticked = (id: string): readonly string[] =>
  [...byId(id).querySelectorAll<HTMLInputElement>('input:checked')].map(({ value }) => value);

function show({ live, asValues, findings, choosable, pages, userSheets }: CopySummary, { sheets }: HandoverChoice): void {
  byId('hand-over-pages').textContent = `${count(pages, 'page')} of ours on paper; your sheets print as you set them up.`;
  listed(
    'hand-over-sheets',
    userSheets.map(name => ({ name, isChosen: sheets?.includes(name) ?? true })),
  );
  listed(
    'hand-over-variants',
    choosable.variants.map(({ label, isChosen }) => ({ name: label, isChosen })),
  );
  listed('hand-over-characteristics', choosable.characteristics);
  const calls = (what: HandoverFinding['what']) => findings.filter(finding => finding.what === what).length;
  byId('hand-over-live').replaceChildren(
    element('strong', count(calls('live'), 'call')),
    ` live: ${count(live, 'value')} that follow their inputs in any spreadsheet program.`,
  );
  byId('hand-over-values').replaceChildren(
    element('strong', count(calls('value, not live'), 'call')),
    ` as values: ${count(asValues, 'value')} that stay as they are now.`,
  );
  byId('hand-over-findings').replaceChildren(...found(findings));
}

/** Shows what is known of the copy while the title block is filled in. Returns how to stop. */
function summarise(contents: Promise<WorkbookPlan>, choice: HandoverChoice): () => void {
  const working = byId('hand-over-working');
  let isWanted = true;
  let running: Running<CopySummary> | undefined;

  async function run(): Promise<void> {
    const open = await contents;
    if (!isWanted) return;
    running = startJob('summary', { plan: open, choice });
    const summary = await running.done;
    if (summary !== undefined && isWanted) show(summary, choice);
  }

  for (const id of ['hand-over-pages', 'hand-over-live', 'hand-over-values', 'hand-over-findings']) byId(id).replaceChildren();
  working.hidden = false;
  run()
    .catch((thrown: unknown) => byId('hand-over-live').append(messageOf(thrown)))
    .finally(() => {
      working.hidden = true;
    });
  return () => {
    isWanted = false;
    running?.stop();
  };
}

function prefill(form: HTMLFormElement, part: string): void {
  const field = (name: string) => form.elements.namedItem(name) as HTMLInputElement;
  field('part').value ||= part;
  const now = new Date();
  field('date').value ||= [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(number => String(number).padStart(2, '0')).join('-');
}

function titleIn(form: HTMLFormElement): TitleBlock {
  const data = new FormData(form);
  const text = (name: string) => String(data.get(name) ?? '').trim();
  return {
    part: text('part'),
    number: text('number'),
    revision: text('revision'),
    date: text('date'),
    status: STATUSES.find(status => status === text('status')) ?? STATUSES[0],
    madeBy: text('madeBy'),
    checkedBy: text('checkedBy'),
  };
}

const sidesIn = (form: HTMLFormElement): Pick<HandoverChoice, 'paper' | 'language'> => {
  const data = new FormData(form);
  return {
    paper: PAPERS.find(paper => paper === data.get('paper')) ?? PAPERS[0],
    language: LANGUAGES.find(language => language === data.get('language')) ?? LANGUAGES[0],
  };
};

export function handOverDialog(workbook: BenchWorkbook, say: (text: string) => void): () => Promise<void> {
  const dialog = byId<HTMLDialogElement>('hand-over-dialog');
  const form = byId<HTMLFormElement>('hand-over-form');
  const choices = { status: STATUSES, paper: PAPERS, language: LANGUAGES };
  for (const [name, words] of Object.entries(choices))
    (form.elements.namedItem(name) as HTMLSelectElement).append(...words.map(word => element('option', word)));

  byId('hand-over-no').addEventListener('click', () => dialog.close());

  function asked(): Promise<boolean> {
    dialog.returnValue = '';
    dialog.showModal();
    return new Promise(resolve => whenClosed(dialog, returnValue => resolve(returnValue === 'save')));
  }

  return async () => {
    const contents = workbook.contents();
    const name = workbook.name();
    const remembered = readChoice(localStorage.getItem(keptAt(name)) ?? undefined);
    for (const side of ['paper', 'language'] as const)
      if (remembered !== undefined) (form.elements.namedItem(side) as HTMLSelectElement).value = remembered[side];
    let choice: HandoverChoice = { ...remembered, ...sidesIn(form) };
    let stopSummary = summarise(contents, choice);
    // each choice is seen at once, with its pages
    const chosen = ({ target }: Event): void => {
      const { name: field } = target as HTMLInputElement;
      const key = /^hand-over-(sheets|variants|characteristics)$/.exec(field)?.[1];
      if (key === undefined && field !== 'paper' && field !== 'language') return;
      choice = { ...choice, ...sidesIn(form), ...(key !== undefined && { [key]: ticked(field) }) };
      if (key === 'sheets' || key === 'variants') {
        const { characteristics: _, ...rest } = choice;
        choice = rest;
      }
      stopSummary();
      stopSummary = summarise(contents, choice);
    };
    form.addEventListener('change', chosen);
    prefill(form, name);
    const isWanted = await asked();
    form.removeEventListener('change', chosen);
    stopSummary();
    if (!isWanted) return;
    localStorage.setItem(keptAt(name), JSON.stringify(choice));
    const title = titleIn(form);
    const copy = await withProgress('Writing the copy …', startJob('handOver', { plan: await contents, title, choice }));
    if (copy === undefined) return;
    const file = download(copy.bytes, `${title.part}-${title.revision}`);
    say(`${file} is saved: ${count(copy.live, 'value')} live, ${copy.asValues} as values`);
  };
}
