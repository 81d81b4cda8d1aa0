// Hand over: what would go along, chosen and counted before it is written.
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { download } from '../../files/download';
import { type Copy, type CopySummary, startJob } from '../../files/jobs';
import type { HandoverFinding } from '../../handover/read/finding';
import { CHOSEN_BY_ITSELF, type HandoverChoice } from '../../handover/pages/choice';
import { PAPERS, STATUSES, type TitleBlock } from '../../handover/pages/title-block';
import { LANGUAGES } from '../../handover/words/words';
import type { CarriedKind } from '../../package/carried';
import type { NamedFile, WorkbookFiles } from '../../sheet/workbook-files';
import { messageOf, usePane } from '../pane-context';
import { Carried, Findings, Ticks } from './hand-over-parts';
import { HAND_OVER_WORDS as W } from './words';

const TEXTS = [
  ['number', 40],
  ['revision', 10],
  ['madeBy', 60],
  ['checkedBy', 60],
] as const;

function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map(number => String(number).padStart(2, '0')).join('-');
}

const untitled = (): TitleBlock => ({ part: '', number: '', revision: 'A', date: today(), status: STATUSES[0], madeBy: '', checkedBy: '' });

function Field({ name, children }: { readonly name: string; readonly children: ComponentChildren }): JSX.Element {
  return (
    <label class="bw-field">
      {name} {children}
    </label>
  );
}

interface ChoiceOfProps<T extends string> {
  readonly name: string;
  readonly value: T;
  readonly of: readonly T[];
  readonly onChoose: (value: T) => void;
}

function ChoiceOf<T extends string>({ name, value, of, onChoose }: ChoiceOfProps<T>): JSX.Element {
  return (
    <Field name={name}>
      <select value={value} onChange={event => onChoose(of[event.currentTarget.selectedIndex] ?? value)}>
        {of.map(one => (
          <option key={one}>{one}</option>
        ))}
      </select>
    </Field>
  );
}

function TitleFields({ title, onTitle }: { readonly title: TitleBlock; readonly onTitle: (title: TitleBlock) => void }): JSX.Element {
  const set = (name: keyof TitleBlock) => (event: JSX.TargetedEvent<HTMLInputElement>) =>
    onTitle({ ...title, [name]: event.currentTarget.value });
  return (
    <fieldset>
      <legend>{W.titleBlock}</legend>
      <Field name={W.part}>
        <input type="text" required maxLength={80} autocomplete="off" value={title.part} onInput={set('part')} />
      </Field>
      {TEXTS.map(([name, longest]) => (
        <Field key={name} name={W[name]}>
          <input type="text" maxLength={longest} autocomplete="off" value={title[name]} onInput={set(name)} />
        </Field>
      ))}
      <Field name={W.date}>
        <input type="date" value={title.date} onInput={set('date')} />
      </Field>
      <ChoiceOf name={W.status} value={title.status} of={STATUSES} onChoose={status => onTitle({ ...title, status })} />
    </fieldset>
  );
}

interface Looked {
  readonly summary: CopySummary | undefined;
  readonly fault: string | undefined;
  readonly isWorking: boolean;
}

/** What would go along of the file; worked out anew for each choice. */
function useSummary(file: NamedFile | undefined, choice: HandoverChoice | undefined, along: readonly CarriedKind[]): Looked {
  const [looked, setLooked] = useState<Looked>({ summary: undefined, fault: undefined, isWorking: false });
  useEffect(() => {
    if (file === undefined) return undefined;
    setLooked(({ summary }) => ({ summary, fault: undefined, isWorking: true }));
    const job = startJob('summary', { file, along, ...(choice && { choice }) });
    job.done.then(
      summary => summary && setLooked({ summary, fault: undefined, isWorking: false }),
      (thrown: unknown) => setLooked(({ summary }) => ({ summary, fault: messageOf(thrown), isWorking: false })),
    );
    return job.stop;
  }, [file, choice, along]);
  return looked;
}

function HandOver({ files }: { readonly files: WorkbookFiles }): JSX.Element {
  const { say, wrote, work, isBusy } = usePane();
  const [file, setFile] = useState<NamedFile>();
  const [title, setTitle] = useState(untitled);
  const [choice, setChoice] = useState<HandoverChoice>();
  const [along, setAlong] = useState<readonly CarriedKind[]>([]);
  const [isKept, setKept] = useState(true);
  const { summary, fault, isWorking } = useSummary(file, choice, along);

  const look = () =>
    work(W.look, async () => {
      const read = await files.read();
      setFile(read);
      setTitle(earlier => (earlier.part === '' ? { ...earlier, part: read.name.replace(/\.xls[xm]$/i, '') } : earlier));
    });

  async function deliver({ bytes, live, asValues, ending }: Copy): Promise<string> {
    const name = `${title.part}-${title.revision}`;
    let why = '';
    if (files.open !== undefined && ending === '.xlsx')
      try {
        await files.open(bytes);
        return W.opened(`${name}${ending}`, live, asValues);
      } catch (thrown) {
        why = W.notOpened(messageOf(thrown));
      }
    return why + W.saved(download(bytes, name, ending), live, asValues);
  }

  const write = async (event: Event, { choice: chosen, mark }: CopySummary) => {
    event.preventDefault();
    await work(W.write, async (_, canStop) => {
      const now = await files.read();
      const job = startJob('handOver', { file: now, title, choice: chosen, along, mark });
      canStop(job.stop);
      const done = await job.done;
      if (done === undefined) return say(W.stopped);
      if (done.copy === undefined) {
        setFile(now);
        return say(W.changed);
      }
      const words = await deliver(done.copy);
      try {
        wrote(words, [], isKept ? await files.keepName(done.copy.remembers) : undefined);
      } catch (thrown) {
        say(words + W.notKept(messageOf(thrown)));
      }
    });
  };

  return (
    <>
      <div class="bw-actions">
        <button type="button" class={file === undefined ? 'bw-strong' : ''} disabled={isBusy} onClick={() => void look()}>
          {file === undefined ? W.look : W.lookAgain}
        </button>
      </div>
      {isWorking && (
        <label>
          {W.working} <progress />
        </label>
      )}
      {fault !== undefined && (
        <>
          <p class="bw-fault" role="alert">
            {W.failed(fault)}
          </p>
          <button type="button" onClick={() => setChoice(CHOSEN_BY_ITSELF)}>
            {W.back}
          </button>
        </>
      )}
      {summary !== undefined && (
        <form class="bw-form bw-hand-over" onSubmit={event => void write(event, summary)}>
          <TitleFields title={title} onTitle={setTitle} />
          <Choices
            summary={summary}
            along={along}
            onAlong={setAlong}
            onChoice={changed => setChoice({ ...summary.choice, ...changed })}
            onSource={changed => {
              // other sheets and variants have other characteristics
              const { characteristics: _, ...rest } = summary.choice;
              setChoice({ ...rest, ...changed });
            }}
          />
          <section class="bw-answer" aria-label={W.willWrite}>
            <h3>{W.willWrite}</h3>
            <Counts summary={summary} />
          </section>
          <label>
            <input type="checkbox" checked={isKept} onChange={event => setKept(event.currentTarget.checked)} /> {W.remember}
          </label>
          <div class="bw-actions">
            <button type="submit" class="bw-strong" disabled={isBusy || isWorking || fault !== undefined}>
              {W.write}
            </button>
          </div>
        </form>
      )}
    </>
  );
}

interface ChoicesProps {
  readonly summary: CopySummary;
  readonly along: readonly CarriedKind[];
  readonly onAlong: (along: readonly CarriedKind[]) => void;
  readonly onChoice: (changed: Partial<HandoverChoice>) => void;
  readonly onSource: (changed: Partial<HandoverChoice>) => void;
}

function Choices({ summary, along, onAlong, onChoice, onSource }: ChoicesProps): JSX.Element {
  const { choice, choosable, userSheets, carried } = summary;
  return (
    <>
      <fieldset>
        <legend>{W.pagesOf}</legend>
        <ChoiceOf name={W.paper} value={choice.paper} of={PAPERS} onChoose={paper => onChoice({ paper })} />
        <ChoiceOf name={W.language} value={choice.language} of={LANGUAGES} onChoose={language => onChoice({ language })} />
      </fieldset>
      <Ticks
        legend={W.sheets}
        of={userSheets.map(({ name, goesAlong }) => ({ name, isTicked: goesAlong }))}
        onTicked={sheets => onSource({ sheets })}
      />
      <Ticks
        legend={W.variants}
        of={choosable.variants.map(({ label, state, isChosen }) => ({ name: label, isTicked: isChosen, state }))}
        onTicked={variants => onSource({ variants })}
      />
      <Ticks
        legend={W.characteristics}
        of={choosable.characteristics.map(({ name, isChosen }) => ({ name, isTicked: isChosen }))}
        onTicked={characteristics => onChoice({ characteristics })}
      />
      <Carried carried={carried} along={along} onAlong={onAlong} />
    </>
  );
}

function Counts({ summary: { live, asValues, findings, pages } }: { readonly summary: CopySummary }): JSX.Element {
  const calls = (what: HandoverFinding['what']) => findings.filter(finding => finding.what === what).length;
  return (
    <>
      <p role="status">{W.pages(pages)}</p>
      <p>{W.live(calls('live'), live)}</p>
      <p>{W.asValues(calls('value, not live'), asValues)}</p>
      <Findings findings={findings} />
    </>
  );
}

export function HandOverView(): JSX.Element {
  const { files } = usePane();
  return (
    <>
      <h2>{W.heading}</h2>
      <p class="bw-quiet">{files === undefined ? W.noWorkbook : W.about}</p>
      {files !== undefined && <HandOver files={files} />}
    </>
  );
}
