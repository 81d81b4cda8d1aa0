// Quantities: their core unit, the units that are read for them, and how an example is typed.

export interface Quantity {
  readonly noun: string;
  /** The core unit; a bare number is in it. */
  readonly unit: string;
  /** Spelling of a unit -> how many core units it is. */
  readonly units: Readonly<Record<string, number>>;
  readonly example: string;
}

const IN = 25.4;
const LBF_N = 4.4482216152605;
const LB_G = 453.59237;
export const DEG = 1;

export const LENGTH: Quantity = {
  noun: 'length',
  unit: 'mm',
  example: '4.2, "4.2 mm" or "0.167 in"',
  units: {
    mm: 1,
    MM: 1,
    cm: 10,
    m: 1000,
    µm: 0.001,
    μm: 0.001,
    um: 0.001,
    in: IN,
    In: IN,
    IN: IN,
    inch: IN,
    inches: IN,
    '"': IN,
    '″': IN,
    '”': IN,
    mil: IN / 1000,
    thou: IN / 1000,
  },
};

export const ANGLE: Quantity = {
  noun: 'angle',
  unit: '°',
  example: '0.5, "0.5°" or "0°30\'"',
  units: { deg: DEG, '°': DEG, º: DEG, "'": DEG / 60, '′': DEG / 60, '’': DEG / 60, rad: 180 / Math.PI },
};

export const FORCE: Quantity = { noun: 'force', unit: 'N', example: '200, "200 N" or "12 lbf"', units: { N: 1, kN: 1000, lbf: LBF_N } };

export const TORQUE: Quantity = {
  noun: 'torque',
  unit: 'N·m',
  example: '0.35, "35 N.cm" or "4.3 in.lbf"',
  units: {
    'N·m': 1,
    'N.m': 1,
    Nm: 1,
    'N·cm': 0.01,
    'N.cm': 0.01,
    Ncm: 0.01,
    'N·mm': 0.001,
    'N.mm': 0.001,
    Nmm: 0.001,
    'in·lbf': (LBF_N * IN) / 1000,
    'in.lbf': (LBF_N * IN) / 1000,
    'lbf·in': (LBF_N * IN) / 1000,
    'lbf.in': (LBF_N * IN) / 1000,
  },
};

export const STRESS: Quantity = {
  noun: 'stress',
  unit: 'MPa',
  example: '45, "45 MPa" or "6500 psi"',
  units: { Pa: 1e-6, kPa: 1e-3, MPa: 1, GPa: 1000, 'N/mm²': 1, 'N/mm2': 1, psi: LBF_N / IN ** 2, ksi: (1000 * LBF_N) / IN ** 2 },
};

export const LINE_LOAD: Quantity = {
  noun: 'line load',
  unit: 'N/mm',
  example: '0.5, "0.5 N/mm" or "3 lbf/in"',
  units: { 'N/mm': 1, 'N/cm': 0.1, 'N/m': 0.001, 'lbf/in': LBF_N / IN },
};

export const SECOND_MOMENT: Quantity = {
  noun: 'second moment',
  unit: 'mm⁴',
  example: '80, "80 mm⁴" or "0.0002 in⁴"',
  units: { 'mm⁴': 1, mm4: 1, 'cm⁴': 1e4, cm4: 1e4, 'in⁴': IN ** 4, in4: IN ** 4 },
};

export const SHARE: Quantity = { noun: 'share', unit: '', example: '0.6 or "60 %"', units: { '%': 0.01 } };
export const RATIO: Quantity = { noun: 'number', unit: '', example: 'a plain number', units: {} };
/** A temperature is not a number of kelvins; a difference is. */
export const TEMPERATURE: Quantity = { noun: 'temperature', unit: '°C', example: '240', units: { '°C': 1, C: 1 } };
export const TEMPERATURE_CHANGE: Quantity = { noun: 'temperature change', unit: 'K', example: '40', units: { K: 1, '°C': 1, C: 1 } };
export const MASS: Quantity = {
  noun: 'mass',
  unit: 'g',
  example: '60, "60 g" or "2 oz"',
  units: { g: 1, kg: 1000, oz: LB_G / 16, lb: LB_G },
};
export const DENSITY: Quantity = { noun: 'density', unit: 'g/cm³', example: '1.05', units: { 'g/cm³': 1, 'g/cm3': 1 } };
export const DIFFUSIVITY: Quantity = { noun: 'diffusivity', unit: 'mm²/s', example: '0.085', units: { 'mm²/s': 1, 'mm2/s': 1 } };
export const EXPANSION: Quantity = { noun: 'expansion', unit: '1e-6/K', example: '90 or "90 ppm/K"', units: { 'ppm/K': 1 } };

export const QUANTITIES = [
  ...[LENGTH, ANGLE, FORCE, TORQUE, STRESS, LINE_LOAD, SECOND_MOMENT, SHARE],
  ...[TEMPERATURE_CHANGE, TEMPERATURE, MASS, DENSITY, DIFFUSIVITY, EXPANSION],
];

/** "mm, cm, m, µm, in, mil, thou": one spelling for each size. */
export function unitsOf(quantity: Quantity): string {
  const seen = new Set<number>();
  return Object.entries(quantity.units)
    .filter(([, size]) => !seen.has(size) && seen.add(size))
    .map(([spelling]) => spelling)
    .join(', ');
}
