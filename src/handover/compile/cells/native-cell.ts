// A formula without a call of ours stays as it was typed, but for what other programs do not spill.
import type { Cell } from '../../../core/kinds';
import { address } from '../../../sheet/addresses';
import { areaOf, calledName, type FormulaNode, ownFunction, parseFormula, type Replacement, rewritten, walk } from '../../../sheet/formula';
import type { PlanCell } from '../../../sheet/plan';
import { otherAddIn } from '../../read/outgoing';
import { isRows, type SourceCell } from '../../../sheet/workbook-values';
import { isPlain } from '../allowed';
import type { Conversion } from '../conversion';
import { valued } from './cell-value';

/** Names of functions and signs that not every program has. */
function foreign(tree: FormulaNode): string[] {
  return [...walk(tree)].flatMap(node => {
    if (node.type === 'UnaryExpression' && node.operator === '#') return ['#'];
    if (node.type === 'LetExpression') return ['LET'];
    if (node.type === 'LambdaExpression') return ['LAMBDA'];
    const name = calledName(node);
    return name === undefined || ownFunction(node) !== undefined || isPlain(name) || otherAddIn(name) !== undefined ? [] : [name];
  });
}

export function noteForeign({ findings, said }: Conversion, sheet: string, at: string, formula: string): void {
  const tree = parseFormula(formula);
  for (const name of new Set(tree === undefined ? [] : foreign(tree)))
    findings.push({ sheet, at, what: 'not in every program', words: said.staysAsTyped(name) });
  const others = tree === undefined ? [] : [...walk(tree)].flatMap(node => otherAddIn(calledName(node) ?? '') ?? []);
  if (others.length > 0)
    findings.push({
      sheet,
      at,
      what: 'another add-in',
      words: `${[...new Set(others)].join(', ')}: ${said.staysOfAddIn}`,
    });
}

export function nativeCell(
  conversion: Conversion,
  sheet: string,
  at: string,
  formula: string,
  tree: FormulaNode,
  value: Cell | undefined,
  { array }: SourceCell,
): PlanCell {
  const spilled = spillReplacements(conversion, sheet, tree);
  // what the user's own formulas spill stays; what ours spill becomes their cells
  if (spilled === undefined || spilled.length === 0) conversion.kept.add(`${sheet}!${at}`);
  const plain = rewritten(formula, [0, formula.length], spilled ?? []);
  noteForeign(conversion, sheet, at, plain);
  return { at, role: 'text', formula: plain, ...valued(value), ...(array && { array }) };
}

/** `B4#`, all that spilled from B4, becomes its range. Undefined where that is not known here. */
export function spillReplacements({ source }: Conversion, sheet: string, tree: FormulaNode): Replacement[] | undefined {
  const replacements: Replacement[] = [];
  for (const node of walk(tree)) {
    const [argument] = node.arguments ?? [];
    if (node.operator !== '#' || argument === null || argument === undefined) continue;
    const area = areaOf(argument, sheet);
    const rows = area === undefined ? undefined : source.result(area.sheet, address(area.top, area.left));
    const isOurs =
      area !== undefined && source.cell(area.sheet, address(area.top, area.left))?.formula?.toUpperCase().startsWith('=ENCL.') === true;
    if (area === undefined || !isRows(rows) || !isOurs) return undefined;
    const name = String(argument.value);
    const prefix = name.slice(0, name.lastIndexOf('!') + 1);
    replacements.push({
      loc: [argument.loc[0], node.loc[1]],
      text: `${prefix}${address(area.top, area.left)}:${address(area.top + rows.length - 1, area.left + (rows[0]?.length ?? 1) - 1)}`,
    });
  }
  return replacements;
}
