// Days, months, times and shares in per cent as cells show them: numbers until their format says otherwise.

const DAY_MS = 86_400_000;
export type ShownAs = 'date' | 'month' | 'time' | 'share';

export interface ShownNumber {
  readonly as: ShownAs;
  readonly said: string;
}

/** Formats that every program knows by number; 27 to 36 and 50 to 58 where it writes in East Asian signs. */
const KNOWN: readonly (readonly [kind: ShownAs, first: number, last: number])[] = [
  ['share', 9, 10],
  ['date', 14, 16],
  ['month', 17, 17],
  ['time', 18, 21],
  ['date', 22, 22],
  ['date', 27, 36],
  ['date', 50, 58],
];

/** @param code as a file stores it, `dd.mm.yyyy`; undefined for a format that is known by number. */
export function shownAs(id: number, code: string | undefined): ShownAs | undefined {
  if (code === undefined) return KNOWN.find(([, first, last]) => first <= id && id <= last)?.[0];
  // what is quoted, escaped, a filler, a colour, a language or a time that runs on is no sign for a day
  const [signs = ''] = code.replace(/"[^"]*"|[\\_*].|\[[^\]]*\]/g, '').split(';');
  if (/general|standard/i.test(signs)) return undefined;
  if (/d/i.test(signs)) return 'date';
  if (/y/i.test(signs)) return /m/i.test(signs) ? 'month' : 'date';
  if (/m{3}/i.test(signs) && !/[hs0#?]/i.test(signs)) return 'month';
  if (/h/i.test(signs)) return 'time';
  return signs.includes('%') ? 'share' : undefined;
}

/** `2026-03-05`, `2026-03-05 14:30`, `2026-03`, `14:30` or `0.6 %`; undefined where the number is none. */
export function shownText(value: number, kind: ShownAs, is1904: boolean): string | undefined {
  if (kind === 'share') return `${Number((value * 100).toPrecision(9))} %`;
  // the 29 February 1900 that never was
  const days = is1904 || value >= 61 ? value : value + 1;
  const start = is1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30);
  const ms = start + Math.round((days * DAY_MS) / 1000) * 1000;
  if (value < 0 || ms >= Date.UTC(10_000, 0, 1) || (kind === 'time' && value >= 1)) return undefined;
  const [day = '', clock = ''] = new Date(ms).toISOString().slice(0, 19).split('T');
  if (kind === 'month') return day.slice(0, -3);
  const time = clock.replace(/:00$/, '');
  return kind === 'time' ? time : time === '00:00' ? day : `${day} ${time}`;
}
