// The workbook of the user before it is converted: names of sheets that every program takes, defined names put in,
// and which formulas cannot go along because what they point at does not.
import type { HandoverFinding } from './finding';
import { sheetPrefix } from '../../sheet/addresses';
import { depthOf, type FormulaNode, LONGEST_FORMULA, parseFormula, partsOf, type Replacement, rewritten, walk } from '../../sheet/formula';
import { plainSheetName, type SheetNames } from '../../sheet/sheet-names';
import { nameKey, type SourceCell, type SourceSheet, type SourceWorkbook } from '../../sheet/workbook-values';

/** What a defined name stands for where it is used. */
type NameMeaning = (name: string) => string | undefined;

export interface Prepared {
  readonly workbook: SourceWorkbook;
  /** Name at home by name on the hand-over. */
  readonly homeNames: ReadonlyMap<string, string>;
  /** Why a formula stays behind, by `Sheet!B4`. */
  readonly refused: ReadonlyMap<string, string>;
  readonly findings: readonly HandoverFinding[];
}

/** Deeper than any sheet that was made by hand. */
const DEEPEST = 500;
/** Functions that fetch something or run something. */
const REACHES_OUT = /^(WEBSERVICE|RTD|CALL|EXEC|EVALUATE|REGISTER(\.ID)?|IMAGE|IMPORT\w+|CUBE\w+|DDE|SQL\.REQUEST|STOCKHISTORY|PY)$/;

/** What a file puts before functions that came after the first programs. */
const NEWER = /^(_XLFN\.|_XLWS\.)+/;
/** How a file stores a call of an add-in. */
const OTHER_ADD_IN = /^(_XLFN\.)?(_XLL\.|_XLDUDF_)/;

/** How a file stores a call of ours. */
const STORED = /^_xldudf_ENCL_/i;

export function prepared(home: SourceWorkbook, names: SheetNames): Prepared {
  const findings: HandoverFinding[] = [];
  const refused = new Map<string, string>();
  const homeNames = new Map<string, string>();
  const newNames = new Map<string, string>();
  for (const { name } of home.sheets) {
    const free = names.free(plainSheetName(name));
    homeNames.set(free, name);
    newNames.set(name.toLowerCase(), free);
  }
  const cellOf = (sheet: string, homeSheet: string, at: string, cell: SourceCell): SourceCell => {
    if (cell.formula === undefined) return cell;
    const meaning: NameMeaning = name => home.names?.get(nameKey(name, homeSheet)) ?? home.names?.get(nameKey(name));
    const tree = cell.formula.length > LONGEST_FORMULA ? undefined : parseFormula(cell.formula);
    const formula = tree === undefined ? cell.formula : settled(cell.formula, tree, newNames, meaning);
    const why =
      cell.isArray === true ? 'it is an array formula' : tree === undefined ? unreadable(cell.formula) : whyNot(tree, newNames, meaning);
    if (why !== undefined) refused.set(`${sheet}!${at}`, why);
    return { ...cell, formula };
  };
  const sheets = home.sheets.map((sheet): SourceSheet => {
    const name = newNames.get(sheet.name.toLowerCase()) ?? sheet.name;
    if (name !== sheet.name) findings.push({ sheet: name, at: '', what: 'changed', words: `the sheet was called "${sheet.name}"` });
    if (sheet.isHidden === true)
      findings.push({ sheet: name, at: '', what: 'changed', words: 'the sheet was hidden; here it can be seen' });
    return { ...sheet, name, cells: new Map([...sheet.cells].map(([at, cell]) => [at, cellOf(name, sheet.name, at, cell)])) };
  });
  return { workbook: { ...home, sheets }, homeNames, refused, findings };
}

const unreadable = (formula: string): string =>
  formula.length > LONGEST_FORMULA
    ? `the formula has ${formula.length} characters; ${LONGEST_FORMULA} is the most`
    : 'the formula cannot be read';

/** Sheets by their new names, defined names as the cells they stand for. The sign @ is what every formula of a file means anyway. */
function settled(formula: string, tree: FormulaNode, newNames: ReadonlyMap<string, string>, meaning: NameMeaning): string {
  const replacements = [...walk(tree)].flatMap((node): Replacement[] => {
    const [argument] = node.arguments ?? [];
    if (node.type === 'UnaryExpression' && node.operator === '@' && argument !== null && argument !== undefined)
      return [{ loc: [node.loc[0], argument.loc[0]], text: '' }];
    const called = node.callee?.name ?? '';
    if (STORED.test(called))
      return [{ loc: [node.loc[0], node.loc[0] + called.length], text: called.slice('_xldudf_'.length).replace(/_/g, '.') }];
    if (node.type !== 'ReferenceIdentifier' || typeof node.value !== 'string') return [];
    const meant = node.kind === 'name' ? meaning(node.value) : node.value;
    const sheet = meant === undefined ? undefined : partsOf(meant).context?.[0];
    const name = sheet === undefined ? undefined : newNames.get(sheet.toLowerCase());
    if (meant === undefined || partsOf(meant).context?.length !== 1 || name === undefined) return [];
    return [{ loc: node.loc, text: `${sheetPrefix(name)}${meant.slice(meant.lastIndexOf('!') + 1)}` }];
  });
  return replacements.length === 0 ? formula : rewritten(formula, [0, formula.length], replacements);
}

function whyNot(tree: FormulaNode, newNames: ReadonlyMap<string, string>, meaning: NameMeaning): string | undefined {
  if (depthOf(tree) > DEEPEST) return `the formula is nested more than ${DEEPEST} times`;
  const nodes = [...walk(tree)];
  const own = new Set(
    nodes.flatMap(({ declarations = [], params = [] }) =>
      [...declarations.map(({ id }) => id.name), ...params.map(({ name }) => name)].map(name => name.toLowerCase()),
    ),
  );
  for (const node of nodes) {
    const called = node.type === 'CallExpression' ? (node.callee?.name?.toUpperCase() ?? '') : '';
    if (REACHES_OUT.test(called.replace(NEWER, ''))) return `${called.replace(NEWER, '')} fetches or runs something`;
    if (OTHER_ADD_IN.test(called) && !STORED.test(called)) return 'it calls another add-in';
    if (node.type !== 'ReferenceIdentifier' || typeof node.value !== 'string') continue;
    const { context = [] } = partsOf(node.value);
    const [sheet] = context;
    if (node.kind !== 'table' && node.value.includes('[')) return `it points at another workbook: ${node.value.slice(0, 60)}`;
    if (node.kind === 'table') return `it points at a table by name: ${node.value.slice(0, 60)}`;
    if (node.kind === 'name') {
      const meant = meaning(node.value);
      if (own.has(node.value.toLowerCase()) || (meant !== undefined && isFixedArea(meant))) continue;
      return `it uses the name ${node.value.slice(0, 60)}, which stands for ${meant === undefined ? 'nothing' : 'no fixed cells'} here`;
    }
    if (sheet?.includes(':') === true) return `it points at the same cells of several sheets: ${node.value.slice(0, 60)}`;
    if (sheet !== undefined && !newNames.has(sheet.toLowerCase())) return `it points at a sheet that is not here: ${sheet.slice(0, 60)}`;
  }
  return undefined;
}

/** One cell or range of one sheet; without the signs $ it would be another one in every cell. */
function isFixedArea(reference: string): boolean {
  const { context, range } = partsOf(reference);
  if (context?.length !== 1 || range === undefined) return false;
  return (['top', 'left', 'bottom', 'right'] as const).every(side => typeof range[side] !== 'number' || range[`$${side}`] === true);
}
