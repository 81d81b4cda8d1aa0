// The renderer on Node: its parts lie in the packages.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { type PngOf, renderer } from './png';

const { resolve } = createRequire(import.meta.url);
const part = async (path: string): Promise<Uint8Array> => new Uint8Array(await readFile(resolve(path)));

export async function pngRenderer(): Promise<PngOf> {
  const [wasm, plain, bold] = await Promise.all([
    part('@resvg/resvg-wasm/index_bg.wasm'),
    part('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
    part('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'),
  ]);
  return renderer({ wasm, fonts: [plain, bold] });
}
