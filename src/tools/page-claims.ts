// What is proven of bench, pane, files and hand-over.
import type { Claim } from './claim';
import { IN_RUNTIME } from './function-claims';

const faults = { standIn: 'the built bench in Chromium', test: 'test/browser/faults.test.ts' } as const;

export const PAGE_CLAIMS: readonly Claim[] = [
  {
    claim: 'A bench that is left in the middle of an entry, or with changes that were not kept, asks first',
    ...faults,
    title: 'a reload in the middle of an entry asks first, and the entry is still there',
    open: 'a browser that is ended by force loses the entry being typed',
  },
  {
    claim: 'A store that is full or refused is told, and is used again once it has room',
    ...faults,
    title: 'a full store is told, the page asks before it is left, and keeps again once there is room',
    open: 'nothing',
  },
  {
    claim: 'A kept workbook that is damaged is put aside, can be saved as a file, and is not overwritten by a second one',
    standIn: 'the built bench in Chromium',
    test: 'test/browser/persistence.test.ts',
    title: 'what was put aside can be saved and discarded, and a second one does not touch the first',
    open: 'nothing',
  },
  {
    claim: 'Two tabs of the bench tell of each other, and neither overwrites what the other kept',
    standIn: 'the built bench in Chromium',
    test: 'test/browser/persistence.test.ts',
    title: 'two tabs: the older one says so, stops saving, and the user chooses',
    open: 'nothing',
  },
  {
    claim: 'What is typed is what is stored: no suggestion takes the place of a name that was typed to its end',
    standIn: 'the built bench in Chromium, real keys, names that begin others',
    test: 'test/browser/typing.test.ts',
    title: 'a whole name is the first of its list, whatever was marked in the list before',
    open: 'nothing: the list belongs to the bench',
  },
  {
    claim: 'Five sheets of 2,000 rows, 30,000 numbers and a formula a sheet, are opened, worked out, kept and there again',
    ...faults,
    title: 'five sheets of 2,000 rows are opened, worked out, kept and there again',
    open: 'the pane in a workbook of that size',
  },
  {
    claim: 'A hostile file is refused with its reason: bombs, lies about sizes, macros, entities, broken parts',
    standIn: 'files made to harm',
    test: 'test/hosts/xlsx.test.ts',
    title: 'a hostile file is refused',
    open: 'nothing: the add-in opens no files',
  },
  {
    claim: 'The page says why it refuses a file, and what of a file it will not read before it opens it',
    ...faults,
    title: 'a file that leads elsewhere is opened only after it was told what is not read',
    open: 'nothing',
  },
  {
    claim: 'The functions ask the network for nothing',
    ...IN_RUNTIME,
    title: 'our functions ask the network for nothing, and nothing goes wrong on the page',
    open: 'the runtime itself asks for a telemetry page of its maker',
  },
  {
    claim: 'The pane asks for its own files and for Office.js',
    standIn: 'the built pane with Office.js of the package, outside Excel',
    test: 'test/runtime/pane.test.ts',
    title: 'its own files and Office.js, whatever is opened in it',
    open: 'what Office.js asks for inside Excel',
  },
  {
    claim: 'The bench asks for its own files only',
    standIn: 'the built bench in Chromium',
    test: 'test/browser/bench.test.ts',
    title: 'nothing was asked of another origin, and nothing went wrong on the page',
    open: 'nothing',
  },
  {
    claim: 'The pane writes and reads sheets through Office.js as Excel asks for it',
    standIn: 'the published type definitions, and a stand-in that enforces load and sync',
    test: 'test/hosts/excel-port.test.ts',
    title: 'draws every sheet of the demo: numbers as numbers, texts as texts, formulas as formulas',
    open: 'everything that the stand-in does not know of Excel',
  },
  {
    claim:
      'The hand-over copy of the demo works out without us: as sent every formula is worth what the core gives, and after each of ' +
      'six changes of inputs that or nothing',
    standIn: 'LibreOffice and Gnumeric, in English and German',
    test: 'test/engines/handover.test.ts',
    title: 'every formula is worth what the core gives, in %s',
    open: 'opening it in Excel',
  },
  {
    claim:
      'Every input of six joints, changed one at a time in the copy: each number and state is that of the functions, or the copy ' +
      'says that it does not know; what a joint can have is counted, and equal refusals count for nothing',
    standIn: 'LibreOffice and Gnumeric; on plain Node in npm test too',
    test: 'test/engines/handover.test.ts',
    title: 'follows each input, or says that it does not',
    open: 'the same in Excel',
  },
  {
    claim:
      'Every size with every head, and with every standard length, in a table and in single calls: the copy gives what the ' +
      'functions give, as sent, and after one input of each row was changed that or nothing',
    standIn: 'LibreOffice and Gnumeric; a part of it on plain Node in npm test too',
    test: 'test/engines/screws.test.ts',
    title: 'give what the functions give, as sent and after changes',
    open: 'the same in Excel',
  },
  {
    claim:
      'Workbooks of others (two libraries of Python, one of JavaScript, by hand in the stored forms of Excel; each saved again by ' +
      'two programs): all that called us is live or marked, and the copy shows what it is worked out to, as sent and after other inputs',
    standIn: 'LibreOffice and Gnumeric; what differs by their own doing is listed with its reason',
    test: 'test/engines/foreign-workbooks.test.ts',
    title: 'give after other inputs what our functions give',
    open: 'the same in Excel, and workbooks that Excel itself has saved',
  },
  {
    claim: 'A copy opens in Excel without repair: each of its parts fits the published schemas as far as the input did',
    standIn: 'ECMA-376 schemas of the transitional form and xmllint, where they lie beside the clone',
    test: 'test/engines/foreign-workbooks.test.ts',
    title: 'fits the published schemas as far as it did',
    open: 'opening it in Excel, which asks for more than the schemas: relations between parts, the strict form, extensions',
  },
  {
    claim: 'No copy is made in which a formula of ours gives another value than the function',
    standIn: 'the writer works out every formula on the values beside it',
    test: 'test/handover/verified.test.ts',
    title: 'does not go out with %s',
    open: 'nothing',
  },
];
