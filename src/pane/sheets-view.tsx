// Ready sheets for the user's workbook, and the way to take them out again.
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { demoWorkbook } from '../demo/demo';
import { GUIDES, type Guide } from '../demo/guides';
import type { SheetPlan } from '../sheet/plan';
import { useGoTo, usePane, useWords } from './pane-context';

/** Sheets of the demo that stand for themselves. */
const READY: readonly SheetPlan[] = demoWorkbook.sheets.filter(({ name }) => name !== 'Read me');

/** The sheets of the first one are among those above. */
const OTHERS = GUIDES.filter(({ workbook }) => workbook !== demoWorkbook);

const textAt = ({ cells }: SheetPlan, address: string): string => String(cells.find(({ at }) => at === address)?.value ?? '');

export function SheetsView(): JSX.Element {
  const { port, say, ask, work, isBusy, host } = usePane();
  const { sheets: W, frame } = useWords();
  const goTo = useGoTo();
  const [added, setAdded] = useState<readonly string[]>([]);
  if (port === undefined)
    return (
      <>
        <h2>{W.heading}</h2>
        <p>{W.noWorkbook}</p>
      </>
    );

  const insert = (plan: SheetPlan) =>
    work(W.insertOf(plan.name), async () => {
      const name = await port.add(plan);
      setAdded(earlier => [...earlier, name]);
      say(name === plan.name ? W.isIn(name) : W.isRenamed(name, plan.name));
    });
  const insertGuide = (guide: Guide) => {
    const { title } = W.guide(guide);
    return work(W.insertOf(title), async () => {
      for (const plan of guide.workbook.sheets) {
        const name = await port.add(plan);
        setAdded(earlier => [...earlier, name]);
      }
      say(W.isIn(title));
    });
  };
  const remove = async (name: string) => {
    if (
      !(await ask({
        words: W.removeAsked(name),
        yes: W.removeYes,
      }))
    )
      return;
    await work(W.removeOf(name), async () => {
      if ((await port.sheetNames()).includes(name)) await port.remove(name);
      setAdded(earlier => earlier.filter(other => other !== name));
      say(W.removed(name));
    });
  };

  return (
    <>
      <h2>{W.heading}</h2>
      <p class="bw-quiet">{W.about(frame.hosts[host])}</p>
      <ul class="bw-cards">
        {READY.map(plan => (
          <li key={plan.name}>
            <div>
              <h3>{plan.name}</h3>
              <p>{W.ready(plan.name, textAt(plan, 'A1'))}</p>
            </div>
            <button type="button" disabled={isBusy} onClick={() => void insert(plan)} aria-label={W.insertOf(plan.name)}>
              {W.insert}
            </button>
          </li>
        ))}
      </ul>
      <h3>{W.guides}</h3>
      <p class="bw-quiet">{W.guidesWords}</p>
      <ul class="bw-cards">
        {OTHERS.map(guide => (
          <li key={guide.name}>
            <div>
              <h4>{W.guide(guide).title}</h4>
              <p>{W.guide(guide).sentence}</p>
            </div>
            <button type="button" disabled={isBusy} onClick={() => void insertGuide(guide)} aria-label={W.insertOf(W.guide(guide).title)}>
              {W.insert}
            </button>
          </li>
        ))}
      </ul>
      {added.length > 0 && (
        <>
          <h3>{W.inserted}</h3>
          <ul class="bw-cards">
            {added.map(name => (
              <li key={name}>
                <button type="button" class="bw-link" onClick={() => goTo({ sheetName: name, at: 'A1' })}>
                  {name}
                </button>
                <button type="button" disabled={isBusy} onClick={() => void remove(name)} aria-label={W.removeOf(name)}>
                  {W.remove}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
