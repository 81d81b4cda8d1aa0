import { element } from './dom';

const workbookType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** The browser may begin to read the file after the click has returned. */
const keptMs = 60_000;

export function downloadFile(content: BlobPart, type: string, name: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = element('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), keptMs);
}

/** Saves a workbook file under a name that every system takes; returns that name. */
export function download(bytes: Uint8Array, title: string): string {
  const name = `${title.replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, '_').trim() || 'workbook'}.xlsx`;
  downloadFile(bytes as Uint8Array<ArrayBuffer>, workbookType, name);
  return name;
}
