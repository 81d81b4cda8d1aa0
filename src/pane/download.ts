// A file for the user, by way of the browser.

/** The browser may begin to read the file after the click has returned. */
const keptMs = 60_000;

export function downloadFile(content: BlobPart, type: string, name: string): void {
  const url = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), keptMs);
}
