// Which function gives a size, and the tolerance that stands in the same call.
import { address, fixedCell, isOneCell } from '../../../sheet/addresses';
import { areaOf, type FormulaNode, ownFunction } from '../../../sheet/formula';
import { CARDS } from '../../../registry';
import type { Conversion, LiveResult } from '../conversion';
import type { Limit } from '../joint/joint-cells';
import { SIZES_OF_CALLS } from '../measuring';

function toleranceOf({ source }: Conversion, sheet: string, call: FormulaNode, argument: string): Limit | undefined {
  const i = CARDS.get(ownFunction(call) ?? '')?.params.findIndex(({ name }) => name === argument) ?? -1;
  const node = call.arguments?.[i] ?? null;
  const area = node === null ? undefined : areaOf(node, sheet);
  if (area === undefined) return typeof node?.value === 'number' ? { formula: String(node.value), value: node.value } : undefined;
  const value = source.value(area.sheet, address(area.top, area.left));
  return isOneCell(area) && typeof value === 'number' ? { formula: fixedCell(area.sheet, area.top, area.left), value } : undefined;
}

export function sizeOf(conversion: Conversion, sheet: string, call: FormulaNode): Pick<LiveResult, 'call' | 'tolerance'> {
  const id = ownFunction(call) ?? '';
  const argument = SIZES_OF_CALLS[id]?.tolerance;
  const tolerance = argument === undefined ? undefined : toleranceOf(conversion, sheet, call, argument);
  return { call: id, ...(tolerance !== undefined && { tolerance }) };
}
