/** Files in `from` may import what matches `allowed` and nothing else, packages and Node included. */
const only = (name, from, allowed, comment) => ({ name, comment, severity: "error", from: { path: from }, to: { pathNot: allowed } });

const npm = (name) => `^(node_modules/)?${name}(/|$)`;

module.exports = {
  forbidden: [
    only("standards-are-data", "^src/standards/", ["^src/core/kinds[.]ts$"],
      "A published table is compared with its source line by line, so it holds data and its types. Put what computes with it in src/core."),
    only("core-is-pure", "^src/core/", ["^src/(core|standards)/", npm("@stdlib/math-base-special-(erfc|ln)"), npm("pure-rand")],
      "The core must give the same answer in Excel, in a browser and in a test. Pure mathematics may come from a package; no Node, no host."),
    only("joint-on-core", "^src/joint/", ["^src/(joint|core|standards|plain)/", npm("fastest-levenshtein")],
      "The joint is a composition of core functions. What it needs from a host belongs behind src/sheet."),
    only("plain-on-maths", "^src/plain/", ["^src/plain/", "^src/core/maths[.]ts$", npm("typescript"), "^(node:)?(fs|path|url)$"],
      "A plain form knows the formulas' syntax and the maths module. What a card says is put around it by those who print."),
    only("trace-on-cards", "^src/trace/", ["^src/(trace|core|plain)/"],
      "REASON, ABOUT and WORKING speak about cards and plain forms; the registry hands them the cards."),
    only("sheet-is-a-plan", "^src/sheet/", ["^src/sheet/", "^src/core/kinds[.]ts$"],
      "A sheet plan is plain data that every host can draw and a test can read. Compute the values before they go into the plan."),
    only("demo-on-sheet", "^src/demo/", ["^src/(demo|core|joint|sheet)/"],
      "A demo is a sheet plan with formulas. Drawing it is the host's work."),
    only("wrappers-only-wrap", "^functions/(?!cell[.]ts$)", ["^functions/cell[.]ts$"],
      "A wrapper is a signature with its help. Put the computation in src/core and reach it by its id through cell."),
    only("cell-calls-by-id", "^functions/cell[.]ts$", ["^src/registry[.]ts$", "^src/core/kinds[.]ts$"],
      "One door between the cells and the core. A function that needs more is a core function: give it a card."),
    only("registry-lists", "^src/registry[.]ts$", ["^src/(core|joint|trace)/"],
      "It puts all cards in one list and calls them. Anything more belongs to where the cards come from."),
    only("excel-draws-plans", "^src/hosts/excel[/.]", ["^src/hosts/excel[/.]", "^src/sheet/", "^src/core/kinds[.]ts$", npm("@microsoft/office-js-helpers")],
      "A host carries out a sheet plan and knows no function, page or other host. Put shared things in src/sheet."),
    only("bench-draws-plans", "^src/hosts/bench[/.]", ["^src/hosts/bench[/.]", "^src/sheet/", "^src/core/kinds[.]ts$", npm("@univerjs")],
      "A host carries out a sheet plan and knows no function, page or other host. Put shared things in src/sheet."),
    only("pane-is-a-page", "^src/pane/", ["^src/(pane|sheet|demo|core)/", "^src/hosts/excel[/.]", npm("@microsoft/office-js-helpers")],
      "The pane wires plans to Excel. It reaches the functions through the sheet, never by import: they are a script of their own."),
    only("bench-is-a-page", "^src/bench/", ["^src/(bench|sheet|demo|core)/", "^src/hosts/bench[/.]", "^functions/"],
      "The bench wires plans and functions to its own sheet. Packages of the sheet stay in src/hosts/bench."),
    {
      name: "pages-know-core-types",
      comment: "A page may name the types of the core; what it computes goes through the functions, as in a cell.",
      severity: "error",
      from: { path: "^src/(pane|bench)/" },
      to: { path: "^src/core/", dependencyTypesNot: ["type-only"] },
    },
    {
      name: "nobody-imports-tests",
      comment: "What product code needs is product code: move it out of test.",
      severity: "error",
      from: { pathNot: "^test/" },
      to: { path: "(^|/)test/" },
    },
    {
      name: "no-circular",
      comment: "Two files that need each other are one file, or share a third: move the shared part down.",
      severity: "error",
      from: {},
      to: { circular: true },
    },
    {
      name: "no-orphans",
      comment: "Nothing leads to it and it leads nowhere: delete it, or import it where it is needed.",
      severity: "error",
      from: { orphan: true, pathNot: "[.]d[.]ts$" },
      to: {},
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    // Types count as well: a core file that only names a type of a host depends on that host.
    tsPreCompilationDeps: true,
    enhancedResolveOptions: { extensions: [".ts", ".js", ".json"], exportsFields: ["exports"], conditionNames: ["import", "types", "default"] },
  },
};
