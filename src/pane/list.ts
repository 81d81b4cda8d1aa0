// The list of functions as the pane shows it: from functions.json to topics, signatures and a filter. No DOM.

/** The namespace in manifest.xml. */
export const NAMESPACE = "ENCL";

export interface Parameter {
  readonly name: string;
  readonly description: string;
  readonly optional?: boolean;
}

/** An entry of functions.json, as far as the pane reads it. */
export interface ListedFunction {
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly Parameter[];
}

export interface Topic {
  readonly heading: string;
  readonly functions: readonly ListedFunction[];
}

export const OTHER = "Other";

/** Headings in the order of the work; a prefix is one or more whole parts of an id, the longest that fits decides. */
const PREFIXES: readonly (readonly [heading: string, ...prefixes: string[]])[] = [
  ["The whole joint", "JOINT"],
  ["Screws and standard data", "SCREW"],
  ["Materials", "MATERIAL"],
  ["Holes and core pins", "HOLE", "POSITION", "PIN"],
  ["Draft", "DRAFT"],
  ["Bosses and walls", "BOSS", "WALL"],
  ["Head recess", "RECESS"],
  ["Grip, engagement and screw length", "GRIP", "PENETRATION", "ENGAGEMENT", "SCREW.BOTTOM", "SCREW.LENGTH.TABLE", "SCREW.LENGTH.PICK", "SCREW.LENGTH.COMMON"],
  ["Strength estimates", "PULLOUT", "TORQUE", "BEARING", "HOOP", "SCREW.COUNT"],
  ["Board and supports", "BOARD", "THERMAL"],
  ["Ribs, lip and rim", "RIB", "LIP", "RIM", "JUNCTION"],
  ["Moulding", "COOLING", "CAVITY"],
  ["Tolerances", "TOL", "STACK"],
  ["Checks and variants", "CHECK", "VARIANT"],
  ["Units", "LENGTH", "ANGLE", "DUAL", "LIMITS", "UNIT"],
  ["How a result came about", "REASON", "ABOUT", "WORKING", "VERSION"],
];

const HEADING_OF = new Map(PREFIXES.flatMap(([heading, ...prefixes]) => prefixes.map((prefix) => [prefix, heading] as const)));

export function headingOf(id: string): string {
  for (let prefix = id; ; prefix = prefix.slice(0, prefix.lastIndexOf("."))) {
    const heading = HEADING_OF.get(prefix);
    if (heading !== undefined) return heading;
    if (!prefix.includes(".")) return OTHER;
  }
}

/** Topics in the order of the work, functions by name; a topic without functions is left out. */
export function topics(functions: readonly ListedFunction[]): Topic[] {
  const sorted = [...functions].sort((a, b) => (a.id < b.id ? -1 : 1));
  return [...PREFIXES.map(([heading]) => heading), OTHER]
    .map((heading) => ({ heading, functions: sorted.filter(({ id }) => headingOf(id) === heading) }))
    .filter((topic) => topic.functions.length > 0);
}

/** `ENCL.BOSS.OD(hole, wall, [distance], [draft])` */
export function signature({ id, parameters }: ListedFunction): string {
  return `${NAMESPACE}.${id}(${parameters.map(({ name, optional }) => (optional ? `[${name}]` : name)).join(", ")})`;
}

/** Every word of the filter occurs in the signature, the sentence, the heading or an argument. */
export function matches(listed: ListedFunction, filter: string): boolean {
  const text = [signature(listed), listed.description, headingOf(listed.id), ...listed.parameters.map(({ description }) => description)].join("\n").toLowerCase();
  return filter.toLowerCase().split(/\s+/).every((word) => text.includes(word));
}
