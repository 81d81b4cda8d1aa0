// The selected joint in full, and what is to be mended in the workbook.
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Selection, SheetPort } from '../sheet/port';
import { checkWorkbook, type WorkbookCheck } from './check-workbook';
import { Findings } from './findings';
import { JointHeading, jointName } from './joint-heading';
import { Moves, YieldBeside } from './study-parts';
import { NoJoint } from './no-joint';
import type { ProblemKind, Problem } from './problems';
import { placeName, useGoTo, usePane, type ProgressStep } from './pane-context';
import { StateWord } from './state-word';

function SelectedJoint(): JSX.Element {
  const { found } = usePane();
  if (found?.is !== 'joint') return <NoJoint found={found} what="every rule of its joint" />;
  const { joint } = found;
  const passed = joint.variant.findings().filter(({ state }) => state === 'pass').length;
  return (
    <>
      <JointHeading joint={joint} />
      <Findings joint={joint} states={['fail', 'not checked', 'review']} />
      {passed > 0 && (
        <details class="bw-part">
          <summary>{passed} rules pass</summary>
          <Findings joint={joint} states={['pass']} />
        </details>
      )}
      <Moves joint={joint} />
      <YieldBeside joint={joint} />
    </>
  );
}

/** A problem that a new entry may mend. */
type Mendable = Required<Pick<Problem, 'place' | 'repair'>>;

const HEADINGS: readonly (readonly [kind: ProblemKind, heading: string, words: string])[] = [
  ['broken', 'Cells that do not work', 'Entered again they mostly do: a workbook opened before the functions were there keeps such cells.'],
  ['refused', 'Answers that are refused', ''],
  ['state', 'Checks to review', ''],
  ['blank', 'Blanks that count as zero', 'Type the zero, or the value that was forgotten.'],
  ['units', 'Lengths in several units in one list', 'Each is read in its own unit; a number alone is mm.'],
  ['constant', 'Numbers typed into a formula', 'In a cell of its own a number is seen, and changed in one place.'],
];

function Place({ name, place }: { readonly name: string; readonly place: Selection }): JSX.Element {
  const goTo = useGoTo();
  return (
    <button type="button" class="bw-link" title={placeName(place)} onClick={() => goTo(place)}>
      {name}
    </button>
  );
}

function Problems({ problems }: { readonly problems: readonly Problem[] }): JSX.Element {
  return (
    <>
      {HEADINGS.map(([kind, heading, words]) => {
        const own = problems.filter(problem => problem.kind === kind);
        if (own.length === 0) return null;
        return (
          <details key={kind} class="bw-part" open={kind === 'broken' || kind === 'refused'}>
            <summary>
              {heading} <small>{own.length}</small>
            </summary>
            {words !== '' && <p class="bw-quiet">{words}</p>}
            <ul class="bw-findings">
              {own.map(({ place, words: about }, i) => (
                <li key={i}>
                  <Place name={placeName(place)} place={place} /> <span>{about}</span>
                </li>
              ))}
            </ul>
          </details>
        );
      })}
    </>
  );
}

function JointStates({ joints }: { readonly joints: WorkbookCheck['joints'] }): JSX.Element | null {
  const open = joints.filter(({ state }) => state !== 'pass');
  if (joints.length === 0) return null;
  return (
    <details class="bw-part" open>
      <summary>
        Joints{' '}
        <small>
          {joints.length - open.length} of {joints.length} pass
        </small>
      </summary>
      <ul class="bw-findings">
        {open.map(({ joint, state, reason }, i) => (
          <li key={i}>
            <StateWord state={state} />
            {joint.place === undefined ? (
              <b>{jointName(joint)}</b>
            ) : (
              <>
                <Place name={jointName(joint)} place={joint.place} /> <small>{placeName(joint.place)}</small>
              </>
            )}
            <span>{reason}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}

function WholeWorkbook({ port }: { readonly port: SheetPort }): JSX.Element {
  const { say, ask, work, isBusy } = usePane();
  const [checked, setChecked] = useState<WorkbookCheck | null>(null);
  const read = async (step: ProgressStep) => setChecked(await checkWorkbook(port, step));
  const check = () => work('Reading the sheets', read);
  const repair = async (mendable: readonly Mendable[]) => {
    if (!(await ask({ words: `Enter ${mendable.length} formulas again? Only their own cells are written.`, yes: 'Repair' }))) return;
    await work('Entering formulas again', async step => {
      let done = 0;
      for (const { place, repair: formula } of mendable) {
        if (!step(done, mendable.length)) break;
        await port.write(place.sheetName, place.at, formula);
        done++;
      }
      await read(step);
      say(done === mendable.length ? `${done} cells were entered again` : `Stopped after ${done} of ${mendable.length} cells`);
    });
  };
  useEffect(() => void check(), [port]);

  const problems = checked?.problems ?? [];
  const mendable = problems.flatMap(({ place, repair: formula }) => (formula === undefined ? [] : [{ place, repair: formula }]));
  return (
    <section class="bw-workbook" aria-labelledby="bw-workbook">
      <h2 id="bw-workbook">The workbook</h2>
      <div class="bw-actions">
        {mendable.length > 0 && (
          <button type="button" class="bw-strong" disabled={isBusy} onClick={() => void repair(mendable)}>
            Repair {mendable.length} {mendable.length === 1 ? 'cell' : 'cells'}
          </button>
        )}
        <button type="button" disabled={isBusy} onClick={() => void check()}>
          Check again
        </button>
      </div>
      {checked !== null && (
        <>
          <JointStates joints={checked.joints} />
          <Problems problems={problems} />
          {problems.length === 0 && <p>No formula calls for attention.</p>}
          {checked.isPartial && <p class="bw-quiet">Stopped: not all sheets were read.</p>}
        </>
      )}
    </section>
  );
}

export function CheckView(): JSX.Element {
  const { port } = usePane();
  return (
    <>
      <SelectedJoint />
      {port !== undefined && <WholeWorkbook port={port} />}
    </>
  );
}
