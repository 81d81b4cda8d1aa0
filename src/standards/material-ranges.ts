// Moulding materials by ISO 1043 symbol: ranges and typical values, not a table of a standard.
// Density g/cm³; shrinkage and strain fractions; strength and modulus MPa; expansion 1e-6/K; diffusivity mm²/s;
// temperatures °C; thread share and OD ratio plain numbers.
// A typical value is a choice inside its range; the grade sheet governs.
// Copied from the collected records on 2026-11-24; re-read against the records.
import type { Held } from './table';

export interface MaterialRange {
  readonly typ: number;
  readonly low: number | null;
  readonly high: number | null;
  readonly unit: string;
  readonly held: Held;
  readonly note?: string;
}

export interface StrengthRange extends MaterialRange {
  readonly strengthKind: 'yield' | 'break';
}

export interface MaterialRanges {
  readonly density?: MaterialRange;
  readonly shrinkage?: MaterialRange;
  readonly strength?: StrengthRange;
  readonly modulus?: MaterialRange;
  readonly strain?: MaterialRange;
  readonly expansion?: MaterialRange;
  readonly diffusivity?: MaterialRange;
  readonly melt?: MaterialRange;
  readonly mould?: MaterialRange;
  readonly eject?: MaterialRange;
  readonly threadShare?: MaterialRange;
  readonly odRatio?: MaterialRange;
}

const MEMORY = 'from memory';
const MERGED = 'range merged from secondary tables and memory, typical value from memory';
const PRACTICE = 'common practice, from memory';

type LowTypicalHigh = readonly [low: number | null, typ: number, high: number | null];

const range =
  (unit: string) =>
  ([low, typ, high]: LowTypicalHigh, held: Held = MERGED, note?: string): MaterialRange => ({
    typ,
    low,
    high,
    unit,
    held,
    ...(note === undefined ? {} : { note }),
  });

const density = range('g/cm³');
const share = range('1');
const megapascal = range('MPa');
const expansion = range('1e-6/K');
const diffusivity = range('mm²/s');
const celsius = range('°C');
const start = (typ: number, low: number | null = null, high: number | null = null): MaterialRange => share([low, typ, high], PRACTICE);
const strength = (strengthKind: StrengthRange['strengthKind'], limits: LowTypicalHigh, held: Held = MERGED): StrengthRange => ({
  ...megapascal(limits, held),
  strengthKind,
});

export const MATERIAL_RANGES = {
  ABS: {
    density: density([1.03, 1.05, 1.08]),
    shrinkage: share([0.004, 0.006, 0.009]),
    strength: strength('yield', [38, 45, 50]),
    modulus: megapascal([2000, 2300, 2800]),
    strain: share([0.02, 0.025, 0.04], MEMORY),
    expansion: expansion([53, 90, 130]),
    diffusivity: diffusivity([0.08, 0.085, 0.19]),
    melt: celsius([190, 240, 270]),
    mould: celsius([40, 60, 90]),
    eject: celsius([60, 90, 100], MEMORY),
    threadShare: start(0.8),
    odRatio: start(2.2, 2, 2.5),
  },
  PC: {
    density: density([1.15, 1.2, 1.2]),
    shrinkage: share([0.005, 0.006, 0.008]),
    strength: strength('yield', [55, 63, 75]),
    modulus: megapascal([2100, 2400, 2450], MEMORY),
    strain: share([0.06, 0.06, 0.07], MEMORY),
    expansion: expansion([65, 65, 70]),
    diffusivity: diffusivity([0.1, 0.105, 0.15]),
    melt: celsius([270, 300, 320]),
    mould: celsius([80, 90, 120]),
    eject: celsius([120, 130, 140], MEMORY),
    threadShare: start(0.6),
    odRatio: start(2.5, 2.2, 3),
  },
  'PC+ABS': {
    density: density([1.1, 1.14, 1.25], MEMORY),
    shrinkage: share([0.003, 0.006, 0.0075]),
    strength: strength('yield', [50, 55, 60]),
    modulus: megapascal([2200, 2300, 2700]),
    strain: share([0.04, 0.049, 0.05]),
    expansion: expansion([70, 80, 85]),
    diffusivity: diffusivity([0.08, 0.095, 0.12], MEMORY),
    melt: celsius([240, 260, 280]),
    mould: celsius([40, 75, 99]),
    eject: celsius([90, 105, 115], MEMORY),
    threadShare: start(0.75),
    odRatio: start(2.3, 2, 2.5),
  },
  PP: {
    density: density([0.89, 0.905, 0.92]),
    shrinkage: share([0.01, 0.015, 0.03]),
    strength: strength('yield', [27, 33, 41]),
    modulus: megapascal([1000, 1500, 1700], MEMORY),
    strain: share([0.06, 0.09, 0.12], MEMORY),
    expansion: expansion([58, 110, 180]),
    diffusivity: diffusivity([0.06, 0.065, 0.11]),
    melt: celsius([190, 230, 290]),
    mould: celsius([20, 40, 100]),
    eject: celsius([60, 90, 100], MEMORY),
    threadShare: start(0.95),
    odRatio: start(2, 1.8, 2.5),
  },
  'PE-HD': {
    density: density([0.94, 0.955, 0.97]),
    shrinkage: share([0.015, 0.022, 0.04]),
    strength: strength('yield', [20, 27, 38]),
    modulus: megapascal([400, 1000, 1500], MEMORY),
    strain: share([0.08, 0.09, 0.12], MEMORY),
    expansion: expansion([59, 150, 200]),
    diffusivity: diffusivity([0.08, 0.085, 0.16]),
    melt: celsius([180, 230, 300]),
    mould: celsius([10, 40, 70]),
    eject: celsius([60, 80, 110], MEMORY),
    threadShare: start(0.95),
    odRatio: start(2, 1.8, 2.5),
  },
  PS: {
    density: density([1.04, 1.05, 1.09]),
    shrinkage: share([0.003, 0.005, 0.008]),
    strength: strength('break', [35, 47, 60]),
    modulus: megapascal([2600, 3200, 3400], MEMORY),
    strain: share([0.01, 0.017, 0.03], MEMORY),
    expansion: expansion([50, 75, 83]),
    diffusivity: diffusivity([0.06, 0.085, 0.11]),
    melt: celsius([160, 220, 280]),
    mould: celsius([10, 45, 80]),
    eject: celsius([60, 80, 100], MEMORY),
    threadShare: start(0.75),
    odRatio: start(2.3, 2, 2.5),
  },
  PMMA: {
    density: density([1.15, 1.18, 1.2]),
    shrinkage: share([0.001, 0.005, 0.009]),
    strength: strength('break', [48, 70, 77]),
    modulus: megapascal([2200, 3200, 3300]),
    strain: share([0.02, 0.05, 0.1], MEMORY),
    expansion: expansion([50, 70, 90]),
    diffusivity: diffusivity([0.09, 0.1, 0.12]),
    melt: celsius([200, 240, 270]),
    mould: celsius([40, 70, 99]),
    eject: celsius([70, 90, 110], MEMORY),
    threadShare: start(0.6),
    odRatio: start(2.5, 2.2, 3),
  },
  POM: {
    density: density([1.39, 1.41, 1.43]),
    shrinkage: share([0.018, 0.021, 0.035]),
    strength: strength('yield', [60, 65, 72]),
    modulus: megapascal([2600, 2800, 3400]),
    strain: share([0.08, 0.09, 0.25], MEMORY),
    expansion: expansion([80, 105, 125]),
    diffusivity: diffusivity([0.05, 0.06, 0.095]),
    melt: celsius([180, 205, 230]),
    mould: celsius([50, 90, 120]),
    eject: celsius([90, 120, 150], MEMORY),
    threadShare: start(0.9),
    odRatio: start(2, 1.9, 2.5),
  },
  PA6: {
    density: density([1.12, 1.13, 1.16], MEMORY),
    shrinkage: share([0.005, 0.012, 0.022]),
    strength: strength('yield', [40, 80, 90], MEMORY),
    modulus: megapascal([1000, 3000, 3200], MEMORY),
    strain: share([0.04, 0.045, 0.25], MEMORY),
    expansion: expansion([80, 90, 100]),
    diffusivity: diffusivity([0.07, 0.075, 0.13], MEMORY),
    melt: celsius([230, 260, 290]),
    mould: celsius([40, 80, 120]),
    eject: celsius([70, 100, 110], MEMORY),
    threadShare: start(0.9),
    odRatio: start(2),
  },
  'PA6 conditioned': {
    strength: strength('yield', [null, 45, null], MEMORY),
    modulus: megapascal([null, 1500, null], MEMORY, 'Roughly half the dry value.'),
    threadShare: start(0.95),
    odRatio: start(2, 1.8, 2.5),
  },
  PA66: {
    density: density([1.13, 1.14, 1.15]),
    shrinkage: share([0.008, 0.015, 0.025]),
    strength: strength('yield', [50, 82, 90]),
    modulus: megapascal([1100, 3100, 3200]),
    strain: share([0.04, 0.045, 0.25], MEMORY),
    expansion: expansion([80, 90, 110]),
    diffusivity: diffusivity([0.07, 0.085, 0.13], MEMORY),
    melt: celsius([260, 285, 305]),
    mould: celsius([30, 80, 115]),
    eject: celsius([80, 120, 140], MEMORY),
    threadShare: start(0.9),
    odRatio: start(2),
  },
  'PA66 conditioned': {
    strength: strength('yield', [null, 55, null], MEMORY),
    modulus: megapascal([null, 1550, null], MEMORY, 'Roughly half the dry value.'),
    threadShare: start(0.95),
    odRatio: start(2, 1.8, 2.5),
  },
  'PA66-GF30': {
    density: density([1.35, 1.36, 1.39]),
    shrinkage: share([0.002, 0.004, 0.011], MEMORY, 'Low end along the flow, high end across it.'),
    strength: strength('break', [115, 185, 200]),
    modulus: megapascal([5100, 10000, 10500]),
    strain: share([0.03, 0.032, 0.05], MEMORY),
    expansion: expansion([15, 25, 35], MERGED, 'Along the flow; across it 60 to 80, from memory.'),
    diffusivity: diffusivity([0.09, 0.11, 0.24]),
    melt: celsius([270, 290, 310]),
    mould: celsius([60, 85, 120]),
    eject: celsius([110, 150, 170], MEMORY),
    threadShare: start(0.7),
    odRatio: start(2, 1.8, 2.5),
  },
  'PA66-GF30 conditioned': {
    strength: strength('break', [null, 130, null], MEMORY),
    threadShare: start(0.7),
    odRatio: start(2, 1.8, 2.5),
  },
  PBT: {
    density: density([1.3, 1.3, 1.4], MEMORY),
    shrinkage: share([0.01, 0.017, 0.022]),
    strength: strength('yield', [50, 58, 62], MEMORY),
    modulus: megapascal([2300, 2500, 2800], MEMORY),
    strain: share([0.03, 0.036, 0.045], MEMORY),
    expansion: expansion([60, 100, 130], MEMORY),
    diffusivity: diffusivity([0.07, 0.085, 0.11], MEMORY),
    melt: celsius([225, 255, 275]),
    mould: celsius([40, 70, 90]),
    eject: celsius([100, 120, 140], MEMORY),
    threadShare: start(0.9),
    odRatio: start(2, 1.8, 2.2),
  },
  'PBT-GF30': {
    density: density([1.48, 1.53, 1.61], MEMORY),
    shrinkage: share([0.002, 0.004, 0.008]),
    strength: strength('break', [95, 130, 140], MEMORY),
    modulus: megapascal([7000, 9700, 10500], MEMORY),
    strain: share([0.02, 0.025, 0.04], MEMORY),
    expansion: expansion([20, 30, 45], MEMORY, 'Along the flow; across it 80 to 100.'),
    diffusivity: diffusivity([0.09, 0.11, 0.14], MEMORY),
    melt: celsius([230, 260, 275], MEMORY),
    mould: celsius([40, 80, 100], MEMORY),
    eject: celsius([120, 150, 170], MEMORY),
    threadShare: start(0.7),
    odRatio: start(2, 1.8, 2.5),
  },
} as const satisfies Readonly<Record<string, MaterialRanges>>;
