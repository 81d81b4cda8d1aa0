// The figure beside the sheet: the joint of the selected row in section.
import { section } from "../figure/section";
import type { BenchWorkbook } from "../hosts/bench/bench-workbook";
import type { Selection } from "../sheet/port";
import { byId } from "./dom";
import { Joints, type JointHere } from "./joint-at";

const toSelect = "Select a cell in the row of a variant, or among the inputs or results of a joint.";

/** Markup of ours as elements; texts from cells are escaped in it. */
function drawing(svg: string): Element {
  return document.importNode(new DOMParser().parseFromString(svg, "image/svg+xml").documentElement, true);
}

export interface FigureView {
  /** Draws at once and keeps up with the sheet until hidden. */
  show(): void;
  hide(): void;
}

export function figureView(workbook: BenchWorkbook): FigureView {
  const inch = byId<HTMLInputElement>("figure-inch");
  const place = byId("figure");
  let joints: Joints | undefined;
  let last: Selection | undefined;
  let drawn = "";
  let visible = false;

  function here(): { readonly joint: JointHere | undefined; readonly hint: string } {
    joints ??= new Joints(workbook.contents());
    const selected = workbook.selected();
    const joint = selected === null ? undefined : joints.at(selected);
    if (joint !== undefined && selected !== null) {
      last = selected;
      return { joint, hint: "" };
    }
    return { joint: (last && joints.at(last)) ?? joints.first(), hint: toSelect };
  }

  function put(svg: string): void {
    if (svg === drawn) return;
    drawn = svg;
    place.replaceChildren(...(svg === "" ? [] : [drawing(svg)]));
  }

  function draw(): void {
    if (!visible) return;
    try {
      const { joint, hint } = here();
      byId("figure-of").textContent = joint === undefined ? "No joint yet" : joint.name || joint.where;
      byId("figure-where").textContent = joint?.name ? joint.where : "";
      byId("figure-hint").textContent = hint;
      put(joint === undefined ? "" : section(joint.variant, { inch: inch.checked, widthPx: place.clientWidth }).svg);
    } catch (thrown) {
      byId("figure-of").textContent = "No figure";
      byId("figure-where").textContent = "";
      byId("figure-hint").textContent = `The inputs cannot be read: ${thrown instanceof Error ? thrown.message : String(thrown)}`;
      put("");
    }
  }

  workbook.onChange((change) => {
    if (change === "content") joints = undefined;
    draw();
  });
  inch.addEventListener("change", draw);
  new ResizeObserver(draw).observe(place);
  return {
    show() {
      visible = true;
      draw();
    },
    hide() {
      visible = false;
    },
  };
}
