import { cell, printed } from './cell';

/**
 * Results of every variant of a screw joint: a table of inputs in, a row of outputs for each variant out.
 * Spills as a table.
 * A cell that has no value says why.
 * One table is calculated in one go; each cell that waits for another takes Excel half a second more.
 * @customfunction JOINT.TABLE
 * @param inputs First row: names of joint inputs, with a unit or not, "wall (in)"; each further row one variant
 * @param [outputs] Names of the outputs wanted, a row or column; labels and every output but remedy if omitted
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Table with a header row
 */
export function jointTable(inputs: any[][], outputs?: any[][], base?: any[][]): any[][] {
  return cell('JOINT.TABLE', [inputs, outputs, base]) as any[][];
}

/**
 * One output of one variant of a screw joint, in the output's core unit, for use inside a table of the sheet.
 * For many results JOINT.TABLE is faster: each cell that waits for another takes Excel half a second more.
 * @customfunction JOINT.VALUE
 * @param names Names of joint inputs, a row or column: the header cells
 * @param values Their values in the same order: the cells of this row
 * @param output Name of the output wanted, in quotes, "engagement min"
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Value in the core unit of the output
 */
export function jointValue(names: any[][], values: any[][], output: any, base?: any[][]): any {
  return cell('JOINT.VALUE', [names, values, output, base]);
}

/**
 * Every output of one variant: value, unit, formula with its numbers, state and source.
 * Spills as a table.
 * @customfunction JOINT.CARD
 * @param inputs First row: names of joint inputs, with a unit or not, "wall (in)"; each further row one variant
 * @param [variant] Which variant, counted from 1; 1 if omitted
 * @param [base] Inputs that replace defaults: two columns name and value, or a header and a row; none if omitted
 * @returns Table with a header row
 */
export async function jointCard(inputs: any[][], variant?: any, base?: any[][]): Promise<any[][]> {
  return printed('JOINT.CARD', [inputs, variant, base]) as Promise<any[][]>;
}

/**
 * Names of all joint inputs with unit, default and meaning.
 * Spills as a table.
 * @customfunction JOINT.INPUTS
 * @returns Table with a header row
 */
export function jointInputs(): any[][] {
  return cell('JOINT.INPUTS', []) as any[][];
}

/**
 * Names of all joint outputs with unit and meaning.
 * Spills as a table.
 * @customfunction JOINT.OUTPUTS
 * @returns Table with a header row
 */
export function jointOutputs(): any[][] {
  return cell('JOINT.OUTPUTS', []) as any[][];
}
