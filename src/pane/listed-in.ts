// The descriptions of the functions, as they are published beside the pane.
import type { ListedFunction } from './function-list';

export async function listedIn(file: string): Promise<readonly ListedFunction[]> {
  const response = await fetch(file);
  if (!response.ok) throw new Error(`${response.status} ${response.statusText}`);
  return ((await response.json()) as { readonly functions: readonly ListedFunction[] }).functions;
}
