// What Excel will be told: the generator of the build, run over the wrappers in memory.
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { generateCustomFunctionsMetadata } from 'custom-functions-metadata';
import { completed } from '../help/plugin';

const folder = path.join(import.meta.dirname, '../../functions');
export const WRAPPER_FILES = readdirSync(folder)
  .filter(name => name.endsWith('.ts') && name !== 'cell.ts')
  .map(name => path.join(folder, name));

export interface ParameterText {
  readonly name: string;
  readonly description: string;
  readonly type?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
}

export interface FunctionText {
  readonly id: string;
  readonly name: string;
  readonly description: string;
  readonly helpUrl: string;
  readonly parameters: readonly ParameterText[];
  readonly result: { readonly dimensionality?: string };
}

const generated = await generateCustomFunctionsMetadata(WRAPPER_FILES, false);

export const ERRORS: readonly string[] = generated.errors;
export const ASSOCIATED: readonly { readonly id: string; readonly functionName: string; readonly sourceFileName: string }[] =
  generated.associate;
export const METADATA = completed(JSON.parse(generated.metadataJson || '{"functions":[]}') as { readonly functions: FunctionText[] }) as {
  readonly functions: readonly FunctionText[];
  readonly enums?: readonly unknown[];
};
