// The one step between a core answer and a cell: a value, a rectangle, or CustomFunctions.Error.
import { call } from '../src/calculations';
import { type Cell, type CellError, DATA_TYPE } from '../src/core/kinds';

/** What a data type of the host may say of itself; in an error and in an entity the basic value is the text of an error. */
interface HostValue {
  readonly type?: unknown;
  readonly basicType?: unknown;
  readonly basicValue?: unknown;
  readonly code?: unknown;
  readonly errorType?: unknown;
}

/** By errorType, which every language and version spells alike; the text of the error may be missing. */
const ERRORS: ReadonlyMap<unknown, string> = new Map([
  ['Blocked', '#BLOCKED!'],
  ['Busy', '#BUSY!'],
  ['Calc', '#CALC!'],
  ['Connect', '#CONNECT!'],
  ['Div0', '#DIV/0!'],
  ['External', '#EXTERNAL!'],
  ['Field', '#FIELD!'],
  ['GettingData', '#GETTING_DATA'],
  ['Name', '#NAME?'],
  ['NotAvailable', '#N/A'],
  ['Null', '#NULL!'],
  ['Num', '#NUM!'],
  ['Placeholder', '#BUSY!'],
  ['Ref', '#REF!'],
  ['Spill', '#SPILL!'],
  ['Value', '#VALUE!'],
]);

const cellError = (text: unknown): CellError => ({ cellError: typeof text === 'string' ? text : '' });

/**
 * Numbers, texts and truths that come as data types are read as what they are; errors are named; of anything else only a field can be
 * meant.
 */
function plain(raw: unknown): unknown {
  if (Array.isArray(raw)) return raw.map(plain);
  if (raw === null || typeof raw !== 'object') return raw;
  const { type, basicType, basicValue, code, errorType } = raw as HostValue;
  if ((type ?? basicType) === 'Error' || typeof code === 'string') return cellError(ERRORS.get(errorType) ?? code ?? basicValue);
  if (typeof basicValue === 'number' || typeof basicValue === 'boolean') return basicValue;
  if ([type, basicType].includes('String') && typeof basicValue === 'string') return basicValue;
  if ([type, basicType].includes('Empty')) return '';
  // the invocation object that Excel appends stands in the place of an argument that was left out
  return type === undefined && basicType === undefined ? undefined : cellError(DATA_TYPE);
}

function handed(answer: ReturnType<typeof call>): Cell | Cell[][] {
  if (answer.ok) return answer.value;
  throw new CustomFunctions.Error(answer.code as CustomFunctions.ErrorCode, answer.message);
}

/** Calls the core and hands the answer to the spreadsheet. */
export const cell = (id: string, args: readonly unknown[]): Cell | Cell[][] => handed(call(id, args.map(plain)));

const notLoaded = (): never => {
  throw new CustomFunctions.Error(CustomFunctions.ErrorCode.notAvailable, 'a part of the add-in could not be loaded: calculate again');
};

/** The same for a function that prints formulas: what it prints them from is loaded when the first one is asked for. */
export async function printed(id: string, args: readonly unknown[]): Promise<Cell | Cell[][]> {
  const all = await import(/* webpackChunkName: "printing" */ '../src/registry').catch(notLoaded);
  return handed(all.call(id, args.map(plain)));
}

/** The same for a function that studies one joint. */
export async function studied(id: string, args: readonly unknown[]): Promise<Cell | Cell[][]> {
  const studies = await import(/* webpackChunkName: "studies" */ '../src/studies').catch(notLoaded);
  return handed(studies.call(id, args.map(plain)));
}
