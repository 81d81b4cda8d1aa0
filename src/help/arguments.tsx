// What each argument of a function takes, and the symbols of its formula.
import type { JSX } from 'preact';
import { blankWords, nameOf } from '../about/about';
import { type Card, forgotten, type Param } from '../core/card';
import { accepts } from '../core/read/accepts';
import { limitWords } from '../core/read/limits';
import { relationWords } from '../core/read/relation';
import { ownExample } from '../core/screw/own';
import type { Described } from './described-function';
import { Symbol } from './formula';

/** What an argument takes beside the quantity that its text names. */
function alsoTakes(param: Param): string {
  const { kind } = param;
  switch (kind.is) {
    case 'quantity':
    case 'cone':
    case 'deviation':
      return kind.from === undefined ? '' : ` Also ${kind.from.words}${relationWords(param)}.`;
    case 'limit':
      return ' Also "none".';
    case 'group':
      return ` Also ${kind.ownTable}.`;
    case 'choice':
    case 'grade':
      return ` One of ${accepts(kind)}.`;
    case 'whole':
    case 'size with limits':
    case 'screw size':
    case 'screw':
    case 'nut':
    case 'head':
    case 'function name':
    case 'joint input':
    case 'joint output':
    case 'material':
    case 'list':
    case 'names':
    case 'values':
    case 'block':
    case 'anything':
      return '';
    default:
      return forgotten(kind);
  }
}

function Argument({ param, text }: { readonly param: Param; readonly text: string }): JSX.Element {
  const { kind, limits, blank, name } = param;
  const bounds = [limitWords(limits, kind.unit), blankWords(blank)].filter(words => words !== '').join('; ');
  return (
    <>
      <dt>
        {param.symbol !== undefined && <Symbol text={nameOf(param)} />} <code>{name}</code> {kind.unit !== '' && <small>{kind.unit}</small>}
      </dt>
      <dd>
        {text}.{' '}
        <span class="quiet">
          {bounds[0]?.toUpperCase()}
          {bounds.slice(1)}.{alsoTakes(param)}
        </span>
      </dd>
    </>
  );
}

export const Arguments = ({ card, listed }: { readonly card: Card; readonly listed: Described }): JSX.Element => (
  <section id="arguments">
    <h2>Arguments and symbols</h2>
    {card.params.length === 0 ? (
      <p>This function has no arguments.</p>
    ) : (
      <dl class="arguments">
        {card.params.map((param, i) => (
          <Argument param={param} text={listed.parameters[i]?.description ?? ''} />
        ))}
      </dl>
    )}
    {card.params.some(({ kind }) => kind.is === 'screw') && (
      <>
        <p class="quiet">
          Sizes of the screw, mm, from the thread table of its standard: <Symbol text="d" /> nominal diameter, <Symbol text="d1" /> major
          diameter, max, <Symbol text="d2" /> root diameter, max, <Symbol text="P" /> pitch.
        </p>
        <p class="quiet">
          An own screw is a text with its numbers, largest/smallest: <code>"{ownExample()}"</code>. The last word is forming, cutting or
          machine; a countersunk head has a head angle. What is left out has no value.
        </p>
      </>
    )}
    {card.params.some(({ kind }) => kind.is === 'nut') && (
      <p class="quiet">
        Size of the nut, mm, from ISO 4032: <Symbol text="s" /> width across flats, max.
      </p>
    )}
  </section>
);
