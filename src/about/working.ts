// A call with its numbers put in: the values that text arguments stand for, the named steps, the result with unit.
import { applied, callCard, readArguments } from '../core/call';
import type { Card, Param } from '../core/card';
import { cellOrRows, isBlank, shown } from '../core/read/cells';
import { quoted, Refused } from '../core/refuse';
import type { Reading, TableValue } from '../standards/table';
import { columnOf, valueOf } from '../core/table';
import { formOfCard } from '../plain/forms';
import { digits } from '../plain/digits';
import { known, printSteps, stepWords } from '../plain/print';
import type { Form } from '../plain/tree';

/** `ISO 7049 head diameter dk, max`. */
function columnWords({ table, key }: TableValue): string {
  const column = columnOf(table, key);
  return `${table.standard} ${column?.title ?? key}${column?.limit === undefined ? '' : `, ${column.limit}`}`;
}

/** What a look-up read, each value with its column, and how they are put together. */
function read(readings: readonly Reading[]): string[] {
  const values = readings.map(({ table, row, key }) => digits(valueOf(table, row, key)));
  const terms = readings.map(({ times, over }, i) =>
    over !== undefined ? `${digits(over)}/${values[i]}` : times !== undefined ? `${times}·${values[i]}` : values[i],
  );
  return [...readings.map((reading, i) => `${columnWords(reading)} of ${reading.row} = ${values[i]}`), terms.join(' + ')];
}

/** More than one cell: an own card of a material. */
const isRange = (raw: unknown): boolean => Array.isArray(cellOrRows(raw));
const onlyCell = (raw: unknown): unknown => (Array.isArray(raw) && Array.isArray(raw[0]) ? (raw as unknown[][])[0]?.[0] : raw);

/** What a text argument stands for: "ST2.9 ISO 7049" is 5.6 mm. A blank stands for what another argument brings along. */
function taken(param: Param, raw: unknown, value: unknown, other: (name: string) => unknown): string[] {
  const given = onlyCell(raw);
  if (param.uncounted !== undefined && isBlank(given) && value === 0) return [param.uncounted];
  const { blank } = param;
  const text = isBlank(given) && typeof blank === 'object' && 'take' in blank ? onlyCell(other(blank.sameAs)) : given;
  if (typeof text !== 'string' || typeof value !== 'number' || Number.parseFloat(text) === value) return [];
  if (isRange(raw)) return [`${param.name}, ${shown(raw)} = ${inUnit(value, param.kind.unit)}`];
  const from = param.kind.from?.tableValue?.(text);
  const which = from === undefined ? param.kind.from?.which?.(text) : columnWords(from);
  const origin = which === undefined ? '' : ` (${which})`;
  return [`${param.name} ${quoted(text)} = ${inUnit(value, param.kind.unit)}${origin}`];
}

const inUnit = (value: number, unit: string): string => `${digits(value)}${unit === '' || unit === '°' ? unit : ` ${unit}`}`;

function steps(form: Form, values: readonly unknown[]): string[] {
  const { steps: named, result } = printSteps(form, values.map(known));
  return [
    ...named.map(({ name, piece: { text, value } }) => {
      const worked = typeof value === 'number' ? digits(value) : text;
      return `${stepWords(name)} = ${text}${worked === text ? '' : ` = ${worked}`}`;
    }),
    result.items?.map(({ text }) => text).join('; ') ?? result.text,
  ];
}

export function working(card: Card, args: readonly unknown[]): string {
  const outcome = callCard(card, args);
  if (!outcome.ok) throw new Refused(outcome.code, outcome.message, outcome.argument);
  const values = readArguments(card, args);
  const other = (name: string): unknown => args[card.params.findIndex(param => param.name === name)];
  const from = card.params.flatMap((param, i) => taken(param, args[i], values[i], other));
  const { result } = card;
  const form = formOfCard(card.id);
  if (Array.isArray(outcome.value)) {
    if (form === undefined || result.shape !== 'row')
      return `${card.id}: a table of ${outcome.value.length} × ${outcome.value[0]?.length ?? 0}; see its columns`;
    const row = applied(card, values) as readonly number[];
    const printed = printSteps(form, values.map(known)).result.items ?? [];
    return [
      ...from,
      ...row.map(
        (value, i) => `${'columns' in result ? (result.columns[i]?.name ?? '') : i + 1}: ${printed[i]?.text ?? '–'} = ${digits(value)}`,
      ),
    ].join('\n');
  }
  const [name, unit] = result.shape === 'number' ? [result.name, result.unit] : [card.id, ''];
  const shown = typeof outcome.value === 'number' ? digits(outcome.value) : String(outcome.value);
  const lines = form !== undefined ? steps(form, values) : card.reads === undefined ? [] : read(card.reads(...(values as never[])));
  const last = lines.pop();
  const answered = typeof outcome.value === 'number' ? inUnit(outcome.value, unit) : shown;
  return [...from, ...lines, `${name} = ${last === undefined || last === shown ? '' : `${last} = `}${answered}`].join('\n');
}
