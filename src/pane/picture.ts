// An SVG as a picture for the sheet, drawn by the browser.
import type { Picture } from '../sheet/plan';
import type { Words } from '../words/english';

/** Pixels for each pixel on the sheet: sharp in print too. */
const DENSITY = 3;

function drawn(svg: string, fault: string): Promise<HTMLImageElement> {
  return new Promise((resolve, reject) => {
    const image = new Image();
    image.onload = () => resolve(image);
    image.onerror = () => reject(new Error(fault));
    image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  });
}

export async function pictureOf(svg: string, at: string, words: string, W: Words['frame']): Promise<Picture> {
  const image = await drawn(svg, W.notDrawn);
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth * DENSITY;
  canvas.height = image.naturalHeight * DENSITY;
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>(resolve => canvas.toBlob(resolve, 'image/png'));
  if (blob === null) throw new Error(W.noPicture);
  return { at, words, png: new Uint8Array(await blob.arrayBuffer()), widthPx: image.naturalWidth, heightPx: image.naturalHeight };
}
