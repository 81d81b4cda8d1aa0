// The selected joint in full, and what is to be mended in the workbook.
import type { JSX } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { digits } from "../plain/print";
import type { Selection } from "../sheet/port";
import { checkedWorkbook, type Checked } from "./checked";
import { Findings } from "./findings";
import type { Joint } from "./find-joint";
import { JointHeading, jointName } from "./joint-heading";
import { levers } from "./levers";
import { NoJoint } from "./no-joint";
import type { Kind, Problem } from "./problems";
import { messageOf, placeName, useGoTo, useShared } from "./shared";
import { StateWord } from "./state-word";
import { Working, type Progress } from "./working";

/** Levers that are shown. */
const STRONGEST = 6;

function Levers({ joint }: { readonly joint: Joint }): JSX.Element | null {
  const strongest = useMemo(() => levers(joint.variant, "engagement min").slice(0, STRONGEST), [joint]);
  const most = Math.abs(strongest[0]?.perTenth ?? 0);
  if (strongest.length === 0) return null;
  const signed = (mm: number) => `${mm > 0 ? "+" : ""}${digits(Math.round(mm * 1000) / 1000)}`;
  return (
    <details class="bw-part">
      <summary>What moves the worst engagement most</summary>
      <p class="bw-quiet">Change of the full thread at worst case, mm, when one input grows by a tenth of itself.</p>
      <table class="bw-levers">
        <thead><tr><th scope="col">input</th><th scope="col">now</th><th scope="col">moves by, mm</th></tr></thead>
        <tbody>
          {strongest.map(({ input, unit, value, perTenth }) => (
            <tr key={input}>
              <th scope="row">{input}</th>
              <td class="bw-number">{digits(value)} {unit}</td>
              <td class="bw-number"><span class="bw-bar" aria-hidden="true" style={{ width: `${(40 * Math.abs(perTenth)) / most}px` }} />{signed(perTenth)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}

function SelectedJoint(): JSX.Element {
  const { found } = useShared();
  if (found?.is !== "joint") return <NoJoint found={found} what="every rule of its joint" />;
  const { joint } = found;
  const passed = joint.variant.findings().filter(({ state }) => state === "pass").length;
  return (
    <>
      <JointHeading joint={joint} />
      <Findings joint={joint} states={["fail", "not checked", "look"]} />
      {passed > 0 && <details class="bw-part"><summary>{passed} rules pass</summary><Findings joint={joint} states={["pass"]} /></details>}
      <Levers joint={joint} />
    </>
  );
}

const HEADINGS: readonly (readonly [kind: Kind, heading: string, words: string])[] = [
  ["broken", "Cells that do not work", "Entered again they mostly do: a workbook opened before the functions were there keeps such cells."],
  ["refused", "Answers that are refused", ""],
  ["state", "Checks to look at", ""],
  ["blank", "Blanks that count as zero", "Type the zero, or the value that was forgotten."],
  ["units", "Lengths in several units in one list", "Each is read in its own unit; a number alone is mm."],
  ["constant", "Numbers typed into a formula", "In a cell of its own a number is seen, and changed in one place."],
];

function Place({ name, place }: { readonly name: string; readonly place: Selection }): JSX.Element {
  const goTo = useGoTo();
  return <button type="button" class="bw-link" title={placeName(place)} onClick={() => goTo(place)}>{name}</button>;
}

function Problems({ problems }: { readonly problems: readonly Problem[] }): JSX.Element {
  return (
    <>
      {HEADINGS.map(([kind, heading, words]) => {
        const own = problems.filter((problem) => problem.kind === kind);
        if (own.length === 0) return null;
        return (
          <details key={kind} class="bw-part" open={kind === "broken" || kind === "refused"}>
            <summary>{heading} <small>{own.length}</small></summary>
            {words !== "" && <p class="bw-quiet">{words}</p>}
            <ul class="bw-findings">
              {own.map(({ place, words: about }, i) => (
                <li key={i}><Place name={placeName(place)} place={place} /> <span>{about}</span></li>
              ))}
            </ul>
          </details>
        );
      })}
    </>
  );
}

function JointStates({ joints }: { readonly joints: Checked["joints"] }): JSX.Element | null {
  const open = joints.filter(({ state }) => state !== "pass");
  if (joints.length === 0) return null;
  return (
    <details class="bw-part" open>
      <summary>Joints <small>{joints.length - open.length} of {joints.length} pass</small></summary>
      <ul class="bw-findings">
        {open.map(({ joint, state, reason }, i) => (
          <li key={i}>
            <StateWord state={state} />
            {joint.place === undefined ? <b>{jointName(joint)}</b> : <Place name={jointName(joint)} place={joint.place} />}
            <span>{reason}</span>
          </li>
        ))}
      </ul>
    </details>
  );
}

function WholeWorkbook(): JSX.Element {
  const { port, say, ask } = useShared();
  const [checked, setChecked] = useState<Checked | null>(null);
  const [progress, setProgress] = useState<Progress | null>(null);
  const isStopped = useRef(false);

  const run = async (what: string, work: (step: (done: number, of: number) => boolean) => Promise<void>) => {
    isStopped.current = false;
    setProgress({ what, done: 0, of: 1 });
    try {
      await work((done, of) => {
        setProgress({ what, done, of });
        return !isStopped.current;
      });
    } catch (thrown) {
      say(messageOf(thrown));
    } finally {
      setProgress(null);
    }
  };
  const check = () => run("Reading the sheets", async (step) => {
    if (port !== undefined) setChecked(await checkedWorkbook(port, step));
  });
  const repair = (mendable: readonly Problem[]) => run("Entering formulas again", async (step) => {
    let done = 0;
    for (const { place, repair: formula } of mendable) {
      if (port === undefined || formula === undefined || !step(done, mendable.length)) break;
      await port.write(place.sheetName, place.at, formula);
      done++;
    }
    say(done === mendable.length ? `${done} cells were entered again` : `Stopped after ${done} of ${mendable.length} cells`);
    await check();
  });
  const askRepair = async (mendable: readonly Problem[]) => {
    if (await ask({ words: `Enter ${mendable.length} formulas again? Only their cells are written, with the same formula.`, yes: "Repair" })) await repair(mendable);
  };
  useEffect(() => void check(), [port]);

  const problems = checked?.problems ?? [];
  const mendable = problems.filter(({ repair: formula }) => formula !== undefined);
  return (
    <section class="bw-workbook" aria-labelledby="bw-workbook">
      <h2 id="bw-workbook">The workbook</h2>
      <div class="bw-actions">
        {mendable.length > 0 && <button type="button" class="bw-strong" disabled={progress !== null} onClick={() => void askRepair(mendable)}>Repair {mendable.length} {mendable.length === 1 ? "cell" : "cells"}</button>}
        <button type="button" disabled={progress !== null} onClick={() => void check()}>Check again</button>
      </div>
      {progress !== null && <Working progress={progress} onCancel={() => { isStopped.current = true; }} />}
      {checked !== null && (
        <>
          <JointStates joints={checked.joints} />
          <Problems problems={problems} />
          {problems.length === 0 && <p>No cell calls for attention: nothing is broken, refused or typed into a formula.</p>}
          {checked.isPartial && <p class="bw-quiet">Stopped: not all sheets were read.</p>}
        </>
      )}
    </section>
  );
}

export function CheckView(): JSX.Element {
  const { port } = useShared();
  return <><SelectedJoint />{port !== undefined && <WholeWorkbook />}</>;
}
