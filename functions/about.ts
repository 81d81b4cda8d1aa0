import { cell, printed } from './cell';

/**
 * Why a call is refused, or ok: the message that the spreadsheet may hide.
 * @customfunction REASON
 * @param name Function name in quotes, "BOSS.OD"
 * @param [arg1] First argument of that call, cell, range or value; none if omitted
 * @param [arg2] Second argument; none if omitted
 * @param [arg3] Third argument; none if omitted
 * @param [arg4] Fourth argument; none if omitted
 * @param [arg5] Fifth argument; none if omitted
 * @param [arg6] Sixth argument; none if omitted
 * @param [arg7] Seventh argument; none if omitted
 * @param [arg8] Eighth argument; none if omitted
 * @param [arg9] Ninth argument; none if omitted
 * @returns Text
 */
export async function reason(
  name: any,
  arg1?: any[][],
  arg2?: any[][],
  arg3?: any[][],
  arg4?: any[][],
  arg5?: any[][],
  arg6?: any[][],
  arg7?: any[][],
  arg8?: any[][],
  arg9?: any[][],
): Promise<any> {
  return printed('REASON', [name, arg1, arg2, arg3, arg4, arg5, arg6, arg7, arg8, arg9]);
}

/**
 * What a function does: formula, symbols, limits, sources, and how each value is known.
 * @customfunction ABOUT
 * @param name Function name in quotes, "BOSS.OD"
 * @param [item] One item of it, such as "formula", "limits" or "source"; all if omitted
 * @returns Text of at most 1,000 characters
 */
export async function about(name: any, item?: any): Promise<any> {
  return printed('ABOUT', [name, item]);
}

/**
 * Formula of a call with its numbers filled in, and the result with its unit.
 * @customfunction WORKING
 * @param name Function name in quotes, "BOSS.OD"
 * @param [arg1] First argument of that call, cell, range or value; none if omitted
 * @param [arg2] Second argument; none if omitted
 * @param [arg3] Third argument; none if omitted
 * @param [arg4] Fourth argument; none if omitted
 * @param [arg5] Fifth argument; none if omitted
 * @param [arg6] Sixth argument; none if omitted
 * @param [arg7] Seventh argument; none if omitted
 * @param [arg8] Eighth argument; none if omitted
 * @param [arg9] Ninth argument; none if omitted
 * @returns Text
 */
export async function working(
  name: any,
  arg1?: any[][],
  arg2?: any[][],
  arg3?: any[][],
  arg4?: any[][],
  arg5?: any[][],
  arg6?: any[][],
  arg7?: any[][],
  arg8?: any[][],
  arg9?: any[][],
): Promise<any> {
  return printed('WORKING', [name, arg1, arg2, arg3, arg4, arg5, arg6, arg7, arg8, arg9]);
}

/**
 * Version of the functions and of their data.
 * @customfunction VERSION
 * @param [after] Any cell that changes, so that this one recalculates after it; not used if omitted
 * @returns Text
 */
export function version(after?: any): any {
  return cell('VERSION', [after]);
}
