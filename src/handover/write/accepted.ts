// What the supplier changed, taken over into the sender's own workbook as it is now: inputs alone, each asked for.
import type { CellChange } from '../../package/cell-splices';
import { edited } from '../../package/edit';
import type { StoredSheet, UserPackage } from '../../package/read';
import { cellPosition, holds, rectangleOf } from '../../sheet/addresses';
import { changeLine } from '../compare/change-lists';
import type { OwnPlace, OwnPlaces } from '../compare/own-place';
import type { ChangedInput } from '../compare/returned-changes';
import { ENGLISH, type PageWords } from '../words/english';

export type Ask = (question: string) => Promise<boolean>;

/** A changed input that the own workbook can take over. */
export interface Offer {
  readonly input: ChangedInput;
  /** Where it stands there. */
  readonly place: OwnPlace;
  /** In words, with what stands there now where that is something else. */
  readonly words: string;
}

export interface Offers {
  readonly offers: readonly Offer[];
  /** Those that cannot be taken over, and why. */
  readonly refused: readonly string[];
}

/** @param placeOf where the cells that were sent stand in the file. */
export function offersOf(file: UserPackage, inputs: readonly ChangedInput[], placeOf: OwnPlaces, words: PageWords = ENGLISH): Offers {
  const { compare: said } = words;
  const offers: Offer[] = [];
  const refused: string[] = [];
  for (const input of inputs) {
    const place = placeOf(input);
    const sheet = typeof place === 'string' ? undefined : file.sheets.find(({ name }) => name === place.sheet);
    const why =
      typeof place === 'string'
        ? place
        : sheet === undefined || isWorkedOut(sheet, place.at)
          ? said.formulaThere
          : input.becameDate
            ? said.becameDate
            : '';
    if (typeof place === 'string' || why !== '') {
      refused.push(`${said.notTakenOver}: ${changeLine(input, words)}: ${why}`);
      continue;
    }
    const { value } = sheet?.cells.find(({ at }) => at === place.at) ?? {};
    const now = typeof value === 'object' ? value.error : String(value ?? said.blank);
    const other = now === (input.sent === '' ? said.blank : input.sent) ? [] : [said.nowIs(now)];
    offers.push({ input, place, words: [changeLine(input, words), ...whereNow(input, place, words), ...other].join('; ') });
  }
  return { offers, refused };
}

const whereNow = (input: ChangedInput, place: OwnPlace, { compare }: PageWords): string[] =>
  place.sheet === input.sheet && place.at === input.at ? [] : [compare.thereIs(`${place.sheet} ${place.at}`)];

export interface Accepted {
  readonly bytes: Uint8Array;
  /** What became of each input, and why it was not asked for. */
  readonly lines: readonly string[];
}

export async function accepted(
  file: UserPackage,
  inputs: readonly ChangedInput[],
  placeOf: OwnPlaces,
  ask: Ask,
  words: PageWords = ENGLISH,
): Promise<Accepted> {
  const { offers, refused } = offersOf(file, inputs, placeOf, words);
  const lines = [...refused];
  const cells = new Map<string, Map<string, CellChange>>();
  for (const { input, place, words: asked } of offers) {
    if (!(await ask(`${asked}?`))) continue;
    const changes = cells.get(place.sheet) ?? new Map<string, CellChange>();
    changes.set(place.at, { value: input.value ?? undefined, formula: 'none' });
    cells.set(place.sheet, changes);
    lines.push([`${words.compare.takenOver}: ${changeLine(input, words)}`, ...whereNow(input, place, words)].join('; '));
  }
  return { bytes: edited(file, { cells }).bytes, lines };
}

/** By its own formula, or filled by the one of another cell. */
function isWorkedOut({ cells }: StoredSheet, at: string): boolean {
  const place = cellPosition(at);
  return cells.some(
    ({ at: here, formula }) =>
      formula !== undefined &&
      (here === at || (formula.area !== undefined && formula.kind !== 'shared' && holds(rectangleOf(formula.area), place))),
  );
}
