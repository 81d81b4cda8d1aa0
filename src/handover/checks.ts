// States as nested IF: what is blank, text or an error is not checked.

const NOT_CHECKED = '"not checked"';

/** CHECK.MAX and CHECK.MIN; look is undefined where none is asked. */
export function checkFormula(side: 'max' | 'min', value: string, limit: string, look: string | undefined): string {
  const keeps = (bound: string): string => (side === 'max' ? `${value}<=${bound}+1E-9` : `${value}>=${bound}-1E-9`);
  const passing = look === undefined ? '"pass"' : `IF(${keeps(look)},"pass","look")`;
  const cells = [value, limit, ...(look === undefined ? [] : [look])];
  const numbers = cells.map(cell => `ISNUMBER(${cell})`).join(',');
  // a bare 0 is a blank: nothing was checked
  const given = [value, limit].map(cell => `${cell}<>0`).join(',');
  return `IF(AND(${numbers}),IF(AND(${given}),IF(${keeps(limit)},${passing},"fail"),${NOT_CHECKED}),${NOT_CHECKED})`;
}

/** Worst state of a range: fail, then not checked, then look, then pass. */
export function worstFormula(range: string, cells: number): string {
  const count = (word: string): string => `SUMPRODUCT(0+(${range}="${word}"))`;
  return `IF(${count('fail')}>0,"fail",IF(${count('pass')}+${count('look')}<${cells},${NOT_CHECKED},IF(${count('look')}>0,"look","pass")))`;
}
