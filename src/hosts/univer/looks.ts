// How a role looks in the bench. Inputs are blue on pale blue with a frame, results dark on pale grey; a state has its own pair of colours
// that differ in lightness too, and its word always stays.
import { BooleanNumber, BorderStyleTypes, HorizontalAlign, VerticalAlign, WrapStrategy, type IStyleData } from '@univerjs/core';
import type { Role } from '../../sheet/plan';

/** The sheet engine's own accents: the same teal as the page. */
export const accents = {
  50: '#f1f7f7',
  100: '#e2efef',
  200: '#c5dfdf',
  300: '#9cc8c8',
  400: '#5fa3a4',
  500: '#3a8789',
  600: '#17696d',
  700: '#155a5e',
  800: '#17494d',
  900: '#123b3e',
};

const yes = BooleanNumber.TRUE;
const ink = (rgb: string) => ({ cl: { rgb } });
const fill = (rgb: string) => ({ bg: { rgb } });
const line = (rgb: string) => ({ s: BorderStyleTypes.THIN, cl: { rgb } });
const frame = (rgb: string) => ({ bd: { t: line(rgb), r: line(rgb), b: line(rgb), l: line(rgb) } });
const placed = { vt: VerticalAlign.MIDDLE, pd: { l: 6, r: 6, t: 2, b: 2 } };
const right = { ht: HorizontalAlign.RIGHT };
const wrapped = { tb: WrapStrategy.WRAP };

export const sheetStyle: IStyleData = { ff: 'Arial', fs: 10, ...ink('#22303a'), ...placed };

export const looks: Record<Role, IStyleData> = {
  title: { fs: 17, bl: yes, ...ink('#17494d'), ...placed },
  heading: { fs: 11, bl: yes, ...ink('#17494d'), ...placed, bd: { b: line('#9db8b8') } },
  text: { ...placed },
  label: { ...placed },
  input: { ...ink('#1b4a91'), ...fill('#e9f0fc'), ...frame('#a9c1e8'), ...placed, ...right },
  unit: { ...ink('#6a7780'), ...placed },
  note: { ...ink('#5d6a73'), it: yes, ...placed },
  result: { ...ink('#14262b'), ...fill('#f1f3f2'), ...frame('#dbe0de'), ...placed },
  header: { ...ink('#17494d'), ...fill('#dfebe9'), bl: yes, ...placed, ...wrapped, bd: { b: line('#9db8b8') } },
  caution: { ...ink('#7a3b06'), ...fill('#fdf1e1'), ...placed, ...wrapped },
};

/** Roles whose text runs over several lines once their cells are merged. */
export const wrappedWhenMerged: readonly Role[] = ['text', 'note', 'caution'];

/** Rows taller than others because of a role in them, in pixels. */
export const rowPx: Partial<Record<Role, number>> = { title: 40, heading: 32 };

export const noteMark = { size: 7, color: '#7d9fd6' };

/** Words of a state stand in the middle of their cell. */
export const stateCell: IStyleData = { ht: HorizontalAlign.CENTER };

export const stateLooks = {
  pass: { ...ink('#0c4a54'), ...fill('#cfe8ea') },
  look: { ...ink('#5c4300'), ...fill('#ffe6a3') },
  fail: { ...ink('#ffffff'), ...fill('#b23a1e'), bl: yes },
  'not checked': { ...ink('#53575e'), ...fill('#e4e5e9'), it: yes },
} satisfies Record<string, IStyleData>;

/** Words with their colours, for a legend. */
export const samples = Object.entries({ input: looks.input, result: looks.result, ...stateLooks }).map(
  ([word, { cl, bg }]: [string, IStyleData]) => ({ word, ink: cl?.rgb ?? '', fill: bg?.rgb ?? '' }),
);
