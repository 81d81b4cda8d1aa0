// Names for new sheets beside those that are there.
const LONGEST = 31;

/** Programs take `steps` and `Steps` for the same sheet. */
export class SheetNames {
  private readonly taken = new Set<string>();

  /** The name itself, or with a number behind it where it is taken. */
  free(name: string): string {
    for (let n = 1; ; n++) {
      const tail = n === 1 ? '' : `_${n}`;
      const full = `${name.slice(0, LONGEST - tail.length)}${tail}`;
      if (this.taken.has(full.toLowerCase())) continue;
      this.taken.add(full.toLowerCase());
      return full;
    }
  }

  /** `name_1`, `name_2`, … */
  numbered(name: string): string {
    for (let n = 1; ; n++) if (!this.taken.has(`${name}_${n}`.toLowerCase())) return this.free(`${name}_${n}`);
  }
}
