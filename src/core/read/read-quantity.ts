// Numbers with units, as people type them: "0.167 in + 0.25 mm", "1 1/4 in", "0°30'". One pass over the text, no back-tracking.
import { cut, quoted, Refused, wrongInput } from '../refuse';
import { ANGLE, DEG, QUANTITIES, type Quantity, RATIO, unitsOf } from './quantity';

/** Every spelling of a unit by its first character, the longest first. */
const SPELLINGS = new Map<string, string[]>();
for (const spelling of QUANTITIES.flatMap(({ units }) => Object.keys(units)).sort((a, b) => b.length - a.length)) {
  SPELLINGS.set(spelling.charAt(0), [...(SPELLINGS.get(spelling.charAt(0)) ?? []), spelling]);
}

const isDigit = (c: string | undefined): boolean => c !== undefined && c >= '0' && c <= '9';
const isLetter = (c: string | undefined): boolean => c !== undefined && c.toLowerCase() !== c.toUpperCase();
const isSpace = (c: string | undefined): boolean => c === ' ' || c === '\u00a0' || c === '\u202f' || c === '\t';
const isMinus = (c: string | undefined): boolean => c === '-' || c === '−';

/** One comma before exactly three digits: 1 to some, 1000 to others. "0,125" is no thousand. */
export const readsTwoWays = (digits: string): boolean => digits.includes(',') && /^\d*,\d{3}$/.test(digits) && !digits.startsWith('0,');

interface Summand {
  readonly number: number;
  /** How many core units its unit is; undefined if it has none. */
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
    if (terms === 0 || !Number.isFinite(total)) throw this.refusal();
    if (bare > 0 && terms > 1) throw this.refusal('give every term its unit');
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
    throw this.refusal();
  }

  private term(): Summand {
    let number = this.decimal();
    const mark = this.i;
    this.spaces();
    if (this.slash()) number = this.whole(number) / this.whole(this.decimal());
    else if (isDigit(this.text[this.i])) {
      const top = this.whole(this.decimal());
      this.spaces();
      if (!this.slash()) throw this.refusal();
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
    if (!Number.isInteger(value)) throw this.refusal('a fraction has whole numbers');
    return value;
  }

  private decimal(): number {
    const start = this.i;
    let separators = 0;
    for (; isDigit(this.text[this.i]) || this.text[this.i] === '.' || this.text[this.i] === ','; this.i++) {
      if (this.text[this.i] === '.' || this.text[this.i] === ',') {
        separators++;
        // "4.in" and "N.m": a point belongs to the number only with a digit behind it
        if (!isDigit(this.text[this.i + 1])) throw this.refusal();
      }
    }
    if (separators > 1) throw this.refusal('one decimal separator, no thousands mark');
    const written = this.text.slice(start, this.i);
    if (readsTwoWays(written))
      throw this.refusal(
        `${quoted(written)} can be read two ways: write ${cut(written.replace(',', '.'))} or ${cut(written.replace(',', ''))}`,
      );
    if (this.text[this.i] === 'e' || this.text[this.i] === 'E') this.exponent();
    const value = Number(written.includes(',') ? this.text.slice(start, this.i).replace(',', '.') : this.text.slice(start, this.i));
    if (start === this.i || !Number.isFinite(value)) throw this.refusal();
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
    if (found === undefined) throw this.refusal();
    this.i += found.length;
    const size = this.quantity.units[found];
    if (size === undefined) throw this.refusal(`"${found}" is not a unit of ${this.quantity.noun}`);
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

  private refusal(why?: string): Refused {
    const units = unitsOf(this.quantity);
    return wrongInput(
      `not ${/^[ae]/.test(this.quantity.noun) ? 'an' : 'a'} ` +
        `${this.quantity.noun}${why === undefined ? '' : ` (${why})`}; ` +
        `give ${this.quantity.example}${units === '' ? '' : `; units: ${units}`}`,
    );
  }
}

/** Text to a number in the core unit of the quantity. Refuses unknown and mismatched units; nothing is guessed. */
export const readQuantity = (text: string, quantity: Quantity): number => new Scanner(text, quantity).sum();

/** Text of any quantity, for checks that compare two of the same; undefined if it is none. */
export function readAnyQuantity(text: string): { readonly value: number; readonly noun: string } | undefined {
  for (const quantity of [RATIO, ...QUANTITIES]) {
    try {
      return { value: readQuantity(text, quantity), noun: quantity === RATIO ? '' : quantity.noun };
    } catch (fault) {
      if (!(fault instanceof Refused)) throw fault;
    }
  }
  return undefined;
}
