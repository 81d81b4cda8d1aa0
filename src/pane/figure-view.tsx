// The joint of the selected row in section, to scale, with what is wrong with it.
import type { JSX } from "preact";
import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import { variantChartSvg, variantRow } from "../figure/charts";
import { section, type LegendEntry } from "../figure/section";
import { digits } from "../plain/print";
import type { Joint } from "./find-joint";
import { Findings } from "./findings";
import { JointHeading, jointName } from "./joint-heading";
import { NoJoint } from "./no-joint";
import { lengthText } from "./numbers";
import { pictureOf } from "./picture";
import { useShared } from "./shared";

/** Narrower, and the drawing carries letters that the table below spells out. */
const NAMES_FROM_PX = 660;
const LEAST_PX = 280;
/** Width of a picture on the sheet. */
const PICTURE_PX = 760;

/** The width of an element as it is laid out. */
function useWidth(): [{ readonly current: HTMLDivElement | null }, number] {
  const place = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(LEAST_PX);
  useEffect(() => {
    const { current } = place;
    if (current === null) return undefined;
    const observer = new ResizeObserver(([entry]) => setWidth(Math.max(LEAST_PX, Math.floor(entry?.contentRect.width ?? 0))));
    observer.observe(current);
    return () => observer.disconnect();
  }, []);
  return [place, width];
}

function Legend({ legend, inch }: { readonly legend: readonly LegendEntry[]; readonly inch: boolean }): JSX.Element {
  return (
    <table class="bw-legend">
      <caption class="bw-unseen">Letters on the drawing</caption>
      <tbody>
        {legend.flatMap(({ letter, name, value, unit }) => (value === undefined ? [] : [
          <tr key={letter}><th scope="row">{letter}</th><td>{name}</td><td class="bw-number">{unit === "mm" ? lengthText(value, inch) : `${digits(value)}${unit}`}</td></tr>,
        ]))}
      </tbody>
    </table>
  );
}

function Figure({ joint }: { readonly joint: Joint }): JSX.Element {
  const { port, kept, say, work, selection } = useShared();
  const [place, width] = useWidth();
  const [inch, setInch] = useState(kept?.get("inch") === "on");
  const [hasNames, setHasNames] = useState(kept?.get("names") === "on");
  const letters = !hasNames && width < NAMES_FROM_PX;
  const { svg, legend } = useMemo(() => section(joint.variant, { inch, letters, widthPx: width }), [joint, inch, letters, width]);
  const choose = (name: string, set: (on: boolean) => void) => (event: JSX.TargetedEvent<HTMLInputElement>) => {
    set(event.currentTarget.checked);
    kept?.set(name, event.currentTarget.checked ? "on" : "off");
  };
  const putIntoSheet = async () => {
    if (port?.placePicture === undefined || selection === null) return;
    const { placePicture } = port;
    await work("Put into the sheet", async () => {
      const { svg: named } = section(joint.variant, { inch, widthPx: PICTURE_PX });
      await placePicture(selection.sheetName, await pictureOf(named, selection.at, `Section through ${jointName(joint)}`));
      say(`The figure is on ${selection.sheetName} at ${selection.at}`);
    });
  };
  return (
    <>
      <div ref={place} class={hasNames ? "bw-scroll bw-drawing" : "bw-drawing bw-fitted"} tabIndex={hasNames ? 0 : undefined} dangerouslySetInnerHTML={{ __html: svg }} />
      <div class="bw-switches">
        <label><input type="checkbox" checked={inch} onChange={choose("inch", setInch)} /> inches in brackets</label>
        {width < NAMES_FROM_PX && <label><input type="checkbox" checked={hasNames} onChange={choose("names", setHasNames)} /> names on the drawing</label>}
        {port?.placePicture !== undefined && <button type="button" disabled={selection === null} onClick={() => void putIntoSheet()}>Put into the sheet</button>}
      </div>
      <Findings joint={joint} states={["fail", "not checked", "look"]} />
      {letters && <Legend legend={legend} inch={inch} />}
    </>
  );
}

/** Every variant that stands with this one, by its engagement. */
function Chart({ joint }: { readonly joint: Joint }): JSX.Element {
  const [place, width] = useWidth();
  const svg = useMemo(() => variantChartSvg(joint.together().map((one) => variantRow(jointName(one), one.variant)), { widthPx: width }), [joint, width]);
  return <div ref={place} class="bw-scroll bw-drawing" tabIndex={0} dangerouslySetInnerHTML={{ __html: svg }} />;
}

function Variants({ joint }: { readonly joint: Joint }): JSX.Element {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <details class="bw-part" onToggle={(event) => setIsOpen(event.currentTarget.open)}>
      <summary>All {joint.of} variants</summary>
      {isOpen && <Chart joint={joint} />}
    </details>
  );
}

export function FigureView(): JSX.Element {
  const { found } = useShared();
  if (found?.is !== "joint") return <NoJoint found={found} what="its joint in section" />;
  return <><JointHeading joint={found.joint} /><Figure joint={found.joint} />{found.joint.of > 1 && <Variants joint={found.joint} />}</>;
}
