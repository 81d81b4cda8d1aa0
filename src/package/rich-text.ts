// Texts as a workbook stores them: runs of one text in pieces, with how it is spoken left out.
import type { StartTag } from './xml';

/** `_x000D_` stands for a character that XML has no place for. */
export const fromStored = (text: string): string =>
  text.includes('_x') ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16))) : text;

export const toStored = (text: string): string =>
  text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_')
    .replace(
      /[^\t\n\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu,
      c => `_x${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`,
    );

/** What is read within a text element, of the texts that stand in it. */
export class RichText {
  private texts = '';
  private isText = false;
  private spoken = 0;

  open({ local }: StartTag): void {
    if (local === 'rPh') this.spoken++;
    else if (local === 't') this.isText = true;
  }

  close({ local }: StartTag): void {
    if (local === 'rPh') this.spoken--;
    else if (local === 't') this.isText = false;
  }

  text(text: string): void {
    if (this.isText && this.spoken === 0) this.texts += text;
  }

  taken(): string {
    const { texts } = this;
    this.texts = '';
    return fromStored(texts);
  }
}
