// What a supplier gets of a function's example: the hand-over of a sheet with its arguments and its call.
import type { Card } from '../core/card';
import type { Cell } from '../core/kinds';
import { convert } from '../handover/compile/convert';
import { ENGLISH } from '../handover/words/english';
import { address } from '../sheet/addresses';
import type { SourceCell } from '../sheet/workbook-values';
import type { SheetPlan } from '../sheet/plan';

export interface PlainRow {
  readonly at: string;
  readonly words: string;
  /** A formula, or the value of an input. */
  readonly content: string;
  readonly value: Cell | undefined;
}

export interface PlainSheet {
  readonly rows: readonly PlainRow[];
  /** What the hand-over says of it, where it does not stay live. */
  readonly remark: string | undefined;
}

const SHEET = 'Sheet';
/** More rows than anyone reads on a page, or a formula longer than anyone reads. */
const MAX_ROWS = 40;

const rowsOf = (raw: unknown): readonly (readonly unknown[])[] =>
  Array.isArray(raw) ? (raw as unknown[]).map(line => (Array.isArray(line) ? (line as unknown[]) : [line])) : [[raw]];

interface Laid {
  readonly cells: Map<string, SourceCell>;
  readonly inputs: readonly PlainRow[];
}

/** Arguments below each other in column B, the call under them. */
function laidOut(card: Card): Laid {
  const cells = new Map<string, SourceCell>();
  const inputs: PlainRow[] = [];
  let next = 0;
  const places = card.example.args.map((raw, i) => {
    const rows = rowsOf(raw);
    const width = Math.max(1, ...rows.map(row => row.length));
    if (raw === null) return '';
    rows.forEach((row, r) =>
      row.forEach((value, c) => {
        cells.set(address(next + r, 1 + c), { value: value as Cell });
        inputs.push({
          at: `${SHEET}!${address(next + r, 1 + c)}`,
          words: r + c === 0 ? (card.params[i]?.name.replace(/_/g, ' ') ?? '') : '',
          content: '',
          value: value as Cell,
        });
      }),
    );
    const [from, to] = [address(next, 1), address(next + rows.length - 1, width)];
    next += rows.length;
    return from === to ? from : `${from}:${to}`;
  });
  cells.set(address(next, 1), { value: null, formula: `=ENCL.${card.id}(${places.join(',')})` });
  return { cells, inputs };
}

function formulasOf({ name, cells }: SheetPlan): PlainRow[] {
  const labels = new Map(cells.map(cell => [cell.at, cell]));
  const label = (at: string): string => String(labels.get(`A${at.slice(1)}`)?.value ?? '');
  return cells
    .filter(({ at, role }) => at.startsWith('B') && role !== 'header')
    .flatMap(({ at, formula, value }) =>
      formula === undefined && value === undefined ? [] : [{ at: `${name}!${at}`, words: label(at), content: formula ?? '', value }],
    );
}

export function plainSheet(card: Card): PlainSheet {
  const { cells, inputs } = laidOut(card);
  const { sheets, findings } = convert({ name: card.id, sheets: [{ name: SHEET, cells }] });
  const notLive = findings.find(({ what }) => what === 'value, not live' || what === 'error');
  const [home, ...others] = sheets;
  const steps = others.find(({ name }) => name === ENGLISH.sheets.steps);
  const isWide = others.length > 1;
  if (notLive !== undefined || isWide || steps === undefined)
    return {
      rows: [],
      remark:
        notLive?.words ??
        'every value of the joint that it needs is worked out in a column of its own on a sheet of variants, with the limits of the inputs',
    };
  const converted = new Map((home?.cells ?? []).map(({ at, value }) => [`${SHEET}!${at}`, value]));
  const results = (home?.cells ?? []).flatMap(({ at, formula, value }) =>
    formula === undefined ? [] : [{ at: `${SHEET}!${at}`, words: 'result', content: formula, value }],
  );
  const rows = [...inputs.map(row => ({ ...row, value: converted.get(row.at) ?? row.value })), ...formulasOf(steps), ...results];
  return { rows: rows.slice(0, MAX_ROWS), remark: undefined };
}
