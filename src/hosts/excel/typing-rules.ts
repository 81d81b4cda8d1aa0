// What may be typed into cells, as it was before a drop-down came over it.
import { address, rectangleOf } from '../../sheet/addresses';

interface ReadRule {
  readonly range: string;
  readonly validation: Excel.DataValidation;
}

interface TypingRule {
  readonly range: string;
  /** Undefined where anything may be typed. */
  readonly rule: Excel.DataValidationRule | undefined;
  readonly prompt: Excel.DataValidationPrompt | null;
  readonly errorAlert: Excel.DataValidationErrorAlert;
  readonly ignoreBlanks: boolean;
}

export function readRule(sheet: Excel.Worksheet, range: string): ReadRule {
  const validation = sheet.getRange(range).dataValidation;
  validation.load('type,rule,prompt,errorAlert,ignoreBlanks');
  return { range, validation };
}

/** Of cells with different rules Excel tells none: each is asked for. */
const isMixed = ({ validation: { type } }: ReadRule): boolean =>
  type === Excel.DataValidationType.inconsistent || type === Excel.DataValidationType.mixedCriteria;

function cellsOf(range: string): string[] {
  const { top, left, bottom, right } = rectangleOf(range);
  return Array.from({ length: bottom - top + 1 }, (_, r) =>
    Array.from({ length: right - left + 1 }, (__, c) => address(top + r, left + c)),
  ).flat();
}

const ruleOf = ({ range, validation: { type, rule, prompt, errorAlert, ignoreBlanks } }: ReadRule): TypingRule => ({
  range,
  rule: type === Excel.DataValidationType.none ? undefined : rule,
  prompt: prompt as Excel.DataValidationPrompt | null,
  errorAlert,
  ignoreBlanks,
});

/** Of what was read; one exchange more where rules differ within a range. */
export async function rulesOf(context: Excel.RequestContext, sheet: Excel.Worksheet, read: readonly ReadRule[]): Promise<TypingRule[]> {
  const cells = read.filter(isMixed).flatMap(({ range }) => cellsOf(range).map(at => readRule(sheet, at)));
  if (cells.length > 0) await context.sync();
  return [...read.filter(one => !isMixed(one)), ...cells].map(ruleOf);
}

export function putRule(sheet: Excel.Worksheet, { range, rule, prompt, errorAlert, ignoreBlanks }: TypingRule): void {
  const { dataValidation } = sheet.getRange(range);
  if (rule !== undefined) {
    dataValidation.rule = rule;
    dataValidation.ignoreBlanks = ignoreBlanks;
    dataValidation.errorAlert = errorAlert;
  }
  // It may stand alone, where anything may be typed.
  if (prompt !== null && (prompt.title !== '' || prompt.message !== '')) dataValidation.prompt = prompt;
}
