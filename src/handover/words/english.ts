// The fixed words of our pages in English; values, units and names stay as they are.
import { COMPARE } from './compare-words';
import { FINDINGS } from './finding-words';
import { SOURCES } from './source-words';
import type { Status } from './status';
import { STEP_PHRASES, type StepSaid } from './step-words';

export const ENGLISH = {
  compare: COMPARE,
  sheets: {
    cover: 'Hand-over',
    measured: 'Characteristics',
    figure: 'Figure',
    variants: 'Variant table',
    cautions: 'Cautions',
    calculated: 'Calculated',
    conversion: 'Conversion',
    sources: 'Sources',
    steps: 'Steps',
    stepRows: 'Steps_rows',
    variantSteps: 'Variants',
    tables: 'Tables',
    outside: 'Outside_cells',
    data: 'Data',
  },
  page: 'Page',
  handOver: 'hand-over',
  number: 'No.',
  forScreen: (sheet: string): string => `${sheet}: for the screen, not for paper`,
  of: 'of',
  row: 'row',
  cover: {
    title: 'Hand-over',
    uncontrolled: 'uncontrolled when printed',
    revision: 'revision',
    what:
      'The sizes of a moulded part, for your review; the sender’s own sheets come with them. Light blue cells are for your answers. ' +
      'Change an input on its sheet, and all that depends on it follows, in any spreadsheet program.',
    asked: [
      'Answer the open questions below.',
      'Measure what Characteristics lists; note in the remark which limit cannot be held.',
      'Sign below and send the file back, or a scan of these pages.',
    ],
    titleBlock: 'Title block',
    part: 'part',
    number: 'part number',
    date: 'date',
    status: 'status',
    statuses: { 'for quotation': 'for quotation', 'for tooling': 'for tooling', 'for information': 'for information' } as Readonly<
      Record<Status, string>
    >,
    madeBy: 'made by',
    checkedBy: 'checked by',
    supplier: 'supplier',
    drawing: 'drawing and model',
    family: 'material family',
    grade: 'grade',
    along: 'shrinkage along, %',
    across: 'shrinkage across, %',
    colour: 'colour, additives',
    flame: 'flame class',
    questionsTitle: 'Open questions',
    question: 'question',
    answer: "supplier's answer",
    decided: 'status',
    decidedWords: 'open, agreed or rejected',
    open: 'open',
    decisions: ['open', 'agreed', 'rejected'],
    questions: [
      'Shrinkage of the grade along and across the flow, and its range?',
      'Which faces lie towards the parting line, and are the drafts enough?',
      'Gate, ejectors and cooling of core pins near the bosses: anything to move?',
      'Sink marks at bosses and ribs: what is to be expected on the outer face?',
      'Which limits of the characteristics cannot be held, and what can?',
      'Which sizes are to be left steel-safe for tuning after the first shots?',
    ],
    toCorrect: (count: number, sheets: string): string =>
      `${count} ${count === 1 ? 'cell' : 'cells'} could not be worked out (${sheets}): for the sender to correct or leave out`,
    signTitle: 'Sign-off by the supplier',
    name: 'name',
    review: 'review',
    reviews: ['reviewed, feasible', 'reviewed, feasible with changes', 'not feasible'],
    changesAsked: 'changes asked',
    onPaper: 'on paper',
    onScreen: 'on screen',
  },
  measured: {
    title: 'Characteristics',
    note: (of: string): string => `${of}. C: its tolerance counts in the calculation. Blank limits: the agreed general tolerance.`,
    none: 'No size that can be measured on a part follows from this workbook.',
    left: (count: number, sheet: string): string => `${count} more sizes could be measured; they stand on the sheet ${sheet}.`,
    cavity: 'cavity, sample',
    headers: ['No.', 'characteristic', 'size', 'min', 'max', 'unit', 'method', '1', '2', '3', '4', '5', 'OK?', 'remark'],
    methods: {
      'pin gauge': 'pin gauge',
      calliper: 'calliper',
      'depth gauge': 'depth gauge',
      'coordinate measuring': 'coordinates',
      'section cut': 'section cut',
    },
    otherMethods: ['plug gauge', 'height gauge', 'optical', 'tomography', 'as agreed'],
    methodWords: 'measuring method',
    ok: 'OK',
    notOk: 'not OK',
    noLimits: 'no limits',
    noNumber: 'not a number',
  },
  outside: {
    title: 'Outside cells: what names, conditions and validations called',
    headers: ['where', 'call', 'value'],
  },
  figure: {
    title: 'Figures: the joint, and studies of it',
    note: (day: string): string => `The pictures show the joint as it was ${day}. Numbers in balloons are those of the characteristics.`,
    inputs: 'inputs',
    asDrawn: 'as drawn',
    studyDescribed: (study: string, place: string, day: string): string =>
      `${study}, drawn from the inputs of ${place} as they were ${day}.`,
    atHandOver: 'at the hand-over',
    on: 'on',
    state: 'state',
    described: (label: string, day: string, state: string): string =>
      `Section through the joint "${label}" to scale, as it was ${day}, state then: ${state}. The numbers ` +
      'are those of the characteristics.',
  },
  variants: {
    title: 'Variants: which one is chosen, and why the others are not',
    note: 'The part is made by the chosen variant. States and reasons follow the inputs.',
    headers: ['variant', 'chosen', 'state', 'reasons, worst first'],
    chosen: 'chosen',
    left: (count: number, sheet: string): string => `Not in this table: ${count}, see ${sheet}.`,
  },
  calculated: {
    title: 'Calculated values, not to be measured',
    note: 'They follow the sheets. States, strengths and ratios are not requirements on a part.',
    headers: ['value', 'where', 'is', 'unit'],
    state: 'state',
    left: (count: number): string => `${count} more values stand on the sheets themselves.`,
  },
  conversion: {
    title: 'Conversion: what became of the functions',
    live: (live: number, asValues: number): string =>
      `${live} values live, ${asValues} as values. A value that is not live is marked in its cell (italic on a light ground) and has a ` +
      'line below; where its inputs can be watched it shows "inputs changed" when they are.',
    workbook: 'workbook',
    functions: 'functions',
    data: 'data of standards',
    content: 'content',
    contentWords: (hash: string): string => `${hash} (FNV-1a, 64 bit, of all inputs and formulas as they were handed over)`,
    liveOn: (sheet: string, count: number): string => `${sheet}: ${count} values live.`,
    headers: ['sheet', 'cell', 'what', 'why'],
    kinds: {
      'value, not live': 'value, not live',
      'not in every program': 'not in every program',
      'another add-in': 'another add-in',
      'not worked out here': 'not worked out here',
      error: 'error',
      changed: 'changed',
    },
    more: (count: number): string => `… and ${count} more`,
    said: FINDINGS,
  },
  steps: {
    title: 'Steps: how each value is worked out',
    note: 'Plain formulas on the cells of the other sheets. Change an input there and every line follows.',
    headers: ['value', 'unit', 'in words', 'source'],
    said: Object.fromEntries(STEP_PHRASES.map(phrase => [phrase, phrase])) as StepSaid,
  },
  stepRows: {
    title: 'Steps in rows: how each value of a filled column is worked out',
    note: 'A table for each column, a row for each cell, a column for each step. Change an input on its sheet and every row follows.',
    cell: 'cell',
    to: 'to',
    lines: ['unit', 'in words', 'source', 'for all rows'] as readonly [string, string, string, string],
  },
  variantSteps: {
    title: 'Variants, step by step',
    from: (cell: string): string => `of ${cell}`,
    andOthers: (cell: string): string => `${cell} and others`,
    note: 'A row for each variant, a column for each step; the inputs are the cells of that sheet. Change them there.',
    variant: 'variant',
    how: 'how it is worked out',
  },
  tables: {
    title: 'Tables: calls that give several rows',
    note: 'A line for each row, a column for each step. The inputs are the cells of the other sheets. Change them there.',
  },
  data: {
    title: 'Data: tables of standards used on the other sheets',
    choices: (of: string): string => `choices: ${of}`,
    edition: (edition: string): string => `edition ${edition}; lengths in mm`,
    row: 'row',
    held: 'how held',
    said: SOURCES,
  },
  sources: {
    title: 'Sources',
    note: (functions: string, data: string): string =>
      `Functions of version ${functions}, data of ${data}. The standard itself and the drawing govern.`,
    headers: ['', 'what it gives or holds', 'kind or edition', 'source', 'how held', 'caution'],
    functions: 'Functions',
    rules: 'Rules of the joint',
    rule: 'rule',
    tables: 'Tables on the sheet Data',
    said: SOURCES,
  },
  cautions: {
    title: 'Rules, assumptions, cautions',
    rulesTitle: 'Units and rules',
    rules: [
      'Lengths in mm, angles in degrees, forces in N, torques in N·m, stresses in MPa, unless a cell says otherwise.',
      'Draft is given per side. The size of a drafted feature is held at one end: of a boss at the free end, of a pilot where ' +
        '"pilot held at" says, of a recess at its floor. The other end follows from the draft.',
      'Draft inside or outside the tolerance, the tolerancing principle and the general tolerance are to be agreed before tooling.',
      'Sizes are those of the part, not of the cavity. Agree when it is measured, and how it is conditioned before.',
      'Formula cells of the added sheets are locked, without a password.',
    ],
    assumptionsTitle: 'Assumptions',
    assumptions: [
      'Standards are held from secondary copies or from memory, as each table on the sheet Data says; the standard itself governs.',
      'Tolerances are taken at worst case unless stated otherwise. A root sum square assumes that they are independent, which sizes ' +
        'moulded in one tool are not.',
      'Values of materials are those of a resin family, not of a grade, colour or lot.',
      'Strengths and torques are short-term estimates without weld lines, ageing, climate or creep.',
    ],
    cautionsTitle: 'Cautions',
    cautions: [
      'A sizing aid for trained people. It replaces neither a qualified engineer nor your review; build and test every joint.',
      'Where mains or another hazardous voltage is near: electrical distances are not given here. They come from the standard that ' +
        'applies and are reviewed by qualified people.',
      'Batteries, loads, lifting, pressure, vehicles, medical use, children and life safety are not covered.',
      'Blank means not checked, never passed. Values hold for the inputs, versions and sources of this file.',
      'Before you pass this file on, make sure that nothing confidential is in it.',
    ],
  },
};

/** The same entries in every language. */
export type PageWords = typeof ENGLISH;
