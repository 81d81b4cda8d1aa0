// What came back: its changes by group, and the changed inputs that the own workbook takes over, each ticked.
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type Returned, startJob } from '../../files/jobs';
import type { Offer } from '../../handover/write/accepted';
import type { NamedFile, WorkbookFiles } from '../../sheet/workbook-files';
import type { CellEntry, SheetPort } from '../../sheet/port';
import { placeName, useGoTo, usePane } from '../pane-context';
import { useLater } from '../lazy-view';

async function named(file: File): Promise<NamedFile> {
  return { name: file.name, bytes: new Uint8Array(await file.arrayBuffer()) };
}

const placeOf = ({ place: { sheet, at } }: Offer): string => placeName({ sheetName: sheet, at });

const entryOf = ({ place: { sheet, at }, input: { value } }: Offer): CellEntry => ({
  sheetName: sheet,
  at,
  content: value ?? '',
  ...(typeof value === 'string' && value !== '' && { isText: true }),
});

interface ChooserProps {
  readonly name: string;
  readonly words?: string;
  readonly onChoose: (file: File | undefined) => void;
}

function Chooser({ name, words, onChoose }: ChooserProps): JSX.Element {
  return (
    <label>
      {name}{' '}
      <input type="file" accept=".xlsx,.xlsm" aria-label={name} onChange={({ currentTarget }) => onChoose(currentTarget.files?.[0])} />
      {words !== undefined && <small>{words}</small>}
    </label>
  );
}

function Lists({ lists }: Pick<Returned, 'lists'>): JSX.Element {
  const W = useLater().compare;
  const filled = lists.filter(({ lines }) => lines.length > 0);
  if (filled.length === 0) return <p>{W.nothing}</p>;
  return (
    <>
      {filled.map(({ title, heading, lines }) => (
        <details key={title} class="bw-part bw-titled" open>
          <summary>
            {heading} <small>{lines.length}</small>
          </summary>
          <ul tabIndex={0}>
            {lines.map((line, i) => (
              <li key={i}>{line}</li>
            ))}
          </ul>
        </details>
      ))}
    </>
  );
}

interface OffersProps {
  readonly offers: readonly Offer[];
  readonly ticked: ReadonlySet<string>;
  readonly onTick: (place: string, isTicked: boolean) => void;
}

function Offered({ offers, ticked, onTick }: OffersProps): JSX.Element {
  const goTo = useGoTo();
  const W = useLater().compare;
  return (
    <>
      <p class="bw-quiet">{W.offersWords}</p>
      <ul class="bw-ticks">
        {offers.map(offer => {
          const place = placeOf(offer);
          return (
            <li key={place}>
              <label>
                <input type="checkbox" checked={ticked.has(place)} onChange={event => onTick(place, event.currentTarget.checked)} />{' '}
                {offer.words}
              </label>
              <button type="button" class="bw-link" onClick={() => goTo({ sheetName: offer.place.sheet, at: offer.place.at })}>
                {place}
              </button>
            </li>
          );
        })}
      </ul>
    </>
  );
}

function Compare({ files, port }: { readonly files: WorkbookFiles; readonly port: SheetPort }): JSX.Element {
  const { say, wrote, work, isBusy } = usePane();
  const W = useLater().compare;
  const [sent, setSent] = useState<File>();
  const [back, setBack] = useState<File>();
  const [found, setFound] = useState<Returned>();
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());

  const compare = (event: Event) => {
    event.preventDefault();
    if (back === undefined) return undefined;
    return work(W.compare, async (_, canStop) => {
      setFound(undefined);
      setTicked(new Set());
      const [own, returned] = [await files.read(), await named(back)];
      const job = startJob('compare', { own, returned, language: W.toldIn, ...(sent && { sent: await named(sent) }) });
      canStop(job.stop);
      const done = await job.done;
      if (done === undefined) return say(W.stopped);
      setFound(done);
    });
  };

  const chosen = (found?.offers ?? []).filter(offer => ticked.has(placeOf(offer)));
  const write = (all: Returned) =>
    work(W.write(chosen.length), async (_, canStop) => {
      // the workbook may have changed since it was compared: what is asked must still be what was ticked
      const inputs = chosen.map(({ input }) => input);
      const job = startJob('offers', { own: await files.read(), sent: all.sent, inputs, language: W.toldIn });
      canStop(job.stop);
      const now = await job.done;
      if (now === undefined) return say(W.stopped);
      const same = chosen.every(({ words }) => now.offers.some(offer => offer.words === words));
      const rest = all.offers.filter(offer => !chosen.includes(offer));
      setTicked(new Set());
      if (!same) {
        setFound({ ...all, offers: [...now.offers, ...rest], refused: [...all.refused, ...now.refused] });
        return say(W.changed);
      }
      const before = await port.write(chosen.map(entryOf));
      setFound({ ...all, offers: rest });
      wrote(W.written(chosen.length), before);
    });

  return (
    <>
      <form class="bw-form" onSubmit={event => void compare(event)}>
        <Chooser name={W.returned} onChoose={setBack} />
        <Chooser name={W.sent} words={W.noSent} onChoose={setSent} />
        <div class="bw-actions">
          <button type="submit" class="bw-strong" disabled={isBusy || back === undefined}>
            {W.compare}
          </button>
        </div>
      </form>
      {found !== undefined && (
        <section class="bw-answer" aria-label={W.heading}>
          {found.offers.length > 0 && (
            <>
              <h3>{W.offers}</h3>
              <Offered
                offers={found.offers}
                ticked={ticked}
                onTick={(place, isTicked) =>
                  setTicked(earlier => new Set([...[...earlier].filter(other => other !== place), ...(isTicked ? [place] : [])]))
                }
              />
              <div class="bw-actions">
                <button type="button" class="bw-strong" disabled={isBusy || chosen.length === 0} onClick={() => void write(found)}>
                  {W.write(chosen.length)}
                </button>
              </div>
            </>
          )}
          {found.refused.length > 0 && (
            <details class="bw-part">
              <summary>
                {W.refused} <small>{found.refused.length}</small>
              </summary>
              <ul>
                {found.refused.map(line => (
                  <li key={line}>{line}</li>
                ))}
              </ul>
            </details>
          )}
          <Lists lists={found.lists} />
        </section>
      )}
    </>
  );
}

export function CompareView(): JSX.Element {
  const { files, port } = usePane();
  const W = useLater().compare;
  return (
    <>
      <h2>{W.heading}</h2>
      {files === undefined || port === undefined ? (
        <p>{W.noWorkbook}</p>
      ) : (
        <>
          <p class="bw-quiet">{W.about}</p>
          <Compare files={files} port={port} />
        </>
      )}
    </>
  );
}
