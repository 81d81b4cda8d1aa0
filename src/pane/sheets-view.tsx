// Ready sheets for the user's workbook, and the way to take them out again.
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { demoWorkbook } from '../demo/demo';
import { GUIDES, type Guide } from '../demo/guides';
import type { SheetPlan } from '../sheet/plan';
import { useGoTo, usePane } from './pane-context';

/** Sheets of the demo that stand for themselves. */
const READY: readonly SheetPlan[] = demoWorkbook.sheets.filter(({ name }) => name !== 'Read me');

/** The sheets of the first one are among those above. */
const OTHERS = GUIDES.filter(({ workbook }) => workbook !== demoWorkbook);

const textAt = ({ cells }: SheetPlan, address: string): string => String(cells.find(({ at }) => at === address)?.value ?? '');

export function SheetsView(): JSX.Element {
  const { port, say, ask, work, isBusy, hostName } = usePane();
  const goTo = useGoTo();
  const [added, setAdded] = useState<readonly string[]>([]);
  if (port === undefined)
    return (
      <>
        <h2>Sheets</h2>
        <p>There is no workbook here. Open the pane in a workbook to insert sheets.</p>
      </>
    );

  const insert = (plan: SheetPlan) =>
    work(`Insert ${plan.name}`, async () => {
      const name = await port.add(plan);
      setAdded(earlier => [...earlier, name]);
      say(name === plan.name ? `${name} is in the workbook` : `${name} is in the workbook: the name ${plan.name} was taken`);
    });
  const insertGuide = ({ title, workbook }: Guide) =>
    work(`Insert ${title}`, async () => {
      for (const plan of workbook.sheets) {
        const name = await port.add(plan);
        setAdded(earlier => [...earlier, name]);
      }
      say(`${title} is in the workbook`);
    });
  const remove = async (name: string) => {
    if (
      !(await ask({
        words: `Remove the sheet ${name} with everything on it? Formulas elsewhere that read it will show #REF!.`,
        yes: 'Remove the sheet',
      }))
    )
      return;
    await work(`Remove ${name}`, async () => {
      if ((await port.sheetNames()).includes(name)) await port.remove(name);
      setAdded(earlier => earlier.filter(other => other !== name));
      say(`${name} is removed`);
    });
  };

  return (
    <>
      <h2>Sheets</h2>
      <p class="bw-quiet">
        Each comes with the values of an example: type your own over the blue cells. Nothing in {hostName} is overwritten; a name that is
        taken gets a number.
      </p>
      <ul class="bw-cards">
        {READY.map(plan => (
          <li key={plan.name}>
            <div>
              <h3>{plan.name}</h3>
              <p>{textAt(plan, 'A1')}</p>
            </div>
            <button type="button" disabled={isBusy} onClick={() => void insert(plan)} aria-label={`Insert ${plan.name}`}>
              Insert
            </button>
          </li>
        ))}
      </ul>
      <h3>Guides</h3>
      <p class="bw-quiet">Invented scenarios, worked through: the first choice fails, another passes, and why.</p>
      <ul class="bw-cards">
        {OTHERS.map(guide => (
          <li key={guide.name}>
            <div>
              <h4>{guide.title}</h4>
              <p>{guide.sentence}</p>
            </div>
            <button type="button" disabled={isBusy} onClick={() => void insertGuide(guide)} aria-label={`Insert ${guide.title}`}>
              Insert
            </button>
          </li>
        ))}
      </ul>
      {added.length > 0 && (
        <>
          <h3>Inserted from here</h3>
          <ul class="bw-cards">
            {added.map(name => (
              <li key={name}>
                <button type="button" class="bw-link" onClick={() => goTo({ sheetName: name, at: 'A1' })}>
                  {name}
                </button>
                <button type="button" disabled={isBusy} onClick={() => void remove(name)} aria-label={`Remove ${name}`}>
                  Remove
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
    </>
  );
}
