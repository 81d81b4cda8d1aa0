/** Files in `from` may import what matches `allowed` and nothing else, packages and Node included. */
const only = (name, from, allowed, comment) => ({ name, comment, severity: 'error', from: { path: from }, to: { pathNot: allowed } });

/** The hand-over runs one way: what is read is compiled, what is compiled stands on pages. */
const HANDOVER_FLOORS = ['read', 'compile', 'pages'];

const npm = name => `^(node_modules/)?${name}(/|$)`;

module.exports = {
  forbidden: [
    only(
      'standards-are-data',
      '^src/standards/',
      ['^src/standards/'],
      'A published table is compared with its source line by line, so it holds data and its types, or refers to the table that it is held to equal. Put what computes with it in src/core.',
    ),
    only(
      'core-is-pure',
      '^src/core/',
      ['^src/(core|standards)/', npm('@stdlib/math-base-special-(erfc|ln)'), npm('pure-rand')],
      'The core must give the same answer in Excel, in a browser and in a test. Pure mathematics may come from a package; no Node, no host.',
    ),
    only(
      'joint-on-core',
      '^src/joint/',
      ['^src/(joint|core|standards|plain)/', npm('fastest-levenshtein')],
      'The joint is a composition of core functions. What it needs from a host belongs behind src/sheet.',
    ),
    only(
      'plain-on-maths',
      '^src/plain/',
      ['^src/plain/', '^src/core/maths[.]ts$', npm('typescript'), '^(node:)?(fs|path|url)$'],
      "A plain form knows the formulas' syntax and the maths module. What a card says is put around it by those who print.",
    ),
    only(
      'about-on-cards',
      '^src/about/',
      ['^src/(about|core|plain)/', '^src/standards/table[.]ts$'],
      'REASON, ABOUT and WORKING speak about cards, plain forms and what a card reads in a table; the registry hands them the cards.',
    ),
    only(
      'figure-is-pure',
      '^src/figure/',
      ['^src/(figure|joint|core|plain)/'],
      'A figure is text made from the values of a joint: the same on a page, in a workbook and in a test. What shows it belongs to the page.',
    ),
    only(
      'sheet-calls-nothing',
      '^src/sheet/',
      ['^src/sheet/', '^src/core/(kinds|maths)[.]ts$', npm('@borgar/fx')],
      'Plans, addresses, formulas and values of cells are plain data, the same in every host and in a test. A function of ours that a formula calls is handed in.',
    ),
    only(
      'handover-makes-plans',
      '^src/handover/(?!(compare-)?cli[.]ts$|write/)',
      ['^src/(handover|core|joint|plain|figure|sheet|standards)/', '^src/registry[.]ts$', npm('@borgar/fx'), npm('diff')],
      'A hand-over is a plan made from the cells of a workbook: the same in a page, at a command and in a test. Files, hosts and what draws pictures are handed in.',
    ),
    only(
      'handover-is-an-edit',
      '^src/handover/write/',
      ['^src/(handover|package|sheet)/', '^src/core/kinds[.]ts$'],
      "The copy is the user's package, edited: what changes in his cells, what goes along, our sheets behind his. The writer of our sheets is handed in.",
    ),
    ...HANDOVER_FLOORS.map((floor, i) => ({
      name: 'handover-one-way',
      comment: `A hand-over is read, compiled and put on pages, in this order: what ${floor} shares with a later folder belongs into it or below.`,
      severity: 'error',
      from: { path: `^src/handover/${floor}/` },
      to: { path: '^src/handover/', pathNot: HANDOVER_FLOORS.slice(0, i + 1).map(below => `^src/handover/${below}/`) },
    })),
    only(
      'handover-command',
      '^src/handover/(compare-)?cli[.]ts$',
      [
        '^src/(handover|demo|package|sheet)/',
        '^src/hosts/(xlsx|png)[/.]',
        '^src/cli/(options|user-fault)[.]ts$',
        '^(node:)?(fs|path|readline|util)(/|$)',
      ],
      'The command reads and writes workbook files and leaves the work to the hand-over.',
    ),
    only(
      'commands-join',
      '^src/commands/',
      [
        '^src/(commands|cli|joint|figure|sheet)/',
        '^src/core/(kinds|refuse)[.]ts$',
        '^src/studies[.]ts$',
        '^src/handover/(compare-)?cli[.]ts$',
        '^src/release/verify[.]ts$',
        '^src/hosts/(xlsx|png)[/.]',
        npm('csv-parse'),
        npm('hucre'),
        '^(node:)?(fs|path|stream|url|util)(/|$)',
      ],
      'A command reads a file, asks the joint and writes what it answers. What it works out belongs to the core.',
    ),
    only(
      'release-packs-files',
      '^src/release/',
      ['^src/release/', '^src/cli/(options|user-fault)[.]ts$', npm('fflate'), npm('acorn'), '^(node:)?(crypto|fs|path|util)(/|$)'],
      'What is packed and checked is what was built: the files, not the sources they come from.',
    ),
    only(
      'demo-on-sheet',
      '^src/demo/',
      ['^src/(demo|core|joint|sheet)/'],
      "A demo is a sheet plan with formulas. Drawing it is the host's work.",
    ),
    only(
      'evidence-is-a-list',
      '^src/evidence/',
      ['^src/evidence/', '^src/core/card[.]ts$'],
      'What a function rests on is a list of sources and names of tests, and its counts. A test opens the tests; the list imports none.',
    ),
    only(
      'help-is-printed',
      '^src/help/(?!(plugin[.]ts|find[.]ts|search[.]ts|synonyms[.]ts|german[.]ts)$)',
      [
        '^src/(help|german|evidence|core|plain|about|joint|figure|demo|handover|sheet)/',
        '^src/registry[.]ts$',
        npm('marked'),
        npm('preact'),
        npm('preact-render-to-string'),
      ],
      'A help page is text made at build from cards, plain forms and lists that are handed in. It knows no host and no page that moves.',
    ),
    only(
      'help-finds-by-itself',
      '^src/help/(find|search|synonyms|german)[.]ts$',
      ['^src/help/(search|synonyms|german|not-covered)[.]ts$'],
      'What the first help page loads to search must not bring the functions along: it reads what stands on the page.',
    ),
    only(
      'help-is-built',
      '^src/help/plugin[.]ts$',
      ['^src/help/', '^src/german/', npm('tsx'), npm('webpack'), '^(node:)?(fs|url)$'],
      'The build step runs the pages; what they say belongs to them.',
    ),
    only(
      'german-is-words',
      '^src/german/',
      ['^src/german/', '^src/(core|joint)/'],
      'German is a table of words beside the English; of the rest it knows types.',
    ),
    only(
      'tools-write-files',
      '^src/tools/',
      [
        '^src/(tools|evidence|core|joint|plain|release)/',
        '^src/german/phrases[.]ts$',
        '^src/help/plugin[.]ts$',
        '^src/registry[.]ts$',
        '^src/cli/(options|user-fault)[.]ts$',
        '^test/standards/records[.]ts$',
        '^test/evidence/verdicts/figures[.]ts$',
        npm('custom-functions-metadata'),
        '^(node:)?(fs|path)$',
      ],
      'What npm run generate writes follows from cards, rules, lists and measurements, and the records and the figures of the verdicts from how a test puts them together. It draws nothing and opens no page.',
    ),
    {
      name: 'nobody-imports-tools',
      comment: 'What writes documents and lists is no part of the product: move what the product needs to where it is about.',
      severity: 'error',
      from: { path: '^(src|functions)/', pathNot: '^src/tools/' },
      to: { path: '^src/tools/' },
    },
    only(
      'wrappers-only-wrap',
      '^functions/(?!cell[.]ts$)',
      ['^functions/cell[.]ts$'],
      'A wrapper is a signature with its help. Put the computation in src/core and reach it by its id through cell.',
    ),
    only(
      'cell-calls-by-id',
      '^functions/cell[.]ts$',
      ['^src/(calculations|registry|studies)[.]ts$', '^src/core/kinds[.]ts$'],
      'One door between the cells and the core. A function that needs more is a core function: give it a card.',
    ),
    only(
      'registry-lists',
      '^src/(calculations|registry|studies)[.]ts$',
      ['^src/(core|joint|about)/', '^src/calculations[.]ts$'],
      'They put cards in one list and call them. Anything more belongs to where the cards come from.',
    ),
    {
      name: 'calculations-are-silent',
      comment:
        'What functions.js starts with is loaded by every workbook. What is only said of a function, its words and plain form, is loaded when a cell asks for it.',
      severity: 'error',
      from: { path: '^src/(calculations|studies)[.]ts$' },
      to: { path: '[.]words[.]ts$|^src/(about|plain)/', reachable: true },
    },
    only(
      'library-names',
      '^src/library/index[.]ts$',
      ['^src/(core|figure|joint)/', '^src/registry[.]ts$'],
      'The library is a list of what there is. What a program needs and the core has not belongs into the core.',
    ),
    only(
      'excel-draws-plans',
      '^src/hosts/excel[/.]',
      ['^src/hosts/excel[/.]', '^src/sheet/', '^src/core/kinds[.]ts$'],
      'A host carries out a sheet plan and knows no function, page or other host. Put shared things in src/sheet.',
    ),
    only(
      'univer-draws-plans',
      '^src/hosts/univer[/.]',
      ['^src/hosts/univer[/.]', '^src/sheet/', '^src/core/kinds[.]ts$', npm('@univerjs')],
      'A host carries out a sheet plan and knows no function, page or other host. Put shared things in src/sheet.',
    ),
    only(
      'file-holds-plans',
      '^src/hosts/xlsx[/.]',
      ['^src/hosts/xlsx[/.]', '^src/(sheet|package)/', '^src/core/kinds[.]ts$', npm('hucre'), npm('fflate'), npm('@borgar/fx')],
      'A host carries out a sheet plan and knows no function, page or other host. Put shared things in src/sheet.',
    ),
    only(
      'package-is-its-own',
      '^src/package/',
      ['^src/package/', '^src/sheet/(addresses|formula)[.]ts$', npm('saxes'), npm('fflate'), npm('@borgar/fx')],
      'A package is bytes, text and places: the same in a worker, on Node and in a test. What its cells mean, and which of them change, is said by those who use it.',
    ),
    only(
      'png-draws-svg',
      '^src/hosts/png[/.]',
      ['^src/hosts/png[/.]', npm('@resvg/resvg-wasm'), npm('dejavu-fonts-ttf'), '^(node:)?(fs|module)(/|$)'],
      'It turns SVG text into a picture and knows nothing of what is drawn.',
    ),
    only(
      'pane-is-a-page',
      '^src/pane/',
      [
        '^src/(pane|sheet|demo|figure|joint|core)/',
        '^src/german/joint[.]ts$',
        '^src/help/(search|german|not-covered|cautions|shown-cell)[.]ts$',
        '^src/registry[.]ts$',
        '^src/plain/print[.]ts$',
        '^src/hosts/excel[/.]',
        npm('minisearch'),
        npm('preact'),
        npm('@microsoft/office-js-helpers'),
      ],
      'The pane shows an answer and draws a joint before they are in a cell, so it may call the registry, read formulas and draw figures. The workbook it knows through the sheet port, the formulas of the core through their cards.',
    ),
    only(
      'bench-is-a-page',
      '^src/bench/',
      [
        '^src/(bench|sheet|demo|core|handover|package)/',
        '^src/hosts/(univer|xlsx|png)[/.]',
        '^src/pane/(mount|download)[.]',
        '^functions/',
      ],
      'The bench wires plans, functions and files to its own sheet, and shows the pane as a whole, saving files as it does: joint and figure are its business. Packages of the sheet stay in src/hosts/univer, those of files in src/hosts/xlsx.',
    ),
    {
      name: 'pages-know-core-types',
      comment:
        'A page may name the types of the core; what it computes goes through the functions, as in a cell. The pane also reads cards, states and refusals.',
      severity: 'error',
      from: { path: '^src/(pane|bench)/' },
      to: { path: '^src/core/', pathNot: '^src/core/(card|refuse|check/check|read/[^/]+)[.]ts$', dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'nobody-imports-tests',
      comment: 'What product code needs is product code: move it out of test.',
      severity: 'error',
      from: { pathNot: '^(test|src/tools)/' },
      to: { path: '(^|/)test/' },
    },
    {
      name: 'no-circular',
      comment: 'Two files that need each other are one file, or share a third: move the shared part down.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    {
      name: 'no-orphans',
      comment: 'Nothing leads to it and it leads nowhere: delete it, or import it where it is needed.',
      severity: 'error',
      from: { orphan: true, pathNot: ['[.]d[.]ts$', '^src/pane/start[.]js$', '^src/help/decimal[.]ts$'] },
      to: {},
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    // Types count as well: a core file that only names a type of a host depends on that host.
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      extensions: ['.ts', '.tsx', '.js', '.json'],
      exportsFields: ['exports'],
      conditionNames: ['import', 'types', 'default'],
    },
  },
};
