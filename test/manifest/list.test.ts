import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { headingOf, matches, OTHER, signature, topics, type ListedFunction } from "../../src/pane/list";

const bossOd: ListedFunction = {
  id: "BOSS.OD",
  description: "Outside diameter of a boss",
  parameters: [
    { name: "hole", description: "Hole diameter" },
    { name: "draft", description: "Draft per side", optional: true },
  ],
};
const named = (id: string): ListedFunction => ({ id, description: "", parameters: [] });

describe("the list of functions in the pane", () => {
  it("writes the optional arguments in brackets", () => {
    expect(signature(bossOd)).toBe("ENCL.BOSS.OD(hole, [draft])");
    expect(signature(named("JOINT.INPUTS"))).toBe("ENCL.JOINT.INPUTS()");
  });

  it("takes the longest prefix that fits, by whole parts", () => {
    expect(headingOf("SCREW.MAJOR")).toBe("Screws and standard data");
    expect(headingOf("SCREW.LENGTHS")).toBe("Screws and standard data");
    expect(headingOf("SCREW.LENGTH.PICK")).toBe("Grip, engagement and screw length");
    expect(headingOf("PENETRATION")).toBe("Grip, engagement and screw length");
    expect(headingOf("SCREWS.COUNT")).toBe(OTHER);
  });

  it("loses no function and shows no empty topic", () => {
    const grouped = topics([named("TOL.IT"), named("BOSS.WALL"), named("UNHEARD"), bossOd]);
    expect(grouped.map(({ heading, functions }) => [heading, ...functions.map(({ id }) => id)])).toEqual([
      ["Bosses and walls", "BOSS.OD", "BOSS.WALL"],
      ["Tolerances", "TOL.IT"],
      [OTHER, "UNHEARD"],
    ]);
  });

  it("finds by any words of name, sentence, heading or argument", () => {
    for (const filter of ["", " ", "boss.od", "PER SIDE", "walls outside", "encl"]) expect(matches(bossOd, filter), filter).toBe(true);
    for (const filter of ["rib", "boss rib"]) expect(matches(bossOd, filter), filter).toBe(false);
  });

  it("has a heading for every function", () => {
    const folder = new URL("../../functions/", import.meta.url);
    const ids = readdirSync(folder).flatMap((file) =>
      [...readFileSync(new URL(file, folder), "utf8").matchAll(/@customfunction ([A-Z.]+)/g)].map(([, id = ""]) => id));
    expect(ids).toContain("BOSS.OD");
    expect(ids.filter((id) => headingOf(id) === OTHER)).toEqual([]);
  });
});
