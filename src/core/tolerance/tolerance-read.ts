// Grades and groups of tolerances as people name them, and the user's own table.
import { ISO_286_1_IT_GRADES } from '../../standards/iso286-1-it-grades';
import { type Kind, NOTHING_READ } from '../card';
import type { Table } from '../../standards/table';
import { isBlank, isCellError, shown } from '../read/cells';
import { BLOCK, numeric, ONE, putInQuotes } from '../read/params';
import { LENGTH } from '../read/quantity';
import { codeOf, errorWords, notInTable, Refused, wrongInput } from '../refuse';
import { columnOf, tableRange } from '../table';
import { isWideGrade, MOULDED_GROUPS, WIDE_GRADE, WIDE_GRADE_ABOVE_MM } from './tolerance';

const GRADES = 'IT5 to IT16';

/** A blank is no grade either: there is no IT0 in the table. */
export const GRADE: Kind<string> = {
  ...ONE,
  is: 'grade',
  examples: '"IT11" or 11',
  held: GRADES,
  noun: 'grade',
  read(raw, earlier) {
    const grade = `IT${String(raw)
      .trim()
      .toUpperCase()
      .replace(/^IT\s*/, '')}`;
    if (columnOf(ISO_286_1_IT_GRADES, grade) === undefined)
      throw notInTable(`not a grade held for ${tableRange(ISO_286_1_IT_GRADES)} mm; held are ${GRADES}`);
    if (isWideGrade(grade) && (earlier.get('size') as number) <= WIDE_GRADE_ABOVE_MM)
      throw notInTable(
        `IT${WIDE_GRADE} and wider are not given for sizes up to ${WIDE_GRADE_ABOVE_MM} mm (${ISO_286_1_IT_GRADES.standard}, from memory)`,
      );
    return grade;
  },
};

const spelling = (name: string): string => name.toUpperCase().replace(/[\s-]+/g, '');
const NAMES = Object.keys(MOULDED_GROUPS);
const GROUPS = NAMES.map(name => `"${name}"`).join(' or ');

export const MOULDED_GROUP: Kind<Table> = {
  ...ONE,
  is: 'group',
  names: NAMES,
  ownTable: 'your own table of three columns: upper limit of size, ± same, ± across',
  noun: 'group',
  inQuotes: GROUPS,
  shape: 'block',
  read(raw, earlier) {
    if (Array.isArray(raw)) return ownTable(BLOCK.read(raw, earlier));
    if (typeof raw !== 'string') throw wrongInput(putInQuotes(GROUPS));
    const found = Object.entries(MOULDED_GROUPS).find(([name]) => spelling(name) === spelling(raw));
    if (found === undefined) throw notInTable(`not a group held here; held are ${GROUPS}; or give your own table as a range`);
    return found[1];
  },
};

const length = numeric(LENGTH);

/** A length of the user's table; a blank ± is a gap. */
function ownCell(cell: unknown, row: number, what: string): number | null {
  if (isCellError(cell)) throw new Refused(codeOf(cell), `row ${row} ${errorWords(cell)}`);
  if (isBlank(cell)) return null;
  try {
    const value = length.read(cell, NOTHING_READ);
    if (value <= 0) throw wrongInput('must be above 0 mm');
    return value;
  } catch (fault) {
    throw fault instanceof Refused ? new Refused(fault.code, `row ${row}, ${what}, is ${shown(cell)}: ${fault.message}`) : fault;
  }
}

function ownTable(cells: readonly (readonly unknown[])[]): Table {
  const used = cells.slice(0, 1 + cells.reduce((last, row, i) => (row.every(isBlank) ? last : i), -1));
  if (used[0]?.length !== 3) throw wrongInput('your own table has three columns: upper limit of size, ± same, ± across');
  let overMm = 0;
  const rows = used.map(([limit, same, across], i): readonly [string, ...(number | null)[]] => {
    const upToMm = ownCell(limit, i + 1, 'upper limit of size');
    if (upToMm === null || upToMm <= overMm) throw wrongInput(`row ${i + 1}: the upper limits of size must rise`);
    const row = [`${overMm}-${upToMm}`, overMm, upToMm, ownCell(same, i + 1, '± same'), ownCell(across, i + 1, '± across')] as const;
    overMm = upToMm;
    return row;
  });
  const held = 'own table';
  return {
    standard: 'your own table',
    edition: '',
    subject: 'tolerances of moulded sizes, ± deviation',
    table: '',
    columns: [
      { key: 'over', title: 'nominal size over', unit: 'mm', held },
      { key: 'upTo', title: 'nominal size up to', unit: 'mm', held },
      { key: 'same', title: '± same', unit: 'mm', held },
      { key: 'across', title: '± across', unit: 'mm', held },
    ],
    rows,
  };
}
