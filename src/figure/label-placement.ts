// A column of labels beside the part: each as near as possible to what it names, none over another, leaders in the same order.

export interface LabelWish {
  /** Where the leader would best start, and how far it may slide along what it names. */
  readonly best: number;
  readonly low: number;
  readonly high: number;
  /** Whether the leader should slide to the height of its label: anywhere along a dimension line is as good. */
  readonly slides: boolean;
}

export interface LabelSpot {
  readonly label: number;
  readonly anchor: number;
}

/** Positions at least `pitch` apart, in the given order, with the least squared distance from the wished ones. */
export function spread(wished: readonly number[], pitch: number): number[] {
  const blocks: { sum: number; count: number }[] = [];
  wished.forEach((wish, i) => {
    let block = { sum: wish - i * pitch, count: 1 };
    for (
      let last = blocks[blocks.length - 1];
      last !== undefined && last.sum / last.count >= block.sum / block.count;
      last = blocks[blocks.length - 1]
    ) {
      block = { sum: block.sum + last.sum, count: block.count + last.count };
      blocks.pop();
    }
    blocks.push(block);
  });
  const starts = blocks.flatMap(({ sum, count }) => Array.from({ length: count }, () => sum / count));
  return starts.map((start, i) => start + i * pitch);
}

const within = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** Leaders that start at the same height are pulled apart as far as what they name allows. */
const LEADER_PITCH = 6;
const ROUNDS = 12;

/** Labels and leader starts of one column, in the order of the entries; entries come sorted by `best`. */
export function placed(entries: readonly LabelWish[], pitch: number, top: number, bottom: number): LabelSpot[] {
  const free = spread(
    entries.map(({ best }) => best),
    pitch,
  );
  const spare = Math.max(top, bottom - (entries.length - 1) * pitch);
  const labels = free.map((label, i) => within(label - i * pitch, top, spare) + i * pitch);
  const anchors = entries.map(({ best }) => best);
  for (let round = 1; round <= ROUNDS; round++) {
    // little by little, so that two that stand together may both give way
    const apart = (LEADER_PITCH * round) / ROUNDS;
    // from below: leaders that crowd at the mouth of the boss go down into the free height of the boss
    for (let i = entries.length - 1; i >= 0; i--) {
      const { best, low, high, slides } = entries[i] as LabelWish;
      const from = Math.max(low, (anchors[i - 1] ?? -Infinity) + apart);
      const to = Math.min(high, (anchors[i + 1] ?? Infinity) - apart);
      if (from <= to) anchors[i] = within(slides ? (labels[i] as number) : best, from, to);
    }
  }
  return labels.map((label, i) => ({ label, anchor: anchors[i] as number }));
}
