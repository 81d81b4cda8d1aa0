import { downloadFile } from '../pane/download';

const workbookType = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** Saves a workbook file under a name that every system takes; returns that name. */
export function download(bytes: Uint8Array, title: string): string {
  const name = `${title.replaceAll(/[\\/:*?"<>|\p{Cc}]/gu, '_').trim() || 'workbook'}.xlsx`;
  downloadFile(bytes as Uint8Array<ArrayBuffer>, workbookType, name);
  return name;
}
