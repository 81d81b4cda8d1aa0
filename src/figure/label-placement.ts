// A column of labels beside the part: each as near as possible to what it names, none over another, leaders in the same order.

export interface LabelWish {
  /** Where the leader would best start, and how far it may slide along what it names. */
  readonly best: number;
  readonly low: number;
  readonly high: number;
  /** Whether the leader should slide to the height of its label: anywhere along a dimension line is as good. */
  readonly slides: boolean;
}

/** Heights, px: of the label, and of the start of its leader. */
export interface LabelSpot {
  readonly labelY: number;
  readonly anchorY: number;
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

/** The entries of one column with their spots; they come sorted by `best`. */
export function placed<Wish extends LabelWish>(entries: readonly Wish[], pitch: number, top: number, bottom: number): (Wish & LabelSpot)[] {
  const free = spread(
    entries.map(({ best }) => best),
    pitch,
  );
  const spare = Math.max(top, bottom - (entries.length - 1) * pitch);
  const spots = entries.map((entry, i) => ({
    ...entry,
    labelY: within((free[i] ?? 0) - i * pitch, top, spare) + i * pitch,
    anchorY: entry.best,
  }));
  // from below: leaders that crowd at the mouth of the boss go down into the free height of the boss
  const upwards = [...spots.entries()].reverse();
  for (let round = 1; round <= ROUNDS; round++) {
    // little by little, so that two that stand together may both give way
    const apart = (LEADER_PITCH * round) / ROUNDS;
    for (const [i, spot] of upwards) {
      const from = Math.max(spot.low, (spots[i - 1]?.anchorY ?? -Infinity) + apart);
      const to = Math.min(spot.high, (spots[i + 1]?.anchorY ?? Infinity) - apart);
      if (from <= to) spot.anchorY = within(spot.slides ? spot.labelY : spot.best, from, to);
    }
  }
  return spots;
}
