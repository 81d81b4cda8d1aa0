// The renderer in a page: its parts are files beside the page, fetched when they are first needed.
import { type PngOf, renderer } from './png';

async function part(url: URL): Promise<Uint8Array> {
  const response = await fetch(url);
  if (!response.ok) throw new Error('the part of the page that draws pictures could not be loaded');
  return new Uint8Array(await response.arrayBuffer());
}

export async function pngRenderer(): Promise<PngOf> {
  const [wasm, plain, bold] = await Promise.all([
    part(new URL('@resvg/resvg-wasm/index_bg.wasm', import.meta.url)),
    part(new URL('dejavu-fonts-ttf/ttf/DejaVuSans.ttf', import.meta.url)),
    part(new URL('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf', import.meta.url)),
  ]);
  return renderer({ wasm, fonts: [plain, bold] });
}
