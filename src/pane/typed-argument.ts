// What is typed into the field of an argument, as a value for a preview and as a piece of a formula.
import { forgotten, type Kind, NOTHING_READ, type Param } from '../core/card';
import type { Cell } from '../core/kinds';
import { readsTwoWays } from '../core/read/read-quantity';
import { areaOf, parseFormula } from '../sheet/formula';
import { FILE_SIGNS, fromSigns, type Signs } from '../sheet/signs';

export type TypedArgument =
  | { readonly is: 'blank' }
  | { readonly is: 'value'; readonly value: Cell }
  | { readonly is: 'list'; readonly values: readonly Cell[] }
  /** A reference or any other piece of a formula, without the equals sign. */
  | { readonly is: 'formula'; readonly text: string };

const NUMBER = /^[+\-−]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i;
const QUOTED = /^"(?:[^"]|"")*"$/;

/** What a text typed into a cell is. */
export function valueOf(text: string): Cell {
  if (NUMBER.test(text) && !readsTwoWays(text.replace(/^[+\-−]|e.*$/gi, ''))) return Number(text.replace(',', '.').replace('−', '-'));
  if (/^(true|false)$/i.test(text)) return text.toLowerCase() === 'true';
  return QUOTED.test(text) ? text.slice(1, -1).replaceAll('""', '"') : text;
}

/** Whether the argument reads this text itself: M3 is then a screw and no cell. */
function reads(param: Param, text: string): boolean {
  const { kind } = param;
  switch (kind.is) {
    case 'anything':
    case 'block':
    case 'list':
    case 'names':
    case 'values':
      return false;
    case 'quantity':
    case 'whole':
    case 'limit':
    case 'cone':
    case 'deviation':
    case 'size with limits':
    case 'choice':
    case 'screw size':
    case 'screw':
    case 'nut':
    case 'head':
    case 'function name':
    case 'joint input':
    case 'joint output':
    case 'grade':
    case 'group':
    case 'material':
      return isRead(kind, text);
    default:
      return forgotten(kind);
  }
}

function isRead(kind: Kind<unknown>, text: string): boolean {
  try {
    kind.read(text, NOTHING_READ);
    return true;
  } catch {
    return false;
  }
}

function isReference(text: string): boolean {
  const node = parseFormula(text);
  return node !== undefined && areaOf(node, '') !== undefined;
}

/** Blank, a formula after `=`, a reference unless the argument can mean the text itself, values between semicolons, or one value. */
export function typedArgument(param: Param, text: string, signs: Signs = FILE_SIGNS): TypedArgument {
  const trimmed = text.trim();
  if (trimmed === '') return { is: 'blank' };
  if (trimmed.startsWith('=')) return { is: 'formula', text: fromSigns(trimmed.slice(1).trim(), signs) };
  if (isReference(trimmed) && !reads(param, trimmed)) return { is: 'formula', text: trimmed };
  if (param.kind.shape !== 'one' && trimmed.includes(';') && !QUOTED.test(trimmed)) {
    return { is: 'list', values: trimmed.split(';').map(part => valueOf(part.trim())) };
  }
  return { is: 'value', value: valueOf(trimmed) };
}

const literal = (value: Cell): string => {
  if (typeof value === 'string') return `"${value.replaceAll('"', '""')}"`;
  return typeof value === 'boolean' ? String(value).toUpperCase() : String(value);
};

function piece(argument: TypedArgument): string {
  if (argument.is === 'blank') return '';
  if (argument.is === 'formula') return argument.text;
  return argument.is === 'value' ? literal(argument.value) : `{${argument.values.map(literal).join(';')}}`;
}

/** `=ENCL.BOSS.OD(B4,1.2)`: blanks at the end are left out where they may be. */
export function formulaOf(name: string, params: readonly Param[], given: readonly TypedArgument[]): string {
  let count = given.length;
  while (count > 0 && given[count - 1]?.is === 'blank' && params[count - 1]?.optional === true) count--;
  return `=${name}(${given.slice(0, count).map(piece).join(',')})`;
}
