// Pictures over the cells of the bench: put there, and told as they were given.
import { ISheetDrawingService, ImageSourceType, type ISheetImage } from '@univerjs/preset-sheets-drawing';
import type { Picture } from '../../sheet/plan';
import { address, cellPosition } from '../../sheet/addresses';
import { workbookId, type OpenSheet, type Sheets } from './sheets';

/** The engine keeps what it does not know with the image: the words go along into the kept workbook and the file. */
type ImageWithWords = ISheetImage & { readonly words?: string };

const PNG = 'data:image/png;base64,';

/** In pieces: a call takes only so many arguments. */
function toBase64(bytes: Uint8Array): string {
  let text = '';
  for (let from = 0; from < bytes.length; from += 0x8000) text += String.fromCharCode(...bytes.subarray(from, from + 0x8000));
  return btoa(text);
}

const fromBase64 = (text: string): Uint8Array => Uint8Array.from(atob(text), character => character.charCodeAt(0));

export async function placePicture(sheet: OpenSheet, { at, png, widthPx, heightPx, words }: Picture): Promise<void> {
  const { row, column } = cellPosition(at);
  const image = await sheet
    .newOverGridImage()
    .setSource(PNG + toBase64(png), ImageSourceType.BASE64)
    .setColumn(column)
    .setRow(row)
    .setWidth(widthPx)
    .setHeight(heightPx)
    .buildAsync();
  const named: ImageWithWords = { ...image, words };
  sheet.insertImages([named]);
}

/** Images that the user put in from elsewhere, of another kind, are left out. */
export function picturesOn({ injector }: Sheets, sheetId: string): Picture[] {
  const images = Object.values(injector.get(ISheetDrawingService).getDrawingData(workbookId, sheetId)) as ImageWithWords[];
  return images.flatMap(({ source = '', sheetTransform: { from }, transform, words = '' }) =>
    source.startsWith(PNG)
      ? [
          {
            at: address(from.row, from.column),
            png: fromBase64(source.slice(PNG.length)),
            widthPx: transform?.width ?? 0,
            heightPx: transform?.height ?? 0,
            words,
          },
        ]
      : [],
  );
}
