// The formula of a function, set as mathematics in the symbols of its card.
import { h, type JSX } from 'preact';
import type { Card, Param } from '../core/card';
import { formOfCard } from '../plain/forms';
import { type MathNode, type MathPiece, setForm, symbolPiece } from '../plain/mathml';
import { useLanguage } from './language';
import { columnName, nameOf, partSymbols, resultSymbol, withoutForm } from '../about/about';

// A text in mathematics loses the blanks at its ends.
const asMarkup = (node: MathNode): JSX.Element | string =>
  typeof node === 'string' ? node.replace(/^ | $/g, '\u00a0') : h(node.tag, node.attributes, ...node.children.map(asMarkup));

const Maths = ({ children, isBlock = false }: { readonly children: readonly MathNode[]; readonly isBlock?: boolean }): JSX.Element =>
  h('math', isBlock ? { display: 'block' } : {}, ...children.map(asMarkup));

export const Symbol = ({ text }: { readonly text: string }): JSX.Element => <Maths>{[symbolPiece(text).node]}</Maths>;

function asPiece(param: Param): MathPiece {
  const parts = partSymbols(param);
  return {
    ...symbolPiece(nameOf(param)),
    ...(parts === undefined ? {} : { parts: Object.fromEntries(Object.entries(parts).map(([key, text]) => [key, symbolPiece(text)])) }),
  };
}

const named = (text: string): MathNode => ({ tag: 'mi', attributes: { class: 'name' }, children: [text] });

/** Each value of a result with what it is called; the words of a table and what it only repeats are left out. */
function results({ result, params }: Card, piece: MathPiece): (readonly [MathNode, MathNode])[] {
  if (piece.items === undefined) return [[symbolPiece(resultSymbol(result)).node, piece.node]];
  const isTable = piece.items.some(({ items }) => items !== undefined);
  const rows = isTable ? piece.items.map(({ items }) => items ?? []) : [piece.items];
  const given = new Set(params.map(param => JSON.stringify(asPiece(param).node)));
  return rows.flatMap(row => {
    const first = row[0]?.node;
    const name = rows.length > 1 && typeof first === 'object' && first.tag === 'mtext' ? first.children.join('') : '';
    const called = (c: number): string =>
      [name, columnName(result, c)].filter(text => text !== '' && !(text === 'value' && name !== '')).join(', ');
    return row.flatMap(({ node }, c): (readonly [MathNode, MathNode])[] =>
      (typeof node === 'object' && node.tag === 'mtext') || (isTable && given.has(JSON.stringify(node))) ? [] : [[named(called(c)), node]],
    );
  });
}

export function Formula({ card }: { readonly card: Card }): JSX.Element {
  const { words: W, english } = useLanguage();
  const form = formOfCard(card.id);
  if (form === undefined) return <p lang={english}>{withoutForm(card)}</p>;
  const { lines, result } = setForm(form, card.params.map(asPiece));
  const all = [
    ...lines.map(({ left, right, isCondition }) => [left, isCondition ? '⇔' : '=', right] as const),
    ...results(card, result).map(([left, right]) => [left, '=', right] as const),
  ];
  return (
    <div class="formula" lang={english} role="group" aria-label={W.formula} tabIndex={0}>
      {all.map(([left, sign, right]) => (
        <Maths isBlock>{[{ tag: 'mrow', attributes: {}, children: [left, { tag: 'mo', attributes: {}, children: [sign] }, right] }]}</Maths>
      ))}
    </div>
  );
}
