// One custom function as the sheet engine wants it: values unboxed as Excel would hand them over, answers boxed,
// errors kept with their message.
import type { Nullable } from '@univerjs/core';
import {
  ArrayValueObject,
  AsyncObject,
  BaseFunction,
  BooleanValueObject,
  ErrorValueObject,
  FunctionType,
  NumberValueObject,
  StringValueObject,
  type BaseValueObject,
  type ErrorType,
  type IFunctionInfo,
} from '@univerjs/preset-sheets-core';
import { detail, isRange, type ParameterEntry, type SheetFunction } from './metadata';

/** The text of an error, kept in the cell beside the error value. */
export interface ErrorNote {
  readonly code: string;
  readonly message: string;
}

/** A cell's value; a blank cell is 0, as in desktop Excel. */
function unboxed(value: Nullable<BaseValueObject>): unknown {
  if (!value || value.isNull()) return 0;
  if (value.isError()) return new CustomFunctions.Error((value as ErrorValueObject).getErrorType() as unknown as CustomFunctions.ErrorCode);
  return value.getValue();
}

function argument(value: BaseValueObject | undefined, parameter: ParameterEntry): unknown {
  if (value === undefined || value.isNull()) return null;
  if (!value.isArray()) return isRange(parameter) ? [[unboxed(value)]] : unboxed(value);
  const rows = (value as ArrayValueObject).getArrayValue().map(row => row.map(unboxed));
  return isRange(parameter) || rows.length > 1 || rows[0]?.length !== 1 ? rows : rows[0][0];
}

function boxedError(thrown: unknown): ErrorValueObject {
  const message = thrown instanceof Error ? thrown.message : String(thrown);
  const code = thrown instanceof CustomFunctions.Error ? String(thrown.code) : '#VALUE!';
  // Not ErrorValueObject.create: that one answers a shared object, and the note belongs to this cell.
  const box = new ErrorValueObject(code as ErrorType, message);
  box.withCustomData({ error: { code, message } satisfies ErrorNote });
  return box;
}

function boxed(value: unknown): BaseValueObject {
  if (typeof value === 'number')
    return Number.isFinite(value) ? NumberValueObject.create(value) : boxedError(new Error('the function answered no finite number'));
  if (typeof value === 'boolean') return BooleanValueObject.create(value);
  if (typeof value === 'string') return StringValueObject.create(value);
  if (value instanceof Error) return boxedError(value);
  return NumberValueObject.create(0); // an empty place: Excel shows it as 0
}

function boxedTable(rows: readonly (readonly unknown[])[]): ArrayValueObject {
  return ArrayValueObject.create({
    calculateValueList: rows.map(row => row.map(boxed)),
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });
}

const boxedAnswer = (answer: unknown): BaseValueObject => (Array.isArray(answer) ? boxedTable(answer) : boxed(answer));

class SheetExecutor extends BaseFunction {
  // The engine would answer a wrong count with a bare #N/A.
  override minParams = -1;
  override maxParams = -1;

  constructor(private readonly entry: SheetFunction) {
    super(entry.name);
  }

  /** Else the literal "1/2" arrives as a date. */
  override isArgumentsIgnoreNumberPattern(): boolean {
    return true;
  }

  /** Any of them may answer later. */
  override isAsync(): boolean {
    return true;
  }

  override calculate(...values: BaseValueObject[]): ReturnType<BaseFunction['calculate']> {
    const { name, parameters, wrapper } = this.entry;
    const required = parameters.filter(({ optional }) => optional !== true).length;
    try {
      if (values.length < required || values.length > parameters.length) {
        const wanted = required === parameters.length ? String(required) : `${required} to ${parameters.length}`;
        throw new Error(
          `${name} takes ${wanted} argument${wanted === '1' ? '' : 's'} ` +
            `(${parameters.map(each => each.name).join(', ')}), ${values.length} given`,
        );
      }
      const answer = wrapper(...parameters.map((parameter, index) => argument(values[index], parameter)), { functionName: name });
      return answer instanceof Promise ? new AsyncObject(answer.then(boxedAnswer, boxedError)) : boxedAnswer(answer);
    } catch (thrown) {
      return boxedError(thrown);
    }
  }
}

export const executor = (entry: SheetFunction): BaseFunction => new SheetExecutor(entry);

/**
 * What autocomplete and the argument help show.
 * @param example the arguments of its example, as they are typed; cells where there is none yet.
 */
export const description = (
  { name, description: sentence, parameters, english }: SheetFunction,
  example: readonly string[] = parameters.map(parameter => (isRange(parameter) ? 'B4:B9' : 'B4')),
): IFunctionInfo => ({
  functionName: name,
  functionType: FunctionType.User,
  description: sentence,
  abstract: sentence,
  functionParameter: parameters.map((parameter, index) => ({
    name: parameter.name,
    detail: detail(parameter, english === undefined ? 'en' : 'de'),
    example: example[index] ?? '',
    require: parameter.optional === true ? 0 : 1,
    repeat: 0,
  })),
});
