// A formula of a workbook in terms that every program reads: what a file stores in another way than people type it, names, tables
// and LET become the cells and values that they stand for. Functions that came later stay in their stored form.
import { areaOf, LONGEST_FORMULA, parseFormula, partsOf, typedName } from '../../sheet/formula';
import { argumentsIn, isHash, isWhole, partEnd, type FormulaPiece, piecesOf, standsAlone } from '../../sheet/formula-tokens';
import { address, sheetPrefix } from '../../sheet/addresses';
import { nameKey, type SourceSheet, type SourceWorkbook } from '../../sheet/workbook-values';
import type { FindingWords, FindingSentence } from '../words/finding-words';
import { isFixedName, seenFrom } from './names';
import { oneOfRange } from './one-of-range';
import { otherAddIn, ourName, reachesOut } from './outgoing';
import { cellsOfTable, type Site, tableNamed } from './tables';

export interface SettledFormula {
  /** As far as it could be settled. */
  readonly formula: string;
  /** Why it cannot be followed. */
  readonly why: FindingSentence | undefined;
  /** It fetches, sends or runs something: it must not go along, whether it can be followed or not. */
  readonly reachesOut?: true;
  /** It reads another workbook. */
  readonly leadsToFile?: true;
}

/** What was found on the way through one formula. */
interface Notes {
  why?: FindingSentence | undefined;
  reachesOut?: true;
  leadsToFile?: true;
  callsOurs?: true;
  callsOthers?: true;
}

/** Texts that stand for the names of LET and LAMBDA around a part. */
type Scope = ReadonlyMap<string, string>;
const NO_NAMES: Scope = new Map();

/** Worked out anew wherever they stand. */
const RANDOM = /\bRAND(BETWEEN|ARRAY)?\(/i;
const MOST_SHOWN = 60;
/** Names, @ and LET inside one another; deeper than anybody writes. */
const DEEPEST = 200;

export class Settling {
  private readonly sheets: ReadonlyMap<string, SourceSheet>;
  /** Names that are being followed, so that one that leads back to itself ends. */
  private readonly open = new Set<string>();
  private depth = 0;

  constructor(private readonly home: SourceWorkbook) {
    this.sheets = new Map(home.sheets.map(sheet => [sheet.name.toLowerCase(), sheet]));
  }

  settled(formula: string, site: Site): SettledFormula {
    const notes: Notes = {};
    const text = `=${this.text(piecesOf(formula), site, NO_NAMES, notes)}`;
    if (text.length > LONGEST_FORMULA) notes.why ??= said => said.tooLongWithoutNames(LONGEST_FORMULA);
    if (notes.callsOurs === true && notes.callsOthers === true) notes.why ??= said => said.callsAddIn;
    return {
      formula: text.length > LONGEST_FORMULA ? formula : text,
      why: notes.why,
      ...(notes.reachesOut && { reachesOut: true }),
      ...(notes.leadsToFile && { leadsToFile: true }),
    };
  }

  /** A sheet as it is written, where there is one of the name. */
  private sheet(name: string): SourceSheet | undefined {
    return this.sheets.get(name.toLowerCase());
  }

  private text(pieces: readonly FormulaPiece[], site: Site, scope: Scope, notes: Notes): string {
    if (this.depth > DEEPEST) {
      notes.why ??= said => said.namesTooDeep(DEEPEST);
      return '';
    }
    this.depth += 1;
    let text = '';
    for (let i = 0; i < pieces.length && text.length <= LONGEST_FORMULA;) {
      const end = partEnd(pieces, i);
      text += this.part(pieces, i, end, site, scope, notes);
      i = end;
    }
    this.depth -= 1;
    return text;
  }

  /** One value with the signs @ and # that belong to it; of a call that stays, its name alone. */
  private part(pieces: readonly FormulaPiece[], from: number, end: number, site: Site, scope: Scope, notes: Notes): string {
    const [first] = pieces.slice(from, end);
    if (first === undefined) return '';
    if (first.text === '@' && first.kind === 'sign')
      return put(pieces, from, end, this.intersected(this.text(pieces.slice(from + 1, end), site, scope, notes), site, notes));
    if (isHash(pieces[end - 1]) && end - from > 1)
      return this.spilled(this.text(pieces.slice(from, end - 1), site, scope, notes), site, notes);
    switch (first.kind) {
      case 'function':
        return this.call(pieces, from, end, site, scope, notes);
      case 'name':
        return put(pieces, from, end, this.named(first.text, site, scope, notes));
      case 'table': {
        const cells = cellsOfTable(first.text, this.home.tables ?? [], site);
        if ('text' in cells) return cells.text;
        if (cells.leadsToFile) notes.leadsToFile = true;
        notes.why ??= cells.why;
        return first.text;
      }
      case 'reference':
        return this.reference(first.text, notes);
      default:
        return pieces
          .slice(from, end)
          .map(({ text }) => text)
          .join('');
    }
  }

  private call(pieces: readonly FormulaPiece[], from: number, end: number, site: Site, scope: Scope, notes: Notes): string {
    const called = pieces[from]?.text ?? '';
    const args = argumentsIn(pieces, from + 1);
    const inside = (): string => this.text(args[0] ?? [], site, scope, notes);
    switch (typedName(called)) {
      case 'ANCHORARRAY':
        return this.spilled(inside(), site, notes);
      case 'SINGLE':
        return put(pieces, from, end, this.intersected(inside(), site, notes));
      case 'LET': {
        const body = this.substituted(args, site, scope, notes);
        return body === undefined
          ? this.kept(pieces, from, end, args.filter((_, i) => i % 2 === 0).slice(0, -1), site, scope, notes)
          : put(pieces, from, end, body);
      }
      case 'LAMBDA':
        return this.kept(pieces, from, end, args.slice(0, -1), site, scope, notes);
    }
    const out = reachesOut(called, args[0]);
    if (out !== undefined) {
      notes.why = out;
      notes.reachesOut = true;
    }
    if (otherAddIn(called) !== undefined) notes.callsOthers = true;
    const ours = ourName(called);
    if (ours !== undefined) notes.callsOurs = true;
    return `${ours ?? called}${this.text(pieces.slice(from + 1, end), site, scope, notes)}`;
  }

  /** A call whose own names stay. */
  private kept(
    pieces: readonly FormulaPiece[],
    from: number,
    end: number,
    names: readonly FormulaPiece[][],
    site: Site,
    scope: Scope,
    notes: Notes,
  ): string {
    const own = names.map(name => name.map(({ text }) => text).join(''));
    const inner = new Map([...scope, ...own.map(name => [name.toLowerCase(), name] as const)]);
    return `${pieces[from]?.text ?? ''}${this.text(pieces.slice(from + 1, end), site, inner, notes)}`;
  }

  /** The last argument of LET with values in place of names. Undefined where a name is more than that. */
  private substituted(args: readonly FormulaPiece[][], site: Site, scope: Scope, notes: Notes): string | undefined {
    if (args.length % 2 === 0 || args.length < 3) return undefined;
    let inner = scope;
    for (let i = 0; i + 2 < args.length; i += 2) {
      const [name, ...more] = args[i] ?? [];
      if (name?.kind !== 'name' || more.length > 0) return undefined;
      const after = args.slice(i + 2).flat();
      const isNamed = (piece: FormulaPiece): boolean => piece.text.toLowerCase() === name.text.toLowerCase();
      const value = this.text(args[i + 1] ?? [], site, inner, notes);
      if (/\bLAMBDA\(/i.test(value) || after.some(piece => piece.kind === 'function' && isNamed(piece))) return undefined;
      if (RANDOM.test(value) && after.filter(isNamed).length > 1) return undefined;
      inner = new Map([...inner, [name.text.toLowerCase(), value]]);
    }
    return this.text(args[args.length - 1] ?? [], site, inner, notes);
  }

  private named(text: string, site: Site, scope: Scope, notes: Notes): string {
    const own = scope.get(text.toLowerCase());
    if (own !== undefined) return own;
    const [name = '', given = ''] = text
      .replace(/^\[0\]!/, '')
      .split('!')
      .reverse();
    const sheet = given === '' ? site.sheet : given.replace(/^'|'$/g, '').replace(/''/g, "'");
    if (text.replace(/^\[0\]/, '').includes('[')) return lost(notes, text, 'otherWorkbook', text);
    if (this.sheet(sheet) === undefined) return lost(notes, text, 'noSuchSheet', sheet);
    const local = nameKey(name, sheet);
    const key = this.home.names?.has(local) === true ? local : nameKey(name);
    const meaning = this.home.names?.get(key);
    const table = tableNamed(this.home.tables ?? [], name);
    if (meaning === undefined && table !== undefined) return this.text(piecesOf(`=${table.name}[]`), site, NO_NAMES, notes);
    const unfixed = this.open.has(key)
      ? 'nameCircular'
      : meaning === undefined
        ? 'nameUnknown'
        : isFixedName(meaning)
          ? undefined
          : 'nameNotFixed';
    if (meaning === undefined || unfixed !== undefined) {
      notes.why ??= said => said[unfixed ?? 'nameUnknown'](shown(text));
      return text;
    }
    this.open.add(key);
    const settled = this.text(piecesOf(seenFrom(meaning, site)), site, NO_NAMES, notes);
    this.open.delete(key);
    return settled;
  }

  private reference(text: string, notes: Notes): string {
    const { context = [] } = partsOf(text);
    const [sheet] = context;
    if (sheet === undefined) return text;
    if (text.includes('[') || context.length > 1) return lost(notes, text, 'otherWorkbook', text);
    if (sheet.includes(':')) return lost(notes, text, 'severalSheets', text);
    if (this.sheet(sheet) === undefined) return lost(notes, text, 'noSuchSheet', sheet);
    return `${sheetPrefix(this.sheet(sheet)?.name ?? sheet)}${text.slice(text.lastIndexOf('!') + 1)}`;
  }

  /** All that spilled from a cell: of a formula of the user the cells that the file says, of ours `A8#`. */
  private spilled(text: string, site: Site, notes: Notes): string {
    const node = parseFormula(`=${text}`);
    const area = node === undefined ? undefined : areaOf(node, site.sheet);
    if (area === undefined) {
      notes.why ??= said => said.spilled(shown(text));
      return `${text}#`;
    }
    const { formula, array } = this.sheet(area.sheet)?.cells.get(address(area.top, area.left)) ?? {};
    return array === undefined || /ENCL\./i.test(formula ?? '') ? `${text}#` : `${text.slice(0, text.lastIndexOf('!') + 1)}${array.range}`;
  }

  private intersected(text: string, site: Site, notes: Notes): string {
    return oneOfRange(text, site) ?? lost(notes, text, 'noneInLine', text);
  }
}

type LostReference = keyof FindingWords & ('otherWorkbook' | 'noSuchSheet' | 'severalSheets' | 'noneInLine');

const shown = (text: string): string => text.slice(0, MOST_SHOWN);

/** What cannot be followed stays as it is. */
function lost(notes: Notes, text: string, why: LostReference, what: string): string {
  if (why === 'otherWorkbook') notes.leadsToFile = true;
  notes.why ??= said => `${said[why]}: ${shown(what)}`;
  return text;
}

/** A text in place of the pieces, in parentheses where a sign beside them could tear it apart. */
const put = (pieces: readonly FormulaPiece[], from: number, end: number, text: string): string =>
  isWhole(pieces, from, end) || standsAlone(text) ? text : `(${text})`;
