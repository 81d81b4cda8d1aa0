// One call as steps: its inputs, its named steps, whether the inputs are in limits, its result.
import { readArguments } from '../../../core/call';
import type { Card } from '../../../core/card';
import type { Cell } from '../../../core/kinds';
import { Refused } from '../../../core/refuse';
import { formOfCard } from '../../../plain/forms';
import type { Ref } from '../../../plain/spreadsheet';
import type { Form } from '../../../plain/tree';
import { call } from '../../../registry';
import { isRows, type Known } from '../../../sheet/workbook-values';
import type { Argument } from '../arguments/argument';
import { unfollowed } from '../arguments/expression';
import type { ConversionContext } from '../context';
import { LOOK_UPS } from '../lookups';
import { boundForm, boundLookUp, inLimits } from './call-formulas';
import type { CallBlock, CallSite } from './call-site';
import { NUMBER_CHECKS, numberCheck, worstCheck } from './check-block';
import { type SourceWords, sourcesOf } from '../../words/source-words';
import { type Placed, STAND_IN } from '../step-block';
import type { Steps } from '../steps';

/** A longer list is one formula for each of its cells, and one of all of them that is too long. */
export const MOST_LISTED = 200;

const source = (card: Card, said: SourceWords): string => `${said.kind(card.kind)}: ${sourcesOf(card, said)}`;

/** Writes the steps. Undefined where the call has no plain form, or its arguments cannot be followed here. */
export function block(context: ConversionContext, steps: Steps, site: CallSite): CallBlock | undefined {
  const { card, node, formula, sheet } = site;
  // a text that stands for a step, typed by a stranger
  if (formula.includes(STAND_IN)) return undefined;
  const place = (): Placed | undefined => steps.place(context.source, site, context.steps);
  const preceding = new Map<string, Ref>();
  const args = card.params.map((_, i): Argument => ({ node: node.arguments?.[i] ?? null, formula, sheet, preceding }));
  const raws = args.map(arg => context.source.evaluate(arg.node, sheet));
  if (raws.includes(undefined) || args.some(arg => unfollowed(arg.node, context.source, sheet) !== undefined)) return undefined;
  if (raws.some(raw => isRows(raw) && raw.length * (raw[0]?.length ?? 0) > MOST_LISTED)) return undefined;
  const check = NUMBER_CHECKS[card.id];
  if (check !== undefined) return numberCheck(context, card, check, args, raws, place);
  if (card.id === 'CHECK.WORST') return worstCheck(context, card, args, raws, place);
  const form = formOfCard(card.id);
  const lookUp = LOOK_UPS[card.id];
  if ((form === undefined && lookUp === undefined) || card.result.shape === 'text') return undefined;
  const answer = call(card.id, raws);
  const values = answer.ok ? valuesOf(card, raws) : undefined;
  if (!answer.ok || values === undefined) return undefined;
  const written = lookUp === undefined ? boundForm(context, card, form as Form, args, values) : boundLookUp(context, card, args, values);
  if (written === undefined) return undefined;
  const body = isRows(answer.value)
    ? card.result.shape === 'table' && 'columns' in card.result && card.result.columns.length > 0
      ? answer.value.slice(1)
      : answer.value
    : [[answer.value]];
  const conditions = [...new Set(written.bound.flatMap(b => b.conditions).concat(written.related))];
  const ok = inLimits(context, conditions);
  const width = body[0]?.length ?? 1;
  const cells = body.flat().map((value, i) => {
    const result = written.results[i];
    if (result === undefined) return '""';
    if (result.formula.startsWith('"')) return result.formula;
    const state = typeof value === 'string' ? '"not checked"' : 'NA()';
    return context.steps.row(
      {
        label: resultName(card, i, body, width),
        formula: ok === undefined ? result.formula : `IF(${ok},${result.formula},${state})`,
        value: value as Cell,
        unit: resultUnit(card, i % width),
        words: written.words[i] ?? '',
        source: source(card, context.sourceWords),
      },
      'result',
    );
  });
  const placed = place();
  return placed && { cells: cells.map(placed), live: written.bound.some(b => b.live) };
}

function valuesOf(card: Card, raws: readonly Known[]): unknown[] | undefined {
  try {
    return readArguments(card, raws);
  } catch (fault) {
    if (fault instanceof Refused) return undefined;
    throw fault;
  }
}

function resultName({ id, result }: Card, i: number, body: readonly (readonly unknown[])[], width: number): string {
  if (result.shape === 'number' || result.shape === 'text' || result.shape === 'column') return result.name;
  const first = body[Math.floor(i / width)]?.[0];
  const column = result.columns[i % width]?.name ?? id;
  return body.length > 1 && typeof first === 'string' && i % width > 0 ? first : column;
}

const resultUnit = ({ result }: Card, column: number): string =>
  result.shape === 'number' ? result.unit : 'columns' in result ? (result.columns[column]?.unit ?? '') : '';
