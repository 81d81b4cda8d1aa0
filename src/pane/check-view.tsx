// The selected joint in full, and what is to be mended in the workbook.
import type { State } from '../core/check/check';
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { CellEntry, Selection, SheetPort } from '../sheet/port';
import type { Variant } from '../joint/variant';
import { checkWorkbook, type WorkbookCheck } from './check-workbook';
import { Findings, ReasonInGerman } from './findings';
import { firstOf, spills } from './in-table';
import { JointHeading, jointName } from './joint-heading';
import { Moves, YieldBeside } from './study-parts';
import { NoJoint } from './no-joint';
import { PROBLEM_KINDS, type Problem } from './problems';
import { messageOf, placeName, useGoTo, usePane, useWords, type ProgressStep } from './pane-context';
import { StateWord } from './state-word';

function SelectedJoint(): JSX.Element {
  const { found } = usePane();
  const W = useWords().check;
  if (found?.is !== 'joint') return <NoJoint found={found} what="everyRule" />;
  const { joint } = found;
  const passed = joint.variant.findings().filter(({ state }) => state === 'pass').length;
  return (
    <>
      <JointHeading joint={joint} />
      <Findings joint={joint} states={['fail', 'not checked', 'review']} />
      {passed > 0 && (
        <details class="bw-part">
          <summary>{W.passed(passed)}</summary>
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

function Place({ name, place }: { readonly name: string; readonly place: Selection }): JSX.Element {
  const goTo = useGoTo();
  return (
    <button type="button" class="bw-link" title={placeName(place)} onClick={() => goTo(place)}>
      {name}
    </button>
  );
}

const Told = ({ words, isEnglish }: { readonly words: string; readonly isEnglish: boolean }): JSX.Element =>
  isEnglish ? <span lang="en">{words}</span> : <span>{words}</span>;

function Problems({ problems }: { readonly problems: readonly Problem[] }): JSX.Element {
  const W = useWords().check;
  return (
    <>
      {PROBLEM_KINDS.map(kind => {
        const { heading, words } = W.problems[kind];
        const own = problems.filter(problem => problem.kind === kind);
        if (own.length === 0) return null;
        return (
          <details key={kind} class="bw-part" open={kind === 'broken' || kind === 'refused'}>
            <summary>
              {heading} <small>{own.length}</small>
            </summary>
            {words !== '' && <p class="bw-quiet">{words}</p>}
            <ul class="bw-findings">
              {own.map(({ place, words: about, isEnglish }, i) => (
                <li key={i}>
                  <Place name={placeName(place)} place={place} />{' '}
                  {kind === 'state' ? <StateWord state={about as State} /> : <Told words={about} isEnglish={isEnglish === true} />}
                </li>
              ))}
            </ul>
          </details>
        );
      })}
    </>
  );
}

/** The finding that the reason of a joint tells of. */
function WorstInGerman({ variant }: { readonly variant: Variant }): JSX.Element | null {
  const worst = variant.worst();
  return worst === undefined || worst.state === 'pass' ? null : <ReasonInGerman finding={worst} />;
}

function JointStates({ joints }: { readonly joints: WorkbookCheck['joints'] }): JSX.Element | null {
  const { check: W, frame } = useWords();
  const open = joints.filter(({ state }) => state !== 'pass');
  if (joints.length === 0) return null;
  return (
    <details class="bw-part" open>
      <summary>
        {W.joints} <small>{W.pass(joints.length - open.length, joints.length)}</small>
      </summary>
      <ul class="bw-findings">
        {open.map(({ joint, state, reason }, i) => (
          <li key={i}>
            <StateWord state={state} />
            {joint.place === undefined ? (
              <b>{jointName(joint, frame)}</b>
            ) : (
              <>
                <Place name={jointName(joint, frame)} place={joint.place} /> <small>{placeName(joint.place)}</small>
              </>
            )}
            <span>
              <span lang="en">{reason}</span>
              <WorstInGerman variant={joint.variant} />
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Cells that are read without asking. */
const MOST_UNASKED = 20_000;
const REPAIRED_AT_ONCE = 100;

function WholeWorkbook({ port }: { readonly port: SheetPort }): JSX.Element {
  const { say, wrote, ask, work, isBusy } = usePane();
  const W = useWords().check;
  const [checked, setChecked] = useState<WorkbookCheck | null>(null);
  const read = async (step: ProgressStep) => setChecked(await checkWorkbook(port, W, step));
  const check = () => work(W.readingSheets, read);
  const repair = async (mendable: readonly Mendable[]) => {
    const inTables = new Set<Mendable>();
    for (const one of mendable) if (spills(one.repair) && (await port.tableAt?.(one.place)) !== undefined) inTables.add(one);
    const words = [W.repairAsked(mendable.length), ...(inTables.size > 0 ? [W.repairFirst(inTables.size)] : [])].join(' ');
    if (!(await ask({ words, yes: W.repairYes }))) return;
    await work(W.repairing, async step => {
      const before: CellEntry[] = [];
      for (let from = 0; from < mendable.length && step(from, mendable.length); from += REPAIRED_AT_ONCE) {
        const some = mendable
          .slice(from, from + REPAIRED_AT_ONCE)
          .map(one => ({ ...one.place, content: inTables.has(one) ? firstOf(one.repair) : one.repair }));
        before.push(...(await port.write(some)));
      }
      const done = before.length;
      await read(step);
      wrote(done === mendable.length ? W.repaired(done) : W.repairStopped(done, mendable.length), before);
    });
  };
  const [size, setSize] = useState(0);
  const isLarge = size > MOST_UNASKED;
  useEffect(() => {
    let isOpen = true;
    // A large workbook is read when the user asks for it.
    const begin = async () => {
      const cells = (await port.sizes()).reduce((sum, one) => sum + one.cells, 0);
      if (!isOpen) return;
      setSize(cells);
      if (cells <= MOST_UNASKED) await check();
    };
    begin().catch((thrown: unknown) => say(messageOf(thrown)));
    return () => {
      isOpen = false;
    };
  }, [port]);

  const problems = checked?.problems ?? [];
  const mendable = problems.flatMap(({ place, repair: formula }) => (formula === undefined ? [] : [{ place, repair: formula }]));
  return (
    <section class="bw-workbook" aria-labelledby="bw-workbook">
      <h2 id="bw-workbook">{W.workbook}</h2>
      <div class="bw-actions">
        {mendable.length > 0 && (
          <button type="button" class="bw-strong" disabled={isBusy} onClick={() => void repair(mendable)}>
            {W.repair(mendable.length)}
          </button>
        )}
        <button type="button" disabled={isBusy} onClick={() => void check()}>
          {checked === null && isLarge ? W.readAnyway : W.again}
        </button>
      </div>
      {checked === null && isLarge && <p>{W.isLarge(size, MOST_UNASKED)}</p>}
      {checked !== null && (
        <>
          <JointStates joints={checked.joints} />
          <Problems problems={problems} />
          {problems.length === 0 && <p>{W.noProblem}</p>}
          {checked.isPartial && <p class="bw-quiet">{W.isPartial}</p>}
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
