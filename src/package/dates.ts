// Days and times as cells show them: numbers until their format says otherwise.

const DAY_MS = 86_400_000;
/** Formats that every program knows by number; 27 to 36 and 50 to 58 where it writes in East Asian signs. */
const KNOWN_DATES: readonly (readonly [first: number, last: number])[] = [
  [14, 17],
  [22, 22],
  [27, 36],
  [50, 58],
];
const KNOWN_TIMES: readonly (readonly [first: number, last: number])[] = [[18, 21]];

export type DateKind = 'date' | 'time';

/** @param code as a file stores it, `dd.mm.yyyy`; undefined for a format that is known by number. */
export function dateKind(id: number, code: string | undefined): DateKind | undefined {
  const isAmong = (known: typeof KNOWN_DATES): boolean => known.some(([first, last]) => first <= id && id <= last);
  if (code === undefined) return isAmong(KNOWN_DATES) ? 'date' : isAmong(KNOWN_TIMES) ? 'time' : undefined;
  // what is quoted, escaped, a filler, a colour, a language or a time that runs on is no sign for a day
  const [signs = ''] = code.replace(/"[^"]*"|[\\_*].|\[[^\]]*\]/g, '').split(';');
  if (/general|standard/i.test(signs)) return undefined;
  if (/[yd]/i.test(signs) || (/m{3}/i.test(signs) && !/[hs0#?]/i.test(signs))) return 'date';
  return /h/i.test(signs) ? 'time' : undefined;
}

/** `2026-03-05`, `2026-03-05 14:30` or `14:30`; undefined where the number is none. */
export function dateText(value: number, kind: DateKind, is1904: boolean): string | undefined {
  // the 29 February 1900 that never was
  const days = is1904 || value >= 61 ? value : value + 1;
  const start = is1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30);
  const ms = start + Math.round((days * DAY_MS) / 1000) * 1000;
  if (value < 0 || ms >= Date.UTC(10_000, 0, 1) || (kind === 'time' && value >= 1)) return undefined;
  const [day = '', clock = ''] = new Date(ms).toISOString().slice(0, 19).split('T');
  const time = clock.replace(/:00$/, '');
  return kind === 'time' ? time : time === '00:00' ? day : `${day} ${time}`;
}
