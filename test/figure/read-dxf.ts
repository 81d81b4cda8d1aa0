// Reads a drawing back by its groups, knowing nothing of who wrote it.

export interface DrawnEntity {
  readonly is: string;
  readonly layer: string;
  /** First value of every group code. */
  readonly at: ReadonlyMap<number, string>;
}

export type Place = readonly [x: number, y: number];

export const groupsOf = (text: string): (readonly [code: number, value: string])[] => {
  const lines = text.split('\n').slice(0, -1);
  if (lines.length % 2 !== 0) throw new Error('a group without a value');
  return lines.flatMap((code, i) => (i % 2 === 0 ? [[Number(code), lines[i + 1] ?? ''] as const] : []));
};

export function entitiesOf(text: string): DrawnEntity[] {
  const groups = groupsOf(text);
  const from = groups.findIndex(([code, value]) => code === 2 && value === 'ENTITIES');
  const list: { is: string; at: Map<number, string> }[] = [];
  for (const [code, value] of groups.slice(from + 1)) {
    if (code === 0) list.push({ is: value, at: new Map() });
    else if (list.at(-1)?.at.has(code) === false) list.at(-1)?.at.set(code, value);
  }
  return list.filter(({ is }) => is !== 'ENDSEC' && is !== 'EOF').map(one => ({ ...one, layer: one.at.get(8) ?? '' }));
}

export const numberAt = ({ at }: DrawnEntity, code: number): number => Number(at.get(code) ?? NaN);
const placeAt = (entity: DrawnEntity, code: number): Place => [numberAt(entity, code), numberAt(entity, code + 10)];

/** Both ends of a line or an arc. */
export function endsOf(entity: DrawnEntity): readonly [Place, Place] {
  const [x, y] = placeAt(entity, 10);
  if (entity.is === 'LINE') return [[x, y], placeAt(entity, 11)];
  const end = (code: number): Place => {
    const angle = (numberAt(entity, code) * Math.PI) / 180;
    return [x + numberAt(entity, 40) * Math.cos(angle), y + numberAt(entity, 40) * Math.sin(angle)];
  };
  return [end(50), end(51)];
}

/** Ends that an odd number of lines and arcs have: none where every outline is closed. */
export function looseEnds(entities: readonly DrawnEntity[], withinMm: number): Place[] {
  const ends = entities.flatMap(endsOf);
  return ends.filter(([x, y]) => ends.filter(([ox, oy]) => Math.hypot(x - ox, y - oy) <= withinMm).length % 2 !== 0);
}
