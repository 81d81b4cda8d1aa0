// The rules of one joint as a table, each with its basis, source and a remedy that was tried.
import { rounded } from '../core/decimal';
import { atMost } from '../core/maths';
import type { Cell, CellRange } from '../core/kinds';
import { Refused } from '../core/refuse';
import type { Finding, NamesOf, Rule } from './graph';
import { depthAllowedByPinMm, depthAskedByRatioMm, odAllowedByWallMm } from './formulas/boss';
import type { Joint } from './nodes';
import { remedy } from './remedy';
import { oneVariant } from './table';
import type { Variant } from './variant';

function row(variant: Variant, finding: Finding, all: readonly Finding[]): Cell[] {
  const { rule, state, value, limit, refusal } = finding;
  const shown = refusal === undefined ? (value ?? '–') : `no value: ${refusal.message}`;
  return [rule.name, shown, limit ?? '–', rule.basis, state, rule.source, remedy(variant, finding, all)];
}

function rows(variant: Variant, chosen: (rule: Rule) => boolean): Cell[][] {
  const all = variant.findings();
  return all.filter(({ rule }) => chosen(rule)).map(finding => row(variant, finding, all));
}

/** Two rules of the trade that pull against each other at ordinary sizes; both are shown, the choice is the user's. */
function conflict(
  name: string,
  basis: string,
  of: () => { readonly asked: number; readonly allowed: number; readonly way: string },
): Cell[] {
  try {
    const { asked, allowed, way } = of();
    const agree = atMost(asked, allowed);
    return [name, asked, allowed, basis, agree ? 'pass' : 'review', 'common practice', agree ? '–' : way];
  } catch (fault) {
    if (!(fault instanceof Refused)) throw fault;
    return [name, `no value: ${fault.message}`, '–', basis, 'not checked', 'common practice', '–'];
  }
}

function conflicts(variant: Variant): Cell[][] {
  const number = (name: NamesOf<Joint, number>): number => variant.value(name);
  const nominalMm = (): number => variant.value('screw').nominalMm;
  return [
    conflict('outside diameter and sink agree', 'od ratio × d required by the screw, against pilot + 2 × sink limit × wall', () => {
      const asked = number('boss OD by ratio');
      const wallMm = (asked - number('pin diameter')) / (2 * number('sink limit'));
      return {
        asked,
        allowed: odAllowedByWallMm(number('pin diameter'), number('sink limit'), number('wall')),
        way: `both agree from a wall of ${rounded(wallMm)} mm`,
      };
    }),
    conflict('engagement and core pin agree', 'hole depth that ratio × d needs at worst case, against pin limit × pilot', () => {
      const asked = depthAskedByRatioMm(number('hole depth needed'), number('engagement min'), number('ratio'), nominalMm());
      return {
        asked,
        allowed: depthAllowedByPinMm(number('pin limit'), number('pin diameter')),
        way: `a pin of ${rounded(asked / number('pin diameter'))} times its diameter is needed; ask the moulder`,
      };
    }),
  ];
}

export function checkJoint(inputs: CellRange, base: CellRange | undefined): Cell[][] {
  return rows(oneVariant(inputs, base), () => true);
}

export function checkBoss(inputs: CellRange, base: CellRange | undefined): Cell[][] {
  const variant = oneVariant(inputs, base);
  return [...rows(variant, ({ boss }) => boss === true), ...conflicts(variant)];
}
