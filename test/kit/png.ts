// The points of a PNG of eight bits a channel, red, green, blue and alpha each.
import { unzlibSync } from 'fflate';

export interface Pixels {
  readonly widthPx: number;
  readonly heightPx: number;
  /** `#14181d` of a point. */
  at(x: number, y: number): string;
  /** How many points have each colour. */
  readonly colours: ReadonlyMap<string, number>;
}

const SIGNATURE = '89504e470d0a1a0a';
const BYTES = 4;

export function pixelsOf(png: Uint8Array): Pixels {
  const bytes = Buffer.from(png);
  if (bytes.subarray(0, 8).toString('hex') !== SIGNATURE) throw new Error('this is no PNG');
  const [widthPx, heightPx] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  if (bytes[24] !== 8 || bytes[25] !== 6) throw new Error('this PNG has other channels');
  const data: Buffer[] = [];
  for (let at = 8; at < bytes.length; at += 12 + bytes.readUInt32BE(at))
    if (bytes.toString('latin1', at + 4, at + 8) === 'IDAT') data.push(bytes.subarray(at + 8, at + 8 + bytes.readUInt32BE(at)));
  const lines = unzlibSync(Buffer.concat(data));
  const stride = widthPx * BYTES;
  const points = new Uint8Array(stride * heightPx);
  for (let y = 0; y < heightPx; y++) {
    const filter = lines[y * (stride + 1)] ?? 0;
    for (let i = 0; i < stride; i++) {
      const left = i < BYTES ? 0 : (points[y * stride + i - BYTES] ?? 0);
      const above = y === 0 ? 0 : (points[(y - 1) * stride + i] ?? 0);
      const corner = y === 0 || i < BYTES ? 0 : (points[(y - 1) * stride + i - BYTES] ?? 0);
      points[y * stride + i] = (lines[y * (stride + 1) + 1 + i] ?? 0) + guess(filter, left, above, corner);
    }
  }
  const colourAt = (at: number): number => ((points[at] ?? 0) << 16) | ((points[at + 1] ?? 0) << 8) | (points[at + 2] ?? 0);
  const counts = new Map<number, number>();
  for (let at = 0; at < points.length; at += BYTES) counts.set(colourAt(at), (counts.get(colourAt(at)) ?? 0) + 1);
  return {
    widthPx,
    heightPx,
    at: (x, y) => hex(colourAt((y * widthPx + x) * BYTES)),
    colours: new Map([...counts].map(([colour, count]) => [hex(colour), count])),
  };
}

const hex = (colour: number): string => `#${colour.toString(16).padStart(6, '0')}`;

function guess(filter: number, left: number, above: number, corner: number): number {
  if (filter === 0) return 0;
  if (filter === 1) return left;
  if (filter === 2) return above;
  if (filter === 3) return (left + above) >> 1;
  const [a, b, c] = [Math.abs(above - corner), Math.abs(left - corner), Math.abs(left + above - 2 * corner)];
  return a <= b && a <= c ? left : b <= c ? above : corner;
}
