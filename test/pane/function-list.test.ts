import { describe, expect, it } from 'vitest';
import { CARDS } from '../../src/registry';
import { groups, search, signature, type ListedFunction } from '../../src/pane/function-list';
import { notCovered, NOT_COVERED_WORDS } from '../../src/words/not-covered';
import { SYNONYM_ENTRIES } from '../../src/help/synonyms';
import { METADATA } from '../../src/tools/metadata';

const listedFunctions: readonly ListedFunction[] = METADATA.functions;
const bossOd = listedFunctions.find(({ id }) => id === 'BOSS.OD') as ListedFunction;
const ids = (asked: string): string[] => search(listedFunctions, asked).map(({ id }) => id);

describe('the list of functions in the pane', () => {
  it('writes the optional arguments in brackets', () => {
    expect(signature(bossOd)).toBe('ENCL.BOSS.OD(hole, wall, [distance], [draft])');
    expect(signature({ id: 'JOINT.INPUTS', description: '', parameters: [] })).toBe('ENCL.JOINT.INPUTS()');
  });

  it('loses no function, and shows none twice', () => {
    const shown = groups(listedFunctions, '').flatMap(({ functions }) => functions.map(({ id }) => id));
    expect(shown).toHaveLength(CARDS.size);
    expect(new Set(shown)).toEqual(new Set(CARDS.keys()));
  });

  it('finds a function by its own name first', () => {
    for (const id of CARDS.keys()) expect(ids(id)[0], id).toBe(id);
  });

  it.each([
    ['counterbore', 'RECESS.DEPTH'],
    ['Standoff', 'BOSS.OD'],
    ['core pin', 'PIN.RATIO'],
    ['screw pillar', 'BOSS.WALL'],
    ['knife edge', 'BOSS.FLAT'],
    ['bottom out', 'SCREW.BOTTOM'],
    ['through hole', 'HOLE.CLEARANCE'],
    ['tap drill', 'HOLE.PILOT'],
    ['pcb', 'BOARD.GAP'],
    ['heat-set', 'INSERT.HOLE.DEPTH'],
    ['brass insert', 'INSERT.BOSS.OD'],
    ['nut trap', 'NUT.POCKET'],
    ['captive nut', 'NUT.HEIGHT'],
    ['self tapping', 'HOLE.PILOT'],
    ['thread-forming', 'HOLE.PILOT'],
    ['stack-up', 'STACK.TABLE'],
    ['gasket', 'SEAL.SQUEEZE'],
    ['O-ring', 'SEAL.FILL'],
    ['o ring', 'SEAL.STRETCH'],
    ['cord', 'SEAL.SQUEEZE'],
    ['rim', 'RIM.SAG'],
    ['sealing lip', 'RIM.PITCH'],
    ['screw pitch', 'RIM.PITCH'],
    ['water-tight', 'SEAL.SQUEEZE'],
  ])('finds by the trade word %s, %s among others', (word, id) => {
    expect(ids(word)).toContain(id);
  });

  it('needs every word, in any order, as a name, a sentence, a topic or an argument has it', () => {
    expect(ids('outside boss')).toContain('BOSS.OD');
    expect(ids('boss outside')).toEqual(ids('outside boss'));
    expect(ids('elephant')).toEqual([]);
  });

  it.each([
    ['outside boss elephant', 'BOSS.OD'],
    ['which pilot hole for a 2.9 mm tapping screw in ABS', 'HOLE.PILOT'],
    ['How deep must the counterbore be for a pan head?', 'RECESS.DEPTH.MIN'],
    ['how long a screw do I need', 'SCREW.LENGTH.PICK'],
    ['how much torque strips the thread?', 'TORQUE.STRIP'],
    ['will the boss leave a sink mark on the wall', 'BOSS.SINK'],
  ])('meets a question as far as its words go: %s', (question, id) => {
    expect(ids(question).slice(0, 3)).toContain(id);
  });

  it.each([
    ['warp', /^Warpage is not covered.*filling simulation/],
    ['will the lid warp?', /^Warpage is not covered/],
    ['Warpage', /^Warpage is not covered/],
    ['boss to boss', /How close two bosses may stand is not covered.*BOSS\.STEEL/],
    ['boss-to-boss distance', /How close two bosses/],
    ['weld line', /^Weld lines are not covered/],
    ['weld lines at a boss', /^Weld lines are not covered/],
    ['water-tight', /not claimed.*a test of the housing decides/],
    ['IP67', /not claimed/],
  ])('says of %s that it is not covered, and what to do instead', (asked, sentence) => expect(notCovered(asked)).toMatch(sentence));

  it('says so of nothing that has a function, nor of half a word', () => {
    for (const asked of ['', 'boss', 'boss od', 'weld', 'wall', 'rim', 'strip', 'tip 6 mm', ...CARDS.keys()])
      expect(notCovered(asked), asked).toBe('');
    for (const word of NOT_COVERED_WORDS) expect(notCovered(`what of ${word}?`), word).toMatch(/not covered|not given here/);
  });

  it('names in these sentences only functions that are there', () => {
    const named = NOT_COVERED_WORDS.flatMap(word => notCovered(word).match(/[A-Z]+(?:\.[A-Z]+)+/g) ?? []);
    expect(new Set(named)).toEqual(new Set(['RIM.GAP.LIMITS', 'BOSS.STEEL', 'PATTERN.FIT', 'BOARD.MARGIN']));
    expect(named.filter(id => !CARDS.has(id))).toEqual([]);
  });

  it('puts a name before a sentence', () => {
    const found = ids('draft');
    expect(found.slice(0, 5).every(id => id.startsWith('DRAFT.'))).toBe(true);
    expect(found).toContain('RIB.TIP');
  });

  it('leads from every trade word to functions that exist, and from none to the same twice', () => {
    for (const [word, leads] of SYNONYM_ENTRIES) {
      expect(
        leads.filter(id => !CARDS.has(id)),
        word,
      ).toEqual([]);
      expect(new Set(leads).size, word).toBe(leads.length);
      expect(ids(word), word).toEqual(expect.arrayContaining([...leads]));
    }
  });
});
