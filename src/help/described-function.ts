/** An entry of functions.json. */
export interface Described {
  readonly id: string;
  readonly description: string;
  readonly parameters: readonly { readonly name: string; readonly description: string; readonly optional?: boolean }[];
}
