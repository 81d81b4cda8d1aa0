// Numbers with units, as people type them: "0.167 in + 0.25 mm", "1 1/4 in", "0°30'". One pass over the text, no back-tracking.
import { cut, quoted, Refused, wrongInput } from '../refuse';

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
const DEG = 1;

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

export const SHARE: Quantity = { noun: 'share', unit: '', example: '0.6 or "60 %"', units: { '%': 0.01 } };
export const RATIO: Quantity = { noun: 'number', unit: '', example: '2', units: {} };
/** A temperature is not a number of kelvins; a difference is. */
export const TEMPERATURE: Quantity = { noun: 'temperature', unit: '°C', example: '240', units: { '°C': 1, C: 1 } };
export const TEMPERATURE_CHANGE: Quantity = { noun: 'temperature change', unit: 'K', example: '40', units: { K: 1, '°C': 1, C: 1 } };
export const DENSITY: Quantity = { noun: 'density', unit: 'g/cm³', example: '1.05', units: { 'g/cm³': 1, 'g/cm3': 1 } };
export const DIFFUSIVITY: Quantity = { noun: 'diffusivity', unit: 'mm²/s', example: '0.085', units: { 'mm²/s': 1, 'mm2/s': 1 } };
export const EXPANSION: Quantity = { noun: 'expansion', unit: '1e-6/K', example: '90 or "90 ppm/K"', units: { 'ppm/K': 1 } };

const ALL = [LENGTH, ANGLE, FORCE, TORQUE, STRESS, SHARE, TEMPERATURE_CHANGE, TEMPERATURE, DENSITY, DIFFUSIVITY, EXPANSION];
/** Every spelling of a unit by its first character, the longest first. */
const SPELLINGS = new Map<string, string[]>();
for (const spelling of ALL.flatMap(({ units }) => Object.keys(units)).sort((a, b) => b.length - a.length)) {
  SPELLINGS.set(spelling.charAt(0), [...(SPELLINGS.get(spelling.charAt(0)) ?? []), spelling]);
}

/** "mm, cm, m, µm, in, mil, thou": one spelling for each size. */
export function unitsOf(quantity: Quantity): string {
  const seen = new Set<number>();
  return Object.entries(quantity.units)
    .filter(([, size]) => !seen.has(size) && seen.add(size))
    .map(([spelling]) => spelling)
    .join(', ');
}

const isDigit = (c: string | undefined): boolean => c !== undefined && c >= '0' && c <= '9';
const isLetter = (c: string | undefined): boolean => c !== undefined && c.toLowerCase() !== c.toUpperCase();
const isSpace = (c: string | undefined): boolean => c === ' ' || c === '\u00a0' || c === '\u202f' || c === '\t';
const isMinus = (c: string | undefined): boolean => c === '-' || c === '−';

/** One comma before exactly three digits: 1 to some, 1000 to others. "0,125" is no thousand. */
export const readsTwoWays = (digits: string): boolean => digits.includes(',') && /^\d*,\d{3}$/.test(digits) && !digits.startsWith('0,');

interface Term {
  readonly number: number;
  /** How many core units its unit is; nothing where it has none. */
  readonly size: number | undefined;
}

class Scanner {
  private i = 0;
  constructor(
    private readonly text: string,
    private readonly quantity: Quantity,
  ) {}

  /** The sum of all terms, in core units. */
  sum(): number {
    let total = 0;
    let terms = 0;
    let bare = 0;
    let last: { size: number; sign: number } | undefined;
    for (this.spaces(); this.i < this.text.length; this.spaces()) {
      const sign = this.sign(last);
      const { number, size } = this.term();
      if (size === undefined) bare++;
      last = { size: size ?? 1, sign };
      total += sign * number * last.size;
      terms++;
    }
    if (terms === 0 || !Number.isFinite(total)) throw this.not();
    if (bare > 0 && terms > 1) throw this.not('give every term its unit');
    return total;
  }

  private sign(last: { size: number; sign: number } | undefined): number {
    const c = this.text[this.i];
    if (c === '+' || isMinus(c)) {
      this.i++;
      this.spaces();
      return c === '+' ? 1 : -1;
    }
    if (last === undefined) return 1;
    // minutes behind degrees belong to them and carry their sign
    if (this.quantity === ANGLE && last.size === DEG && isDigit(c)) return last.sign;
    throw this.not();
  }

  private term(): Term {
    let number = this.decimal();
    const mark = this.i;
    this.spaces();
    if (this.slash()) number = this.whole(number) / this.whole(this.decimal());
    else if (isDigit(this.text[this.i])) {
      const top = this.whole(this.decimal());
      this.spaces();
      if (!this.slash()) throw this.not();
      number = this.whole(number) + top / this.whole(this.decimal());
    } else this.i = mark;
    this.spaces();
    return { number, size: this.unit() };
  }

  /** Goes behind the stroke of a fraction, where there is one. */
  private slash(): boolean {
    if (this.text[this.i] !== '/') return false;
    this.i++;
    this.spaces();
    return true;
  }

  /** "0.1/0.05" is no fraction: two deviations are meant, or a slip. */
  private whole(value: number): number {
    if (!Number.isInteger(value)) throw this.not('a fraction has whole numbers');
    return value;
  }

  private decimal(): number {
    const start = this.i;
    let separators = 0;
    for (; isDigit(this.text[this.i]) || this.text[this.i] === '.' || this.text[this.i] === ','; this.i++) {
      if (this.text[this.i] === '.' || this.text[this.i] === ',') {
        separators++;
        // "4.in" and "N.m": a point belongs to the number only with a digit behind it
        if (!isDigit(this.text[this.i + 1])) throw this.not();
      }
    }
    if (separators > 1) throw this.not('one decimal separator, no thousands mark');
    const written = this.text.slice(start, this.i);
    if (readsTwoWays(written))
      throw this.not(
        `${quoted(written)} can be read two ways: write ${cut(written.replace(',', '.'))} or ${cut(written.replace(',', ''))}`,
      );
    if (this.text[this.i] === 'e' || this.text[this.i] === 'E') this.exponent();
    const value = Number(written.includes(',') ? this.text.slice(start, this.i).replace(',', '.') : this.text.slice(start, this.i));
    if (start === this.i || !Number.isFinite(value)) throw this.not();
    return value;
  }

  private exponent(): void {
    this.i++;
    if (this.text[this.i] === '+' || this.text[this.i] === '-') this.i++;
    while (isDigit(this.text[this.i])) this.i++;
  }

  /** The size of the unit that stands here. */
  private unit(): number | undefined {
    if (this.i >= this.text.length) return undefined;
    const c = this.text.charAt(this.i);
    if (c === '+' || isMinus(c)) return undefined;
    const found = this.spelling(SPELLINGS.get(c) ?? []);
    if (found === undefined) throw this.not();
    this.i += found.length;
    const size = this.quantity.units[found];
    if (size === undefined) throw this.not(`"${found}" is not a unit of ${this.quantity.noun}`);
    return size;
  }

  private spelling(spellings: readonly string[]): string | undefined {
    for (const spelling of spellings) {
      const isHere = this.text.startsWith(spelling, this.i);
      if (isHere && !(isLetter(spelling[spelling.length - 1]) && isLetter(this.text[this.i + spelling.length]))) return spelling;
    }
    return undefined;
  }

  private spaces(): void {
    while (isSpace(this.text[this.i])) this.i++;
  }

  private not(why?: string): Refused {
    const units = unitsOf(this.quantity);
    return wrongInput(
      `not ${/^[ae]/.test(this.quantity.noun) ? 'an' : 'a'} ${this.quantity.noun}${why === undefined ? '' : ` (${why})`}; give ${this.quantity.example}${units === '' ? '' : `; units: ${units}`}`,
    );
  }
}

/** Text to a number in the core unit of the quantity. Refuses unknown and mismatched units; nothing is guessed. */
export const readQuantity = (text: string, quantity: Quantity): number => new Scanner(text, quantity).sum();

/** Text of any quantity, for checks that compare two of the same: nothing where it is none. */
export function readAnyQuantity(text: string): { readonly value: number; readonly noun: string } | undefined {
  for (const quantity of [RATIO, ...ALL]) {
    try {
      return { value: readQuantity(text, quantity), noun: quantity === RATIO ? '' : quantity.noun };
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
    }
  }
  return undefined;
}
