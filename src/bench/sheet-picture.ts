// How the sheet looked when the page was left: shown until the sheet itself stands.
import { element } from './dom';

const key = 'bosswright.picture';

interface SheetPicture {
  /** The workbook that it shows. */
  readonly of: string;
  readonly leftPx: number;
  readonly topPx: number;
  readonly widthPx: number;
  readonly url: string;
}

export function keepPicture(sheet: HTMLElement, of: string): void {
  const canvas = sheet.querySelector<HTMLCanvasElement>('canvas[id^="univer-sheet-main-canvas"]');
  if (canvas === null) return;
  const { left, top, width } = canvas.getBoundingClientRect();
  const frame = sheet.getBoundingClientRect();
  const picture: SheetPicture = {
    of,
    leftPx: left - frame.left,
    topPx: top - frame.top,
    widthPx: width,
    url: canvas.toDataURL('image/webp', 0.5),
  };
  try {
    localStorage.setItem(key, JSON.stringify(picture));
  } catch {
    // The workbook goes before its picture.
    localStorage.removeItem(key);
  }
}

/** @param over what lies over the sheet until that stands. */
export function showPicture(over: HTMLElement, of: string): void {
  try {
    const picture = JSON.parse(localStorage.getItem(key) ?? 'null') as SheetPicture | null;
    if (picture?.of !== of || !picture.url.startsWith('data:image/webp')) return;
    const image = element('img');
    image.alt = '';
    image.src = picture.url;
    Object.assign(image.style, { left: `${picture.leftPx}px`, top: `${picture.topPx}px`, width: `${picture.widthPx}px` });
    over.append(image);
  } catch {
    // Without a picture the line of progress says enough.
  }
}
