const WORKBOOK_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** The browser may begin to read the file after the click has returned. */
const KEPT_MS = 60_000;

export function downloadFile(content: BlobPart, type: string, name: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), KEPT_MS);
}

/** One that every system takes. */
export const fileName = (title: string, ending: string): string =>
  `${title.replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, '_').trim() || 'untitled'}${ending}`;

/** Saves a workbook file; returns its name. */
export function download(bytes: Uint8Array, title: string, ending = '.xlsx'): string {
  const name = fileName(title, ending);
  downloadFile(bytes as Uint8Array<ArrayBuffer>, WORKBOOK_TYPE, name);
  return name;
}
