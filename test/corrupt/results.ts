// What the last run of npm run test:corrupt found, as it is kept in results.json.
export interface Results {
  readonly on: string;
  readonly seed: number;
  readonly tried: number;
  readonly caught: number;
  /** How many test/standards and test/evidence noticed; only the rest went through the whole of npm test. */
  readonly byStandardsAndEvidence: number;
  readonly kinds: Readonly<Record<string, { readonly tried: number; readonly caught: number }>>;
  readonly survivors: readonly { readonly kind: string; readonly file: string; readonly line: number; readonly said: string }[];
  /** Each file that was changed, with its hash at the time. */
  readonly files: Readonly<Record<string, string>>;
}
