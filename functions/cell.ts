// The one step between a core answer and a cell: a value, a rectangle, or CustomFunctions.Error.
import { call } from "../src/registry";
import type { Cell, CellError } from "../src/core/kinds";

/** Error values arrive as CustomFunctions.Error or as an error data type; formatted numbers as objects with basicValue. */
function plain(raw: unknown): unknown {
  if (Array.isArray(raw)) return raw.map(plain);
  if (raw === null || typeof raw !== "object") return raw;
  const { basicType, basicValue, code } = raw as { basicType?: unknown; basicValue?: unknown; code?: unknown };
  if (basicType === "Error" || typeof code === "string") return { cellError: String(code ?? basicValue) } satisfies CellError;
  return basicValue;
}

/** Calls the core and hands the answer to the spreadsheet. Excel appends an invocation object; the wrappers never pass it on. */
export function cell(id: string, args: readonly unknown[]): Cell | Cell[][] {
  const answer = call(id, args.map(plain));
  if (answer.ok) return answer.value;
  throw new CustomFunctions.Error(answer.code as CustomFunctions.ErrorCode, answer.message);
}
