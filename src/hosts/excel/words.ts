// What is said where Excel refuses: handed in, in the language of the page.
export interface ExcelWords {
  readonly codes: Readonly<Record<string, string>>;
  readonly tooOld: (needed: string) => string;
  readonly noSheet: (name: string) => string;
  readonly manyCells: (cells: number, most: number) => string;
  readonly longChoices: (range: string) => string;
  readonly localInTable: string;
  readonly noFile: string;
  readonly fileStopped: (part: number, of: number) => string;
  readonly fileGrew: string;
  readonly fileShort: (bytes: number, of: number) => string;
}

/** A refusal, until it is said. */
export class ExcelRefusal extends Error {
  constructor(readonly said: (words: ExcelWords) => string) {
    super('refused');
  }
}
