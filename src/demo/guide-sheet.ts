// The first sheet of a guide: the question, every step with its function beside the words, what is left to judge, cautions.
import type { SheetPlan } from '../sheet/plan';
import { type GuideStep, cell, type SheetInput, paragraphs, stepSheet } from './sheet-rows';
import { AID, BLANK, ESTIMATES, VALUES } from './cautions';

export interface GuideText {
  readonly title: string;
  readonly sentence: string;
  /** The part, the board, what is asked. */
  readonly scenario: readonly string[];
  readonly inputs: readonly SheetInput[];
  readonly blocks: readonly GuideStep[];
  /** What no function decides. */
  readonly judge: readonly string[];
  /** Cautions of this scenario; those of every sheet follow. */
  readonly cautions: readonly string[];
}

const FORMATS: Readonly<Record<string, string>> = { N: '0', ppm: '0', 'mm²': '0.0' };

export function guideSheet({ title, sentence, scenario, inputs, blocks, judge, cautions }: GuideText): SheetPlan {
  const { list, states, merged, next } = stepSheet(title, sentence, inputs, blocks, unit => FORMATS[unit] ?? '0.00', scenario);
  const left = paragraphs(next + 1, judge);
  const cautionRow = next + judge.length + 3;
  const warned = paragraphs(cautionRow, [...cautions, AID, ESTIMATES, VALUES, BLANK], 'caution');
  return {
    name: 'Guide',
    widths: [44, 13, 11, 11, 11, 84],
    frozenRows: 1,
    cells: [
      ...list,
      cell(`A${next}`, 'heading', 'What is left to judge'),
      ...left.list,
      cell(`A${cautionRow - 1}`, 'heading', 'Cautions'),
      ...warned.list,
    ],
    merged: [...merged, ...left.merged, ...warned.merged],
    stateRanges: states,
  };
}
