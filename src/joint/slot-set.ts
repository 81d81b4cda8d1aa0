// Some of the slots of the joint: a bit each, so that a row of values is marked and looked through by words.
const BITS = 32;
const wordOf = (slot: number): number => slot >>> 5;
const bitOf = (slot: number): number => 1 << (slot & (BITS - 1));

/** The first slot of a word in which there is one. */
export const firstSlot = (word: number, bits: number): number => word * BITS + BITS - 1 - Math.clz32(bits & -bits);

export class SlotSet {
  readonly words: Int32Array;

  /** @param size how many slots there are. */
  constructor(size: number) {
    this.words = new Int32Array(Math.ceil(size / BITS));
  }

  has(slot: number): boolean {
    return ((this.words[wordOf(slot)] ?? 0) & bitOf(slot)) !== 0;
  }

  add(slot: number): void {
    const word = wordOf(slot);
    this.words[word] = (this.words[word] ?? 0) | bitOf(slot);
  }

  addAll({ words }: SlotSet): void {
    for (let word = 0; word < words.length; word++) this.words[word] = (this.words[word] ?? 0) | (words[word] ?? 0);
  }

  removeAll({ words }: SlotSet): void {
    for (let word = 0; word < words.length; word++) this.words[word] = (this.words[word] ?? 0) & ~(words[word] ?? 0);
  }

  /** In their order. */
  slots(): readonly number[] {
    const slots: number[] = [];
    this.words.forEach((bits, word) => {
      for (let left = bits; left !== 0; left &= left - 1) slots.push(firstSlot(word, left));
    });
    return slots;
  }
}
