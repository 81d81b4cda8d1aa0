// States as nested IF: what is blank, text or an error is not checked.

const NOT_CHECKED = '"not checked"';

/** CHECK.MAX and CHECK.MIN; review is undefined where none is asked, and a blank one asks nothing. */
export function checkFormula(side: 'max' | 'min', value: string, limit: string, review: string | undefined): string {
  const keeps = (what: string, bound: string): string => (side === 'max' ? `${what}<=${bound}+1E-9` : `${what}>=${bound}-1E-9`);
  const reviewed = review === undefined ? '"pass"' : `IF(OR(${review}=0,${keeps(value, review)}),"pass","review")`;
  const judged = `IF(${keeps(value, limit)},${reviewed},"fail")`;
  // a review beyond the limit is refused
  const sound = review === undefined ? judged : `IF(OR(${review}=0,${keeps(review, limit)}),${judged},NA())`;
  const numbers = [value, limit, ...(review === undefined ? [] : [review])].map(cell => `ISNUMBER(${cell})`).join(',');
  // a bare 0 is a blank: nothing was checked
  return `IF(AND(${numbers}),IF(AND(${value}<>0,${limit}<>0),${sound},${NOT_CHECKED}),${NOT_CHECKED})`;
}

/** CHECK.CLEAR: a gap against nothing. */
export function clearFormula(value: string, review: string | undefined): string {
  const reviewed = review === undefined ? '"pass"' : `IF(OR(${review}=0,${value}>${review}+1E-9),"pass","review")`;
  const judged = `IF(${value}<=1E-9,"fail",${reviewed})`;
  const sound = review === undefined ? judged : `IF(${review}>=0,${judged},NA())`;
  const numbers = [value, ...(review === undefined ? [] : [review])].map(cell => `ISNUMBER(${cell})`).join(',');
  return `IF(AND(${numbers}),IF(${value}<>0,${sound},${NOT_CHECKED}),${NOT_CHECKED})`;
}

/** Worst state of a range: fail, then not checked, then review, then pass. An error among the states is no state. */
export function worstFormula(range: string, cells: number): string {
  const count = (word: string): string => `SUMPRODUCT(0+(${range}="${word}"))`;
  const unfailed = `IF(${count('pass')}+${count('review')}<${cells},${NOT_CHECKED},IF(${count('review')}>0,"review","pass"))`;
  return `IF(${count('fail')}>0,"fail",${unfailed})`;
}
