// Formulas outside cells: where a part of a workbook has a place for one.
import { type Draft, listedBy } from './draft';
import { attribute, type XmlElement } from './xml';

export interface FormulaPlace {
  readonly part: string;
  readonly text: string;
  /** The element that holds it, as its text or in an attribute. */
  readonly element: XmlElement;
  readonly attribute?: string;
  /** The elements around it, from the outermost. */
  readonly around: readonly XmlElement[];
}

const IN_TEXT: ReadonlySet<string> = new Set(
  'f formula formula1 formula2 definedName calculatedColumnFormula totalsRowFormula sqref'.split(' '),
);
/** By the name of the attribute, the elements that have it; none where all may. */
const IN_ATTRIBUTE: ReadonlyMap<string, readonly string[]> = new Map<string, readonly string[]>([
  ['formula', ['cacheField', 'calculatedItem']],
  ['val', ['cfvo']],
  ['location', ['hyperlink']],
  ['cell', ['parameter']],
  ['sourceName', ['rangePr']],
  ...['textlink', 'macro', 'linkedCell', 'listFillRange', 'fmlaLink', 'fmlaRange', 'fmlaTxbx', 'fmlaGroup', 'fmlaMacro', 'link'].map(
    (name): [string, string[]] => [name, []],
  ),
]);
/** Elements that name cells in several attributes. */
const SOURCES: ReadonlySet<string> = new Set(['worksheetSource', 'rangeSet', 'dataRef']);

const quoted = (sheet: string): string => `'${sheet.replaceAll("'", "''")}'`;

/** `'Prices'!A1:C9`, or the name of a range or table. */
function sourceOf(element: XmlElement): string {
  const [sheet, area, name] = ['sheet', 'ref', 'name'].map(key => attribute(element, key));
  return `${sheet === undefined ? '' : `${quoted(sheet)}!`}${name ?? area ?? 'A1'}`;
}

function placesAt(part: string, element: XmlElement, around: readonly XmlElement[]): FormulaPlace[] {
  const places: FormulaPlace[] = [];
  if (IN_TEXT.has(element.local) && element.text.trim() !== '') places.push({ part, text: element.text, element, around });
  if (SOURCES.has(element.local)) places.push({ part, text: sourceOf(element), element, attribute: 'ref', around });
  for (const { local, name, value } of Object.values(element.attributes)) {
    const where = IN_ATTRIBUTE.get(local);
    if (where !== undefined && (where.length === 0 || where.includes(element.local)) && value !== '')
      places.push({ part, text: value.replace(/^[=#]/, ''), element, attribute: name, around });
  }
  return places;
}

function* within(part: string, element: XmlElement, around: readonly XmlElement[]): Generator<FormulaPlace> {
  yield* placesAt(part, element, around);
  const inner = [...around, element];
  for (const child of element.children) yield* within(part, child, inner);
}

/** What others put in, and what is said of the file, holds no formula that a program of tables reads. */
const isXml = (part: string): boolean =>
  /\.xml$/i.test(part) && !/^(\[|customXml\/|docProps\/)/i.test(part) && listedBy(part) === undefined;

/** In the parts in which they can be, cells left out. */
export function* formulaPlaces(draft: Draft, parts: Iterable<string> = draft.parts): Generator<FormulaPlace> {
  for (const part of parts) {
    if (isXml(part)) yield* within(part, draft.tree(part), []);
  }
}
