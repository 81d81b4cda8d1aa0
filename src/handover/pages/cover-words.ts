// What every cover says: rules, assumptions, questions, cautions, and the words to choose from.

export const RULES = [
  'Lengths in mm, angles in degrees, forces in N, torques in N·m, stresses in MPa, temperatures in °C, unless a cell says otherwise.',
  'Draft is given per side. A drafted feature has its size at the end that its name says: a boss at the free end, a pilot ' +
    'where "pilot held at" says, a recess at its floor. The other end follows by draft.',
  'Draft inside or outside the tolerance, the tolerancing principle and the general tolerance are to be agreed before tooling.',
  'Sizes are those of the moulded part, not of the cavity. When and in which state they are measured is to be agreed.',
  'The sheets of the workbook are as its owner left them, but for plain formulas in place of functions that need an add-in.',
  'The sheets that were added stand behind them. There, light blue cells are for your answers; formulas are locked against ' +
    'slips, without a password, and any program takes the protection off.',
];

export const ASSUMPTIONS = [
  'Standards are held from secondary copies or from memory, as each table on the data sheet says; the standard itself governs.',
  'Tolerances are taken worst case where nothing else is said. A root sum square takes them as independent, which sizes ' +
    'of one tool are not.',
  'Values of materials are those of a resin family, not of a grade, colour or lot.',
  'Strengths and torques are short-term estimates without weld lines, ageing, climate or creep.',
];

export const QUESTIONS = [
  'Shrinkage of the grade along and across the flow, and the range over the process?',
  'Which faces lie towards the parting line, and are the drafts enough for the surface asked?',
  'Gate, ejectors and cooling of the core pins near the bosses: anything to move?',
  'Sink at the roots of bosses and ribs: what is expected on the face that shows?',
  'Which limits of the characteristics cannot be held, and what can?',
  'Which sizes are to be left steel-safe for tuning after the first shots?',
];

export const CAUTIONS = [
  'A sizing aid for trained people. It takes the place of neither a qualified engineer nor your review; every joint is to ' +
    'be built and tested.',
  'Where mains or another hazardous voltage is near: electrical distances are not given here. They come from the standard ' +
    'that applies and are reviewed by qualified people.',
  'Batteries, loads, lifting, pressure, vehicles, medical use, children and life safety are not covered.',
  'Blank means not checked, never passed. Values hold for the inputs, versions and sources printed beside them.',
  'Whoever hands this on sees to it that nothing is in it that must stay in the house. The lock of a sheet would not keep it.',
];

export const SIGN_OFF = ['reviewed, feasible', 'reviewed, feasible with changes', 'not feasible'];

export const QUESTION_STATES = ['open', 'agreed', 'rejected'];
