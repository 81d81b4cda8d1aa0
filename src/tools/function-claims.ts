// What is proven of the functions, their tables and tests, and of what is shipped.
import type { Claim } from './claim';

const RUNTIME =
  'Microsoft’s own runtime of custom functions (package @microsoft/office-js 1.1.110) in headless Chromium, with the built ' +
  'functions.js; the host around it is made up, after the messages that the runtime sends';
/** The functions of the built file, called as Excel calls them. */
export const IN_RUNTIME = { standIn: RUNTIME, test: 'test/runtime/functions.test.ts' } as const;
const demo = {
  standIn: 'the same runtime; a call is sent when those that it waits for have their answer',
  test: 'test/runtime/demo.test.ts',
} as const;

export const FUNCTION_CLAIMS: readonly Claim[] = [
  {
    claim: 'Every function of functions.json registers under its id, none twice, none besides',
    ...IN_RUNTIME,
    title: 'every id of functions.json, none twice, none besides',
    open: 'how Excel itself reads functions.json, and its cache of up to 24 hours',
  },
  {
    claim:
      'Every function answers or refuses as the core does: its example, blanks as 0, null and "", wrong kinds, errors, formatted ' +
      'numbers and other data types, too few arguments; results are finite, tables full rectangles',
    ...IN_RUNTIME,
    title: 'answers and refusals are those of the core',
    open: 'what each platform really sends: the first eight checks below',
  },
  {
    claim:
      'An error handed in comes back as that error; #REF! and #NAME? come back as #VALUE! with the same message, because the ' +
      'runtime has no number for them',
    ...IN_RUNTIME,
    title: 'an error handed in comes back as that error where the runtime has a number for it, and is named in the message',
    open: 'whether the message is shown; hosts often hide it',
  },
  {
    claim:
      'The demo workbook settles in two batches of calls, and one more where a part is fetched for the first time; every call in ' +
      'it answers as the core does, with blank cells as on the desktop and as on the web',
    ...demo,
    title: 'every call answers as the core does',
    open: 'the time in Excel, where the pane may be closed and the machine busy',
  },
  {
    claim: 'A whole table is one batch; a chain of single cells is one for every link',
    ...demo,
    title: 'one table against the same as single cells, 100 variants',
    open: 'the same',
  },
  {
    claim: 'The bench shows in every cell of the demo what the core answers',
    standIn: 'the built bench in Chromium',
    test: 'test/runtime/bench.test.ts',
    title: 'every demo cell with a call of ours',
    open: 'nothing: the bench is what it is',
  },
  {
    claim: 'functions.json fits the published schema; no name is a cell, none repeats, no text is too long, it is smaller than a megabyte',
    standIn: 'the definition of custom functions in @microsoft/app-manifest 1.1.2',
    test: 'test/manifest/schema.test.ts',
    title: 'functions.json has no fault',
    open: 'which of these limits Excel enforces for an XML manifest',
  },
  {
    claim: 'manifest.xml is whole: icons, links between its parts, https, lengths',
    standIn: 'a lint; .ci/run also holds its XML against the published XSD, where that is at hand',
    test: 'test/manifest/manifest.test.ts',
    title: 'has none of the faults that the schema lets through',
    open: 'installing it',
  },
  {
    claim:
      'A formula of an earlier version still reads: names, places of arguments and shapes of results only grow. A value may change ' +
      'with a correction, and is then listed',
    standIn: 'a stored list of what was released; there is one version so far',
    test: 'test/contract/signatures.test.ts',
    title: 'released signatures still hold',
    open: 'a workbook that an earlier version saved',
  },
  {
    claim: 'Whatever is sent, a finite result or a refusal with its reason comes back, within 50 ms (simulations apart)',
    standIn: 'seeded wild calls of the core: 40 of each function in npm test, 200,000 in all in npm run test:fuzz',
    test: 'test/faults/fuzz.test.ts',
    title: 'enough of them, and both sides of the limits',
    open: 'nothing',
  },
  {
    claim:
      'Whatever a host sends, data types, errors without a value or of another name included, a cell gets a value, or an error of ' +
      'a code that the runtime knows, with its message',
    standIn:
      'the wrappers under a stand-in of the runtime that drops what it does not know: 20,000 seeded calls in npm test, 300,000 in ' +
      'npm run test:fuzz',
    test: 'test/faults/boundary.test.ts',
    title: 'enough of each',
    open: 'what Excel really sends',
  },
  {
    claim:
      'No text stalls a sheet: a text that takes longer than 0.1 ms takes less than 24 times as long as an eighth of it, where a ' +
      'reader that looks back would take 64 times',
    standIn: 'texts of a full cell, made to be hard, in one argument or two of each kind that reads texts',
    test: 'test/faults/growth.test.ts',
    title: 'the time to read a text grows with its length: %s',
    open: 'nothing',
  },
  {
    claim: 'A variant of 10,000 takes less than one and a half times as long as one of 100: a table grows evenly',
    standIn: 'the core on plain Node, for one output; more of them in the figures below',
    test: 'test/faults/growth.test.ts',
    title: 'a variant of a long table takes no longer than one of a short table',
    open: 'how long Excel needs to take in the cells',
  },
  {
    claim:
      'Figures of speed and size are measured, not promised: they have their date and machine, and each with a target says whether ' +
      'it was met; not all were',
    standIn: 'npm run bench, which tests do not repeat',
    test: 'test/evidence/figures.test.ts',
    title: 'every figure with a target says whether it is met',
    open: 'the time of Excel itself',
  },
  {
    claim: 'The tests notice wrong formulas: of the places of core and joint that were changed, one at a time, at least 85 in 100',
    standIn:
      'npm run test:mutants, on demand; test/mutants/results.md has its date, each file with its count, and every place that no ' +
      'test noticed. How many files changed since is said below',
    test: 'test/evidence/mutants.test.ts',
    title: 'tests notice at least 85 of 100 wrong places',
    open: 'nothing',
  },
  {
    claim:
      'The tests notice wrong facts: of the numbers, texts, units, limits, signs and defaults in the cards, inputs, nodes and ' +
      'rules that were changed, one at a time, at least 90 in 100 of each file',
    standIn:
      'npm run test:facts, on demand, in the same file. Texts that no outside source fixes are pinned as they are: a change of one ' +
      'is seen, which says nothing of what is right',
    test: 'test/evidence/mutants.test.ts',
    title: 'tests notice at least 90 of 100 wrong facts of each file',
    open: 'nothing',
  },
  {
    claim:
      'A release does not rest on old results of these: npm run package refuses when more than a tenth of the files have changed since',
    standIn: 'sums of the files in test/mutants/results.md',
    test: 'test/release/measured.test.ts',
    title: 'and those of the project refuse a copy of it in which every tenth file and one more differ',
    open: 'nothing',
  },
  {
    claim: 'Every rule of the joint turns where it says: each limit, its side, where the rule applies and what it may move',
    standIn:
      'a table of the rules typed by hand, and a joint solved to 0.000001 below and above each limit; limits that no input passes ' +
      'are named. Every limit moved by 1 %, every side and every input left out is noticed',
    test: 'test/joint/limits.test.ts',
    title: 'by a state: each side and each limit, but those that change nothing',
    open: 'nothing',
  },
  {
    claim:
      'The tests notice a wrong table: of 300 corruptions of the tables of standards and the materials (a digit, two neighbours ' +
      'swapped, ±1 in two rows, unit, edition, how held, limit), one at a time, at least 297',
    standIn:
      'npm run test:corrupt, on demand, seeded; test/corrupt/results.json has its date, seed, count by kind, every one that no ' +
      'test noticed, and a sum of each file. Last run 2026-11-29, seed 13: 300 of 300. The tables were copied from the same ' +
      'records that hold them: it shows that a change is noticed, not that a standard was read rightly',
    test: 'test/evidence/corrupt.test.ts',
    title: 'tests notice at least 297 of 300 corruptions of the tables',
    open: 'nothing',
  },
  {
    claim:
      'What is shipped is under permissive licences, but for one part bound to its own files (MPL-2.0, unchanged) and a font under ' +
      'its own licence; their texts go along as licences.txt',
    standIn: 'the packages that the build found in the bundles',
    test: 'test/runtime/licences.test.ts',
    title: 'all are permissive, or bound to their files and listed with the reason',
    open: 'nothing',
  },
  {
    claim:
      'A served folder that was changed on purpose, its list of checksums too, is not called whole by sums from outside the ' +
      'folder, and its functions are not run',
    standIn: 'a folder with a forged functions.js that would write a file',
    test: 'test/release/verify.test.ts',
    title: 'is not run, judged by %s',
    open: 'nothing; without sums from outside only accidents are seen',
  },
  {
    claim: 'A test that is named as evidence from outside fails when the answer is a twentieth too large',
    standIn: 'each is run a second time on a wrong answer',
    test: 'test/evidence/evidence.test.ts',
    title: 'a test that passes on a wrong answer is found out',
    open: 'nothing',
  },
  {
    claim: 'An installation is the same everywhere, and names no place to fetch from',
    standIn: 'the lock file',
    test: 'test/contract/lock.test.ts',
    title: 'every package of the lock file is held by its content',
    open: 'nothing',
  },
];
