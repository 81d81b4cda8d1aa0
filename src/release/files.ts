// A folder as its files, and the words of a file.

/** Path inside the folder, with `/` on every machine, to content. */
export type Files = ReadonlyMap<string, Uint8Array>;

/** The list that `sha256sum -c` reads. */
export const SUMS = 'SHA256SUMS';

const decoder = new TextDecoder();

export const textOf = (files: Files, path: string): string => decoder.decode(files.get(path) ?? new Uint8Array());
