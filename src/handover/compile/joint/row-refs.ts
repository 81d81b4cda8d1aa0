// References as a row of a variant makes them: with limits and conditions around them, out of constants and half widths.
import { known, phrase, print } from '../../../plain/print';
import type { Made } from '../../../joint/graph';
import { namesIn } from '../../../joint/graph';
import type { Calculation } from '../../../core/card';
import type { Arg, Input } from '../../../joint/graph';
import { INPUTS, isWithin } from '../../../joint/inputs';
import { NODES } from '../../../joint/nodes';
import { formNamed, formOfDefault, formOfNode } from '../../../plain/forms';
import { atom, negative, number, operand, type Ref, text } from '../../../plain/spreadsheet';
import { type Form, visit } from '../../../plain/tree';
import { ROW } from '../../../sheet/row-forms';
import { allOf } from '../inputs';
import { limitFormulas } from '../limits';

export const NONE = 'NA()';

/** A cell with a half width counts both ways. */
export const halfWidth = (cell: string): Ref => ({
  parts: { upperMm: atom(cell, NaN), lowerMm: negative(atom(cell, NaN)) },
});

export const textOf = (ref: Ref | undefined): string => (ref !== undefined && 'text' in ref ? ref.text : NONE);

/** The limits that a base function has for its arguments, as conditions, where the inputs do not keep them already. */
export function limitsOf(card: Calculation | undefined, args: readonly Arg[], refs: readonly Ref[]): string[] {
  return (card?.params ?? []).flatMap(({ limits }, i) => {
    const [arg, ref] = [args[i], refs[i]];
    if (arg === undefined || ref === undefined || !('text' in ref) || nameOf(arg) === '') return [];
    return isWithin(nameOf(arg), limits) ? [] : limitFormulas(operand(ref), limits, '1E-9');
  });
}

export const within = (conditions: readonly string[], ref: Ref): Ref =>
  conditions.length === 0 || !('text' in ref) ? ref : atom(`IF(${allOf(conditions)},${ref.text},${NONE})`, ref.value);

/** The name that an argument reads. */
export const nameOf = (arg: Arg): string => [...namesIn(arg)].pop() ?? '';

export const formOf = (name: string): Form | undefined => (NODES.has(name) ? formOfNode(name) : formOfDefault(name));

export const constant = (value: unknown): Ref =>
  typeof value === 'number' ? number(value === Infinity ? 9.99e307 : value) : text(String(value));

/** The one input that a value is made of. */
export function onlyInput(how: Input['fallback']): string | undefined {
  const [first, ...others] = how !== undefined && 'by' in how ? how.args : [];
  return typeof first === 'string' && others.length === 0 && INPUTS.has(first) ? first : undefined;
}

const choosing = new WeakMap<Form, boolean>();

/** Whether the form looks at some of its arguments only in some cases. */
export function hasChoice(form: Form): boolean {
  const known = choosing.get(form) ?? chooses(form);
  choosing.set(form, known);
  return known;
}

function chooses(form: Form): boolean {
  let has = false;
  visit(form, {
    if: () => void (has = true),
    call: name => {
      const called = formNamed(name);
      if (called !== undefined && hasChoice(called)) has = true;
    },
  });
  return has;
}

const IN_ROW = new RegExp(`^\\$[A-Z]+${ROW}$`);

/** The cells with numbers that a reference is made of. */
export function numberCells(ref: Ref): string[] {
  if ('text' in ref) return typeof ref.value === 'number' && IN_ROW.test(ref.text) ? [ref.text] : [];
  if ('items' in ref) return ref.items.flatMap(numberCells);
  return 'parts' in ref ? Object.values(ref.parts).flatMap(numberCells) : [];
}

/** No value where one of its arguments has none, looked at or not. */
export function onlyWith(cells: readonly string[], ref: Ref): Ref {
  if ('items' in ref) return { items: ref.items.map(item => onlyWith(cells, item)) };
  if ('parts' in ref) return { parts: Object.fromEntries(Object.entries(ref.parts).map(([key, part]) => [key, onlyWith(cells, part)])) };
  if (!('text' in ref) || cells.length === 0) return ref;
  return atom(`IF(${allOf([...new Set(cells)].map(cell => `ISNUMBER(${cell})`))},${ref.text},NA())`, ref.value);
}

/** Whether a formula is no more than one number or word. */
export const isLiteral = (formula: string): boolean => String(Number(formula)) === formula || /^"[^"]*"$/.test(formula);

export function literal(value: unknown): Ref {
  if (typeof value === 'number') return number(value);
  if (typeof value === 'string') return text(value);
  if (Array.isArray(value)) return { items: value.map(literal) };
  if (typeof value === 'object' && value !== null)
    return { parts: Object.fromEntries(Object.entries(value).map(([key, part]) => [key, literal(part)])) };
  return atom('""', '');
}

type Meant = Made & { readonly meaning: string };

const words = new WeakMap<Meant, string>();

/** What a formula that is printed as it stands says in the names of the joint: the same for every row. */
export function wordsOf(name: string, how: Meant): string {
  const said = words.get(how) ?? printedWords(name, how);
  words.set(how, said);
  return said;
}

function printedWords(name: string, how: Meant): string {
  const form = how.by === 'formula' ? formOf(name) : undefined;
  return form === undefined
    ? how.meaning
    : print(
        form,
        how.args.map(arg => (typeof arg === 'object' && 'is' in arg ? known(arg.is) : phrase(nameOf(arg)))),
      ).text;
}
