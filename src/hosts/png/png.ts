// SVG to PNG without a browser. A renderer that is given no font leaves all text out and says nothing, so it brings its own.
import { initWasm, Resvg } from '@resvg/resvg-wasm';

/** Pixels for each pixel of the drawing: sharp in print too. */
const DENSITY = 3;

export type PngOf = (svg: string) => Uint8Array;

export interface RendererParts {
  readonly wasm: Uint8Array;
  readonly fonts: readonly Uint8Array[];
}

/** The library can be started once only. */
let started: Promise<void> | undefined;

export async function renderer({ wasm, fonts }: RendererParts): Promise<PngOf> {
  await (started ??= initWasm(wasm));
  const font = { fontBuffers: [...fonts], defaultFontFamily: 'DejaVu Sans', sansSerifFamily: 'DejaVu Sans' };
  return svg => {
    const drawing = new Resvg(svg, { font, fitTo: { mode: 'zoom', value: DENSITY } });
    const image = drawing.render();
    try {
      return image.asPng();
    } finally {
      image.free();
      drawing.free();
    }
  };
}
