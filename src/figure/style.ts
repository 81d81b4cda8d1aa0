// Colours, line types and hatching of the figures: a white sheet unless the page says otherwise through the variables.
import { el, type Markup } from './svg';

const CSS = `
.bw-figure text{font-family:sans-serif;font-size:12px;fill:var(--bw-ink,#14181d)}
.bw-figure .bw-small{font-size:11px}
.bw-figure .bw-strong{font-weight:700}
.bw-figure .bw-quiet{fill:var(--bw-quiet,#4c5661)}
.bw-figure .bw-halo{paint-order:stroke;stroke:var(--bw-sheet,#fff);stroke-width:3px;stroke-linejoin:round}
.bw-sheet{fill:var(--bw-sheet,#fff)}
.bw-head-half{fill:var(--bw-head-half,#dfe9f5)}
.bw-thread-half{fill:var(--bw-thread-half,#fbead2)}
.bw-board{fill:var(--bw-board,#d9ecd6)}
.bw-insert{fill:var(--bw-insert,#ece5c9)}
.bw-screw{fill:var(--bw-screw,#eceef0);stroke:var(--bw-ink,#14181d);stroke-width:1.1;stroke-linejoin:round}
.bw-hatch{fill:none;stroke:var(--bw-hatch,#5a6673);stroke-width:.7}
.bw-visible{fill:none;stroke:var(--bw-ink,#14181d);stroke-width:1.5;stroke-linecap:round;stroke-linejoin:round}
.bw-thin{fill:none;stroke:var(--bw-ink,#14181d);stroke-width:.7}
.bw-extension{fill:none;stroke:var(--bw-quiet,#4c5661);stroke-width:.5}
.bw-grid{fill:none;stroke:var(--bw-grid,#c3cad1);stroke-width:.8}
.bw-casing{fill:none;stroke:var(--bw-sheet,#fff);stroke-width:3}
.bw-centre{fill:none;stroke:var(--bw-ink,#14181d);stroke-width:.7;stroke-dasharray:14 3 2.5 3}
.bw-phantom{fill:none;stroke:var(--bw-ink,#14181d);stroke-width:.9;stroke-dasharray:9 2.5 2 2.5 2 2.5}
.bw-solid{fill:var(--bw-ink,#14181d)}
.bw-worst{fill:none;stroke:var(--bw-worst,#a3241f);stroke-width:3.6}
.bw-nominal{fill:none;stroke:var(--bw-nominal,#1d5c99);stroke-width:4.4}
.bw-nominal-core{fill:none;stroke:var(--bw-sheet,#fff);stroke-width:2}
.bw-asked{fill:none;stroke:var(--bw-ink,#14181d);stroke-width:1.2;stroke-dasharray:4 3}
.bw-worst-bar{fill:var(--bw-worst,#a3241f)}
.bw-nominal-bar{fill:var(--bw-nominal-pale,#bcd3ea);stroke:var(--bw-nominal,#1d5c99);stroke-width:1}
.bw-fail{fill:var(--bw-fail,#a3241f);stroke:var(--bw-sheet,#fff);stroke-width:1.2}
.bw-review{fill:var(--bw-review,#ffd75e);stroke:var(--bw-ink,#14181d);stroke-width:1.2}
.bw-outline{fill:var(--bw-sheet,#fff);stroke:var(--bw-quiet,#4c5661);stroke-width:1}
.bw-pass{fill:var(--bw-sheet,#fff);stroke:var(--bw-pass,#23743c);stroke-width:2}
.bw-unchecked{fill:var(--bw-sheet,#fff);stroke:var(--bw-ink,#14181d);stroke-width:1.2;stroke-dasharray:3 2}
.bw-figure .bw-on-fail{fill:var(--bw-sheet,#fff)}
.bw-figure .bw-number{font-size:11px;font-weight:700}
`;

/** Each variable's own colour: for what draws without a page and knows no variables. */
export const inFixedColours = (css: string): string => css.replace(/var\([\w-]+,([^)]+)\)/g, '$1');

/** Variables belong to a page: what draws without one gets the white sheet. */
export const style = (isFixed = false): Markup =>
  el('style', {}, { markup: (isFixed ? inFixedColours(CSS) : CSS).trim().replace(/\n/g, '') });

const HATCHES: readonly { readonly id: string; readonly size: number; readonly angle: number; readonly path: string }[] = [
  { id: 'bw-hatch-head-half', size: 8, angle: 45, path: 'M0 0V8' },
  { id: 'bw-hatch-thread-half', size: 8, angle: -45, path: 'M0 0V8' },
  // metal: closer lines than plastic
  { id: 'bw-hatch-insert', size: 4, angle: 45, path: 'M0 0V4' },
  // laminate: close lines across the sheet, broken like its fibres
  { id: 'bw-hatch-board', size: 8, angle: 0, path: 'M0 2H5.5M4 6H8M0 6H1.5' },
];

export const hatches = (): Markup =>
  el(
    'defs',
    {},
    HATCHES.map(({ id, size, angle, path }) =>
      el(
        'pattern',
        { id, width: size, height: size, patternUnits: 'userSpaceOnUse', patternTransform: angle === 0 ? undefined : `rotate(${angle})` },
        el('path', { class: 'bw-hatch', d: path }),
      ),
    ),
  );
