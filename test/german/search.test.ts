// German words find what the English ones do, with any ending and either way to write an umlaut.
import { describe, expect, it } from 'vitest';
import { inGerman } from '../../src/german/metadata';
import { foldGerman, GERMAN_ENTRIES, stemGerman } from '../../src/help/german';
import { type ListedFunction, search } from '../../src/pane/function-list';
import { besideEnglish } from '../../src/pane/listed-in';
import { CARDS } from '../../src/registry';
import { METADATA } from '../../src/tools/metadata';

const english: readonly ListedFunction[] = METADATA.functions;
const german = besideEnglish(english.map(inGerman), english);
const ids = (asked: string): string[] => search(german, asked).map(({ id }) => id);

describe('the search in German', () => {
  it.each([
    ['Schraubdom', 'BOSS.OD'],
    ['Schraubdome', 'BOSS.OD'],
    ['Schraubdomen', 'BOSS.WALL'],
    ['Einschraubdom', 'BOSS.OD'],
    ['Kernloch', 'HOLE.PILOT'],
    ['Kernlöcher', 'HOLE.PILOT'],
    ['Kernloecher', 'HOLE.PILOT'],
    ['Durchgangslöchern', 'HOLE.CLEARANCE'],
    ['Einschraubtiefe', 'ENGAGEMENT'],
    ['Entformungsschräge', 'DRAFT.ANGLE'],
    ['entformungsschraegen', 'DRAFT.ANGLE'],
    ['Auszugskräfte', 'PULLOUT'],
    ['Kopfauflage', 'RECESS.SEAT'],
    ['Senkungen', 'RECESS.DIAMETER'],
    ['Einfallstellen', 'BOSS.SINK'],
    ['Klemmlängen', 'GRIP'],
    ['Maßkette', 'STACK.NOMINAL'],
    ['massketten', 'STACK.NOMINAL'],
    ['Gewindeeinsätze', 'INSERT.PULLOUT'],
    ['Leiterplatten', 'BOARD.GAP'],
    ['Schnapphaken', 'SNAP.FORCE'],
    ['Überdrehmoment', 'TORQUE.STRIP'],
    ['Flankenüberdeckung', 'HOLE.THREAD.SHARE'],
  ])('%s finds %s', (asked, id) => {
    expect(ids(asked)).toContain(id);
    expect(ids(asked).length).toBeLessThan(german.length / 2);
  });

  it('finds by English words what the English list finds', () => {
    for (const asked of ['counterbore', 'standoff', 'draft', 'core pin', 'pull-out', 'BOSS.OD'])
      expect(ids(asked), asked).toEqual(expect.arrayContaining(search(english, asked).map(({ id }) => id)));
    for (const { id } of english) expect(ids(id)[0]).toBe(id);
  });

  it('finds nothing by a word that nobody says', () => expect(ids('Quarkspeise')).toEqual([]));

  it('has synonyms of functions that there are', () => {
    expect(GERMAN_ENTRIES.length).toBeGreaterThanOrEqual(20);
    for (const [word, leads] of GERMAN_ENTRIES) for (const id of leads) expect(CARDS.has(id), `${word} ${id}`).toBe(true);
  });

  it('keeps short words whole', () => {
    expect(foldGerman('Größe')).toBe('grosse');
    expect([stemGerman('Nut'), stemGerman('Maße')]).toEqual(['nut', 'mass']);
  });
});
