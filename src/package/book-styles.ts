// The looks that the cells of a workbook can have, read and written once for all its sheets.
import type { Draft } from './draft';
import { freePart, linked, typed } from './additions';
import { type CellLook, CellStyles, noStyles } from './cell-styles';
import type { UserPackage } from './read';

export class BookStyles {
  private looks: CellStyles | undefined;

  constructor(
    private readonly of: Draft,
    private readonly from: Pick<UserPackage, 'book' | 'sheets'>,
  ) {}

  /** The number of a format that is like another one but for its look. */
  like(base: number, look: CellLook): number {
    const part = this.part();
    this.looks ??=
      part === undefined
        ? new CellStyles(noStyles(this.from.book.root.uri, this.namedFormats()), 'xl/styles.xml')
        : new CellStyles(this.of.text(part), part);
    return this.looks.like(base, look);
  }

  /** Puts the looks that were asked for into the package. */
  write(): void {
    const { of, looks, from } = this;
    if (looks === undefined) return;
    const known = this.part();
    if (known !== undefined) {
      of.change(known, text => [{ from: 0, to: text.length, text: looks.changed }]);
      return;
    }
    const part = of.named('xl/styles.xml') === undefined ? 'xl/styles.xml' : freePart(of, 'xl/styles', '.xml');
    of.add(part, looks.changed);
    linked(of, from.book.part, 'styles', part, from.book.root.uri);
    typed(of, part, 'styles');
  }

  private part(): string | undefined {
    return this.of.links(this.from.book.part).find(({ type, target }) => type === 'styles' && this.of.named(target) !== undefined)?.target;
  }

  /** Of a workbook without a list of formats, which its cells may number all the same: as many as they mean. */
  private namedFormats(): number {
    return this.from.sheets.reduce(
      (most, { part }) =>
        [...this.of.text(part).matchAll(/\s(?:s|style)\s*=\s*["'](\d{1,5})["']/g)].reduce((m, [, n]) => Math.max(m, Number(n) + 1), most),
      1,
    );
  }
}
