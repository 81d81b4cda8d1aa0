// What a remedy writes, and what else it changes in the joint.
import type { Cell } from '../../core/kinds';
import { call } from '../../registry';
import { inputNamed, spelled } from '../../joint/headings';
import { JOINT_INPUT_NAMES } from '../../joint/inputs';
import type { CellEntry } from '../../sheet/port';
import type { LocatedJoint } from '../find-joint';

export interface InputChange {
  readonly name: string;
  /** With its unit. */
  readonly text: string;
}

const LONGEST_FIRST = [...JOINT_INPUT_NAMES].sort((a, b) => b.length - a.length);

function changeOf(words: string): InputChange | undefined {
  const name = LONGEST_FIRST.find(each => words.startsWith(`${each} `));
  const text = name === undefined ? '' : words.slice(name.length).trim();
  return name === undefined || !/^[\d.]+( ?(mm|°|%|MPa|N|N·m))?$/.test(text) ? undefined : { name, text };
}

/** The ways of a remedy, "length 19 mm with hole depth 17 mm; or relief 0.4 mm"; those that name no change are left out. */
export const waysOf = (remedy: string): readonly (readonly InputChange[])[] =>
  remedy.split(/; or /).flatMap(way => {
    const changes = way.split(' with ').map(words => changeOf(words.trim()));
    return changes.every(change => change !== undefined) ? [changes] : [];
  });

/** Undefined where an input has no cell, or a formula in it. */
export function entriesOf(
  way: readonly InputChange[],
  { cells, rows: [names] }: LocatedJoint,
  isFormula: (at: { sheetName: string; at: string }) => boolean,
): CellEntry[] | undefined {
  const entries = way.map(({ name, text }): CellEntry | undefined => {
    const cell = cells.get(name);
    if (cell === undefined || isFormula(cell)) return undefined;
    const heading = spelled(String(names.find(one => inputNamed(one) === name) ?? ''));
    const isMm = text.endsWith(' mm') && (!heading.includes('(') || heading.endsWith('(mm)'));
    return { ...cell, content: isMm ? Number.parseFloat(text) : text };
  });
  return entries.every(entry => entry !== undefined) ? entries : undefined;
}

export interface RuleChange {
  readonly rule: string;
  readonly from: string;
  readonly to: string;
}

const STATE_COLUMN = 4;

function statesOf(rows: readonly (readonly unknown[])[], base: LocatedJoint['base']): Map<string, string> {
  const answer = call('CHECK.JOINT', [rows as Cell[][], base]);
  return new Map(
    answer.ok && Array.isArray(answer.value) ? answer.value.slice(1).map(row => [String(row[0]), String(row[STATE_COLUMN])]) : [],
  );
}

/** Rules whose state is another with these changes. */
export function effectOf(way: readonly InputChange[], { rows: [names, values], base }: LocatedJoint): RuleChange[] {
  const changed = values.map((value, i) => way.find(({ name }) => name === inputNamed(names[i]))?.text ?? value);
  // An input that has no cell yet.
  const more = way.filter(({ name }) => !names.some(heading => inputNamed(heading) === name));
  const mended = [
    [...names, ...more.map(({ name }) => name)],
    [...changed, ...more.map(({ text }) => text)],
  ];
  const [before, after] = [statesOf([names, values], base), statesOf(mended, base)];
  return [...before].flatMap(([rule, from]) => {
    const to = after.get(rule) ?? from;
    return to === from ? [] : [{ rule, from, to }];
  });
}
