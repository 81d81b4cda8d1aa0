// What becomes of calls outside cells, and of what reads a name that goes: worked out on a sheet of ours, taken out, or left and told.
import { type Elsewhere, type ElsewhereChange, goesWith } from '../../package/elsewhere';
import { SheetNames } from '../../sheet/sheet-names';
import type { SourceWorkbook } from '../../sheet/workbook-values';
import type { Handover } from '../handover';
import type { HandoverFinding } from '../read/finding';
import type { FindingWords } from '../words/finding-words';
import type { PageWords } from '../words/words';
import { calledThere, outsideCall, outsidePlace, type OutsideSheet, outsideSheet } from './outside-cells';

export interface Fate {
  readonly outside: OutsideSheet;
  /** Formulas without a call that read a name which goes, and that name. */
  readonly lost: ReadonlyMap<Elsewhere, string>;
}

/** What cannot be read in cells goes with the rule, name or column formula that it stands in: no program without the add-in has it. */
export const changesElsewhere = (found: readonly Elsewhere[], { outside, lost }: Fate): ReadonlyMap<Elsewhere, ElsewhereChange> =>
  new Map(
    [...found, ...lost.keys()].flatMap((elsewhere): [Elsewhere, ElsewhereChange][] => {
      const formula = outside.reads.get(elsewhere);
      if (formula !== undefined) return [[elsewhere, { formula }]];
      return elsewhere.canGo ? [[elsewhere, 'out']] : [];
    }),
  );

export const told = (elsewhere: Elsewhere, { outside: { source, reads }, lost }: Fate, said: FindingWords): HandoverFinding[] => {
  if (elsewhere.kind === 'placeholder') return [];
  const isRead = reads.has(elsewhere);
  const { canGo } = elsewhere;
  const name = lost.get(elsewhere);
  const called = calledThere(elsewhere);
  const goes = name === undefined ? said.takenOut(called) : said.takenOutWith(name);
  const stays = name === undefined ? said.leftAsIs(called) : said.leftWithout(name);
  const words = `${outsidePlace(elsewhere, said)}: ${isRead ? said.readsSheet(called, source.name) : canGo ? goes : stays}`;
  return [{ sheet: '', at: '', what: isRead || canGo ? 'changed' : 'error', words }];
};

/** With what stands outside cells on a sheet of ours: as far as it follows its inputs there, and nothing else of its rule goes. */
export function workedOut(
  sent: SourceWorkbook,
  elsewhere: readonly Elsewhere[],
  words: PageWords,
  taken: ReadonlySet<string>,
  fateOf: (outside: OutsideSheet) => Fate,
  handedOver: (workbook: SourceWorkbook, fate: Fate) => Handover,
): { readonly copy: Handover; readonly fate: Fate } {
  const names = new SheetNames();
  for (const name of [...sent.sheets.map(sheet => sheet.name), ...(sent.otherSheets ?? [])]) names.free(name);
  const name = names.free(words.sheets.outside);
  const sheets = new Set(sent.sheets.map(sheet => sheet.name));
  let calls = elsewhere.flatMap(one => outsideCall(one, sheets) ?? []);
  for (;;) {
    const outside = outsideSheet(name, calls, words, called => taken.has(called.toLowerCase()));
    const fate = fateOf(outside);
    const goes = [...elsewhere.filter(one => !outside.reads.has(one)), ...fate.lost.keys()];
    const torn = calls.filter(call => goes.some(one => goesWith(one, call.elsewhere)));
    if (torn.length > 0) {
      calls = calls.filter(call => !torn.includes(call));
      continue;
    }
    const copy = handedOver(calls.length === 0 ? sent : { ...sent, sheets: [...sent.sheets, outside.source] }, fate);
    const notLive = outside.notLive(copy.plan.sheets.find(sheet => sheet.name === name));
    if (notLive.length === 0) return { copy, fate };
    calls = calls.filter(call => !notLive.includes(call));
  }
}
