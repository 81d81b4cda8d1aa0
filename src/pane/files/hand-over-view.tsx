// Hand over: what would go along, chosen and counted before it is written.
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { download } from '../../files/download';
import { type Copy, type CopySummary, startJob } from '../../files/jobs';
import type { HandoverFinding } from '../../handover/read/finding';
import { CHOSEN_BY_ITSELF, type HandoverChoice } from '../../handover/pages/choice';
import type { CarriedKind } from '../../package/carried';
import type { NamedFile, WorkbookFiles } from '../../sheet/workbook-files';
import { type Trouble, troubleOf } from '../../files/trouble';
import { messageOf, usePane } from '../pane-context';
import { useLater } from '../lazy-view';
import { Choices, TitleFields, untitled } from './hand-over-fields';
import { Findings } from './hand-over-parts';

interface LookedAt {
  readonly summary: CopySummary | undefined;
  readonly fault: Trouble | undefined;
  readonly isWorking: boolean;
}

/** What would go along of the file; worked out anew for each choice. */
function useSummary(file: NamedFile | undefined, choice: HandoverChoice | undefined, along: readonly CarriedKind[]): LookedAt {
  const language = useLater().compare.toldIn;
  const [last, setLast] = useState<Pick<LookedAt, 'summary' | 'fault'> & { readonly of: readonly unknown[] }>({
    summary: undefined,
    fault: undefined,
    of: [],
  });
  const asked = [file, choice, along];
  // known as soon as something else is asked, or a tick would be taken back until the work begins
  const isWorking = file !== undefined && asked.some((one, i) => one !== last.of[i]);
  useEffect(() => {
    if (file === undefined) return undefined;
    const job = startJob('summary', { file, along, language, ...(choice && { choice }) });
    job.done.then(
      summary => summary && setLast({ summary, fault: undefined, of: asked }),
      (thrown: unknown) => setLast(({ summary }) => ({ summary, fault: troubleOf(thrown), of: asked })),
    );
    return job.stop;
  }, asked);
  return { summary: last.summary, fault: isWorking ? undefined : last.fault, isWorking };
}

function HandOver({ files }: { readonly files: WorkbookFiles }): JSX.Element {
  const { say, wrote, work, isBusy } = usePane();
  const { handOver: W, compare } = useLater();
  const language = compare.toldIn;
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
    const name = [title.part, title.revision].filter(text => text !== '').join('-');
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
      const job = startJob('handOver', { file: now, title, choice: chosen, along, language, mark });
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
          <button type="button" onClick={() => setChoice({ ...CHOSEN_BY_ITSELF, language })}>
            {W.back}
          </button>
        </>
      )}
      {summary !== undefined && (
        <form class="bw-form bw-hand-over" onSubmit={event => void write(event, summary)}>
          <TitleFields title={title} onTitle={setTitle} />
          <Choices
            summary={summary}
            choice={choice ?? summary.choice}
            isWorking={isWorking}
            onChoice={setChoice}
            along={along}
            onAlong={setAlong}
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

function Counts({ summary: { live, asValues, findings, pages } }: { readonly summary: CopySummary }): JSX.Element {
  const W = useLater().handOver;
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
  const W = useLater().handOver;
  return (
    <>
      <h2>{W.heading}</h2>
      <p class="bw-quiet">{files === undefined ? W.noWorkbook : W.about}</p>
      {files !== undefined && <HandOver files={files} />}
    </>
  );
}
