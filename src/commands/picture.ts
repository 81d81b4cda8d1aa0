// A figure as a file: SVG or PNG by its ending.
import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import { inFixedColours } from '../figure/style';

export const PICTURES = ['svg', 'png'] as const;
export const endingOf = (file: string): string => path.extname(file).slice(1).toLowerCase();

export async function writePicture(svg: string, to: string): Promise<void> {
  const fixed = inFixedColours(svg);
  await writeFile(to, endingOf(to) === 'svg' ? fixed : (await (await import('../hosts/png/node')).pngRenderer())(fixed));
}
