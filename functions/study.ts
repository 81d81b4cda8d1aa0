import { studied } from './cell';

/**
 * One output of a joint over two of its inputs: x values along the top, y values down the side.
 * Spills as a table.
 * @customfunction JOINT.MAP
 * @param inputs Joint inputs: two columns name and value, or a header and one row
 * @param x Name of the input along the top, in quotes, "boss OD"; with a unit or not, "boss OD (in)"
 * @param x_values Its values, a row or column
 * @param y Name of the input down the side, in quotes, "wall"; with a unit or not
 * @param y_values Its values, a row or column
 * @param [output] Name of the output in each cell; "state" if omitted
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Table with the x values as its first row and the y values as its first column
 */
export async function jointMap(
  inputs: any[][],
  x: any,
  x_values: any[][],
  y: any,
  y_values: any[][],
  output?: any,
  base?: any[][],
): Promise<any[][]> {
  return studied('JOINT.MAP', [inputs, x, x_values, y, y_values, output, base]) as Promise<any[][]>;
}

/**
 * How far each input of a joint may move while all others stay: without a fail, and with every rule passing.
 * Spills as a table.
 * @customfunction JOINT.WINDOW
 * @param inputs Joint inputs: two columns name and value, or a header and one row
 * @param [names] Names of the inputs to move, a row or column; every numeric input that affects a rule if omitted
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Table with a header row, one row per input
 */
export async function jointWindow(inputs: any[][], names?: any[][], base?: any[][]): Promise<any[][]> {
  return studied('JOINT.WINDOW', [inputs, names, base]) as Promise<any[][]>;
}

/**
 * What moves one output of a joint: its slope by each input, and what the tolerance of each makes of it.
 * Spills as a table.
 * @customfunction JOINT.SENSITIVITY
 * @param inputs Joint inputs: two columns name and value, or a header and one row
 * @param output Name of the output, in quotes, "engagement min"
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Table with a header row, the input of the largest change first
 */
export async function jointSensitivity(inputs: any[][], output: any, base?: any[][]): Promise<any[][]> {
  return studied('JOINT.SENSITIVITY', [inputs, output, base]) as Promise<any[][]>;
}

/**
 * How many joints meet each rule when every size that has limits is drawn within them.
 * Spills as a table.
 * The same seed gives the same counts everywhere.
 * @customfunction JOINT.SIMULATE
 * @param inputs Joint inputs: two columns name and value, or a header and one row
 * @param [samples] Joints drawn, 1000 to 200000; 20000 if omitted
 * @param [seed] Seed of the draws, 1 to 2147483647; 1 if omitted
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Table with a header row, one row per rule, then all of them
 */
export async function jointSimulate(inputs: any[][], samples?: any, seed?: any, base?: any[][]): Promise<any[][]> {
  return studied('JOINT.SIMULATE', [inputs, samples, seed, base]) as Promise<any[][]>;
}

/**
 * The value of one input of a joint, nearest to its present one, at which an output reaches its target.
 * @customfunction JOINT.SOLVE
 * @param inputs Joint inputs: two columns name and value, or a header and one row
 * @param name Name of the input to move, in quotes, "wall"
 * @param output Name of the output, in quotes, "engagement min"
 * @param target What the output is to be, a number in its core unit or text with unit; a blank is 0
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Value of that input in its core unit
 */
export async function jointSolve(inputs: any[][], name: any, output: any, target: any, base?: any[][]): Promise<any> {
  return studied('JOINT.SOLVE', [inputs, name, output, target, base]);
}
